import type { Interval } from '../measures/units.ts';
import type { Mapping, ScaleId } from './grade.ts';
import { SCALES } from './scales.ts';
import { SOURCES } from './sources.ts';
import type { Scale, ScaleWord, SourceId } from './sources.ts';
import { HIGHEST, LOWEST, lowerHalf, stepBelow, upperHalf } from './steps.ts';

/** A grade in words, read on one scale. */
export type WordedGrade = {
  readonly words: string;
  readonly mappings: readonly Mapping[];
  readonly proof: boolean;
  /** Where its labels are in the order of the scale; null for numbers. */
  readonly rank: Interval | null;
};

type Leaning = 'near' | 'low' | 'plain' | 'good';

const TO = / (?:to|bis|à|a|tot) |-(?=[^-])/gi;

/** `BC+` and `fast st` are words of their own, and take no second qualifier. */
const LEANS_ALREADY = /[-+?]$|^fast /;

/** Reads `VF`, `about VF`, `GVF`, `VF+`, `VF/F` (faces), `VF-EF` (between) on one scale; null when it is not at home there. */
export function readWords(text: string, scale: ScaleId): WordedGrade | null {
  const found = readFaces(text.trim(), SCALES[scale]);
  return found === null
    ? null
    : { ...found, mappings: found.mappings.map(({ source, ...span }) => ({ source: SOURCES[source], ...span })) };
}

type Found = Omit<WordedGrade, 'mappings' | 'rank'> & { readonly mappings: readonly Mapped[]; readonly rank: Interval };
type Mapped = Interval & { readonly source: SourceId };

function readFaces(text: string, scale: Scale): Found | null {
  const whole = readBetween(text, scale);
  if (whole !== null) return whole;
  const [obverse = '', reverse, more] = text.split('/');
  if (reverse === undefined || more !== undefined) return null;
  return joined(readBetween(obverse, scale), readBetween(reverse, scale), '/');
}

function readBetween(text: string, scale: Scale): Found | null {
  const one = readQualified(text, scale);
  if (one !== null) return one;
  for (const match of text.matchAll(TO)) {
    const lower = readQualified(text.slice(0, match.index), scale);
    const upper = readQualified(text.slice(match.index + match[0].length), scale);
    const both = joined(lower, upper, '-');
    if (both !== null) return both;
  }
  return null;
}

/** From the low end of the one to the high end of the other, table by table. */
function joined(a: Found | null, b: Found | null, by: string): Found | null {
  if (a === null || b === null) return null;
  const spanOf = (found: Found, source: SourceId) =>
    found.mappings.find((each) => each.source === source) ?? union(found.mappings);
  const shared = [...a.mappings, ...b.mappings]
    .map(({ source }) => source)
    .filter((source, at, all) => all.indexOf(source) === at);
  const mappings = shared.map((source) => ({ source, ...union([spanOf(a, source), spanOf(b, source)]) }));
  return {
    words: `${a.words}${by}${b.words}`,
    mappings,
    proof: a.proof && b.proof,
    rank: { low: Math.min(a.rank.low, b.rank.low), high: Math.max(a.rank.high, b.rank.high) },
  };
}

export function union(spans: readonly Interval[]): Interval {
  return {
    low: Math.min(HIGHEST, ...spans.map(({ low }) => low)),
    high: Math.max(LOWEST, ...spans.map(({ high }) => high)),
  };
}

function readQualified(text: string, scale: Scale): Found | null {
  const words = text.trim().toLowerCase();
  const plain = found('plain', words, scale, (word) => word);
  if (plain !== null) return plain;
  if (words.endsWith('+')) return found('good', words.replace(/ ?\++$/, ''), scale, (word) => `${word}+`);
  if (words.endsWith('--')) return found('near', words.replace(/ ?-+$/, ''), scale, (word) => `${word}--`);
  if (words.endsWith('-')) return found('low', words.replace(/ ?-$/, ''), scale, (word) => `${word}-`);
  const before = scale.qualifiers.flatMap((qualifier) => [
    ...qualifier.words.flatMap((word) => [`${word} `, `${word}. `]).map((start) => [start, qualifier] as const),
    ...qualifier.letters.map((letter) => [letter, qualifier] as const),
  ]);
  // The longest start first: `near VF` is not `n` and `ear VF`.
  const lean = before.filter(([start]) => words.startsWith(start)).toSorted(([a], [b]) => b.length - a.length)[0];
  if (lean === undefined) return null;
  const [start, { leaning, print }] = lean;
  const gap = print.length === 1 ? '' : ' ';
  return found(leaning, words.slice(start.length), scale, (word) => `${print}${gap}${word}`);
}

function found(leaning: Leaning, name: string, scale: Scale, print: (word: string) => string): Found | null {
  const key = keyOf(name);
  const row = scale.words.find(({ names }) => key !== '' && names.includes(key));
  if (row === undefined || (leaning !== 'plain' && LEANS_ALREADY.test(row.word))) return null;
  const mappings = row.mappings.map(([source, low, high]) => ({
    source,
    ...lean(leaning, { low, high }, row, source, scale),
  }));
  return { words: print(row.word), mappings, proof: row.proof === true, rank: rankOf(row, leaning, scale) };
}

/** Ten for each word; near, low, plain, good in between, so that the word before, good or not, stays below. */
const LEANS: Readonly<Record<Leaning, number>> = { near: -4, low: -2, plain: 0, good: 4 };

function rankOf(row: ScaleWord, leaning: Leaning, { words }: Scale): Interval {
  const at = words.indexOf(row);
  const top = row.upTo === undefined ? at : words.findIndex(({ word }) => word === row.upTo);
  return { low: (at + 1) * 10 + LEANS[leaning], high: (top + 1) * 10 + LEANS[leaning] };
}

/** A name without stops, spaces and the hyphens inside it: `E.F.`, `vz-st`. */
function keyOf(name: string): string {
  return name.replace(/[. ]/g, '').replace(/(?<=\p{L})-(?=\p{L})/gu, '');
}

/**
 * Where a qualified word is in one table: good reaches from its upper half up to the next word, near from the upper
 * half of the word before up to its own low end. Where the table lacks the neighbour, good ends with the word, and near
 * begins one step below it.
 */
function lean(leaning: Leaning, own: Interval, row: ScaleWord, source: SourceId, scale: Scale): Interval {
  if (leaning === 'plain') return own;
  if (leaning === 'low') return lowerHalf(own);
  if (leaning === 'good') {
    const next = neighbour(row, 1, source, scale);
    const reach = next === null || next.low <= own.high ? own.high : stepBelow(next.low);
    return { low: upperHalf(own).low, high: Math.max(own.high, reach) };
  }
  const before = neighbour(row, -1, source, scale);
  return { low: before === null || before.high >= own.low ? stepBelow(own.low) : upperHalf(before).low, high: own.low };
}

function neighbour(row: ScaleWord, away: 1 | -1, source: SourceId, scale: Scale): Interval | null {
  const beside = scale.words[scale.words.indexOf(row) + away];
  const mapping = beside?.mappings.find(([table]) => table === source);
  return mapping === undefined || beside?.proof === true ? null : { low: mapping[1], high: mapping[2] };
}
