import { splitFrontMatter } from '../../catalogue/front-matter.ts';
import { editFields, editStory, isSame } from '../../catalogue/write/edit-fields.ts';
import { formatPieceFile, PIECE_ORDER } from '../../catalogue/write/write-piece.ts';
import type { Written } from '../../catalogue/yaml.ts';
import { readYaml } from '../../catalogue/yaml.ts';
import type { BroughtIn } from '../reimport/base.ts';
import { flatFacts, nestedFacts, stepsOf } from '../reimport/flat-facts.ts';
import type { FlatFacts } from '../reimport/flat-facts.ts';
import { mergeThreeWays } from '../reimport/three-way.ts';
import type { Conflict, Preference } from '../reimport/three-way.ts';
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
  const file = `pieces/${id}/piece.md`;
  const facts = nestedFacts(incoming.facts);
  const whole = { row: incoming.row, id, number: incoming.number, file };
  const inLedger = mergeThreeWays(
    identity.kind === 'again' ? ledgerFacts(identity.was.ledger) : new Map(),
    ledgerFacts(incoming.ledger),
    ledgerFacts(held.ledger),
    prefer,
  );
  const ledger = {
    ledger: Object.fromEntries(
      inLedger.changes.flatMap(({ path, value }) => (typeof value === 'string' ? [[path, value]] : [])),
    ),
    conflicts: inLedger.conflicts.map((one) => ({ ...one, path: `ledger: ${one.path}` })),
    emptied: inLedger.emptied.map((path) => `ledger: ${path}`),
  };
  const base = {
    id,
    number: incoming.number,
    row: incoming.row,
    facts,
    story: incoming.story,
    ledger: textsOf(inLedger.base),
  };
  const ledgerPaths = Object.keys(ledger.ledger).map((path) => `ledger: ${path}`);

  if (identity.kind === 'gone')
    return { because: `The piece ${id} was taken out of the cabinet since it was imported. Its row is left alone.` };
  if (identity.kind === 'new') {
    const text = formatPieceFile(facts, incoming.story);
    return { ...whole, state: 'new', text, changed: [], ...ledger, base };
  }
  const read = held.text === null ? null : factsIn(held.text);
  if (held.text === null || read === null)
    return { because: `The file ${file} cannot be read, so nothing in it is changed. Run npm run check, and fix it.` };
  if (identity.kind === 'there') {
    const isAlike = isSame(nestedFacts(read.facts), nestedFacts(incoming.facts)) && read.story === incoming.story;
    if (!isAlike)
      return {
        because: `The number ${incoming.number} already belongs to the piece ${id}, which did not come from this sheet. Give one of the two another number.`,
      };
    const state = ledgerPaths.length === 0 ? 'same' : 'changed';
    return { ...whole, state, text: held.text, changed: ledgerPaths, ...ledger, base };
  }
  const merged = mergeThreeWays(
    withStory(flatFacts(identity.was.facts), identity.was.story),
    withStory(incoming.facts, incoming.story),
    withStory(read.facts, read.story),
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
  const text = typeof story === 'string' ? editStory(edited.value, story) : edited.value;
  const next = new Map(merged.base);
  const told = next.get(STORY);
  next.delete(STORY);
  const changed = [...merged.changes.map(({ path }) => path), ...ledgerPaths];
  return {
    ...whole,
    state: changed.length === 0 ? 'same' : 'changed',
    text,
    changed,
    ledger: ledger.ledger,
    conflicts: [...merged.conflicts, ...ledger.conflicts],
    emptied: [...merged.emptied, ...ledger.emptied],
    base: { ...base, facts: nestedFacts(next), story: typeof told === 'string' ? told : '' },
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

function ledgerFacts(cells: Readonly<Record<string, string>>): FlatFacts {
  const filled = Object.entries(cells).filter(([column, text]) => column !== 'piece' && text.trim() !== '');
  return new Map(filled.map(([column, text]) => [column, text.trim()]));
}

function textsOf(facts: FlatFacts): Readonly<Record<string, string>> {
  return Object.fromEntries([...facts].flatMap(([path, value]) => (typeof value === 'string' ? [[path, value]] : [])));
}
