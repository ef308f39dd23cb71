import type { DayCalendar } from '../calendars/civil.ts';
import type { CountedCalendar } from '../calendars/counted-years.ts';
import type { ReignTitle } from '../calendars/reign-titles.ts';

/** An end of a dating: an astronomical year (44 BC is -43), EDTF's `..` for no end at all, or null for an end not known. */
export type Bound = number | 'open' | null;

/** What the years of a text are counted by. */
export type CalendarName =
  | 'gregorian'
  | 'julian'
  | 'hijri'
  | 'seleucid'
  | 'hebrew'
  | 'byzantine'
  | 'buddhist'
  | 'republican'
  | 'indiction'
  | 'olympiad'
  | 'cyclical'
  | 'regnal'
  | ReignTitle['calendar']
  | Exclude<CountedCalendar, 'babylonian'>;

/** A date as it was written and as it is understood. */
export interface Dating {
  /** The words of the keeper. */
  readonly text: string;
  readonly earliest: Bound;
  readonly latest: Bound;
  /** The same in the Extended Date/Time Format, 2019. It reads back to the same years. */
  readonly edtf: string;
  /** The calendar of the text. Plain years count as Gregorian; a day before 15 October 1582 is Julian. */
  readonly calendar: CalendarName;
  /** The writer said "about". The interval is not widened for it: how far *about* reaches is not ours to invent. */
  readonly about: boolean;
  /** The writer said "perhaps". */
  readonly doubtful: boolean;
  /**
   * First and last day, where the text or its calendar settles them. `dayCalendar` names the calendar of both; a span
   * that crosses the reform begins on a Julian day and ends on a Gregorian one.
   */
  readonly from?: string;
  readonly to?: string;
  readonly dayCalendar?: DayCalendar;
  /** The single spans, when the date is one (or all) of several: 1279 or 1280; a year of the sixty-year cycle. */
  readonly years?: readonly (readonly [number, number])[];
}

/** A dating before it has met its text. */
export type Reading = Omit<Dating, 'text'>;

/** What is known of a text beside its letters, so that a date with two readings may be settled instead of asked about. */
export interface DateContext {
  /**
   * What the date is of. In a date of *making* (the default) `1902-10` asks; in a date of an *event* (a purchase, a
   * find, an accession) it is a month.
   */
  readonly dateOf?: 'making' | 'event';
  /** What `1902-10` is in this column: settled once, by its unmistakable cells. */
  readonly hyphen?: 'range' | 'month';
  /** How a column counts bare negative years: -57 is 58 BC where there is a year 0 (astronomical), else 57 BC. */
  readonly negative?: 'astronomical' | 'historical';
  /** What bare years below 1000 are counted from in this column: the sign of an era, such as AD, BC or AH. */
  readonly era?: string;
  /** The realm of the piece's ruler, for eras and years of reign that differ by realm: `the Ottoman Empire`. */
  readonly realm?: string;
  /** When the piece's ruler came to the throne, in any form a date takes; several for several reigns. */
  readonly accessions?: readonly string[];
  /** The reigns that may be named: `Edward I, year 7`. */
  readonly reigns?: readonly Reign[];
}

/** A reign, as a ruler's file states it, for `Edward I, year 7`. */
export interface Reign {
  readonly ruler: string;
  readonly names: readonly string[];
  readonly from: string;
  readonly to: string;
  /** The day from which regnal years are counted, when it is not the first of the reign. */
  readonly regnalFrom?: string;
}
