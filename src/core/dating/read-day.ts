import { calendarOf, dayFromCivil, daysInMonth, isGregorianLeap, isJulianLeap } from '../calendars/civil.ts';
import type { CivilCalendar } from '../calendars/civil.ts';
import { good, refuse, type Outcome } from '../outcome.ts';
import type { Reading } from './dating.ts';
import { readEdtf } from './edtf.ts';
import { formatGloss } from './format-years.ts';
import { readDays, type PointContext, type PointReader } from './reading.ts';
import { isBritish } from './eras.ts';
import { followingYear } from './shortened.ts';
import { AFTER_CHRIST, BEFORE_CHRIST, MONTHS } from './words.ts';
import { anyOf } from './written-text.ts';

const MONTH = `(?<month>${anyOf(MONTHS.flat())})\\.?`;
const DAY = '(?<day>\\d{1,2})(?:st|nd|rd|th|er|\\.)?';
const ERA = `(?: ?(?:(?<bc>${anyOf(BEFORE_CHRIST)})|(?<ad>${anyOf(AFTER_CHRIST)})))?`;
const OLD = '(?<os>o\\. ?s\\.|OS|old style|a\\. ?St\\.|Julian)';
const NEW = '(?<ns>n\\. ?s\\.|NS|new style|n\\. ?St\\.|Gregorian)';
const STYLE = `(?:,? \\(?(?:${OLD}|${NEW})\\)?)?`;
const YEAR = `(?:(?<adBefore>AD|A\\.D\\.) )?(?<year>\\d{1,4})(?:/(?<next>\\d{1,4}))?${ERA}${STYLE}`;
const ROMAN_MONTHS = ['I', 'II', 'III', 'IV', 'V', 'VI', 'VII', 'VIII', 'IX', 'X', 'XI', 'XII'];

/** `30 January 1648/9`, `January 30, 1649`, `März 1848`, `15 March 44 BC`, `5 November 1605 OS`, `25.XII.1588`. */
const FORMS = [
  new RegExp(`^${DAY} ?(?:of |de )?${MONTH},? ?(?:of |de )?${YEAR}$`, 'i'),
  new RegExp(`^${MONTH} ?${DAY},? ${YEAR}$`, 'i'),
  new RegExp(`^${MONTH},? ?(?:of |de )?${YEAR}$`, 'i'),
  new RegExp(`^(?<year>\\d{4}),? ${MONTH}(?: ${DAY})?$`, 'i'),
  new RegExp(`^(?<day>\\d{1,2})(?<mark>[./ -]) ?(?<roman>[IVX]{1,4})\\k<mark> ?(?<year>\\d{4})${STYLE}$`, 'i'),
];
const FIGURES = /^(?<first>\d{1,2})(?<mark>[./-]) ?(?<second>\d{1,2})\k<mark> ?(?<year>\d{4})$/;
const ISO_DAY = /^\d{4}-\d\d-\d\d[?~%]?$/;
/** Where a day before 14 September 1752 is Julian unless it says otherwise (Calendar (New Style) Act 1750). */
const NEW_STYLE_IN_BRITAIN = 17_520_914;

export const readDay: PointReader = (text, context) => {
  if (ISO_DAY.test(text)) return readEdtf(text);
  const figures = FIGURES.exec(text)?.groups;
  if (figures) return readFigures(text, figures);
  for (const form of FORMS) {
    const groups = form.exec(text)?.groups;
    if (groups) return dayOrMonth(text, groups, context);
  }
  return undefined;
};

/** `25/12/1588` has one figure that can be the month; `3/4/1649` has two. */
function readFigures(text: string, groups: Record<string, string>): Outcome<Reading> | undefined {
  const { first = '', second = '', year = '' } = groups;
  const iso = (month: string, day: string) => `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
  const [one, other] = [Number(first), Number(second)];
  const dayFirst = other >= 1 && other <= 12 && one >= 1 && one <= 31;
  const monthFirst = one >= 1 && one <= 12 && other >= 1 && other <= 31;
  if (dayFirst && monthFirst && one !== other) {
    return refuse(
      `"${text}" leaves open which figure is the month; write ${iso(second, first)} or ${iso(first, second)}.`,
    );
  }
  if (!dayFirst && !monthFirst)
    return refuse(`"${text}" has no month in its figures; write the day as 14 October 1066.`);
  return readEdtf(dayFirst ? iso(second, first) : iso(first, second));
}

type Groups = Readonly<Record<string, string | undefined>>;

function dayOrMonth(text: string, groups: Groups, context: PointContext): Outcome<Reading> | undefined {
  const name = (groups['month'] ?? '').toLowerCase();
  const roman = ROMAN_MONTHS.indexOf((groups['roman'] ?? '').toUpperCase());
  const named = MONTHS.findIndex((names) => names.some((candidate) => candidate.toLowerCase() === name));
  const month = (groups['roman'] === undefined ? named : roman) + 1;
  if (month === 0) return undefined;
  const written = groups['year'] ?? '';
  const era = groups['ad'] ?? groups['adBefore'] ?? groups['bc'];
  if (era === undefined && written.length < 4) return undefined;
  // "Augustus, 27 BC" names the ruler; the month has a day, or a year of four figures.
  if (name === 'augustus' && groups['day'] === undefined && era !== undefined) return undefined;
  if (Number(written) === 0) return refuse('There is no year 0; write 1 BC for the year before AD 1.');
  const day = groups['day'] === undefined ? undefined : Number(groups['day']);
  if (groups['next'] !== undefined) return oldStyleDay(text, written, groups['next'], month, day);
  const year = groups['bc'] === undefined ? Number(written) : 1 - Number(written);
  if (groups['os'] === undefined) {
    const style = groups['ns'] === undefined ? styleOf({ year, month, day: day ?? 1 }, context) : 'gregorian';
    return placed(text, { year, month, day }, style);
  }
  if (month < 3 || (month === 3 && (day ?? 0) < 25)) {
    const pair = formatGloss(year - 1, year);
    return refuse(`Before 25 March an old-style year needs both numbers; write ${text.replace(written, pair)}.`);
  }
  return placed(text, { year, month, day }, 'julian');
}

/** The calendar of a day that names none: where Britain's law ran it is Julian until 1752. */
function styleOf(civil: Parameters<typeof calendarOf>[0], { realm }: PointContext): CivilCalendar | undefined {
  const figures = civil.year * 10_000 + civil.month * 100 + civil.day;
  const isOld = figures >= 15_821_015 && figures < NEW_STYLE_IN_BRITAIN && isBritish(realm);
  return isOld ? 'julian' : undefined;
}

function oldStyleDay(text: string, written: string, next: string, month: number, day: number | undefined) {
  const year = followingYear(written, next);
  if (year !== Number(written) + 1) {
    const pair = formatGloss(Number(written), Number(written) + 1);
    return refuse(`"${written}/${next}" does not name two years that follow; write ${pair}.`);
  }
  if (month > 3 || (month === 3 && (day ?? 1) > 24)) {
    const one = text.replace(/\/\d+/, '');
    return refuse(`The old year ended on 24 March, so "${text}" needs one year only; write ${one}.`);
  }
  return placed(text, { year, month, day }, 'julian', month === 3 ? 24 : undefined);
}

interface Placed {
  readonly year: number;
  readonly month: number;
  readonly day: number | undefined;
}

function placed(
  text: string,
  { year, month, day }: Placed,
  style: CivilCalendar | undefined,
  lastDay?: number,
): Outcome<Reading> {
  const calendar = style ?? calendarOf({ year, month, day: day ?? 1 });
  const length = daysInMonth(month, calendar === 'julian' ? isJulianLeap(year) : isGregorianLeap(year));
  if (day !== undefined && (day < 1 || day > length)) {
    return refuse(`"${text}" names a day its month does not have; write a day that exists, or the month alone.`);
  }
  const first = dayFromCivil({ year, month, day: day ?? 1 }, calendar);
  const last = dayFromCivil({ year, month, day: day ?? lastDay ?? length }, calendar);
  const reading = readDays(first, last, calendar, 'days');
  const wholeMonth = day === undefined && style === undefined;
  return good(wholeMonth ? { ...reading, edtf: reading.edtf.slice(0, reading.edtf.indexOf('/') - 3) } : reading);
}
