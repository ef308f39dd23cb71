import { dayFromIso, type DayCalendar } from '../calendars/civil.ts';
import { refuse, type Outcome } from '../outcome.ts';
import type { Reading } from './dating.ts';
import type { WordReader } from './reading.ts';
import { anyOf } from './written-text.ts';

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
