import { describe, expect, test } from 'vitest';
import { pieceWords } from '../../../../src/site/words/piece.ts';

// How people say in English that a thing changed hands; common practice.
describe('A step of a provenance is a sentence a collector would say', () => {
  test.each([
    ['purchase', 'A', 'B', 'bought by B from A'],
    ['purchase', undefined, 'B', 'bought by B'],
    ['purchase', 'A', undefined, 'bought from A'],
    ['auction', 'A', 'B', 'sold at auction by A to B'],
    ['auction', 'A', undefined, 'sold at auction by A'],
    ['auction', undefined, 'B', 'bought at auction by B'],
    ['gift', 'A', 'B', 'given by A to B'],
    ['bequest', 'A', 'B', 'left by will by A to B'],
    ['inheritance', 'A', 'B', 'inherited by B from A'],
    ['exchange', 'A', 'B', 'got by exchange by B from A'],
    ['find', undefined, 'B', 'found by B'],
    ['loan', 'A', 'B', 'lent by A to B'],
    ['transfer to store', 'A', 'B', 'transfer to store from A to B'],
    ['constructor', 'A', 'B', 'constructor from A to B'],
    [undefined, 'A', 'B', 'from A to B'],
    ['purchase', undefined, undefined, 'bought'],
  ])('%s, from %s to %s: %s', (how, from, to, said) => {
    expect(pieceWords.passage(how, { from, to })).toBe(said);
  });
});
