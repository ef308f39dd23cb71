import { good, refuse, type Outcome } from '../outcome.ts';
import type { Reading } from './dating.ts';
import { readRoman } from './numerals.ts';
import { parseFigures, parsePart, yearsOfPart, type Part } from './parts.ts';
import { readYears, type PointReader } from './reading.ts';
import { ABOUT, AFTER_CHRIST, BEFORE_CHRIST } from './words.ts';
import { anyOf } from './written-text.ts';

export const CENTURY = [
  ...['century', 'centuries', 'cent.', 'cent', 'Jahrhundert', 'Jahrhunderts', 'Jahrhunderte', 'Jahrh.', 'Jh.', 'Jh'],
  ...['Jhs.', 'Jhd.', 'Jhdt.', 'siècle', 'siècles', 'sec.', 'secolo', 'siglo', 'saeculum', 'saeculi', 'saec.', 'eeuw'],
  ...['århundrede', 'århundredes', 'århundre', 'århundrade', 'årh.', 'wiek', 'wieku', 'wieki', 'století', 'stol.'],
  ...['век', 'века', 'веке', 'веков', 'столетие', 'столетия', 'століття', 'ст.', 'storočie', 'storočia', 'storočí'],
  ...['stoljeće', 'stoljeća', 'század', 'vuosisata', 'vuosisadan', 'århundradet', 'århundredet', 'århundret', 'eeuwen'],
];
/** Too short to follow a bare number: `12th c.`, `XIIe s.` and `XIV w.` are centuries, `4 C` and `2S` are not. */
export const CENTURY_LETTERS = ['c.', 'c', 's.', 's', 'w.', 'в.', 'вв.'];
export const SAECULUM = [
  ...['s.', 's', 'saec.', 'saeculo', 'saeculum', 'sec.', 'siglo', 'secolo', 'saeculi', 'siglos', 'secoli', 'ss.'],
  ...['século', 'séc.', 'séculos', 'segle', 'segles', 'secolul'],
];
const NAMES = [
  ...['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth', 'tenth', 'eleventh'],
  ...['twelfth', 'thirteenth', 'fourteenth', 'fifteenth', 'sixteenth', 'seventeenth', 'eighteenth', 'nineteenth'],
  ...['twentieth', 'twenty-first'],
];

/** Centuries that are read at all, after Christ and before. */
const LAST = 21;
const EARLIEST = 100;

const ERA = `(?: ?(?:(?<bc>${anyOf(BEFORE_CHRIST)})|(?<ad>${anyOf(AFTER_CHRIST)})))?`;
const ORDINAL_ENDING = '(?:st|nd|rd|th|er|re|e|ème|ième|ste|de|o|a|\\.)';
const ROMAN = '(?<![A-Za-z])[IVX]+(?:st|nd|rd|th|e|er|ème|ième|o|\\.)?';
const ORDINAL = `(?<ordinal>(?<!\\d)\\d{1,2}${ORDINAL_ENDING}?|${ROMAN}|${anyOf(NAMES)})`;
/** Before a single letter a number in words or capitals must be plain: "is" and "seconds" are no centuries. */
const ROMAN_ENDED = '(?<![A-Za-z])[IVX]+(?:e|er|ème|ième|o)(?= )';
const BEFORE_A_LETTER = `${ROMAN_ENDED}|(?<![A-Za-z])(?:[IVX]+|${anyOf(NAMES)})(?= (?:[csw]|вв?)\\.)`;
const FULL_ORDINAL = `(?<ordinal>(?<!\\d)\\d{1,2}${ORDINAL_ENDING}|${BEFORE_A_LETTER})`;
/** `18th century (late)`, `18. Jh., 2. Hälfte` */
const PART_AFTER = '(?: ?\\((?<after>[^()]+)\\)|, (?<last>[^,()]+))?';

/** A century behind a number with an ending, which lends both: `20th c. AD`, `4th cent.`, `19e s.` */
const LENDS = new RegExp(
  `(?:^| )\\d{1,2}(?<ending>${ORDINAL_ENDING}) ?(?<century>${anyOf([...CENTURY, ...CENTURY_LETTERS])}${ERA})$`,
  'i',
);
const ABOUT_A_NUMBER = new RegExp(`^(?:${anyOf(ABOUT)} ?)?(?:AD )?\\d{1,2}$`, 'i');

/** The bare number before a century as the century it is: of `19-20th c.` the `19th c.`, and never the year 19. */
export function asCentury(left: string, right: string): string | undefined {
  const { ending = '', century = '' } = LENDS.exec(right)?.groups ?? {};
  return ending !== '' && ABOUT_A_NUMBER.test(left) ? `${left}${ending} ${century}` : undefined;
}

/** Before a century "in" is the English word; only after a Latin one is it *ineunte*. */
const partBefore = (words: string): Part | undefined => (/^in *$/i.test(words) ? undefined : parsePart(words));

interface Form {
  readonly form: RegExp;
  /** A form in Latin may name its part by a bare figure after the century: s. XIII 2. */
  readonly part: (words: string) => Part | undefined;
}

const LATIN = `${anyOf(SAECULUM)}(?: |(?<=\\.))(?<ordinal>[IVX]+)`;

/** `late 12th century`, `1. Hälfte 12. Jh.`, `fin du XIIe s.`, `s. XIII ex.`, `fine del sec. XII`, `C12`, each with `BC` or its like. */
const FORMS: readonly Form[] = [
  { form: new RegExp(`^(?<part>.*?)${ORDINAL}[ -]?${anyOf(CENTURY)}${ERA}${PART_AFTER}$`, 'i'), part: partBefore },
  {
    form: new RegExp(`^(?<part>.*?)${FULL_ORDINAL} ?${anyOf(CENTURY_LETTERS)}${ERA}${PART_AFTER}$`, 'i'),
    part: partBefore,
  },
  {
    form: new RegExp(`^${LATIN}[ /]?(?<part>[^IVX].*?)??${ERA}$`, 'i'),
    part: (words) => parseFigures(words) ?? parsePart(words),
  },
  { form: new RegExp(`^(?<part>.+? )${LATIN}${ERA}$`, 'i'), part: partBefore },
  // Italian museums leave out the word: II a.C., tra VII e VI a.C.
  { form: new RegExp(`^(?<part>)(?<ordinal>[IVX]+) (?:(?<bc>a\\. ?C\\.|aC)|(?<ad>d\\. ?C\\.|dC))$`), part: partBefore },
  { form: new RegExp(`^(?<part>.*?)(?<![A-Za-z])C(?<ordinal>\\d{1,2})(?:st|nd|rd|th)?${ERA}$`), part: partBefore },
];

/** A century, or a half, third or quarter of one. The 12th runs from 1101 to 1200, the 1st BC from 100 to 1 BC. */
export const readCentury: PointReader = (said, { era }) => {
  // AD 1st century, as museums list it.
  const text = said.replace(/^(?:AD|CE) (?=.*[^\d\s])(?!.*(?:BC|AD|CE))/, '');
  for (const { form, part: readPart } of FORMS) {
    const groups = form.exec(text)?.groups;
    if (!groups) continue;
    const after = groups['after'] ?? groups['last'];
    if (after !== undefined && groups['part']) continue;
    const words = after ?? groups['part'];
    const part = words ? readPart(words) : undefined;
    if (words && !part) continue;
    const number = ordinalNumber(groups['ordinal'] ?? '');
    if (number === undefined) continue;
    if (number < 1 || number > (groups['bc'] === undefined ? LAST : EARLIEST)) {
      return refuse(`"${text}" is no century to date a coin by; write a year such as 1250, or 13th century.`);
    }
    const isNamed = groups['bc'] !== undefined || groups['ad'] !== undefined || text !== said;
    if (!isNamed && era !== undefined && era !== 'AD') {
      return refuse(`"${text}" stands where years are counted ${era}; write ${text} BC or ${text} AD.`);
    }
    const first = groups['bc'] === undefined ? 100 * (number - 1) + 1 : 1 - 100 * number;
    const { low, high } = part ? yearsOfPart(first, 100, part) : { low: first, high: first + 99 };
    return good(readYears(low, high));
  }
  return undefined;
};

/** `13th`, `XIIIe`, `thirteenth` */
export function ordinalNumber(ordinal: string): number | undefined {
  const name = NAMES.indexOf(ordinal.toLowerCase());
  if (name >= 0) return name + 1;
  const digits = /^\d+/.exec(ordinal)?.[0];
  if (digits !== undefined) return Number(digits);
  return readRoman((/^[IVX]+/i.exec(ordinal)?.[0] ?? '').toUpperCase());
}

const TENS = '(?<decade>\\d{1,3})0';
/** What French, Dutch, Italian and Spanish put before a decade. */
export const YEARS_OF = '(?:(?:les )?années|(?:de )?jaren|(?:gli )?anni|(?:los )?años)';
const AFTER_TENS = "(?:'?s| ?er Jahre| ?er|'?erne)";
const DECADES = [
  new RegExp(`^(?<part>.*?)(?<!\\d|\\d-)(?:(?<adBefore>AD|CE) |(?<bcBefore>BC|BCE) )?${TENS}${AFTER_TENS}${ERA}$`, 'i'),
  new RegExp(`^(?<part>.*?)${YEARS_OF} (?<decade>\\d{3})0${ERA}$`, 'i'),
];
/** `1500-tallet` are the years that begin with 15, and `1840-tallet` those that begin with 184. */
const ROUND_FIGURES = '(?<!\\d|\\d-)(?:(?<hundred>\\d{1,2})00|(?<ten>\\d{2,3})0)';
/** `1100-tallet`, `mitten av 1000-talet`, `1000-talets mitt`, `1200-luvun alku`. */
const NAMED_BY_FIGURES = [
  new RegExp(`^(?<part>.*?)${ROUND_FIGURES}-(?:tallet|talet|tals?|årene|luku|luvulla|luvulta)$`, 'i'),
  new RegExp(`^${ROUND_FIGURES}-(?:tal(?:le|e)?ts|årenes|luvun) (?<part>\\p{L}.*)$`, 'iu'),
];
/** The hundreds of Italian, from the 1200s: `prima metà del Trecento`, `nel '500`. */
const HUNDREDS = 'Duecento, Trecento, Quattrocento, Cinquecento, Seicento, Settecento, Ottocento, Novecento'.split(
  ', ',
);
const IN_ITALIAN = new RegExp(`^(?<part>.*?)(?:(?<name>${anyOf(HUNDREDS)})|(?<!\\d)'(?<hundred>[2-9])00)$`, 'i');

/** `1280s`, `late 1280s`, `330s BC`, `AD 260s`, `1840er Jahre`, `années 1840`, `jaren 1840`, `1500-tallet`, `Trecento`. */
export const readDecade: PointReader = (text) => {
  const named = NAMED_BY_FIGURES.map((form) => form.exec(text)?.groups).find((found) => found !== undefined);
  if (named)
    return partOf(
      named['part'],
      Number(named['hundred'] ?? 0) * 100 || Number(named['ten']) * 10,
      named['ten'] === undefined ? 100 : 10,
    );
  const italian = IN_ITALIAN.exec(text)?.groups;
  if (italian) {
    const name = HUNDREDS.findIndex((word) => word.toLowerCase() === italian['name']?.toLowerCase());
    return partOf(italian['part'], 1000 + 100 * (name < 0 ? Number(italian['hundred']) : name + 2), 100);
  }
  const groups = DECADES.map((form) => form.exec(text)?.groups).find((found) => found !== undefined);
  const decade = groups?.['decade'] ?? '';
  const part = groups?.['part'] ? parsePart(groups['part']) : undefined;
  if (!groups || (groups['part'] && !part)) return undefined;
  const isBefore = groups['bc'] !== undefined || groups['bcBefore'] !== undefined;
  const hasEra = isBefore || groups['ad'] !== undefined || groups['adBefore'] !== undefined;
  if (decade.endsWith('0')) {
    const sample = isBefore ? `${decade}9-${decade}0 BC` : `${hasEra ? 'AD ' : ''}${decade}0-${decade}9`;
    return refuse(`"${text}" may be ten years or a hundred; write them as a range, such as ${sample}.`);
  }
  if (!hasEra && decade.length < 3) {
    return refuse(`A bare ${decade}0s could be counted from any era; write ${decade}0s AD or ${decade}0s BC.`);
  }
  // The 330s BC are the years from 339 to 330.
  const first = isBefore ? 1 - Number(`${decade}9`) : Number(`${decade}0`);
  const { low, high } = part ? yearsOfPart(first, 10, part) : { low: first, high: first + 9 };
  const edtf = first > 0 && !part ? { edtf: `${decade.padStart(3, '0')}X` } : {};
  return good({ ...readYears(low, high), ...edtf });
};

/** Some years, or the part of them that words name. */
function partOf(words: string | undefined, first: number, length: number): Outcome<Reading> | undefined {
  const part = words ? parsePart(words) : { number: 1, of: 1 };
  if (!part) return undefined;
  const { low, high } = yearsOfPart(first, length, part);
  return good(readYears(low, high));
}
