import { good, refuse, type Outcome } from '../../../core/outcome.ts';
import { formatColumn } from '../column-letter.ts';
import { gridOfRows, type GridRow } from '../grid.ts';
import { LIMITS, tooManyRows } from '../limits.ts';
import { sheetOfGrid } from '../sheet-of-grid.ts';
import type { Sheet, SheetCell, SheetRemark } from '../sheet.ts';
import { readRecords, type TextRecord } from './records.ts';
import { findSeparator, parseSeparator, statedSeparator } from './separator.ts';

export type TextChoices = { readonly separator?: string; readonly headingRow?: number };

/** A separated text as one sheet of the file's name. */
export function readText(
  text: string,
  name: string,
  choices: TextChoices,
  remarks: readonly SheetRemark[] = [],
): Outcome<{ readonly separator: string; readonly sheet: Sheet }> {
  const stated = statedSeparator(text);
  const body = stated?.rest ?? text;
  if (choices.separator === undefined && !/[^\s,;|]/.test(body)) return refuse(empty(name));
  const given = choices.separator === undefined ? undefined : parseSeparator(choices.separator);
  if (given === null) {
    return refuse(
      `Cells are separated by one character; this says "${choices.separator ?? ''}". Write comma, semicolon, tab or pipe, or the character itself.`,
    );
  }
  const separator = given ?? stated?.separator ?? findSeparator(body);
  const { records, unclosed, isCut } = readRecords(body, separator, LIMITS.rows + 1);
  if (isCut) return refuse(tooManyRows(name));
  const run = unclosed ?? swallowing(records, separator);
  if (run !== null) return refuse(neverClosed(name, run));
  const rows: GridRow[] = records.map(({ row, fields }) => ({
    row,
    cells: fields.map(cellOf),
    written: fields.length,
  }));
  const sheet = sheetOfGrid({ ...gridOfRows(name.replace(/\.[^.]+$/, ''), rows), remarks }, choices.headingRow);
  if (!sheet.ok) return sheet;
  const { columns, setAside } = sheet.value;
  return columns.length + setAside.length === 0 ? refuse(empty(name)) : good({ separator, sheet: sheet.value });
}

function empty(name: string): string {
  return `${name} is empty. Name a file that holds a row of headings and a row for each piece.`;
}

const EMPTY: SheetCell = Object.freeze({ text: '' });

/** `="0123"` is how programs keep the noughts of a number in a text file; a spreadsheet shows 0123. Nothing is computed. */
function cellOf(field: string): SheetCell {
  const shown = /^="([^"]*)"$/.exec(field)?.[1] ?? field;
  const text = shown.replace(/\r\n?/g, '\n').trim();
  return text === '' ? EMPTY : { text };
}

type Opened = { readonly row: number; readonly column: number; readonly begins: string };

/** A field that holds whole records: a quotation mark that was closed only by the next one, many lines on. */
function swallowing(records: readonly TextRecord[], separator: string): Opened | null {
  const width = records.slice(0, 40).reduce((widest, { fields }) => Math.max(widest, fields.length), 0);
  if (width < 3) return null;
  for (const { row, fields } of records) {
    for (const [column, field] of fields.entries()) {
      if (!/[\r\n]/.test(field)) continue;
      const lines = field.split(/\r\n|\r|\n/).slice(1, -1);
      const whole = lines.filter((line) => line.split(separator).length >= width - 1).length;
      if (whole >= 2 && whole > lines.length / 2) return { row, column, begins: field.split(/[\r\n]/, 1)[0] ?? '' };
    }
  }
  return null;
}

function neverClosed(name: string, { row, column, begins }: Opened): string {
  const start = begins.replace(/^\s*"/, '').slice(0, 30);
  return `In ${name}, row ${row}, column ${formatColumn(column)}, a quotation mark is opened before "${start}" and not closed in its row, so that the rows below would run into one cell. Close it there with another ", or take it out.`;
}
