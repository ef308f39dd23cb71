import { good, refuse } from '../../core/outcome.ts';
import type { Outcome } from '../../core/outcome.ts';
import { formatColumn } from './column-letter.ts';
import { usualRows, isHeadingBetween, isRowOfUnits, repeatsHeadings, whyNoRecord } from './between-rows.ts';
import { sayRows } from './grid.ts';
import type { Grid, GridRow, Hanging } from './grid.ts';
import { filledCells, findHeadingRow } from './heading-row.ts';
import { LIMITS, tooManyCells } from './limits.ts';
import type { Sheet, SheetCell, SheetColumn, SheetRemark, SheetRow } from './sheet.ts';

const EMPTY: SheetCell = Object.freeze({ text: '' });
const NO_HEADINGS: SheetRemark = {
  rows: [],
  says: 'No row of headings was found. Name it, or give each column its field by its letter.',
};

/** A sheet with its headings apart from its records. A heading row given by the keeper is taken as given; 0 is none. */
export function sheetOfGrid(grid: Grid, headingRow?: number): Outcome<Sheet> {
  const filled = grid.rows.filter(({ cells }) => filledCells(cells).length > 0);
  const chosen = headingRow ?? grid.statedHeadingRow ?? findHeadingRow(filled);
  const heading = filled.find(({ row }) => row === chosen);
  if (headingRow !== undefined && headingRow !== 0 && heading === undefined) {
    return refuse(
      `Row ${headingRow} of ${grid.name} is empty and holds no headings. Name the row they are in, or 0 where there are none.`,
    );
  }
  const stands = heading?.row ?? 0;
  const headings = new Map(filledCells(heading?.cells ?? []).map(({ cell, column }) => [column, cell.text]));
  const spread = spreadMerges(
    grid,
    filled.filter(({ row }) => row > stands),
  );
  const { body, skipped, units } = withoutShifted(
    heading,
    recordsIn(spread.rows, heading === undefined ? null : headings, grid.merges),
  );
  const above = filled.filter(({ row }) => row < stands);
  if (units !== undefined) addUnits(headings, units);

  const used = new Set(headings.keys());
  for (const { cells } of body)
    cells.forEach((cell, column) => cell !== undefined && cell.text !== '' && used.add(column));
  const order = [...used].sort((a, b) => a - b);
  const hanging = hangingColumns(grid, order.at(-1) ?? -1);
  if ((order.length + hanging.length) * body.length > LIMITS.cells) return refuse(tooManyCells(grid.name));

  const columns: SheetColumn[] = order.map((column) => ({
    letter: formatColumn(column),
    heading: headings.get(column) ?? '',
    isHidden: grid.hiddenColumns.has(column),
  }));
  const rows: SheetRow[] = body.map(({ row, cells, isHidden }) => ({
    row,
    cells: [...order.map((column) => cells[column] ?? EMPTY), ...hanging.map(({ texts }) => cellOf(texts.get(row)))],
    ...(isHidden === true && { isHidden: true as const }),
  }));
  const remarks: SheetRemark[] = [
    ...grid.remarks,
    ...remarksOnLengths(heading, body),
    ...spread.remarks,
    ...hanging.map(({ remark }) => remark),
    ...(heading === undefined && rows.length > 0 ? [NO_HEADINGS] : []),
  ];
  return good({
    name: grid.name,
    isHidden: grid.isHidden,
    headingRow: stands,
    columns: [...columns, ...hanging.map(({ column }) => column)],
    rows,
    setAside: [
      ...above.map((row) => ({ row: row.row, text: textOf(row), because: 'it stands above the headings' })),
      ...skipped,
    ],
    ...(remarks.length > 0 && { remarks }),
  });
}

type Records = {
  readonly body: readonly GridRow[];
  readonly skipped: Sheet['setAside'];
  /** The row of units under the headings. */
  readonly units: GridRow | undefined;
};

/** Which rows below the headings are records, and why the others are none; without headings every row is one. */
function recordsIn(
  rows: readonly GridRow[],
  headings: ReadonlyMap<number, string> | null,
  merges: Grid['merges'],
): Records {
  if (headings === null) return { body: rows, skipped: [], units: undefined };
  const usual = usualRows(rows.filter((row) => !repeatsHeadings(row, headings)));
  const body: GridRow[] = [];
  const skipped: Sheet['setAside'][number][] = [];
  const units = rows[0] !== undefined && isRowOfUnits(rows[0]) ? rows[0] : undefined;
  for (const [at, row] of rows.entries()) {
    const because =
      row === units
        ? 'it holds the units, which are now in the headings'
        : whyNoRecord(row, headings, merges, usual, at >= rows.length - 3);
    if (because === null) body.push(row);
    else {
      const isHeading = isHeadingBetween(because) && { isHeading: true as const };
      skipped.push({ row: row.row, text: textOf(row), because, ...isHeading });
    }
  }
  return { body, skipped, units };
}

function cellOf(text: string | undefined): SheetCell {
  return text === undefined ? EMPTY : { text };
}

function textOf({ cells }: GridRow): string {
  return filledCells(cells)
    .map(({ cell }) => cell.text)
    .join(' | ');
}

/** `Weight` above `g` becomes `Weight (g)`. */
function addUnits(headings: Map<number, string>, units: GridRow): void {
  for (const { cell, column } of filledCells(units.cells)) {
    const unit = cell.text.replace(/^[([]|[)\]]$/g, '');
    const heading = headings.get(column) ?? '';
    headings.set(column, heading === '' ? unit : `${heading} (${unit})`);
  }
}

const TOO_MANY_CELLS =
  'it has more cells than there are headings: a separator is in one of its texts, and what is behind that would be read in the wrong columns. Put that text between quotation marks';

/**
 * Without the rows of a text in which a separator stands unquoted, so that nobody can tell which of their cells is which. Where
 * most rows have a cell beyond the headings, that is a column without one.
 */
function withoutShifted(heading: GridRow | undefined, records: Records): Records {
  const width = heading?.written;
  if (width === undefined) return records;
  const { body } = records;
  const isLonger = ({ written = 0, cells }: GridRow): boolean =>
    written > width && filledCells(cells.slice(width)).length > 0;
  const longer = body.filter(isLonger);
  if (longer.length === 0 || longer.length * 2 > body.length) return records;
  const skipped = longer.map((row) => ({ row: row.row, text: textOf(row), because: TOO_MANY_CELLS }));
  return {
    ...records,
    body: body.filter((row) => !isLonger(row)),
    skipped: [...records.skipped, ...skipped].toSorted((a, b) => a.row - b.row),
  };
}

/** What a keeper is told of rows that were written longer or shorter than the headings. */
function remarksOnLengths(heading: GridRow | undefined, body: readonly GridRow[]): SheetRemark[] {
  const width = heading?.written;
  if (width === undefined) return [];
  const numbers = (of: readonly GridRow[]): number[] => of.map(({ row }) => row);
  const longer = numbers(body.filter(({ cells }) => filledCells(cells.slice(width)).length > 0));
  const shorter = numbers(body.filter(({ written }) => written !== undefined && written < width));
  const remarks: SheetRemark[] = [];
  if (longer.length > 0) {
    const says = `More cells than headings in ${sayRows(longer)}. The cells beyond are kept, in columns without a heading; look whether a separator stands unquoted inside a text there.`;
    remarks.push({ rows: longer, says });
  }
  if (shorter.length > 0) {
    const says = `Fewer cells than headings in ${sayRows(shorter)}. The missing ones are read as empty; look whether a line was broken in two there.`;
    remarks.push({ rows: shorter, says });
  }
  return remarks;
}

type HangingColumn = {
  readonly column: SheetColumn;
  /** By row. */
  readonly texts: ReadonlyMap<number, string>;
  readonly remark: SheetRemark;
};

/**
 * What hangs on cells, in columns of its own after the last: where a piece was bought often is in a comment alone,
 * and a column can be mapped or left to the ledger like any other.
 */
function hangingColumns(grid: Pick<Grid, 'comments' | 'links'>, last: number): readonly HangingColumn[] {
  const kinds = [
    { heading: 'Comments on cells', what: 'comment', hanging: grid.comments },
    { heading: 'Links of cells', what: 'link', hanging: grid.links },
  ];
  return kinds
    .filter(({ hanging }) => hanging.length > 0)
    .map(({ heading, what, hanging }, at) => {
      const letter = formatColumn(last + 1 + at);
      const rows = [...new Set(hanging.map(({ row }) => row))].sort((a, b) => a - b);
      const count = hanging.length === 1 ? `One cell carries a ${what}` : `${hanging.length} cells carry ${what}s`;
      return {
        column: { letter, heading, isHidden: false },
        texts: textsByRow(hanging),
        remark: { rows, says: `${count}. They are in a column of their own, ${letter}, called ${heading}.` },
      };
    });
}

function textsByRow(hanging: readonly Hanging[]): ReadonlyMap<number, string> {
  const texts = new Map<number, string>();
  for (const { row, column, text } of hanging) {
    const said = `${formatColumn(column)}: ${text}`;
    const before = texts.get(row);
    texts.set(row, before === undefined ? said : `${before}\n${said}`);
  }
  return texts;
}

/**
 * Rows with the text of a cell that is merged over several of them in each, as a reader sees it. A figure or a sum stays
 * in the first row alone: one price beside five rows is the price of the five, and five prices would be invented.
 */
function spreadMerges(
  grid: Pick<Grid, 'merges'>,
  rows: readonly GridRow[],
): { readonly rows: readonly GridRow[]; readonly remarks: readonly SheetRemark[] } {
  const downward = grid.merges.filter(({ fromRow, toRow }) => toRow > fromRow);
  if (downward.length === 0) return { rows, remarks: [] };
  const at = new Map(rows.map(({ row }, index) => [row, index]));
  const spread = rows.map((row) => row);
  const remarks: SheetRemark[] = [];
  let filled = 0;
  for (const { fromRow, toRow, fromColumn } of downward) {
    const first = at.get(fromRow);
    const cell = first === undefined ? undefined : rows[first]?.cells[fromColumn];
    if (first === undefined || cell === undefined || cell.text === '') continue;
    const covered: number[] = [];
    for (let index = first + 1; index < rows.length && filled < LIMITS.cells; index += 1) {
      const row = spread[index];
      if (row === undefined || row.row > toRow) break;
      covered.push(row.row);
      if (isFigure(cell) || (row.cells[fromColumn]?.text ?? '') !== '') continue;
      const cells = [...row.cells];
      cells[fromColumn] = cell;
      spread[index] = { ...row, cells };
      filled += 1;
    }
    if (covered.length === 0) continue;
    const where = `${formatColumn(fromColumn)}${fromRow}:${formatColumn(fromColumn)}${toRow}`;
    remarks.push({
      rows: [fromRow, ...covered],
      says: isFigure(cell)
        ? `${where} is one cell merged over several rows. Its figure is in row ${fromRow} alone; write it into the others if it is theirs too.`
        : `${where} is one cell merged over several rows. Its text is read in each of them.`,
    });
  }
  return { rows: spread, remarks };
}

function isFigure({ text, value }: SheetCell): boolean {
  return value?.kind === 'number' || value?.kind === 'money' || /^[\s\d.,£€$]+$/.test(text);
}
