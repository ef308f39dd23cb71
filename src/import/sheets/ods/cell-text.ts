import type { SheetCell, SheetValue } from '../sheet.ts';
import { figureOf } from '../formats/figure.ts';
import { formatIso, parseIsoMoment } from '../formats/serial-day.ts';

/** A cell as its XML has it (OpenDocument 1.3 part 3, 9.1.4 and 19.385 to 19.391). */
export type RawCell = {
  readonly type: string;
  readonly isError: boolean;
  readonly value: string;
  readonly currency: string;
  /** The paragraphs of the cell, which are what a reader sees; null where it has none. */
  readonly shown: string | null;
};

const ERROR = /^(Err:\d{3}|#(REF|N\/A|VALUE|DIV\/0|NAME|NUM|NULL|SPILL)[!?]?)$/;

export function cellOf({ type, isError, value, currency, shown }: RawCell): SheetCell {
  const text = (shown ?? fallback(type, value)).replace(/\r\n?/g, '\n').trim();
  if (text === '') return { text };
  const known =
    isError || ERROR.test(text) ? ({ kind: 'error', says: text } as const) : valueOf(type, value, currency, text);
  return known === null ? { text } : { text, value: known };
}

/** A value without paragraphs, as a file made by a program may have it. */
function fallback(type: string, value: string): string {
  if (type === 'boolean') return value === 'true' ? 'TRUE' : value === '' ? '' : 'FALSE';
  const number = Number(value);
  if ((type === 'float' || type === 'currency') && value !== '' && Number.isFinite(number)) return figureOf(number);
  if (type === 'percentage' && value !== '' && Number.isFinite(number)) return `${figureOf(number * 100)}%`;
  return value;
}

function valueOf(type: string, value: string, currency: string, text: string): SheetValue | null {
  if (type === 'date') {
    const moment = parseIsoMoment(value);
    return moment?.isReal === true && showsDay(text, moment.day) ? { kind: 'day', iso: formatIso(moment) } : null;
  }
  const number = Number(value);
  if (value === '' || !Number.isFinite(number)) return null;
  const figure = figureOf(number);
  if (type === 'currency' && /^[A-Z]{3}$/.test(currency)) return { kind: 'money', figure, currency };
  return type === 'float' || type === 'percentage' || type === 'currency' ? { kind: 'number', figure } : null;
}

/** A date shown as `1279` or `May 2011` has a day below that nobody wrote; it is not told. */
function showsDay(text: string, day: number): boolean {
  return new RegExp(`(^|\\D)0?${day}(\\D|$)`).test(text) && (text.match(/\d+|\p{L}{3,}/gu) ?? []).length >= 3;
}
