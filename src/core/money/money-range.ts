import { good, refuse } from '../outcome.ts';
import type { Outcome } from '../outcome.ts';
import { addMinor, formatMoney, parseMoney } from './money.ts';
import type { Money } from './money.ts';

/** An amount, or the two ends of one that is not known better, in one currency and in smallest units. */
export type MoneyRange = { readonly low: number; readonly high: number; readonly currency: string };

const BETWEEN = /\s*(?:-|–|—|\bto\b)\s*/u;

/** Reads `60 GBP`, `50-60 GBP`, `£50 to £60`. What names two currencies or runs downward asks. */
export function parseMoneyRange(
  text: string,
  options: { readonly dollar?: string | undefined } = {},
): Outcome<MoneyRange> {
  const one = parseMoney(text, options);
  if (one.ok) return good({ low: one.value.minor, high: one.value.minor, currency: one.value.currency });
  const ends = text.trim().split(BETWEEN);
  const [first = '', second = ''] = ends;
  if (ends.length !== 2 || !/\d/.test(first) || !/\d/.test(second)) return one;
  // The currency stands once, before the first end or behind the second.
  const [low, high] = [parseMoney(first, options), parseMoney(second, options)];
  const known = low.ok ? low.value : high.ok ? high.value : null;
  if (known === null) return one;
  const endOf = (read: Outcome<Money>, written: string): Outcome<Money> =>
    read.ok || !/^[\d.,'’ ]+$/u.test(written) ? read : parseMoney(`${known.currency} ${written}`);
  const [least, most] = [endOf(low, first), endOf(high, second)];
  if (!least.ok) return least;
  if (!most.ok) return most;
  if (least.value.currency !== most.value.currency) return refuse(`"${text}" names two currencies. Write 50-60 GBP.`);
  if (least.value.minor > most.value.minor)
    return refuse(`"${text}" runs from more to less. Write both ends in full: 120-130 ${known.currency}.`);
  return good({ low: least.value.minor, high: most.value.minor, currency: known.currency });
}

/** `GBP 60.00`, `GBP 50.00 to GBP 60.00`. */
export function formatMoneyRange({ low, high, currency }: MoneyRange): string {
  const least = formatMoney({ minor: low, currency });
  return low === high ? least : `${least} to ${formatMoney({ minor: high, currency })}`;
}

/** Amounts and ranges added up, currency by currency and never into one another: low ends and high ends each for themselves. */
export function addMoneyRanges(ranges: readonly MoneyRange[]): readonly MoneyRange[] {
  const sums = new Map<string, MoneyRange>();
  for (const { low, high, currency } of ranges) {
    const sum = sums.get(currency) ?? { low: 0, high: 0, currency };
    sums.set(currency, { low: addMinor(sum.low, low), high: addMinor(sum.high, high), currency });
  }
  return [...sums.values()];
}
