import type { FormatSection, FormatToken } from './format-code.ts';
import { formatIso, type SheetMoment } from './serial-day.ts';

type DateToken = Extract<FormatToken, { kind: 'date' }>;

/** Languages of the locales that `[$-407]` and its like name, by the last two digits (MS-LCID 2.2). */
const LANGUAGES: Readonly<Record<string, string>> = {
  '05': 'cs', '06': 'da', '07': 'de', '08': 'el', '09': 'en-GB', '0a': 'es', '0b': 'fi', '0c': 'fr', '0e': 'hu', '10': 'it',
  '13': 'nl', '14': 'nb', '15': 'pl', '16': 'pt', '18': 'ro', '19': 'ru', '1a': 'hr', '1b': 'sk', '1d': 'sv', '1f': 'tr',
  '22': 'uk', '24': 'sl', '25': 'et', '26': 'lv', '27': 'lt', '02': 'bg',
}; // prettier-ignore

/** Whether a section of a format shows a day of a month of a year; `yyyy` alone shows a year, whatever lies beneath. */
export function showsDay({ tokens }: FormatSection): boolean {
  const parts = tokens.filter((token) => token.kind === 'date');
  const has = (letter: string, most: number): boolean =>
    parts.some((part) => part.letter === letter && part.count <= most && !part.isElapsed);
  return has('y', 9) && has('m', 9) && has('d', 2);
}

/** A moment as a section of a date format shows it. `elapsed` counts days since the system began, for `[h]`. */
export function showMoment(moment: SheetMoment, elapsed: number, section: FormatSection): string {
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
