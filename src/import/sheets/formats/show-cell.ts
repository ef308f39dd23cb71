import type { SheetCell } from '../sheet.ts';
import { figureOf, generalText } from './figure.ts';
import { parseFormatCode, sectionFor } from './format-code.ts';
import type { FormatSection, FormatToken } from './format-code.ts';
import { formatIso, momentOf } from './serial-day.ts';
import type { SheetMoment } from './serial-day.ts';
import { showFigure } from './show-number.ts';
import { isCurrency, SIGNS } from '../../../core/money/currencies.ts';

/** A number format ready for use. */
export type NumberFormat = readonly FormatSection[];

export function numberFormat(code: string): NumberFormat {
  return parseFormatCode(code);
}

/** A number as its format shows it, and what it then is: a figure, a sum or a day. */
export function showCell(number: number, format: NumberFormat, is1904: boolean): SheetCell {
  const figure = figureOf(number);
  const chosen = sectionFor(format, number);
  if (chosen === null) return { text: generalText(figure), value: { kind: 'number', figure } };
  const { section, hasOwnSign } = chosen;
  if (section.isDate) {
    const moment = momentOf(number, is1904);
    // A spreadsheet fills the cell with hashes, which tell a reader less than the number does.
    if (moment === null) return { text: figure, value: { kind: 'number', figure } };
    return dated(showMoment(moment, number, section), moment, section);
  }
  if (section.tokens.some(({ kind }) => kind === 'text')) {
    return { text: generalText(figure), value: { kind: 'number', figure } };
  }
  const plain = figure.replace(/^-/, '');
  const shown = showFigure(plain, section).replace(/\s+/g, ' ').trim();
  const text = number < 0 && !hasOwnSign && /[1-9]/.test(shown) ? `-${shown}` : shown;
  // A nought shown as nothing is nothing to a reader; any other number that is hidden by its format is kept.
  if (text === '') return number === 0 ? { text } : { text: figure, value: { kind: 'number', figure } };
  const currency = currencyOf(section) ?? (format[0] === undefined ? null : currencyOf(format[0]));
  return {
    text,
    value: currency === null ? { kind: 'number', figure } : { kind: 'money', figure, currency },
  };
}

/** A date and time a sheet holds as such, in its format. */
export function showDated(moment: SheetMoment, format: NumberFormat): SheetCell {
  const section = format.find(({ isDate }) => isDate);
  if (section === undefined) return { text: formatIso(moment), value: { kind: 'day', iso: formatIso(moment) } };
  return dated(showMoment(moment, moment.seconds / 86_400, section), moment, section);
}

function dated(text: string, moment: SheetMoment, section: FormatSection): SheetCell {
  return moment.isReal && (showsDay(section) || section.locale === 'f800')
    ? { text, value: { kind: 'day', iso: formatIso(moment) } }
    : { text };
}

/** Signs that stand for one currency wherever they stand, beside those of the core. */
const SURE: Readonly<Record<string, string>> = {
  'zł': 'PLN', 'Kč': 'CZK', 'Ft': 'HUF', 'лв': 'BGN', 'лв.': 'BGN', '₪': 'ILS', '₴': 'UAH', '₫': 'VND', '฿': 'THB',
  'NT$': 'TWD', 'R$': 'BRL', 'SFr.': 'CHF', 'sFr.': 'CHF', 'руб.': 'RUB', 'р.': 'RUB', 'DM': 'DEM',
}; // prettier-ignore

/** Currencies of locales whose sign is used elsewhere too: `$`, `kr`, `¥`, `Fr.` (MS-LCID 2.2 with ISO 4217). */
const BY_LOCALE: Readonly<Record<string, string>> = {
  '409': 'USD', '540a': 'USD', '1009': 'CAD', 'c0c': 'CAD', 'c09': 'AUD', '1409': 'NZD', 'c04': 'HKD', '1004': 'SGD', '80a': 'MXN',
  '414': 'NOK', '814': 'NOK', '406': 'DKK', '41d': 'SEK', '40f': 'ISK', '411': 'JPY', '804': 'CNY', '807': 'CHF', '100c': 'CHF',
  '810': 'CHF', '415': 'PLN', '405': 'CZK', '40e': 'HUF', '419': 'RUB', '1c09': 'ZAR', '418': 'RON', '436': 'ZAR',
}; // prettier-ignore

/**
 * The currency a number format shows; null where it shows none or one of several. `$` without a locale is the dollar of
 * a dozen countries, and `kr` the crown of four.
 */
export function currencyOf({ currency, tokens }: FormatSection): string | null {
  if (currency !== null) {
    const named = currencyNamed(currency.sign);
    return named ?? BY_LOCALE[currency.locale.replace(/^0+/, '')] ?? null;
  }
  for (const token of tokens) {
    const named = token.kind === 'literal' ? currencyNamed(token.text) : null;
    if (named !== null) return named;
  }
  return null;
}

function currencyNamed(sign: string): string | null {
  const trimmed = sign.trim();
  if (/^[A-Z]{3}$/.test(trimmed) && isCurrency(trimmed)) return trimmed;
  return trimmed === '$' ? null : (SURE[trimmed] ?? SIGNS[trimmed] ?? null);
}

type DateToken = Extract<FormatToken, { kind: 'date' }>;

/** Languages of the locales that `[$-407]` and its like name, by the last two digits (MS-LCID 2.2). */
const LANGUAGES: Readonly<Record<string, string>> = {
  '05': 'cs', '06': 'da', '07': 'de', '08': 'el', '09': 'en-GB', '0a': 'es', '0b': 'fi', '0c': 'fr', '0e': 'hu', '10': 'it',
  '13': 'nl', '14': 'nb', '15': 'pl', '16': 'pt', '18': 'ro', '19': 'ru', '1a': 'hr', '1b': 'sk', '1d': 'sv', '1f': 'tr',
  '22': 'uk', '24': 'sl', '25': 'et', '26': 'lv', '27': 'lt', '02': 'bg',
}; // prettier-ignore

/** Whether a section of a format shows a day of a month of a year; `yyyy` alone shows a year, whatever lies below. */
export function showsDay({ tokens }: FormatSection): boolean {
  const parts = tokens.filter((token) => token.kind === 'date');
  const has = (letter: string, most: number): boolean =>
    parts.some((part) => part.letter === letter && part.count <= most && !part.isElapsed);
  return has('y', 9) && has('m', 9) && has('d', 2);
}

/** A moment as a section of a date format shows it. `elapsed` counts days since the system began, for `[h]`. */
function showMoment(moment: SheetMoment, elapsed: number, section: FormatSection): string {
  // Long forms of the reader's own system (`[$-F800]`): which they are, only that system knows.
  if (section.locale === 'f800') return formatIso(moment);
  const tokens = section.tokens;
  const dates = tokens.filter((token): token is DateToken => token.kind === 'date');
  const isTwelve = dates.some(({ letter }) => letter === 'noon');
  const places = dates.find(({ letter }) => letter === 'f')?.count ?? 0;
  const scale = 10 ** places;
  const seconds = places > 0 ? Math.round(moment.seconds * scale) / scale : Math.floor(moment.seconds + 1e-6);
  const language = LANGUAGES[section.locale?.slice(-2) ?? ''] ?? 'en-GB';
  return tokens
    .map((token, at) => {
      if (token.kind !== 'date') return plainText(token);
      if (token.isElapsed) return elapsedText(elapsed, token);
      if (token.letter === 'm' && isMinutes(tokens, at)) return padded(Math.floor(seconds / 60) % 60, token.count);
      return dateText(token, moment, { seconds, isTwelve, language });
    })
    .join('')
    .trim();
}

function plainText(token: FormatToken): string {
  if (token.kind === 'literal') return token.text;
  if (token.kind === 'slash') return '/';
  if (token.kind === 'point') return '.';
  return token.kind === 'comma' ? ',' : '';
}

function padded(number: number, count: number): string {
  return String(number).padStart(Math.min(count, 2), '0');
}

/** `m` means minutes right after hours and right before seconds. */
function isMinutes(tokens: readonly FormatToken[], at: number): boolean {
  const dates = tokens.map((token, index) => ({ token, index })).filter(({ token }) => token.kind === 'date');
  const place = dates.findIndex(({ index }) => index === at);
  const letterOf = (index: number): string => {
    const token = dates[index]?.token;
    return token?.kind === 'date' ? token.letter : '';
  };
  return letterOf(place - 1) === 'h' || letterOf(place + 1) === 's';
}

function elapsedText(days: number, { letter, count }: DateToken): string {
  const seconds = Math.round(days * 86_400_000) / 1000;
  const unit = letter === 'h' ? 3600 : letter === 'm' ? 60 : 1;
  return String(Math.floor(seconds / unit)).padStart(count, '0');
}

function dateText(
  { letter, count }: DateToken,
  { year, month, day, weekday }: SheetMoment,
  { seconds, isTwelve, language }: { seconds: number; isTwelve: boolean; language: string },
): string {
  const hours = Math.floor(seconds / 3600);
  if (letter === 'y') return count <= 2 ? String(year % 100).padStart(2, '0') : String(year).padStart(4, '0');
  if (letter === 'm') {
    if (count <= 2) return padded(month, count);
    const name = nameOf(language, { month: count === 3 ? 'short' : 'long' }, Date.UTC(2000, month - 1, 1));
    return count === 5 ? name.slice(0, 1) : name;
  }
  if (letter === 'd') {
    // 2 January 2000 was a Sunday.
    const name = { weekday: count === 3 ? 'short' : 'long' } as const;
    return count <= 2 ? padded(day, count) : nameOf(language, name, Date.UTC(2000, 0, 2 + weekday));
  }
  if (letter === 'h') return padded(isTwelve ? hours % 12 || 12 : hours, count);
  if (letter === 's') return padded(Math.floor(seconds) % 60, count);
  if (letter === 'f') return `.${(seconds % 1).toFixed(count).slice(2)}`;
  if (letter === 'noon') return count === 3 ? (hours < 12 ? 'A' : 'P') : hours < 12 ? 'AM' : 'PM';
  return '';
}

function nameOf(language: string, parts: Intl.DateTimeFormatOptions, at: number): string {
  const name = new Intl.DateTimeFormat(language, { ...parts, timeZone: 'UTC' }).format(at);
  // British English writes Sept where every sheet writes Sep.
  return language === 'en-GB' && parts.month === 'short' ? name.slice(0, 3) : name;
}
