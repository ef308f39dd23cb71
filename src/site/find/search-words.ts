import Fuse from 'fuse.js';
import { wordsOf } from './fold.ts';
import { parseQuery } from './parse-query.ts';
import type { ReadMeasure, Span, Term, Way } from './parse-query.ts';
import type { FindRecord } from './record.ts';

/**
 * How a record answers: how well, 0 (worst) to 1 (best), by which word when only by one spelled nearly so, and by which of
 * its words in all.
 */
export type Told = { readonly score: number; readonly similar: string | null; readonly by: readonly string[] };

/** For a text, how each record that answers it does so, by its place in the list of records. */
export type WordSearch = (text: string) => ReadonlyMap<number, Told>;

// A slip of the finger may cost a third of the word; a word of three letters must be right.
const THRESHOLD = 0.34;
const SHORTEST_FUZZY = 4;
/** Letters a word of the vocabulary may lack of those asked for and still be compared. */
const MAY_LACK = 2;
const IN_TITLE = 1.6;
/** A date of one year says as much as a word; one of a thousand years next to nothing. */
const DATED = 0.9;

type Known = { readonly word: string; readonly letters: number; readonly in: readonly number[] };
type Index = {
  readonly records: readonly FindRecord[];
  readonly vocabulary: ReadonlyMap<string, Known>;
  readonly titles: readonly ReadonlySet<string>[];
};

/**
 * Builds a search over records. Everything asked for must be answered: a word by the same word, by its singular, by one that begins
 * with it or holds it, or, from four letters up, by one that is nearly it (fuse.js over the vocabulary, narrowed by the letters the
 * words share: measured at ten thousand records this is two orders of magnitude quicker than fuse.js over the records); a date, a
 * weight or a size by a piece whose own may be the same.
 */
export function wordSearch(records: readonly FindRecord[], read: ReadMeasure): WordSearch {
  const index: Index = {
    records,
    vocabulary: vocabularyOf(records),
    titles: records.map(({ title }) => new Set(wordsOf(title))),
  };
  return (text) => {
    const terms = parseQuery(text, read);
    const [first, ...others] = terms.map((term) => answersTo(term, index));
    const found = others.reduce(inBoth, first ?? new Map<number, Told>());
    const most = Math.max(1, terms.length) * IN_TITLE;
    return new Map([...found].map(([at, told]) => [at, { ...told, score: told.score / most }]));
  };
}

/** What both things find, with the likeness of the two together. */
function inBoth(one: ReadonlyMap<number, Told>, other: ReadonlyMap<number, Told>): Map<number, Told> {
  const both = new Map<number, Told>();
  for (const [at, told] of other) {
    const before = one.get(at);
    if (before === undefined) continue;
    both.set(at, {
      score: before.score + told.score,
      similar: before.similar ?? told.similar,
      by: [...before.by, ...told.by],
    });
  }
  return both;
}

function vocabularyOf(records: readonly FindRecord[]): ReadonlyMap<string, Known> {
  const postings = new Map<string, number[]>();
  for (const [at, { words }] of records.entries()) {
    for (const word of words.split(' ')) {
      const held = postings.get(word);
      if (held === undefined) postings.set(word, [at]);
      else held.push(at);
    }
  }
  return new Map([...postings].map(([word, held]) => [word, { word, letters: lettersOf(word), in: held }]));
}

/** The best of the ways in which each record answers. */
function answersTo(term: Term, index: Index): Map<number, Told> {
  const found = new Map<number, Told>();
  for (const way of term)
    for (const [at, told] of answersBy(way, index)) {
      const before = found.get(at);
      if (before === undefined || isBetter(told, before)) found.set(at, told);
    }
  return found;
}

function isBetter(one: Told, other: Told): boolean {
  if ((one.similar === null) !== (other.similar === null)) return one.similar === null;
  return one.score > other.score;
}

function answersBy(way: Way, index: Index): ReadonlyMap<number, Told> {
  if (way.by === 'word') return withJoined(way, index);
  if (way.by === 'words') return way.words.map((word) => recordsFor({ word, exactly: true }, index)).reduce(inBoth);
  const found = new Map<number, Told>();
  for (const [at, record] of index.records.entries()) {
    const own = ownSpan(record, way.by);
    if (own === null || own.low > way.span.high || own.high < way.span.low) continue;
    // The narrower what both say, the better they agree.
    const width = Math.min(1e4, Math.max(own.high, way.span.high) - Math.min(own.low, way.span.low));
    found.set(at, { score: DATED / (1 + Math.log10(1 + width)), similar: null, by: [] });
  }
  return found;
}

function ownSpan({ years, by }: FindRecord, measure: 'years' | 'weight' | 'size'): Span | null {
  if (measure === 'years') return years === null ? null : { low: years[0] ?? -Infinity, high: years[1] ?? Infinity };
  const value = by[measure];
  return value === null ? null : { low: value, high: value };
}

/** Letters that each half of two words written as one has at least. */
const LEAST_HALF = 3;

/** The records that hold a word, or, where none does as it is, both halves of it: `lovetoken` for love token. */
function withJoined(way: { readonly word: string; readonly exactly: boolean }, index: Index): Map<number, Told> {
  const found = recordsFor(way, index);
  const { word, exactly } = way;
  if (exactly || [...found.values()].some(({ similar }) => similar === null)) return found;
  for (let at = LEAST_HALF; at <= word.length - LEAST_HALF; at += 1) {
    const halves = [word.slice(0, at), word.slice(at)];
    if (!halves.every((half) => index.vocabulary.has(half))) continue;
    const [first, second] = halves.map((half) => recordsFor({ word: half, exactly: true }, index));
    if (first === undefined || second === undefined) continue;
    for (const [record, { score, by }] of inBoth(first, second))
      found.set(record, { score: score / 3, similar: null, by });
  }
  return found;
}

/** The records that hold a word like this one, each with how like it is. */
function recordsFor(
  { word, exactly }: { readonly word: string; readonly exactly: boolean },
  { vocabulary, titles }: Index,
): Map<number, Told> {
  const found = new Map<number, Told>();
  for (const { known, score, isSimilar } of exactly ? same(word, vocabulary) : like(word, vocabulary)) {
    for (const at of known.in) {
      const weighed = titles[at]?.has(known.word) === true ? score * IN_TITLE : score;
      if (weighed > (found.get(at)?.score ?? 0))
        found.set(at, { score: weighed, similar: isSimilar ? known.word : null, by: [known.word] });
    }
  }
  return found;
}

type Like = { readonly known: Known; readonly score: number; readonly isSimilar: boolean };

function same(word: string, vocabulary: ReadonlyMap<string, Known>): readonly Like[] {
  const known = vocabulary.get(word);
  return known === undefined ? [] : [{ known, score: 1, isSimilar: false }];
}

function like(word: string, vocabulary: ReadonlyMap<string, Known>): readonly Like[] {
  const whole: Like[] = [];
  const singulars = singularsOf(word);
  for (const known of vocabulary.values()) {
    const score =
      known.word === word ? 1
      : singulars.includes(known.word) ? 0.95
      : known.word.startsWith(word) ? (0.8 * word.length) / known.word.length
      : word.length > 2 && known.word.includes(word) ? (0.5 * word.length) / known.word.length
      : 0; // prettier-ignore
    if (score > 0) whole.push({ known, score, isSimilar: false });
  }
  if (whole.length > 0 || word.length < SHORTEST_FUZZY) return whole;
  const letters = lettersOf(word);
  const near = [...vocabulary.values()].filter(
    (known) =>
      !/\d/.test(known.word) &&
      Math.abs(known.word.length - word.length) <= MAY_LACK &&
      countBits(letters & ~known.letters) <= MAY_LACK,
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
