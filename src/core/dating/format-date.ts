import { isHijriPair } from './ask-which.ts';
import { civilFromIso, lengthOfMonth } from '../calendars/civil.ts';
import type { Dating } from './dating.ts';
import { formatGloss, formatPart, formatYear, formatYears } from './format-years.ts';
import { THIRDS } from './parts.ts';
import { leavesOutItsName } from './read-bound.ts';
import { MONTHS, SEASONS } from './words.ts';
import { plainText, withPlainEras } from './written-text.ts';

export { formatYear } from './format-years.ts';

/** Longer lists of single years are left in the keeper's words. */
const MOST_SINGLE_YEARS = 4;

/**
 * A date for a visitor: "about 1280", "1279–81", "44 BC", "first half of the 12th century", "AH 294 (906/7)". What
 * it says reads back to the same years.
 */
export function formatDate(dating: Dating): string {
  if (!COUNTED_FROM_CHRIST.has(dating.calendar)) return formatCounted(dating);
  const ends = formatEnds(dating);
  if (ends !== undefined) return ends;
  const perhaps = dating.doubtful ? 'perhaps ' : '';
  if (!dating.about) return perhaps + formatPlain(dating);
  // "before about 1351", but "about 1280".
  const words = formatPlain(dating);
  const bound = BOUND_FIRST.exec(words)?.[0] ?? '';
  return `${perhaps}${bound}about ${words.slice(bound.length)}`;
}

const BOUND_FIRST = /^(?:not before|not after|before|after|until) /;
const COUNTED_FROM_CHRIST = new Set(['gregorian', 'julian']);
const MARKED_ENDS = /^[^/[{]*?\d(?<first>[?~%]?)\/[^/]*?\d(?<last>[?~%]?)$/;
const MARKS: Readonly<Record<string, string>> = { '~': 'about ', '?': 'perhaps ', '%': 'perhaps about ' };

/** Two ends of which one is surer than the other: "from about 1279 to 1281". */
function formatEnds({ earliest, latest, edtf, from, to }: Dating): string | undefined {
  const { first = '', last = '' } = MARKED_ENDS.exec(edtf)?.groups ?? {};
  if (first === last || typeof earliest !== 'number' || typeof latest !== 'number') return undefined;
  if (from !== undefined || to !== undefined) return undefined;
  return `from ${MARKS[first] ?? ''}${formatYear(earliest)} to ${MARKS[last] ?? ''}${formatYear(latest)}`;
}

/** The words give the years of ours already: `AH 1255 (1839/40)`, `AH 1255 = 1839`, `AH 294/906-7`, `1200 (AH 596)`. */
const SAYS_BOTH = /\([^)]*\d[^)]*\)$|=|\d ?\/ ?(?:AD )?\d{3,4}(?:[-/–]\d+)?(?: AD)?$/;

/** A range of two figures as a keyboard has it; a day in three figures, `1255-03-04`, is none. */
const HYPHENED = /(?<![\d-])(\d+)-(?=\d+(?![\d-]))/g;

/** Another era keeps its own words, with the dash of a range, and the years of ours follow in parentheses. */
function formatCounted(dating: Dating): string {
  const { earliest, latest, years } = dating;
  const text = dating.text.replace(HYPHENED, '$1–');
  if (SAYS_BOTH.test(plainText(text)) || typeof earliest !== 'number' || typeof latest !== 'number') return text;
  if (years && years.length > MOST_SINGLE_YEARS) return text;
  return `${text} (${years ? formatSet(dating) : formatGloss(earliest, latest)})`;
}

function formatPlain(dating: Dating): string {
  const { earliest, latest, years, from, to, edtf } = dating;
  if (years) return years.length > MOST_SINGLE_YEARS ? dating.text : formatSet(dating);
  if (from !== undefined || to !== undefined) {
    const days = formatDays(dating);
    if (days !== undefined) return days;
  }
  if (typeof earliest !== 'number' || typeof latest !== 'number') return formatOpen(dating);
  // Years of five figures are read in EDTF only.
  if (latest > 9999) return edtf.replace(/[?~%]/g, '');
  const season = SEASONS[Number(/^\d{4}-(?<season>2[1-4])[?~%]?$/.exec(edtf)?.groups?.['season']) - 21]?.[0];
  return season === undefined
    ? formatSpan(dating.text, earliest, latest)
    : `${season} ${formatYears(earliest, latest)}`;
}

function formatSet({ text, years = [], edtf }: Dating): string {
  // Beside a year BC a bare year could be taken for another.
  const era = years.some(([low]) => low <= 0) ? 'AD ' : '';
  const named = years.map(([low, high]) => formatSpan(text, low, high).replace(/^(?=\d{4}(?:–\d+)?$)/, era));
  return named.join(edtf.startsWith('{') ? ' and ' : ' or ').replace(/ (?:or|and) (?=.* (?:or|and) )/g, ', ');
}

const TWO_FOLLOWING = /(?<!\d)(?<first>\d{2,4})\/(?<second>\d{1,3})(?!\d)/;
const PARTS_OF_YEAR = ['early ', 'mid-', 'late '];

/** A keeper who wrote no year in figures wrote of a century, or of ten years, and is answered so. */
function formatSpan(text: string, low: number, high: number): string {
  const plain = withPlainEras(plainText(text));
  if (/^\d{3}X|\d0(?:s|er)/.test(text) && low % 10 === 0 && low % 100 !== 0 && high === low + 9)
    return low < 1000 ? `AD ${String(low)}s` : `${String(low)}s`;
  if (low === high) return partOfYear(plain) + formatYear(low);
  if (high === low + 1 && low !== 0 && TWO_FOLLOWING.test(plain)) {
    return low > 0 && low < 1000 ? `AD ${formatGloss(low, high)}` : formatGloss(low, high);
  }
  const part = /\d{3}/.test(plain) ? undefined : formatPart(low, high);
  if (part !== undefined) return part;
  const years = formatYears(low, high);
  // 1000–1591 would be asked about: AH 1000 is 1591.
  return /^\d/.test(years) && isHijriPair(low, high) ? `AD ${years}` : years;
}

/** "early 1588", which its keeper wrote so. */
function partOfYear(plain: string): string {
  const word = /(?:^|[ .])(?<word>\p{L}+)[ -](?:AD |BC )?\d+(?: \D+)?$/u.exec(plain)?.groups?.['word']?.toLowerCase();
  const third = word === undefined || word === 'in' ? -1 : THIRDS.findIndex((words) => words.includes(word));
  return PARTS_OF_YEAR[third] ?? '';
}

/** A single bound, named by the year the keeper named: "before 1351" where 1350 is the last year allowed. */
function formatOpen({ earliest, latest, text }: Dating): string {
  const words = plainText(text);
  const step = leavesOutItsName(words) ? 1 : 0;
  if (typeof latest === 'number') {
    if (earliest === 'open') return `until ${formatYear(latest)}`;
    return step === 1 ? `before ${formatYear(latest + 1)}` : `not after ${formatYear(latest)}`;
  }
  if (typeof earliest === 'number') {
    if (latest === 'open') return `${formatYear(earliest)} onwards`;
    return step === 1 ? `after ${formatYear(earliest - 1)}` : `not before ${formatYear(earliest)}`;
  }
  return earliest === null && latest === null ? 'undated' : text;
}

const NAMES_STYLE = /\b(?:o\. ?s\.|OS|old style|a\. ?St\.|Julian)\)?$/i;

/** `5/15 November 1605` says the new style too. */
const IN_TWO_STYLES = /\/ ?\d{1,2}(?:st|nd|rd|th|\.)?[ ,]/;

/** Days for a visitor: "14 October 1066", "April 1985", "20 November 1278 – 19 November 1279". Undefined if none are known. */
function formatDays({ from, to, earliest, latest, dayCalendar, calendar, text }: Dating): string | undefined {
  // An old-style day is shown as it was written, with its calendar named: the new style would hide what the source says.
  if (calendar === 'julian' && dayCalendar === 'gregorian' && /\d/.test(text)) {
    const words = text.replace(/^(?:c\.|ca\.?|circa|about|perhaps|probably) ?/i, '').replace(/ ?\(?\?\)?$/, '');
    if (IN_TWO_STYLES.test(words)) return words;
    return NAMES_STYLE.test(words)
      ? words.replace(/,? ?\(?(?:o\. ?s\.|OS|old style|a\. ?St\.|Julian)\)?$/i, ' (old style)')
      : `${words} (old style)`;
  }
  const first = from === undefined ? undefined : formatDay(from);
  const last = to === undefined ? undefined : formatDay(to);
  if (from !== undefined && to !== undefined) {
    if (from === to) return first;
    return isWholeMonth(from, to) ? first?.replace(/^\d+ /, '') : `${first ?? ''} – ${last ?? ''}`;
  }
  if (first !== undefined && latest === 'open') return `${first} onwards`;
  if (first !== undefined && latest === null) return `not before ${first}`;
  if (last !== undefined && earliest === 'open') return `until ${last}`;
  if (to !== undefined && dayCalendar && earliest === null) return `not after ${formatDay(to)}`;
  return undefined;
}

function formatDay(iso: string): string {
  const { year, month, day } = civilFromIso(iso);
  return `${String(day)} ${MONTHS[month - 1]?.[0] ?? ''} ${formatYear(year)}`;
}

function isWholeMonth(from: string, to: string): boolean {
  const first = civilFromIso(from);
  const last = civilFromIso(to);
  const isOneMonth = first.year === last.year && first.month === last.month;
  return isOneMonth && first.day === 1 && last.day === lengthOfMonth(last.year, last.month);
}
