import { beforeAll, describe, expect, test } from 'vitest';
import { publicFacts } from '../../src/publish/public-facts.ts';
import type { PublicPiece } from '../../src/publish/public-piece.ts';
import { wholeCabinet } from '../site/whole-cabinet.ts';

let pieces: readonly PublicPiece[] = [];
beforeAll(async () => {
  pieces = (await wholeCabinet('content')).listed;
});
const piece = (id: string): PublicPiece => pieces.find((one) => one.id === id) ?? expect.fail(`no piece ${id}`);
const facts = (one: PublicPiece) => publicFacts(one, `https://example.org/pieces/${one.id}/`);

describe('the public facts of a piece', () => {
  // What content/pieces/york-penny-3b/piece.md records; 1 year astronomical is AD 1 (ISO 8601).
  test('are the keeper’s words, with what was computed from them', () => {
    expect(facts(piece('york-penny-3b'))).toMatchObject({
      id: 'york-penny-3b',
      number: '0142',
      ruler: ['edward-i'],
      mint: 'york',
      date: '1280/1281',
      weight: '1.38 g ± 0.01',
      axis: '6h',
      references: ['north 1017'],
      dating: { earliest: 1280, latest: 1281 },
    });
  });

  test('keep the three blanks apart: not recorded is left out, unknown and none are said', () => {
    const blank = { ...piece('york-penny-3b'), mint: 'unknown', date: 'none', weight: null } as const;
    const told = facts(blank);
    expect(told).toMatchObject({ mint: 'unknown', date: 'none' });
    expect(Object.keys(told)).not.toContain('weight');
    for (const computed of ['edtf', 'dating']) expect(Object.keys(told)).not.toContain(computed);
  });

  test('hold nothing that is not a number, a text, a list or a plain object: what was written can be read back', () => {
    for (const one of pieces) expect(JSON.parse(JSON.stringify(facts(one)))).toEqual(facts(one));
  });

  test('have an interval for every grade and fine weight, never a single guess', () => {
    const told = pieces.map(facts);
    const spans = told.flatMap((one) => [one['grade'], one['fine']]).filter((span) => span !== undefined);
    expect(spans.length).toBeGreaterThan(30);
    for (const span of spans) {
      const { low, high } = span as { readonly low: number; readonly high: number };
      expect(low).toBeLessThanOrEqual(high);
    }
  });

  test('say where a piece falls under every scheme of periods', () => {
    const states = Object.values(
      facts(piece('york-penny-3b'))['eras'] as Readonly<Record<string, { readonly state: string }>>,
    );
    expect(states.length).toBeGreaterThan(1);
    for (const { state } of states) expect(['within', 'straddles', 'outside', 'unknown']).toContain(state);
  });

  test('leave out where a piece came from and where it was found', () => {
    const names = new Set(pieces.flatMap((one) => Object.keys(facts(one))));
    for (const kept of ['provenance', 'found', 'cost', 'seller', 'storage', 'story'])
      expect([...names]).not.toContain(kept);
  });
});
