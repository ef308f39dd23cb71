import { dayFromIso, isoDays } from '../calendars/civil.ts';
import { good, type Outcome } from '../outcome.ts';
import type { Reading } from './dating.ts';
import { calendarOfDays, qualify, readYears, yearOfIso, type WordReader } from './reading.ts';
import { BOUND_WORDS, ONWARDS, OR_EARLIER, OR_LATER, type BoundWord } from './words.ts';
import { anyOf, wordBefore } from './written-text.ts';

const OF = "[ -]*(?:of the |of |in the |des |der |du |de la |d'|del |di |dell'|van de |van het |van |de )?";

type Limit = Omit<BoundWord, 'words'>;

const BOUNDS: readonly { readonly found: RegExp; readonly limit: Limit }[] = [
  ...BOUND_WORDS.map(({ words, ...limit }) => ({ found: wordBefore(words, '(?:-| )?'), limit })),
  { found: wordAfter(OR_LATER), limit: { fixes: 'earliest', nameIsAllowed: true, other: null } },
  { found: wordAfter(OR_EARLIER), limit: { fixes: 'latest', nameIsAllowed: true, other: null } },
  {
    found: new RegExp(`(?: ${anyOf(ONWARDS)}|(?<=\\d)ff\\.?)$`, 'i'),
    limit: { fixes: 'earliest', nameIsAllowed: true, other: 'open' },
  },
];

function wordAfter(words: readonly string[]): RegExp {
  return new RegExp(`,? ${anyOf(words)}$`, 'i');
}

const JOINT = ' ?(?:-|/|to|bis|à) ?';
const UNKNOWN_FIRST = new RegExp(`^\\?${JOINT}(?<date>.*\\d.*)$`, 'i');
const UNKNOWN_LAST = new RegExp(`^(?<date>.*(?:\\d{4}|\\d \\p{L}[^\\d]*?))${JOINT}\\?$`, 'iu');

/** `?-1588`, `1588-?`: an end that is not known. */
export function readUnknownEnd(text: string, read: WordReader): Outcome<Reading> | undefined {
  const first = UNKNOWN_FIRST.exec(text)?.groups?.['date'];
  if (first !== undefined) {
    const outcome = read(first);
    return outcome?.ok ? good(bounded(outcome.value, { fixes: 'latest', nameIsAllowed: true, other: null })) : outcome;
  }
  const last = UNKNOWN_LAST.exec(text)?.groups?.['date'];
  const outcome = last === undefined ? undefined : read(last);
  return outcome?.ok ? good(bounded(outcome.value, { fixes: 'earliest', nameIsAllowed: true, other: null })) : outcome;
}

/** `before 1351`, `post 1351`, `not before 1351`, `1351 or later`, `1985 onwards`. */
export function readBound(text: string, read: WordReader): Outcome<Reading> | undefined {
  for (const { found, limit } of BOUNDS) {
    if (!found.test(text)) continue;
    const words = text.replace(found, '');
    const outcome = instantOf(words, read) ?? read(words);
    if (outcome) return outcome.ok ? good(bounded(outcome.value, limit)) : outcome;
  }
  return undefined;
}

/**
 * The beginning, middle or end of a century as what is looked to: `before the end of the 13th century` leaves out nothing of
 * that century but its end. "Early" and "late" are parts of it and have a length.
 */
const INSTANTS = [
  'beginning, start, beg., opening, Anfang, Beginn, début, déb., begin, inizio, inizi, principio, principios, comienzos',
  'middle, Mitte, milieu, midden, metà, mediados, mitad',
  'end, close, Ende, fin, eind, einde, fine, finales, fines',
].map(
  (words) =>
    new RegExp(`^(?:the |l'|la |le |de |het |il |el |los )?${anyOf(words.split(', '))}${OF}(?<century>.+)$`, 'i'),
);

function instantOf(text: string, read: WordReader): Outcome<Reading> | undefined {
  for (const [at, found] of INSTANTS.entries()) {
    const century = found.exec(text)?.groups?.['century'];
    const outcome = century === undefined ? undefined : read(century);
    if (!outcome?.ok) continue;
    const { earliest, latest, calendar } = outcome.value;
    if (typeof earliest !== 'number' || typeof latest !== 'number' || latest - earliest !== 99) continue;
    const [from = earliest, to = latest] =
      [
        [earliest, earliest],
        [earliest + 49, earliest + 50],
        [latest, latest],
      ][at] ?? [];
    return good(qualify(readYears(from, to, calendar), true, outcome.value.doubtful));
  }
  return undefined;
}

/** `after 1279 and before 1290`: a bound at either end. */
export function readBothBounds(text: string, read: WordReader): Outcome<Reading> | undefined {
  const { first = '', last = '' } = /^(?<first>.+?),? (?:and|but|und|et|en) (?<last>.+)$/i.exec(text)?.groups ?? {};
  const [from, to] = [first, last].map((words) => (words === '' ? undefined : readBound(words, read)));
  if (!from?.ok || !to?.ok) return undefined;
  const { earliest } = from.value;
  const { latest } = to.value;
  if (typeof earliest !== 'number' || typeof latest !== 'number' || earliest > latest) return undefined;
  if (from.value.latest !== null || to.value.earliest !== null) return undefined;
  const years = readYears(earliest, latest, from.value.calendar);
  return good(qualify(years, from.value.about || to.value.about, from.value.doubtful || to.value.doubtful));
}

/** Whether some words leave out the date they name, as "before" and "after" do. */
export function leavesOutItsName(text: string): boolean {
  return BOUNDS.find(({ found }) => found.test(text))?.limit.nameIsAllowed === false;
}

/** The years before or after a date, its own allowed or not. A day is kept where one is known. */
function bounded(reading: Reading, limit: Limit): Reading {
  const { fixes, nameIsAllowed, other } = limit;
  const step = nameIsAllowed ? 0 : fixes === 'latest' ? -1 : 1;
  // "Before" looks to the beginning of what is named, "by" to its end; "after" to its end, "from" to its beginning.
  const looksToEnd = (fixes === 'latest') === nameIsAllowed;
  const iso = looksToEnd ? reading.to : reading.from;
  const { about, doubtful, calendar, dayCalendar } = reading;
  if (iso !== undefined && dayCalendar) {
    const day = boundedByDay(dayFromIso(iso, dayCalendar) + step, limit);
    const isDay = calendar === 'julian' || calendar === 'gregorian';
    return qualify(isDay ? day : { ...readYears(day.earliest, day.latest, calendar), ...daysOf(day) }, about, doubtful);
  }
  const named = looksToEnd ? reading.latest : reading.earliest;
  const year = typeof named === 'number' ? named + step : named;
  const years = fixes === 'latest' ? readYears(other, year, calendar) : readYears(year, other, calendar);
  return qualify(years, about, doubtful);
}

/** A year of another era is bounded by its days too, and told in years. */
function daysOf({ from, to, dayCalendar }: Reading): Partial<Reading> {
  return {
    ...(from === undefined ? {} : { from }),
    ...(to === undefined ? {} : { to }),
    ...(dayCalendar === undefined ? {} : { dayCalendar }),
  };
}

function boundedByDay(day: number, { fixes, other }: Limit): Reading {
  const { from: iso, dayCalendar } = isoDays(day, day);
  const open = other === 'open' ? '..' : '';
  return fixes === 'latest'
    ? { ...readYears(other, yearOfIso(iso), calendarOfDays(dayCalendar)), to: iso, dayCalendar, edtf: `${open}/${iso}` }
    : {
        ...readYears(yearOfIso(iso), other, calendarOfDays(dayCalendar)),
        from: iso,
        dayCalendar,
        edtf: `${iso}/${open}`,
      };
}
