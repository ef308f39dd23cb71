import { Ajv2020 } from 'ajv/dist/2020.js';
import type { ValidateFunction } from 'ajv/dist/2020.js';
import Papa from 'papaparse';
import { parse } from 'yaml';
import { beforeAll, describe, expect, test } from 'vitest';
import { readFolder } from '../../src/catalogue/files.ts';
import type { CabinetFolder } from '../../src/catalogue/files.ts';
import { linkRecords } from '../../src/catalogue/link.ts';
import { readCabinet } from '../../src/catalogue/read-cabinet.ts';
import { splitFrontMatter } from '../../src/catalogue/front-matter.ts';
import { FILE_KINDS, jsonSchemaOf } from '../../src/catalogue/schema/json-schemas.ts';
import type { FileKind } from '../../src/catalogue/schema/json-schemas.ts';
import { publicFacts } from '../../src/publish/public-facts.ts';
import { publicPieces } from '../../src/publish/public-piece.ts';
import { piecesSchema } from '../../src/publish/pieces-schema.ts';
import { pieceFacts, pieceTable, tableMetadata } from '../../src/site/models/open-data/records.ts';
import type { Cabinet } from '../../src/site/cabinet.ts';
import { changed, markedCabinet, problemsOf } from '../catalogue/small-cabinet.ts';
import { wholeCabinet } from '../site/whole-cabinet.ts';

const validator = (schema: object): ValidateFunction =>
  new Ajv2020({ strict: false, validateFormats: false }).compile(schema);

let demo: Cabinet;
let folder: CabinetFolder;
beforeAll(async () => {
  demo = await wholeCabinet('content');
  folder = (await readFolder('content')) ?? expect.fail('no demo');
}, 120_000);

describe('pieces.json', () => {
  const isValid = validator(piecesSchema());

  test('is what its schema says, in every piece of the demo', () => {
    expect(isValid(JSON.parse(JSON.stringify(pieceFacts(demo)))), JSON.stringify(isValid.errors)).toBe(true);
  });

  test('is that too with dates that are open, unknown, doubtful, before our era, or of another calendar', () => {
    const written = [
      'before 1351',
      'after 1700',
      '1780/..',
      '../1350',
      '44 BC',
      'unknown',
      '1344?',
      'AH 294',
      '1279 or 1281',
    ];
    const dated = folder.files.filter(({ file, text }) => file.startsWith('pieces/') && /^date: /m.test(text ?? ''));
    const now = changed(
      folder,
      Object.fromEntries(
        written.map((date, at) => [
          dated[at]?.file ?? expect.fail('too few pieces'),
          (text: string) => text.replace(/^date: .*$/m, `date: ${date}`),
        ]),
      ),
    );
    const { pieces, ...lists } = linkRecords(readCabinet(now).records);
    const facts = publicPieces({ ...lists, pieces }).map((piece) => publicFacts(piece, 'https://example.org/'));
    expect(facts.filter(({ date }) => written.includes(String(date)))).toHaveLength(written.length);
    expect(isValid(JSON.parse(JSON.stringify(facts))), JSON.stringify(isValid.errors)).toBe(true);
  });

  // The demo's penny weighs 1.38 g and is 18.6 mm across, as its file says.
  test('has weight and size as numbers beside the keeper’s words', () => {
    const penny = pieceFacts(demo).find(({ id }) => id === 'york-penny-3b');
    expect(penny).toMatchObject({ weight: '1.38 g ± 0.01', grams: 1.38, millimetres: { width: 18.6, height: 18.6 } });
  });

  test.for([
    ['a field of our own', { colour: 'red' }],
    ['a weight as text', { grams: '1.38 g' }],
    ['a year as text', { dating: { earliest: '1280', latest: 1281 } }],
    ['a grade without an end', { grade: { low: 30 } }],
    ['no number', { number: undefined }],
  ] as const)('with %s would be refused', ([, change]) => {
    const [first] = pieceFacts(demo);
    expect(isValid(JSON.parse(JSON.stringify([{ ...first, ...change }])))).toBe(false);
  });
});

// W3C, Metadata Vocabulary for Tabular Data (2015): §5.6 a column's name is a variable of a URI template (RFC 6570, §2.3); §6.1
// the columns are those of the table, in order; primary keys are unique and not empty.
describe('the description of pieces.csv', () => {
  type Column = {
    readonly name: string;
    readonly titles: string;
    readonly required: boolean;
    readonly 'dc:description': string;
  };
  const metadata = () =>
    tableMetadata(demo) as {
      readonly '@context': readonly unknown[];
      readonly url: string;
      readonly tableSchema: { readonly columns: readonly Column[]; readonly primaryKey: string };
    };
  const table = () =>
    Papa.parse<Readonly<Record<string, string>>>(pieceTable(demo), { header: true, skipEmptyLines: true });

  test('names its vocabulary and its table', () => {
    expect(metadata()['@context'][0]).toBe('http://www.w3.org/ns/csvw');
    expect(metadata().url).toBe('pieces.csv');
  });

  test('has the columns of the table, in order, under names that a template can have, each once', () => {
    const { columns } = metadata().tableSchema;
    expect(columns.map(({ titles }) => titles)).toEqual(table().meta.fields);
    expect(
      columns.filter(({ name }) => !/^[A-Za-z0-9_]+(?:\.[A-Za-z0-9_]+)*$/.test(name) || name.startsWith('_')),
    ).toEqual([]);
    expect(new Set(columns.map(({ name }) => name)).size).toBe(columns.length);
    expect(columns.filter((column) => column['dc:description'] === column.titles)).toEqual([]);
  });

  test('promises a value only where every row has one, and a key that is unique', () => {
    const { columns, primaryKey } = metadata().tableSchema;
    const rows = table().data;
    for (const { titles } of columns.filter(({ required }) => required))
      expect(rows.filter((row) => row[titles] === '')).toEqual([]);
    expect(new Set(rows.map((row) => row[primaryKey])).size).toBe(rows.length);
  });
});

/** The files of each kind, by their paths. */
const KIND_OF: readonly (readonly [RegExp, FileKind])[] = [
  [/^cabinet\.yaml$/, 'cabinet'], [/^pieces\/[^/]+\/piece\.md$/, 'piece'], [/^rulers\//, 'ruler'], [/^mints\//, 'mint'],
  [/^denominations\//, 'denomination'], [/^works\//, 'work'], [/^eras\//, 'era'], [/^sets\//, 'set'],
  [/^exhibits\/[^/]+\/exhibit\.md$/, 'exhibit'], [/^types\/[^/]+\/series\.yaml$/, 'series'],
]; // prettier-ignore

/** The facts of a file as an editor reads them: YAML 1.2, with numbers and yes and no. */
function factsIn(file: string, text: string): unknown {
  return parse(file.endsWith('.md') ? (splitFrontMatter(text)?.facts ?? '') : text) as unknown;
}

describe('the schemas for editors', () => {
  const validators = new Map(FILE_KINDS.map((kind) => [kind, validator(jsonSchemaOf(kind))]));
  const accepts = (kind: FileKind, facts: unknown): boolean => validators.get(kind)?.(facts) === true;

  test('accept every file of the demo', () => {
    const counted = new Map<FileKind, number>();
    for (const { file, text } of folder.files) {
      const kind = KIND_OF.find(([path]) => path.test(file))?.[1];
      if (kind === undefined || text === null) continue;
      counted.set(kind, (counted.get(kind) ?? 0) + 1);
      expect(accepts(kind, factsIn(file, text)), `${file}: ${JSON.stringify(validators.get(kind)?.errors)}`).toBe(true);
    }
    expect([...counted.keys()].sort()).toEqual([...FILE_KINDS].sort());
  });

  test('explain each field of a piece, with an example', () => {
    const { properties } = jsonSchemaOf('piece') as {
      readonly properties: Readonly<Record<string, { readonly description?: string }>>;
    };
    expect(
      Object.entries(properties).filter(([, { description }]) => description?.includes('Example:') !== true),
    ).toEqual([]);
  });

  /**
   * Where an editor's schema and `check` differ, by what is written in the file of a piece. `schema` and `check` say who accepts it.
   * What only `check` knows: how words are read, and what other files hold. What only an editor refuses: nothing that we know of.
   */
  const DIFFER: readonly (readonly [says: string, from: string, to: string, schema: boolean, check: boolean])[] = [
    ['as it is', 'kind: coin', 'kind: coin', true, true],
    ['a number where words may stand', 'date: 1281', 'date: 1280', true, true],
    ['a misspelt field', 'weight:', 'wieght:', false, false],
    ['a word that is no choice', 'kind: coin', 'kind: coyn', false, false],
    ['a field that must be there', 'kind: coin\n', '', false, false],
    ['a list where one word belongs', 'title: Penny of a plain king', 'title: [a, b]', false, false],
    ['a name that no file can have', 'mint: plain-town', 'mint: Plain Town', false, false],
    ['a weight without a unit', '1.38 g ± 0.01', '1.38', true, false],
    ['a date that runs backwards', 'date: 1281', 'date: 1281/1279', true, false],
    ['a die axis of thirteen', 'axis: 6h', 'axis: 13h', true, false],
    ['a grade that no scale has', 'grade: VF', 'grade: splendid-ish', true, false],
    ['a ruler that has no file', 'ruler: plain-king', 'ruler: plane-king', true, false],
    ['a number that another piece has', 'number: "0001"', 'number: "0004"', true, false],
  ];
  const PENNY = 'pieces/plain-penny/piece.md';
  test.for(DIFFER)('%s', async ([, from, to, schema, check]) => {
    const now = changed(await markedCabinet(), { [PENNY]: (text) => text.replace(from, to) });
    const text = now.files.find(({ file }) => file === PENNY)?.text ?? '';
    expect(text).toContain(to);
    expect({ schema: accepts('piece', factsIn(PENNY, text)), check: problemsOf(now).length === 0 }).toEqual({
      schema,
      check,
    });
  });
});
