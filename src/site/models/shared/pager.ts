/** The pages of a long list, and which of them this is. */
export type Pager = {
  readonly pages: readonly { readonly page: number; readonly to: string; readonly isHere: boolean }[];
};

/** A page of a long list: what is on it, counted from 1, and the way to the others; null where there is one alone. */
export type CutPage<Thing> = { readonly shown: readonly Thing[]; readonly count: number; readonly pager: Pager | null };

export function cutPage<Thing>(
  things: readonly Thing[],
  page: number,
  most: number,
  to: (page: number) => string,
): CutPage<Thing> {
  const count = Math.max(1, Math.ceil(things.length / most));
  const pages = pagesNear(page, count).map((one) => ({ page: one, to: to(one), isHere: one === page }));
  return { shown: things.slice((page - 1) * most, page * most), count, pager: count === 1 ? null : { pages } };
}

/** The pages after the first of a list of so many things. */
export function furtherPages(things: number, most: number): readonly number[] {
  const count = Math.ceil(things / most);
  return Array.from({ length: Math.max(0, count - 1) }, (_, at) => at + 2);
}

/** Steps in which the pages of a list are crossed. */
const STEPS = 12;

/** Pages that a page leads to: the next ones, the first, the last, and a few steps between, so that a long list is soon crossed. */
function pagesNear(page: number, count: number): readonly number[] {
  const step = Math.ceil(count / STEPS);
  const all = Array.from({ length: count }, (_, at) => at + 1);
  return all.filter((one) => Math.abs(one - page) <= 2 || one === 1 || one === count || one % step === 0);
}
