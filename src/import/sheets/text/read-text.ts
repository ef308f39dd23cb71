import { good, refuse } from '../../../core/outcome.ts';
import type { Outcome } from '../../../core/outcome.ts';
import { formatColumn } from '../column-letter.ts';
import { gridOfRows } from '../grid.ts';
import type { GridRow } from '../grid.ts';
import { LIMITS, tooManyRows } from '../limits.ts';
import { sheetOfGrid } from '../sheet-of-grid.ts';
import type { Sheet, SheetCell, SheetRemark } from '../sheet.ts';
import { readRecords } from './records.ts';
import type { TextRecord } from './records.ts';

type TextChoices = { readonly separator?: string; readonly headingRow?: number };

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

const CANDIDATES = [',', ';', '\t', '|', '^', '~', ':'] as const;
const SAMPLE = 64 * 1024;

const NAMES: Readonly<Record<string, string>> = {
  comma: ',',
  semicolon: ';',
  tab: '\t',
  '\\t': '\t',
  pipe: '|',
  bar: '|',
  colon: ':',
  space: ' ',
};

/** A separator as a keeper names it: the character itself, or `tab`, `semicolon` … ; null for what cannot be one. */
export function parseSeparator(text: string): string | null {
  const named = NAMES[text.trim().toLowerCase()];
  if (named !== undefined) return named;
  return text.length === 1 && !/["\r\n]/.test(text) ? text : null;
}

/** The separator a text states in a first line `sep=;`, as spreadsheets write and read it, and the text after that line. */
function statedSeparator(text: string): { readonly separator: string; readonly rest: string } | null {
  const line = /^sep=(.)(?:\r\n|\r|\n)/i.exec(text);
  return line === null ? null : { separator: line[1] ?? ',', rest: text.slice(line[0].length) };
}

/**
 * The separator that cuts the text into the most even records. A comma between figures (`1,38`) cuts only where every
 * other sign does worse: the rows of a sheet have one number of fields, those of a sheet cut at its decimal commas
 * have not.
 */
export function findSeparator(text: string): string {
  const sample = text.length > SAMPLE ? text.slice(0, text.lastIndexOf('\n', SAMPLE) + 1 || SAMPLE) : text;
  let best: { separator: string; evenness: number } = { separator: ',', evenness: 0 };
  for (const separator of CANDIDATES) {
    const evenness = evennessOf(sample, separator);
    if (evenness > best.evenness) best = { separator, evenness };
  }
  return best.separator;
}

/** The share of filled records that have the commonest number of fields, weighted by that number; 0 for no cut at all. */
function evennessOf(sample: string, separator: string): number {
  const { records } = readRecords(sample, separator, 400);
  const filled = records.filter(({ fields }) => fields.some((field) => field.trim() !== ''));
  if (filled.length === 0) return 0;
  const byWidth = new Map<number, number>();
  for (const { fields } of filled) byWidth.set(fields.length, (byWidth.get(fields.length) ?? 0) + 1);
  let best = 0;
  for (const [width, count] of byWidth) {
    // A sign that is in one row of two is more likely part of the words than between them.
    const share = count / filled.length;
    if (width > 1) best = Math.max(best, share * share * Math.log2(width + 1));
  }
  return best * (separator === ',' || separator === ':' ? 1 - shareBetweenFigures(sample, separator) / 2 : 1);
}

/** How many of these signs stand between two figures, as in `1,38` and `12:30`. */
function shareBetweenFigures(sample: string, sign: string): number {
  const all = sample.split(sign).length - 1;
  if (all === 0) return 0;
  const between = sample.match(new RegExp(`\\d${sign}(?=\\d)`, 'g'))?.length ?? 0;
  return between / all;
}
