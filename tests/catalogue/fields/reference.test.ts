import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { z } from 'zod';
import { readCsv } from '../../../src/catalogue/csv.ts';
import { EVIDENCE } from '../../../src/catalogue/fields/piece-parts.ts';
import { PIECE_ROWS } from '../../../src/catalogue/fields/piece-fields.ts';
import { fieldsAsLines, partsAsLines } from '../../../src/catalogue/fields/reference.ts';
import type { FieldFacts } from '../../../src/catalogue/fields/row.ts';
import { LIFE_COLUMNS } from '../../../src/catalogue/life-file.ts';
import { readForm } from '../../../src/catalogue/read-fields.ts';
import { LEDGER_COLUMNS } from '../../../src/catalogue/fields/ledger-columns.ts';
import { cabinetSchema, GUIDE_COLUMNS } from '../../../src/catalogue/schema/cabinet.ts';
import { exhibitSchema } from '../../../src/catalogue/schema/exhibit.ts';
import { eraSchema, setSchema } from '../../../src/catalogue/schema/sets-and-eras.ts';
import { denominationSchema, mintSchema, rulerSchema, workSchema } from '../../../src/catalogue/schema/lists.ts';
import { seriesSchema } from '../../../src/catalogue/schema/series.ts';
import { pieceSchema } from '../../../src/catalogue/schema/piece.ts';
import { pieceWords } from '../../../src/site/words/piece.ts';
import { filesOfNewCabinet } from '../../../src/commands/begin/new-cabinet.ts';

const REFERENCE = 'content/README.md';
const reference = await readFile(REFERENCE, 'utf8');

/** The part of the reference under a heading. */
function under(heading: string): string {
  const from = reference.indexOf(`\n## ${heading}\n`);
  const to = reference.indexOf('\n## ', from + 1);
  return reference.slice(from, to === -1 ? undefined : to);
}

/** Its indented blocks. */
function blocksOf(text: string): readonly string[] {
  return [...text.matchAll(/(?:^ {4}.*\n?)+/gm)].map(([block]) => block.replace(/^ {4}/gm, ''));
}

test('the reference of a piece is what the table of fields says (npx vitest -u writes it anew)', async () => {
  const piece = under('A piece');
  const lines = fieldsAsLines(PIECE_ROWS).map((line) => `    ${line}`);
  const fresh = piece
    .replace(/(?:^ {4}.*\n)+/m, () => `${lines.join('\n')}\n`)
    .replace(/(?:^- .*\n)+/m, () => `${partsAsLines(PIECE_ROWS).join('\n')}\n`);
  await expect(reference.replace(piece, () => fresh)).toMatchFileSnapshot(join('../../..', REFERENCE));
});

const SCHEMAS: readonly (readonly [heading: string, schema: z.ZodType])[] = [
  ['A piece', pieceSchema()],
  ['A set', setSchema],
  ['A series of types', seriesSchema],
  ['An era scheme', eraSchema],
  ['An exhibit', exhibitSchema],
  ['A ruler', rulerSchema],
  ['A mint', mintSchema],
  ['A denomination', denominationSchema],
  ['A book', workSchema],
  ['The cabinet', cabinetSchema],
];

describe.for(SCHEMAS)('the reference of %s', ([heading, schema]) => {
  const [block = ''] = blocksOf(under(heading));
  test('can be copied as it stands: the program reads it without a problem', () => {
    expect(block).not.toBe('');
    expect(readForm(schema, block, REFERENCE).problems).toEqual([]);
  });
  test('leaves no field out', () => {
    for (const name of namesIn(schema)) expect.soft(under(heading), name).toMatch(new RegExp(`\\b${name}\\b`));
  });
});

test('the whole piece that the reference begins with is read without a problem', () => {
  const [block = ''] = blocksOf(under('A whole piece'));
  const [, fields = ''] = /^---\n(.*?)^---$/ms.exec(block) ?? [];
  expect(Object.keys(readForm(pieceSchema(), fields, REFERENCE).fields ?? {}).length).toBeGreaterThan(12);
  expect(readForm(pieceSchema(), fields, REFERENCE).problems).toEqual([]);
});

test('the reference says which lines take a list, and gives every choice of the parts', () => {
  const [before = ''] = under('A piece').split('\n    number:');
  for (const [name, { control, several }] of Object.entries<FieldFacts>(PIECE_ROWS))
    expect.soft([name, before.includes(`\`${name}\``)]).toEqual([name, ['lines', 'rows'].includes(control) || several === true || ['number', 'title', 'kind'].includes(name)]); // prettier-ignore
  for (const evidence of EVIDENCE) expect.soft(under('A piece')).toContain(evidence);
});

// Of a way that the words of the site do not know, they say the word as it was given.
test('every way in which a piece passes that the reference names is one that the pages can say', () => {
  const [, ways = ''] = /`how` \(([^)]*), or a word of your own\)/.exec(under('A piece')) ?? [];
  expect(ways.split(', ').length).toBeGreaterThan(9);
  for (const how of ways.split(', ')) expect.soft(pieceWords.passage(how, { to: 'B' })).not.toBe(`${how} to B`);
});

test('the reference names every column of the private tables', () => {
  const tables = blocksOf(under('What never leaves: the ledger and the guide')).map((block) => readCsv(block));
  expect(tables.map(({ headings }) => headings)).toEqual([LEDGER_COLUMNS, LIFE_COLUMNS, GUIDE_COLUMNS]);
});

test('begin puts the reference into each new cabinet', async () => {
  const files = await filesOfNewCabinet({
    title: 'My cabinet',
    keeper: 'A. N. Other',
    language: 'en',
    currency: 'GBP',
    address: null,
    withLists: false,
  });
  expect(files.find(({ file }) => file === 'README.md')?.text).toBe(reference);
});

/** The names of every field of a schema, and of the fields in its fields. */
function namesIn(schema: z.core.$ZodType, seen = new Set<unknown>()): readonly string[] {
  if (seen.has(schema)) return [];
  seen.add(schema);
  const def = schema._zod.def as {
    shape?: Readonly<Record<string, z.core.$ZodType>>;
    innerType?: z.core.$ZodType;
    in?: z.core.$ZodType;
    element?: z.core.$ZodType;
    valueType?: z.core.$ZodType;
    options?: readonly z.core.$ZodType[];
  };
  const inner = [def.innerType, def.in, def.element, def.valueType, ...(def.options ?? [])];
  return [
    ...Object.entries(def.shape ?? {}).flatMap(([name, one]) => [name, ...namesIn(one, seen)]),
    ...inner.flatMap((one) => (one === undefined ? [] : namesIn(one, seen))),
  ];
}
