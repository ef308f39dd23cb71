import { today } from '../catalogue/check-cabinet.ts';
import { checkAll } from '../catalogue/check-records.ts';
import type { CabinetFile } from '../catalogue/files.ts';
import { LIFE } from '../catalogue/life-file.ts';
import { orderProblems, problem } from '../catalogue/problem.ts';
import type { Problem } from '../catalogue/problem.ts';
import { readCabinet } from '../catalogue/read-cabinet.ts';
import type { Records } from '../catalogue/records.ts';
import { useGuard } from '../privacy/guard.ts';
import type { PrivateGuard } from '../privacy/guard.ts';
import { PRIVACY } from '../privacy/privacy.ts';
import { DELETED, inOrder, isPrivate, pieceIn, readOne } from './cabinet-files.ts';
import type { FileChange, Files } from './cabinet-files.ts';

/**
 * What a change would make wrong. It is checked beside the lists, the private tables and the pieces that are not published, and
 * not beside every other piece, so that it takes no longer in a large cabinet; the whole is checked after it.
 */
export function problemsAfter(
  { at, files, records, guard }: Whole,
  changes: readonly FileChange[],
): readonly Problem[] {
  const changed = new Set(changes.map(({ file }) => file));
  const changesPrivate = changes.some((one) => isPrivate(one.file) && !onlyTakesAway(one));
  const touched = piecesTouched(changes, new Set(records.named.pieces));
  const gone = changes.flatMap(({ file, text }) => (text === null ? (nameIn(file) ?? []) : []));
  const hidden = new Set(records.pieces.filter(({ fields }) => fields.publish !== 'yes').map(({ id }) => id));
  // A piece that is sold or hidden may be in an exhibit, and a piece that is laid in one may be sold.
  const shows = ({ file, text }: CabinetFile): boolean =>
    changed.has(file) || idsIn(text ?? '').some((id) => touched.has(id));
  // What names a thing that is to go: a story with a link to it, a price, a guide.
  const tellsOfGone = ({ text }: CabinetFile): boolean => {
    const names = text === null ? [] : gone.filter((name) => text.includes(name));
    return names.length > 0 && idsIn(text ?? '').some((id) => names.includes(id));
  };
  // What is said of a type is said of its pieces.
  const isOfType = changes.some(({ file }) => file.startsWith('types/'));
  const typed = new Set(
    records.pieces.flatMap(({ id, fields }) => (isOfType && fields.type !== undefined ? [id] : [])),
  );
  const near = [...files.values()].filter((held) => {
    const [kind, id = ''] = held.file.split('/');
    if (tellsOfGone(held)) return true;
    // What is private in them is in the guard; what is wrong with them was told before.
    if (!changesPrivate && isPrivate(held.file) && held.file !== LIFE) return false;
    if (kind === 'exhibits') return shows(held);
    return kind !== 'pieces' || hidden.has(id) || touched.has(id) || typed.has(id);
  });
  const isAsked = new Set([
    ...changed,
    ...near.flatMap(({ file }) => (isOfType && file.startsWith('types/') ? [file] : [])),
    ...[...typed].map((id) => `pieces/${id}/piece.md`),
    ...near.flatMap((held) => (held.file.startsWith('exhibits/') || tellsOfGone(held) ? [held.file] : [])),
  ]);
  const problemsIn = (
    held: readonly CabinetFile[],
    pieces: readonly string[],
    isGuarded: boolean,
  ): readonly Problem[] => {
    const folder = { at, files: held };
    const read = readCabinet(folder);
    const all = { ...read.records, named: { ...read.records.named, pieces } };
    if (isGuarded) useGuard(folder, all, guard);
    return [...read.problems, ...checkAll(all, folder, PRIVACY, today())];
  };
  const after = new Map(near.map((held) => [held.file, held]));
  for (const { file, text } of changes)
    if (text === null) after.delete(file);
    else after.set(file, { file, text });
  const { pieces } = records.named;
  const left = pieces.filter((id) => !gone.includes(id));
  const now = [...problemsIn(inOrder(after), left, !changesPrivate), ...numbersTwice(after, records, changes)].filter(
    ({ file }) => isAsked.has(file) && after.has(file),
  );
  // What was wrong before is asked only where something is wrong now, which halves the time of most saves.
  if (now.length === 0) return [];
  return freshIn(now, problemsIn(near, pieces, true));
}

/** Whether a private table only loses lines, or holds those of pieces that are deleted: then nothing new is to be guarded. */
function onlyTakesAway({ file, text, from }: FileChange): boolean {
  if (file === DELETED) return true;
  const lines = new Set((from ?? '').split('\n'));
  return (text ?? '').split('\n').every((line) => lines.has(line));
}

/** What is wrong now and was not before, each once. */
function freshIn(now: readonly Problem[], before: readonly Problem[]): readonly Problem[] {
  const key = ({ file, field, says }: Problem): string => `${file}\n${field}\n${says}`;
  const told = new Set(before.map(key));
  const fresh = now.filter((one) => !told.has(key(one)));
  return orderProblems([...new Map(fresh.map((one) => [key(one), one])).values()]);
}

/** The pieces that a change is about: of its own file, named in an exhibit, or in a line of a table that is new. */
function piecesTouched(changes: readonly FileChange[], known: ReadonlySet<string>): ReadonlySet<string> {
  const named = changes.flatMap(({ file, text, from }) => {
    const own = pieceIn(file);
    if (own !== null) return [own];
    if (file !== LIFE && !file.startsWith('exhibits/')) return [];
    const before = new Set(file === LIFE ? (from ?? '').split('\n') : []);
    return (text ?? '')
      .split('\n')
      .flatMap((line) => (before.has(line) ? [] : idsIn(line).filter((id) => known.has(id))));
  });
  return new Set(named);
}

/** The name of the thing whose own file this is. */
function nameIn(file: string): string | null {
  const [kind = '', id = '', own, more] = file.split('/');
  if (own === undefined) return id.endsWith('.yaml') ? id.slice(0, -5) : null;
  const isOwn = own === (kind === 'pieces' ? 'piece.md' : kind === 'exhibits' ? 'exhibit.md' : 'series.yaml');
  return isOwn && more === undefined ? id : null;
}

/** Everything in a text that may be the name of a file. */
function idsIn(text: string): readonly string[] {
  return text.match(/[a-z0-9]+(?:-[a-z0-9]+)*/g) ?? [];
}

/** A cabinet as it was read, and what it keeps private. */
type Whole = {
  readonly at: string;
  readonly files: Files;
  readonly records: Records;
  /** Takes seconds to gather in a large cabinet, and is kept while nothing private changes. */
  readonly guard: PrivateGuard;
};

/** A number that another piece has, whether or not that was read beside the change. */
function numbersTwice(after: Files, records: Records, changes: readonly FileChange[]): readonly Problem[] {
  return [...new Set(changes.map(({ file }) => pieceIn(file)))].flatMap((id) => {
    const number = id === null ? null : (readOne(after, id)?.fields.number ?? null);
    const holder = records.pieces.find((piece) => piece.id !== id && piece.fields.number === number);
    if (number === null || holder === undefined) return [];
    return [problem('number-twice', { file: `pieces/${id}/piece.md`, field: 'number' }, number, holder.id)];
  });
}
