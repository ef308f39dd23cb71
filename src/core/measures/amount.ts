/** A number as a keeper writes it. */
export type Amount = {
  readonly value: number;
  /** Digits after the point; null for a vulgar fraction, which has no last place. */
  readonly decimals: number | null;
};

const GLYPHS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** Both marks in one number leave no doubt which is which: `1,234.56`, `1.234,56`. */
const GROUPED = /^(\d{1,3}(?:,\d{3})+\.\d{1,9}|\d{1,3}(?:\.\d{3})+,\d{1,9})$/;
const DECIMAL = /^(\d{0,9})(?:[.,](\d{1,9}))?$/;
const FRACTION = /^(?:(\d{1,6}) )?(\d{1,5})\/(\d{1,5})$/;

/** Matches what `readAmount` may be able to read, for use inside a larger pattern. */
export const AMOUNT =
  '(?:\\d{1,3}(?:,\\d{3})+\\.\\d+|\\d{1,3}(?:\\.\\d{3})+,\\d+|\\d+ ?[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|(?:\\d+ )?\\d+/\\d+|\\d*[.,]?\\d+)';

/**
 * Reads `1.38`, `1,38`, `.925`, `22 2/9`, `3½`. A comma is the decimal mark of half the books; before exactly three
 * digits it may as well part thousands, and then the answer is `'two ways'`. Null when it is no number.
 */
export function readAmount(text: string): Amount | 'two ways' | null {
  const spelt = text.replace(/ ?([½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞])/, (_, glyph: string) => ` ${GLYPHS[glyph] ?? ''}`).trim();
  const vulgar = FRACTION.exec(spelt);
  if (vulgar !== null) {
    const [, whole = '0', above = '0', below = '0'] = vulgar;
    return Number(below) === 0 ? null : { value: Number(whole) + Number(above) / Number(below), decimals: null };
  }
  const decimal = DECIMAL.exec(GROUPED.test(spelt) ? withoutGroups(spelt) : spelt);
  if (decimal === null || spelt === '') return null;
  const [, whole = '', after = ''] = decimal;
  if (spelt.includes(',') && after.length === 3 && Number(whole) > 0) return 'two ways';
  return { value: Number(`${whole === '' ? '0' : whole}.${after === '' ? '0' : after}`), decimals: after.length };
}

function withoutGroups(number: string): string {
  const mark = Math.max(number.lastIndexOf('.'), number.lastIndexOf(','));
  return `${number.slice(0, mark).replace(/[.,]/g, '')}.${number.slice(mark + 1)}`;
}

const USUAL_BELOW: ReadonlySet<number> = new Set([2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 16, 20, 24, 32, 64]);
const USUAL_BELOW_METRIC: ReadonlySet<number> = new Set([2, 3, 4]);

/** `22/23` with no whole number before it: the ends of a range to most who write it, and a fraction of a unit to none. */
export function mayBeRange(number: string, isMetric: boolean): boolean {
  const [, above, below] = /^(\d+)\/(\d+)$/.exec(number.trim()) ?? [];
  if (above === undefined || below === undefined) return false;
  const usual = isMetric ? USUAL_BELOW_METRIC : USUAL_BELOW;
  return Number(above) >= Number(below) || !usual.has(Number(below));
}

/** Digits of a number, no more of them than asked for and no idle noughts at the end: `1.440000001, 6` → `1.44`. */
export function writeAmount(value: number, most = 6): string {
  const fixed = value.toFixed(Math.min(most, 12));
  return fixed.includes('.') ? fixed.replace(/\.?0+$/, '') : fixed;
}

/** Marks of direction and of no width, which come along when a text is copied from a page. */
const UNSEEN = /[\u200B-\u200F\u202A-\u202E\u2060\u2066-\u2069\u00AD\uFEFF]/g;

/** Text without what nobody sees. */
export function seen(text: string): string {
  return text.replace(UNSEEN, '');
}

/**
 * Text as the readers like it: one space between words, one kind of dash and of minus, figures and letters of one width,
 * no marks of direction, nothing at the ends, and no mark that parts it from what a list has next.
 */
export function tidy(text: string): string {
  return seen(text)
    .normalize('NFC')
    .replace(/[\uFF01-\uFF5E]/g, (wide) => String.fromCharCode(wide.charCodeAt(0) - 0xfee0))
    .replace(/[٠-٩]/g, (digit) => String(digit.charCodeAt(0) - 0x660))
    .replace(/[۰-۹]/g, (digit) => String(digit.charCodeAt(0) - 0x6f0))
    .replace(/[٫⁄∕]/g, (mark) => (mark === '٫' ? '.' : '/'))
    .replace(/\s+/g, ' ')
    .replace(/[‐‑‒–—―−﹣]/g, '-')
    .replace(/ ?[;,] ?$/, '')
    .trim();
}

/** The text as it goes into a sentence: short, and in its own quotation marks. */
export function quoted(text: string): string {
  const short = text.length > 60 ? `${text.slice(0, 57)}…` : text;
  return `"${short.replace(/\s+/g, ' ').trim()}"`;
}
