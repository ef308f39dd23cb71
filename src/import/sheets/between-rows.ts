import type { GridRow, Merge } from './grid.ts';
import { filledCells } from './heading-row.ts';

/** What the records of a sheet usually look like, for telling what stands between them. */
type UsualRows = {
  /** Cells that hold something in the middle one of all rows. */
  readonly width: number;
  /** By column: the shapes of the cells in rows that are about as wide as usual. */
  readonly shapes: ReadonlyMap<number, ReadonlySet<string>>;
};

/** What is usual in the rows below the headings. */
export function usualRows(rows: readonly GridRow[]): UsualRows {
  const filled = rows.map(({ cells }) => filledCells(cells));
  const widths = filled.map((cells) => cells.length).sort((a, b) => a - b);
  const width = widths[Math.floor(widths.length / 2)] ?? 0;
  const shapes = new Map<number, Set<string>>();
  for (const cells of filled.filter(({ length }) => length * 2 >= width && length > 2)) {
    for (const { cell, column } of cells.slice(0, 2)) {
      const held = shapes.get(column);
      if (held === undefined) shapes.set(column, new Set([shapeOf(cell.text)]));
      else held.add(shapeOf(cell.text));
    }
  }
  return { width, shapes };
}

/** What a line of totals begins with, in nine languages. Common practice. */
const TOTALS = `grand[ -]?total, sub[ -]?totals?, totals?, sum, (?:zwischen|gesamt|end)?summe, gesamt, sous[ -]?total, somme, totaux,
  totale, subtotale, somma, suma, totaal, subtotaal, eindtotaal, итого, всего`;
const TOTAL = new RegExp(`^(?:${TOTALS.split(/,\s*/).join('|')})(?!\\p{L})`, 'iu');
/** Nothing but such a word: what else its row holds is a remark on the total. */
const TOTAL_ALONE = new RegExp(`^(?:${TOTALS.split(/,\s*/).join('|')})[.:]?$`, 'iu');
/** Capitals alone, as headings are written in a list. */
const IN_CAPITALS = /^[^\p{Ll}\d]*\p{Lu}{4}[^\p{Ll}\d]*$/u;
const RULE = /^[\s\-–—_=*#.~·•/|+]+$/u;

const HEADING_BETWEEN = 'it is a heading between the rows; if it is a piece, write in its row what else is known of it';

/** Why a row between the records is none of them; null for one that may be. */
function whyBetween(row: GridRow, usual: UsualRows, columns: number, isAmongLast: boolean): string | null {
  const filled = filledCells(row.cells);
  const [first, ...others] = filled;
  if (first === undefined) return null;
  const { text } = first.cell;
  if (filled.every(({ cell }) => RULE.test(cell.text)) && columns > 2) return 'it is a line drawn between the rows';
  const isSparse = filled.length < 3 ? columns > 2 : filled.length * 2 <= usual.width;
  if (
    (isSparse || isAmongLast) &&
    TOTAL.test(text) &&
    text.length <= 60 &&
    (others.every(({ cell }) => isSum(cell.text)) ||
      (TOTAL_ALONE.test(text) && others.some(({ cell }) => isSum(cell.text))))
  )
    return others.length === 0 ? 'it is the line of a total' : 'it is a total';
  if (others.length > 0 || usual.width < 4 || columns < 4 || !/\p{L}/u.test(text)) return null;
  if (IN_CAPITALS.test(text) && usual.width > 4) return HEADING_BETWEEN;
  const shapes = usual.shapes.get(first.column);
  // A number alone is a piece of which no more is known; words alone, where numbers stand, are the heading of what follows.
  if (shapes === undefined || shapes.has(shapeOf(text)) || (/\d/.test(text) && !/\p{L}{4}/u.test(text))) return null;
  return HEADING_BETWEEN;
}

function isSum(text: string): boolean {
  return /\d/.test(text) && (!/\p{L}{4}/u.test(text) || COUNTED.test(text));
}

/** `60 Stück`: how many there are, beside what they come to. */
const COUNTED = /^\d+ (?:pieces|coins|items|stück|münzen|pièces|monnaies|pezzi|monete|piezas|monedas|stuks|munten)$/iu;

/** `A-9` for `D-17`, `Aa 9` for `Box 2`. */
function shapeOf(text: string): string {
  return text.replace(/\p{Lu}+/gu, 'A').replace(/\p{Ll}+/gu, 'a').replace(/\d+/g, '9').replace(/\s+/g, ' '); // prettier-ignore
}

const UNIT =
  /^[([]?(g|gr|gm|gms|gram|grams|kg|mm|cm|in|inch|inches|h|oz|oz t|dwt|gn|ct|%|‰|£|€|\$|gbp|eur|usd|chf)[)\]]?\.?$/i;

/** Why a row below the headings is no record of a piece; null for one that is. */
export function whyNoRecord(
  row: GridRow,
  headings: ReadonlyMap<number, string>,
  merges: readonly Merge[],
  usual: UsualRows,
  isAmongLast: boolean,
): string | null {
  const filled = filledCells(row.cells);
  if (repeatsHeadings(row, headings)) return 'it repeats the headings';
  const first = filled[0];
  if (first === undefined) return null;
  const across = merges.some(
    ({ fromRow, toRow, fromColumn, toColumn }) =>
      fromRow === row.row &&
      toRow === row.row &&
      fromColumn === first.column &&
      toColumn - fromColumn + 1 >= headings.size / 2,
  );
  if (filled.length === 1 && across && headings.size > 1) return TITLE_ACROSS;
  return whyBetween(row, usual, headings.size, isAmongLast);
}

const TITLE_ACROSS = 'it is a title that runs across the columns';

/** Whether a row that is no record is the heading of those below it. */
export function isHeadingBetween(because: string): boolean {
  return because === TITLE_ACROSS || because === HEADING_BETWEEN;
}

/** Whether a row says what the headings say, and nothing else. */
export function repeatsHeadings(row: GridRow, headings: ReadonlyMap<number, string>): boolean {
  const filled = filledCells(row.cells);
  return (
    filled.length > Math.min(1, headings.size - 1) &&
    filled.every(({ cell, column }) => alike(headings.get(column)) === alike(cell.text))
  );
}

function alike(text: string | undefined): string {
  return (text ?? '').replace(/\s+/g, ' ').toLowerCase();
}

/** Whether a row says in which unit each column is (`g`, `mm`, `h`) and nothing else. */
export function isRowOfUnits(row: GridRow): boolean {
  const filled = filledCells(row.cells);
  return filled.length > 0 && filled.every(({ cell }) => cell.value === undefined && UNIT.test(cell.text));
}
