import Papa from 'papaparse';
import { guarded, unguarded } from './csv-guard.ts';

type CsvRow = Readonly<Record<string, string>>;

/** A table as written: the headings, and each row by heading. Every cell is text. */
export type CsvTable = {
  readonly headings: readonly string[];
  readonly rows: readonly CsvRow[];
  /** The line each row begins on, counted from 1, in the order of the rows. */
  readonly lines: readonly number[];
  /** Rows with fewer cells than there are headings, or with more that hold something: a comma too few or too many. */
  readonly uneven: readonly { readonly line: number; readonly cells: number }[];
  /** What the first line has between its headings in place of commas; null where nothing tells so. */
  readonly otherMark: 'semicolons' | 'tabs' | null;
};

/** The tables read last: a large ledger is asked for by a dozen rules in turn. */
const READ_LAST: { readonly text: string; readonly table: CsvTable }[] = [];
const KEPT = 4;

/**
 * Reads one of our own tables: its mark is the comma, whatever a row holds. Blank rows are no rows; a heading that stands twice
 * has a number the second time.
 */
export function readCsv(text: string): CsvTable {
  const before = READ_LAST.find((one) => one.text === text);
  if (before !== undefined) return before.table;
  const table = readTable(text);
  READ_LAST.unshift({ text, table });
  READ_LAST.length = Math.min(READ_LAST.length, KEPT);
  return table;
}

function readTable(text: string): CsvTable {
  const plain = withLineFeeds(text.replace(/^\uFEFF/, ''));
  const { data } = Papa.parse<string[]>(plain, { delimiter: ',', newline: '\n' });
  const [first = [], ...records] = data;
  const headings = first.map((heading, at) => {
    const name = unguarded(heading.trim());
    const before = first.slice(0, at).filter((other) => unguarded(other.trim()) === name).length;
    return before === 0 ? name : `${name}_${before}`;
  });
  const rows: CsvRow[] = [];
  const lines: number[] = [];
  const uneven: { line: number; cells: number }[] = [];
  let line = 1 + linesIn(first);
  for (const cells of records) {
    if (cells.some((cell) => cell.trim() !== '')) {
      const more = cells.slice(headings.length).some((cell) => cell.trim() !== '');
      if (more || cells.length < headings.length) uneven.push({ line, cells: cells.length });
      const kept = headings.slice(0, cells.length).map((heading, at) => [heading, unguarded(cells[at] ?? '')] as const);
      rows.push(Object.fromEntries(kept));
      lines.push(line);
    }
    line += linesIn(cells);
  }
  const [whole = '', ...more] = headings;
  const otherMark = more.length > 0 ? null : whole.includes(';') ? 'semicolons' : whole.includes('\t') ? 'tabs' : null;
  return { headings: data.length === 0 || (more.length === 0 && whole === '') ? [] : headings, rows, lines, uneven, otherMark }; // prettier-ignore
}

/** Lines ended alike, whichever programs have written them; a line end within quotation marks belongs to its cell. */
function withLineFeeds(text: string): string {
  if (!text.includes('\r')) return text;
  return text.replace(/"[^"]*(?:""[^"]*)*"|\r\n?/g, (run) => (run.startsWith('"') ? run : '\n'));
}

/** The lines a record takes: one, and one more for each line end within its cells. */
function linesIn(cells: readonly string[]): number {
  return cells.reduce((lines, cell) => (/[\r\n]/.test(cell) ? lines + cell.split(/\r\n?|\n/).length - 1 : lines), 1);
}

/**
 * A table as a file: UTF-8 with a mark, so that spreadsheets read its letters right, and lines ending as RFC 4180 has it. What a spreadsheet
 * would evaluate has an apostrophe before it, which `readCsv` takes off.
 */
export function writeCsv(headings: readonly string[], rows: readonly (readonly string[])[]): string {
  return `\uFEFF${Papa.unparse({ fields: headings.map(guarded), data: rows.map((row) => row.map(guarded)) }, { newline: '\r\n' })}\r\n`;
}
