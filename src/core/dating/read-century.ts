import { good, refuse } from '../outcome.ts';
import { parseFigures, parsePart, yearsOfPart, type Part } from './parts.ts';
import type { PointReader } from './point-reader.ts';
import { readYears } from './reading.ts';
import { readRoman } from './roman-numeral.ts';
import { AFTER_CHRIST, BEFORE_CHRIST } from './words.ts';
import { anyOf } from './written-text.ts';

const CENTURY = [
  ...[
    'century',
    'centuries',
    'cent.',
    'cent',
    'Jahrhundert',
    'Jahrhunderts',
    'Jahrhunderte',
    'Jahrh.',
    'Jh.',
    'Jh',
    'Jhs.',
  ],
  ...['Jhd.', 'Jhdt.', 'siècle', 'siècles', 'sec.', 'secolo', 'siglo', 'saeculum', 'saeculi', 'saec.', 'eeuw'],
];
/** Too short to follow a bare number: `12th c.` and `XIIe s.` are centuries, `4 C` and `2S` are not. */
const CENTURY_LETTERS = ['c.', 'c', 's.', 's'];
const SAECULUM = [
  ...['s.', 's', 'saec.', 'saeculo', 'saeculum', 'sec.', 'siglo', 'secolo', 'saeculi', 'siglos', 'secoli', 'ss.'],
];
const NAMES = [
  ...[
    'first',
    'second',
    'third',
    'fourth',
    'fifth',
    'sixth',
    'seventh',
    'eighth',
    'ninth',
    'tenth',
    'eleventh',
    'twelfth',
  ],
  ...['thirteenth', 'fourteenth', 'fifteenth', 'sixteenth', 'seventeenth', 'eighteenth', 'nineteenth', 'twentieth'],
  'twenty-first',
];

/** Centuries that are read at all, after Christ and before. */
const LAST = 21;
const EARLIEST = 100;

const ERA = `(?: ?(?:(?<bc>${anyOf(BEFORE_CHRIST)})|${anyOf(AFTER_CHRIST)}))?`;
const ORDINAL_ENDING = '(?:st|nd|rd|th|er|re|e|ème|ième|ste|de|o|a|\\.)';
const ROMAN = '(?<![A-Za-z])[IVX]+(?:st|nd|rd|th|e|er|ème|ième|o)?';
const ORDINAL = `(?<ordinal>(?<!\\d)\\d{1,2}${ORDINAL_ENDING}?|${ROMAN}|${anyOf(NAMES)})`;
/** Before a single letter a number in words or capitals must be plain: "is" and "seconds" are no centuries. */
const BEFORE_A_LETTER = `(?<![A-Za-z])[IVX]+(?:e|er|ème|ième|o)(?= )|(?<![A-Za-z])(?:[IVX]+|${anyOf(NAMES)})(?= [cs]\\.)`;
const FULL_ORDINAL = `(?<ordinal>(?<!\\d)\\d{1,2}${ORDINAL_ENDING}|${BEFORE_A_LETTER})`;

/** Before a century "in" is the English word; only after a Latin one is it *ineunte*. */
const partBefore = (words: string): Part | undefined => (/^in *$/i.test(words) ? undefined : parsePart(words));

interface Form {
  readonly form: RegExp;
  /** A form in Latin may name its part by a bare figure after the century: s. XIII 2. */
  readonly part: (words: string) => Part | undefined;
}

/** `late 12th century`, `1. Hälfte 12. Jh.`, `fin du XIIe s.`, `s. XIII ex.`, `fine del sec. XII`, `C12`, each with `BC` or its like. */
const FORMS: readonly Form[] = [
  { form: new RegExp(`^(?<part>.*?)${ORDINAL}[ -]?${anyOf(CENTURY)}${ERA}$`, 'i'), part: partBefore },
  { form: new RegExp(`^(?<part>.*?)${FULL_ORDINAL} ?${anyOf(CENTURY_LETTERS)}${ERA}$`, 'i'), part: partBefore },
  {
    form: new RegExp(`^${anyOf(SAECULUM)}(?: |(?<=\\.))(?<ordinal>[IVX]+)[ /]?(?<part>[^IVX].*?)??${ERA}$`, 'i'),
    part: (words) => parseFigures(words) ?? parsePart(words),
  },
  {
    form: new RegExp(`^(?<part>.+? )${anyOf(SAECULUM)}(?: |(?<=\\.))(?<ordinal>[IVX]+)${ERA}$`, 'i'),
    part: partBefore,
  },
  { form: new RegExp(`^(?<part>.*?)(?<![A-Za-z])C(?<ordinal>\\d{1,2})(?:st|nd|rd|th)?${ERA}$`), part: partBefore },
];

/** A century, or a half, third or quarter of one. The 12th runs from 1101 to 1200, the 1st BC from 100 to 1 BC. */
export const readCentury: PointReader = (text) => {
  for (const { form, part: readPart } of FORMS) {
    const groups = form.exec(text)?.groups;
    if (!groups) continue;
    const part = groups['part'] ? readPart(groups['part']) : undefined;
    if (groups['part'] && !part) continue;
    const number = numberOf(groups['ordinal'] ?? '');
    if (number === undefined) continue;
    if (number < 1 || number > (groups['bc'] === undefined ? LAST : EARLIEST)) {
      return refuse(`"${text}" is no century to date a coin by; write a year such as 1250, or 13th century.`);
    }
    const first = groups['bc'] === undefined ? 100 * (number - 1) + 1 : 1 - 100 * number;
    const { low, high } = part ? yearsOfPart(first, 100, part) : { low: first, high: first + 99 };
    return good(readYears(low, high));
  }
  return undefined;
};

function numberOf(ordinal: string): number | undefined {
  const name = NAMES.indexOf(ordinal.toLowerCase());
  if (name >= 0) return name + 1;
  const digits = /^\d+/.exec(ordinal)?.[0];
  if (digits !== undefined) return Number(digits);
  return readRoman((/^[IVX]+/i.exec(ordinal)?.[0] ?? '').toUpperCase());
}
