import { describe, expect, test } from 'vitest';
import { formatWeight, parseWeight } from '../../../src/core/measures/parse-weight.ts';
import { parseAxis } from '../../../src/core/measures/parse-axis.ts';
import { parseFineness } from '../../../src/core/metal/parse-fineness.ts';
import { parseMoney } from '../../../src/core/money/money.ts';
import { AXES, FINENESSES, SUMS, WEIGHTS } from '../../published/unit-questions.ts';

test.for(WEIGHTS)('weight %s is %s g (%s)', ([write, grams]) => {
  const outcome = parseWeight(write);
  if (grams === null) expect(outcome.ok ? outcome.value.grams : null).toBeNull();
  // A millionth of a gram: the figures of the table.
  else expect(outcome.ok ? outcome.value.grams : outcome.problem).toBeCloseTo(grams, 5);
});

test.for(FINENESSES)('fineness %s is %s (%s)', ([write, share]) => {
  const outcome = parseFineness(write);
  if (share === null) expect(outcome.ok ? outcome.value.low : null).toBeNull();
  else {
    expect(outcome.ok ? outcome.value.low : outcome.problem).toBeCloseTo(share, 12);
    expect(outcome.ok && outcome.value.high).toBe(outcome.ok && outcome.value.low);
  }
});

test.for(AXES)('axis %s is %s (%s)', ([write, hours]) => {
  const outcome = parseAxis(write);
  expect(outcome.ok ? outcome.value.hours : null).toBe(hours);
});

test.for(SUMS)('money %s is %s (%s)', ([write, reads]) => {
  const outcome = parseMoney(write);
  expect(outcome.ok ? [outcome.value.minor, outcome.value.currency] : null).toEqual(reads);
});

describe('what the cabinet settles', () => {
  test('gr is what it says, and a second weight still has its say', () => {
    const grams = (text: string, gr: 'grains' | 'grams') => {
      const outcome = parseWeight(text, { gr });
      return outcome.ok ? outcome.value.grams : null;
    };
    expect(grams('21.3 gr', 'grains')).toBeCloseTo(21.3 * 0.06479891, 9);
    expect(grams('1.38 gr', 'grams')).toBe(1.38);
    expect(grams('1.38 g (21.3 gr)', 'grams')).toBe(1.38);
    expect(grams('1 dwt 6 gr', 'grams')).toBeCloseTo(30 * 0.06479891, 9);
  });
  test('a weight in grains is printed so that it reads back', () => {
    const outcome = parseWeight('21.3 grains');
    expect(outcome.ok && formatWeight(outcome.value)).toBe('21.3 grains');
  });
  test('a bare $ is the dollar of a cabinet that has one', () => {
    expect(parseMoney('$25', { dollar: 'CAD' })).toMatchObject({ ok: true, value: { minor: 2500, currency: 'CAD' } });
    expect(parseMoney('$25', { dollar: 'GBP' }).ok).toBe(false);
  });
  test('45 degrees say between which hours they lie', () => {
    const outcome = parseAxis('45°');
    expect(outcome.ok ? '' : outcome.problem).toContain('between 1h and 2h. Write 1h or 2h.');
  });
});
