import type { Settings } from '../columns/mapping.ts';

/** Years in figures alone, as the core reads them; `because` where they have two readings; null for any other text. */
export type YearSpan = { readonly text: string } | { readonly because: string } | null;

const YEAR = '([-\u2212]?\\d{1,4})';
const PAIR = `${YEAR}(?:\\/${YEAR})?`;
const FIGURES = new RegExp(`^${PAIR}(?: ?(to|until|bis|tot|à|al|[-–—]) ?${PAIR})?$`, 'i');

/** One end or both: a year as written, and where it falls, astronomical. */
type End = { readonly written: string; readonly year: number };

/**
 * A year or years without an era, by what the column's convention is: `-57 to -38`, `498 to 507`, `625/600-522`, `398/97` where
 * years are counted BC. A shortened year BC may be completed or as written: 398-97 is asked about, 398/97 is the year after.
 */
export function yearSpan(figures: string, about: '' | 'c. ', settings: Settings): YearSpan {
  const found = FIGURES.exec(figures.replace(/(\d)\.0+(?!\d)/g, '$1').replace(/\u2212/g, '-'));
  if (found === null) return null;
  const [, first = '', pair, between, last, lastPair] = found;
  const parts = [first, pair, last, lastPair].filter((part) => part !== undefined);
  const isSigned = parts.some((part) => part.startsWith('-'));
  if (isSigned && settings.minus === undefined) return null;
  if (
    first.startsWith('-') &&
    last !== undefined &&
    /^[-–—]$/.test(between ?? '') &&
    !last.startsWith('-') &&
    !/ /.test(figures)
  )
    return {
      because: `"${figures}" may end before or after Christ. Write ${first} to -${last}, or ${first} to ${last}.`,
    };
  const ends: End[] = [];
  for (const [at, part] of parts.entries()) {
    const before = ends.at(-1);
    const end = endOf(part, before, at > 0 && (part === pair || part === lastPair), isSigned, settings);
    if (end === null || 'because' in end) return end;
    ends.push(end);
  }
  const [from, to] = [ends[0]?.year ?? 0, ends.at(-1)?.year ?? 0];
  if (ends.some(({ year }, at) => year < (ends[at - 1]?.year ?? -Infinity)))
    return {
      because: `"${figures}" runs backwards by what the mapping says of its years. Look at the cell, or at years: and minus: under read:.`,
    };
  return { text: `${about}${inWords(from, to)}` };
}

function endOf(
  part: string,
  before: End | undefined,
  isPair: boolean,
  isSigned: boolean,
  settings: Settings,
): End | { because: string } | null {
  const figures = part.replace('-', '');
  const era = part.startsWith('-') ? 'minus' : eraOf(Number(figures), isSigned, settings);
  if (era === null || era === 'AH') return null;
  const yearAt = (number: number): number =>
    era === 'AD' ? number : era === 'minus' && settings.minus === 'astronomical' ? -number : 1 - number;
  if (Number(figures) === 0 && !(era === 'minus' && settings.minus === 'astronomical')) return null;
  const asWritten = { written: figures, year: yearAt(Number(figures)) };
  if (before === undefined || figures.length >= before.written.length) return asWritten;
  const completed = before.written.slice(0, before.written.length - figures.length) + figures;
  const whole = { written: completed, year: yearAt(Number(completed)) };
  // A year AD that is shorter than the one before it is cut short, or the text runs backwards.
  if (era === 'AD') return before.year > 0 ? whole : asWritten;
  const [isWhole, isBare] = [whole.year > before.year, asWritten.year > before.year && !figures.startsWith('0')];
  if (!isWhole || (isPair && whole.year === before.year + 1)) return isWhole ? whole : asWritten;
  if (!isBare) return whole;
  return {
    because: `"${before.written} and ${figures}" may be ${before.written} to ${completed} BC or ${before.written} to ${figures} BC. Write both years in full.`,
  };
}

/** What a bare year counts from: what the row's own column of eras says, what was settled for small years, or Christ. */
function eraOf(year: number, isSigned: boolean, { calendar, years }: Settings): 'AD' | 'BC' | 'AH' | null {
  if (calendar === 'AD' || calendar === 'BC') return calendar;
  if (calendar !== undefined) return null;
  return year >= 1000 || isSigned ? 'AD' : (years ?? null);
}

/** `57-38 BC`, `27 BC-AD 14`, `AD 98-117`, `1902/1910`. */
function inWords(from: number, to: number): string {
  const bc = (year: number): number => 1 - year;
  if (to <= 0) return from === to ? `${bc(from)} BC` : `${bc(from)}-${bc(to)} BC`;
  if (from <= 0) return `${bc(from)} BC-AD ${to}`;
  if (from >= 1000) return from === to ? String(from) : `${from}/${to}`;
  return from === to ? `AD ${from}` : `AD ${from}-${to}`;
}
