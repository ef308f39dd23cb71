import { expect, test } from 'vitest';
import { factRows } from '../../../src/site/islands/compare/lay-facts.ts';
import type { ComparedFact, ComparedPiece } from '../../../src/site/compare/record.ts';

const face = { alt: '', wide: '', millimetres: 20, tall: '', look: '', says: '' };
const piece = (id: string, facts: readonly ComparedFact[]): ComparedPiece => ({
  id, to: '', title: id, line: '', faces: { obverse: face, reverse: face }, turn: null, facts,
}); // prettier-ignore
const grams = (value: number): ComparedFact => ({ name: 'Weight', text: `${value} g`, measure: { value, unit: 'g' } });

test('every fact has one row, where the first that tells it has it', () => {
  const one = piece('one', [{ name: 'Mint', text: 'York' }, grams(1.4)]);
  const other = piece('other', [
    { name: 'Mint', text: 'York' },
    { name: 'Dated', text: '1696' },
    grams(1.3),
    { name: 'Edge', text: 'plain' },
  ]);
  expect(factRows([one, other]).map(({ name }) => name)).toEqual(['Mint', 'Dated', 'Weight', 'Edge']);
});

test('two that tell otherwise differ; one that tells nothing may be alike; the rest is', () => {
  const rows = factRows([
    piece('one', [{ name: 'Mint', text: 'York' }, { name: 'Dated', text: '1696' }, { name: 'Kind', text: 'Coin' }]),
    piece('other', [{ name: 'Mint', text: 'Bristol' }, { name: 'Kind', text: 'Coin' }]),
  ]); // prettier-ignore
  expect(rows.map(({ name, how }) => [name, how])).toEqual([
    ['Mint', 'differs'],
    ['Dated', 'partly'],
    ['Kind', 'alike'],
  ]);
  expect(rows[1]?.cells[1]).toBeNull();
});

test('a weight tells how much more it is than the first, without the dust of binary fractions', () => {
  // 2.98 - 2.91 in floating point is 0.06999999999999984.
  const [row] = factRows([piece('one', [grams(2.98)]), piece('other', [grams(2.91)]), piece('third', [grams(2.98)])]);
  expect(row?.cells.map((cell) => cell?.more ?? null)).toEqual([null, { by: -0.07, unit: 'g' }, null]);
});
