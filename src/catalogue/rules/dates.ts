import { yearsOf } from '../../core/dating/interval.ts';
import type { Rule } from '../check-records.ts';
import type { Problem } from '../problem.ts';
import { problem } from '../problem.ts';
import type { Filed } from '../records.ts';
import { isBlank } from '../schema/fields.ts';
import type { RulerFields } from '../schema/lists.ts';

/** A piece in a ruler's name was made in a reign of that ruler, or says for whom it was struck. */
export const checkDates: Rule = (records, place) => {
  const rulers = new Map(records.rulers.map((ruler) => [ruler.id, ruler]));
  return records.pieces.flatMap(({ file, fields }): readonly Problem[] => {
    const { ruler, date } = fields;
    if (ruler === undefined || isBlank(ruler) || fields['struck-for'] !== undefined) return [];
    if (date === undefined || isBlank(date) || ['replica', 'counterfeit'].includes(fields.kind)) return [];
    const made = yearsOf(date);
    const named = ruler.map((id) => rulers.get(id)).filter((found) => found !== undefined);
    if (named.length === 0 || named.some((one) => ruled(one, made))) return [];
    return named
      .slice(0, 1)
      .map((one) =>
        problem('date-outside-reign', place(file, ['date']), date.text, one.fields.name, reignsInWords(one)),
      );
  });
};

/** Of a ruler without a reign there is nothing to say. */
function ruled({ fields }: Filed<RulerFields>, made: { low: number; high: number }): boolean {
  if (fields.reigns.length === 0) return true;
  return fields.reigns.some((reign) => made.low <= yearsOf(reign.to).high && made.high >= yearsOf(reign.from).low);
}

function reignsInWords({ fields }: Filed<RulerFields>): string {
  return fields.reigns.map((reign) => `${reign.from.text} to ${reign.to.text}`).join(' and ');
}

/** `struck-for` says something only when it differs from the name on the piece. */
export const checkStruckFor: Rule = (records, place) =>
  records.pieces.flatMap(({ file, fields }) => {
    const struckFor = fields['struck-for'] ?? [];
    const named = fields.ruler === undefined || isBlank(fields.ruler) ? [] : fields.ruler;
    return struckFor.length > 0 && struckFor.every((id) => named.includes(id))
      ? [problem('struck-for-same', place(file, ['struck-for']))]
      : [];
  });
