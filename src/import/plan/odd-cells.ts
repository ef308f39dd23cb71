import { parseDate } from '../../core/dating/parse-date.ts';
import { parseSize } from '../../core/measures/parse-size.ts';
import { parseWeight } from '../../core/measures/parse-weight.ts';
import type { Outcome } from '../../core/outcome.ts';
import { oddMeasures } from '../../catalogue/odd-measures.ts';
import type { Records } from '../../catalogue/records.ts';
import { KINDS } from '../../catalogue/fields/piece-fields.ts';
import type { Written } from '../../catalogue/yaml.ts';
import { kindsIn } from '../cells/word-cell.ts';
import { grouped } from '../names/grouped.ts';
import type { PlacedPiece } from './piece-to-write.ts';

/** A sentence for each weight and diameter of new and changed pieces that can hardly be right; they are written all the same. */
export function oddCells(
  pieces: readonly PlacedPiece[],
  { denominations }: Pick<Records, 'denominations'>,
  headings: ReadonlyMap<string, string>,
): readonly string[] {
  return pieces
    .filter(({ state }) => state !== 'same')
    .flatMap(({ row, base: { facts } }) => {
      const kind = KINDS.find((one) => one === facts['kind']);
      if (kind === undefined) return [];
      const odd = oddMeasures(
        {
          kind,
          metal: words(facts['metal']),
          weight: read(facts['weight'], parseWeight),
          diameter: read(facts['diameter'], parseSize),
          date: read(facts['date'], (text) => parseDate(text)),
          denomination: words(facts['denomination']),
          made: words(facts['made']),
          shape: words(facts['shape']),
          problem: words(facts['problem']),
        },
        denominations,
      );
      return odd.map(({ field, says }) => `row ${row}, ${headings.get(field) ?? field}: ${says}`);
    });
}

/** A sentence for each kind that titles name and the pieces so called are not: a sheet of coins may have tokens in it. */
export function oddKinds(pieces: readonly PlacedPiece[]): readonly string[] {
  const found = pieces.flatMap(({ row, state, base: { facts } }) => {
    const [kind, named] = [words(facts['kind']) ?? '', kindsIn(words(facts['title']) ?? '')];
    const isOdd = state !== 'same' && kind !== 'unknown' && named.length > 0 && !named.includes(kind);
    return isOdd ? [{ row, kind, named: named.join(' or ') }] : [];
  });
  return grouped(found, ({ kind, named }) => `${kind} ${named}`).map((some) => {
    const rows = some.slice(0, 12).map(({ row }) => String(row));
    const more = some.length > 12 ? ` and ${some.length - 12} more` : '';
    const { named = '', kind = '' } = some[0] ?? {};
    const titles = some.length === 1 ? 'the title names' : 'the titles name';
    return `${some.length === 1 ? 'row' : 'rows'} ${rows.join(', ')}${more}: ${titles} a ${named}, and the kind is ${kind}. Give the rows a column of kinds, or change the files once they are written.`;
  });
}

function words(written: Written | undefined): string | undefined {
  return typeof written === 'string' ? written : undefined;
}

function read<T>(written: Written | undefined, parse: (text: string) => Outcome<T>): T | undefined {
  const outcome = typeof written === 'string' ? parse(written) : null;
  return outcome?.ok === true ? outcome.value : undefined;
}
