import { good, refuse, type Outcome } from '../outcome.ts';
import { askForTwoDates, askWhichFigures, askWhichWord } from './ask-which.ts';
import { namedEra } from './bare-years.ts';
import type { DateContext, Dating, Reading } from './dating.ts';
import { readEdtf, refuseFormerEdtf } from './edtf.ts';
import { readHyphened } from './shortened.ts';
import { readUnknownEnd } from './read-bound.ts';
import { phraseReader } from './read-phrase.ts';
import { reignNotKnown } from './read-regnal.ts';
import { readYears, type WordReader } from './reading.ts';
import { AFTER_CHRIST, BEFORE_CHRIST, UNDATED } from './words.ts';
import { anyOf, plainText, withoutEdition, withPlainEras, withWholeFigures } from './written-text.ts';
import { dayFromIso, type DayCalendar } from '../calendars/civil.ts';

/** Days of the week from Sunday on, in English, German, French, Italian, Spanish and Dutch. */
const WEEK: readonly (readonly string[])[] = [
  ['Sunday', 'Sun', 'Sonntag', 'dimanche', 'domenica', 'domingo', 'zondag'],
  ['Monday', 'Mon', 'Montag', 'lundi', 'lunedì', 'lunes', 'maandag'],
  ['Tuesday', 'Tue', 'Tues', 'Dienstag', 'mardi', 'martedì', 'martes', 'dinsdag'],
  ['Wednesday', 'Wed', 'Mittwoch', 'mercredi', 'mercoledì', 'miércoles', 'woensdag'],
  ['Thursday', 'Thu', 'Thurs', 'Donnerstag', 'jeudi', 'giovedì', 'jueves', 'donderdag'],
  ['Friday', 'Fri', 'Freitag', 'vendredi', 'venerdì', 'viernes', 'vrijdag'],
  ['Saturday', 'Sat', 'Samstag', 'Sonnabend', 'samedi', 'sabato', 'sábado', 'zaterdag'],
];
const WITH_WEEKDAY = new RegExp(
  `^(?:(?:on|am|le|op) )?(?<day>${anyOf(WEEK.flat())})(?:\\.,?|,)? (?:(?:the|den) )?(?<date>\\S.*)$`,
  'iu',
);

/** `Sunday 23rd October 2016`: the day of the week must be the one of the date. */
export function readWithWeekday(text: string, read: WordReader): Outcome<Reading> | undefined {
  const { day = '', date = '' } = WITH_WEEKDAY.exec(text)?.groups ?? {};
  const reading = date === '' ? undefined : read(date);
  if (!reading?.ok) return undefined;
  const { from, to, dayCalendar } = reading.value;
  if (from === undefined || from !== to || dayCalendar === undefined) return undefined;
  const actual = weekdayOf(from, dayCalendar);
  if (isCalled(day, actual)) return reading;
  if (dayCalendar === 'gregorian' && isCalled(day, weekdayOf(from, 'julian')))
    return refuse(
      `${date} was a ${day} in the Julian calendar alone; write ${date} OS, or ${date} without the ${day}.`,
    );
  return refuse(
    `${date} was a ${actual[0] ?? ''}, not a ${WEEK.find((names) => isCalled(day, names))?.[0] ?? day}; write ${date} alone, or the day that it was.`,
  );
}

/** What the day of the week of a date is called. The fixed day 0 was a Sunday. */
function weekdayOf(iso: string, calendar: DayCalendar): readonly string[] {
  return WEEK[((dayFromIso(iso, calendar) % 7) + 7) % 7] ?? [];
}

function isCalled(day: string, names: readonly string[]): boolean {
  return names.some((name) => name.toLowerCase() === day.toLowerCase());
}

const KIND = '(?:period|dynasty|dynasties)';
const PERIOD = new RegExp(
  `^(?<name>(?:\\d{1,2}(?:st|nd|rd|th) )?(?:[\\p{L}'’-]+ )*${KIND})(?:,? \\((?<within>[^()]+)\\)|, (?<after>[^(),;]+))$`,
  'iu',
);
/** Words that make the time of the piece another than the period's. */
const NARROWS =
  'early earlier mid middle late later latest first second third last beginning end before after pre post not probably possibly perhaps or copy imitation style type revival'.split(
    ' ',
  );
const NARROWED = new RegExp(`(?:^|[ -])${anyOf(NARROWS)}(?=[ -])`, 'i');
/**
 * `Tang Dynasty, AD 618-907`, `Qianlong period (1736-1795)`: the name of a period says no more than the years beside it, unless a
 * word narrows it. Years that are bare in such a text are asked about as they are alone.
 */
export function readInPeriod(text: string, read: WordReader): Outcome<Reading> | undefined {
  const { name = '', within, after } = PERIOD.exec(text)?.groups ?? {};
  const years = (within ?? after ?? '').trim();
  // A number under a hundred may be a year of the period itself.
  if (!/\d{3}/.test(years) || !/^[\d\p{Lu}]/u.test(name) || NARROWED.test(name)) return undefined;
  return read(years);
}

/** A set of years in EDTF may be long, such as every year of one number of the indiction; words are not. */
const LONGEST = 900;
const LONGEST_PHRASE = 120;
const UNDATED_WORDS = new RegExp(`^${anyOf(UNDATED)}(?:[,;:]? ?(?<inner>[[(].*[\\])]|(?<=[,;: ] ?).*\\d.*))?$`, 'i');
const UNDATED_AFTER = new RegExp(`^(?<inner>.*\\S) ?\\(${anyOf(UNDATED)}\\)$`, 'i');
const STRICT = /^edtf: ?(?<edtf>.*)$/i;
const NAMES_ERA = new RegExp(`\\d ?${anyOf([...AFTER_CHRIST, ...BEFORE_CHRIST])}|${anyOf(['AD', 'A.D.'])} ?\\d`, 'i');
const EXAMPLES = '1279, 1279/1281, c. 1280, 44 BC, AH 294 or 12th century';
const TOO_LONG = `The date is too long to be one; write a date such as ${EXAMPLES}, and the rest in the story.`;

/**
 * Reads a date as keepers, books and standards write it: see `date-examples.ts` for the grammar by example. `edtf:`
 * before a text reads it as strict EDTF. Refuses with a sentence that says what to write; a word left over, a range
 * that runs backwards, or a text with two readings is never a value.
 */
export function parseDate(text: string, context: DateContext = {}): Outcome<Dating> {
  // Before a sign of it is read: the way a long text is refused must not grow with the text.
  if (text.length > LONGEST) return refuse(TOO_LONG);
  const { dateOf, hyphen, negative, era, realm, accessions, reigns = NO_REIGNS } = context;
  const read = READ_BEFORE.get(reigns) ?? new Map<string, Outcome<Dating>>();
  const key = JSON.stringify([text, dateOf, hyphen, negative, era, realm, accessions]);
  const before = read.get(key);
  if (before !== undefined) return before;
  const outcome = readDate(text, context);
  if (read.size >= KEPT) read.clear();
  READ_BEFORE.set(reigns, read.set(key, outcome));
  return outcome;
}

/** Dates that were read before, by the reigns that they might name: a list of thousands has a few hundred, many times over. */
const READ_BEFORE = new WeakMap<object, Map<string, Outcome<Dating>>>();
const NO_REIGNS = {};
const KEPT = 10_000;

function readDate(text: string, context: DateContext): Outcome<Dating> {
  const plain = withWholeFigures(withPlainEras(withoutEdition(plainText(text))));
  if (plain === '') return refuse(`The date is empty; write one such as ${EXAMPLES}, or leave the field out.`);
  const strict = STRICT.exec(plain)?.groups?.['edtf'];
  if (strict !== undefined || plain.length > LONGEST_PHRASE) return readStrict(text, strict ?? plain);
  const ambiguous = askWhichWord(plain, context);
  if (ambiguous !== undefined) return refuse(ambiguous);
  const reader = readerIn(context);
  const outcome = readWhole(plain, reader);
  if (!outcome) return refuse(askForTwoDates(plain, reader.readPhrase) ?? notUnderstood(plain, reader));
  if (!outcome.ok) return outcome;
  const figures =
    outcome.value.calendar === 'gregorian' && !NAMES_ERA.test(plain) ? askWhichFigures(text, plain) : undefined;
  return figures === undefined ? good({ text: text.trim(), ...outcome.value }) : refuse(figures);
}

/** EDTF alone: what is longer than a phrase, and what says that it is EDTF. */
function readStrict(text: string, edtf: string): Outcome<Dating> {
  const outcome = readEdtf(edtf);
  if (outcome?.ok) return good({ text: text.trim(), ...outcome.value });
  if (edtf.length > LONGEST_PHRASE) return refuse(TOO_LONG);
  const former = refuseFormerEdtf(edtf);
  if (outcome || former !== undefined) return outcome ?? refuse(former ?? '');
  return refuse(`"${edtf}" is not EDTF of levels 0 to 2; write it as 1279/1281 or 1279~, or in words without "edtf:".`);
}

/** A reader of phrases, which remembers what it has read, with the context it reads in. */
interface Reader {
  readonly context: DateContext;
  readonly readPhrase: WordReader;
}

function readerIn(context: DateContext): Reader {
  return { context, readPhrase: phraseReader(context) };
}

function readWhole(text: string, reader: Reader): Outcome<Reading> | undefined {
  const { context, readPhrase } = reader;
  const undated = (UNDATED_WORDS.exec(text) ?? UNDATED_AFTER.exec(text))?.groups;
  if (undated) {
    const inner = undated['inner']?.replace(/^[[(](.*)[\])]$/, '$1');
    // What stands beside "undated" are years: ND (1902-10).
    if (inner !== undefined) return readWhole(inner, readerIn({ ...context, hyphen: context.hyphen ?? 'range' }));
    return good(readYears(null, null));
  }
  // To EDTF a question mark in front of -1588 is a doubt about 1589 BC; in a list it is a beginning that is not known.
  const settled = /^\?|\?$/.test(text) ? readUnknownEnd(text, readPhrase) : undefined;
  const hyphened = settled ?? readHyphened(text, context);
  if (hyphened) return hyphened;
  const era = namedEra(text, context);
  if (era) return era.ok ? readPhrase(era.value) : era;
  const edtf = readEdtf(text);
  if (edtf?.ok) return edtf;
  // Hyphen and two figures after a second of two eras are years: 1255/1839-40.
  if (edtf && !/^\d{4}\/\d{4}-\d\d$/.test(text)) return edtf;
  const former = refuseFormerEdtf(text);
  if (former !== undefined) return refuse(former);
  return readPhrase(text) ?? readWithWeekday(text, readPhrase) ?? readInPeriod(text, readPhrase) ?? edtf;
}

/** Names the words that were left over, when what stands before them is a date. */
function notUnderstood(text: string, reader: Reader): string {
  const isDate = (words: string) => readWhole(words, reader)?.ok === true;
  const list = text.split(/[,;] ?/);
  if (list.length > 1 && list.length < 9 && list.every(isDate)) {
    return `"${text}" does not say whether it is one of the dates or all; write ${list.join(' or ')}, or ${list.join(' and ')}.`;
  }
  const words = text.split(' ');
  for (let kept = Math.min(words.length - 1, 6); kept > 0; kept -= 1) {
    const date = words.slice(0, kept).join(' ').replace(/[,;]$/, '');
    if (isDate(date)) {
      const left = words.slice(kept).join(' ');
      if (/^\d{1,4}$/.test(date) && LIKE_AN_ERA.test(left)) return eraNotKnown(left, date);
      return `"${date}" is a date, but "${left}" after it is not understood; write ${date} alone.`;
    }
  }
  const ruler = OF_A_RULER.exec(text)?.groups?.['name'];
  if (ruler !== undefined) return reignNotKnown(ruler, reader.context.realm);
  return wordNotKnown(text, isDate) ?? `"${text}" is not a date that can be read here; write one such as ${EXAMPLES}.`;
}

/** `14 Wilhelm II`: what looks like a year of a reign. */
const OF_A_RULER = /^\d{1,2} (?<name>\p{Lu}[^\d]* [IVX]+|\p{Lu}\p{L}+\.(?: [IVX]+)?)$/u;

/** A word, and a date behind it with its *about*. */
const BEFORE_DATE = /^(?<word>\p{L}[^\d]*?)[ .,:]+(?<rest>(?:(?:c|ca|circa|um|vers|about)\.? ?)?\S*\d.*)$/u;
/** Capitals beside a year: `BS 1992`, `1308 RY`. Without them the year would be another. */
const LIKE_AN_ERA = /^\p{Lu}{2,4}\.?$/u;

function eraNotKnown(sign: string, year: string): string {
  return `"${sign}" beside ${year} may be the sign of an era that is not known here; write the year AD, or name the era.`;
}

/** Names the word before a date, or next to a number, that is none of an era, a month or a ruler known here. */
function wordNotKnown(text: string, isDate: (words: string) => boolean): string | undefined {
  const { word = '', rest = '' } = BEFORE_DATE.exec(text)?.groups ?? {};
  if (word === '' || word.length > 40) return undefined;
  if (/^\d{1,4}$/.test(rest) && LIKE_AN_ERA.test(word)) return eraNotKnown(word, rest);
  // A small word may turn the date round, as before and after do.
  const unless = /^\p{Ll}/u.test(word) ? ' if the word changes nothing, or before, after or c. in its place' : '';
  if (isDate(rest))
    return `"${rest}" is a date, but "${word}" before it is not understood; write ${rest} alone${unless}.`;
  if (!/^\d{1,3}$/.test(rest)) return undefined;
  return `"${word}" is not the sign of an era, a month or a ruler known here; write the year AD, or spell it out.`;
}
