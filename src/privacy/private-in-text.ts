import { ADDRESSES } from '../catalogue/addresses.ts';
import type { CabinetFolder } from '../catalogue/files.ts';
import type { Problem } from '../catalogue/problem.ts';
import { problem } from '../catalogue/problem.ts';
import type { PrivateFound, PrivateGuard } from './guard.ts';
import { guardOf, guarded } from './guard.ts';
import { lettersOf, readMarkdown } from './letters.ts';
import type { Records } from '../catalogue/records.ts';

/** A private fact in a text or the name of a file that will be published. */
export type Exposed = PrivateFound & {
  readonly file: string;
  /** The line of the text; null where it is the file's name. */
  readonly at: number | null;
};

/** What the ledger and the guide keep and the texts or names of files tell, where it can still be taken out. */
export function exposedIn(records: Records, folder: CabinetFolder): readonly Exposed[] {
  const guard = guardOf(folder, records);
  const hidden = records.pieces.filter(({ fields }) => fields.publish === 'no').map(({ id }) => `pieces/${id}/`);
  return folder.files
    .filter(
      ({ file }) =>
        file !== ADDRESSES && !file.startsWith('private/') && !hidden.some((start) => file.startsWith(start)),
    )
    .flatMap(({ file, text }) => [
      ...guarded(lettersOf(file), guard).map((found) => ({ ...found, file, at: null })),
      ...privateLines(text ?? '', guard).map(({ line, found }) => ({ ...found, file, at: line })),
    ]);
}

/** The same as problems. */
export function checkPrivateInText(records: Records, folder: CabinetFolder): readonly Problem[] {
  return exposedIn(records, folder).map(({ file, at, hint, column, from, line }) =>
    at === null
      ? problem('private-in-name', { file }, hint, column, from, line)
      : problem('private-in-text', { file, line: at }, hint, column, from, line),
  );
}

type Found = ReturnType<typeof guarded>[number];

function privateLines(text: string, guard: PrivateGuard): readonly { readonly line: number; readonly found: Found }[] {
  return [...foundIn(text, guard)].map(([key, found]) => ({
    found,
    line: lineWhere(text, (part) => foundIn(part, guard).has(key)),
  }));
}

/** What is in a text as it is, and as a reader will see it. */
function foundIn(text: string, guard: PrivateGuard): ReadonlyMap<string, Found> {
  const asIs = lettersOf(text);
  const seen = lettersOf(readMarkdown(text));
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
