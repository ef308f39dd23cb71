import { describe, expect, test, vi } from 'vitest';
import { relatedTo, worthComparing } from '../../../../src/site/models/compare/worth-comparing.ts';
import { wholeCabinet } from '../../whole-cabinet.ts';

const cabinet = await wholeCabinet('content');
const ids = (pieces: readonly { id: string }[]): readonly string[] => pieces.map(({ id }) => id);
const pieceOf = (id: string): (typeof cabinet.pieces)[number] => {
  const piece = cabinet.pieces.find((one) => one.id === id);
  if (piece === undefined) throw new Error(`The demo has no ${id}.`);
  return piece;
};

describe('what is worth laying side by side', () => {
  // The demo notes obverse die A on two sixpences of William III at York, and D on the third.
  test('sixpences from one die are told first, and the one from another die is not among them', () => {
    const [first] = worthComparing(cabinet.listed);
    expect(first?.because).toBe('die');
    expect(ids(first?.pieces ?? [])).toEqual(['william-iii-sixpence', 'william-iii-sixpence-second']);
    expect(ids(relatedTo(pieceOf('william-iii-sixpence'), cabinet.listed))[0]).toBe('william-iii-sixpence-second');
  });

  test('no unlisted piece is offered, whatever it shares', () => {
    const twin = { ...pieceOf('william-iii-sixpence'), id: 'twin', listed: false };
    const listed = [...cabinet.pieces, twin].filter((piece) => piece.listed);
    expect(ids(worthComparing(listed).flatMap(({ pieces }) => pieces))).not.toContain('twin');
    expect(ids(relatedTo(twin, listed))).toContain('william-iii-sixpence');
  });
});

describe('what is laid of a piece', async () => {
  // The page's own store of pieces is not there in a test; the cabinet is handed in.
  vi.doMock('astro:content', () => ({}));
  const { comparedOf } = await import('../../../../src/site/models/compare/record-of.ts');

  // The clock's own arithmetic: twelve hours are 360 degrees.
  test.for([
    ['york-penny-3b', 180],
    ['edward-i-durham-penny', 0],
    ['elizabeth-sixpence', 120],
    ['lead-token', null],
  ] as const)('%s turns by %d degrees', ([id, degrees]) => {
    expect(comparedOf(pieceOf(id), cabinet).turn).toBe(degrees);
  });

  test('tells weight and size as figures, and neither the value of its metal nor where it is now', () => {
    const { facts } = comparedOf(pieceOf('william-iii-sixpence'), cabinet);
    expect(facts).toContainEqual({ name: 'Weight', text: '2.98 g', measure: { value: 2.98, unit: 'g' } });
    expect(facts.map(({ name }) => name)).not.toContain('Value of its metal');
    expect(facts.map(({ name }) => name)).not.toContain('Now');
  });
});
