import { parseDate } from '../../core/dating/parse-date.ts';
import { parseSize } from '../../core/measures/parse-size.ts';
import { parseWeight } from '../../core/measures/parse-weight.ts';
import type { Outcome } from '../../core/outcome.ts';
import { oddMeasures } from '../../catalogue/odd-measures.ts';
import type { Records } from '../../catalogue/records.ts';
import { KINDS } from '../../catalogue/fields/piece-fields.ts';
import type { Written } from '../../catalogue/yaml.ts';
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
        },
        denominations,
      );
      return odd.map(({ field, says }) => `row ${row}, ${headings.get(field) ?? field}: ${says}`);
    });
}

function words(written: Written | undefined): string | undefined {
  return typeof written === 'string' ? written : undefined;
}

function read<T>(written: Written | undefined, parse: (text: string) => Outcome<T>): T | undefined {
  const outcome = typeof written === 'string' ? parse(written) : null;
  return outcome?.ok === true ? outcome.value : undefined;
}
