import { findLegends } from '../../core/legends/match-mask.ts';
import type { ReadMeasure } from './parse-query.ts';
import { FACETS } from './record.ts';
import type { FacetName, FindRecord } from './record.ts';
import type { FindState, Sort } from './state.ts';
import { wordSearch } from './search-words.ts';
import type { WordSearch } from './search-words.ts';

/** A piece that answers, with the legend that did where one was sought, the word where only one spelled nearly so did, and why. */
export type Found = {
  readonly record: FindRecord;
  readonly legend: string | null;
  readonly similar: string | null;
  /** Its words by which it answers, folded. */
  readonly by: readonly string[];
};

export type Answer = {
  readonly found: readonly Found[];
  /** For each facet, how many pieces each value would leave: those that answer everything asked of other facets. */
  readonly counts: Readonly<Record<FacetName, ReadonlyMap<string, number>>>;
};

/** What answers whatever is asked of these records, in the order asked for. */
export type Finder = (state: FindState) => Answer;

export function finderOf(records: readonly FindRecord[], read: ReadMeasure): Finder {
  const search = wordSearch(records, read);
  return (state) => choose(records, search, state);
}

/** The pieces that answer what was asked, in the order asked for. */
export function choose(records: readonly FindRecord[], search: WordSearch, state: FindState): Answer {
  const sought = soughtIn(records, search, state);
  const fits = (record: FindRecord, but: FacetName | null): boolean =>
    FACETS.every((facet) => {
      const chosen = state.chosen[facet];
      return (
        facet === but || chosen.length === 0 || chosen.some((value) => record.facets[facet]?.includes(value) === true)
      );
    });
  const counts = Object.fromEntries(
    FACETS.map((facet) => [
      facet,
      countOf(
        sought.filter(({ record }) => fits(record, facet)),
        facet,
      ),
    ]),
  ) as Answer['counts'];
  const found = sought.filter(({ record }) => fits(record, null));
  const isSought = state.words !== '' || state.legend !== '';
  const order = state.sort ?? (isSought ? null : 'number');
  const ordered = order === null || order === 'number' ? inOrder(found, order) : inOrderOf(found, order);
  // Whatever the order: what is only spelled nearly so comes after all that matches.
  const isExact = ({ similar }: Found): boolean => similar === null;
  return { found: [...ordered.filter(isExact), ...ordered.filter((one) => !isExact(one))], counts };
}

type Scored = Found & { readonly score: number; readonly at: number };

/** What words and mask leave, with how well each answers. */
function soughtIn(records: readonly FindRecord[], search: WordSearch, { words, legend }: FindState): readonly Scored[] {
  const byWords = words === '' ? null : search(words);
  const byLegend = legend === '' ? null : legendsLike(legend, records);
  return records.flatMap((record, at) => {
    const told = byWords === null ? { score: 0, similar: null, by: [] } : byWords.get(at);
    const matched = byLegend === null ? null : byLegend.get(record.id);
    if (told === undefined || matched === undefined) return [];
    return [
      {
        record,
        at,
        legend: matched?.legend ?? null,
        similar: told.similar,
        by: told.by,
        score: told.score + (matched?.score ?? 0),
      },
    ];
  });
}

/** The best legend of each piece that a mask could be part of. */
function legendsLike(
  mask: string,
  records: readonly FindRecord[],
): ReadonlyMap<string, { legend: string; score: number }> {
  const all = records.flatMap(({ id, legends }) => legends.map((legend) => ({ id, legend })));
  const best = new Map<string, { legend: string; score: number }>();
  for (const { id, legend, score } of findLegends(mask, all)) if (!best.has(id)) best.set(id, { legend, score });
  return best;
}

function countOf(found: readonly Found[], facet: FacetName): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { record } of found) {
    for (const value of record.facets[facet] ?? []) counts.set(value, (counts.get(value) ?? 0) + 1);
  }
  return counts;
}

/** Best first, or as the records come: in the order of their inventory numbers. */
function inOrder(found: readonly Scored[], order: 'number' | null): readonly Found[] {
  return order === 'number' ? found : found.toSorted((one, other) => other.score - one.score || one.at - other.at);
}

const TITLES = new Intl.Collator('en', { numeric: true });

/** By one measure, what is not recorded last; the heaviest, largest and best first, the oldest first. */
function inOrderOf(found: readonly Scored[], sort: Exclude<Sort, 'number'>): readonly Found[] {
  if (sort === 'title') return found.toSorted((one, other) => TITLES.compare(one.record.title, other.record.title));
  const way = sort === 'date' ? 1 : -1;
  return found.toSorted((one, other) => {
    const [a, b] = [one.record.by[sort], other.record.by[sort]];
    if (a === null || b === null) return Number(a === null) - Number(b === null) || one.at - other.at;
    return way * (a - b) || one.at - other.at;
  });
}
