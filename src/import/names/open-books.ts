import { whichBook } from '../cells/reference-cell.ts';
import type { Draft } from '../plan/draft.ts';
import { withVolume } from './book-keys.ts';
import type { KnownName, SaidNames } from './name.ts';
import { spelledAlike } from './ruler-key.ts';

/** Why it is asked which book a name means; undefined for one of the list, and for one that the keeper has said. */
export function openBook(name: string, works: readonly KnownName[], said: SaidNames): string | undefined {
  const because = whichBook(name);
  if (because === undefined) return undefined;
  const spelled = spelledAlike(name);
  const isOne = (names: readonly string[]): boolean => names.some((one) => spelledAlike(one) === spelled);
  return works.some(({ names }) => isOne(names)) || Object.values(said).some(isOne) ? undefined : because;
}

/** A draft whose references to a book by a letter alone are asked about, and kept as they were written. */
export function withoutOpenBooks(draft: Draft, works: readonly KnownName[], said: SaidNames): Draft {
  const asked = (draft.names.references ?? []).flatMap((one) => {
    const because = whichBook(one.name) === undefined ? undefined : openBook(withVolume(one, works).name, works, said);
    return because === undefined ? [] : [{ one, because }];
  });
  if (asked.length === 0) return draft;
  const references = (draft.names.references ?? []).filter((one) => !asked.some((each) => each.one === one));
  const field = 'references';
  return {
    ...draft,
    names: { ...draft.names, references },
    unread: [
      ...draft.unread,
      ...asked.map(({ one, because }) => ({ row: draft.row, heading: field, text: one.cited.text, because, field })),
    ],
  };
}
