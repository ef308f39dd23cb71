import type { SheetCell } from '../sheet.ts';
import { currencyOf } from './currency-of.ts';
import { figureOf, generalText } from './figure.ts';
import { parseFormatCode, sectionFor, type FormatSection } from './format-code.ts';
import { formatIso, momentOf, type SheetMoment } from './serial-day.ts';
import { showMoment, showsDay } from './show-moment.ts';
import { showFigure } from './show-number.ts';

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
