import { parseMoneyRange } from '../core/money/money-range.ts';
import { LEDGER_COLUMNS } from '../catalogue/fields/ledger-columns.ts';
import { streetsIn } from './exact-spots.ts';
import {
  amountsInCell,
  certificatesIn,
  identifiersIn,
  MONEY,
  namesInCell,
  partsOf,
  saysMuch,
  sentencesOf,
  shorterOf,
  spellingsOf,
  tells,
  titledNames,
  wholesOf,
} from './private-cells.ts';
import type { PrivateSum } from './sums.ts';

export const GUIDE = 'private/guide.csv';
const LEDGER = 'private/ledger.csv';
/** The rows of the ledger of pieces that were deleted. */
const DELETED = 'private/deleted.csv';
/** Columns in which an address, a telephone or a mailbox may be. */
const OF_PERSONS_AND_PLACES = ['seller', 'with', 'storage'];

/** What the cells of a column tell, whatever the public side of the cabinet says. */
export type Told = {
  /** Single words that may be the name of a person or a place. */
  readonly names: readonly { readonly name: string; readonly line: number }[];
  /** Of notes each sentence that says something, in small letters, with the number of its rows and the last of their lines. */
  readonly notes: ReadonlyMap<string, { readonly rows: number; readonly line: number }>;
  /** What tells something in a column with a meaning of its own; of a part that may be a place, which. */
  readonly values: readonly {
    readonly text: string;
    readonly forms: readonly string[];
    readonly place: 'exact' | 'wide' | null;
    /** The whole of its cell. */
    readonly of: string;
    readonly line: number;
  }[];
  readonly sums: readonly Pick<PrivateSum, 'money' | 'line'>[];
};

export function toldBy(
  from: string,
  column: string,
  cells: readonly { readonly cell: string; readonly line: number }[],
  currency: string,
): Told {
  const names: Told['names'][number][] = [];
  const notes = new Map<string, { rows: number; line: number }>();
  const values: Told['values'][number][] = [];
  const sums: Told['sums'][number][] = [];
  // Columns repeat themselves: a text is looked through once.
  const known = new Map<string, ToldByCell>();
  for (const { cell, line } of cells) {
    let told = known.get(cell);
    if (told === undefined) known.set(cell, (told = toldByCell(from, column, cell, currency)));
    for (const name of told.names) names.push({ name, line });
    for (const value of told.notes) {
      const rows = notes.get(value)?.rows ?? 0;
      notes.set(value, { rows: rows + 1, line });
    }
    // A house is the keeper's in as many rows as it may be in.
    for (const street of told.streets) notes.set(street, { rows: 1, line });
    for (const one of told.values) values.push({ ...one, line });
    for (const one of told.sums) sums.push({ ...one, line });
  }
  return { names, notes, values, sums };
}

type ToldByCell = {
  readonly names: readonly string[];
  readonly notes: readonly string[];
  /** Of notes, the streets of addresses. */
  readonly streets: readonly string[];
  readonly values: readonly Omit<Told['values'][number], 'line'>[];
  readonly sums: readonly Pick<PrivateSum, 'money'>[];
};

function toldByCell(from: string, column: string, cell: string, currency: string): ToldByCell {
  const isNotes = isOwn(from, column);
  const sentences = isNotes ? sentencesOf(cell).filter((one) => one.length >= 8 && saysMuch(one)) : [];
  const amounts = MONEY.includes(column) ? [cell] : isNotes ? amountsInCell(column, cell, currency) : [];
  return {
    names: from === GUIDE ? [] : namesInCell(column, cell),
    notes: isNotes ? [...sentences.map((one) => one.toLowerCase()), ...identifiersIn(cell)] : [],
    streets: isNotes ? streetsIn(cell).flatMap((one) => spellingsOf(one.toLowerCase())) : [],
    values: isNotes
      ? []
      : tellingIn(column, cell).map((one) => ({
          ...one,
          forms: spellingsOf(one.text.toLowerCase()),
          of: cell.toLowerCase().trim(),
        })),
    sums: amounts.flatMap(sumIn),
  };
}

/** What tells something in a cell of a column with a meaning of its own. */
function tellingIn(column: string, cell: string): readonly Omit<Told['values'][number], 'line' | 'forms' | 'of'>[] {
  const first = column === 'find-spot' ? ('exact' as const) : ('wide' as const);
  const sure = [
    ...(column === 'certificate' ? certificatesIn(cell) : []),
    ...(OF_PERSONS_AND_PLACES.includes(column) ? identifiersIn(cell) : []),
    ...titledNames(column, cell),
  ];
  return [
    ...wholesOf(column, cell).map((text) => ({ text, place: null })),
    ...partsOf(column, cell).flatMap((text, at) =>
      [text, ...shorterOf(column, text)].map((one) => ({ text: one, place: at === 0 ? first : ('wide' as const) })),
    ),
    ...(OF_PERSONS_AND_PLACES.includes(column) ? streetsIn(cell) : []).map((text) => ({ text, place: null })),
    ...sure.map((text) => ({ text, place: null, isSure: true })),
  ].filter((one) => 'isSure' in one || tells(one.text));
}

/** The sum that is written in a text, or both ends of a range: either gives the other away. */
export function sumIn(written: string): readonly Pick<PrivateSum, 'money'>[] {
  const read = parseMoneyRange(written, { dollar: 'USD' });
  if (!read.ok) return [];
  const { low, high, currency } = read.value;
  return (low === high ? [low] : [low, high]).map((minor) => ({ money: { minor, currency, text: written } }));
}

/** Whether a column may say what is public anyway: notes, and whatever has no meaning of its own. */
export function isOwn(from: string, column: string): boolean {
  // With whom a piece was dealt is a person in every table.
  if (column === 'with') return false;
  return from === LEDGER || from === DELETED
    ? column === 'notes' || !LEDGER_COLUMNS.some((known) => known === column)
    : from !== GUIDE;
}
