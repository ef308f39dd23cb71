import { dayFromCivil, daysInMonth, isoDay, isGregorianLeap, isJulianLeap } from '../calendars/civil.ts';
import type { CivilCalendar, CivilDay } from '../calendars/civil.ts';
import { calendarBy, GREGORY, REFORMS, type Reform } from '../calendars/reforms.ts';
import { good, refuse, type Outcome } from '../outcome.ts';
import type { Reading } from './dating.ts';
import { readEdtf } from './edtf.ts';
import { formatGloss } from './format-years.ts';
import { readDays, type PointContext, type PointReader } from './reading.ts';
import { isBritish, isRealmOf } from './eras.ts';
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
/** `5/15 November 1605`, `30 January/9 February 1648/9`, `November 5/15, 1605`: a day in both styles. */
const DAYS = '(?<day>\\d{1,2})(?:st|nd|rd|th|\\.)? ?/ ?(?<newDay>\\d{1,2})(?:st|nd|rd|th|\\.)?';
const OTHER_MONTH = `(?<oldMonth>${anyOf(MONTHS.flat())})\\.?`;
const IN_TWO_STYLES = [
  new RegExp(`^${DAYS} ?(?:of |de )?${MONTH},? ?(?:of |de )?(?<year>\\d{4})(?:/(?<next>\\d{1,4}))?$`, 'i'),
  new RegExp(`^${MONTH} ${DAYS},? (?<year>\\d{4})(?:/(?<next>\\d{1,4}))?$`, 'i'),
  new RegExp(
    `^(?<day>\\d{1,2})(?:st|nd|rd|th|\\.)? ${OTHER_MONTH}(?: (?<oldYear>\\d{4}))? ?/ ?(?<newDay>\\d{1,2})(?:st|nd|rd|th|\\.)? ${MONTH},? (?<year>\\d{4})(?:/(?<next>\\d{1,4}))?$`,
    'i',
  ),
];
const FIGURES = /^(?<first>\d{1,2})(?<mark>[./-]) ?(?<second>\d{1,2})\k<mark> ?(?<year>\d{4})$/;
/** `10.1923`, `03/2011`: a stroke between a month and a year of making may as well join the year of a reign. */
const MONTH_IN_FIGURES = /^(?<month>0?[1-9]|1[0-2])(?<mark>[./]) ?(?<year>1\d{3}|20\d\d)$/;
const ISO_DAY = /^\d{4}-\d\d-\d\d[?~%]?$/;

export const readDay: PointReader = (text, context) => {
  if (ISO_DAY.test(text)) return readEdtf(text);
  const figures = FIGURES.exec(text)?.groups;
  if (figures) return readFigures(text, figures);
  const inMonth = MONTH_IN_FIGURES.exec(text)?.groups;
  if (inMonth) return readMonthInFigures(text, inMonth, context);
  for (const form of IN_TWO_STYLES) {
    const groups = form.exec(text)?.groups;
    if (groups) return dayInTwoStyles(text, groups);
  }
  for (const form of FORMS) {
    const groups = form.exec(text)?.groups;
    if (groups) return dayOrMonth(text, groups, context.realm);
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

function readMonthInFigures(
  text: string,
  { month = '', mark, year = '' }: Record<string, string>,
  context: PointContext,
): Outcome<Reading> | undefined {
  const named = `${MONTHS[Number(month) - 1]?.[0] ?? ''} ${year}`;
  if (mark === '.' || context.dateOf === 'event') return readDay(named, context);
  return refuse(`"${text}" may be a month, or a year of a reign and a year of ours; write ${named} or ${year}.`);
}

function monthNamed(name: string): number {
  return MONTHS.findIndex((names) => names.some((one) => one.toLowerCase() === name.toLowerCase())) + 1;
}

/** The old style first, the new after it: both must name one day. */
function dayInTwoStyles(text: string, groups: Groups): Outcome<Reading> {
  const { month = '', oldMonth = month, year: written = '', next, oldYear } = groups;
  const year = next === undefined ? Number(written) : followingYear(written, next);
  const [from, to] = [monthNamed(oldMonth), monthNamed(month)];
  const [first, last] = [Number(groups['day']), Number(groups['newDay'])];
  const begun = oldYear === undefined ? year - (from > to ? 1 : 0) : Number(oldYear);
  const old = placed(text, { year: begun, month: from, day: first }, 'julian');
  const fresh = placed(text, { year, month: to, day: last }, 'gregorian');
  if (!old.ok || !fresh.ok) return old.ok ? fresh : old;
  if (old.value.edtf === fresh.value.edtf && year >= GREGORY.firstNew.year) return old;
  const days = [`${String(first)}${from === to ? '' : ` ${oldMonth}`}`, `${String(last)} ${month} ${String(year)}`];
  const ways = `${days.join(' or ')} for one of them, ${days.join(' - ')} for all between, or the first alone with OS`;
  return refuse(`The days of "${text}" are not one day in the old style and the new; write ${ways}.`);
}

type Groups = Readonly<Record<string, string | undefined>>;

function dayOrMonth(text: string, groups: Groups, realm: string | undefined): Outcome<Reading> | undefined {
  const name = groups['month'] ?? '';
  const roman = ROMAN_MONTHS.indexOf((groups['roman'] ?? '').toUpperCase());
  const month = groups['roman'] === undefined ? monthNamed(name) : roman + 1;
  if (month === 0) return undefined;
  const written = groups['year'] ?? '';
  const era = groups['ad'] ?? groups['adBefore'] ?? groups['bc'];
  if (era === undefined && written.length < 4) return undefined;
  // "Augustus, 27 BC" names the ruler; the month has a day, or a year of four figures.
  if (/^augustus$/i.test(name) && groups['day'] === undefined && era !== undefined) return undefined;
  if (Number(written) === 0) return refuse('There is no year 0; write 1 BC for the year before AD 1.');
  const day = groups['day'] === undefined ? undefined : Number(groups['day']);
  if (groups['next'] !== undefined) return oldStyleDay(text, written, groups['next'], month, day);
  const year = groups['bc'] === undefined ? Number(written) : 1 - Number(written);
  if (groups['ns'] !== undefined) return placed(text, { year, month, day }, 'gregorian');
  if (groups['os'] === undefined) return placedIn(text, { year, month, day }, realm);
  // The year began on 25 March in England until 1752; other lands named it by 1 January (Russia, from 1700).
  const isEnglish = year <= 1752 && (realm === undefined || isBritish(realm));
  if (isEnglish && (month < 3 || (month === 3 && (day ?? 0) < 25))) {
    const pair = formatGloss(year - 1, year);
    return refuse(`Before 25 March an old-style year needs both numbers; write ${text.replace(written, pair)}.`);
  }
  return placed(text, { year, month, day }, 'julian');
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

/** A day or a month of which no style is said: by the old calendar until the realm gave it up. */
function placedIn(text: string, { year, month, day }: Placed, realm: string | undefined): Outcome<Reading> {
  const { reform } = REFORMS.find(({ realms }) => isRealmOf(realms, realm)) ?? { reform: GREGORY };
  const calendarOn = (on: number) => calendarBy(reform, { year, month, day: on });
  if (day !== undefined) {
    const calendar = calendarOn(day);
    return calendar ? placed(text, { year, month, day }, calendar) : refuse(askForStyle(text, reform));
  }
  const isHouseRule = calendarOn(1) === calendarBy(GREGORY, { year, month, day: 1 });
  const length = monthLength(year, month, calendarOn(28) ?? 'gregorian');
  // A month in which days were left out begins or ends on the day beside the gap.
  const first: CivilDay = calendarOn(1) ? { year, month, day: 1 } : reform.firstNew;
  const last: CivilDay = calendarOn(length) ? { year, month, day: length } : reform.lastOld;
  const days = [first, last].map((civil) => dayFromCivil(civil, calendarBy(reform, civil)));
  const calendar = calendarBy(reform, first) === calendarBy(reform, last) ? calendarBy(reform, last) : 'gregorian';
  const reading = readDays(days[0] ?? 0, days[1] ?? 0, calendar ?? 'gregorian', 'days');
  return good(isHouseRule ? { ...reading, edtf: isoMonth({ year, month, day: 1 }) } : reading);
}

function askForStyle(text: string, { lastOld, firstNew }: Reform): string {
  const [old, fresh] = [lastOld, firstNew].map(({ day, month }) => `${String(day)} ${MONTHS[month - 1]?.[0] ?? ''}`);
  const gap = `was left out where ${old ?? ''} ${String(lastOld.year)} was followed by ${fresh ?? ''}`;
  return `"${text}" ${gap}; write OS after it for a day of the old calendar, NS for one of the new.`;
}

function isoMonth(civil: CivilDay): string {
  return isoDay(civil).slice(0, -3);
}

function monthLength(year: number, month: number, calendar: CivilCalendar): number {
  return daysInMonth(month, calendar === 'julian' ? isJulianLeap(year) : isGregorianLeap(year));
}

function placed(
  text: string,
  { year, month, day }: Placed,
  calendar: CivilCalendar,
  lastDay?: number,
): Outcome<Reading> {
  const length = monthLength(year, month, calendar);
  if (day !== undefined && (day < 1 || day > length)) {
    return refuse(`"${text}" names a day its month does not have; write a day that exists, or the month alone.`);
  }
  const first = dayFromCivil({ year, month, day: day ?? 1 }, calendar);
  const last = dayFromCivil({ year, month, day: day ?? lastDay ?? length }, calendar);
  return good(readDays(first, last, calendar, 'days'));
}
