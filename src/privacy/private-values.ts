import { readCsv } from '../catalogue/csv.ts';
import type { CabinetFile, CabinetFolder } from '../catalogue/files.ts';
import { formsOf } from './private-cells.ts';
import { lettersOf, lettersOfFile } from './letters.ts';
import { answeredIn } from './not-secret.ts';
import type { PrivateValue } from './find-values.ts';
import type { PrivateSum } from './sums.ts';
import { listNames, publicLetters, saidIn } from './public-words.ts';
import type { PublicRecords } from './public-words.ts';
import { GUIDE, isOwn, sumIn, toldBy } from './told-by-column.ts';
import type { Told } from './told-by-column.ts';

/** Columns that name what is public anyway. */
const PUBLIC_COLUMNS: Readonly<Record<string, readonly string[]>> = {
  'private/ledger.csv': ['piece'],
  'private/guide.csv': ['set', 'place', 'grade', 'low', 'high', 'currency', 'date'],
  'private/life.csv': ['piece', 'date', 'event', 'due', 'deal'],
  'private/deleted.csv': ['piece', 'number', 'title', 'deleted'],
  'private/prices.csv': ['piece', 'set', 'place', 'type', 'grade', 'currency', 'date', 'when', 'how'],
};
/** Ends the heading under which import keeps a text that told something private: the text as a whole guards nothing. */
export const WITHHELD = ' (not published)';
/** The rows of a column of one's own in which a value may stand and still tell something; a category is in more. */
const FEW = 3;

/**
 * Every value of the tables that can be recognised in a text, besides sums: at least five characters with a letter
 * or a sign among them; the parts of a place or a seller, between commas, from eight characters on (the name of a place where
 * a piece was found from five on), unless the cabinet names that place in public; a certificate's number from six figures on,
 * however it is split and without its letters; and single names that are rare in the cabinet (`rareOf`). What is itself
 * the name of a ruler, a mint, a denomination or a book tells nothing. A bare number or a bare day is in too many public facts.
 *
 * Notes, and columns of the keeper's own, may say what is public anyway. There a value, and each sentence of it, is looked for from
 * eight characters on, when it is in few rows, and in no title, name, legend or other fact of a published piece or of a list; a
 * sentence also where it is the problem of a piece.
 * What `private/not-secret.csv` answers for is not looked for.
 */
export function privateValues(folder: CabinetFolder, records: PublicRecords): readonly PrivateValue[] {
  const isPublic = publicPlaces(records);
  const names = listNames(records);
  const isAnswered = answeredIn(folder);
  const values = new Map<string, PrivateValue>();
  const own: PrivateValue[] = [];
  const single: PrivateValue[] = [];
  for (const { from, column, told } of columnsIn(folder)) {
    for (const { name, line } of told.names)
      if (!isPublic(name, false) && !isAnswered(column, name))
        for (const value of formsOf(column, name.toLowerCase()))
          single.push({ value, from, column, line, isName: true });
    for (const [value, { rows, line }] of told.notes)
      if (rows <= FEW && !isAnswered(column, value)) own.push({ value, from, column, line });
    for (const { text, forms, place, of, line } of told.values) {
      if (names.has(of) || (place !== null && isPublic(text, place === 'exact'))) continue;
      const value = text.toLowerCase();
      if (!names.has(value) && !isAnswered(column, value))
        for (const form of forms) values.set(form, { value: form, from, column, line });
    }
  }
  for (const one of rareNames(single, folder, records)) if (!values.has(one.value)) values.set(one.value, one);
  const said = saidIn(records, own, isAnswered);
  const notes = new Map(own.map((one) => [one.value, one]));
  return [
    ...values.values(),
    ...[...notes.values()].filter(({ value }) => !said.has(lettersOf(value).trim()) && !values.has(value)),
  ];
}

/** Of single names those that are rare in the cabinet; a word in many rows of a column of the keeper's own is a category. */
function rareNames(
  single: readonly PrivateValue[],
  folder: CabinetFolder,
  records: PublicRecords,
): readonly PrivateValue[] {
  const letters = new Map([...new Set(single.map(({ value }) => value))].map((value) => [value, lettersOf(value)]));
  const isRare = rareOf(new Set(letters.values()), folder, records);
  const rare = single.filter(({ value }) => isRare(letters.get(value) ?? ''));
  const rows = new Map<string, number>();
  for (const { column, value } of rare) rows.set(`${column} ${value}`, (rows.get(`${column} ${value}`) ?? 0) + 1);
  return rare.filter(
    ({ from, column, value }) => !(isOwn(from, column) && (rows.get(`${column} ${value}`) ?? 0) > FEW),
  );
}

/** Every sum in the ledger and the guide, and in notes and columns of the keeper's own, that is written as one. */
export function privateSums(folder: CabinetFolder): readonly PrivateSum[] {
  const isAnswered = answeredIn(folder);
  const { rows, lines } = readCsv(textOf(folder, GUIDE));
  const guide = rows.flatMap((row, index) => {
    const [line, currency] = [lines[index] ?? 0, (row['currency'] ?? '').trim() || currencyIn(folder)];
    return ['low', 'high'].flatMap((column) =>
      sumIn(`${row[column] ?? ''} ${currency}`).map((one) => ({ ...one, from: GUIDE, column, line })),
    );
  });
  const others = columnsIn(folder).flatMap(({ from, column, told }) =>
    told.sums.map((one) => ({ ...one, from, column })),
  );
  return [...others, ...guide].filter(({ column, money }) => !isAnswered(column, money.text));
}

/** A column of a private table, and what its cells tell. */
type Column = { readonly from: string; readonly column: string; readonly told: Told };

/** What the tables of a cabinet tell; a table that is the same object as before is not looked through anew. */
const TABLES = new WeakMap<CabinetFile, { readonly currency: string; readonly columns: readonly Column[] }>();

/** The columns of the tables, but for those that name what is public anyway. */
function columnsIn(folder: CabinetFolder): readonly Column[] {
  const currency = currencyIn(folder);
  return Object.entries(PUBLIC_COLUMNS).flatMap(([from, left]) => {
    const held = folder.files.find(({ file }) => file === from);
    if (held === undefined) return [];
    const known = TABLES.get(held);
    if (known?.currency === currency) return known.columns;
    const { headings, rows, lines } = readCsv(held.text ?? '');
    const columns = headings
      .filter((column) => !left.includes(column) && !column.endsWith(WITHHELD))
      .map((column) => {
        const cells = rows.map((row, at) => ({ cell: row[column] ?? '', line: lines[at] ?? 0 }));
        return { from, column, told: toldBy(from, column, cells, currency) };
      });
    TABLES.set(held, { currency, columns });
    return columns;
  });
}

function currencyIn(folder: CabinetFolder): string {
  return /^currency: *([A-Z]{3})/m.exec(textOf(folder, 'cabinet.yaml'))?.[1] ?? 'GBP';
}

function textOf(folder: CabinetFolder, file: string): string {
  return folder.files.find((held) => held.file === file)?.text ?? '';
}

/** Whether the cabinet itself names a place in public; `exact` where it is the exact part of a spot. */
type IsPublic = (place: string, exact: boolean) => boolean;

/** Whether the cabinet itself names a place in public: a mint, a region, and, unless it is the `exact` part of a spot, an area of a find. */
function publicPlaces({ pieces, mints }: PublicRecords): IsPublic {
  const small = (names: readonly string[]): readonly string[] => [...new Set(names.map((name) => name.toLowerCase()))];
  const shown = pieces.filter(({ fields }) => fields.publish !== 'no');
  const areas = small(shown.flatMap(({ fields }) => (fields.found?.area === undefined ? [] : [fields.found.area])));
  const others = small(
    mints.flatMap(({ fields }) => [fields.name, fields.area ?? '', ...fields.names.map(({ name }) => name)]),
  );
  const known = new Map<string, boolean>();
  return (place, exact) => {
    const key = `${exact ? '!' : ''}${place}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const isNamed = [...others, ...(exact ? [] : areas)].some((name) => name.includes(place.toLowerCase()));
    known.set(key, isNamed);
    return isNamed;
  };
}

/** A word of a ledger that is in more public files than this is common in this cabinet, and tells nothing. */
const RARE = 3;
/**
 * Which of these words are rare in a cabinet: they are in no title, legend, name of a list, fact of the trade or line of cabinet.yaml, and in
 * at most three of its public files. A name that leaks does so in one text or two; a word of the cabinet's subject is all over it.
 */
function rareOf(words: ReadonlySet<string>, folder: CabinetFolder, records: PublicRecords): (word: string) => boolean {
  if (words.size === 0) return () => false;
  const cabinet = folder.files.find(({ file }) => file === 'cabinet.yaml')?.text ?? '';
  const said = new Set(wordsOf(`${publicLetters(records)}\n${lettersOf(cabinet)}`));
  const hidden = records.pieces.filter(({ fields }) => fields.publish === 'no').map(({ id }) => `pieces/${id}/`);
  const counts = new Map<string, number>();
  const unsaid = new Set([...words].filter((word) => !said.has(word)));
  const asked = [...unsaid].join(' ');
  for (const held of unsaid.size === 0 ? [] : folder.files) {
    if (held.file.startsWith('private/') || hidden.some((start) => held.file.startsWith(start))) continue;
    for (const word of wordsIn(held, unsaid, asked)) counts.set(word, (counts.get(word) ?? 0) + 1);
  }
  return (word) => !said.has(word) && (counts.get(word) ?? 0) <= RARE;
}

/** Which words of each file are among those that were asked for, and what was asked. */
const HELD_WORDS = new WeakMap<CabinetFile, { readonly asked: string; readonly held: readonly string[] }>();

function wordsIn(file: CabinetFile, words: ReadonlySet<string>, asked: string): readonly string[] {
  const known = HELD_WORDS.get(file);
  if (known?.asked === asked) return known.held;
  const held = [...new Set(wordsOf(lettersOfFile(file).asIs).filter((word) => words.has(word)))];
  HELD_WORDS.set(file, { asked, held });
  return held;
}

function wordsOf(letters: string): readonly string[] {
  return letters.match(/[\p{L}']+/gu) ?? [];
}
