import { good, type Outcome, refuse } from '../outcome.ts';
import { namedEra } from './bare-years.ts';
import type { DateContext, Reading } from './dating.ts';
import { readEdtf } from './edtf.ts';
import { readGlossed, readWithReign } from './gloss.ts';
import { readHyphened } from './shortened.ts';
import { readBothBounds, readBound } from './read-bound.ts';
import { readCentury, readDecade } from './read-century.ts';
import { readCyclical, readIndiction, readOlympiad, readReignTitle } from './read-cycle.ts';
import { readDay } from './read-day.ts';
import { readCountedEra, readFrozenYear } from './read-era.ts';
import { readChoice, readRange } from './read-range.ts';
import { qualify, type PointContext, type PointReader, type WordReader, readDays } from './reading.ts';
import { readTurn } from './read-turn.ts';
import { regnalReader } from './read-regnal.ts';
import { readGiveOrTake, readLetterYear, readPartOfYear, readSeason, readYear } from './read-year.ts';
import { ABOUT, ASIDE, PERHAPS, STRUCK, HEBREW_MONTHS, HIJRI_MONTHS, REPUBLICAN_MONTHS } from './words.ts';
import { anyOf, wordBefore, foldedText } from './written-text.ts';
import { hebrewMonth } from '../calendars/hebrew.ts';
import { hijriMonth } from '../calendars/hijri.ts';
import { LAST_REPUBLICAN_YEAR, republicanMonth } from '../calendars/republican.ts';
import { readRoman } from './numerals.ts';

interface MonthCalendar {
  readonly calendar: 'hijri' | 'hebrew' | 'republican';
  /** What its years are called, as another month of the same year is written. */
  readonly sign: string;
  /** Years outside these are of another calendar: `av. 1280`, the Turkish `Nisan 1945`. */
  readonly firstYear: number;
  readonly lastYear: number;
  readonly days: (year: number, month: number) => { first: number; last: number } | undefined;
}

const HIJRI: MonthCalendar = { calendar: 'hijri', sign: 'AH', firstYear: 1, lastYear: 1500, days: hijriMonth };
const REPUBLICAN: MonthCalendar = {
  calendar: 'republican',
  sign: 'An',
  firstYear: 1,
  lastYear: LAST_REPUBLICAN_YEAR,
  days: republicanMonth,
};
const HEBREW: MonthCalendar = {
  calendar: 'hebrew',
  sign: 'AM',
  firstYear: 5000,
  lastYear: 6000,
  days: (year, month) => hebrewMonth(year, HEBREW_MONTHS[month - 1]?.[0] ?? ''),
};

const BY_NAME = new Map(
  [
    { of: HIJRI, months: HIJRI_MONTHS },
    { of: REPUBLICAN, months: REPUBLICAN_MONTHS },
    { of: HEBREW, months: HEBREW_MONTHS },
  ].flatMap(({ of, months }) =>
    months.flatMap((names, index) => names.map((name) => [foldedText(name), { of, month: index + 1 }] as const)),
  ),
);

const DAY = '(?:(?<day>\\d{1,2})(?:st|nd|rd|th|er|e|\\.)?(?: of)? )?';
const YEAR = '(?:(?:AH|AM|an|année|year) )?(?<year>\\d{1,4}|[IVX]{1,4})(?: (?:AH|AM))?';
const FORMS = [
  new RegExp(`^${DAY}(?<month>\\p{L}[^\\d,]*?),? ${YEAR}$`, 'iu'),
  new RegExp(`^(?:AH|AM) (?<year>\\d{1,4}),? ${DAY}(?<month>\\p{L}[^\\d,]*)$`, 'iu'),
];

/** `Rajab AH 1255`, `12 Rabi I 294`, `15 Vendémiaire an IV`, `14 Iyar 5708`: months of other calendars, and their days. */
export const readMonth: PointReader = (text) => {
  for (const form of FORMS) {
    const groups = form.exec(text)?.groups;
    const named = groups && BY_NAME.get(foldedText(groups['month'] ?? ''));
    if (groups && named) return dayOf(text, named, groups);
  }
  return undefined;
};

function dayOf(
  text: string,
  { of, month }: { of: MonthCalendar; month: number },
  { day, year: written = '' }: Record<string, string>,
): Outcome<Reading> | undefined {
  const year = /^\d/.test(written) ? Number(written) : readRoman(written.toUpperCase());
  if (year === undefined || year < of.firstYear || (of === HIJRI && year > of.lastYear)) return undefined;
  const days = year > of.lastYear ? undefined : of.days(year, month);
  if (!days) return refuse(`"${text}" is no month of a year ${of.sign}; write the year, such as ${of.sign} 5.`);
  const { first, last } = days;
  if (day === undefined) return good(readDays(first, last, of.calendar, 'days'));
  const wanted = first + Number(day) - 1;
  if (wanted < first || wanted > last) {
    return refuse(`"${text}" names a day its month does not have; write one from 1 to ${String(last - first + 1)}.`);
  }
  return good(readDays(wanted, wanted, of.calendar, 'days'));
}

const PLAIN: readonly PointReader[] = [
  readYear,
  readDay,
  readSeason,
  readCentury,
  readDecade,
  readPartOfYear,
  readGiveOrTake,
  readFrozenYear,
  readIndiction,
  readOlympiad,
  readCountedEra,
  readMonth,
  readReignTitle,
  readCyclical,
  readLetterYear,
];

const ASIDES = new RegExp(`^(?:${anyOf(ASIDE)} )+`, 'i');
/** No single point in time takes more letters, the longest name of a ruler with his year included. */
const LONGEST_POINT = 72;
/** What joins two points is part of neither; "and" is left out, for William and Mary. */
const JOINED = / (?:-|to|or|bis|à) /i;

/** Reads one point in time, whatever it is counted by. */
function pointReader(context: PointContext): WordReader {
  const readers = [...PLAIN, regnalReader(context.reigns ?? [])];
  const readBare: WordReader = (text) => {
    for (const reader of readers) {
      const outcome = reader(text, context);
      if (outcome) return outcome;
    }
    return undefined;
  };
  return (text) => {
    if (text.length > LONGEST_POINT || JOINED.test(text)) return undefined;
    const words = text.replace(ASIDES, '');
    return readBare(text) ?? (words === text ? undefined : readBare(words));
  };
}

const MARKS = [
  { mark: 'doubtful', found: wordBefore(PERHAPS), leave: '' },
  { mark: 'about', found: wordBefore(ABOUT), leave: '' },
  // "AD c. 270" is "c. AD 270".
  { mark: 'about', found: /^(?<era>AD|A\.D\.|AH|A\.H\.) (?:c\.|ca\.|circa|about) /i, leave: '$<era> ' },
  { mark: 'doubtful', found: / ?(?:\?|\(\?\)|\(probably\)|\(perhaps\))$/i, leave: '' },
  { mark: 'doubtful', found: /(?<=^\d{1,5}) ?\?(?= [A-Z])/, leave: '' },
  { mark: 'about', found: / (?:or so|or thereabouts|ca\.|circa|\((?:circa|c\.|ca\.|about)\))$/i, leave: '' },
] as const;

/** Marks may be in any order, and each once on either side; who doubts more often than that writes no date. */
const MOST_ROUNDS = 4;

/** Takes "about" and "perhaps" off both ends of some words and puts them on what the rest is read as. */
function readQualified(
  text: string,
  read: (words: string, isAbout: boolean) => ReturnType<WordReader>,
): Outcome<Reading> | undefined {
  const marks = new Set<string>();
  let words = withoutParentheses(text);
  for (let before = '', round = 0; before !== words && round < MOST_ROUNDS; round += 1) {
    before = words;
    for (const { mark, found, leave } of MARKS) {
      const rest = words.replace(found, leave).trim();
      if (rest === words || rest === '') continue;
      words = withoutParentheses(rest);
      marks.add(mark);
    }
  }
  const outcome = read(words, marks.has('about'));
  return outcome?.ok ? good(qualify(outcome.value, marks.has('about'), marks.has('doubtful'))) : outcome;
}

function withoutParentheses(text: string): string {
  return /^(?:\((?<round>[^()]+)\)|\[(?<square>[^[\]]+)\])$/.exec(text)?.slice(1).find(Boolean)?.trim() ?? text;
}

const STRUCK_WORD = wordBefore(STRUCK);
/** `1816-1820 (issued)`, as museums say which date it is. */
const STRUCK_AFTER = new RegExp(` \\((?:${anyOf(STRUCK)}|dated)\\)$`, 'i');

/**
 * Reads a date in free words: a point in time, or several joined, or the time before or after one, with "about" and
 * "perhaps" round any of them. Undefined when any word is not understood.
 */
export function phraseReader(context: DateContext): WordReader {
  const point = remembering(pointReader({ ...context, readDate: readBoundOfReign }));
  const inEra = (words: string, read: WordReader) => {
    const era = namedEra(words, context);
    if (!era) return read(words);
    return era.ok ? read(era.value) : era;
  };
  const readPoint = remembering((words) => readQualified(words, (bare) => inEra(bare, point)));
  const readLimit: WordReader = (words) =>
    inEra(words, (named) => readPoint(named) ?? edtfDate(named, context) ?? readRange(named, readPoint));
  // About, struck and undated say that a hyphen stands between years: c. 1902-10.
  const inYears: DateContext = { ...context, hyphen: context.hyphen ?? 'range' };
  return function readPhrase(said) {
    const text = said.replace(STRUCK_WORD, '').replace(STRUCK_AFTER, '');
    // A sign that is a word elsewhere may be part of the date: C12, C.E. 325.
    const whole = point(text);
    if (whole?.ok) return whole;
    return readQualified(text, (bare, isAbout) => {
      const hyphened = readHyphened(bare, isAbout || text !== said ? inYears : context);
      if (hyphened) return hyphened;
      return inEra(bare, (words) => {
        const plain =
          readWithReign(words, context.reigns ?? [], readBoundOfReign) ??
          readGlossed(words, readPhrase) ??
          readTurn(words) ??
          point(words);
        if (plain?.ok) return plain;
        const joined =
          readChoice(words, readPoint) ??
          readRange(words, readPoint) ??
          readBothBounds(words, readLimit) ??
          readBound(words, readLimit);
        return joined ?? plain ?? edtfDate(words, context);
      });
    });
  };
}

/** A reign's file states its bounds by themselves, not by another reign; they are dates of events. */
const readBoundOfReign: WordReader = (text) => readEdtf(text) ?? phraseReader({ dateOf: 'event' })(text);

/** A date of EDTF with hyphens may stand wherever a year may, when it is no range of years. */
function edtfDate(text: string, context: DateContext): Outcome<Reading> | undefined {
  return text.includes('/') ? undefined : (readHyphened(text, context) ?? readEdtf(text));
}

/** The same words turn up in many cuttings of one phrase, and are read once. */
function remembering(read: WordReader): WordReader {
  const known = new Map<string, ReturnType<WordReader>>();
  return (words) => {
    if (!known.has(words)) known.set(words, read(words));
    return known.get(words);
  };
}
