import type { CabinetFolder } from '../../catalogue/files.ts';
import { splitFrontMatter } from '../../catalogue/front-matter.ts';
import { cabinetReader } from '../../catalogue/read-cabinet.ts';
import type { ReadCabinet } from '../../catalogue/read-cabinet.ts';
import { datesOutsideReigns } from '../../catalogue/rules/dates.ts';
import type { ListKind } from '../../catalogue/write/write-piece.ts';
import type { BroughtIn } from '../reimport/last-import.ts';
import { matchUnnumbered } from '../reimport/match-unnumbered.ts';
import type { Preference } from '../reimport/three-way.ts';
import type { Draft, UnreadCell } from './draft.ts';
import type { NameQuestion } from '../names/name.ts';
import { joinSheet } from '../names/join-sheet.ts';
import type { JoinedDraft } from '../names/join-sheet.ts';
import { offersFor, withLists } from '../names/lent-lists.ts';
import type { Offer } from '../names/lent-lists.ts';
import type { SaidOfLists } from '../names/names-file.ts';
import type { NewFile } from '../names/list-file-of-name.ts';
import { newListFile } from '../names/list-file-of-name.ts';
import { identify } from './which-piece.ts';
import type { Identity } from './which-piece.ts';
import { guardingLedger, isLedger, ledgerRows, mergedLedger } from './merge-ledger.ts';
import { oddCells, oddKinds, oddRows } from './odd-cells.ts';
import type { Held, PlacedPiece } from './piece-to-write.ts';
import { placePiece } from './piece-to-write.ts';
import { exposedAgain } from '../../privacy/private-in-text.ts';
import { inOtherFile, tryOn } from './try-on.ts';
import type { Refused, ToldElsewhere, TriedOn } from './try-on.ts';
import type { IncomingPiece } from './incoming-piece.ts';
import { factNamed, incomingPiece, withoutFact } from './incoming-piece.ts';

/** A sheet read by its mapping, and what the keeper has said about it. */
export type SheetToBring = {
  readonly drafts: readonly Draft[];
  readonly setAside: readonly RowSetAside[];
  readonly said: SaidOfLists;
  /** What was imported from this sheet the time before. */
  readonly before: readonly BroughtIn[];
  readonly prefer: Preference;
  /** The cells of each row as they stand, by its number. */
  readonly cells: ReadonlyMap<number, readonly string[]>;
  /** The heading under which the sheet says a field. */
  readonly headings: ReadonlyMap<string, string>;
  /** Facts of every piece that its row says nothing of: `publish: unlisted`. */
  readonly always: Readonly<Record<string, string>>;
  /** The lists that come with the program; what new names they have is offered, and taken where `takesOffers` says so. */
  readonly lent?: CabinetFolder | null;
  readonly takesOffers?: boolean;
  /** The day it is, `2026-11-30`: nothing is made or found later. */
  readonly day: string;
};

export type RowSetAside = { readonly row: number; readonly text: string; readonly because: string };
export type NewList = NewFile & { readonly kind: ListKind; readonly name: string };

/** A private column, the public field that tells what it keeps, and the rows it does so in. */
export type SecretQuestion = { readonly column: string; readonly field: string; readonly rows: readonly number[] };

/** All that bringing a sheet in would do; nothing has been done yet. */
export type ImportPlan = {
  readonly pieces: readonly PlacedPiece[];
  readonly lists: readonly NewList[];
  readonly questions: readonly NameQuestion[];
  /** New names that a list which comes with the program has. */
  readonly offers: readonly Offer[];
  /** Private columns that a public field would tell of, once each; those fields are kept back until somebody says. */
  readonly secrets: readonly SecretQuestion[];
  /** What a keeper should look at, a sentence each. */
  readonly remarks: readonly string[];
  readonly setAside: readonly RowSetAside[];
  readonly unread: readonly UnreadCell[];
  /** The ledger as it will be; null when it stays as it is. */
  readonly ledger: string | null;
  /** Pieces imported before whose row the sheet has no longer. */
  readonly vanished: readonly BroughtIn[];
};

/** How often facts are tried on the cabinet and taken out again before a row is skipped, and the whole before it is taken as it is. */
const TRIES = 4;
const ROUNDS = 6;

/** Plans what a sheet becomes in a cabinet. What `check` would refuse is found now and kept as it was written. */
export function planImport(sheet: SheetToBring, folder: CabinetFolder): ImportPlan {
  // Pieces are tried on round after round; those that a round left as they were are not read anew.
  const read = cabinetReader();
  const { records } = read(folder);
  const numbers = new Set(records.pieces.map(({ fields }) => fields.number));
  const numbered = matchUnnumbered(sheet.drafts, sheet.cells, sheet.before, numbers);
  const alone = joinSheet(numbered, records, sheet.said);
  const offers = sheet.lent == null ? [] : offersFor(alone, sheet.lent);
  const taken: readonly NewList[] = sheet.takesOffers === true ? offers : [];
  // With the files that are taken, as the sheet will be joined the next time: titles have the names of the lists then.
  const joined = taken.length === 0 ? alone : joinSheet(numbered, withLists(records, taken), sheet.said);
  const lists = [...taken, ...listFiles(joined.created).filter(({ file }) => !taken.some((one) => one.file === file))];
  const identities = identify(joined.drafts, records, sheet.before);
  const placing = placingOf(sheet, folder, joined.drafts, identities);
  for (const draft of joined.drafts) placing.place(incomingPiece(draft, sheet.always), placing.tried(draft.row));
  const { secrets, elsewhere } = settle(placing, {
    read,
    folder,
    records,
    lists,
    day: sheet.day,
  });
  placing.compare();
  const pieces = joined.drafts.flatMap(({ row }) => placing.placed.get(row) ?? []);
  const inSheet = new Set(joined.drafts.flatMap((_, at) => identities[at]?.id ?? []));
  const needed = neededLists(lists, pieces);
  const left = new Set(lists.filter((one) => !needed.includes(one)).map(({ file }) => file));
  return {
    pieces,
    lists: needed,
    questions: joined.questions,
    offers,
    secrets,
    remarks: [
      ...elsewhere.filter(({ file }) => !left.has(file)).map(inOtherFile),
      ...joined.remarks,
      ...oddKinds(pieces),
      ...oddRows(pieces, sheet.cells),
      ...oddCells(pieces, records, sheet.headings),
      ...outside(pieces, folder, lists, read),
    ],
    setAside: placing.setAside.toSorted((a, b) => a.row - b.row),
    unread: pieces
      .flatMap(({ row }) => placing.incoming.get(row)?.unread ?? [])
      .map((cell) =>
        cell.heading === cell.field ? { ...cell, heading: sheet.headings.get(cell.field) ?? cell.field } : cell,
      ),
    ledger: mergedLedger(placing.ledger, pieces),
    vanished: sheet.before.filter(
      (piece) => !inSheet.has(piece.id) && !identities.some((one) => one.kind === 'again' && one.was === piece),
    ),
  };
}

/** The rows on their way into the cabinet: what each wishes, and how it is placed so far. */
type Placing = {
  readonly ledger: string | null;
  readonly incoming: Map<number, IncomingPiece>;
  readonly placed: Map<number, PlacedPiece>;
  readonly setAside: RowSetAside[];
  readonly aside: (row: number, because: string) => void;
  readonly place: (piece: IncomingPiece, identity: Identity | undefined) => void;
  /** A piece that is there and is not known to come from this sheet is tried on like a new one, and compared when all is settled. */
  readonly tried: (row: number) => Identity | undefined;
  readonly compare: () => void;
};

function placingOf(
  sheet: SheetToBring,
  folder: CabinetFolder,
  drafts: readonly JoinedDraft[],
  identities: readonly Identity[],
): Placing {
  const texts = new Map(folder.files.map(({ file, text }) => [file, text]));
  const ledger = texts.get('private/ledger.csv') ?? null;
  const rows = isLedger(ledger) ? ledgerRows(ledger) : new Map<string, Readonly<Record<string, string>>>();
  const held = ({ id }: Identity): Held => ({
    text: texts.get(`pieces/${id}/piece.md`) ?? null,
    ledger: rows.get(id) ?? {},
  });
  const setAside: RowSetAside[] = [...sheet.setAside];
  const rowText = new Map(drafts.map((draft) => [draft.row, summary(draft.facts)]));
  const aside = (row: number, because: string): void => {
    setAside.push({ row, text: rowText.get(row) ?? '', because });
  };
  const incoming = new Map<number, IncomingPiece>();
  const placed = new Map<number, PlacedPiece>();
  const identityOf = new Map(drafts.map(({ row }, at) => [row, identities[at]]));
  const there = new Map(identities.flatMap((one, at) => (one.kind === 'there' ? [[drafts[at]?.row, one]] : [])));
  const place = (piece: IncomingPiece, identity: Identity | undefined): void => {
    if (identity === undefined) return;
    const done = placePiece(piece, identity, held(identity), sheet.prefer);
    placed.delete(piece.row);
    if ('because' in done) aside(piece.row, done.because);
    else {
      incoming.set(piece.row, piece);
      placed.set(piece.row, done);
    }
  };
  return {
    ledger, incoming, placed, setAside, aside, place,
    tried: (row) => {
      const one = there.get(row);
      return one === undefined ? identityOf.get(row) : { kind: 'new', id: one.id };
    },
    compare: () => {
      for (const row of there.keys()) {
        const piece = row !== undefined && placed.has(row) ? incoming.get(row) : undefined;
        if (piece !== undefined) place(piece, identityOf.get(piece.row));
      }
    },
  }; // prettier-ignore
}

/**
 * Tries the pieces on the cabinet and takes out what is refused, until nothing is: what is taken out goes to the ledger, and may
 * make a secret of what another piece says. Returns which private columns the sheet would have told of.
 */
function settle(
  placing: Placing,
  onto: Omit<TriedOn, 'pieces' | 'ledger' | 'exposed'>,
): { readonly secrets: readonly SecretQuestion[]; readonly elsewhere: readonly ToldElsewhere[] } {
  const told = new Map<string, { column: string; field: string; rows: Set<number> }>();
  const tries = new Map<number, number>();
  const tried = new Set<PlacedPiece>();
  const ledgerWith = guardingLedger(placing.ledger);
  const exposed = exposedAgain();
  let others: readonly ToldElsewhere[] = [];
  for (let round = 1, refusals = 1; round <= ROUNDS && refusals > 0; round += 1) {
    const pieces = [...placing.placed.values()];
    const anew = new Set(pieces.filter((piece) => !tried.has(piece)));
    for (const piece of anew) tried.add(piece);
    const { refused, elsewhere } = tryOn({ ...onto, exposed, pieces, anew, ledger: ledgerWith(pieces) });
    others = elsewhere;
    refusals = refused.size;
    for (const [row, problems] of refused) {
      tries.set(row, (tries.get(row) ?? 0) + 1);
      for (const { field, secret } of problems) {
        if (secret === undefined) continue;
        const key = JSON.stringify([secret.column, field]);
        const held = told.get(key) ?? { column: secret.column, field: field ?? 'story', rows: new Set<number>() };
        held.rows.add(row);
        told.set(key, held);
      }
      takeOut(placing, row, problems, (tries.get(row) ?? 0) >= TRIES || round === ROUNDS);
    }
  }
  const secrets = [...told.values()]
    .map(({ column, field, rows }) => ({ column, field, rows: [...rows].sort((a, b) => a - b) }))
    .sort((a, b) => b.rows.length - a.rows.length);
  return { secrets, elsewhere: others };
}

/** Takes what was refused out of a piece, or sets its row aside when it cannot do without it. */
function takeOut(placing: Placing, row: number, problems: readonly Refused[], isLast: boolean): void {
  const was = placing.incoming.get(row);
  let piece: IncomingPiece | null = was ?? null;
  // The last of a list first, so that the places of the others stay; what is told twice of a fact takes it out once.
  for (const { field, says, isSecret } of problems.toSorted(byPlaceInList)) {
    if (was === undefined || piece === null) break;
    const isOut = factNamed(was, field) !== null && factNamed(piece, field) === null;
    if (!isOut) piece = withoutFact(piece, field, says, isSecret);
  }
  if (piece !== null && !isLast) placing.place(piece, placing.tried(row));
  else {
    placing.placed.delete(row);
    placing.aside(row, problems[0]?.says ?? '');
  }
}

function byPlaceInList(a: Refused, b: Refused): number {
  const [one, other] = [a.field ?? '', b.field ?? ''].map((field) => Number(/\.(\d+)/.exec(field)?.[1] ?? -1));
  return (other ?? -1) - (one ?? -1);
}

/** A sentence for each new or changed piece dated outside the reigns of its ruler; it is written all the same. */
function outside(
  pieces: readonly PlacedPiece[],
  folder: CabinetFolder,
  lists: readonly NewFile[],
  read: (folder: CabinetFolder) => ReadCabinet,
): readonly string[] {
  const changed = pieces.filter(({ state }) => state !== 'same');
  const rows = new Map(changed.map(({ id, row }) => [id, row]));
  const files = [...folder.files.filter(({ file }) => file.startsWith('rulers/')), ...lists, ...changed];
  const { records } = read({ at: folder.at, files });
  return datesOutsideReigns(records).flatMap(({ id, says }) =>
    rows.has(id) ? [`row ${rows.get(id) ?? ''}: ${says}`] : [],
  );
}

function listFiles(created: {
  readonly [kind in ListKind]: readonly Parameters<typeof newListFile>[1][];
}): readonly NewList[] {
  const kinds = ['rulers', 'mints', 'denominations', 'works'] as const;
  return kinds.flatMap((kind) => created[kind].map((one) => ({ ...newListFile(kind, one), kind, name: one.name })));
}

/**
 * Of the new files those that a piece names which is written now. The others belonged to rows that are skipped, or to
 * pieces in which the keeper has taken the name out: a list that was removed so that it tells nothing stays removed.
 */
function neededLists(lists: readonly NewList[], pieces: readonly PlacedPiece[]): readonly NewList[] {
  const idOf = ({ file }: NewList): string => file.slice(file.indexOf('/') + 1, -'.yaml'.length);
  const left = new Set(lists.map(idOf));
  for (const { state, text } of pieces) {
    if (left.size === 0) break;
    const facts = state === 'same' ? '' : (splitFrontMatter(text)?.facts ?? '');
    for (const word of facts.match(/[a-z0-9]+(?:-[a-z0-9]+)*/g) ?? []) left.delete(word);
  }
  return lists.filter((one) => !left.has(idOf(one)));
}

function summary(facts: Readonly<Record<string, unknown>>): string {
  return [facts['number'], facts['title']].filter((part) => typeof part === 'string').join(' · ');
}
