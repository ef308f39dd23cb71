import { civilFromDay, dayFromCivil, dayFromIso, lengthOfMonth, type CivilCalendar } from '../calendars/civil.ts';
import { good, refuse, type Outcome } from '../outcome.ts';
import type { Bound, Reading, Reign } from './dating.ts';
import { ENGLISH_REIGNS, ofWhichLand } from './english-reigns.ts';
import { isBritish } from './eras.ts';
import { formatRoman } from './numerals.ts';
import { readDays, readYears, span, type PointContext, type PointReader, type WordReader } from './reading.ts';
import { foldedText } from './written-text.ts';

const YEAR = '(?:regnal year|year|yr\\.?|r\\. ?y\\.|ry|a\\. ?r\\.|anno regni|Jahr|an)';
const OF = '(?:of |de |von )?(?:the reign of )?';
const FORMS = [
  { form: new RegExp(`^(?<name>\\D.*?),? ${YEAR} (?<number>\\d{1,2})$`, 'i'), isSure: true },
  { form: new RegExp(`^${YEAR} (?<number>\\d{1,2}) ${OF}(?<name>[^\\d(].*)$`, 'i'), isSure: true },
  { form: /^(?<number>\d{1,2}) (?<name>\p{Lu}[^\d]*(?:(?<=[.\p{L}] ?)[1-8])?)$/u, isSure: false },
  { form: /^(?:(?:the )?reign of|temp\.|tempore) (?<name>\D.*)$/i, isSure: true },
];
/** `1 & 2 Philip and Mary`: his year and hers; `39 & 40 Geo. III`: a session of Parliament, in two years of one reign. */
const JOINT = /^(?<his>\d{1,2}) ?(?:&|and|et) ?(?<hers>\d{1,2}) (?<name>\p{Lu}[^\d]*(?:(?<=[.\p{L}] ?)[1-8])?)$/u;

/** `Edward I, year 7`, `7 Edward I`, `RY 12 of Edward III`, `33 Hen. VIII`, `reign of Edward I`. */
export function regnalReader(reigns: readonly Reign[]): PointReader {
  let own: readonly NamedReign[] | undefined;
  return (text, context) => {
    const joint = JOINT.exec(text)?.groups;
    for (const { form, isSure } of FORMS) {
      const groups = form.exec(text)?.groups;
      const name = joint?.['name'] ?? groups?.['name'];
      if (name === undefined) continue;
      // Only a text that may name a ruler pays for the index of their names.
      own ??= namedReigns(reigns);
      const number = joint?.['his'] ?? groups?.['number'];
      const known = reignsNamed(name, own, number !== undefined, context);
      if (joint && known.length > 0) return jointYear(text, known, joint, own, context);
      if (known.length > 0) {
        const asked = isSure && context.realm === undefined ? ofWhichLand(text, known, number, name) : undefined;
        if (asked !== undefined) return refuse(asked);
        return settled(text, known, number, context.readDate);
      }
      if (!isSure) continue;
      return refuse(reignNotKnown(name, context.realm));
    }
    return undefined;
  };
}

/** What is said of a ruler whose reign is in no list. */
export function reignNotKnown(name: string, realm: string | undefined): string {
  const way = name.includes('.') ? 'write the name in full' : "write the name as in the ruler's file";
  const where = realm === undefined ? 'here' : `for ${realm}`;
  return `No reign of "${name}" is known ${where}; ${way}, or the year AD.`;
}

/** Every reign of a name, the cabinet's and the English ones. */
export function reignsCalled(name: string, own: readonly Reign[]): readonly Reign[] {
  return [...reignsAmong(name, namedReigns(own)), ...reignsAmong(name, ENGLISH)];
}

/** A reign under one of the names of its ruler. */
interface NamedReign {
  readonly reign: Reign;
  readonly folded: string;
  readonly words: readonly string[];
}

function namedReigns(reigns: readonly Reign[]): readonly NamedReign[] {
  return reigns.flatMap((reign) =>
    [...new Set([reign.ruler, ...reign.names])].map((name) => ({
      reign,
      folded: foldedText(name),
      words: wordsOf(name),
    })),
  );
}

const ENGLISH = namedReigns(ENGLISH_REIGNS);

function wordsOf(name: string): readonly string[] {
  return name
    .toLowerCase()
    .replaceAll('.', ' ')
    .replace(/(?<=\D)[1-8]$/, (figure) => ` ${formatRoman(Number(figure)).toLowerCase()}`)
    .split(' ')
    .filter((word) => word !== '');
}

/**
 * The reigns of a name in full, then of an abbreviation; the cabinet's first, and years of English reigns after them. Where no
 * realm decides and the cabinet knows a ruler of the name from another time, both are meant.
 */
function reignsNamed(
  name: string,
  own: readonly NamedReign[],
  hasNumber: boolean,
  context: PointContext,
): readonly Reign[] {
  const { realm } = context;
  const found = reignsAmong(name, own);
  const english = found.length > 0 && hasNumber && realm === undefined ? reignsAmong(name, ENGLISH) : [];
  if (english.length > 0 && !english.some((one) => found.some(runsWith(one, context)))) return [...found, ...english];
  if (found.length > 0 || (realm === undefined ? !hasNumber : !isBritish(realm))) return found;
  return reignsAmong(name, ENGLISH);
}

function reignsAmong(name: string, named: readonly NamedReign[]): readonly Reign[] {
  const folded = foldedText(name);
  const inFull = named.filter((one) => one.folded === folded);
  const written = wordsOf(name);
  const found =
    inFull.length > 0 ? inFull : named.filter(({ words }) => isShortFor(written, name.includes('.'), words));
  return [...new Set(found.map(({ reign }) => reign))];
}

/** Abbreviations that are no beginning of the name: those of Latin, and of English hands. */
const LATIN_NAMES: Readonly<Record<string, string>> = {
  car: 'charles',
  chas: 'charles',
  jac: 'james',
  jas: 'james',
  gul: 'william',
  wm: 'william',
  joh: 'john',
  m: 'mary',
  ph: 'philip',
  '&': 'and',
  et: 'and',
};

/** `Hen. VIII` for Henry VIII, `Eliz.` for Elizabeth I or II, `Ph. & M.` for Philip and Mary. */
function isShortFor(written: readonly string[], isPointed: boolean, words: readonly string[]): boolean {
  const isNumbered = isNumeral(words.at(-1));
  if (written.length !== words.length && !(isNumbered && written.length === words.length - 1)) return false;
  return written.every((word, index) => {
    const whole = words[index] ?? '';
    if (isNumeral(whole) || word === whole || LATIN_NAMES[word] === whole)
      return word === whole || LATIN_NAMES[word] === whole;
    return whole.startsWith(word) && (word.length >= 3 || (isPointed && word === 'ed'));
  });
}

function isNumeral(word = ''): boolean {
  return word !== '' && Array.from(word).every((letter) => 'ivx'.includes(letter));
}

/**
 * The days that lie in the first ruler's year and in the second's, where two rulers counted each from a day of their own;
 * under one ruler, or two who counted as one, both years. Undefined when those do not follow.
 */
function jointYear(
  text: string,
  known: readonly Reign[],
  { his, hers, name = '' }: Record<string, string>,
  named: readonly NamedReign[],
  context: PointContext,
): Outcome<Reading> | undefined {
  const first = settled(text, known, his, context.readDate);
  const own = name.split(/ (?:and|&|et) /i)[1] ?? '';
  const reigns =
    own === '' ? [] : reignsNamed(own, named, true, context).filter((one) => known.some(runsWith(one, context)));
  const second = settled(text, reigns.length === 0 ? known : reigns, hers, context.readDate);
  if (!first.ok || !second.ok) return first.ok ? second : first;
  if (reigns.length === 0) {
    const both = { left: `${his ?? ''} ${name}`, right: `${hers ?? ''} ${name}` };
    return Number(hers) === Number(his) + 1 ? span(first.value, second.value, text, both) : undefined;
  }
  const spans = [first.value, second.value].map(daysOf);
  const low = Math.max(...spans.map(([from]) => from));
  const high = Math.min(...spans.map(([, to]) => to));
  if (!Number.isFinite(low) || !Number.isFinite(high)) return first;
  return low <= high
    ? good(readDays(low, high, 'regnal'))
    : refuse(`The two years of "${text}" never ran together; write the year AD.`);
}

/** Whether two reigns have days in common, so that a year may be counted by both. */
function runsWith(one: Reign, { readDate }: PointContext): (other: Reign) => boolean {
  const bounds = ({ from, to }: Reign) =>
    [readDate(from), readDate(to)].map((read) => (read?.ok ? read.value : undefined));
  const [begin, end] = bounds(one);
  return (other) => {
    const [from, to] = bounds(other);
    return (
      numberOr(begin?.earliest ?? null) < closes(to ?? NEVER) && numberOr(from?.earliest ?? null) < closes(end ?? NEVER)
    );
  };
}

const NEVER = { latest: null };

function daysOf({ from, to, dayCalendar }: Reading): readonly [number, number] {
  if (from === undefined || to === undefined || !dayCalendar)
    return [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  return [dayFromIso(from, dayCalendar), dayFromIso(to, dayCalendar)];
}

function settled(
  text: string,
  reigns: readonly Reign[],
  number: string | undefined,
  readDate: WordReader,
): Outcome<Reading> {
  const outcomes = reigns.map((reign) =>
    readReign(text, reign, number === undefined ? undefined : Number(number), readDate),
  );
  const readings = outcomes.flatMap((outcome) => (outcome.ok ? [outcome.value] : []));
  const distinct = new Set(readings.map(({ edtf, from }) => `${edtf} ${from ?? ''}`));
  if (distinct.size > 1)
    return refuse(`"${text}" fits more than one reign; write the year AD, or name the reign as its file does.`);
  const [only] = readings;
  return only ? good(only) : (outcomes[0] ?? refuse(`"${text}" fits no reign; write the year AD.`));
}

function readReign(text: string, reign: Reign, number: number | undefined, readDate: WordReader): Outcome<Reading> {
  const start = readDate(reign.from);
  const end = readDate(reign.to);
  const counted = reign.regnalFrom === undefined ? start : readDate(reign.regnalFrom);
  if (!start?.ok || !end?.ok || !counted?.ok) {
    return refuse(
      `The reign of ${reign.ruler} has no dates that can be read; write them in the ruler's file, as 1272-11-20.`,
    );
  }
  if (number === undefined) return good({ ...readYears(start.value.earliest, end.value.latest, 'regnal') });
  const year = yearOfReign(counted.value, number);
  const last = end.value;
  // A reign taken up again goes on with the years of the first: 49 Henry VI.
  if (number < 1 || !year || beginsAfter(year, last) || beginsAfter(start.value, year)) {
    return refuse(
      `"${text}" lies outside the reign of ${reign.ruler}, ${reign.from} to ${reign.to}; write a year within it.`,
    );
  }
  return good(cutShort(year, start.value, last));
}

/** The years a regnal year touches, or its days when the day is known from which the years are counted. */
function yearOfReign(counted: Reading, number: number): Reading | undefined {
  const { from, to, dayCalendar, earliest, latest } = counted;
  if (from !== undefined && from === to && dayCalendar) {
    const accession = dayFromIso(from, dayCalendar);
    const calendar = counted.calendar === 'julian' ? 'julian' : 'gregorian';
    const first = anniversary(accession, calendar, number - 1);
    return readDays(first, anniversary(accession, calendar, number) - 1, 'regnal');
  }
  if (typeof earliest !== 'number' || typeof latest !== 'number') return undefined;
  return readYears(earliest + number - 1, latest + number, 'regnal');
}

/** The same day of a later year, in the calendar that the accession is dated by. */
function anniversary(fixed: number, calendar: CivilCalendar, years: number): number {
  const civil = civilFromDay(fixed, calendar);
  const year = civil.year + years;
  return dayFromCivil({ ...civil, year, day: Math.min(civil.day, lengthOfMonth(year, civil.month)) }, calendar);
}

/** A reign's first year begins with it, and its last ends with it. */
function cutShort(year: Reading, start: Reading, end: Reading): Reading {
  if (year.from && year.to && year.dayCalendar && end.to && end.dayCalendar) {
    const begun =
      start.from && start.dayCalendar ? dayFromIso(start.from, start.dayCalendar) : Number.NEGATIVE_INFINITY;
    const first = Math.max(dayFromIso(year.from, year.dayCalendar), begun);
    const last = Math.min(dayFromIso(year.to, year.dayCalendar), dayFromIso(end.to, end.dayCalendar));
    return readDays(first, Math.max(first, last), 'regnal');
  }
  if (numberOr(year.latest) <= closes(end)) return year;
  return readYears(year.earliest, end.latest, 'regnal');
}

function beginsAfter(year: Reading, end: Reading): boolean {
  if (year.from && year.dayCalendar && end.to && end.dayCalendar) {
    return dayFromIso(year.from, year.dayCalendar) > dayFromIso(end.to, end.dayCalendar);
  }
  return numberOr(year.earliest) > closes(end);
}

function closes({ latest }: Pick<Reading, 'latest'>): number {
  return numberOr(latest);
}

function numberOr(bound: Bound): number {
  return typeof bound === 'number' ? bound : Number.POSITIVE_INFINITY;
}
