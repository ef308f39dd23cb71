import Papa from 'papaparse';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Cabinet } from '../../../../src/site/cabinet.ts';
import { pieceFacts, pieceTable, setRecords } from '../../../../src/site/models/open-data/records.ts';
import { wholeCabinet } from '../../whole-cabinet.ts';

let demo: Cabinet;
let marked: Cabinet;

beforeAll(async () => {
  demo = await wholeCabinet('content');
  marked = await wholeCabinet('tests/cabinets/marked');
});

describe('pieces.json', () => {
  test('holds the listed pieces and no other', () => {
    expect(pieceFacts(marked).map(({ id }) => id)).toEqual(['plain-penny', 'old-medal']);
  });

  test('gives every piece an absolute address', () => {
    expect(pieceFacts(demo)[0]?.['address']).toMatch(/^https:\/\/example\.org\/pieces\/[a-z0-9-]+\/$/);
  });

  test('keeps an inventory number as it was written', () => {
    const penny = pieceFacts(demo).find(({ id }) => id === 'aethelred-crux-penny') ?? pieceFacts(demo)[0];
    expect(typeof penny?.['number']).toBe('string');
  });

  test('is the same after it has been written and read', () => {
    const facts = pieceFacts(demo);
    expect(JSON.parse(JSON.stringify(facts))).toEqual(facts);
  });
});

describe('pieces.csv, read again by papaparse', () => {
  const rows = (text: string): readonly Readonly<Record<string, string>>[] =>
    Papa.parse<Record<string, string>>(text.replace(/^\uFEFF/, ''), { header: true, skipEmptyLines: true }).data;

  test('has one row a listed piece, in the same order', () => {
    expect(rows(pieceTable(demo)).map((row) => row['id'])).toEqual(pieceFacts(demo).map(({ id }) => id));
  });

  test.for(['number', 'title', 'kind', 'date', 'metal', 'weight', 'axis', 'gradeAsGiven', 'address'])(
    '%s is the same as in pieces.json',
    (field) => {
      const told = pieceFacts(demo).map((piece) => piece[field] ?? '');
      expect(rows(pieceTable(demo)).map((row) => row[field])).toEqual(told);
    },
  );

  // A legend that begins with a cross would be a formula to a spreadsheet; OWASP, "CSV Injection": an apostrophe before it.
  test('legends come back letter for letter, and those that begin with a cross behind an apostrophe', () => {
    const legend = (piece: { readonly [field: string]: unknown }): unknown =>
      (piece['obverse'] as { readonly legend?: string } | undefined)?.legend ?? '';
    expect(rows(pieceTable(demo)).map((row) => row['obverse legend'])).toEqual(
      pieceFacts(demo).map((piece) => String(legend(piece)).replace(/^(?=[+=@-].)/, "'")),
    );
    expect(pieceFacts(demo).some((piece) => /^\+/.test(String(legend(piece))))).toBe(true);
  });

  test('several values in a cell are separated by a semicolon', () => {
    const references = pieceFacts(demo).map((piece) => ((piece['references'] ?? []) as readonly string[]).join('; '));
    expect(references.some((cell) => cell.includes('; '))).toBe(true);
    expect(rows(pieceTable(demo)).map((row) => row['references'])).toEqual(references);
  });

  // RFC 4180 §2: lines end with CRLF; every line has as many fields; quotation marks inside a field are doubled.
  test('keeps RFC 4180: CRLF, and as many fields in every record', () => {
    const text = pieceTable(demo);
    expect(text.endsWith('\r\n')).toBe(true);
    const { data, errors } = Papa.parse<string[]>(text.slice(1), { newline: '\r\n', skipEmptyLines: true });
    expect(errors).toEqual([]);
    expect(new Set(data.map((record) => record.length)).size).toBe(1);
  });
});

describe('sets/<id>.json', () => {
  test('has the fields that were promised', () => {
    for (const set of setRecords(demo)) {
      expect(Object.keys(set)).toEqual(
        expect.arrayContaining(['id', 'title', 'of', 'filled', 'places', 'spares', 'upgrades']),
      );
      expect(set.filled.low).toBeLessThanOrEqual(set.filled.high);
      expect(set.filled.high).toBeLessThanOrEqual(set.of);
      expect(set.places).toHaveLength(set.of + set.excused);
    }
  });

  test('counts no unlisted and no hidden piece', () => {
    expect(setRecords(marked)[0]).toMatchObject({ id: 'plain-set', of: 2, filled: { low: 1, high: 1 } });
    expect(JSON.stringify(setRecords(marked))).not.toMatch(/unlisted-groat|hidden-noble/);
  });

  test('names only pieces that are in pieces.json', () => {
    const listed = new Set(pieceFacts(demo).map(({ id }) => id));
    const named = setRecords(demo).flatMap(({ places, spares, upgrades, leftOut }) => [
      ...places.flatMap(({ piece, others }) => [...(piece === undefined ? [] : [piece]), ...(others ?? [])]),
      ...spares.map(({ piece }) => piece),
      ...leftOut.map(({ piece }) => piece),
      ...upgrades.flatMap(({ from, to }) => [from, to]),
    ]);
    expect(named.length).toBeGreaterThan(20);
    expect(named.filter((id) => !listed.has(id))).toEqual([]);
  });
});
