import { leavesOutItsName } from './read-bound.ts';
import { formatPart } from './format-part.ts';
import { formatDays } from './format-days.ts';
import type { Dating } from './dating.ts';
import { formatGloss, formatYear, formatYears } from './format-year.ts';
import { SEASONS } from './words.ts';
import { plainText } from './written-text.ts';

export { formatYear } from './format-year.ts';

/** Longer lists of single years are left in the keeper's words. */
const MOST_SINGLE_YEARS = 4;

/**
 * A date for a visitor: "about 1280", "1279–81", "44 BC", "first half of the 12th century", "AH 294 (906/7)". What
 * it says reads back to the same years.
 */
export function formatDate(dating: Dating): string {
  if (!COUNTED_FROM_CHRIST.has(dating.calendar)) return formatCounted(dating);
  const perhaps = dating.doubtful ? 'perhaps ' : '';
  if (!dating.about) return perhaps + formatPlain(dating);
  // "before about 1351", but "about 1280".
  const words = formatPlain(dating);
  const bound = BOUND_FIRST.exec(words)?.[0] ?? '';
  return `${perhaps}${bound}about ${words.slice(bound.length)}`;
}

const BOUND_FIRST = /^(?:not before|not after|before|after|until) /;
const COUNTED_FROM_CHRIST = new Set(['gregorian', 'julian']);

/** The words give the years of ours already: `AH 1255 (1839/40)`, `AH 1255 = 1839`, `AH 294/906-7`. */
const SAYS_BOTH = /\([^)]*\d[^)]*\)$|=|\d ?\/ ?(?:AD )?\d{3,4}(?:[-/–]\d+)?(?: AD)?$/;

/** Another era keeps its own words, and the years of ours follow in parentheses. */
function formatCounted(dating: Dating): string {
  const { text, earliest, latest, years } = dating;
  if (SAYS_BOTH.test(plainText(text)) || typeof earliest !== 'number' || typeof latest !== 'number') return text;
  if (years && years.length > MOST_SINGLE_YEARS) return text;
  return `${text} (${dating.calendar === 'cyclical' ? formatSet(dating) : formatGloss(earliest, latest)})`;
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

/** A keeper who wrote no year in figures wrote of a century, or of ten years, and is answered so. */
function formatSpan(text: string, low: number, high: number): string {
  if (/^\d{3}X|\d0(?:s|er)/.test(text) && low % 10 === 0 && low % 100 !== 0 && high === low + 9)
    return `${String(low)}s`;
  const part = /\d{3}/.test(plainText(text)) ? undefined : formatPart(low, high);
  return part ?? formatYears(low, high);
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
