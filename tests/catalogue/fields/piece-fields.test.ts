import { describe, expect, test } from 'vitest';
import type { z } from 'zod';
import { linkRecords } from '../../../src/catalogue/link.ts';
import { PIECE_ROWS, UNSURE_FIELDS } from '../../../src/catalogue/fields/piece-fields.ts';
import type { FieldFacts, PieceFacts, Rows } from '../../../src/catalogue/fields/row.ts';
import { readCabinet } from '../../../src/catalogue/read-cabinet.ts';
import { BLANKS } from '../../../src/catalogue/schema/fields.ts';
import { whereSchema } from '../../../src/catalogue/schema/sets-and-eras.ts';
import { pieceSchema } from '../../../src/catalogue/schema/piece.ts';
import { PIECE_ORDER } from '../../../src/catalogue/write/write-piece.ts';
import { readYaml } from '../../../src/catalogue/yaml.ts';
import { NEVER_INHERITED } from '../../../src/core/types/inherit.ts';
import { isOwnTable, ownReading } from '../../../src/import/columns/own-table.ts';
import { FIELDS, UNITS } from '../../../src/import/columns/targets.ts';
import { COLUMNS } from '../../../src/publish/pieces-csv.ts';
import { publicFacts } from '../../../src/publish/public-facts.ts';
import { publicPieces } from '../../../src/publish/public-piece.ts';
import { changed } from '../small-cabinet.ts';

type Row = PieceFacts & { readonly schema: z.ZodType; readonly print?: (value: never) => string };
const ROWS = Object.entries(PIECE_ROWS) as unknown as readonly (readonly [string, Row])[];
const schema = pieceSchema();

/** A value as the file says it after the colon of its field. */
function yamlOf(name: string, example: string): unknown {
  const read = readYaml(`${name}: ${example}`);
  return read.ok ? (read.value as Readonly<Record<string, unknown>>)[name] : expect.fail(`${name}: ${example}`);
}

/** Every row of a table and of the tables in it, with its path. */
function everyRow(rows: Rows, before = ''): readonly (readonly [string, FieldFacts & Rows[string]])[] {
  return Object.entries(rows).flatMap(([name, row]) => [
    [`${before}${name}`, row] as const,
    ...(row.parts === undefined ? [] : everyRow(row.parts as Rows, `${before}${name}.`)),
  ]);
}

describe('the table of the fields of a piece', () => {
  test('is the schema of a piece, in the order in which a file is written', () => {
    expect(Object.keys(schema.shape)).toEqual(Object.keys(PIECE_ROWS));
    expect(PIECE_ORDER).toEqual(Object.keys(PIECE_ROWS));
  });

  test.for(everyRow(PIECE_ROWS))(
    '%s has a label, a comment and an example that its own schema reads',
    ([path, row]) => {
      expect(row.label).toMatch(/^\p{Lu}/u);
      expect(row.says).toMatch(/[.…]$/);
      expect(row.schema.safeParse(yamlOf(path.split('.').at(-1) ?? '', row.example)).success).toBe(true);
    },
  );

  test.for(everyRow(PIECE_ROWS))(
    '%s takes what its control offers, and the blanks where the row says so',
    ([, row]) => {
      if (row.control === 'choice')
        for (const choice of row.choices ?? []) expect(row.schema.safeParse(choice).success).toBe(true);
      if (row.control === 'name') expect(row.list).toBeDefined();
      if (['parts', 'rows', 'each'].includes(row.control)) expect(row.parts).toBeDefined();
      // Plain words take every text, and an id may be called `none`: of those fields nothing can be asked.
      if (row.schema.safeParse('?').success || (row.control === 'name' && row.blanks !== true)) return;
      expect(BLANKS.every((blank) => row.schema.safeParse(blank).data === blank)).toBe(row.blanks === true);
    },
  );

  test.for(ROWS.filter(([, row]) => row.print !== undefined))(
    '%s is printed so that it reads as the same value',
    ([, row]) => {
      const value = row.schema.parse(row.example);
      const again = row.schema.parse(row.print?.(value as never));
      expect(withoutText(again)).toEqual(withoutText(value));
    },
  );

  test('says of each field whether a type can give it, as the core has it', () => {
    for (const [name, row] of ROWS) expect([name, row.inherited === true]).toEqual([name, !NEVER_INHERITED.has(name)]);
  });

  test('names what can be doubted, and what a set may ask for', () => {
    const doubted = ROWS.filter(([, row]) => row.doubted === true).map(([name]) => name);
    expect(doubted.sort()).toEqual([...UNSURE_FIELDS].sort());
    const asked = ROWS.flatMap(([, row]) => row.asked ?? []).sort();
    expect(asked).toEqual(
      Object.keys(whereSchema.shape)
        .filter((name) => name !== 'not')
        .sort(),
    );
  });

  test('gives each field the columns a spreadsheet may have for it, none of them twice', () => {
    expect(new Set(FIELDS).size).toBe(FIELDS.length);
    for (const target of Object.keys(UNITS)) expect(FIELDS).toContain(target);
  });
});

/** A piece with every field of the table, each holding its example. */
const full = ROWS.map(([name, row]) => `${name}: ${row.example}`).join('\n');
const lists = {
  'rulers/edward-i.yaml': 'name: Edward I',
  'rulers/john.yaml': 'name: John',
  'mints/york.yaml': 'name: York',
  'denominations/penny.yaml': 'name: Penny',
  'works/north.yaml': 'title: A book',
  'works/withers.yaml': 'title: Another book',
};
const catalogue = linkRecords(
  readCabinet(changed({ at: '', files: [] }, { ...lists, 'pieces/full/piece.md': `---\n${full}\n---\n` })).records,
);

describe('a piece with every field of the table', () => {
  const [piece] = publicPieces(catalogue);
  const facts = piece === undefined ? {} : publicFacts(piece, 'https://example.org/pieces/full/');

  test('is read without a problem', () => {
    expect(schema.safeParse((readYaml(full) as { value: unknown }).value).error?.issues ?? []).toEqual([]);
  });

  test.for(ROWS)('shows %s to those whom the table lets see it, and to nobody else', ([name, row]) => {
    const held = (piece as unknown as Readonly<Record<string, unknown>>)[row.shown ?? name];
    const fact = (facts as Readonly<Record<string, unknown>>)[row.fact ?? name];
    if (row.seen === 'no') expect([held, fact]).toEqual([undefined, undefined]);
    else {
      if (name !== 'photographs') expect(held).not.toBeOneOf([undefined, null, []]);
      expect(fact === undefined).toBe(row.seen === 'page');
    }
  });

  test('puts the same facts into the table that can be downloaded, and nothing of what is kept back', () => {
    const told = ROWS.filter(([, row]) => row.seen === 'data');
    expect(COLUMNS).toEqual([
      'id',
      ...told.flatMap(([name, row]) => row.columns ?? [row.fact ?? name]),
      'edtf',
      'address',
    ]);
    expect(JSON.stringify(facts)).not.toContain('about 1,4');
    expect(isOwnTable(COLUMNS)).toBe(true);
    for (const column of COLUMNS) expect(ownReading(column).kind).not.toBe('ledger');
  });
});

function withoutText(value: unknown): unknown {
  return typeof value === 'object' && value !== null ? { ...value, text: null } : value;
}
