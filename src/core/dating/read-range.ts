import { dayFromIso } from '../calendars/civil.ts';
import { refuse, type Outcome } from '../outcome.ts';
import type { Reading } from './dating.ts';
import { followingYear, readHyphened, secondYearBefore } from './shortened.ts';
import { choice, span, type WordReader } from './reading.ts';
import { asCentury, YEARS_OF } from './read-century.ts';
import { ABOUT, AFTER_CHRIST, AND, BEFORE_CHRIST, BETWEEN, FROM, OR, TO } from './words.ts';
import { anyOf, wordBefore } from './written-text.ts';

/** Two dates read together, and the words they were read from once each had what it shares with the other. */
interface Pair {
  readonly left: Outcome<Reading>;
  readonly right: Outcome<Reading>;
  readonly words: { readonly left: string; readonly right: string };
}

const ENDS_BEFORE_CHRIST = new RegExp(`${anyOf(BEFORE_CHRIST)}$`, 'i');
const ENDS_AFTER_CHRIST = new RegExp(`(?<=\\d ?)${anyOf(AFTER_CHRIST)}$`, 'i');
const NAMES_ERA = new RegExp(`${anyOf([...BEFORE_CHRIST, ...AFTER_CHRIST])}$|^AD `, 'i');

const BARE = /^\d{1,4}$/;
const ERA_ALONE = new RegExp(`^${anyOf([...BEFORE_CHRIST, ...AFTER_CHRIST])}$`, 'i');
/** A year in figures, its era before or after it; a century has letters or a full stop at its number. */
const YEAR_IN_FIGURES = /^(?:\D*[^\d-] )?\d{1,4}(?: \D+)?$/;

/** How two dates are joined: a second year is left short after a mark, hardly after a word. */
type Joint = 'stroke' | 'hyphen' | 'word';

const BC = anyOf(BEFORE_CHRIST);
/** A year, "about" before it and a stroke and the next behind it if need be: `c. 162/1`. */
const END = `(?<about>${anyOf(ABOUT)} ?)?(?<year>\\d{1,4})(?:/(?<next>\\d{1,4}))?`;
const YEAR_LEFT = new RegExp(`^(?<era>${BC} ?)?${END}$`, 'i');
const ENDS_IN_YEAR = /^[^\d]{0,30}\d{1,4}(?:\/\d{1,4})?$/;
const YEAR_RIGHT = new RegExp(`^${END}(?<era> ?${BC})?$`, 'i');

/** Two days written with hyphens, joined by a hyphen, have five; more make no date. */
const MOST_JOINTS = 5;

/** Every way to cut a text in two at a joint. */
function splits(text: string, joint: RegExp): readonly { left: string; right: string; joint: Joint }[] {
  const joints = [...text.matchAll(joint)];
  if (joints.length > MOST_JOINTS) return [];
  return joints.map((found) => ({
    left: text.slice(0, found.index).trim(),
    right: text.slice(found.index + found[0].length).trim(),
    joint: jointOf(found[0].trim()),
  }));
}

function jointOf(mark: string): Joint {
  if (mark === '/') return 'stroke';
  return mark === '-' ? 'hyphen' : 'word';
}

/** Two years of which the second alone, or the first in front, says BC; either may be a pair of its own: `162/1-150/49 BC`. */
function pairBefore(left: string, right: string, joint: Joint, read: WordReader): Pair | undefined {
  if (!ENDS_IN_YEAR.test(left)) return undefined;
  const first = YEAR_LEFT.exec(left)?.groups;
  const last = YEAR_RIGHT.exec(right)?.groups;
  if (!first?.['year'] || !last?.['year'] || (first['era'] ?? last['era']) === undefined) return undefined;
  const { about = '', year, next } = first;
  const follows = next === undefined ? undefined : secondYearBefore(year, next, 'stroke');
  const ended = follows?.ok ? String(follows.value) : year;
  const shown = { first: next === undefined ? year : `${year}/${next}`, after: last['next'] ? `/${last['next']}` : '' };
  const second = secondYearBefore(ended, last['year'], joint, shown);
  const words = {
    left: `${about}${shown.first} BC`,
    right: second.ok ? `${last['about'] ?? ''}${String(second.value)}${shown.after} BC` : right,
  };
  const begin = read(words.left);
  const end = second.ok ? read(words.right) : second;
  return begin && end && { left: begin, right: end, words };
}

/**
 * Reads two dates that may share words: "27-14 BC" lends its BC to the left, "AD 71-73" its AD to the right,
 * "late 1st to early 2nd century" its century, "20-25 November 1278" its month, "1279-81" its figures.
 */
function readPair(left: string, right: string, joint: Joint, read: WordReader): Pair | undefined {
  if (left === '' || right === '') return undefined;
  const before = pairBefore(left, right, joint, read) ?? askOfThousands(left, right);
  if (before) return before;
  if (lacksYear(left, right)) return pairWithoutYear(left, right);
  const century = asCentury(left, right);
  const lent = century === undefined ? lentByRight(left, right) : [century];
  // A bare number, or a century before one BC, takes the era of its partner before it is taken for a year of its own.
  const lentFirst = BARE.test(left) || (ENDS_BEFORE_CHRIST.test(right) && !NAMES_ERA.test(left));
  const alone = century === undefined ? [left] : [];
  const leftFound = firstRead(lentFirst ? [...lent, ...alone] : [...alone, ...lent], read);
  if (!leftFound) return undefined;
  const whichYear = askOfMonth(leftFound, right);
  if (whichYear) return { left: whichYear, right: whichYear, words: { left, right } };
  const borrowed = lentByLeft(left, right);
  const rightFirst =
    BARE.test(right) && isOfAnotherEra(leftFound.outcome) ? [...borrowed, right] : [right, ...borrowed];
  const full = withFigures(left, right);
  const rightFound = firstRead(full === undefined ? rightFirst : [full, ...rightFirst], read);
  if (!rightFound) return undefined;
  return {
    left: leftFound.outcome,
    right: rightFound.outcome,
    words: { left: leftFound.words, right: rightFound.words },
  };
}

/** `9 BC-AD`: one end has a year, the other an era and no year. A century may lend itself: `1st century BC/AD`. */
function lacksYear(left: string, right: string): boolean {
  return [
    [left, right],
    [right, left],
  ].some(([era = '', other = '']) => ERA_ALONE.test(era) && YEAR_IN_FIGURES.test(other));
}

function pairWithoutYear(left: string, right: string): Pair {
  const [era, year] = ERA_ALONE.test(left) ? [left, right] : [right, left];
  const example = ENDS_BEFORE_CHRIST.test(year) ? `${year} - AD 14` : `9 BC - ${year}`;
  const refused = refuse(`One end names no year, only ${era}; write both years, such as ${example}, or ${year} alone.`);
  return { left: refused, right: refused, words: { left, right } };
}

/** The longest month of any calendar. */
const MONTH = 31;

/** `July 1902-03`: a month of one year, and a number that may be another year or another month. */
function askOfMonth({ words, outcome }: Found, right: string): Outcome<Reading> | undefined {
  if (!outcome.ok || !/^\d\d?$/.test(right)) return undefined;
  const { month = '', year = '' } = /^(?<month>(?:\d+\.? )?\p{L}[^\d]*?) (?<year>\d{3,4})$/u.exec(words)?.groups ?? {};
  if (year === '') return undefined;
  const { from, to, dayCalendar } = outcome.value;
  if (from === undefined || to === undefined || !dayCalendar) return undefined;
  if (dayFromIso(to, dayCalendar) - dayFromIso(from, dayCalendar) >= MONTH) return undefined;
  const other = `${month} ${String(followingYear(year, right))}`;
  const ways = `${words} - ${other} for all between, or ${words} or ${other}`;
  return refuse(`"${words}-${right}" may name a second year or another month; write ${ways} for one of the two.`);
}

function isOfAnotherEra(outcome: Outcome<Reading>): boolean {
  return outcome.ok && outcome.value.calendar !== 'gregorian' && outcome.value.calendar !== 'julian';
}

/** A date as it was read, and the words it was read from. */
interface Found {
  readonly words: string;
  readonly outcome: Outcome<Reading>;
}

/** The first of several wordings that can be read; failing that, the first refusal. */
function firstRead(wordings: readonly string[], read: WordReader): Found | undefined {
  let refused: Found | undefined;
  for (const words of wordings) {
    const outcome = read(words);
    if (outcome?.ok) return { words, outcome };
    if (outcome) refused ??= { words, outcome };
  }
  return refused;
}

/** The last words of the right-hand date put after the left: most of them first. */
function lentByRight(left: string, right: string): readonly string[] {
  const words = right.split(/(?<=\.)(?=\p{L})| /u);
  return words.slice(1, 7).map((_, index) => `${left} ${words.slice(index + 1).join(' ')}`);
}

/** The first words of the left-hand date put before the right: most of them first. */
function lentByLeft(left: string, right: string): readonly string[] {
  // 12 Ed. II - Ed. III does not say that the second has a year too.
  if (/^\d{1,2} \p{Lu}/u.test(left) && !/\d/.test(right)) return [];
  const words = left.split(' ').slice(0, 7);
  // "14 AD-37" names the era of both; "14 BC-37" leaves open on which side of it the second lies.
  const era = BARE.test(right) ? ENDS_AFTER_CHRIST.exec(left)?.[0] : undefined;
  if (era !== undefined) return [`${right} ${era}`];
  return words.slice(1).map((_, index) => `${words.slice(0, words.length - 1 - index).join(' ')} ${right}`);
}

/** More years than this are not meant by a second year that leaves the thousands out. */
const LONGEST_WITHOUT_THOUSANDS = 50;

/** `1000-900`: rather before Christ than nine hundred years long; `1699-700` leaves the thousands out. */
function askOfThousands(left: string, right: string): Pair | undefined {
  const { year = '' } = /^(?:\D* )?(?<year>\d{4})$/.exec(left)?.groups ?? {};
  if (year === '' || /(?!AD |CE )[A-Z]{2}/.test(left) || !/^\d{3}$/.test(right)) return undefined;
  const full = followingYear(year, right);
  if (full - Number(year) <= LONGEST_WITHOUT_THOUSANDS) return undefined;
  const ways = `${year} BC - ${right} BC, or ${year} - ${String(full)}`;
  const refused = refuse(`"${left}-${right}" would be a long time after Christ; write ${ways} if that is meant.`);
  return { left: refused, right: refused, words: { left, right } };
}

/** `1279-81` is 1281 and `AH 290-9` is AH 299: the leading figures of the left stand for those the right leaves out. */
function withFigures(left: string, right: string): string | undefined {
  const first = /^(?<before>\D*?)(?<year>\d{2,4})(?<after>\D*)$/.exec(left)?.groups;
  const second = /^(?<year>\d{1,3})(?<after>(?:'?s|er)?(?: \D*)?)$/.exec(right)?.groups;
  const year = first?.['year'] ?? '';
  const rest = second?.['year'] ?? '';
  if (!first || !second || rest.length >= year.length) return undefined;
  // Words of its own after each make two whole years: 37 Hen. III - 1 Edw. I.
  if ([first, second].every(({ after = '' }) => after.startsWith(' '))) return undefined;
  if (ENDS_BEFORE_CHRIST.test(left) || ENDS_BEFORE_CHRIST.test(right)) return undefined;
  const full = year.slice(0, year.length - rest.length) + rest;
  return `${first['before'] ?? ''}${full}${second['after'] ?? ''}${second['after'] ? '' : (first['after'] ?? '')}`;
}

const MOST_CHOICES = 8;
const CHOICES = [
  { kind: 'or' as const, words: anyOf(OR) },
  { kind: 'and' as const, words: anyOf(AND) },
].map(({ kind, words }) => {
  // "Of" is "or" in Dutch, but only between figures: elsewhere it is the English word.
  const between = kind === 'or' ? `(?: ${words} |(?<=\\d) of (?=\\d))` : ` ${words} `;
  return { kind, word: new RegExp(between, 'i'), joint: new RegExp(`,?${between}|, `, 'i') };
});

/** `années 1640-1650`, `jaren 1640 en 1650`: years of ten, of which the second may be a year alone. */
const DECADES_JOINED = new RegExp(`^${YEARS_OF} (?<first>\\d{3})0(?: ?[-/] ?| \\p{L}{1,3} )(?<last>\\d{3})0$`, 'iu');

/** `años 1470-1474`: years that are no tens. */
const YEARS_IN_RANGE = new RegExp(`^${YEARS_OF} (?!\\d{3}0 ?- ?\\d*0$)(?=\\d{4} ?- ?\\d{1,4}$)`, 'iu');

function askOfDecades(text: string): Outcome<Reading> | undefined {
  const { first = '', last = '' } = DECADES_JOINED.exec(text)?.groups ?? {};
  if (first === '') return undefined;
  const ways = `${first}0-${last}0 for the years, or ${first}0-${last}9 for the decades`;
  return refuse(`"${text}" may be years or decades; write ${ways}.`);
}

/** `1279 or 1280`, `1279, 1281 or 1283`, `1279 and 1280`. */
export function readChoice(text: string, readPoint: WordReader): Outcome<Reading> | undefined {
  const decades = askOfDecades(text);
  if (decades) return decades;
  for (const { kind, word, joint } of CHOICES) {
    const parts = text.split(joint);
    if (parts.length < 2 || parts.length > MOST_CHOICES || !word.test(text)) continue;
    const readings = readParts(parts, readPoint);
    if (readings) return choice(readings, kind);
  }
  return undefined;
}

/** Reads each of several dates; all but the last may borrow from one after it, and the last from the first. */
function readParts(parts: readonly string[], readPoint: WordReader): readonly Reading[] | undefined {
  const last = parts.at(-1) ?? '';
  const first = parts.slice(0, -1).find((one) => !BARE.test(one)) ?? parts[0] ?? '';
  const readings: Reading[] = [];
  for (const [index, part] of parts.entries()) {
    const isLast = index === parts.length - 1;
    // What a bare number leaves out stands with the next that is not one: 15 & 16 Geo. VI & 1 Eliz. II.
    const next = parts.slice(index + 1).find((one) => !BARE.test(one)) ?? last;
    const pair = isLast
      ? readPair(first, part, 'hyphen', readPoint)?.right
      : readPair(part, next, 'hyphen', readPoint)?.left;
    const outcome = readRange(part, readPoint) ?? pair ?? readPoint(part);
    if (!outcome?.ok) return undefined;
    readings.push(outcome.value);
  }
  return readings;
}

const TO_WORDS = new RegExp(` ${anyOf(TO)}(?= )`, 'gi');
/** A hyphen; or a stroke between centuries, which between years would be old style: `12./13. Jh.`, `s. XII/XIII`. */
const MARKS = /-|(?<=[^\d ])\/(?=[^\d ]|\d{1,2}(?:st|nd|rd|th|e|\.))|(?<=\d)\/(?=\d{1,2}(?:st|nd|rd|th|\.))/g;
/** `27 BC/14 AD`: the second year has an era of its own. */
const BEFORE_ERA = new RegExp(`(?<=[^\\d ])/(?=\\d{1,4} ?${anyOf(AFTER_CHRIST)}$)`, 'gi');
const AND_WORDS = new RegExp(` ${anyOf(AND)}(?= )`, 'gi');
const FROM_WORD = wordBefore(FROM);
const BETWEEN_WORD = wordBefore(BETWEEN);
/** Polish joins what lies between by "a". */
const BETWEEN_JOINTS = [AND_WORDS, / a(?= )/gi, / ?-/g];

/** `1279-81`, `1279 to 1281`, `between 1279 and 1281`, `27 BC - AD 14`, `12./13. Jh.` */
export function readRange(text: string, readPoint: WordReader): Outcome<Reading> | undefined {
  const between = BETWEEN_WORD.test(text)
    ? joined(text, text.replace(BETWEEN_WORD, ''), BETWEEN_JOINTS, readPoint)
    : undefined;
  // Danish "fra" is from, Italian "fra" between.
  if (between || (BETWEEN_WORD.test(text) && !FROM_WORD.test(text))) return between;
  const words = text.replace(FROM_WORD, '');
  return (
    askOfDecades(words) ?? joined(text, words.replace(YEARS_IN_RANGE, ''), [TO_WORDS, MARKS, BEFORE_ERA], readPoint)
  );
}

function joined(
  text: string,
  words: string,
  joints: readonly RegExp[],
  readPoint: WordReader,
): Outcome<Reading> | undefined {
  let problem: Outcome<Reading> | undefined;
  for (const joint of joints) {
    for (const { left, right, joint: mark } of splits(words, joint)) {
      // A dash or a word says that the second number is a year; one that is not above asks.
      if (/^\d{4}$/.test(left) && /^\d\d$/.test(right)) return readHyphened(`${left}-${right}`, { hyphen: 'range' });
      const pair = readPair(left, right, mark, readPoint);
      if (pair?.left.ok && pair.right.ok) return span(pair.left.value, pair.right.value, text, pair.words);
      if (pair) problem ??= pair.left.ok ? pair.right : pair.left;
    }
  }
  return problem;
}
