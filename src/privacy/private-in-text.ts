import { hash } from 'node:crypto';
import { ADDRESSES } from '../catalogue/addresses.ts';
import { NOT_EARLIER } from '../catalogue/kept-answers.ts';
import type { Earlier } from '../catalogue/kept-answers.ts';
import type { CabinetFile, CabinetFolder } from '../catalogue/files.ts';
import type { Problem } from '../catalogue/problem.ts';
import { problem } from '../catalogue/problem.ts';
import type { PrivateFound, PrivateGuard } from './guard.ts';
import { addedTo, guardOf, guarded, isEmpty, lookedFor } from './guard.ts';
import { lettersOf, lettersOfFile, lettersOfText } from './letters.ts';
import type { FileLetters } from './letters.ts';
import type { Records } from '../catalogue/records.ts';

/** A private fact in a text or the name of a file that will be published. */
export type Exposed = PrivateFound & {
  readonly file: string;
  /** The line of the text; null where it is the file's name. */
  readonly at: number | null;
};

/** What the ledger and the guide keep and the texts or names of files tell, where it can still be taken out. */
export function exposedIn(records: Records, folder: CabinetFolder, earlier: Earlier = NOT_EARLIER): readonly Exposed[] {
  const guard = guardOf(folder, records);
  // What is looked for is put in order and hashed only where answers are kept.
  const asked = earlier === NOT_EARLIER ? '' : hash('sha256', JSON.stringify(lookedFor(guard)), 'base64url');
  return publicFiles(records, folder).flatMap((held) =>
    earlier.once(
      () => ['private', asked, held.file, held.text ?? ''],
      () => exposedBy(held, guard),
      isNothing,
    ),
  );
}

/** The same for a cabinet that changes from round to round: a file that is the same object is looked through for what is new. */
export function exposedAgain(): (records: Records, folder: CabinetFolder) => readonly Exposed[] {
  const known = new WeakMap<CabinetFile, { readonly guard: PrivateGuard; readonly found: readonly Exposed[] }>();
  let before: PrivateGuard | null = null;
  return (records, folder) => {
    const guard = guardOf(folder, records);
    const [last, added] = [before, before === null ? null : addedTo(before, guard)];
    before = guard;
    return publicFiles(records, folder).flatMap((held) => {
      const one = known.get(held);
      const isKnown = one !== undefined && one.guard === last && added !== null;
      const found = isKnown ? [...one.found, ...exposedBy(held, added)] : exposedBy(held, guard);
      known.set(held, { guard, found });
      return found;
    });
  };
}

function publicFiles(records: Records, folder: CabinetFolder): readonly CabinetFile[] {
  const hidden = records.pieces.filter(({ fields }) => fields.publish === 'no').map(({ id }) => `pieces/${id}/`);
  return folder.files.filter(
    ({ file }) => file !== ADDRESSES && !file.startsWith('private/') && !hidden.some((start) => file.startsWith(start)),
  );
}

function exposedBy(held: CabinetFile, guard: PrivateGuard): readonly Exposed[] {
  if (isEmpty(guard)) return [];
  const { file } = held;
  return [
    ...guarded(lettersOf(file), guard).map((found) => ({ ...found, file, at: null })),
    ...privateLines(held, guard).map(({ line, found }) => ({ ...found, file, at: line })),
  ];
}

const isNothing = (found: readonly unknown[]): boolean => found.length === 0;

/** The same as problems. */
export function checkPrivateInText(records: Records, folder: CabinetFolder, earlier: Earlier): readonly Problem[] {
  return exposedIn(records, folder, earlier).map(({ file, at, hint, column, from, line }) =>
    at === null
      ? problem('private-in-name', { file }, hint, column, from, line)
      : problem('private-in-text', { file, line: at }, hint, column, from, line),
  );
}

type Found = ReturnType<typeof guarded>[number];

function privateLines(
  held: CabinetFile,
  guard: PrivateGuard,
): readonly { readonly line: number; readonly found: Found }[] {
  return [...foundIn(lettersOfFile(held), guard)].map(([key, found]) => ({
    found,
    line: lineWhere(held.text ?? '', (part) => foundIn(lettersOfText(part), guard).has(key)),
  }));
}

/** What is in a text as it is, and as a reader will see it. */
function foundIn({ asIs, seen }: FileLetters, guard: PrivateGuard): ReadonlyMap<string, Found> {
  const found = [...guarded(asIs, guard), ...(seen === asIs ? [] : guarded(seen, guard))];
  return new Map(found.map((one) => [`${one.from} ${one.line} ${one.column} ${one.hint}`, one]));
}

/** The line, counted from 1, on which something first is in a text, by a question that is asked of stretches of it. */
function lineWhere(text: string, holds: (part: string) => boolean): number {
  const lines = text.split('\n');
  const within = (from: number, to: number): boolean => holds(lines.slice(from, to).join('\n'));
  let [low, high] = [1, lines.length];
  // The fewest lines from the top that hold it …
  while (low < high) {
    const middle = (low + high) >> 1;
    if (within(0, middle)) high = middle;
    else low = middle + 1;
  }
  // … and of those the last from which on they still do.
  while (!within(low - 1, high) && low > 1) low -= 1;
  return low;
}
