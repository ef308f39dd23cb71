import type { CabinetFolder } from '../../catalogue/files.ts';
import { splitFrontMatter } from '../../catalogue/front-matter.ts';
import { readCabinet } from '../../catalogue/read-cabinet.ts';
import type { ListKind } from '../../catalogue/write/write-piece.ts';
import type { BroughtIn } from '../reimport/base.ts';
import { matchUnnumbered } from '../reimport/match-unnumbered.ts';
import type { Preference } from '../reimport/three-way.ts';
import type { Draft, UnreadCell } from './draft.ts';
import type { NameQuestion } from '../names/join-names.ts';
import { joinSheet } from '../names/join-sheet.ts';
import type { SaidOfLists } from '../names/names-file.ts';
import type { NewFile } from '../names/new-list-file.ts';
import { newListFile } from '../names/new-list-file.ts';
import { identify } from './identify.ts';
import type { Identity } from './identify.ts';
import { isLedger, ledgerRows, mergeLedger } from './merge-ledger.ts';
import { oddCells } from './odd-cells.ts';
import type { Held, PlacedPiece } from './place-piece.ts';
import { placePiece } from './place-piece.ts';
import { tryOn } from './try-on.ts';
import type { WishedPiece } from './incoming-piece.ts';
import { wishedPiece, withoutFact } from './incoming-piece.ts';

/** A sheet read by its mapping, and what the keeper has said about it. */
export type SheetToBring = {
  readonly drafts: readonly Draft[];
  readonly setAside: readonly RowSetAside[];
  readonly said: SaidOfLists;
  /** What was brought in from this sheet the time before. */
  readonly before: readonly BroughtIn[];
  readonly prefer: Preference;
  /** The cells of each row as they stand, by its number. */
  readonly cells: ReadonlyMap<number, readonly string[]>;
  /** The heading under which the sheet says a field. */
  readonly headings: ReadonlyMap<string, string>;
  /** Facts of every piece that its row says nothing of: `publish: unlisted`. */
  readonly always: Readonly<Record<string, string>>;
};

export type RowSetAside = { readonly row: number; readonly text: string; readonly because: string };
export type NewList = NewFile & { readonly kind: ListKind; readonly name: string };

/** All that bringing a sheet in would do; nothing has been done yet. */
export type ImportPlan = {
  readonly pieces: readonly PlacedPiece[];
  readonly lists: readonly NewList[];
  readonly questions: readonly NameQuestion[];
  /** What a keeper should look at, a sentence each. */
  readonly remarks: readonly string[];
  readonly setAside: readonly RowSetAside[];
  readonly unread: readonly UnreadCell[];
  /** The ledger as it will be; null when it stays as it is. */
  readonly ledger: string | null;
  /** Pieces brought in before whose row the sheet has no longer. */
  readonly vanished: readonly BroughtIn[];
};

/** How often facts are tried on the cabinet and taken out again before a row is set aside. */
const TRIES = 4;

/** Plans what a sheet becomes in a cabinet. What `check` would refuse is found now and kept as it was written. */
export function planImport(sheet: SheetToBring, folder: CabinetFolder): ImportPlan {
  const { records } = readCabinet(folder);
  const numbers = new Set(records.pieces.map(({ fields }) => fields.number));
  const drafts = matchUnnumbered(sheet.drafts, sheet.cells, sheet.before, numbers);
  const joined = joinSheet(drafts, records, sheet.said);
  const lists = listFiles(joined.created);
  const identities = identify(joined.drafts, records, sheet.before);
  const ledger = textOf(folder, 'private/ledger.csv');
  const rows = isLedger(ledger) ? ledgerRows(ledger) : new Map<string, Readonly<Record<string, string>>>();
  const texts = new Map(folder.files.map(({ file, text }) => [file, text]));
  const held = ({ id }: Identity): Held => ({
    text: texts.get(`pieces/${id}/piece.md`) ?? null,
    ledger: rows.get(id) ?? {},
  });
  const setAside: RowSetAside[] = [...sheet.setAside];
  const rowText = new Map(joined.drafts.map((draft) => [draft.row, summary(draft.facts)]));
  const aside = (row: number, because: string): void => {
    setAside.push({ row, text: rowText.get(row) ?? '', because });
  };

  const wished = new Map<number, WishedPiece>();
  const placed = new Map<number, PlacedPiece>();
  const identityOf = new Map(joined.drafts.map(({ row }, at) => [row, identities[at]]));
  const place = (piece: WishedPiece, identity = identityOf.get(piece.row)): void => {
    if (identity === undefined) return;
    const done = placePiece(piece, identity, held(identity), sheet.prefer);
    placed.delete(piece.row);
    if ('because' in done) aside(piece.row, done.because);
    else {
      wished.set(piece.row, piece);
      placed.set(piece.row, done);
    }
  };
  // A piece that is there and is not known to come from this sheet is tried on like a new one, and compared when all is settled.
  const there = new Map(identities.flatMap((one, at) => (one.kind === 'there' ? [[joined.drafts[at]?.row, one]] : [])));
  const tried = (row: number): Identity | undefined => {
    const one = there.get(row);
    return one === undefined ? identityOf.get(row) : { kind: 'new', id: one.id };
  };
  for (const draft of joined.drafts) place(wishedPiece(draft, sheet.always), tried(draft.row));

  let doubtful = [...placed.values()];
  for (let tries = 1; doubtful.length > 0; tries += 1) {
    const merged = mergedLedger(ledger, [...placed.values()]);
    const refused = tryOn({ folder, records, lists, pieces: doubtful, ledger: merged });
    const again: PlacedPiece[] = [];
    for (const [row, problems] of refused) {
      let piece: WishedPiece | null = wished.get(row) ?? null;
      for (const { field, says, isSecret } of problems)
        piece = piece === null ? null : withoutFact(piece, field, says, isSecret);
      if (piece === null || tries === TRIES) {
        placed.delete(row);
        aside(row, problems[0]?.says ?? '');
      } else {
        place(piece, tried(row));
        const now = placed.get(row);
        if (now !== undefined) again.push(now);
      }
    }
    doubtful = again;
  }
  for (const row of there.keys()) {
    const piece = row !== undefined && placed.has(row) ? wished.get(row) : undefined;
    if (piece !== undefined) place(piece);
  }
  const pieces = joined.drafts.flatMap(({ row }) => placed.get(row) ?? []);
  const inSheet = new Set(joined.drafts.flatMap((_, at) => identities[at]?.id ?? []));
  return {
    pieces,
    lists: neededLists(lists, pieces),
    questions: joined.questions,
    remarks: [...joined.remarks, ...oddCells(pieces, records, sheet.headings)],
    setAside: setAside.toSorted((a, b) => a.row - b.row),
    unread: pieces
      .flatMap(({ row }) => wished.get(row)?.unread ?? [])
      .map((cell) =>
        cell.heading === cell.field ? { ...cell, heading: sheet.headings.get(cell.field) ?? cell.field } : cell,
      ),
    ledger: mergedLedger(ledger, pieces),
    vanished: sheet.before.filter(
      (piece) => !inSheet.has(piece.id) && !identities.some((one) => one.kind === 'again' && one.was === piece),
    ),
  };
}

/** The ledger with the cells of these pieces; null when none of them changes it, or when it has no column to find a piece by. */
function mergedLedger(ledger: string | null, pieces: readonly PlacedPiece[]): string | null {
  const changes = pieces.filter((piece) => Object.keys(piece.ledger).length > 0);
  if (changes.length === 0 || !isLedger(ledger)) return null;
  return mergeLedger(
    ledger,
    changes.map((piece) => ({ piece: piece.id, cells: piece.ledger })),
  );
}

function listFiles(created: {
  readonly [kind in ListKind]: readonly Parameters<typeof newListFile>[1][];
}): readonly NewList[] {
  const kinds = ['rulers', 'mints', 'denominations', 'works'] as const;
  return kinds.flatMap((kind) => created[kind].map((one) => ({ ...newListFile(kind, one), kind, name: one.name })));
}

/**
 * Of the new files those that a piece names which is written now. The others belonged to rows that are set aside, or to
 * pieces in which the keeper has taken the name out: a list that was removed so that it tells nothing stays removed.
 */
function neededLists(lists: readonly NewList[], pieces: readonly PlacedPiece[]): readonly NewList[] {
  const written = pieces.filter(({ state }) => state !== 'same').map(({ text }) => splitFrontMatter(text)?.facts ?? '');
  const words = new Set(written.flatMap((text) => text.match(/[a-z0-9]+(?:-[a-z0-9]+)*/g) ?? []));
  return lists.filter(({ file }) => words.has(file.slice(file.indexOf('/') + 1, -'.yaml'.length)));
}

function textOf(folder: CabinetFolder, name: string): string | null {
  return folder.files.find(({ file }) => file === name)?.text ?? null;
}

function summary(facts: Readonly<Record<string, unknown>>): string {
  return [facts['number'], facts['title']].filter((part) => typeof part === 'string').join(' · ');
}
