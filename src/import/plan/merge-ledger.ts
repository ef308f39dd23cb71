import Papa from 'papaparse';
import { readCsv } from '../../catalogue/csv.ts';
import { guarded } from '../../catalogue/csv-guard.ts';
import type { CabinetFile } from '../../catalogue/files.ts';
import { LEDGER_COLUMNS } from '../../catalogue/fields/ledger-columns.ts';
import { WITHHELD } from '../../privacy/private-values.ts';

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
 * Makes the ledger as far as it guards anything, and not anew while these cells stay: a round takes texts out of pieces, and keeps
 * them under headings that guard nothing. The rows of new pieces are in the order of their ids, whichever was placed last.
 */
export function guardingLedger(ledger: string | null): (pieces: readonly Placed[]) => CabinetFile | null {
  let made: { readonly by: ReadonlyMap<string, Placed['ledger']>; readonly file: CabinetFile | null } | null = null;
  return (pieces) => {
    const before = made?.by;
    const by = new Map(pieces.map(({ id, ledger: cells }) => [id, guardingCells(cells, before?.get(id))]));
    if (made === null || before?.size !== by.size || [...by].some(([id, cells]) => before.get(id) !== cells)) {
      const guarding = [...by].map(([id, cells]) => ({ id, ledger: cells })).sort((a, b) => (a.id < b.id ? -1 : 1));
      const text = mergedLedger(ledger, guarding);
      made = { by, file: text === null ? null : { file: LEDGER, text } };
    }
    return made.file;
  };
}

const LEDGER = 'private/ledger.csv';

/** The cells that guard something: the very object that was there before, where it says the same. */
function guardingCells(cells: Placed['ledger'], before: Placed['ledger'] | undefined): Placed['ledger'] {
  if (before === cells) return cells;
  const headings = Object.keys(cells);
  const kept = headings.filter((heading) => !heading.endsWith(WITHHELD));
  const isSame =
    before !== undefined &&
    Object.keys(before).length === kept.length &&
    kept.every((heading) => before[heading] === cells[heading]);
  if (isSame) return before;
  return kept.length === headings.length
    ? cells
    : Object.fromEntries(kept.map((heading) => [heading, cells[heading] ?? '']));
}

/** The ledger with the cells of these pieces; null when none of them changes it, or when it has no column to find a piece by. */
export function mergedLedger(ledger: string | null, pieces: readonly Placed[]): string | null {
  const changes = pieces.filter((piece) => Object.keys(piece.ledger).length > 0);
  if (changes.length === 0 || !isLedger(ledger)) return null;
  return mergeLedger(
    ledger,
    changes.map((piece) => ({ piece: piece.id, cells: piece.ledger })),
  );
}

/** A piece on its way into the cabinet, as far as the ledger keeps anything of it. */
type Placed = { readonly id: string; readonly ledger: Readonly<Record<string, string>> };

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
