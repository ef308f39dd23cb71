import { addMoneyRanges, formatMoneyRange, parseMoneyRange } from '../core/money/money-range.ts';
import type { FiledPiece } from './records.ts';
import { isBlank } from './schema/fields.ts';

/** What is added up, and by what it is grouped. */
export const TOTALLED = ['value', 'insured', 'cost'] as const;
export type Totalled = (typeof TOTALLED)[number];
export const GROUPED_BY = ['nothing', 'storage', 'metal'] as const;
export type GroupedBy = (typeof GROUPED_BY)[number];

/** The pieces of one tray or metal: the sum in each currency, and the pieces that have none. */
export type TotalGroup = {
  readonly name: string;
  readonly pieces: number;
  /** `GBP 1200.00`, or `GBP 1100.00 to GBP 1300.00` where a figure is a range; one for each currency. */
  readonly sums: readonly string[];
  /** Ids of the pieces without a sum, which are in no total. */
  readonly without: readonly string[];
};

export type Totals = {
  readonly all: TotalGroup;
  readonly groups: readonly TotalGroup[];
  /** Left out, and why. */
  readonly leftOut: readonly { readonly why: string; readonly pieces: readonly string[] }[];
};

type Row = Readonly<Record<string, string>>;
/** The piece that a new cabinet begins with. */
export const EXAMPLE = 'example-penny';

/**
 * The ledger's own figures added up, currency by currency and never into one another. Pieces that have left and the example
 * piece are left out and said to be; a piece without a figure is named and counts for nothing.
 */
export function totalsOf(
  pieces: readonly FiledPiece[],
  ledger: ReadonlyMap<string, Row>,
  what: Totalled,
  by: GroupedBy,
): Totals {
  const example = pieces.filter(({ id }) => id === EXAMPLE);
  const gone = pieces.filter(({ id, fields }) => id !== EXAMPLE && !['kept', 'lent'].includes(fields.status));
  const counted = pieces.filter((piece) => !example.includes(piece) && !gone.includes(piece));
  const groups = new Map<string, FiledPiece[]>();
  for (const piece of by === 'nothing' ? [] : counted) {
    const name = by === 'metal' ? metalOf(piece) : trayIn(ledger.get(piece.id)?.['storage'] ?? '');
    groups.set(name, [...(groups.get(name) ?? []), piece]);
  }
  const total = (name: string, own: readonly FiledPiece[]): TotalGroup => totalOf(name, own, ledger, what);
  return {
    all: total('All', counted),
    groups: [...groups]
      .sort(([a], [b]) => a.localeCompare(b, 'en', { numeric: true }))
      .map(([name, own]) => total(name, own)),
    leftOut: [
      { why: 'have left', pieces: gone.map(({ id }) => id) },
      { why: 'is the example that the cabinet began with', pieces: example.map(({ id }) => id) },
    ].filter((one) => one.pieces.length > 0),
  };
}

function totalOf(
  name: string,
  pieces: readonly FiledPiece[],
  ledger: ReadonlyMap<string, Row>,
  what: Totalled,
): TotalGroup {
  const cells = pieces.map(({ id }) => ledger.get(id)?.[what] ?? '');
  const without = pieces.filter((_, at) => !parseMoneyRange(cells[at] ?? '').ok).map(({ id }) => id);
  return { name, pieces: pieces.length, sums: sumsOf(cells), without };
}

/** What the cells of a column come to, currency by currency; where some are ranges, the sum is one. */
export function sumsOf(cells: readonly string[]): readonly string[] {
  const ranges = cells.flatMap((cell) => {
    const read = parseMoneyRange(cell);
    return read.ok ? [read.value] : [];
  });
  return addMoneyRanges(ranges).map(formatMoneyRange).sort();
}

function metalOf({ fields: { metal } }: FiledPiece): string {
  return metal === undefined || isBlank(metal) ? 'metal not recorded' : metal;
}

/** The tray of a place: `Cabinet S, tray 2` of `Cabinet S, tray 2, well 32`. */
function trayIn(storage: string): string {
  const parts = storage.split(',').map((part) => part.trim());
  if (storage.trim() === '') return 'place not recorded';
  return parts.length > 1 ? parts.slice(0, -1).join(', ') : (parts[0] ?? '');
}

/** `11 pieces have no value: a, b and 9 more`; empty where every piece has one. */
export function tellWithout({ without }: TotalGroup, what: Totalled, most = 20): string {
  if (without.length === 0) return '';
  const named = without.slice(0, most).join(', ');
  const rest = without.length > most ? ` and ${without.length - most} more` : '';
  const noun = what === 'insured' ? 'are insured for nothing that is written down' : `have no ${what}`;
  return without.length === 1
    ? `1 piece ${noun.replace(/^have/, 'has').replace(/^are/, 'is')}: ${named}.`
    : `${without.length} pieces ${noun}: ${named}${rest}.`;
}
