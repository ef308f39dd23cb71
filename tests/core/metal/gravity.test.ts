import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ALLOYS, densityOf, finenessOf, parseGravity, readAlloy } from '../../../src/core/metal/specific-gravity.ts';
import type { Alloy, Gravity } from '../../../src/core/metal/specific-gravity.ts';
import { measuredDensities } from '../../published/gravity-tables.ts';

function alloyCalled(id: string): Alloy {
  const alloy = readAlloy(id);
  if (alloy === null) throw new Error(id);
  return alloy;
}

function gravityOf(air: string, water: string, alloy?: string): Gravity {
  const outcome = parseGravity(air, water, alloy);
  if (!outcome.ok) throw new Error(outcome.problem);
  return outcome.value;
}

describe('the formula agrees with measured alloys', () => {
  test.for(measuredDensities)(
    '$alloy of density $density is $fineness fine ($source)',
    ({ alloy, fineness, density, within }) => {
      const found = finenessOf(alloyCalled(alloy), { low: density, high: density });
      expect(Math.abs((found?.low ?? -1) - fineness)).toBeLessThanOrEqual(within + 1e-9);
    },
  );
});

describe('weighing in water', () => {
  test('an eight-reales of 26.922 g that weighs 24.283 g in water is 10.20 and .834 fine (published discussion; about 840)', () => {
    const { specificGravity, fineness, alloy } = gravityOf('26.922 g', '24.283 g');
    expect(alloy.id).toBe('silver-copper');
    expect((specificGravity.low + specificGravity.high) / 2).toBeCloseTo(10.2, 2);
    expect(fineness?.low).toBeLessThan(0.834);
    expect(fineness?.high).toBeGreaterThan(0.834);
    // The linear formula of old handbooks gives .810, which must lie outside.
    expect(fineness?.low).toBeGreaterThan(0.81);
  });

  test('a rougher scale gives a wider interval that holds the finer one', () => {
    const [rough, fine] = [
      gravityOf('26.9', '24.3', 'silver').fineness,
      gravityOf('26.92', '24.28', 'silver').fineness,
    ];
    expect(rough?.low ?? 1).toBeLessThan(fine?.low ?? 0);
    expect(rough?.high ?? 0).toBeGreaterThan(fine?.high ?? 1);
  });

  test('a stated precision is used in place of the last figure', () => {
    const { specificGravity } = gravityOf('26.922 g ± 0.01', '24.283 g ± 0.01');
    expect(specificGravity.low).toBeCloseTo(26.932 / 2.659, 9);
    expect(specificGravity.high).toBeCloseTo(26.912 / 2.619, 9);
  });

  test('what is assumed is said, and so is a guessed alloy', () => {
    expect(gravityOf('26.922', '24.283').assumed.join(' ')).toMatch(/No alloy was named.*lift of the air is left out/);
    expect(gravityOf('26.922', '24.283', 'silver and copper').assumed[0]).toContain(
      'silver and copper and nothing else',
    );
  });

  test('a density that no share of the two metals has gives no fineness', () => {
    const lead = gravityOf('11.34', '10.34', 'silver and copper');
    expect(lead.fineness).toBeNull();
    expect(lead.assumed.join(' ')).toContain('lies outside');
  });

  test.for([
    ['24', '26', undefined, 'in water than in air'],
    ['26.9', '26.8', undefined, 'too rough'],
    ['26.922', '24.283', 'unobtainium', 'not known here'],
    ['heavy', '24.283', undefined, 'not a weight'],
  ] as const)('%s, %s, %s: %s', ([air, water, alloy, because]) => {
    const outcome = parseGravity(air, water, alloy);
    expect(outcome.ok ? '' : outcome.problem).toContain(because);
  });

  test('a fineness is told with what weighing in water cannot tell: plating, a third metal, hollows, a forger', () => {
    const told = (alloy: string): string => {
      const read = parseGravity('26.922 g', '24.283 g', alloy);
      return read.ok ? read.value.assumed.join(' ') : read.problem;
    };
    expect(told('silver and copper')).toMatch(/lead.*plated.*hollow.*forger/);
    expect(told('gold and silver')).toMatch(/no share of the two has it\.$/);
  });
});

describe('there and back', () => {
  test('the density of a fineness gives the fineness again', () => {
    fc.assert(
      fc.property(fc.constantFrom(...ALLOYS), fc.double({ min: 0.001, max: 0.999, noNaN: true }), (alloy, fineness) => {
        const density = densityOf(alloy, fineness);
        expect(finenessOf(alloy, { low: density, high: density })?.low).toBeCloseTo(fineness, 9);
      }),
    );
  });

  test('two true weighings give an interval that holds the true fineness', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...ALLOYS),
        fc.double({ min: 0.05, max: 0.95, noNaN: true }),
        fc.double({ min: 2, max: 60, noNaN: true }),
        (alloy, fineness, mass) => {
          const water = mass - mass / densityOf(alloy, fineness);
          const span = gravityOf(mass.toFixed(3), water.toFixed(3), alloy.id).fineness;
          expect(span?.low).toBeLessThanOrEqual(fineness + 1e-9);
          expect(span?.high).toBeGreaterThanOrEqual(fineness - 1e-9);
        },
      ),
    );
  });
});
