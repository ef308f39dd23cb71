import { describe, expect, test } from 'vitest';
import { readPlanRequest } from '../../../src/commands/plan/read-plan-request.ts';
import type { PlanFlags } from '../../../src/commands/plan/read-plan-request.ts';

const SETS = ['english-rulers', 'mints-of-1279'];

function wish(flags: Partial<PlanFlags>) {
  return readPlanRequest({ budget: '600 GBP', words: [], ...flags }, SETS);
}

test('a budget is enough: one year, any number of purchases, every set; money is whole pence', () => {
  expect(wish({ budget: '£600.50' })).toEqual({
    ok: true,
    value: {
      purse: { budget: 60050, purchases: null, years: 1 },
      currency: 'GBP',
      sets: null,
      fewerAndBetter: false,
    },
  });
});

test('every flag together; a set named twice is one', () => {
  const flags = { purchases: '6', years: '3', set: ['mints-of-1279', 'mints-of-1279'], 'fewer-and-better': true };
  expect(wish(flags)).toMatchObject({
    ok: true,
    value: { purse: { purchases: 6, years: 3 }, sets: ['mints-of-1279'], fewerAndBetter: true },
  });
});

describe('a flag that cannot be meant is answered with what to write', () => {
  const rows: readonly (readonly [Partial<PlanFlags>, RegExp])[] = [
    [{ budget: undefined }, /Write npm run plan -- --budget "600 GBP"/],
    [{ budget: '600' }, /The budget cannot be read\. "600" does not say in which currency\. Write the amount/],
    [{ budget: '600', words: ['GBP'] }, /"GBP" belongs to no flag\. Put what has a space in it in quotation marks/],
    [{ budget: '0 GBP' }, /budget of nothing/],
    [{ budget: '-5 GBP' }, /less than nothing/],
    [{ budget: '1.234 GBP' }, /Write/],
    [{ purchases: '0' }, /--purchases takes a whole number from 1 to 1000; this says "0"\. Write --purchases 6\./],
    [{ purchases: 'six' }, /this says "six"/],
    [{ purchases: '2.5' }, /this says "2\.5"/],
    [{ years: '51' }, /--years takes a whole number from 1 to 50; this says "51"\. Write --years 3\./],
    [{ set: ['mints-of-1297'] }, /There is no set "mints-of-1297"\. Write --set mints-of-1279\./],
    [{ set: ['medals'] }, /There is no set "medals"\. The sets are english-rulers, mints-of-1279\./],
  ];
  test.for(rows)('%o', ([flags, says]) => {
    const read = wish(flags);
    expect(read.ok ? 'read' : read.problem).toMatch(says);
  });
});
