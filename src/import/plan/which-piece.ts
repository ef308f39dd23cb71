import type { Records } from '../../catalogue/records.ts';
import type { BroughtIn } from '../reimport/last-import.ts';
import type { JoinedDraft } from '../names/join-sheet.ts';
import { fileId, freeId } from '../../core/file-id.ts';

/** Which piece a row is. */
export type Identity =
  | { readonly kind: 'new'; readonly id: string }
  /** Imported before, and still there, perhaps under another name. */
  | { readonly kind: 'again'; readonly id: string; readonly was: BroughtIn }
  /** There, and not from this sheet, unless it says the very same. */
  | { readonly kind: 'there'; readonly id: string }
  /** Imported before, and taken out of the cabinet by hand since. */
  | { readonly kind: 'gone'; readonly id: string };

/** Which piece each draft is, in their order. An id once given stays: it is in what was imported, and the folder has it. */
export function identify(
  drafts: readonly JoinedDraft[],
  records: Records,
  before: readonly BroughtIn[],
): readonly Identity[] {
  const byNumber = new Map(records.pieces.map(({ id, fields }) => [fields.number.normalize('NFC'), id]));
  const now = new Map<string, string>(records.named.pieces.map((id) => [id, id]));
  for (const { id, fields } of records.pieces) for (const old of fields.formerly ?? []) now.set(old, id);
  const was = new Map(before.map((piece) => [piece.number, piece]));
  const taken = new Set([...now.keys(), ...before.map(({ id }) => id)]);
  return drafts.map((draft): Identity => {
    const number = numberOf(draft);
    const earlier = was.get(number);
    if (earlier !== undefined) {
      const id = now.get(earlier.id);
      return id === undefined ? { kind: 'gone', id: earlier.id } : { kind: 'again', id, was: earlier };
    }
    const holder = byNumber.get(number) ?? (draft.id === undefined ? undefined : now.get(draft.id));
    if (holder !== undefined) return { kind: 'there', id: holder };
    const id = freeId(fileId(draft.id ?? number), (one) => taken.has(one));
    taken.add(id);
    return { kind: 'new', id };
  });
}

/** The inventory number, with accents in one piece, however the sheet's program has made them. */
export function numberOf({ facts }: Pick<JoinedDraft, 'facts'>): string {
  const number = facts['number'];
  return typeof number === 'string' ? number.normalize('NFC') : '';
}
