import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatWeight, parseWeight, weightSpan } from '../../../src/core/measures/parse-weight.ts';
import type { Weight } from '../../../src/core/measures/parse-weight.ts';
import { WEIGHT_UNITS } from '../../../src/core/measures/units.ts';
import type { WeightUnit } from '../../../src/core/measures/units.ts';
import { schedule1870, weightDefinitions } from '../../published/unit-definitions.ts';
import { pennyStandards } from '../../published/penny-standards.ts';

function weightOf(text: string): Weight {
  const outcome = parseWeight(text);
  if (!outcome.ok) throw new Error(outcome.problem);
  return outcome.value;
}

describe('weights agree with the definitions of the units', () => {
  test.for(weightDefinitions)('$write is $grams g ($source)', ({ write, grams }) => {
    expect(Math.abs(weightOf(write).grams - grams)).toBeLessThan(1e-10 * grams + 1e-12);
  });

  test.for(schedule1870)('$coin: $grains grains are $grams g ($source)', ({ grains, grams }) => {
    expect(weightOf(`${grains} grains`).grams).toBeCloseTo(grams, 3);
    expect(Math.abs(weightOf(`${grains} grains`).grams - grams)).toBeLessThan(0.0001);
  });

  test.for(pennyStandards)('a penny of $grains weighs $grams g ($source)', ({ grains, grams }) => {
    expect(Math.abs(weightOf(grains).grams - grams)).toBeLessThan(0.00006);
  });
});

describe('a weight says how near it is', () => {
  test.for([
    ['1.38 g', null],
    ['1.38 g ± 0.01', 0.01],
    ['1.38 ± 0.01 g', 0.01],
    ['1.38 g +/- 0.01 g', 0.01],
    ['21.3 grains ± 0.1', 0.006479891],
    ['1.42/1.45 g', 0.015],
    ['1.42–1.45 g', 0.015],
  ] as const)('%s → ± %s g', ([text, plusMinus]) => {
    const weight = weightOf(text);
    if (plusMinus === null) expect(weight.plusMinus).toBeNull();
    else expect(weight.plusMinus).toBeCloseTo(plusMinus, 9);
    const { low, high } = weightSpan(weight);
    expect(low).toBeLessThanOrEqual(high);
  });

  test('the ends of a range are kept', () => {
    expect(weightSpan(weightOf('1.42/1.45 g'))).toEqual({
      low: expect.closeTo(1.42, 9) as number,
      high: expect.closeTo(1.45, 9) as number,
    });
  });
});

describe('what can be read two ways asks', () => {
  test.for([
    ['1 oz', 'which ounce'],
    ['0.5 ounces', 'which ounce'],
    ['1,380 g', 'two ways'],
    ['1.38', 'no unit'],
    ['c. 1.4 g', 'how near'],
    ['about 21 grains', 'how near'],
    ['1.38 g (22.3 gr)', 'Write the one that is right'],
    ['1.45-1.42 g', 'heavy to light'],
    ['0 g', 'weighs nothing'],
    ['18 g ± 20', 'no weight at its low end'],
    ['5 g 3', 'not a weight'],
    ['2 grains 1 dwt', 'not a weight'],
    ['-1 g', 'not a weight'],
    ['1e5 g', 'not a weight'],
    ['light', 'not a weight'],
    ['', 'not a weight'],
  ] as const)('%s: %s', ([text, because]) => {
    const outcome = parseWeight(text);
    expect(outcome.ok).toBe(false);
    expect(outcome.ok ? '' : outcome.problem).toContain(because);
  });

  test('an ounce beside pennyweights can only be troy', () => {
    expect(weightOf('1 oz 2 dwt').grams).toBeCloseTo(34.21382448, 9);
  });

  test('a weight given twice is read when the two agree as far as the rougher goes', () => {
    expect(weightOf('1.38 g (21.3 gr)').grams).toBe(1.38);
    expect(parseWeight('1 oz t 2 g').ok).toBe(false);
  });
});

const UNITS = Object.keys(WEIGHT_UNITS) as readonly WeightUnit[];
const written = fc.record({
  whole: fc.integer({ min: 0, max: 9999 }),
  after: fc.integer({ min: 1, max: 9999 }),
  unit: fc.constantFrom(...UNITS),
});

describe('there and back', () => {
  test('what is written is read, and what is printed is read back the same', () => {
    fc.assert(
      fc.property(written, fc.option(fc.integer({ min: 1, max: 9 })), ({ whole, after, unit }, off) => {
        const text = `${whole + 1}.${String(after).padStart(4, '0')} ${WEIGHT_UNITS[unit].sign}${off === null ? '' : ` ± 0.00${off}`}`;
        const weight = weightOf(text);
        const again = weightOf(formatWeight(weight));
        expect({ ...again, text }).toEqual({
          ...weight,
          plusMinus: weight.plusMinus === null ? null : (expect.closeTo(weight.plusMinus, 9) as number),
        });
      }),
    );
  });

  test('ranges come back with the same ends, to a ten-thousandth of the unit', () => {
    fc.assert(
      fc.property(written, fc.integer({ min: 0, max: 999 }), ({ whole, after, unit }, wider) => {
        const [low, high] = [whole + 1 + after / 10000, whole + 1 + (after + wider) / 10000];
        const weight = weightOf(`${low.toFixed(4)}/${high.toFixed(4)} ${WEIGHT_UNITS[unit].sign}`);
        const again = weightOf(formatWeight(weight));
        const slack = 0.0001 * WEIGHT_UNITS[unit].perUnit;
        expect(Math.abs(weightSpan(again).low - weightSpan(weight).low)).toBeLessThanOrEqual(slack);
        expect(Math.abs(weightSpan(again).high - weightSpan(weight).high)).toBeLessThanOrEqual(slack);
      }),
    );
  });

  test('a weight carried through every unit and home again closes within four units of the last place', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-3, max: 1e6, noNaN: true }),
        fc.array(fc.constantFrom(...UNITS), { maxLength: 8 }),
        (grams, route) => {
          const home = route.reduce(
            (carried, unit) => (carried / WEIGHT_UNITS[unit].perUnit) * WEIGHT_UNITS[unit].perUnit,
            grams,
          );
          expect(Math.abs(home - grams)).toBeLessThanOrEqual(4 * (route.length + 1) * Number.EPSILON * grams);
        },
      ),
    );
  });
});
