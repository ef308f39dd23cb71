import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findLegends, matchMask } from '../../../src/core/legends/match-mask.ts';
import { naiveAt, naiveWeight } from './naive-mask.ts';
import { tries } from '../../tries.ts';

const letters = (...of: string[]) => fc.string({ unit: fc.constantFrom(...of), maxLength: 9 });

describe('A worn stretch is found', () => {
  test.for([
    ['EBO', 'CIVI TAS EBO RACI', 7],
    ['E?O', 'CIVI TAS EBO RACI', 7],
    ['RACICIVI', 'CIVI TAS EBO RACI', 10],
    ['TAS*RA', 'CIVI TAS EBO RACI', 4],
    ['*RACI*', 'CIVI TAS EBO RACI', 10],
    ['eboraci', 'CIVITAS EBORACI', 7],
    ['REX…ANGL', 'EDWARDVS REX ANGLI', 9],
    ['EADWARD', 'EADÞARD REX', 0],
    ['EADWARD', 'EADPARD REX', 0],
    ['THOR', '+ÞOR ON EOFER', 0],
    ['ED?ARD', 'EDWARD REX', 0],
    ['SI?NCE', 'SI[LE]NCE', null],
    ['SI??NCE', 'SI[LE]NCE', 0],
    ['محمد', 'رسول الله محمد', 8],
    ['TOLFM', '+[…]OLF M-O', 0],
    ['OLFM', '+[…]OLF M-O', 1],
    ['THOROLF', '+[…]OLF M-O', null],
    ['LONDON', 'CIVI TAS EBO RACI', null],
    ['RACICIVITASEBOR', 'CIVI TAS EBO RACI', null],
  ] as const)('%s on %s, from letter %s', ([mask, legend, at]) => {
    expect(matchMask(mask, legend)).toMatchObject({ matches: at !== null, at });
  });

  test('nothing answers a mask that asks nothing, and no mask fits a face without letters', () => {
    for (const mask of ['', '*', '…', '+', ' '])
      expect(matchMask(mask, 'REX')).toEqual({ matches: false, at: null, score: 0 });
    expect(matchMask('REX', '+ · +')).toEqual({ matches: false, at: null, score: 0 });
  });

  test('the legend it is the greater part of comes first, and cut letters before restored ones', () => {
    const found = findLegends('EBORACI', [
      { id: 'groat', legend: 'POSVI DEVM ADIVTOREM MEVM, CIVITAS EBORACI' },
      { id: 'london', legend: 'CIVITAS LONDON' },
      { id: 'worn', legend: 'CIVITAS EB[ORACI]' },
      { id: 'penny', legend: 'CIVITAS EBORACI' },
    ]);
    expect(found.map(({ id }) => id)).toEqual(['penny', 'worn', 'groat']);
  });
});

test('it agrees with the plainest search, on any rim', () => {
  fc.assert(
    fc.property(
      letters('A', 'B', 'C', '?', '*'),
      letters('A', 'B', 'C').filter((ring) => ring !== ''),
      (mask, ring) => {
        expect(matchMask(mask, ring).at).toBe(naiveAt(mask, ring));
      },
    ),
    { numRuns: tries(5000) },
  );
});

test('with losses in the legend it agrees with trying everything', () => {
  fc.assert(
    fc.property(
      letters('A', 'B', '?', '*'),
      letters('A', 'B', '…').filter((ring) => ring !== ''),
      (written, legend) => {
        const mask = written.replace(/^\*+|\*+$/g, '').replace(/\*+/g, '*');
        const asked = mask.replace(/[?*]/g, '').length;
        const best = Array.from(legend, (letter, at) => {
          // A mask never begins in a loss it does not use: its first sign is lost there, then the rest may follow.
          const opened = legend.slice(at) + legend.slice(0, at);
          return letter === '…' ? naiveWeight(mask.slice(1), opened) : naiveWeight(mask, opened);
        });
        expect(matchMask(written, legend).matches).toBe(
          mask !== '' && Math.max(...best) >= 0 && Math.max(...best) * 2 >= asked,
        );
      },
    ),
    { numRuns: tries(3000) },
  );
});

test('turning a ring turns the answer with it', () => {
  fc.assert(
    fc.property(
      letters('A', 'B', 'C', '?', '*'),
      letters('A', 'B', 'C', 'W').filter((ring) => ring !== ''),
      fc.nat(8),
      (mask, ring, turn) => {
        const by = turn % ring.length;
        expect(matchMask(mask, ring.slice(by) + ring.slice(0, by)).matches).toBe(matchMask(mask, ring).matches);
      },
    ),
  );
});

test('twelve signs on forty letters take well under a millisecond', () => {
  const begin = performance.now();
  for (let i = 0; i < 500; i += 1) matchMask('A?G*E?BO*RAX', 'EDWARDVS DEI GRATIA REX ANGLIE ET FRANCIE DNS HI');
  expect((performance.now() - begin) / 500).toBeLessThan(1);
});
