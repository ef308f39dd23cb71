/** More than this on one page is more than anybody reads, and heavy on a telephone. */
const MOST_SHOWN = 200;

/** The first of many, and how many were left off. */
export type MostShown<Thing> = { readonly shown: readonly Thing[]; readonly more: number };

export function mostShown<Thing>(things: readonly Thing[]): MostShown<Thing> {
  return { shown: things.slice(0, MOST_SHOWN), more: Math.max(0, things.length - MOST_SHOWN) };
}
