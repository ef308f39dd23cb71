import { good, refuse, type Outcome } from '../outcome.ts';
import type { Reading } from './dating.ts';
import { readLetterYear } from './read-letter-year.ts';

const YEARS =
  '(?:AD )?(?<first>\\d{1,4})(?<firstBc> ?BC)?(?:(?:/| - |-)(?:AD )?(?<last>\\d{1,4}))?(?<bc> ?BC)?(?: AD)?';
const IN_PARENTHESES = new RegExp(`^(?<date>.*\\S) ?\\((?:= ?)?${YEARS}\\)$`);
const AFTER_EQUALS = new RegExp(`^(?<date>.*\\S) ?= ?${YEARS}$`);

/** Islamic coins are listed as `AH 294/906-7`; a stroke alone may also part two years, so here only what agrees is read. */
const AFTER_STROKE = new RegExp(`^(?<date>.*\\S) ?/ ?${YEARS}$`);
/** `294/906-7`: the first of a pair that agrees is Hijri, though it does not say so. */
const HIJRI_PAIR = /^\d{1,4} ?\/ ?\d{3,4} ?- ?\d{1,4}(?: AD)?$/;

/**
 * `AH 1255 (1839/40)`, `AH 1255 = AD 1839`, `AH 294/906-7`: the years of ours beside a year of another era must agree with it, and
 * beside a cyclical year they choose among its years. Undefined when there is no such pair.
 */
export function readGlossed(
  text: string,
  read: (date: string) => Outcome<Reading> | undefined,
): Outcome<Reading> | undefined {
  const groups = (IN_PARENTHESES.exec(text) ?? AFTER_EQUALS.exec(text))?.groups;
  if (!groups) return readBothFigures(text) ?? readStroke(text, read);
  const date = groups['date'] ?? '';
  // Two years of ours after one date agree with nothing.
  if (IN_PARENTHESES.test(date) || AFTER_EQUALS.test(date)) return undefined;
  const letters = readLetterYear(date);
  const reading = letters ?? read(date);
  if (!reading?.ok || (letters === undefined && isOfChrist(reading.value))) return undefined;
  const { low, high } = yearsOfGloss(groups);
  const agreed =
    reading.value.calendar === 'cyclical' ? chosen(reading.value, low, high) : agreeing(reading.value, low, high);
  return agreed
    ? good(agreed)
    : refuse(`The two years of "${text}" do not agree; write ${date} alone to see what it comes to.`);
}

/** `1910 (MCMX)`: figures, and in parentheses the letters on the piece. */
function readBothFigures(text: string): Outcome<Reading> | undefined {
  const { year = '', letters = '' } = /^(?<year>\d{4}) ?\((?<letters>[^()\d]+)\)$/.exec(text)?.groups ?? {};
  const reading = letters === '' ? undefined : readLetterYear(letters);
  if (!reading?.ok) return undefined;
  if (reading.value.earliest === Number(year)) return reading;
  return refuse(`The two years of "${text}" do not agree; write ${letters} alone to see what it comes to.`);
}

function isOfChrist({ calendar }: Reading): boolean {
  return calendar === 'gregorian' || calendar === 'julian';
}

/** Two years that agree, on either side of a stroke. */
function readStroke(text: string, read: (date: string) => Outcome<Reading> | undefined): Outcome<Reading> | undefined {
  const { date = '', ...years } = AFTER_STROKE.exec(text)?.groups ?? {};
  if (date === '' || date.includes('/') || (years['first'] ?? '').length < 3) return undefined;
  const reading = read(HIJRI_PAIR.test(text) ? `AH ${date}` : date);
  if (!reading?.ok || isOfChrist(reading.value)) return undefined;
  const { low, high } = yearsOfGloss(years);
  const agreed = agreeing(reading.value, low, high);
  return agreed && good(agreed);
}

/** First and last year, the figures that the last leaves out taken from the first: 906/7. */
function yearsOfGloss({ first = '', last = first, firstBc, bc }: Record<string, string>): {
  low: number;
  high: number;
} {
  if (bc !== undefined) return { low: 1 - Number(first), high: 1 - Number(last) };
  if (firstBc !== undefined) return { low: 1 - Number(first), high: last === first ? 1 - Number(first) : Number(last) };
  const isCut = last.length < first.length;
  return { low: Number(first), high: Number(isCut ? first.slice(0, -last.length) + last : last) };
}

function agreeing(reading: Reading, low: number, high: number): Reading | undefined {
  const { earliest, latest } = reading;
  if (typeof earliest !== 'number' || typeof latest !== 'number') return undefined;
  return low <= high && earliest <= low && high <= latest ? reading : undefined;
}

/** The years of a cyclical date that lie within others. */
function chosen(reading: Reading, low: number, high: number): Reading | undefined {
  const years = (reading.years ?? []).filter(([first, last]) => first >= low && last <= high);
  const members = reading.edtf.replace(/[[\]]/g, '').split(',');
  const kept = members.filter((member) => years.some(([year]) => Number.parseInt(member, 10) === year));
  const [only] = kept;
  if (only === undefined) return undefined;
  return {
    ...reading,
    years,
    earliest: years.at(0)?.[0] ?? null,
    latest: years.at(-1)?.[1] ?? null,
    edtf: kept.length === 1 ? only : `[${kept.join(',')}]`,
  };
}
