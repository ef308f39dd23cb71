import Fuse from 'fuse.js';
import { parseQuery } from './parse-query.ts';
import type { ReadMeasure, Span, Term, Way } from './parse-query.ts';
import { placesOf, yearsAt } from './table.ts';
import type { FindTable, Known } from './table.ts';

/** By which words a record answers, and by which of them when only one spelled nearly so does. */
export type Told = { readonly similar: string | null; readonly by: readonly Known[] };

/**
 * How the records answer what is asked: for each place how well, from above 0 to 1, or 0 where it does not; as much above `SIMILAR`
 * where only a word spelled nearly so is in it.
 */
export type Hits = { readonly scores: Float32Array; readonly told: (at: number) => Told };

/** For a text, how the records answer it. */
export type WordSearch = (text: string) => Hits;

/** Far below 0: from here up the records count that only similar words answer, after all others. */
export const SIMILAR = -100;

// A slip of the finger may cost a third of the word; a word of three letters must be right.
const THRESHOLD = 0.34;
const SHORTEST_FUZZY = 4;
/** Letters a word of the vocabulary may lack of those asked for and still be compared. */
const MAY_LACK = 2;
const IN_TITLE = 1.6;
/** A date of one year says as much as a word; one of a thousand years next to nothing. */
const DATED = 0.9;

/**
 * Builds a search over a table. Everything asked for must be answered: a word by the same word, by its singular, by one that begins
 * with it or holds it, or, from four letters up, by one that is nearly it (fuse.js over the vocabulary, narrowed by the letters the
 * words share); a date, a weight or a size by a piece whose own may be the same.
 */
export function wordSearch(table: FindTable, read: ReadMeasure): WordSearch {
  return (text) => {
    const [first, ...others] = parseQuery(text, read).map((term) => answersTo(term, table));
    const { scores, told } = others.reduce(inBoth, first ?? nothing(table));
    const most = (1 + others.length) * IN_TITLE;
    return { told, scores: scores.map((score) => (score < 0 ? SIMILAR + (score - SIMILAR) / most : score / most)) };
  };
}

const nothing = ({ count }: FindTable): Hits => ({
  scores: new Float32Array(count),
  told: () => ({ similar: null, by: [] }),
});

/** What both find, with how well each does added up. */
function inBoth(one: Hits, other: Hits): Hits {
  const scores = one.scores.map((a, at) => {
    const b = other.scores[at] ?? 0;
    if (a === 0 || b === 0) return 0;
    return a < 0 && b < 0 ? a + b - SIMILAR : a + b;
  });
  return {
    scores,
    told: (at) => {
      const [a, b] = [one.told(at), other.told(at)];
      return { similar: a.similar ?? b.similar, by: [...a.by, ...b.by] };
    },
  };
}

/** Whether a score is better than another: any that is exact than one that is not, and any than none. */
const isBetter = (one: number, other: number): boolean =>
  one !== 0 && (other === 0 || (one > 0 === other > 0 ? one > other : one > 0));

/** What either finds, as the better does. */
function inEither(one: Hits, other: Hits): Hits {
  return {
    scores: one.scores.map((a, at) => (isBetter(other.scores[at] ?? 0, a) ? (other.scores[at] ?? 0) : a)),
    told: (at) => (isBetter(other.scores[at] ?? 0, one.scores[at] ?? 0) ? other.told(at) : one.told(at)),
  };
}

/** The best of the ways in which each record answers. */
function answersTo(term: Term, table: FindTable): Hits {
  return term.map((way) => answersBy(way, table)).reduce(inEither);
}

function answersBy(way: Way, table: FindTable): Hits {
  if (way.by === 'word') return withJoined(way, table);
  if (way.by === 'words') return way.words.map((word) => withWords(same(word, table), table)).reduce(inBoth);
  const scores = new Float32Array(table.count);
  for (let at = 0; at < scores.length; at += 1) {
    const own = ownSpan(table, at, way.by);
    if (own === null || own.low > way.span.high || own.high < way.span.low) continue;
    // The narrower what both say, the better they agree.
    const width = Math.min(1e4, Math.max(own.high, way.span.high) - Math.min(own.low, way.span.low));
    scores[at] = DATED / (1 + Math.log10(1 + width));
  }
  return { ...nothing(table), scores };
}

function ownSpan({ packed }: FindTable, at: number, measure: 'years' | 'weight' | 'size'): Span | null {
  if (measure === 'years') {
    const [low, high] = yearsAt(packed, at);
    return low === null && high === null ? null : { low: low ?? -Infinity, high: high ?? Infinity };
  }
  const value = packed[measure][at] ?? null;
  return value === null ? null : { low: value, high: value };
}

/** Letters that each half of two words written as one has at least. */
const LEAST_HALF = 3;

/** The records that hold a word, or, where none does as it is, both halves of it: `lovetoken` for love token. */
function withJoined({ word, exactly }: { readonly word: string; readonly exactly: boolean }, table: FindTable): Hits {
  const likes = exactly ? same(word, table) : like(word, table);
  let found = withWords(likes, table);
  if (exactly || likes.some(({ isSimilar }) => !isSimilar)) return found;
  for (let at = LEAST_HALF; at <= word.length - LEAST_HALF; at += 1) {
    const [first, second] = [same(word.slice(0, at), table), same(word.slice(at), table)];
    if (first.length === 0 || second.length === 0) continue;
    const halves = inBoth(withWords(first, table), withWords(second, table));
    found = inEither(found, { ...halves, scores: halves.scores.map((score) => score / 3) });
  }
  return found;
}

/** A word of the vocabulary, and how like one that is asked for it is. */
type Like = { readonly known: Known; readonly score: number; readonly isSimilar: boolean };

/** The records that hold any of these words, each as the best of its own answers. */
function withWords(likes: readonly Like[], { count }: FindTable): Hits {
  const scores = new Float32Array(count);
  const by = new Int32Array(count);
  for (const [index, { known, score, isSimilar }] of likes.entries())
    for (const { part, list } of known.in) {
      const weighed = (part === 'title' ? score * IN_TITLE : score) + (isSimilar ? SIMILAR : 0);
      const places = placesOf(list);
      for (let place = 0; place < places.length; place += 1) {
        const at = places[place] ?? 0;
        if (!isBetter(weighed, scores[at] ?? 0)) continue;
        scores[at] = weighed;
        by[at] = index;
      }
    }
  return {
    scores,
    told: (at) => {
      const found = scores[at] === 0 ? undefined : likes[by[at] ?? -1];
      if (found === undefined) return { similar: null, by: [] };
      return { similar: found.isSimilar ? found.known.word : null, by: [found.known] };
    },
  };
}

function same(word: string, { words }: FindTable): readonly Like[] {
  const known = words.get(word);
  return known === undefined ? [] : [{ known, score: 1, isSimilar: false }];
}

function like(word: string, { words }: FindTable): readonly Like[] {
  const whole: Like[] = [];
  const singulars = singularsOf(word);
  for (const known of words.values()) {
    const score =
      known.word === word ? 1
      : singulars.includes(known.word) ? 0.95
      : known.word.startsWith(word) ? (0.8 * word.length) / known.word.length
      : word.length > 2 && known.word.includes(word) ? (0.5 * word.length) / known.word.length
      : 0; // prettier-ignore
    if (score > 0) whole.push({ known, score, isSimilar: false });
  }
  return whole.length > 0 || word.length < SHORTEST_FUZZY ? whole : nearly(word, words);
}

/** The words spelled nearly so. */
function nearly(word: string, words: ReadonlyMap<string, Known>): readonly Like[] {
  const letters = lettersOf(word);
  const near = [...words.values()].filter(
    (known) =>
      Math.abs(known.word.length - word.length) <= MAY_LACK &&
      !/\d/.test(known.word) &&
      countBits(letters & ~lettersOf(known.word)) <= MAY_LACK,
  );
  const fuse = new Fuse(near, { keys: ['word'], threshold: THRESHOLD, includeScore: true, distance: 20 });
  return fuse.search(word).map(({ item, score = 1 }) => ({ known: item, score: 0.45 * (1 - score), isSimilar: true }));
}

/** What a word is when it is a plural: `groats`, `halfpennies`, `pence`, `crosses`, `denarii`. */
function singularsOf(word: string): readonly string[] {
  return [
    ...(word.length > 3 && word.endsWith('s') ? [word.slice(0, -1)] : []),
    ...(word.length > 4 && word.endsWith('es') ? [word.slice(0, -2)] : []),
    ...(word.length > 4 && word.endsWith('ies') ? [`${word.slice(0, -3)}y`] : []),
    ...(word.endsWith('pence') ? [`${word.slice(0, -5)}penny`] : []),
    ...(/(?:ari|re|lid)i$/.test(word) ? [word.replace(/i$/, 'us')] : []),
  ];
}

/** One bit a letter: the 26 of the alphabet, and six shared by everything else. */
function lettersOf(word: string): number {
  let bits = 0;
  for (const character of word) {
    const place = character.charCodeAt(0) - 97;
    bits |= 1 << (place >= 0 && place < 26 ? place : 26 + (Math.abs(place) % 6));
  }
  return bits;
}

function countBits(bits: number): number {
  let count = 0;
  for (let left = bits >>> 0; left !== 0; left &= left - 1) count += 1;
  return count;
}
