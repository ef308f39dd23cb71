import type { CabinetFolder } from '../catalogue/files.ts';
import { lettersOf } from './letters.ts';
import { privateIn, searchFor } from './find-values.ts';
import type { PrivateSearch, PrivateValue } from './find-values.ts';
import { sumsFor, sumsIn } from './sums.ts';
import type { PrivateSum, SumSearch } from './sums.ts';
import { privateSums, privateValues } from './private-values.ts';
import type { PublicRecords } from './public-words.ts';
import type { Records } from '../catalogue/records.ts';

/** Everything private in a cabinet, ready to be looked for in texts. */
export type PrivateGuard = { readonly values: PrivateSearch; readonly sums: SumSearch };

/** A private fact that is in a text: where it is kept, and enough of it to know it again but not to learn it. */
export type PrivateFound = {
  readonly from: string;
  readonly column: string;
  readonly line: number;
  readonly hint: string;
};

/** Made once for a cabinet: check, inspection and what is said of it all ask for the same. */
const made = new WeakMap<CabinetFolder, { readonly records: PublicRecords; readonly guard: PrivateGuard }>();

/** Makes ready whatever a cabinet keeps private. */
export function guardOf(folder: CabinetFolder, records: PublicRecords): PrivateGuard {
  const known = made.get(folder);
  if (known?.records === records) return known.guard;
  const guard = makeGuard(folder, records);
  made.set(folder, { records, guard });
  return guard;
}

/** Lets a part of a cabinet be held against what the whole of it keeps private, without gathering that again. */
export function useGuard(folder: CabinetFolder, records: PublicRecords, guard: PrivateGuard): void {
  made.set(folder, { records, guard });
}

function makeGuard(folder: CabinetFolder, records: PublicRecords): PrivateGuard {
  const values = privateValues(folder, records).map((one) => ({ ...one, value: lettersOf(one.value).trim() }));
  return { values: searchFor(values.filter(({ value }) => value !== '')), sums: sumsFor(privateSums(folder)) };
}

/**
 * What is looked for in a built site. Single names are left out: the keeper's texts have been looked through for them, and a
 * name that is in none of these and in the site is a word of the program's own, as *price* is beside a seller called Price.
 */
export function builtGuardOf(folder: CabinetFolder, records: PublicRecords): PrivateGuard {
  const { values, sums } = guardOf(folder, records);
  return { values: searchFor(values.values.filter(({ isName }) => isName !== true)), sums };
}

/** The texts and sums a guard looks for, in a fixed order and without where they are kept. */
export function lookedFor({ values, sums }: PrivateGuard): readonly unknown[] {
  const amounts = sums.sums.map(({ money }) => `${money.minor} ${money.currency}`);
  const wanted = values.values.map(({ value }) => value);
  return [[...new Set(wanted)].sort(), [...new Set(amounts)].sort()];
}

/** What a guard looks for that an earlier one did not; null where the earlier one looked for something that this one does not. */
export function addedTo(before: PrivateGuard, guard: PrivateGuard): PrivateGuard | null {
  const [values, sums] = [guard.values.values, guard.sums.sums];
  const [oldValues, oldSums] = [before.values.values, before.sums.sums];
  const known = new Set([...oldValues.map(keyOf), ...oldSums.map(keyOfSum)]);
  const newValues = values.filter((one) => !known.has(keyOf(one)));
  const newSums = sums.filter((one) => !known.has(keyOfSum(one)));
  const stayed = values.length - newValues.length + sums.length - newSums.length;
  return stayed === oldValues.length + oldSums.length ? { values: searchFor(newValues), sums: sumsFor(newSums) } : null;
}

function keyOf({ value, from, column, line, isName }: PrivateValue): string {
  return `${from} ${line} ${column} ${isName === true} ${value}`;
}

function keyOfSum({ money, from, column, line }: PrivateSum): string {
  return `${from} ${line} ${column} ${money.minor} ${money.currency}`;
}

/** Whether nothing is looked for. */
export function isEmpty({ values, sums }: PrivateGuard): boolean {
  return values.values.length + sums.sums.length === 0;
}

/** The private facts in a text; `letters` is what `lettersOf` gives. */
export function guarded(letters: string, { values, sums }: PrivateGuard): readonly PrivateFound[] {
  const found = privateIn(letters, values);
  // A name within a longer value of the same cell is told with it.
  const told = found.filter(
    (one) =>
      !found.some(
        (other) =>
          other !== one &&
          `${other.from} ${other.line} ${other.column}` === `${one.from} ${one.line} ${one.column}` &&
          other.value.length > one.value.length &&
          other.value.includes(one.value),
      ),
  );
  return [
    ...told.map(({ from, column, line, value }) => ({ from, column, line, hint: hintOf(value) })),
    ...sumsIn(letters, sums).map(({ sum: { from, column, line } }) => ({ from, column, line, hint: 'a sum of money' })),
  ];
}

/** Said instead of a value, because what a command prints may be shown to others: `b…r (18 signs)`. */
function hintOf(value: string): string {
  const ends = value.length < 8 ? `${value.slice(0, 1)}…` : `${value.slice(0, 1)}…${value.slice(-1)}`;
  return `${ends.replace(/\d/g, '·')} (${value.length} signs)`;
}

/** A site that was held against nothing, as on a machine that private/ never reaches, is not said to be without its secrets. */
export function inspectedWith(folder: CabinetFolder, records: Records): string {
  return isEmpty(guardOf(folder, records))
    ? 'every byte inspected, but private/ holds nothing to look for in it'
    : 'every byte inspected, nothing private in it';
}
