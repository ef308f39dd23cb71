import { numberFormat, showCell, showDated } from '../formats/show-cell.ts';
import { parseIsoMoment } from '../formats/serial-day.ts';
import type { SheetCell } from '../sheet.ts';
import { cellText, undoEscapes } from './rich-text.ts';
import type { Workbook } from './workbook.ts';

/** A cell as its XML has it (ECMA-376 part 1, 18.3.1.4). */
export type RawCell = {
  readonly type: string;
  readonly style: number;
  readonly value: string;
  readonly inline: string;
};

const GENERAL = numberFormat('General');

/** What a reader sees of a cell, and what the workbook knows it to be. */
export function cellOf(raw: RawCell, { strings, formats, is1904 }: Workbook): SheetCell {
  const { type, value } = raw;
  if (type === 's') return { text: value.trim() === '' ? '' : (strings[Number(value)] ?? '') };
  if (type === 'inlineStr') return { text: cellText(raw.inline) };
  if (type === 'str') return { text: cellText(undoEscapes(value)) };
  if (type === 'b')
    return { text: value.trim() === '' ? '' : value.trim() === '1' || value.trim() === 'true' ? 'TRUE' : 'FALSE' };
  if (type === 'e') return { text: value, value: { kind: 'error', says: value } };
  const format = formats[raw.style] ?? GENERAL;
  if (type === 'd') {
    const moment = parseIsoMoment(value.trim());
    return moment === null ? { text: value.trim() } : showDated(moment, format);
  }
  const number = value.trim() === '' ? Number.NaN : Number(value);
  return Number.isFinite(number) ? showCell(number, format, is1904) : { text: cellText(value) };
}
