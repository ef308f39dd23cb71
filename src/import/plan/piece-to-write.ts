import { splitFrontMatter } from '../../catalogue/front-matter.ts';
import { editFields, editStory, isSame } from '../../catalogue/write/edit-fields.ts';
import { formatPieceFile, PIECE_ORDER } from '../../catalogue/write/write-piece.ts';
import type { Written } from '../../catalogue/yaml.ts';
import { readYaml } from '../../catalogue/yaml.ts';
import type { BroughtIn } from '../reimport/last-import.ts';
import { flatFacts, nestedFacts, stepsOf } from '../reimport/flat-facts.ts';
import type { FlatFacts } from '../reimport/flat-facts.ts';
import { mergeThreeWays } from '../reimport/three-way.ts';
import type { Conflict, Merged, Preference } from '../reimport/three-way.ts';
import type { Identity } from './which-piece.ts';
import type { IncomingPiece } from './incoming-piece.ts';

/** What becomes of one row: the file as it will stand, and what else there is to tell. */
export type PlacedPiece = {
  readonly row: number;
  readonly id: string;
  readonly number: string;
  readonly state: 'new' | 'changed' | 'same';
  readonly file: string;
  readonly text: string;
  /** The fields that change in a file that is there; `ledger: cost` for a cell of the ledger. */
  readonly changed: readonly string[];
  /** Cells to put in the ledger. */
  readonly ledger: Readonly<Record<string, string>>;
  readonly conflicts: readonly Conflict[];
  readonly emptied: readonly string[];
  readonly base: Omit<BroughtIn, 'cells'>;
};

/** What is there of a piece before: its file, and its row of the ledger. */
export type Held = { readonly text: string | null; readonly ledger: Readonly<Record<string, string>> };

/** The path under which a story is compared. */
const STORY = '(story)';

/** Places a incoming piece in the cabinet; a sentence when it must not be placed. */
export function placePiece(
  incoming: IncomingPiece,
  identity: Identity,
  held: Held,
  prefer: Preference,
): PlacedPiece | { readonly because: string } {
  const { id } = identity;
  if (identity.kind === 'gone')
    return { because: `The piece ${id} was taken out of the cabinet since it was imported. Its row is left alone.` };
  const inLedger = placeLedger(incoming, identity, held, prefer);
  const facts = nestedFacts(incoming.facts);
  const { row, number, story } = incoming;
  const file = `pieces/${id}/piece.md`;
  const placed = {
    row,
    id,
    number,
    file,
    ledger: inLedger.changes,
    conflicts: inLedger.conflicts.map((one) => ({ ...one, path: `ledger: ${one.path}` })),
    emptied: inLedger.emptied.map((path) => `ledger: ${path}`),
    base: { id, number, row, facts, story, ledger: inLedger.base },
  };
  if (identity.kind === 'new') return { ...placed, state: 'new', text: formatPieceFile(facts, story), changed: [] };
  const read = held.text === null ? null : factsIn(held.text);
  if (held.text === null || read === null)
    return { because: `The file ${file} cannot be read, so nothing in it is changed. Run npm run check, and fix it.` };
  if (identity.kind === 'again')
    return placeAgain(incoming, identity.was, { ...read, text: held.text }, prefer, placed);
  if (!isSame(nestedFacts(read.facts), facts) || read.story !== story)
    return {
      because: `The number ${number} already belongs to the piece ${id}, which did not come from this sheet. Give one of the two another number.`,
    };
  const changed = ledgerPaths(placed);
  return { ...placed, state: changed.length === 0 ? 'same' : 'changed', text: held.text, changed };
}

type LedgerCells = Readonly<Record<string, string>>;

/** The cells a row puts in the ledger. Where neither the ledger nor an earlier import has any of the piece, they are all new. */
function placeLedger(
  incoming: IncomingPiece,
  identity: Identity,
  held: Held,
  prefer: Preference,
): Pick<Merged, 'conflicts' | 'emptied'> & { readonly changes: LedgerCells; readonly base: LedgerCells } {
  const again = identity.kind === 'again';
  if (!again && Object.keys(held.ledger).length === 0) {
    const cells = Object.fromEntries(filledCells(incoming.ledger));
    return { changes: cells, base: cells, conflicts: [], emptied: [] };
  }
  const was = again ? identity.was.ledger : {};
  const { changes, base, conflicts, emptied } = mergeThreeWays(
    new Map(filledCells(was)),
    new Map(filledCells(incoming.ledger)),
    new Map(filledCells(held.ledger)),
    prefer,
  );
  return {
    changes: textsOf(changes.map(({ path, value }) => [path, value] as const)),
    base: textsOf(base),
    conflicts,
    emptied,
  };
}

function filledCells(cells: LedgerCells): readonly (readonly [string, string])[] {
  return Object.entries(cells).flatMap(([column, text]) => {
    const trimmed = column === 'piece' ? '' : text.trim();
    return trimmed === '' ? [] : [[column, trimmed] as const];
  });
}

type Placed = Omit<PlacedPiece, 'state' | 'text' | 'changed'>;
type Read = { readonly facts: FlatFacts; readonly story: string };

function ledgerPaths({ ledger }: Placed): readonly string[] {
  return Object.keys(ledger).map((path) => `ledger: ${path}`);
}

/** A row that was imported before: what the sheet changed since goes into the file, what the keeper changed there stays. */
function placeAgain(
  incoming: IncomingPiece,
  was: BroughtIn,
  held: Read & { readonly text: string },
  prefer: Preference,
  placed: Placed,
): PlacedPiece | { readonly because: string } {
  const merged = mergeThreeWays(
    withStory(flatFacts(was.facts), was.story),
    withStory(incoming.facts, incoming.story),
    withStory(held.facts, held.story),
    prefer,
  );
  const changes = merged.changes.filter(({ path }) => path !== STORY);
  const edited = editFields(
    held.text,
    changes.map(({ path, value }) => ({ path: stepsOf(path), value })),
    PIECE_ORDER,
  );
  if (!edited.ok) return { because: edited.problem };
  const story = merged.changes.find(({ path }) => path === STORY)?.value;
  const next = new Map(merged.base);
  const told = next.get(STORY);
  next.delete(STORY);
  const changed = [...merged.changes.map(({ path }) => path), ...ledgerPaths(placed)];
  return {
    ...placed,
    state: changed.length === 0 ? 'same' : 'changed',
    text: typeof story === 'string' ? editStory(edited.value, story) : edited.value,
    changed,
    conflicts: [...merged.conflicts, ...placed.conflicts],
    emptied: [...merged.emptied, ...placed.emptied],
    base: { ...placed.base, facts: nestedFacts(next), story: typeof told === 'string' ? told : '' },
  };
}

function factsIn(text: string): { readonly facts: FlatFacts; readonly story: string } | null {
  const halves = splitFrontMatter(text);
  const read = halves === null ? null : readYaml(halves.facts);
  if (halves === null || read?.ok !== true || typeof read.value !== 'object' || Array.isArray(read.value)) return null;
  return { facts: flatFacts(read.value as Readonly<Record<string, Written>>), story: halves.story };
}

function withStory(facts: FlatFacts, story: string): FlatFacts {
  return story === '' ? facts : new Map([...facts, [STORY, story]]);
}

function textsOf(facts: Iterable<readonly [string, Written | null]>): Readonly<Record<string, string>> {
  return Object.fromEntries([...facts].flatMap(([path, value]) => (typeof value === 'string' ? [[path, value]] : [])));
}
