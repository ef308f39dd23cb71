import { yearsOfPart } from './parts.ts';

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
