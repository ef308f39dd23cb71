import { parseMoney } from '../core/money/parse-money.ts';
import { readCsv } from '../catalogue/csv.ts';
import type { CabinetFolder } from '../catalogue/files.ts';
import { certificatesIn, MONEY, partsOf, saysMuch, sentencesOf, tells, wholesOf } from './private-cells.ts';
import { lettersOf } from './letters.ts';
import { privateIn, searchFor } from './search.ts';
import type { PrivateSum } from './sums.ts';
import type { PublicRecords } from './public-words.ts';
import { listNames, publicWords } from './public-words.ts';
import { LEDGER_COLUMNS } from '../catalogue/schema/cabinet.ts';

/** A value of `private/` that must be found in nothing published, in small letters. */
export type PrivateValue = {
  readonly value: string;
  readonly from: string;
  readonly column: string;
  /** The line of the table, counted from 1. */
  readonly line: number;
};

/** Columns that name what is public anyway. */
const PUBLIC_COLUMNS: Readonly<Record<string, readonly string[]>> = {
  'private/ledger.csv': ['piece'],
  'private/guide.csv': ['set', 'place', 'grade', 'currency', 'date'],
};
const LEDGER = 'private/ledger.csv';
/** The rows of a column of one's own in which a value may stand and still tell something; a category stands in more. */
const FEW = 3;

/**
 * Every value of the ledger and the guide that can be told apart in a text, besides sums: at least five characters with a letter
 * or a sign among them; the parts of a place or a seller, between commas, from eight characters on (the name of a place where
 * a piece was found from five on), unless the cabinet names that place in public; a certificate's number from six figures on,
 * however it is parted. What is itself the name of a ruler, a mint, a denomination or a book tells nothing. A bare number or a
 * bare day stands in too many public facts.
 *
 * Notes, and columns of the keeper's own, may say what is public anyway. There a value, and each sentence of it, is looked for from
 * eight characters on, when it stands in few rows, and in no title, name, legend or other fact of a published piece or of a list.
 */
export function privateValues(folder: CabinetFolder, records: PublicRecords): readonly PrivateValue[] {
  const isPublic = publicPlaces(records);
  const names = listNames(records);
  const values = new Map<string, PrivateValue>();
  const own = new Map<string, PrivateValue>();
  for (const [from, left] of Object.entries(PUBLIC_COLUMNS)) {
    const { rows, lines } = readCsv(folder.files.find(({ file }) => file === from)?.text ?? '');
    const isOwn = (column: string): boolean => from === LEDGER && (column === 'notes' || !isLedgerColumn(column));
    const times = timesIn(rows, isOwn);
    for (const [index, row] of rows.entries())
      for (const [column, cell] of Object.entries(row)) {
        if (left.includes(column)) continue;
        const spot = { from, column, line: lines[index] ?? 0 };
        if (isOwn(column))
          for (const value of sentencesOf(cell))
            if (value.length >= 8 && (times.get(`${column} ${value.toLowerCase()}`) ?? 0) <= FEW && saysMuch(value))
              own.set(value.toLowerCase(), { value: value.toLowerCase(), ...spot });
        if (isOwn(column)) continue;
        const telling = [
          ...wholesOf(column, cell).filter(tells),
          ...partsOf(column, cell).filter((part) => tells(part) && !isPublic(part)),
          ...(column === 'certificate' ? certificatesIn(cell) : []),
        ].filter((value) => !names.has(value.toLowerCase()));
        for (const value of telling) values.set(value.toLowerCase(), { value: value.toLowerCase(), ...spot });
      }
  }
  const said = saidIn(records, [...own.values()]);
  return [
    ...values.values(),
    ...[...own.values()].filter(({ value }) => !said.has(lettersOf(value).trim()) && !values.has(value)),
  ];
}

/** Every sum in the ledger that is written as one. */
export function privateSums(folder: CabinetFolder): readonly PrivateSum[] {
  const { rows, lines } = readCsv(folder.files.find(({ file }) => file === LEDGER)?.text ?? '');
  return rows.flatMap((row, index) =>
    MONEY.flatMap((column) => {
      const money = parseMoney(row[column] ?? '');
      return money.ok ? [{ money: money.value, from: LEDGER, column, line: lines[index] ?? 0 }] : [];
    }),
  );
}

/** The values, in letters, that the published pieces and the lists say anyway. */
function saidIn(records: PublicRecords, values: readonly PrivateValue[]): ReadonlySet<string> {
  const words = publicWords(records).split('\n').map(lettersOf).join('\n');
  const asked = values.map((one) => ({ ...one, value: lettersOf(one.value).trim() }));
  return new Set(privateIn(words, searchFor(asked)).map(({ value }) => value));
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
      for (const value of sentencesOf(cell)) {
        const key = `${column} ${value.toLowerCase()}`;
        times.set(key, (times.get(key) ?? 0) + 1);
      }
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
