import { yearsOfPart } from './parts.ts';

/** A bare year beyond is taken for one of another era, such as the Hebrew 5708. */
export const LAST_BARE_YEAR = 2040;

/**
 * An astronomical year for a visitor. From 1000 it stands bare; before, AD goes in front and BC behind, since a
 * number below 1000 could be counted from any era. Common practice.
 */
export function formatYear(year: number): string {
  if (year <= 0) return `${String(1 - year)} BC`;
  return year < 1000 || year > LAST_BARE_YEAR ? `AD ${String(year)}` : String(year);
}

/** A span of years: "1279–81", "1279–1307", "AD 895–905", "27–14 BC", "27 BC – AD 14". */
export function formatYears(low: number, high: number): string {
  if (low === high) return formatYear(low);
  // A shorter second number could be taken for one with its first figures left out: 134–5 BC.
  const isCut = String(1 - high).length < String(1 - low).length;
  if (high <= 0) return `${isCut ? formatYear(low) : String(1 - low)}${isCut ? ' – ' : '–'}${formatYear(high)}`;
  if (low <= 0) return `${formatYear(low)} – ${formatYear(high)}`;
  if (high < 1000) return `AD ${String(low)}–${String(high)}`;
  if (low < 1000) return `AD ${String(low)} – ${String(high)}`;
  if (high > LAST_BARE_YEAR) return `AD ${String(low)} – ${String(high)}`;
  const sameCentury = low < 10_000 && Math.floor(low / 100) === Math.floor(high / 100);
  return `${String(low)}–${sameCentury ? String(high).slice(-2) : String(high)}`;
}

/** The years of ours beside a year of another era: "1839/40", "906/7", "131/130 BC", "902–912". */
export function formatGloss(low: number, high: number): string {
  if (high !== low + 1) return low > 0 ? formatYears(low, high).replace('AD ', '') : formatYears(low, high);
  if (low < 0) return `${String(1 - low)}/${formatYear(high)}`;
  if (low === 0) return formatYears(low, high);
  const [first, second] = [String(low), String(high)];
  if (first.length < second.length) return `${first}/${second}`;
  // Into another century the whole number is said, 1199/1200; in the teens two figures, spoken as one word: 1911/12.
  if (low % 100 === 99) return `${first}/${second}`;
  let shared = 0;
  while (first[shared] === second[shared]) shared += 1;
  const cut = second.at(-2) === '1' ? Math.min(shared, second.length - 2) : shared;
  return `${first}/${second.slice(cut)}`;
}

const THIRDS = ['early', 'mid', 'late'];
const ORDINALS = ['first', 'second', 'third', 'last'];
const FRACTIONS = [
  { of: 2, name: (number: number) => `${number === 1 ? 'first' : 'second'} half of the ` },
  { of: 3, name: (number: number) => `${THIRDS[number - 1] ?? ''} ` },
  { of: 4, name: (number: number) => `${ORDINALS[number - 1] ?? ''} quarter of the ` },
];

/** The words for years that are a century, several, or a half, third or quarter of one; undefined for any others. */
export function formatPart(low: number, high: number): string | undefined {
  const first = centuryOf(low);
  const last = centuryOf(high);
  if (low === first.start && high === last.start + 99) {
    return first.start === last.start ? `${first.ordinal} century${first.era}` : formatCenturies(first, last);
  }
  if (first.start !== last.start) return undefined;
  for (const { of, name } of FRACTIONS) {
    for (let number = 1; number <= of; number += 1) {
      const part = yearsOfPart(first.start, 100, { number, of });
      if (part.low === low && part.high === high) return `${name(number)}${first.ordinal} century${first.era}`;
    }
  }
  return undefined;
}

interface Century {
  readonly start: number;
  readonly ordinal: string;
  readonly era: string;
}

function centuryOf(year: number): Century {
  const count = Math.floor((year - 1) / 100);
  const number = count >= 0 ? count + 1 : -count;
  return { start: 100 * count + 1, ordinal: `${String(number)}${ending(number)}`, era: count >= 0 ? '' : ' BC' };
}

function formatCenturies(first: Century, last: Century): string {
  if (first.era === last.era) return `${first.ordinal} to ${last.ordinal} century${last.era}`;
  return `${first.ordinal} century${first.era} to ${last.ordinal} century AD`;
}

function ending(number: number): string {
  if (number % 100 >= 11 && number % 100 <= 13) return 'th';
  return ['th', 'st', 'nd', 'rd'][number % 10] ?? 'th';
}
