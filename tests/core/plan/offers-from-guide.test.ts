import { describe, expect, test } from 'vitest';
import { offersFromGuide } from '../../../src/core/plan/offers-from-guide.ts';
import type { GuidePrice } from '../../../src/core/plan/offers-from-guide.ts';
import { countSet } from '../../../src/core/sets/count-set.ts';
import type { Graded } from '../../../src/core/grade/compare-grades.ts';
import { gradedAs } from '../../../src/core/sets/set-piece.ts';
import { graded, LISTS, onSteps, penny, rule } from '../sets/pieces.ts';

const pieces = [
  penny('worn', { mint: 'london', ...graded(12, 15) }),
  penny('fine', { mint: 'bristol', ...graded(40, 45) }),
  penny('bent', { mint: 'exeter', details: true, ...graded(30) }),
];
const counted = countSet(
  rule({ places: ['london', 'york', 'bristol', 'exeter'].map((is) => ({ is })), aim: onSteps(20, 35) }),
  pieces,
  LISTS,
);
if (!counted.ok) throw new Error(counted.problem);
const state = counted.value;
const grades = new Map(pieces.map((piece) => [piece.id, piece.grade === null ? null : gradedAs(piece)]));

function price(place: string, grade: string, low: number, high: number, facts: Partial<GuidePrice> = {}): GuidePrice {
  return {
    place,
    grade,
    graded: onSteps(low, high),
    price: { low: 1000, high: 1200 },
    currency: 'GBP',
    source: 'invented',
    year: 2025,
    ...facts,
  };
}

function shopping(guide: readonly GuidePrice[], notBelow: Graded | null = null) {
  const outcome = offersFromGuide(state, grades, guide, { notBelow, thisYear: 2026 });
  if (!outcome.ok) throw new Error(outcome.problem);
  return outcome.value;
}

describe('what the guide offers', () => {
  test('fills an empty place and one with a filler, betters one below the aim, and leaves a good one alone', () => {
    const guide = ['london', 'york', 'bristol', 'exeter'].map((place) => price(place, 'VF', 20, 35));
    expect(shopping(guide).offers.map(({ place, fills, improvement }) => [place, fills, improvement])).toEqual([
      ['london', false, 5],
      ['york', true, 20],
      ['exeter', true, 20],
    ]);
  });
  test('is no betterment when the piece may be as good already', () => {
    const { offers, unpriced } = shopping([price('london', 'F', 12, 19)]);
    expect(offers).toEqual([]);
    expect(unpriced).toContainEqual({ place: 'london', because: 'The guide has no price for a grade good enough.' });
  });
  test('is no betterment when it only surely reaches what the piece may be', () => {
    expect(shopping([price('london', 'F', 15, 19)]).offers).toEqual([]);
    expect(shopping([price('london', 'F', 16, 19)]).offers).toMatchObject([{ improvement: 1 }]);
  });
  test('keeps to the better grades when fewer and better are wanted', () => {
    const guide = [price('york', 'F', 12, 19), price('york', 'VF', 20, 35)];
    expect(shopping(guide, onSteps(20, 35)).offers.map(({ grade }) => grade)).toEqual(['VF']);
  });
  test('says which prices are missing and which are old, and invents none', () => {
    const { unpriced, old } = shopping([price('york', 'VF', 20, 35, { year: 2019 }), price('exeter', 'VF', 20, 35)]);
    expect(unpriced).toEqual([{ place: 'london', because: 'The guide has no price for it.' }]);
    expect(old).toEqual(['The price of York in VF is of 2019.']);
  });
  test('calls a price old after five years, and only one that is planned with', () => {
    const oldOnes = (...guide: readonly GuidePrice[]) => shopping(guide).old;
    expect(oldOnes(price('york', 'VF', 20, 35, { year: 2021 }))).toEqual([]);
    expect(oldOnes(price('york', 'VF', 20, 35, { year: 2020 }))).toEqual(['The price of York in VF is of 2020.']);
    expect(oldOnes(price('london', 'F', 12, 15, { year: 2020 }))).toEqual([]);
  });
  test('names the one currency of the prices, and none where there is no price', () => {
    expect(shopping([price('york', 'VF', 20, 35)]).currency).toBe('GBP');
    expect(shopping([]).currency).toBeNull();
  });
});

test('a guide in two currencies is refused in a sentence', () => {
  const guide = [price('york', 'VF', 20, 35), price('exeter', 'VF', 20, 35, { currency: 'EUR' })];
  expect(offersFromGuide(state, grades, guide, { notBelow: null, thisYear: 2026 })).toEqual({
    ok: false,
    problem:
      'The guide prices “Set” in EUR and GBP, and no rate between them is given. Write every price in one currency.',
  });
});
