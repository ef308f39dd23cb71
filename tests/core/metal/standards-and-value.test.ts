import { describe, expect, test } from 'vitest';
import { figuresOf, fineMetal, metalValue, toFigures } from '../../../src/core/metal/fine-metal.ts';
import { debasement } from '../../../src/core/metal/debasement.ts';
import { againstStandard, standardOf, standardsBinding } from '../../../src/core/metal/standards.ts';
import type { Standard } from '../../../src/core/metal/standards.ts';
import { parseFineness } from '../../../src/core/metal/parse-fineness.ts';
import { parseWeight } from '../../../src/core/measures/parse-weight.ts';
import { pennyStandards } from '../../published/penny-standards.ts';

const pennies: readonly Standard[] = pennyStandards.map(({ from, to, grains, fineness, source }) => {
  const [weight, fine] = [parseWeight(grains), parseFineness(fineness)];
  if (!weight.ok || !fine.ok) throw new Error(grains);
  return standardOf({ weight: weight.value, fineness: fine.value, metal: 'silver', source }, { low: from, high: to });
});

const exactly = (value: number) => ({ low: value, high: value });

describe('a piece against its standard', () => {
  test('a penny of 1279–81 of 1.38 g is 95.8 per cent of 1.4400 g', () => {
    const outcome = againstStandard({ grams: 1.38, plusMinus: null }, pennies, { low: 1279, high: 1281 });
    expect(outcome).toMatchObject({ ok: true, value: { percent: { low: expect.closeTo(95.83, 1) as number } } });
    expect(outcome.ok ? outcome.value.rows.length : 0).toBe(1);
  });

  test('a piece that may fall under two standards is held against both, the likelier first', () => {
    const outcome = againstStandard({ grams: 1.2, plusMinus: 0.01 }, pennies, { low: 1344, high: 1347 });
    if (!outcome.ok) throw new Error(outcome.problem);
    const { rows, percent } = outcome.value;
    expect(rows.map(({ standard }) => standard.years.low)).toEqual([1279, 1346]);
    expect(rows[0]?.share).toBe(0.75);
    expect(percent.low).toBeCloseTo((100 * 1.19) / 1.44, 1);
    expect(percent.high).toBeCloseTo((100 * 1.21) / 1.296, 1);
  });

  test('a piece dated to the year of the change may be of either', () => {
    const outcome = againstStandard({ grams: 1.3, plusMinus: null }, pennies, { low: 1346, high: 1346 });
    expect(outcome.ok ? outcome.value.rows.map(({ standard }) => standard.years.low) : []).toEqual([1279, 1346]);
  });

  test('a disputed standard gives an interval: 242 to 246 pence to the Tower pound before 1247', () => {
    const disputed = standardOf(
      { weight: { grams: 1.4224, plusMinus: null }, 'weight-to': { grams: 1.4459, plusMinus: null }, source: 'Allen' },
      { low: 1180, high: 1247 },
    );
    const outcome = againstStandard({ grams: 1.4, plusMinus: null }, [disputed], { low: 1205, high: 1207 });
    expect(outcome).toMatchObject({
      ok: true,
      value: { percent: { low: expect.closeTo(96.8, 1) as number, high: expect.closeTo(98.4, 1) as number } },
    });
  });

  test('outside every standard there is nothing to say', () => {
    expect(againstStandard({ grams: 1.4, plusMinus: null }, pennies, { low: 900, high: 950 }).ok).toBe(false);
  });
});

describe('whose standard binds a piece', () => {
  // The silver penny of 1816: 66 shillings, 792 pence, to the troy pound of 5,760 grains (Coinage Act 1816, s. 9); the copper penny of 1797
  // and the bronze one of 1860 are other coins of one name (Coinage Act 1870, First Schedule: bronze, 145.83333 grains).
  const grains = (of: number) => ({ grams: of * 0.06479891, plusMinus: null });
  const silver = standardOf({ weight: grains(5760 / 792), fineness: exactly(0.925), metal: 'silver', source: 'Act of 1816' }, { low: 1816, high: 1919 }, ['England', 'the United Kingdom']); // prettier-ignore
  const bronze = standardOf({ weight: grains(145.83333), metal: 'bronze', source: 'Act of 1870' }, { low: 1860, high: 1894 }, ['the United Kingdom']); // prettier-ignore
  const UK = ['Great Britain, from 1801 the United Kingdom'];
  test.for([
    ['silver', UK, [silver]],
    ['bronze', UK, [bronze]],
    ['copper alloy', UK, [bronze]],
    ['gilt silver', UK, [silver]],
    ['copper', UK, []],
    ['copper, silver-plated', UK, []],
    ['unknown', UK, []],
    [null, UK, []],
    ['silver', ['Scotland'], []],
    ['silver', [], []],
    ['silver', ['Yorkshire, England'], [silver]],
  ] as const)('a penny of %s of %o', ([metal, realms, bound]) => {
    expect(standardsBinding([silver, bronze], { metal, realms })).toEqual(bound);
  });

  test('a penny of 18.8 g is no finding beside the silver penny; a cut quarter is one where it is said to be cut', () => {
    const within = (grams: number, isWhole?: boolean) =>
      againstStandard({ grams, plusMinus: null }, [silver], { low: 1841, high: 1841 }, isWhole).ok;
    expect([within(18.8), within(0.45), within(0.12), within(0.12, false)]).toEqual([false, true, false, true]);
  });
});

describe('how the penny was debased', () => {
  const rows = debasement(pennies.toReversed());
  const inYear = (year: number) => rows.find(({ standard }) => standard.years.low === year);

  test('oldest first, and the first has nothing before it', () => {
    expect(rows.map(({ standard }) => standard.years.low)).toEqual(pennyStandards.map(({ from }) => from));
    expect(rows[0]?.change).toBeNull();
  });

  test.for([
    [1346, ['lighter'], 'Lighter by 10 %'],
    [1351, ['lighter'], 'Lighter by 10 %'],
    [1412, ['lighter'], 'Lighter by 16.7 %'],
    [1464, ['lighter'], 'Lighter by 20 %'],
    [1545, ['lighter', 'alloyed'], 'baser by 64 %'],
    [1560, ['lighter', 'finer'], 'times as much fine metal'],
  ] as const)('in %i: %o (the pence to the pound: Allen; Craik)', ([year, ways, words]) => {
    expect(inYear(year)?.change?.ways).toEqual(ways);
    expect(inYear(year)?.change?.because).toContain(words);
  });

  test('without a diameter it does not say whether smaller or thinner', () => {
    expect(inYear(1351)?.change?.because).toContain('for want of a diameter');
  });
});

describe('which way, when diameters are known', () => {
  const made = (low: number, grams: number, fineness: number, diameter: number): Standard => ({
    years: { low, high: low },
    grams: exactly(grams),
    fineness: exactly(fineness),
    diameter: exactly(diameter),
    metal: 'silver',
    realms: [],
    source: 'made up',
  });
  const waysTo = (next: Standard) => debasement([made(1, 1.4, 0.925, 19), next])[1]?.change?.ways;

  test.for([
    ['thinner', made(2, 1.2, 0.925, 19), ['lighter', 'thinner']],
    ['smaller', made(2, 1.4 * (18 / 19) ** 2, 0.925, 18), ['lighter', 'smaller']],
    ['alloyed; copper is lighter, so as heavy a piece is thicker', made(2, 1.4, 0.5, 19), ['thicker', 'alloyed']],
    ['unchanged', made(2, 1.4, 0.925, 19), []],
  ] as const)('%s', ([, next, ways]) => expect(waysTo(next)).toEqual(ways));

  test('a disputed weight that overlaps is not called a change', () => {
    const vague: Standard = { ...made(2, 1.4, 0.925, 19), grams: { low: 1.35, high: 1.45 } };
    const change = debasement([made(1, 1.4, 0.925, 19), vague])[1]?.change;
    expect(change?.ways).toEqual([]);
    expect(change?.because).toContain('o change beyond doubt');
  });
});

describe('metal value', () => {
  const fine = fineMetal({ grams: 31.1034768, plusMinus: null }, exactly(0.925));
  const price = { minorPerTroyOunce: 2410, currency: 'GBP', date: '2026-01-05', source: 'the morning paper' };
  const piece = { fine, price, plated: false, mounted: false, altered: false };

  test('an ounce of sterling at 24.10 is 22.29 and a fraction: whole pence either side, dated and sourced', () => {
    expect(metalValue(piece)).toEqual({
      ok: true,
      value: {
        low: 2229,
        high: 2230,
        currency: 'GBP',
        date: '2026-01-05',
        source: 'the morning paper',
        caution: expect.stringContaining('Not an offer, not an appraisal') as string,
      },
    });
  });

  test.for([
    ['plated', { ...piece, plated: true }],
    ['mounted', { ...piece, mounted: true }],
    ['altered', { ...piece, altered: true }],
    ['weight or the fineness is not known', { ...piece, fine: null }],
    ['no price', { ...piece, price: null }],
    ['no date or no source', { ...piece, price: { ...price, source: '' } }],
    ['price is nothing', { ...piece, price: { ...price, minorPerTroyOunce: 0 } }],
  ] as const)('refused: %s', ([because, meltable]) => {
    const outcome = metalValue(meltable);
    expect(outcome.ok ? '' : outcome.problem).toContain(because);
  });
});

// Rules of significant figures: a product has those of its factor with the fewest. Common practice.
describe('fine metal is told to the figures of what it is worked out from', () => {
  test.for([
    ['1.42 g', '925/1000', 3],
    ['26.34 g ± 0.02', '0.90/0.94', 2],
    ['0.42 g', '925/1000', 2],
    ['7.97 g', '22 ct', 3],
    ['7.9 g', '22 ct', 2],
    ['14.8612 g', '11 oz 2 dwt', 3],
    ['31.1035 g', '999.9/1000', 4],
  ] as const)('%s of %s: %i figures', ([weight, fineness, figures]) => {
    expect(figuresOf(weight, fineness)).toBe(figures);
  });

  test.for([
    [{ low: 23.7, high: 24.77 }, 2, ['24', '25']],
    [{ low: 1.3135, high: 1.3135 }, 3, ['1.31', '1.31']],
    [{ low: 0.04223, high: 0.04223 }, 3, ['0.0422', '0.0422']],
    [{ low: 123.4, high: 125.6 }, 2, ['123', '126']],
  ] as const)('%o to %i figures', ([range, figures, told]) => {
    expect(toFigures(range, figures)).toEqual(told);
  });
});
