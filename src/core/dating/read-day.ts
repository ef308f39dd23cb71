import { dayFromCivil, type Reckoning } from '../calendars/reckoning.ts';
import { daysInMonth } from '../calendars/civil-day.ts';
import { isGregorianLeap } from '../calendars/gregorian.ts';
import { isJulianLeap } from '../calendars/julian.ts';
import { good, refuse, type Outcome } from '../outcome.ts';
import type { Reading } from './dating.ts';
import { formatGloss } from './format-year.ts';
import type { PointReader } from './point-reader.ts';
import { followingYear } from './read-year.ts';
import { readDays } from './reading.ts';
import { AFTER_CHRIST, BEFORE_CHRIST, MONTHS } from './words.ts';
import { anyOf } from './written-text.ts';

const MONTH = `(?<month>${anyOf(MONTHS.flat())})\\.?`;
const DAY = '(?<day>\\d{1,2})(?:st|nd|rd|th|er|\\.)?';
const ERA = `(?: ?(?:(?<bc>${anyOf(BEFORE_CHRIST)})|(?<ad>${anyOf(AFTER_CHRIST)})))?`;
const STYLE =
  '(?:,? \\(?(?:(?<os>o\\. ?s\\.|OS|old style|a\\. ?St\\.|Julian)|(?<ns>n\\. ?s\\.|NS|new style|n\\. ?St\\.|Gregorian))\\)?)?';
const YEAR = `(?:(?<adBefore>AD|A\\.D\\.) )?(?<year>\\d{1,4})(?:/(?<next>\\d{1,4}))?${ERA}${STYLE}`;

/** `30 January 1648/9`, `January 30, 1649`, `März 1848`, `15 March 44 BC`, `5 November 1605 OS`. */
const FORMS = [
  new RegExp(`^${DAY} ?(?:of |de )?${MONTH},? ?(?:of |de )?${YEAR}$`, 'i'),
  new RegExp(`^${MONTH} ?${DAY},? ${YEAR}$`, 'i'),
  new RegExp(`^${MONTH},? ?(?:of |de )?${YEAR}$`, 'i'),
  new RegExp(`^(?<year>\\d{4}),? ${MONTH} ${DAY}$`, 'i'),
];
const FIGURES = /^(?<first>\d{1,2})(?<mark>[./-])(?<second>\d{1,2})\k<mark>(?<year>\d{4})$/;

export const readDay: PointReader = (text) => {
  const figures = FIGURES.exec(text)?.groups;
  if (figures) return refuse(askForMonth(text, figures));
  for (const form of FORMS) {
    const groups = form.exec(text)?.groups;
    if (groups) return dayOrMonth(text, groups);
  }
  return undefined;
};

function askForMonth(text: string, { first = '', second = '', year = '' }: Record<string, string>): string {
  const iso = (month: string, day: string) => `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
  if (Number(first) > 12) return `Write the year first: ${iso(second, first)} for "${text}".`;
  if (Number(second) > 12) return `Write the year first: ${iso(first, second)} for "${text}".`;
  return `"${text}" leaves open which figure is the month; write ${iso(second, first)} or ${iso(first, second)}.`;
}

function dayOrMonth(text: string, groups: Record<string, string | undefined>): Outcome<Reading> | undefined {
  const name = (groups['month'] ?? '').toLowerCase();
  const month = MONTHS.findIndex((names) => names.some((candidate) => candidate.toLowerCase() === name)) + 1;
  const written = groups['year'] ?? '';
  const era = groups['ad'] ?? groups['adBefore'] ?? groups['bc'];
  if (era === undefined && written.length < 4) return undefined;
  // "Augustus, 27 BC" names the ruler; the month has a day, or a year of four figures.
  if (name === 'augustus' && groups['day'] === undefined && era !== undefined) return undefined;
  if (Number(written) === 0) return refuse('There is no year 0; write 1 BC for the year before AD 1.');
  const day = groups['day'] === undefined ? undefined : Number(groups['day']);
  if (groups['next'] !== undefined) return oldStyleDay(text, written, groups['next'], month, day);
  const year = groups['bc'] === undefined ? Number(written) : 1 - Number(written);
  if (groups['os'] === undefined)
    return placed(text, year, month, day, groups['ns'] === undefined ? undefined : 'gregorian');
  if (month < 3 || (month === 3 && (day ?? 0) < 25)) {
    const pair = formatGloss(year - 1, year);
    return refuse(`Before 25 March an old-style year needs both numbers; write ${text.replace(written, pair)}.`);
  }
  return placed(text, year, month, day, 'julian');
}

function oldStyleDay(text: string, written: string, next: string, month: number, day: number | undefined) {
  const year = followingYear(written, next);
  if (year !== Number(written) + 1)
    return refuse(
      `"${written}/${next}" does not name two years that follow; write ${formatGloss(Number(written), Number(written) + 1)}.`,
    );
  if (month > 3 || (month === 3 && (day ?? 1) > 24)) {
    return refuse(
      `The old year ended on 24 March, so "${text}" needs one year only; write ${text.replace(/\/\d+/, '')}.`,
    );
  }
  return placed(text, year, month, day, 'julian', month === 3 ? 24 : undefined);
}

function placed(
  text: string,
  year: number,
  month: number,
  day: number | undefined,
  style: Reckoning | undefined,
  lastDay?: number,
): Outcome<Reading> {
  const reckoning = style ?? (year * 10_000 + month * 100 + (day ?? 1) < 15_821_015 ? 'julian' : 'gregorian');
  const length = daysInMonth(month, reckoning === 'julian' ? isJulianLeap(year) : isGregorianLeap(year));
  if (day !== undefined && (day < 1 || day > length)) {
    return refuse(`"${text}" names a day its month does not have; write a day that exists, or the month alone.`);
  }
  const first = dayFromCivil({ year, month, day: day ?? 1 }, reckoning);
  const last = dayFromCivil({ year, month, day: day ?? lastDay ?? length }, reckoning);
  const reading = readDays(first, last, reckoning, 'days');
  const wholeMonth = day === undefined && style === undefined;
  return good(wholeMonth ? { ...reading, edtf: reading.edtf.slice(0, reading.edtf.indexOf('/') - 3) } : reading);
}
