import type { CitedInSheet } from '../plan/draft.ts';
import type { KnownName, Likeness } from './name.ts';
import { spelledAlike } from './ruler-key.ts';

/**
 * What distinguishes books. Points between letters part nothing, `R.I.C.` is `RIC`. A name of up to three letters, or one that
 * ends in a point, may be short for the name it begins or gives the initials of, `N` for *North*, `BMC` for *British Museum
 * Catalogue*, and is asked about.
 */
export function booksAlike(names: readonly string[]): Likeness {
  const letters = new Map(names.map((name) => [name, lettersOf(name)]));
  const same = (name: string): string => letters.get(name) ?? lettersOf(name);
  const shorts = new Set(names.filter(isShort));
  const isShortName = (short: string, name: string): boolean =>
    shorts.has(short) && same(short) !== same(name) && isShortFor(same(short), same(name));
  return { same, isNear: (one, other) => isShortName(one, other) || isShortName(other, one) };
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
export function withVolume({ name, cited }: CitedInSheet, known: readonly KnownName[]): CitedInSheet {
  const { volume, ...rest } = cited;
  if (volume === undefined) return { name, cited };
  const named = `${name.replace(/\.(?=\p{L})/gu, '').replace(/\.$/, '')} ${volume}`;
  const isThere = known.some(({ names }) => names.some((one) => spelledAlike(one) === spelledAlike(named)));
  if (!isThere) return { name, cited };
  return { name: named, cited: rest };
}
