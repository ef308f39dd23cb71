import type { KnownName } from './join-names.ts';
import { spelledAlike } from './ruler-key.ts';

export type BookKeys = {
  readonly keyOf: (name: string) => string;
  /** Whether a shortened name could be that of several books, so that it stays one of its own until somebody says. */
  readonly isUnsure: (name: string) => boolean;
};

/**
 * What books are told apart by. Points between letters part nothing, `R.I.C.` is `RIC`; a name of up to three letters, or one that ends in a
 * point, counts as the one longer name in the sheet or the list that it begins or gives the initials of: `N` as *North*, `BMC` as
 * *British Museum Catalogue*. Both are asked about.
 */
export function bookKeysOf(names: readonly string[], known: readonly KnownName[]): BookKeys {
  const bookOf = new Map<string, string>();
  for (const name of names) bookOf.set(lettersOf(name), lettersOf(name));
  for (const file of known) for (const name of [file.id, ...file.names]) bookOf.set(lettersOf(name), file.id);
  const keys = new Map<string, string>();
  const unsure = new Set<string>();
  for (const name of names) {
    const short = lettersOf(name);
    if (!isShort(name) || known.some((file) => bookOf.get(short) === file.id)) continue;
    const long = [...bookOf].filter(([other]) => isShortFor(short, other));
    const books = new Set(long.map(([, book]) => book));
    if (books.size > 1) unsure.add(short);
    const [found] = long;
    if (books.size === 1 && found !== undefined) keys.set(short, found[0]);
  }
  return {
    keyOf: (name) => keys.get(lettersOf(name)) ?? lettersOf(name),
    isUnsure: (name) => unsure.has(lettersOf(name)),
  };
}

/** Plain letters, single ones drawn together: `ric` for `R.I.C.`, `dh` for `D&H`. */
function lettersOf(name: string): string {
  return spelledAlike(name).replace(/(?<=(?:^| )\p{L}) (?=\p{L}(?: |$))/gu, '');
}

function isShort(name: string): boolean {
  const letters = lettersOf(name);
  return /^\p{L}+$/u.test(letters) && (letters.length <= 3 || (letters.length <= 6 && name.trim().endsWith('.')));
}

/** Whether the letters begin the first word of a name, or are those its words begin with. */
function isShortFor(short: string, name: string): boolean {
  const words = name.split(' ');
  const [first = ''] = words;
  const initials = words.filter((word) => !SMALL.has(word)).map((word) => word.charAt(0));
  // A long title is cited by its short name, and begins with any word.
  const begins = words.length < 3 && first.length > Math.max(3, short.length) && first.startsWith(short);
  return begins || (short.length > 1 && initials.join('') === short);
}

const SMALL: ReadonlySet<string> = new Set('and of the in et de der die und la le des du to'.split(' '));

/** `RIC VI 229` is number 229 of *RIC VI*, where the list has that volume as a book of its own. */
export function withVolume(
  cited: { readonly name: string; readonly number: string },
  known: readonly KnownName[],
): { readonly name: string; readonly number: string } {
  const [, volume, number] = /^([IVXL]+(?:\.\d+)?)[\s,.:/]+(.+)$/.exec(cited.number) ?? [];
  if (volume === undefined || number === undefined) return cited;
  const whole = spelledAlike(`${cited.name.replace(/\.(?=\p{L})/gu, '')} ${volume}`);
  const isThere = known.some(({ names }) => names.some((name) => spelledAlike(name) === whole));
  return isThere ? { name: `${cited.name.replace(/\.(?=\p{L})/gu, '').replace(/\.$/, '')} ${volume}`, number } : cited;
}
