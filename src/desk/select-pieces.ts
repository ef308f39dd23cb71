import { nearestName } from '../catalogue/nearest.ts';
import type { FiledPiece, Records } from '../catalogue/records.ts';
import { parseDate } from '../core/dating/parse-date.ts';
import { yearsOf } from '../core/dating/interval.ts';
import type { Outcome } from '../core/outcome.ts';
import { good, refuse } from '../core/outcome.ts';
import { EXAMPLE } from '../catalogue/ledger-totals.ts';
import { setStates } from '../publish/set-states.ts';
import { linkedCabinet } from './linked-cabinet.ts';

/** Which pieces are meant; what is said narrows it, and nothing said is every piece that is kept or lent. */
export type Selection = {
  /** The beginning of the place it is kept in: `Cabinet S, tray 2`. */
  readonly tray?: string;
  readonly tag?: string;
  /** The pieces that are in a set's places. */
  readonly set?: string;
  readonly exhibit?: string;
  /** So many of those that came last, by the ledger. */
  readonly newest?: number;
  /** By their ids; these are meant even when they have left. */
  readonly pieces?: readonly string[];
};

type Ledger = ReadonlyMap<string, Readonly<Record<string, string>>>;

/** The pieces that a selection means, in the order of their numbers, or for the newest in that of their coming. */
export function selectPieces(records: Records, ledger: Ledger, selection: Selection): Outcome<readonly FiledPiece[]> {
  const { tray, tag, set, exhibit, newest, pieces = [] } = selection;
  const unknown =
    missing('piece', pieces, records.named.pieces) ??
    missing('set', set === undefined ? [] : [set], records.named.sets) ??
    missing('exhibit', exhibit === undefined ? [] : [exhibit], records.named.exhibits);
  if (unknown !== null) return refuse(unknown);
  const stored = (id: string): string => (ledger.get(id)?.['storage'] ?? '').trim().toLowerCase();
  const inSet = set === undefined ? null : piecesInSet(records, set);
  const shown = exhibit === undefined ? null : piecesShown(records, exhibit);
  const fits = records.pieces.filter(
    ({ id, fields }) =>
      (pieces.length > 0 ? pieces.includes(id) : id !== EXAMPLE && ['kept', 'lent'].includes(fields.status)) &&
      (tray === undefined || isIn(stored(id), tray.trim().toLowerCase())) &&
      (tag === undefined || fields.tags.includes(tag)) &&
      (inSet === null || inSet.has(id)) &&
      (shown === null || shown.includes(id)),
  );
  if (fits.length === 0) return refuse('No piece is in this selection.');
  if (newest !== undefined) return good(lastCome(fits, ledger).slice(0, newest));
  if (shown !== null) return good(fits.toSorted((a, b) => shown.indexOf(a.id) - shown.indexOf(b.id)));
  return good(fits.toSorted((a, b) => NUMBERS.compare(a.fields.number, b.fields.number)));
}

const NUMBERS = new Intl.Collator('en', { numeric: true });

/** `tray 2` has `tray 2` and `tray 2, well 5` in it, and not `tray 21`. */
function isIn(stored: string, tray: string): boolean {
  return stored === tray || stored.startsWith(`${tray},`) || stored.startsWith(`${tray} `);
}

function piecesInSet(records: Records, id: string): ReadonlySet<string> {
  const { lists, listed } = linkedCabinet(records);
  const sets = lists.sets.filter((one) => one.id === id);
  return new Set(
    setStates({ ...lists, sets }, listed).flatMap(({ places }) => places.flatMap(({ piece }) => piece ?? [])),
  );
}

function piecesShown({ exhibits }: Records, id: string): readonly string[] {
  return exhibits
    .filter((one) => one.id === id)
    .flatMap(({ fields }) => fields.cases)
    .flatMap(({ groups }) => groups.flatMap(({ pieces }) => pieces.map(({ piece }) => piece)));
}

/** Those whose day of coming can be read, the last first. */
function lastCome(pieces: readonly FiledPiece[], ledger: Ledger): readonly FiledPiece[] {
  const dated = pieces.flatMap((piece) => {
    const said = ledger.get(piece.id)?.['acquired']?.trim() ?? '';
    const read = said === '' ? null : parseDate(said, { dateOf: 'event' });
    return read?.ok === true ? [{ piece, year: yearsOf(read.value).high, day: read.value.to ?? '' }] : [];
  });
  return dated.sort((a, b) => b.year - a.year || (a.day < b.day ? 1 : -1)).map(({ piece }) => piece);
}

function missing(what: string, said: readonly string[], known: readonly string[]): string | null {
  const unknown = said.find((one) => !known.includes(one));
  if (unknown === undefined) return null;
  const meant = nearestName(unknown, known);
  return `There is no ${what} "${unknown}".${meant === null ? '' : ` Write ${meant}.`}`;
}
