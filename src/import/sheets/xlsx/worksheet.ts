import { good } from '../../../core/outcome.ts';
import type { Outcome } from '../../../core/outcome.ts';
import { parseColumn } from '../column-letter.ts';
import type { Grid, GridRow, Hanging, Merge } from '../grid.ts';
import { LIMITS, tooManyCells, tooManyLetters, tooManyRows } from '../limits.ts';
import { readPart } from '../package/read-part.ts';
import type { Package, Taken } from '../package/read-part.ts';
import { DAMAGED } from '../package/zip.ts';
import type { SheetCell } from '../sheet.ts';
import { textCollector, cellText, undoEscapes } from './rich-text.ts';
import { isOn } from './workbook.ts';
import type { Workbook } from './workbook.ts';
import { numberFormat, showCell, showDated } from '../formats/show-cell.ts';
import { parseIsoMoment } from '../formats/serial-day.ts';

/** What is in the XML of one worksheet; what hangs on it lies in parts of its own. */
export type Worksheet = Pick<Grid, 'rows' | 'hiddenColumns' | 'merges'> & {
  /** The first row of its filter, which is the row of headings. */
  readonly filterRow: number | null;
  /** Addresses in `HYPERLINK` formulas. */
  readonly links: readonly Hanging[];
  /** Links by the number of their relation, or to a place in the workbook. */
  readonly linked: readonly { readonly row: number; readonly column: number; readonly relation: string }[];
  /** Rows with a formula whose result was never stored. */
  readonly unanswered: readonly number[];
  /** Rows with a picture in a cell. */
  readonly pictured: readonly number[];
  /** Rows in which a cell is filled, by the colour. */
  readonly coloured: ReadonlyMap<string, ReadonlySet<number>>;
};

/** Rows and columns there can be (ECMA-376 part 1, 18.3.1.4 and 18.3.1.73, as spreadsheets have them). */
const MOST_ROWS = 1_048_576;
const MOST_COLUMNS = 16_384;
const NO_ROW = { at: 0, isHidden: false, cells: [] };
const NO_CELL = { column: -1, type: 'n', style: 0, isPicture: false, value: '', formula: null as string | null };
type Attributes = Readonly<Record<string, string | undefined>>;

export function readWorksheet(
  from: Package,
  part: string,
  name: string,
  workbook: Workbook,
  taken: Taken,
): Outcome<Worksheet> {
  const reader = new WorksheetReader(name, from.name, workbook, taken);
  const read = readPart(from, part, reader, () => reader.whyStop());
  if (!read.ok) return read;
  const { rows } = reader;
  const sorted = rows.every(({ row: at }, index) => index === 0 || at > (rows[index - 1]?.row ?? 0));
  const { hiddenColumns, merges, filterRow, links, linked, unanswered, pictured, coloured } = reader;
  return good({
    rows: sorted ? rows : rows.toSorted((a, b) => a.row - b.row),
    hiddenColumns,
    merges,
    filterRow,
    links,
    linked,
    unanswered,
    pictured,
    coloured,
  });
}

/** Takes the rows out of the XML of a worksheet, one element after another. */
class WorksheetReader {
  readonly rows: GridRow[] = [];
  readonly hiddenColumns = new Set<number>();
  readonly merges: Merge[] = [];
  readonly links: Hanging[] = [];
  readonly linked: { row: number; column: number; relation: string }[] = [];
  readonly unanswered: number[] = [];
  readonly pictured: number[] = [];
  readonly coloured = new Map<string, Set<number>>();
  filterRow: number | null = null;
  readonly #name: string;
  readonly #damaged: string;
  readonly #workbook: Workbook;
  readonly #taken: Taken;
  readonly #inline = textCollector();
  #stop: string | null = null;
  #row: { readonly at: number; readonly isHidden: boolean; readonly cells: (SheetCell | undefined)[] } = NO_ROW;
  #cell = { ...NO_CELL };
  #within: 'value' | 'formula' | 'inline' | null = null;

  constructor(name: string, file: string, workbook: Workbook, taken: Taken) {
    this.#name = name;
    this.#damaged = `${file} cannot be read. ${DAMAGED}`;
    this.#workbook = workbook;
    this.#taken = taken;
  }

  whyStop(): string | null {
    return this.#stop ?? tooMuch(this.#name, this.rows.length, this.#taken);
  }

  open(element: string, attributes: Attributes): void {
    if (element === 'c') this.#beginCell(attributes);
    else if (element === 'v') this.#within = 'value';
    else if (element === 'f') {
      this.#within = 'formula';
      this.#cell.formula = '';
    } else if (element === 'is') this.#within = 'inline';
    else if (element === 'row') {
      const isHidden = isOn(attributes['hidden']) || attributes['ht'] === '0';
      this.#row = { at: Number(attributes['r'] ?? this.#row.at + 1), isHidden, cells: [] };
      this.#cell.column = -1;
    } else if (element === 'col') this.#passColumns(attributes);
    else if (element === 'mergeCell') {
      const merge = range(attributes['ref']);
      if (merge !== null) this.merges.push(merge);
    } else if (element === 'autoFilter') this.filterRow = range(attributes['ref'])?.fromRow ?? null;
    else if (element === 'hyperlink') {
      const at = range(attributes['ref']);
      const relation = attributes['r:id'];
      if (at !== null && relation !== undefined) this.linked.push({ row: at.fromRow, column: at.fromColumn, relation });
    }
    if (this.#within === 'inline') this.#inline.open(element);
  }

  close(element: string): void {
    if (this.#within === 'inline') this.#inline.close(element);
    if (element === 'v' || element === 'f' || element === 'is') this.#within = null;
    else if (element === 'c') this.#endCell();
    else if (element === 'row') this.#endRow();
  }

  text(text: string): void {
    if (this.#within === 'value') this.#cell.value += text;
    else if (this.#within === 'formula') this.#cell.formula = (this.#cell.formula ?? '') + text;
    else if (this.#within === 'inline') this.#inline.take(text);
  }

  #passColumns(attributes: Attributes): void {
    const isOut = isOn(attributes['hidden']) || Number(attributes['width'] ?? '1') === 0;
    const to = Math.min(Number(attributes['max'] ?? '0'), MOST_COLUMNS);
    for (let at = Number(attributes['min'] ?? '1'); isOut && at <= to; at += 1) this.hiddenColumns.add(at - 1);
  }

  #beginCell(attributes: Attributes): void {
    this.#cell = {
      ...NO_CELL,
      column: place(attributes['r'])?.column ?? this.#cell.column + 1,
      type: attributes['t'] ?? 'n',
      style: Number(attributes['s'] ?? '0'),
      isPicture: attributes['vm'] !== undefined,
    };
    if (this.#cell.column >= MOST_COLUMNS) this.#stop ??= tooManyCells(this.#name);
    this.#inline.begin();
  }

  #endCell(): void {
    const { type, style, value, formula, column, isPicture } = this.#cell;
    const row = this.#row.at;
    if (type === 's' && value.trim() !== '' && this.#workbook.strings[Number(value)] === undefined)
      this.#stop ??= this.#damaged;
    const isDrawn = isPicture && type === 'e';
    const read = cellOf({ type, style, value, inline: this.#inline.text() }, this.#workbook);
    const cell = isDrawn ? { text: '' } : read;
    if (isDrawn) this.pictured.push(row);
    const isUnanswered = formula !== null && value === '' && type !== 'str' && cell.text === '';
    const shown = isUnanswered ? { text: `=${formula}` } : cell;
    if (isUnanswered) this.unanswered.push(row);
    const address = formula === null ? null : /^(?:_xlfn\.)?HYPERLINK\(\s*"([^"]+)"/i.exec(formula);
    if (address?.[1] !== undefined) this.links.push({ row, column, text: address[1] });
    const colour = this.#workbook.fills[style] ?? null;
    if (colour !== null) this.coloured.set(colour, (this.coloured.get(colour) ?? new Set<number>()).add(row));
    if (shown.text === '') return;
    this.#row.cells[column] = shown;
    this.#taken.letters += shown.text.length;
    this.#taken.cells += 1;
  }

  #endRow(): void {
    const { at, isHidden, cells } = this.#row;
    if (cells.length > 0 && at >= 1 && at <= MOST_ROWS)
      this.rows.push({ row: at, cells, ...(isHidden && { isHidden }) });
    this.#row = { at, isHidden, cells: [] };
  }
}

function tooMuch(name: string, rows: number, { letters, cells }: Taken): string | null {
  if (rows > LIMITS.rows) return tooManyRows(name);
  if (letters > LIMITS.letters) return tooManyLetters(name);
  return cells > LIMITS.cells ? tooManyCells(name) : null;
}

/** `B12` as a row and a column; null for what names no cell. */
export function place(reference: string | undefined): { readonly row: number; readonly column: number } | null {
  const parts = /^\$?([A-Z]{1,3})\$?(\d{1,7})$/.exec(reference ?? '');
  const column = parseColumn(parts?.[1] ?? '');
  return parts === null || column === null ? null : { row: Number(parts[2]), column };
}

/** `A1:C3`, or `A1` alone. */
export function range(reference: string | undefined): Merge | null {
  const [first, last] = (reference ?? '').split(':');
  const from = place(first);
  const to = place(last ?? first);
  if (from === null || to === null) return null;
  return { fromRow: from.row, toRow: to.row, fromColumn: from.column, toColumn: to.column };
}

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
