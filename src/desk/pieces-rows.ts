import { PIECE_ROWS } from '../catalogue/fields/piece-fields.ts';
import type { FiledPiece } from '../catalogue/records.ts';
import { isBlank } from '../catalogue/schema/fields.ts';
import { yearsOf } from '../core/dating/interval.ts';
import type { CabinetState } from './cabinet-state.ts';
import { factInWords } from './fact-words.ts';
import { isLedgerColumn, LEDGER_NAMES } from '../catalogue/fields/ledger-columns.ts';
import { ledgerRow } from './form/ledger-rows.ts';

/** A fact that the list can show, sort and filter by: a field of a piece, or a column of the ledger. */
export type Fact = { readonly name: string; readonly label: string; readonly isPrivate: boolean };

/** What the list shows now, as the address says it. */
export type Asked = {
  readonly words: string;
  readonly fact: string;
  readonly is: string;
  readonly sort: string;
  readonly down: boolean;
  readonly page: number;
  readonly shows: readonly string[];
};

const PUBLIC_FACTS: readonly Fact[] = Object.entries(PIECE_ROWS)
  .filter(([, { control }]) => !['parts', 'rows', 'each', 'table', 'pairs'].includes(control))
  .map(([name, { label, seen }]) => ({ name, label, isPrivate: seen === 'no' }));

/** Every fact of a cabinet, with the columns of the ledger, also those of the keeper's own. */
export function factsOf(ledger: ReturnType<CabinetState['ledger']>): readonly Fact[] {
  const [row = {}] = ledger.values();
  const own = Object.keys(row).filter((column) => !isLedgerColumn(column) && !['', 'piece'].includes(column));
  const columns = [...LEDGER_NAMES, ...own].map((column) => ({
    name: `ledger.${column}`,
    label: `${ledgerRow(column).label} (private)`,
    isPrivate: true,
  }));
  return [...PUBLIC_FACTS, ...columns];
}

export const SHOWN = ['number', 'title', 'ruler', 'mint', 'date', 'metal', 'grade', 'publish', 'ledger.storage'];
const NATURAL = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

export function askedOf(
  query: {
    get: (name: string) => string | null;
    getAll: (name: string) => readonly string[];
  },
  facts: readonly Fact[],
): Asked {
  const known = (name: string): boolean => facts.some((fact) => fact.name === name);
  const shows = query.getAll('show').filter(known);
  const sort = query.get('sort') ?? '';
  return {
    words: (query.get('words') ?? '').slice(0, 200),
    fact: query.get('fact') ?? '',
    is: (query.get('is') ?? '').slice(0, 200),
    sort: known(sort) ? sort : 'number',
    down: query.get('down') === 'yes',
    page: Math.max(1, Number.parseInt(query.get('page') ?? '1', 10) || 1),
    shows: shows.length === 0 ? SHOWN : shows,
  };
}

export type Row = {
  readonly piece: FiledPiece;
  readonly says: Readonly<Record<string, string>>;
  readonly folded: string;
  /** One fact, folded, as it was last asked for. */
  readonly fold: Map<string, string>;
};

/** The rows of a cabinet as it is, and in the orders in which they have been asked for. */
export type Rows = { readonly all: readonly Row[]; readonly inOrder: (sort: string, down: boolean) => readonly Row[] };

/** Works out what the list knows of each piece once for the piece as it is, and each order once for the cabinet as it is. */
export function rowsKeeper(state: CabinetState): () => Rows {
  const kept = new WeakMap<FiledPiece, Row>();
  let of: readonly unknown[] = [];
  let rows: Rows = { all: [], inOrder: () => [] };
  return () => {
    const now = [state.records(), state.ledger()];
    if (now.every((one, at) => one === of[at])) return rows;
    of = now;
    const all = rowsOf(state, kept);
    const orders = new Map<string, readonly Row[]>();
    const inOrder = (sort: string, down: boolean): readonly Row[] => {
      const key = `${sort} ${String(down)}`;
      const sorted = orders.get(key) ?? sortedRows(all, sort, down);
      orders.set(key, sorted);
      return sorted;
    };
    rows = { all, inOrder };
    return rows;
  };
}

/** What the list knows of every piece, in words. */
function rowsOf(state: CabinetState, kept: WeakMap<FiledPiece, Row>): readonly Row[] {
  const ledger = state.ledger();
  const records = state.records();
  const facts = factsOf(ledger);
  return records.pieces.map((piece) => {
    const row = kept.get(piece);
    const cells = ledger.get(piece.id) ?? {};
    if (row !== undefined && row.says['ledger'] === JSON.stringify(cells)) return row;
    const says: Record<string, string> = { ledger: JSON.stringify(cells) };
    for (const { name } of facts)
      says[name] = name.startsWith('ledger.')
        ? (cells[name.slice(7)] ?? '')
        : factInWords(name, piece.fields[name as keyof typeof piece.fields], records);
    const fresh = {
      piece,
      says,
      folded: folded(`${piece.id} ${Object.values(says).join(' ')}`),
      fold: new Map<string, string>(),
    };
    kept.set(piece, fresh);
    return fresh;
  });
}

/** The rows that answer to what is asked, in its order. */
export function chosenRows(rows: Rows, asked: Asked): readonly Row[] {
  const words = folded(asked.words)
    .split(' ')
    .filter((word) => word !== '');
  const is = folded(asked.is);
  return rows
    .inOrder(asked.sort, asked.down)
    .filter(
      (row) =>
        words.every((word) => row.folded.includes(word)) &&
        (asked.fact === '' ||
          (is === '-' ? (row.says[asked.fact] ?? '') === '' : factIn(row, asked.fact).includes(is))),
    );
}

/** A fact of a row, folded; worked out once. */
function factIn({ says, fold }: Row, fact: string): string {
  const words = fold.get(fact) ?? folded(says[fact] ?? '');
  fold.set(fact, words);
  return words;
}

/** The rows in an order; where nothing is recorded they come last. */
function sortedRows(rows: readonly Row[], sort: string, down: boolean): readonly Row[] {
  const by = sortKey(sort);
  const sign = down ? -1 : 1;
  const keyed = rows.map((row) => ({ row, key: by(row) }));
  keyed.sort((a, b) => {
    if (a.key === null || b.key === null) return a.key === b.key ? 0 : a.key === null ? 1 : -1;
    const order =
      typeof a.key === 'number' && typeof b.key === 'number'
        ? a.key - b.key
        : NATURAL.compare(String(a.key), String(b.key));
    return sign * order;
  });
  return keyed.map(({ row }) => row);
}

/** What a fact is sorted by: years and measures as figures, the rest as words; null where nothing is recorded, which comes last. */
function sortKey(name: string): (row: Row) => string | number | null {
  return ({ piece, says }) => {
    const value: unknown = piece.fields[name as keyof typeof piece.fields];
    if (name === 'date') {
      const { date } = piece.fields;
      return date === undefined || isBlank(date) ? null : yearsOf(date).low;
    }
    for (const figure of ['grams', 'low', 'hours'])
      if (
        typeof value === 'object' &&
        value !== null &&
        typeof (value as Readonly<Record<string, unknown>>)[figure] === 'number'
      )
        return (value as Readonly<Record<string, number>>)[figure] ?? null;
    const words = says[name] ?? '';
    const sum = /^(\d[\d,]*(?:\.\d+)?) [A-Z]{3}$/.exec(words)?.[1];
    return words === '' ? null : sum === undefined ? words : Number(sum.replaceAll(',', ''));
  };
}

function folded(text: string): string {
  return text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
}
