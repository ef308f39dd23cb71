import { findLegends } from '../../core/legends/match-mask.ts';
import type { PackedRecords, PackedTexts } from './pack.ts';
import type { ReadMeasure } from './parse-query.ts';
import { reasonsOf } from './reason.ts';
import type { Reason } from './reason.ts';
import { FACETS } from './record.ts';
import type { FacetName, ShownRecord } from './record.ts';
import type { FindState, Sort } from './state.ts';
import { SIMILAR, wordSearch } from './search-words.ts';
import type { Hits } from './search-words.ts';
import { placesOf, shownAt, tableOf } from './table.ts';
import type { FindTable } from './table.ts';

/** A piece that answers, with the legend that did where one was sought, the word where only one spelled nearly so did, and why. */
export type Found = {
  readonly record: ShownRecord;
  readonly legend: string | null;
  readonly similar: string | null;
  /** Its words by which it answers, folded. */
  readonly by: readonly string[];
  /** What of it they are, but for those of its title. */
  readonly reasons: readonly Reason[];
};

export type Answer = {
  /** How many pieces match, and how many more only a similar spelling finds. */
  readonly matching: number;
  readonly similar: number;
  /** The first so many of both, in the order asked for; what is only spelled nearly so after all that matches. */
  readonly first: (count: number) => readonly Found[];
  /** For each facet, how many pieces each value would leave: those that answer everything asked of other facets. */
  readonly counts: Readonly<Record<FacetName, ReadonlyMap<string, number>>>;
};

/** What answers whatever is asked of a cabinet's records. */
export type Finder = (state: FindState) => Answer;

type Legends = ReadonlyMap<number, { readonly legend: string; readonly score: number }>;

/** A finder over packed records; without the words of their texts while those are on their way, and so null. */
export function finderOf(packed: PackedRecords, texts: PackedTexts | null, read: ReadMeasure): Finder {
  const table = tableOf(packed, texts);
  const search = wordSearch(table, read);
  const ranks = new Map<Sort, Uint32Array>();
  return (state) => {
    const hits = state.words === '' ? null : search(state.words);
    const legends = state.legend === '' ? null : legendsLike(state.legend, table);
    const sort = state.sort ?? (hits === null && legends === null ? 'number' : null);
    const rank = sort === null ? null : (ranks.get(sort) ?? ranksBy(sort, table));
    if (sort !== null && rank !== null) ranks.set(sort, rank);
    const fails = failsOf(table, state);
    const sought = new Uint8Array(table.count);
    const keys = new Float64Array(table.count);
    let [found, similar] = [0, 0];
    for (let at = 0; at < table.count; at += 1) {
      const score = hits === null ? 1 : (hits.scores[at] ?? 0);
      const like = legends === null ? 0 : (legends.get(at)?.score ?? null);
      if (score === 0 || like === null) continue;
      sought[at] = 1;
      if (fails.count[at] !== 0) continue;
      if (score < 0) similar += 1;
      keys[found] = keyOf(at, score, rank?.[at] ?? worthOf(score, like));
      found += 1;
    }
    const ordered = keys.subarray(0, found).sort();
    return {
      matching: found - similar,
      similar,
      first: (count) => Array.from(ordered.subarray(0, count), (key) => foundAt(key % PLACES, table, hits, legends)),
      counts: countsOf(table, sought, fails),
    };
  };
}

// A key says in one number what comes before what: what matches, then what is similar; of each the better; of equals the earlier.
const PLACES = 2 ** 20;
const AFTER_ALL = 2 ** 51;
const FINEST = 2 ** 26;

const keyOf = (at: number, score: number, rank: number): number => (score < 0 ? AFTER_ALL : 0) + rank * PLACES + at;

/** The better, the smaller: from 0 up to 2 ** 28. */
const worthOf = (score: number, like: number): number =>
  Math.round((3 - (score < 0 ? score - SIMILAR : score) - like) * FINEST);

function foundAt(at: number, table: FindTable, hits: Hits | null, legends: Legends | null): Found {
  const { similar = null, by = [] } = hits?.told(at) ?? {};
  return {
    record: shownAt(table, at),
    legend: legends?.get(at)?.legend ?? null,
    similar,
    by: by.map(({ word }) => word),
    reasons: reasonsOf(by, at),
  };
}

/** The best legend of each piece that a mask could be part of. */
function legendsLike(mask: string, { legends }: FindTable): Legends {
  const all = (legends ?? []).flatMap((own, at) => own.map((legend) => ({ id: String(at), legend })));
  const best = new Map<number, { legend: string; score: number }>();
  for (const { id, legend, score } of findLegends(mask, all))
    if (!best.has(Number(id))) best.set(Number(id), { legend, score });
  return best;
}

/** Of each record, in how many facets it is none of what was chosen, and the last of those. */
type Fails = { readonly count: Uint8Array; readonly facet: Uint8Array };

function failsOf({ count: all, facets }: FindTable, { chosen }: FindState): Fails {
  const [count, facet] = [new Uint8Array(all), new Uint8Array(all)];
  for (const [index, name] of FACETS.entries()) {
    if (chosen[name].length === 0) continue;
    const has = new Uint8Array(all);
    for (const [value, list] of facets[name])
      if (chosen[name].includes(value)) for (const at of Array.from(placesOf(list))) has[at] = 1;
    for (let at = 0; at < all; at += 1) {
      if (has[at] === 1) continue;
      count[at] = (count[at] ?? 0) + 1;
      facet[at] = index;
    }
  }
  return { count, facet };
}

function countsOf({ facets }: FindTable, sought: Uint8Array, fails: Fails): Answer['counts'] {
  const of = FACETS.map((facet, index) => {
    const fits = sought.map((is, at) =>
      is === 1 && (fails.count[at] === 0 || (fails.count[at] === 1 && fails.facet[at] === index)) ? 1 : 0,
    );
    const counts = new Map<string, number>();
    for (const [value, list] of facets[facet]) {
      const places = placesOf(list);
      let count = 0;
      for (let place = 0; place < places.length; place += 1) count += fits[places[place] ?? 0] ?? 0;
      if (count > 0) counts.set(value, count);
    }
    return [facet, counts];
  });
  return Object.fromEntries(of) as Answer['counts'];
}

const TITLES = new Intl.Collator('en', { numeric: true });

/** The place of each record in an order; what is not recorded last, the heaviest, largest and best first, the oldest first. */
function ranksBy(sort: Sort, table: FindTable): Uint32Array {
  const ranks = new Uint32Array(table.count);
  if (sort === 'number') return ranks;
  const { packed } = table;
  const places = Array.from(ranks, (_rank, at) => at);
  if (sort === 'title') places.sort((a, b) => TITLES.compare(packed.title[a] ?? '', packed.title[b] ?? '') || a - b);
  else {
    const values = places.map((at) => shownAt(table, at).by[sort]);
    const way = sort === 'date' ? 1 : -1;
    places.sort((a, b) => {
      const [one, other] = [values[a] ?? null, values[b] ?? null];
      if (one === null || other === null) return Number(one === null) - Number(other === null) || a - b;
      return way * (one - other) || a - b;
    });
  }
  for (const [rank, at] of places.entries()) ranks[at] = rank;
  return ranks;
}
