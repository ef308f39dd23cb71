import { formatYear } from '../dating/format-date.ts';
import { formatYears } from '../dating/format-years.ts';
import type { Interval } from './era-scheme.ts';

/** Years for a sentence: `1526–1544`, `AD 43–410`, `44 BC`, `before 1352`, `after 1900`. */
export function yearsInWords({ low, high }: Interval): string {
  if (low === -Infinity && high === Infinity) return 'any year';
  if (low === -Infinity) return `before ${formatYear(high + 1)}`;
  if (high === Infinity) return `after ${formatYear(low - 1)}`;
  if (low <= 0) return formatYears(low, high);
  // Both years are written out, as the periods of a scheme are published; what is AD is said once.
  return low === high ? formatYear(low) : `${formatYear(low)}–${String(high)}`;
}
