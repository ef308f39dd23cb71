import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clashOf, clashWithin } from '../../../src/core/sets/clash.ts';
import { fits } from '../../../src/core/sets/fits.ts';
import type { Where } from '../../../src/core/sets/set-rule.ts';
import { LISTS, penny, rule } from './pieces.ts';
import { tries } from '../../tries.ts';

const MINTS = ['london', 'york'];
const METALS = ['silver', 'gold'];

const values = (all: readonly string[]) => fc.option(fc.subarray([...all], { minLength: 1 }), { nil: undefined });
const date = fc.option(
  fc.constantFrom({ low: 1200, high: 1250 }, { low: 1240, high: 1300 }, { low: 1280, high: 1280 }),
  { nil: undefined },
);
const where: fc.Arbitrary<Where> = fc.record({
  mint: values(MINTS),
  metal: values(METALS),
  date,
  not: fc.option(fc.record({ mint: values(MINTS), metal: values(METALS) }), { nil: undefined }),
});

/** Every piece of the small world in which those rules are asked. */
const PIECES = MINTS.flatMap((mint) =>
  METALS.flatMap((metal) =>
    [1200, 1245, 1280, 1300].map((year) =>
      penny(`${mint}-${metal}-${String(year)}`, { mint, metal, interval: { low: year, high: year } }),
    ),
  ),
);

function anyFits(set: Where, place: Where): boolean {
  const of = rule({ where: set });
  const here = { id: 'place', label: 'Place', where: place };
  return PIECES.some((piece) => fits(piece, here, of, LISTS).level !== 'no');
}

describe('a place that nothing can fill', () => {
  test('is told only where no piece of the whole small world fits it', () => {
    let told = 0;
    fc.assert(
      fc.property(where, where, (set, place) => {
        const clash = clashOf(set, place) ?? clashWithin(place);
        if (clash === null) return;
        told += 1;
        expect(clash).toMatch(/Change one of the two\.$/);
        expect(anyFits(set, place)).toBe(false);
      }),
      { numRuns: tries(500) },
    );
    expect(told).toBeGreaterThan(0.1 * tries(500));
  });

  test.for([
    ['two mints', { mint: ['london'] }, { mint: ['york'] }],
    ['two ages', { date: { low: 1200, high: 1250 } }, { date: { low: 1280, high: 1280 } }],
    ['what the set shuts out', { not: { mint: ['york'] } }, { mint: ['york'] }],
    ['what the place shuts out', { mint: ['york'] }, { not: { mint: ['york'] } }],
  ] as const)('%s are told', ([, set, place]) => {
    expect(anyFits(set, place)).toBe(false);
    expect(clashOf(set, place)).not.toBeNull();
  });

  test('a mint spelt another way is no other mint', () => {
    expect(clashOf({ mint: ['Bury St Edmunds'] }, { mint: ['bury-st-edmunds'] })).toBeNull();
  });
});
