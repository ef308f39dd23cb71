import { hebrewYear } from '../calendars/hebrew.ts';
import { hijriYear } from '../calendars/hijri.ts';
import { minguoYear, persianYear, sakaYear, seleucidYear, vikramaYear } from '../calendars/counted-years.ts';
import type { CalendarName, Reading } from './dating.ts';
import { readDays, readYears } from './reading.ts';

/** An era that is named beside a number: `AH 294`, `294 AH`. */
export interface CountedEra {
  readonly calendar: CalendarName;
  /** The short form used in refusals. */
  readonly sign: string;
  readonly words: readonly string[];
  /** What the years from one number to another span in years of ours. */
  readonly read: (first: number, last: number) => Reading;
}

export const HIJRI: CountedEra = {
  calendar: 'hijri',
  sign: 'AH',
  words: [
    'AH',
    'A.H.',
    'A. H.',
    'H.',
    'H',
    'Hijri',
    'Hijra',
    'anno hegirae',
    'année de l’Hégire',
    'هـ',
    'هجري',
    'هجرية',
  ],
  read: (first, last) => readDays(hijriYear(first).first, hijriYear(last).last, 'hijri'),
};

export const COUNTED_ERAS: readonly CountedEra[] = [
  HIJRI,
  {
    calendar: 'seleucid',
    sign: 'SE',
    words: ['SE', 'S.E.', 'S. E.', 'SEM', 'Seleucid', 'Seleucid era', 'Seleucid year', 'anno Graecorum'],
    read: (first, last) =>
      readYears(seleucidYear(first, 'macedonian').low, seleucidYear(last, 'macedonian').high, 'seleucid'),
  },
  {
    calendar: 'seleucid',
    sign: 'SEB',
    words: ['SEB', 'S.E.B.', 'SE (Babylonian)', 'SE Babylonian', 'SE Bab.'],
    read: (first, last) =>
      readYears(seleucidYear(first, 'babylonian').low, seleucidYear(last, 'babylonian').high, 'seleucid'),
  },
  {
    calendar: 'hebrew',
    sign: 'AM',
    words: ['AM', 'A.M.', 'A. M.', 'Hebrew', 'Hebrew year', 'Jewish year', 'anno mundi'],
    read: (first, last) => readDays(hebrewYear(first).first, hebrewYear(last).last, 'hebrew'),
  },
  {
    calendar: 'saka',
    sign: 'Saka',
    words: ['Saka', 'Śaka', 'Shaka', 'Saka era', 'Śaka era', 'Saka samvat'],
    read: (first, last) => readYears(sakaYear(first).low, sakaYear(last).high, 'saka'),
  },
  {
    calendar: 'vikrama',
    sign: 'VS',
    words: ['VS', 'V.S.', 'V. S.', 'Vikrama', 'Vikram', 'Vikrama samvat', 'Vikram samvat', 'Vikrama era'],
    read: (first, last) => readYears(vikramaYear(first).low, vikramaYear(last).high, 'vikrama'),
  },
  {
    calendar: 'persian',
    sign: 'SH',
    words: ['SH', 'S.H.', 'S. H.', 'Solar Hijri', 'Hijri Shamsi', 'Shamsi', 'هـ ش', 'ه‍.ش'],
    read: (first, last) => readYears(persianYear(first).low, persianYear(last).high, 'persian'),
  },
  {
    calendar: 'minguo',
    sign: 'Minguo',
    words: ['Minguo', 'Min-kuo', 'ROC', 'R.O.C.', 'Republic year', 'Year of the Republic', '民國', '民国', '中華民國'],
    read: (first, last) => readYears(minguoYear(first).low, minguoYear(last).high, 'minguo'),
  },
];
