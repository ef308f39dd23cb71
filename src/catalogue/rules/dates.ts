import type { Dating } from '../../core/dating/dating.ts';
import { isToCome, yearsOf } from '../../core/dating/interval.ts';
import type { Rule } from './rule.ts';
import type { Problem } from '../problem.ts';
import { problem } from '../problem.ts';
import type { Filed, Records } from '../records.ts';
import type { Blank } from '../schema/fields.ts';
import { isBlank } from '../schema/fields.ts';
import type { RulerFields } from '../schema/lists.ts';

/** A piece dated outside every reign of the ruler it names: an heir's, a posthumous issue, a sitter of a medal, or a slip. */
export type OutsideReign = { readonly id: string; readonly file: string; readonly says: string };

/** The pieces dated outside the reigns of their rulers, where nothing says for whom else they were struck. */
export function datesOutsideReigns({ pieces, rulers }: Pick<Records, 'pieces' | 'rulers'>): readonly OutsideReign[] {
  const byId = new Map(rulers.map((ruler) => [ruler.id, ruler]));
  return pieces.flatMap(({ id, file, fields }): readonly OutsideReign[] => {
    const { ruler, date } = fields;
    if (ruler === undefined || isBlank(ruler) || fields['struck-for'] !== undefined) return [];
    if (date === undefined || isBlank(date) || ['replica', 'counterfeit', 'medal'].includes(fields.kind)) return [];
    const made = yearsOf(date);
    const named = ruler.map((one) => byId.get(one)).filter((found) => found !== undefined);
    const [first] = named;
    if (first === undefined || named.some((one) => ruled(one, made))) return [];
    const says = `${first.fields.name} ruled ${reignsInWords(first)}; this piece is dated ${date.text}. Where that is no slip, struck-for: says for whom it was made.`;
    return [{ id, file, says }];
  });
}

/** A field and the date it states. */
type Stated = readonly [path: readonly (string | number)[], date: Dating | Blank | undefined];

/** Of a ruler without a reign there is nothing to say. */
function ruled({ fields }: Filed<RulerFields>, made: { low: number; high: number }): boolean {
  if (fields.reigns.length === 0) return true;
  return fields.reigns.some((reign) => made.low <= yearsOf(reign.to).high && made.high >= yearsOf(reign.from).low);
}

function reignsInWords({ fields }: Filed<RulerFields>): string {
  return fields.reigns.map((reign) => `${reign.from.text} to ${reign.to.text}`).join(' and ');
}

/** No piece was made, and nothing became of it, on a day that is still to come. */
export const checkDatesToCome: Rule = (records, place, day) => {
  const toCome = (file: string, stated: readonly Stated[]): readonly Problem[] =>
    stated.flatMap(([path, date]) => {
      if (date === undefined || isBlank(date) || !isToCome(date, day)) return [];
      const kind = path[0] === 'date' ? 'made-in-future' : 'date-in-future';
      return [problem(kind, place(file, path), date.text, day)];
    });
  const { cabinet } = records;
  const prices = cabinet?.fields['metal-prices'] ?? [];
  return [
    ...toCome(cabinet?.file ?? '', prices.map(({ date }, at) => [['metal-prices', at, 'date'], date])),
    ...records.pieces.flatMap(({ file, fields: { date, altered, found, provenance = [] } }) =>
      toCome(file, [
        [['date'], date],
        ...(altered?.done ?? []).map((one, at): Stated => [['altered', 'done', at, 'date'], one.date]),
        [['found', 'when'], found?.when],
        ...provenance.map(({ when }, at): Stated => [['provenance', at, 'when'], when]),
      ]),
    ),
  ]; // prettier-ignore
};

/** `struck-for` says something only when it differs from the name on the piece. */
export const checkStruckFor: Rule = (records, place) =>
  records.pieces.flatMap(({ file, fields }) => {
    const struckFor = fields['struck-for'] ?? [];
    const named = fields.ruler === undefined || isBlank(fields.ruler) ? [] : fields.ruler;
    return struckFor.length > 0 && struckFor.every((id) => named.includes(id))
      ? [problem('struck-for-same', place(file, ['struck-for']))]
      : [];
  });
