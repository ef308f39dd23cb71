import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fineMetal } from '../../../src/core/metal/fine-metal.ts';
import { formatFineness, parseFineness } from '../../../src/core/metal/parse-fineness.ts';
import type { Fineness } from '../../../src/core/metal/parse-fineness.ts';
import { parseWeight } from '../../../src/core/measures/parse-weight.ts';
import type { Weight } from '../../../src/core/measures/parse-weight.ts';
import { GRAIN } from '../../../src/core/measures/units.ts';
import { finenessStandards } from '../../published/fineness-standards.ts';
import { publishedMetal } from '../../published/metal-acts.ts';
import { commemoratives } from '../../published/metal-commemoratives.ts';
import { pennyStandards } from '../../published/penny-standards.ts';

function finenessOf(text: string): Fineness {
  const outcome = parseFineness(text);
  if (!outcome.ok) throw new Error(outcome.problem);
  return outcome.value;
}

function weightOf(text: string): Weight {
  const outcome = parseWeight(text);
  if (!outcome.ok) throw new Error(outcome.problem);
  return outcome.value;
}

describe('fineness agrees with print', () => {
  // Published figures are cut off as often as rounded: within one unit of the last printed figure.
  test.for(finenessStandards)('$write is $fineness ($source)', ({ write, fineness, figures }) => {
    const { low, high } = finenessOf(write);
    expect(low).toBe(high);
    expect(Math.abs(low - fineness)).toBeLessThanOrEqual(10 ** -figures + 1e-12);
  });

  test.for(commemoratives)('$alloy is $fineness ($gazette)', ({ alloy, fineness, weight, grams }) => {
    expect(finenessOf(alloy).low).toBe(fineness);
    expect(weightOf(weight).grams).toBe(grams);
  });
});

describe('fine metal agrees with the acts', () => {
  test.for(publishedMetal)(
    '$coin: $weight, $fineness fine, holds $fine $unit ($source)',
    ({ weight, fineness, fine, unit, within }) => {
      const { grams, troyOunces } = fineMetal(weightOf(weight), finenessOf(fineness));
      const held = { g: grams, gr: { low: grams.low / GRAIN, high: grams.high / GRAIN }, 'oz t': troyOunces }[unit];
      expect(Math.abs(held.low - fine)).toBeLessThanOrEqual(within);
      expect(held.low).toBe(held.high);
    },
  );

  test.for(pennyStandards)(
    'a penny of $from holds $fineGrams g of silver ($source)',
    ({ grains, fineness, fineGrams }) => {
      expect(Math.abs(fineMetal(weightOf(grains), finenessOf(fineness)).grams.low - fineGrams)).toBeLessThan(0.0001);
    },
  );

  test('the uncertainty of both is carried through', () => {
    const { grams, assumed } = fineMetal(weightOf('1.38 g ± 0.01'), finenessOf('0.90/0.92'));
    expect(grams.low).toBeCloseTo(1.37 * 0.9, 12);
    expect(grams.high).toBeCloseTo(1.39 * 0.92, 12);
    expect(assumed).toEqual([]);
  });

  test('what is taken for granted is said', () => {
    expect(fineMetal(weightOf('1.44 g'), finenessOf('sterling'), 'statutory').assumed[0]).toContain(
      'not that of this piece',
    );
    expect(fineMetal(weightOf('1.38 g'), finenessOf('sterling')).assumed.join(' ')).toMatch(
      /taken as written.*not assayed/,
    );
  });
});

describe('one fineness or another is no range', () => {
  // Common practice: lists give the two standards of a coin struck before and after a reform.
  test.for([
    ['.500 or .800', 0.5, 0.8, '500/1000 or 800/1000'],
    ['800/1000 or 500/1000', 0.5, 0.8, '500/1000 or 800/1000'],
    ['14 loth or 13 loth', 13 / 16, 14 / 16, '812.5/1000 or 875/1000'],
    ['22 or 23 ct', 22 / 24, 23 / 24, '11/12 or 23/24'],
  ] as const)('%s', ([text, low, high, printed]) => {
    const fineness = finenessOf(text);
    expect(fineness).toMatchObject({ low, high, isEither: true });
    expect(formatFineness(fineness)).toBe(printed);
    expect(finenessOf(printed)).toMatchObject({ low, high, isEither: true });
    expect(fineMetal(weightOf('10 g'), fineness).assumed.join(' ')).toContain('one of two');
  });
});

describe('a fineness that is not one asks', () => {
  test.for([
    ['22', 'of how many'],
    ['25 ct', 'finer than fine'],
    ['12 oz 1 dwt', 'finer than fine'],
    ['11 oz 20 dwt', 'Write 12 oz'],
    ['900/925', 'a range or a fraction'],
    ['0.94/0.90', 'from fine to base'],
    ['22/23 ct', 'Write 22-23 ct'],
    ['14/15 loth', 'Write 14-15 loth'],
    ['105 %', 'finer than fine'],
    ['1001/1000', 'finer than fine'],
    ['0 %', 'no fine metal'],
    ['fine', 'not a fineness'],
    ['', 'not a fineness'],
  ] as const)('%s: %s', ([text, because]) => {
    const outcome = parseFineness(text);
    expect(outcome.ok ? '' : outcome.problem).toContain(because);
  });
});

describe('there and back', () => {
  const parts = fc.constantFrom<[string, number]>(['ct', 24], ['loth', 16], ['zolotnik', 96], ['oz', 12]);
  test('whole parts of every scale', () => {
    fc.assert(
      fc.property(parts, fc.nat(), ([name, of], seed) => {
        const fineness = finenessOf(`${1 + (seed % of)} ${name}`);
        expect({ ...finenessOf(formatFineness(fineness)), text: fineness.text }).toEqual(fineness);
      }),
    );
  });

  test('ranges of thousandths', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 999 }), fc.integer({ min: 1, max: 999 }), (a, b) => {
        const [low, high] = [Math.min(a, b) / 1000, Math.max(a, b) / 1000];
        const fineness = finenessOf(`${low}/${high}`);
        expect(fineness).toMatchObject({ low, high });
        expect({ ...finenessOf(formatFineness(fineness)), text: fineness.text }).toEqual(fineness);
      }),
    );
  });

  test('one fineness in carats, loth, zolotnik, ounces, thousandths and as a fraction is one number', () => {
    // A 192nd is a carat grain of eight to the carat; every scale below divides it or is divided by it.
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 8 }), (eighth) => {
        const share = eighth / 8;
        const written = [`${24 * share} ct`, `${16 * share} loth`, `${96 * share} zolotnik`, `${eighth}/8`];
        const troy = `${Math.floor(12 * share)} oz ${(12 * share - Math.floor(12 * share)) * 20} dwt`;
        for (const text of [...written, `${1000 * share}/1000`, ...(12 * share >= 1 ? [troy] : [])]) {
          const { low, high } = finenessOf(text);
          expect(Math.abs(low - share), text).toBeLessThanOrEqual(Number.EPSILON);
          expect(Math.abs(high - share), text).toBeLessThanOrEqual(Number.EPSILON);
        }
      }),
    );
  });

  test('a heavier or a finer piece never holds less', () => {
    const weight = fc.double({ min: 0.1, max: 100, noNaN: true });
    const fine = fc.double({ min: 0.001, max: 1, noNaN: true });
    fc.assert(
      fc.property(weight, weight, fine, fine, (a, b, f, g) => {
        const held = (grams: number, low: number) =>
          fineMetal({ grams, plusMinus: null }, { low, high: low }).grams.low;
        expect(held(Math.max(a, b), Math.max(f, g))).toBeGreaterThanOrEqual(held(Math.min(a, b), Math.min(f, g)));
      }),
    );
  });
});
