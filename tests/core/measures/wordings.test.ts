import { describe, expect, test } from 'vitest';
import { formatAxis, parseAxis } from '../../../src/core/measures/parse-axis.ts';
import { formatLength, parseLength } from '../../../src/core/measures/parse-length.ts';
import { formatWeight, parseWeight } from '../../../src/core/measures/parse-weight.ts';
import { formatFineness, parseFineness } from '../../../src/core/metal/parse-fineness.ts';
import { formatMoney, parseMoney } from '../../../src/core/money/money.ts';
import type { Outcome } from '../../../src/core/outcome.ts';
import {
  AXIS_WORDINGS,
  FINENESS_WORDINGS,
  LENGTH_WORDINGS,
  MONEY_WORDINGS,
  WEIGHT_WORDINGS,
} from '../../published/measure-wordings.ts';

/** What was read; a text that should have been refused, or was, says so. */
function valueOf<T>(outcome: Outcome<T>): T {
  return outcome.ok ? outcome.value : expect.fail(outcome.problem);
}

/** A refusal says in its last sentence what to write, or to leave the field out. */
function expectAsked(outcome: Outcome<unknown>): void {
  if (outcome.ok) expect.fail(`read as ${JSON.stringify(outcome.value)}`);
  expect(outcome.problem).toMatch(/(?:Write|Leave|write) [^.]+.*\.$/);
}

/** The tables give six figures. */
function expectNear(value: number, expected: number): void {
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(2e-6 * Math.max(1, Math.abs(expected)));
}

describe('weights', () => {
  test.for(WEIGHT_WORDINGS)('$write ($source)', ({ write, reads }) => {
    const outcome = parseWeight(write);
    if (reads === null) {
      expectAsked(outcome);
      return;
    }
    const weight = valueOf(outcome);
    expectNear(weight.grams, reads[0]);
    expect(weight.plusMinus === null).toBe(reads[1] === null);
    expectNear(weight.plusMinus ?? 0, reads[1] ?? 0);
    // A weight in several units is printed in the smallest, to four figures after the point.
    expect(Math.abs(valueOf(parseWeight(formatWeight(weight))).grams - weight.grams)).toBeLessThan(0.002);
  });
});

describe('lengths', () => {
  test.for(LENGTH_WORDINGS)('$write ($source)', ({ write, reads }) => {
    const outcome = parseLength(write);
    if (reads === null) {
      expectAsked(outcome);
      return;
    }
    const { low, high } = valueOf(outcome);
    expect(low).toBeCloseTo(reads[0], 3);
    expect(high).toBeCloseTo(reads[1], 3);
    expect(valueOf(parseLength(formatLength({ low, high }))).low).toBeCloseTo(low, 3);
  });
});

describe('fineness', () => {
  test.for(FINENESS_WORDINGS)('$write ($source)', ({ write, reads }) => {
    const outcome = parseFineness(write);
    if (reads === null) {
      expectAsked(outcome);
      return;
    }
    const { low, high } = valueOf(outcome);
    expectNear(low, reads[0]);
    expectNear(high, reads[1]);
    const { low: lowAgain, high: highAgain } = valueOf(parseFineness(formatFineness({ low, high })));
    expectNear(lowAgain, low);
    expectNear(highAgain, high);
  });
});

describe('die axes', () => {
  test.for(AXIS_WORDINGS)('$write ($source)', ({ write, reads }) => {
    const outcome = parseAxis(write);
    if (reads === null) {
      expectAsked(outcome);
      return;
    }
    const axis = valueOf(outcome);
    expect(axis.hours ?? 0).toBe(reads);
    expect(parseAxis(formatAxis(axis))).toEqual({ ok: true, value: axis });
  });
});

describe('money', () => {
  test.for(MONEY_WORDINGS)('$write ($source)', ({ write, reads }) => {
    const outcome = parseMoney(write);
    if (reads === null) {
      expectAsked(outcome);
      return;
    }
    const money = valueOf(outcome);
    expect(money.minor).toBe(reads);
    expect(parseMoney(formatMoney(money))).toMatchObject({
      ok: true,
      value: { minor: reads, currency: money.currency },
    });
  });
});
