import type { Outcome } from '../outcome.ts';
import { good, refuse } from '../outcome.ts';

/** What was counted, for one side: `n` coins, `d` dies among them, `d1` dies seen on one coin only. */
export type DieCount = { readonly n: number; readonly d: number; readonly d1: number };

/**
 * Estimates from a count. `coverage` is the share of the issue struck by the dies seen, 1 − d1/n (Good 1953). The number
 * of dies there once were, three ways: `good` nd/(n − d1), which takes all dies to have struck alike; `singleton`
 * (d/coverage)(1 + d1/2d), which allows for some having struck little (Esty 2006, 2011); `geometric` nd/(n − d), for dies
 * that break at a constant rate (Esty 2011). Not rounded. `cautions`: conditions that are not met as well as they might be.
 */
export type DieEstimate = {
  readonly coverage: number;
  readonly good: number;
  readonly singleton: number;
  readonly geometric: number;
  readonly cautions: readonly string[];
};

/** Below this many coins no estimate is given: one coin more or less would overturn it. Our own judgement. */
export const FEWEST_COINS = 10;

function impossible({ n, d, d1 }: DieCount): string | null {
  if (![n, d, d1].every((count) => Number.isSafeInteger(count) && count >= 0))
    return 'Coins, dies and single dies are whole numbers from 0. Write them as 318 69 12.';
  if (d > n)
    return `${n} coins cannot come from ${d} dies of one side. Write coins first, then dies, then dies known from one coin: 318 69 12.`;
  if (d1 > d)
    return `Of ${d} dies, ${d1} cannot be known from one coin each. Write coins, dies, then dies known from one coin: 318 69 12.`;
  if (n < d1 + 2 * (d - d1))
    return `${d1} dies with one coin and ${d - d1} with two or more make at least ${d1 + 2 * (d - d1)} coins, not ${n}. Count them again.`;
  if (n > d1 && d === d1) return `${d1} dies with one coin each make ${d1} coins, not ${n}. Count them again.`;
  return null;
}

/** Estimates the dies of an issue from a random sample; refuses a count that cannot be, one that is too small, and one where no die repeats. */
export function dieEstimate(count: DieCount): Outcome<DieEstimate> {
  const { n, d, d1 } = count;
  const wrong = impossible(count);
  if (wrong !== null) return refuse(wrong);
  if (n < FEWEST_COINS)
    return refuse(`${n} coins are too few to estimate from; bring together at least ${FEWEST_COINS}.`);
  if (d1 === n)
    return refuse(
      'Every coin is from a die of its own, so the number of dies has no upper bound here; bring together more coins.',
    );
  const coverage = 1 - d1 / n;
  const cautions = [
    'The coins must be a random sample: one hoard, or a collection formed to show varieties, misleads.',
  ];
  if (coverage < 0.5) cautions.push('The dies seen struck less than half the issue, so the estimates are loose.');
  if (n < 2 * d) cautions.push('There are fewer than two coins to a die, so the estimates are loose.');
  return good({
    coverage,
    good: (n * d) / (n - d1),
    singleton: (d / coverage) * (1 + d1 / (2 * d)),
    geometric: (n * d) / (n - d),
    cautions,
  });
}

/** A sentence for the catalogue, with the estimates to the nearest die and the coverage to a tenth of a per cent. */
export function formatDieEstimate({ n, d, d1 }: DieCount, estimate: DieEstimate): string {
  const dies = (value: number): string => String(Math.round(value));
  return (
    `${n} coins from ${d} dies, ${d1} of them known from one coin: coverage ${(estimate.coverage * 100).toFixed(1)} %; ` +
    `originally about ${dies(estimate.good)} dies (Good), ${dies(estimate.singleton)} (singleton) or ${dies(estimate.geometric)} (geometric).`
  );
}

/** Of 95 in a hundred normal values this many standard deviations from the mean, both sides together. */
const NORMAL_95 = 1.959964;

/**
 * The interval that holds the coverage in 95 samples of a hundred, C ± (z/n)√(d1 + 2·d2 − d1²/n) (Esty 1983), `d2` dies
 * seen on two coins; cut to what a share can be, 0 to 1. No interval is given for the *number* of dies: those published
 * take the dies to have struck alike, and where the truth is known they miss it more often than they promise.
 */
export function coverageInterval(count: { readonly n: number; readonly d1: number; readonly d2: number }): {
  readonly coverage: number;
  readonly low: number;
  readonly high: number;
} {
  const { coverage, low, high } = uncutCoverage(count);
  return { coverage, low: Math.max(0, low), high: Math.min(1, high) };
}

/** The same before it is cut. */
export function uncutCoverage({ n, d1, d2 }: { readonly n: number; readonly d1: number; readonly d2: number }): {
  readonly coverage: number;
  readonly low: number;
  readonly high: number;
} {
  const coverage = 1 - d1 / n;
  const off = (NORMAL_95 / n) * Math.sqrt(Math.max(0, d1 + 2 * d2 - d1 ** 2 / n));
  return { coverage, low: coverage - off, high: coverage + off };
}
