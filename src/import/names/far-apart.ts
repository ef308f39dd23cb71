import { grouped } from './grouped.ts';
import type { Span } from './spans.ts';
import { formatYears, yearsBetween } from './spans.ts';

/** A piece that stands in the name of a file of the list. */
export type InName = { readonly id: string; readonly name: string; readonly row: number; readonly made: Span | null };

/** Nobody ruled as long as this; a name may outlive its bearer on coins, so it is told and no more. */
const FAR = 100;

/** A sentence for each name that stands for pieces a century and more apart. */
export function farApart(uses: readonly InName[]): readonly string[] {
  return grouped(uses, ({ id }) => id).flatMap((some) => {
    const dated = some.flatMap(({ made, ...one }) =>
      made === null || made.high - made.low > FAR ? [] : [{ ...one, made }],
    );
    const first = dated.toSorted((a, b) => a.made.high - b.made.high)[0];
    const last = dated.toSorted((a, b) => b.made.low - a.made.low)[0];
    if (first === undefined || last === undefined) return [];
    const years = yearsBetween(first.made, last.made);
    if (years < FAR) return [];
    const centuries = Math.floor(years / 100);
    const apart = centuries === 1 ? 'a century and more' : `${centuries} centuries and more`;
    return [
      `${first.name} stands for pieces ${apart} apart: row ${first.row} (${formatYears(first.made)}) and row ${last.row} (${formatYears(last.made)}). If these are two, write the reign beside the name in the sheet, as in ${first.name} (1406-1437).`,
    ];
  });
}
