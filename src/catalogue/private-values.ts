import { parseMoney } from '../core/money/parse-money.ts';
import { readCsv } from './csv.ts';
import type { CabinetFolder } from './files.ts';
import type { Records } from './records.ts';

/** A value of `private/` that must be found in nothing published, in small letters. */
export type PrivateValue = { readonly value: string; readonly from: string; readonly column: string };

/** Columns that name what is public anyway. */
const PUBLIC_COLUMNS: Readonly<Record<string, readonly string[]>> = {
  'private/ledger.csv': ['piece'],
  'private/guide.csv': ['set', 'place', 'grade', 'currency', 'date'],
};
const MONEY = ['cost', 'value', 'insured'];
/** Columns whose parts give a place away as well as the whole. */
const IN_PARTS = ['storage', 'find-spot'];

/**
 * Every value of the ledger and the guide that can be told apart in a text: at least five characters with a letter or a
 * sign among them; a sum in the ways sums are written; the parts of a place, between commas, from eight characters on,
 * unless the cabinet names that place in public. A bare number or a bare day stands in too many public facts.
 */
export function privateValues(
  folder: CabinetFolder,
  records: Pick<Records, 'pieces' | 'mints'>,
): readonly PrivateValue[] {
  const isPublic = publicPlaces(records);
  const values = new Map<string, PrivateValue>();
  for (const [from, left] of Object.entries(PUBLIC_COLUMNS)) {
    const text = folder.files.find(({ file }) => file === from)?.text ?? '';
    for (const row of readCsv(text).rows) {
      for (const [column, cell] of Object.entries(row)) {
        if (left.includes(column)) continue;
        const wholes = MONEY.includes(column) ? sumsOf(cell) : [cell.trim()];
        const parts = IN_PARTS.includes(column) ? cell.split(/[,;]/).map((part) => part.trim()) : [];
        const telling = [
          ...wholes.filter((value) => value.length >= 5),
          ...parts.filter((part) => part.length >= 8 && !isPublic(part)),
        ].filter((value) => !/^[\d\s.,/-]+$/.test(value));
        for (const value of telling) values.set(value.toLowerCase(), { value: value.toLowerCase(), from, column });
      }
    }
  }
  return [...values.values()];
}

/** Whether the cabinet itself names a place in public: an area of a find, a mint, a region. */
function publicPlaces({ pieces, mints }: Pick<Records, 'pieces' | 'mints'>): (place: string) => boolean {
  const named = [
    ...pieces.flatMap(({ fields }) => (fields.found?.area === undefined ? [] : [fields.found.area])),
    ...mints.flatMap(({ fields }) => [fields.name, fields.area ?? '', ...fields.names.map(({ name }) => name)]),
  ].map((name) => name.toLowerCase());
  return (place) => named.some((name) => name.includes(place.toLowerCase()));
}

const SIGNS: Readonly<Record<string, readonly [sign: string, word: string]>> = {
  GBP: ['£', 'pounds'],
  EUR: ['€', 'euros'],
  USD: ['$', 'dollars'],
};

/** A sum as it may be written elsewhere: as it stands, with the sign, with the code, with the word. */
function sumsOf(cell: string): readonly string[] {
  const money = parseMoney(cell);
  if (!money.ok) return [cell.trim()];
  const { minor, currency } = money.value;
  const exact = (minor / 100).toFixed(2);
  const amounts = exact.endsWith('.00') ? [exact, exact.slice(0, -3)] : [exact];
  const [sign, word] = SIGNS[currency] ?? [currency, currency];
  const written = amounts.flatMap((amount) => [
    `${sign}${amount}`,
    `${amount} ${currency}`,
    `${currency} ${amount}`,
    `${amount} ${word}`,
  ]);
  return [cell.trim(), ...written];
}

/** Where a value stands in a text of small letters, as itself and not within a longer word or number; -1 when it does not. */
export function whereStands(text: string, value: string): number {
  for (let at = text.indexOf(value); at !== -1; at = text.indexOf(value, at + 1)) {
    const before = text[at - 1] ?? ' ';
    const after = text.slice(at + value.length, at + value.length + 2);
    const within = /^[\p{L}\p{N}]/u.test(value) && /[\p{L}\p{N}]/u.test(before);
    const goesOn = /[\p{L}\p{N}]$/u.test(value) && /^(?:[\p{L}\p{N}]|[.,]\d)/u.test(after);
    if (!within && !goesOn) return at;
  }
  return -1;
}
