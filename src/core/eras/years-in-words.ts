import { formatYear } from '../dating/format-date.ts';
import type { Interval } from './era-scheme.ts';

/** Years for a sentence: `1526–1544`, `44 BC`, `before 1352`, `after 1900`. */
export function yearsInWords({ low, high }: Interval): string {
  if (low === -Infinity && high === Infinity) return 'any year';
  if (low === -Infinity) return `before ${formatYear(high + 1)}`;
  if (high === Infinity) return `after ${formatYear(low - 1)}`;
  return low === high ? formatYear(low) : `${formatYear(low)}–${formatYear(high)}`;
}
