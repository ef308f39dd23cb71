import { guarded, unguarded } from '../csv-guard.ts';

/** A cell as it is in the text: where it begins and ends, quotation marks and all, and what it says. */
type Cell = { readonly from: number; readonly to: number; readonly says: string };
type Line = { readonly cells: readonly Cell[]; readonly to: number };

/**
 * A table (RFC 4180) with cells of one row changed, the row added where there is none, and columns added that it wants. Every
 * other byte stays as it is. `key` is the column that names the row; an empty text is a table without a heading.
 */
export function editRow(
  text: string,
  key: { readonly column: string; readonly value: string },
  cells: Readonly<Record<string, string>>,
): string {
  const { wide, columns } = widened(
    text.trim() === '' ? `${key.column}\n` : text,
    Object.keys(cells).filter((name) => cells[name] !== ''),
  );
  const keyAt = columns.indexOf(key.column);
  const row = linesOf(wide)
    .slice(1)
    .find((line) => line.cells[keyAt]?.says.trim() === key.value);
  if (row === undefined)
    return Object.values(cells).every((cell) => cell === '')
      ? text
      : addRow(text, { [key.column]: key.value, ...cells });
  const cuts = columns.flatMap((name, at) => {
    const cell = row.cells[at];
    const to = cells[name];
    return to === undefined || to === (cell?.says ?? '') ? [] : [{ at, cell, to }];
  });
  let now = wide;
  // From the end, so that what comes before keeps its place.
  for (const { at, cell, to } of cuts.toReversed()) {
    const missing = cell === undefined ? ','.repeat(at - row.cells.length + 1) : '';
    const [from, until] = cell === undefined ? [row.to, row.to] : [cell.from, cell.to];
    now = `${now.slice(0, from)}${missing}${written(to)}${now.slice(until)}`;
  }
  return now;
}

/** The table with one row more at its end, and the columns that it wants. */
export function addRow(text: string, cells: Readonly<Record<string, string>>): string {
  const end = text.includes('\r\n') ? '\r\n' : '\n';
  const { wide, columns } = widened(
    text.trim() === '' ? `${Object.keys(cells).join(',')}${end}` : text,
    Object.keys(cells).filter((name) => cells[name] !== ''),
  );
  const fresh = columns.map((name) => written(cells[name] ?? '')).join(',');
  return `${wide}${wide.endsWith('\n') ? '' : end}${fresh}${end}`;
}

/** The table without the rows that say this in a column, each gone with its line, and what those rows said. */
export function cutRows(
  text: string,
  key: { readonly column: string; readonly value: string },
): { readonly text: string; readonly rows: readonly Readonly<Record<string, string>>[] } {
  const [first, ...lines] = linesOf(text);
  const headings = first?.cells.map(({ says }) => says.trim()) ?? [];
  const at = headings.indexOf(key.column);
  const cut = at < 0 ? [] : lines.filter(({ cells }) => cells[at]?.says.trim() === key.value);
  const rows = cut.map(({ cells }) => Object.fromEntries(headings.map((name, one) => [name, cells[one]?.says ?? ''])));
  return { text: without(text, cut), rows };
}

/** The table without the row that begins in this line, counted from 1; the same text where none does. */
export function cutRowAt(text: string, line: number): string {
  const lineAt = (at: number): number => text.slice(0, at).split(/\r\n|\r|\n/).length;
  const [, ...lines] = linesOf(text);
  return without(text, lines.filter(({ cells: [cell] }) => cell !== undefined && lineAt(cell.from) === line)); // prettier-ignore
}

function without(text: string, cut: readonly Line[]): string {
  return cut.toReversed().reduce((now, { cells, to }) => {
    const end = to + (/^(?:\r\n|\r|\n)?/.exec(now.slice(to, to + 2))?.[0].length ?? 0);
    return `${now.slice(0, cells[0]?.from ?? to)}${now.slice(end)}`;
  }, text);
}

/** The table with columns after its last one, where it has them not yet. */
function widened(
  text: string,
  wanted: readonly string[],
): { readonly wide: string; readonly columns: readonly string[] } {
  const [first] = linesOf(text);
  const headings = first?.cells.map(({ says }) => says.trim()) ?? [];
  const wanting = wanted.filter((name) => !headings.includes(name));
  const at = first?.to ?? 0;
  const added = wanting.map((name) => `,${written(name)}`).join('');
  return { wide: `${text.slice(0, at)}${added}${text.slice(at)}`, columns: [...headings, ...wanting] };
}

/** A cell as RFC 4180 has it, with the mark against formulas. */
function written(cell: string): string {
  const safe = guarded(cell);
  return /[",\r\n]|^\s|\s$/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** The lines of a table with the places of their cells; blank lines are none. */
function linesOf(text: string): readonly Line[] {
  const lines: Line[] = [];
  let cells: Cell[] = [];
  let at = text.startsWith('\uFEFF') ? 1 : 0;
  while (at <= text.length) {
    const cell = cellAt(text, at);
    cells.push(cell);
    const next = text[cell.to];
    if (next === ',') {
      at = cell.to + 1;
      continue;
    }
    if (cells.some(({ says }) => says.trim() !== '')) lines.push({ cells, to: cell.to });
    cells = [];
    if (next === undefined) break;
    at = cell.to + (text.startsWith('\r\n', cell.to) ? 2 : 1);
  }
  return lines;
}

function cellAt(text: string, from: number): Cell {
  if (text[from] !== '"') {
    const found = /[,\r\n]/g;
    found.lastIndex = from;
    const to = found.exec(text)?.index ?? text.length;
    return { from, to, says: unguarded(text.slice(from, to)) };
  }
  let to = from + 1;
  while (to < text.length && (text[to] !== '"' || text[to + 1] === '"')) to += text[to] === '"' ? 2 : 1;
  const says = unguarded(text.slice(from + 1, to).replaceAll('""', '"'));
  // What follows a closing mark before the comma is a slip of the hand, and stays with the cell.
  const rest = /[,\r\n]/g;
  rest.lastIndex = Math.min(to + 1, text.length);
  return { from, to: rest.exec(text)?.index ?? text.length, says };
}
