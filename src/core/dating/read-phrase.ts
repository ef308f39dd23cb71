import { dayFromIso, isoDays } from '../calendars/reckoning.ts';
import { good, type Outcome } from '../outcome.ts';
import { choice, span } from './combine.ts';
import type { Reading } from './dating.ts';
import { readEdtf } from './edtf.ts';
import { readGlossed } from './gloss.ts';
import type { Surroundings } from './point-reader.ts';
import { qualify, readYears, yearOfIso } from './reading.ts';
import { pointReader } from './read-point.ts';
import { readPair, splits } from './pair.ts';
import { ABOUT, AND, BETWEEN, BOUND_WORDS, FROM, ONWARDS, OR, PERHAPS, TO, type BoundWord } from './words.ts';
import { anyOf } from './written-text.ts';

/** A word before a date: a word of letters must not run into more letters, and a bare c must not make `C12` "about 12". */
const before = (words: readonly string[]): RegExp =>
  new RegExp(`^${anyOf(words)}(?:(?<=[^\\p{L}])|(?=[^\\p{L}])) ?(?=.)`, 'iu');
const between = (words: readonly string[]): RegExp => new RegExp(` ${anyOf(words)} `, 'gi');

const ABOUT_WORD = before(ABOUT);
const PERHAPS_WORD = before(PERHAPS);
const DOUBT_AFTER = / ?(?:\?|\(\?\)|\(probably\)|\(perhaps\))$/i;
const ABOUT_AFTER = / (?:or so|or thereabouts|\(circa\)|\(c\.\)|\(about\))$/i;
const ONWARDS_AFTER = new RegExp(` ${anyOf(ONWARDS)}$`, 'i');
const BOUNDS = BOUND_WORDS.map((bound) => ({ bound, found: before(bound.words) }));
const AFTER_OR = [
  { found: /,? (?:or|and) (?:later|after)$/i, bound: { fixes: 'earliest', nameIsAllowed: true, other: null } },
  { found: /,? (?:or|and) (?:earlier|before)$/i, bound: { fixes: 'latest', nameIsAllowed: true, other: null } },
] as const;

type Read = (text: string) => Outcome<Reading> | undefined;

/** Reads a date in free words. Undefined when any word of it is not understood. */
export function readPhrase(text: string, surroundings: Surroundings): Outcome<Reading> | undefined {
  const point = pointReader((bound) => readEdtf(bound) ?? readPhrase(bound, { reigns: [] }));
  const readPoint: Read = (words) => qualified(words, (bare) => point(bare, surroundings));
  return qualified(text, (words) => {
    const glossed = readGlossed(words, (date) => readPhrase(date, surroundings));
    if (glossed) return glossed;
    const plain = point(words, surroundings);
    if (plain?.ok) return plain;
    return (
      readChoice(words, readPoint) ??
      readRange(words, readPoint) ??
      readBound(words, readPoint) ??
      plain ??
      edtfDate(words)
    );
  });
}

/** A date of EDTF with hyphens may stand wherever a year may, when it is no range of years. */
function edtfDate(text: string): Outcome<Reading> | undefined {
  return text.includes('/') ? undefined : readEdtf(text);
}

/** Takes off "about" and "perhaps" before the words and after them, and puts them on what is read. */
function qualified(text: string, read: Read): Outcome<Reading> | undefined {
  let words = text;
  let about = false;
  let doubtful = false;
  for (let taken = true; taken;) {
    taken = false;
    const parts = /^\((?<inside>[^()]+)\)$/.exec(words)?.groups;
    if (parts?.['inside'] !== undefined) words = parts['inside'].trim();
    for (const [found, mark] of [
      [PERHAPS_WORD, 'doubtful'],
      [ABOUT_WORD, 'about'],
      [DOUBT_AFTER, 'doubtful'],
      [ABOUT_AFTER, 'about'],
    ] as const) {
      const rest = words.replace(found, '').trim();
      if (rest === words || rest === '' || /^C\d{1,2}(?!\d)/.test(words)) continue;
      words = rest;
      taken = true;
      if (mark === 'about') about = true;
      else doubtful = true;
    }
  }
  const outcome = read(words);
  return outcome?.ok ? good(qualify(outcome.value, about, doubtful)) : outcome;
}

/** `1279 or 1280`, `1279, 1281 or 1283`, `1279 and 1280`. */
function readChoice(text: string, readPoint: Read): Outcome<Reading> | undefined {
  for (const [words, kind] of [
    [OR, 'or'],
    [AND, 'and'],
  ] as const) {
    const parts = text.split(new RegExp(`,? ${anyOf(words)} |, `, 'i'));
    if (parts.length < 2 || parts.length > 8 || !between(words).test(text)) continue;
    const readings = readSeveral(parts, readPoint);
    if (readings) return choice(readings, kind);
  }
  return undefined;
}

function readSeveral(parts: readonly string[], readPoint: Read): readonly Reading[] | undefined {
  const last = parts.at(-1) ?? '';
  const first = parts[0] ?? '';
  const readings: Reading[] = [];
  for (const [index, part] of parts.entries()) {
    const pair =
      index === parts.length - 1 ? readPair(first, part, readPoint)?.right : readPair(part, last, readPoint)?.left;
    const outcome = readRange(part, readPoint) ?? pair;
    if (!outcome?.ok) return undefined;
    readings.push(outcome.value);
  }
  return readings;
}

const RANGE_WORDS = between(TO);
const FROM_WORD = before([...FROM]);
const BETWEEN_WORD = before([...BETWEEN]);
const AND_WORDS = between(AND);

/** `1279-81`, `1279 to 1281`, `between 1279 and 1281`, `27 BC - AD 14`, `12./13. Jh.` */
function readRange(text: string, readPoint: Read): Outcome<Reading> | undefined {
  const isBetween = BETWEEN_WORD.test(text);
  const words = text.replace(isBetween ? BETWEEN_WORD : FROM_WORD, '');
  const onwards = words.replace(ONWARDS_AFTER, '');
  if (onwards !== words) return readFrom(onwards, readPoint);
  const joints = isBetween ? [AND_WORDS] : /\d{3}/.test(words) ? [RANGE_WORDS, /-/g] : [RANGE_WORDS, /[-/]/g];
  let problem: Outcome<Reading> | undefined;
  for (const { left, right } of joints.flatMap((joint) => splits(words, joint))) {
    const pair = readPair(left, right, readPoint);
    if (!pair) continue;
    if (!pair.left.ok || !pair.right.ok) {
      problem ??= pair.left.ok ? pair.right : pair.left;
      continue;
    }
    return span(pair.left.value, pair.right.value, text, pair.words);
  }
  return problem;
}

function readFrom(text: string, readPoint: Read): Outcome<Reading> | undefined {
  const outcome = readPoint(text) ?? edtfDate(text);
  return outcome?.ok
    ? good(bounded(outcome.value, { fixes: 'earliest', nameIsAllowed: true, other: 'open' }))
    : outcome;
}

/** `before 1351`, `post 1351`, `not before 1351`, `1351 or later`. */
function readBound(text: string, readPoint: Read): Outcome<Reading> | undefined {
  for (const { bound, found } of [...BOUNDS, ...AFTER_OR]) {
    if (!found.test(text)) continue;
    const words = text.replace(found, '').replace(/^-/, '');
    const outcome = readPoint(words) ?? edtfDate(words) ?? readRange(words, readPoint);
    if (outcome?.ok) return good(bounded(outcome.value, bound));
    if (outcome) return outcome;
  }
  return undefined;
}

/** The years before or after a date, its own allowed or not. The day is kept where one is known. */
function bounded(reading: Reading, { fixes, nameIsAllowed, other }: Omit<BoundWord, 'words'>): Reading {
  const step = nameIsAllowed ? 0 : fixes === 'latest' ? -1 : 1;
  // "Before" looks to the beginning of what is named, "by" to its end; "after" the other way about.
  const edge = (fixes === 'latest') === nameIsAllowed ? 'last' : 'first';
  const iso = edge === 'last' ? reading.to : reading.from;
  const year = edge === 'last' ? reading.latest : reading.earliest;
  const { about, doubtful, calendar } = reading;
  if (iso !== undefined && reading.reckoning && /^(?:julian|gregorian)$/.test(calendar)) {
    const day = dayFromIso(iso, reading.reckoning) + step;
    const { from, reckoning } = isoDays(day, day);
    const years = fixes === 'latest' ? readYears(other, yearOfIso(from)) : readYears(yearOfIso(from), other);
    const open = other === 'open' ? '..' : '';
    const days = fixes === 'latest' ? { to: from, edtf: `${open}/${from}` } : { from, edtf: `${from}/${open}` };
    return qualify({ ...years, calendar: reckoning, reckoning, ...days }, about, doubtful);
  }
  const limit = typeof year === 'number' ? year + step : year;
  const years = fixes === 'latest' ? readYears(other, limit, calendar) : readYears(limit, other, calendar);
  return qualify(years, about, doubtful);
}
