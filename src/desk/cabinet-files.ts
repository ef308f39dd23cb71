import type { CabinetFile, CabinetFolder } from '../catalogue/files.ts';
import { LIFE } from '../catalogue/life-file.ts';
import { readCabinet } from '../catalogue/read-cabinet.ts';
import type { FiledPiece } from '../catalogue/records.ts';

/** A text to be written in the place of the one it was made from; `from` is null for a new file, `text` for one that is to go. */
export type FileChange = { readonly file: string; readonly text: string | null; readonly from: string | null };

/** Where the private lines of pieces that were deleted are kept. */
export const DELETED = 'private/deleted.csv';

/** The files of a cabinet by their names. */
export type Files = Map<string, CabinetFile>;

export function byName({ files }: CabinetFolder): Files {
  return new Map(files.map((held) => [held.file, held]));
}

export function inOrder(files: Files): readonly CabinetFile[] {
  return [...files.values()].sort((a, b) => (a.file < b.file ? -1 : 1));
}

/** The piece whose facts a file holds. */
export function pieceIn(file: string): string | null {
  return /^pieces\/([^/]+)\/piece\.md$/.exec(file)?.[1] ?? null;
}

/** The piece in whose folder a file lies. */
export function folderIn(file: string): string | null {
  return /^pieces\/([^/]+)\//.exec(file)?.[1] ?? null;
}

export function isPrivate(file: string): boolean {
  return file.startsWith('private/');
}

/** One piece read beside the lists it names; null when its file cannot be read at all. */
export function readOne(files: Files, id: string): FiledPiece | null {
  const near = [...files.values()].filter(
    ({ file }) =>
      file.startsWith(`pieces/${id}/`) || file.startsWith('rulers/') || file === LIFE || file === 'cabinet.yaml',
  );
  return readCabinet({ at: '', files: near }).records.pieces[0] ?? null;
}
