import { good, type Outcome } from '../../../core/outcome.ts';
import { parseColumn } from '../column-letter.ts';
import type { Grid, GridRow, Hanging, Merge } from '../grid.ts';
import { LIMITS, tooManyCells, tooManyLetters, tooManyRows } from '../limits.ts';
import { readPart, type Package, type Taken } from '../package/read-part.ts';
import { DAMAGED } from '../package/zip.ts';
import type { SheetCell } from '../sheet.ts';
import { cellOf } from './cell-of.ts';
import { textCollector } from './rich-text.ts';
import { isOn, type Workbook } from './workbook.ts';

/** What stands in the XML of one worksheet; what hangs on it lies in parts of its own. */
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
};

/** Rows and columns there can be (ECMA-376 part 1, 18.3.1.4 and 18.3.1.73, as spreadsheets have them). */
const MOST_ROWS = 1_048_576;
const MOST_COLUMNS = 16_384;

export function readWorksheet(
  from: Package,
  part: string,
  name: string,
  workbook: Workbook,
  taken: Taken,
): Outcome<Worksheet> {
  const rows: GridRow[] = [];
  const hiddenColumns = new Set<number>();
  const merges: Merge[] = [];
  const links: Hanging[] = [];
  const linked: { row: number; column: number; relation: string }[] = [];
  const unanswered: number[] = [];
  const pictured: number[] = [];
  const inline = textCollector();
  let filterRow: number | null = null;
  let stop: string | null = null;

  let row = 0;
  let isHidden = false;
  let cells: (SheetCell | undefined)[] = [];
  let column = -1;
  let type = '';
  let style = 0;
  let isPicture = false;
  let value = '';
  let formula: string | null = null;
  let within: 'value' | 'formula' | 'inline' | null = null;

  const endCell = (): void => {
    if (type === 's' && value.trim() !== '' && workbook.strings[Number(value)] === undefined) {
      stop ??= `${from.name} cannot be read. ${DAMAGED}`;
    }
    const cell =
      isPicture && type === 'e' ? { text: '' } : cellOf({ type, style, value, inline: inline.text() }, workbook);
    if (isPicture && type === 'e') pictured.push(row);
    const isUnanswered = formula !== null && value === '' && type !== 'str' && cell.text === '';
    const shown = isUnanswered ? { text: `=${formula ?? ''}` } : cell;
    if (isUnanswered) unanswered.push(row);
    const address = formula === null ? null : /^(?:_xlfn\.)?HYPERLINK\(\s*"([^"]+)"/i.exec(formula);
    if (address?.[1] !== undefined) links.push({ row, column, text: address[1] });
    if (shown.text === '') return;
    cells[column] = shown;
    taken.letters += shown.text.length;
    taken.cells += 1;
  };

  const read = readPart(
    from,
    part,
    {
      open(element, attributes) {
        if (element === 'c') {
          column = place(attributes['r'])?.column ?? column + 1;
          if (column >= MOST_COLUMNS) stop ??= tooManyCells(name);
          type = attributes['t'] ?? 'n';
          style = Number(attributes['s'] ?? '0');
          isPicture = attributes['vm'] !== undefined;
          value = '';
          formula = null;
          inline.begin();
        } else if (element === 'v') within = 'value';
        else if (element === 'f') {
          within = 'formula';
          formula = '';
        } else if (element === 'is') within = 'inline';
        else if (element === 'row') {
          row = Number(attributes['r'] ?? row + 1);
          isHidden = isOn(attributes['hidden']) || attributes['ht'] === '0';
          cells = [];
          column = -1;
        } else if (element === 'col') {
          const isOut = isOn(attributes['hidden']) || Number(attributes['width'] ?? '1') === 0;
          const to = Math.min(Number(attributes['max'] ?? '0'), MOST_COLUMNS);
          for (let at = Number(attributes['min'] ?? '1'); isOut && at <= to; at += 1) hiddenColumns.add(at - 1);
        } else if (element === 'mergeCell') {
          const merge = range(attributes['ref']);
          if (merge !== null) merges.push(merge);
        } else if (element === 'autoFilter') filterRow = range(attributes['ref'])?.fromRow ?? null;
        else if (element === 'hyperlink') {
          const at = range(attributes['ref']);
          const relation = attributes['r:id'];
          if (at !== null && relation !== undefined) linked.push({ row: at.fromRow, column: at.fromColumn, relation });
        }
        if (within === 'inline') inline.open(element);
      },
      close(element) {
        if (within === 'inline') inline.close(element);
        if (element === 'v' || element === 'f' || element === 'is') within = null;
        else if (element === 'c') endCell();
        else if (element === 'row' && cells.length > 0) {
          if (!(row >= 1 && row <= MOST_ROWS)) return;
          rows.push({ row, cells, ...(isHidden && { isHidden }) });
          cells = [];
        }
      },
      text(text) {
        if (within === 'value') value += text;
        else if (within === 'formula') formula = (formula ?? '') + text;
        else if (within === 'inline') inline.take(text);
      },
    },
    () => stop ?? tooMuch(name, rows.length, taken),
  );
  if (!read.ok) return read;
  const sorted = rows.every(({ row: at }, index) => index === 0 || at > (rows[index - 1]?.row ?? 0));
  return good({
    rows: sorted ? rows : rows.toSorted((a, b) => a.row - b.row),
    hiddenColumns,
    merges,
    filterRow,
    links,
    linked,
    unanswered,
    pictured,
  });
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
