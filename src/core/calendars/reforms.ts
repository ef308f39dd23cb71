import type { CivilCalendar, CivilDay } from './civil.ts';

/** When a land went over to the Gregorian calendar: the last day of the old and the first of the new, which followed it. */
export interface Reform {
  readonly lastOld: CivilDay;
  readonly firstNew: CivilDay;
}

/** Where *Inter gravissimas* was followed at once (Spain, Portugal, Rome, Poland), and where nothing else is said. */
export const GREGORY = reform([1582, 10, 4], [1582, 10, 15]);

/** Where Britain's law ran. */
export const BRITAIN = 'england, english, britain, british, united kingdom, ireland, scotland, wales'.split(', ');

/**
 * Realms by the beginnings of words of their names. Britain: Calendar (New Style) Act 1750. The others: Grotefend,
 * *Taschenbuch der Zeitrechnung*, and the *Explanatory Supplement to the Astronomical Almanac*, both from memory. Lands that
 * went over piece by piece (the Netherlands, the Empire, Switzerland) are left out, and so is Sweden from 1700 to 1712,
 * whose days then ran one ahead of the old.
 */
export const REFORMS: readonly { readonly realms: readonly string[]; readonly reform: Reform }[] = [
  { realms: BRITAIN, reform: reform([1752, 9, 2], [1752, 9, 14]) },
  { realms: ['france', 'french'], reform: reform([1582, 12, 9], [1582, 12, 20]) },
  { realms: ['hungary', 'hungarian'], reform: reform([1587, 10, 21], [1587, 11, 1]) },
  { realms: ['denmark', 'danish', 'norway', 'norwegian'], reform: reform([1700, 2, 18], [1700, 3, 1]) },
  { realms: ['sweden', 'swedish'], reform: reform([1753, 2, 17], [1753, 3, 1]) },
  { realms: ['bulgaria'], reform: reform([1916, 3, 31], [1916, 4, 14]) },
  { realms: ['russia', 'soviet'], reform: reform([1918, 1, 31], [1918, 2, 14]) },
  { realms: ['romania', 'rumania'], reform: reform([1919, 3, 31], [1919, 4, 14]) },
  { realms: ['greece', 'hellenic'], reform: reform([1923, 2, 15], [1923, 3, 1]) },
];

type Figures = readonly [year: number, month: number, day: number];

function reform(lastOld: Figures, firstNew: Figures): Reform {
  return { lastOld: civil(lastOld), firstNew: civil(firstNew) };
}

function civil([year, month, day]: Figures): CivilDay {
  return { year, month, day };
}

/** The calendar of a day by a reform; undefined for a day that was left out. */
export function calendarBy({ lastOld, firstNew }: Reform, day: CivilDay): CivilCalendar | undefined {
  if (figuresOf(day) <= figuresOf(lastOld)) return 'julian';
  return figuresOf(day) >= figuresOf(firstNew) ? 'gregorian' : undefined;
}

function figuresOf({ year, month, day }: CivilDay): number {
  return year * 10_000 + month * 100 + day;
}
