import { describe, expect, test } from 'vitest';
import { toldByReverse } from '../../../../src/site/models/shared/telling-face.ts';
import { wholeCabinet } from '../../whole-cabinet.ts';

// The designs and legends of the demo's pieces are those of published types; that pence of one king are distinguished by the
// mint on the reverse is common practice of every printed catalogue.
const { listed } = await wholeCabinet('content');
const among = (...ids: readonly string[]): readonly string[] =>
  [...toldByReverse(listed.filter(({ id }) => ids.includes(id)))].map(({ id }) => id).sort();

describe('on a board', () => {
  test('pence of one king and design show their mints', () => {
    expect(among('edward-i-london-penny', 'edward-i-bristol-penny', 'edward-i-chester-penny')).toEqual([
      'edward-i-bristol-penny',
      'edward-i-chester-penny',
      'edward-i-london-penny',
    ]);
  });

  test('pieces whose reverse is the same too keep their obverse', () => {
    expect(among('york-penny-3b', 'york-penny-9b')).toEqual([]);
    expect(among('william-iii-sixpence', 'william-iii-sixpence-second', 'william-iii-sixpence-cleaned')).toEqual([]);
  });

  test('a piece alone of its obverse keeps it, whatever is next to it', () => {
    expect(among('edward-i-london-penny', 'edward-i-counterfeit', 'henry-vi-york-penny', 'lead-token')).toEqual([]);
    // With the sword and without it: the obverse is what tells.
    expect(among('st-peter-sword', 'st-peter-swordless')).toEqual([]);
    expect(among('severus-denarius', 'caracalla-denarius', 'vespasian-denarius')).toEqual([]);
  });
});
