import { FACETS } from './record.ts';
import type { FacetName } from './record.ts';

export const SORTS = ['number', 'date', 'title', 'weight', 'size', 'grade'] as const;
export type Sort = (typeof SORTS)[number];

/** What was asked. Several values of one facet widen the answer, several facets narrow it. */
export type FindState = {
  readonly words: string;
  /** A mask for the worn-legend finder. */
  readonly legend: string;
  /** Null for the order that comes of itself: best first when something was sought, else the inventory number. */
  readonly sort: Sort | null;
  readonly chosen: Readonly<Record<FacetName, readonly string[]>>;
};

/** Reads the state out of the query string of an address; what it does not know it leaves out. */
export function parseState(query: string): FindState {
  const asked = new URLSearchParams(query);
  const sort = asked.get('sort');
  const chosen = FACETS.map((facet) => [facet, [...new Set(asked.getAll(facet))].filter((value) => value !== '')]);
  return {
    words: (asked.get('words') ?? '').trim(),
    legend: (asked.get('legend') ?? '').trim(),
    sort: SORTS.find((known) => known === sort) ?? null,
    chosen: Object.fromEntries(chosen) as FindState['chosen'],
  };
}

/** The query string that reads back to the state: `?words=crux&mint=york`; empty when nothing is asked. */
export function formatState({ words, legend, sort, chosen }: FindState): string {
  const asked = new URLSearchParams();
  if (words !== '') asked.set('words', words);
  if (legend !== '') asked.set('legend', legend);
  for (const facet of FACETS) for (const value of chosen[facet]) asked.append(facet, value);
  if (sort !== null) asked.set('sort', sort);
  const query = asked.toString();
  return query === '' ? '' : `?${query}`;
}

/** Whether anything is asked that leaves pieces out. */
export function asksAnything({ words, legend, chosen }: FindState): boolean {
  return words !== '' || legend !== '' || FACETS.some((facet) => chosen[facet].length > 0);
}

/** Whether the list is another than lies there of itself, or in another order. */
export function isChosen(state: FindState): boolean {
  return asksAnything(state) || state.sort !== null;
}
