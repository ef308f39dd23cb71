import Papa from 'papaparse';
import { readCsv } from '../../catalogue/csv.ts';
import { guarded } from '../../catalogue/csv-guard.ts';
import { LEDGER_COLUMNS } from '../../catalogue/schema/cabinet.ts';

/** Cells to put in the row of a piece; the others of that row stay. */
export type LedgerChange = { readonly piece: string; readonly cells: Readonly<Record<string, string>> };

/** The ledger as it stands, by piece. */
export function ledgerRows(text: string | null): ReadonlyMap<string, Readonly<Record<string, string>>> {
  return new Map(readCsv(text ?? '').rows.map((row) => [(row['piece'] ?? '').trim(), row]));
}

/** Whether rows of a ledger can be found by piece; one with no row at all can be begun anew. */
export function isLedger(text: string | null): boolean {
  return text === null || text.trim() === '' || readCsv(text).headings.includes('piece');
}

/**
 * A ledger with cells put in: rows of new pieces come last, columns it has not come behind its own. Rows that nothing changes in stay
 * byte for byte, but for the commas of columns that are new. The ledger is one that `isLedger` allows.
 */
export function mergeLedger(text: string | null, changes: readonly LedgerChange[]): string {
  const begun = text === null || text.trim() === '' ? `\uFEFF${LEDGER_COLUMNS.join(',')}\r\n` : text;
  const records = recordsOf(begun);
  const end = begun.includes('\r\n') ? '\r\n' : '\n';
  const { headings } = readCsv(begun);
  const columns = [...headings, ...new Set(changes.flatMap(({ cells }) => Object.keys(cells)))].filter(
    (name, at, all) => all.indexOf(name) === at,
  );
  const at = headings.indexOf('piece');
  const lines = (rows: readonly (readonly string[])[]): string =>
    `${Papa.unparse(
      rows.map((cells) => [...cells]),
      { newline: end, header: false },
    )}${end}`;
  const byPiece = new Map<string, number>();
  const parsed = records.map((record) => cellsOf(record));
  for (const [index, cells] of parsed.entries()) if (index > 0) byPiece.set((cells[at] ?? '').trim(), index);
  // A new column has a cell, empty, in every row that is there.
  const more = ','.repeat(columns.length - headings.length);
  const out = records.map((record) => (record.trim() === '' ? record : record.replace(/(?=\r?\n?$)/, more)));
  if (more !== '') out[0] = `${begun.startsWith('\uFEFF') ? '\uFEFF' : ''}${lines([columns.map(guarded)])}`;
  const added: (readonly string[])[] = [];
  for (const { piece, cells } of changes) {
    const index = byPiece.get(piece);
    const held = index === undefined ? [] : (parsed[index] ?? []);
    const row = columns.map((name, column) =>
      Object.hasOwn(cells, name) ? guarded(cells[name] ?? '') : name === 'piece' ? piece : (held[column] ?? ''),
    );
    if (index === undefined) added.push(row);
    else out[index] = lines([row]);
  }
  if (added.length === 0) return out.join('');
  const before = out.join('');
  return `${before}${before === '' || before.endsWith('\n') ? '' : end}${lines(added)}`;
}

/** A CSV in its records, each with its line end; a line end between quotation marks parts nothing. */
function recordsOf(text: string): readonly string[] {
  const records: string[] = [];
  let from = 0;
  let isQuoted = false;
  for (let at = 0; at < text.length; at += 1) {
    if (text[at] === '"') isQuoted = !isQuoted;
    else if (text[at] === '\n' && !isQuoted) {
      records.push(text.slice(from, at + 1));
      from = at + 1;
    }
  }
  return from < text.length ? [...records, text.slice(from)] : records;
}

function cellsOf(record: string): readonly string[] {
  const [cells] = Papa.parse<string[]>(record.replace(/^\uFEFF/, '').replace(/\r?\n$/, '')).data;
  return cells ?? [];
}
