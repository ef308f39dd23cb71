import { parseMoney } from '../core/money/parse-money.ts';
import { readCsv } from './csv.ts';
import type { CabinetFolder } from './files.ts';
import { privateIn, searchFor } from './private-search.ts';
import type { PublicRecords } from './public-words.ts';
import { listNames, publicWords } from './public-words.ts';
import { LEDGER_COLUMNS } from './schema/cabinet.ts';

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
/** Single words that say where or how in any cabinet, and so give nobody's away. */
const COMMON = new Set(
  'album auction bank boxes cabinet damaged dealer drawer envelope exchange folder found friend house inherited library office online postal private shelf small sleeve stored study tray unknown vault'.split(
    ' ',
  ),
);

/**
 * Every value of the ledger and the guide that can be told apart in a text: at least five characters with a letter or a
 * sign among them; a sum in the ways sums are written, a short one from ten pounds, euros or dollars on; the parts of a place, between commas, from eight characters on,
 * unless the cabinet names that place in public. What is itself the name of a ruler, a mint, a denomination or a book tells nothing. A bare number or a bare day stands in too many public facts.
 *
 * Notes, and columns of the keeper's own, may say what is public anyway. There a value is looked for from eight characters on,
 * when it stands in few rows, and in no title, name, legend or other fact of a published piece or of a list.
 */
export function privateValues(folder: CabinetFolder, records: PublicRecords): readonly PrivateValue[] {
  const isPublic = publicPlaces(records);
  const names = listNames(records);
  const values = new Map<string, PrivateValue>();
  const own = new Map<string, PrivateValue>();
  for (const [from, left] of Object.entries(PUBLIC_COLUMNS)) {
    const { rows } = readCsv(folder.files.find(({ file }) => file === from)?.text ?? '');
    const isOwn = (column: string): boolean => from === LEDGER && (column === 'notes' || !isLedgerColumn(column));
    const times = timesIn(rows, isOwn);
    for (const row of rows) {
      for (const [column, cell] of Object.entries(row)) {
        if (left.includes(column)) continue;
        if (isOwn(column)) {
          const value = cell.trim().toLowerCase();
          if (value.length >= 8 && (times.get(`${column} ${value}`) ?? 0) <= FEW && tells(value))
            own.set(value, { value, from, column });
          continue;
        }
        const wholes = MONEY.includes(column) ? sumsOf(cell) : [cell.trim()].filter(isLong);
        const parts = IN_PARTS.includes(column) ? cell.split(/[,;]/).map((part) => part.trim()) : [];
        const telling = [
          ...wholes.filter((value) => !COMMON.has(value.toLowerCase())),
          ...parts.filter((part) => part.length >= 8 && !isPublic(part)),
        ].filter((value) => tells(value) && !names.has(value.toLowerCase()));
        for (const value of telling) values.set(value.toLowerCase(), { value: value.toLowerCase(), from, column });
      }
    }
  }
  const said = new Set(privateIn(publicWords(records), searchFor([...own.values()])).map(({ value }) => value));
  return [...values.values(), ...[...own.values()].filter(({ value }) => !said.has(value) && !values.has(value))];
}

const LEDGER = 'private/ledger.csv';
/** The rows of a column of one's own in which a value may stand and still tell something; a category stands in more. */
const FEW = 3;

function tells(value: string): boolean {
  return !/^[\d\s.,/-]+$/.test(value);
}

function isLedgerColumn(column: string): boolean {
  return LEDGER_COLUMNS.some((known) => known === column);
}

function timesIn(
  rows: readonly Readonly<Record<string, string>>[],
  isOwn: (column: string) => boolean,
): ReadonlyMap<string, number> {
  const times = new Map<string, number>();
  for (const row of rows)
    for (const [column, cell] of Object.entries(row)) {
      if (!isOwn(column)) continue;
      const key = `${column} ${cell.trim().toLowerCase()}`;
      times.set(key, (times.get(key) ?? 0) + 1);
    }
  return times;
}

/** Whether the cabinet itself names a place in public: an area of a find, a mint, a region. */
function publicPlaces({ pieces, mints }: PublicRecords): (place: string) => boolean {
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

/** Under this, in pence, a sum that is written short stands in too many public facts: a face value, a fine, a fare. */
const SMALL = 1000;

/** A sum as it may be written elsewhere: as it stands, with the sign before or after, with the code, with the word, its thousands parted or not. */
function sumsOf(cell: string): readonly string[] {
  const money = parseMoney(cell);
  if (!money.ok) return [cell.trim()].filter(isLong);
  const { minor, currency } = money.value;
  const [sign, word] = SIGNS[currency] ?? [currency, currency];
  const written = amountsOf(minor).flatMap((amount) => [
    `${sign}${amount}`,
    `${sign} ${amount}`,
    `${amount} ${sign}`,
    `${amount}${sign}`,
    `${amount} ${currency}`,
    `${currency} ${amount}`,
    `${amount} ${word}`,
  ]);
  return [cell.trim(), ...written].filter((sum) => minor >= SMALL || isLong(sum));
}

/** An amount in hundredths with its point or comma, its thousands parted as they are in Britain, on the Continent, or not at all. */
function amountsOf(minor: number): readonly string[] {
  const [whole = '', part = ''] = (minor / 100).toFixed(2).split('.');
  const parted = (by: string): string => whole.replace(/\B(?=(?:\d{3})+$)/g, by);
  const wholes = [[whole, '.'], [whole, ','], [parted(','), '.'], [parted('.'), ','], [parted(' '), ','], [parted('\u2019'), '.']] as const; // prettier-ignore
  return [...new Set(wholes.flatMap(([before, point]) => [`${before}${point}${part}`, ...(part === '00' ? [before] : [])]))]; // prettier-ignore
}

function isLong(value: string): boolean {
  return value.length >= 5;
}
