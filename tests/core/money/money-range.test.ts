import { expect, test } from 'vitest';
import { formatMoneyRange, parseMoneyRange } from '../../../src/core/money/money-range.ts';

// How owners and sale lists write an estimate is common practice; pence in a pound, ISO 4217.
test.for([
  ['60 GBP', 'GBP 60.00'],
  ['50-60 GBP', 'GBP 50.00 to GBP 60.00'],
  ['£50–60', 'GBP 50.00 to GBP 60.00'],
  ['£50 to £60', 'GBP 50.00 to GBP 60.00'],
  ['GBP 1,200 - 1,500', 'GBP 1200.00 to GBP 1500.00'],
  ['300 to 400 JPY', 'JPY 300 to JPY 400'],
] as const)('%s is %s', ([written, read]) => {
  const found = parseMoneyRange(written);
  expect(found.ok ? formatMoneyRange(found.value) : found.problem).toBe(read);
  if (!found.ok) return;
  // What is printed reads back to the same.
  expect(parseMoneyRange(formatMoneyRange(found.value))).toEqual(found);
});

test.for(['50-60', '120-30 GBP', '£50 - $60', 'GBP', '-5 GBP', '50-60-70 GBP', 'about 50 GBP'])(
  '%s asks',
  (written) => {
    expect(parseMoneyRange(written).ok).toBe(false);
  },
);
