import type { Interval } from '../measures/units.ts';
import type { Mapping, ScaleId } from './grade.ts';
import { SCALES } from './scales.ts';
import { SOURCES } from './sources.ts';
import type { Scale, ScaleWord, SourceId } from './sources.ts';
import { HIGHEST, LOWEST, lowerHalf, stepBelow, upperHalf } from './steps.ts';

/** A grade in words, read on one scale. */
export type WordedGrade = { readonly words: string; readonly mappings: readonly Mapping[]; readonly proof: boolean };

type Leaning = 'near' | 'low' | 'plain' | 'good';

const TO = / (?:to|bis|à|a|tot) |-(?=[^-])|–/i;

/** Reads `VF`, `about VF`, `GVF`, `VF+`, `VF/F` (faces), `VF-EF` (between) on one scale; null when it is not at home there. */
export function readWords(text: string, scale: ScaleId): WordedGrade | null {
  const found = readFaces(text.trim(), SCALES[scale]);
  return found === null
    ? null
    : { ...found, mappings: found.mappings.map(({ source, ...span }) => ({ source: SOURCES[source], ...span })) };
}

type Found = { readonly words: string; readonly mappings: readonly Mapped[]; readonly proof: boolean };
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
  for (const match of text.matchAll(new RegExp(TO, 'gi'))) {
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
  return { words: `${a.words}${by}${b.words}`, mappings, proof: a.proof && b.proof };
}

export function union(spans: readonly Interval[]): Interval {
  return {
    low: Math.min(HIGHEST, ...spans.map(({ low }) => low)),
    high: Math.max(LOWEST, ...spans.map(({ high }) => high)),
  };
}

function readQualified(text: string, scale: Scale): Found | null {
  const words = text.trim().toLowerCase();
  const { nearWords, goodWords, nearLetters, goodLetters } = scale.qualifiers;
  const before = (list: readonly string[], gap: string) => list.find((word) => words.startsWith(`${word}${gap}`));
  const plain = found('plain', words, scale);
  if (plain !== null) return plain;
  if (words.endsWith('+')) return found('good', words.replace(/ ?\++$/, ''), scale);
  if (words.endsWith('-')) return found(words.endsWith('--') ? 'near' : 'low', words.replace(/ ?-+$/, ''), scale);
  const near = before(nearWords, ' ') ?? before(nearWords, '. ');
  if (near !== undefined) return found('near', words.slice(near.length), scale);
  const good = before(goodWords, ' ');
  if (good !== undefined) return found('good', words.slice(good.length), scale);
  const less = before(nearLetters, '');
  const more = before(goodLetters, '');
  if (less !== undefined) return found('near', words.slice(less.length), scale);
  return more === undefined ? null : found('good', words.slice(more.length), scale);
}

function found(leaning: Leaning, name: string, scale: Scale): Found | null {
  const key = name
    .replace(/[. ]/g, '')
    .replace(/^-|(?<=[a-z])-(?=[a-z])/g, (hyphen, at: number) => (at === 0 ? hyphen : ''));
  const row = scale.words.find(({ names }) => key !== '' && names.some((each) => each.toLowerCase() === key));
  if (row === undefined) return null;
  const mappings = row.mappings.map(([source, low, high]) => ({
    source,
    ...lean(leaning, { low, high }, row, source, scale),
  }));
  return { words: printed(leaning, row, scale), mappings, proof: row.proof === true };
}

/**
 * Where a qualified word stands in one table: good reaches from its upper half to the next word of that table, near from
 * the upper half of the word before; one step down where that table has no word before.
 */
function lean(leaning: Leaning, own: Interval, row: ScaleWord, source: SourceId, scale: Scale): Interval {
  if (leaning === 'plain') return own;
  if (leaning === 'low') return lowerHalf(own);
  const others = scale.words
    .filter((other) => other !== row && other.proof !== true)
    .flatMap(({ mappings }) => mappings)
    .filter(([table]) => table === source)
    .map(([, low, high]) => ({ low, high }));
  if (leaning === 'good') {
    const next = Math.min(HIGHEST + 1, ...others.map(({ low }) => low).filter((low) => low > own.high));
    return { low: upperHalf(own).low, high: next > HIGHEST ? own.high : Math.max(own.high, stepBelow(next)) };
  }
  const under = others.filter(({ high }) => high < own.low).toSorted((a, b) => b.high - a.high)[0];
  return { low: under === undefined ? stepBelow(own.low) : upperHalf(under).low, high: own.low };
}

function printed(leaning: Leaning, row: ScaleWord, scale: Scale): string {
  const { near, good } = scale.qualifiers;
  if (leaning === 'plain') return row.word;
  if (leaning === 'low') return `${row.word}-`;
  return leaning === 'good' ? `${good} ${row.word}` : `${near} ${row.word}`;
}
