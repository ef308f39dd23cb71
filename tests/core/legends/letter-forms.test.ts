import { describe, expect, test } from 'vitest';
import { normalLetters } from '../../../src/core/legends/normal-legend.ts';
import { matchMask } from '../../../src/core/legends/match-mask.ts';
import { directionOf, scriptOf } from '../../../src/core/legends/parse-legend.ts';

/** Systems of digits that coins and medals use, as CLDR names them; their figures come from ICU. */
const DIGITS = ['arab', 'arabext', 'beng', 'deva', 'gujr', 'guru', 'knda', 'khmr', 'laoo', 'mlym', 'mymr', 'orya', 'tamldec', 'telu', 'thai', 'tibt', 'fullwide', 'mong']; // prettier-ignore

test.for(DIGITS)('the digits called %s are worth what ICU says', (system) => {
  const written = new Intl.NumberFormat(`en-u-nu-${system}`, { useGrouping: false }).format(1234567890);
  expect(written).not.toBe('1234567890');
  expect(Array.from(written, (digit) => normalLetters(digit, 'other')).join('')).toBe('1234567890');
});

test('ordinary figures are themselves', () => {
  expect(Array.from('1234567890', (digit) => normalLetters(digit, 'latin')).join('')).toBe('1234567890');
});

test('a mask with a date finds that date and no other', () => {
  for (const year of ['1766', '1767', '1768', '1769']) {
    expect(matchMask(year, `GEORGIVS III ${year}`).matches).toBe(true);
    expect(matchMask(year, 'GEORGIVS III 1700').matches).toBe(false);
    expect(matchMask('17?0', `GEORGIVS III ${year}`).matches).toBe(false);
  }
  expect(matchMask('١٢٥٦', 'ضرب في قسطنطينية ١٢٥٦').matches).toBe(true);
  expect(matchMask('١٢٥٦', 'ضرب في قسطنطينية ١٢٥٠').matches).toBe(false);
});

describe('letters as engravers cut them', () => {
  /** Cappelli, Lexicon abbreviaturarum, for struck letters and ligatures; the rest common practice. */
  test.for([
    ['latin', 'ÆTHELRED', 'AETHELRED'],
    ['latin', 'ÐANCMER', 'THANCMER'],
    ['latin', 'Ƿ', 'VV'],
    ['latin', 'hYB', 'HYB'],
    ['latin', 'ɅNGꟽ', 'ANGM'],
    ['latin', 'Iulius', 'IVLIVS'],
    ['latin', 'Straße', 'STRASSE'],
    ['latin', 'ΡΟΜΛ', 'POMA'],
    ['greek', 'ΒΑϹΙΛΕѠϹ', 'ΒΑΣΙΛΕΩΣ'],
    ['greek', 'BACIΛEΩC', 'ΒΑΣΙΛΕΩΣ'],
    ['cyrillic', 'КОПѢЙКА', 'КОПЕИКА'],
    ['cyrillic', 'РОССІЯ', 'РОССИЯ'],
    ['arabic', 'محمّد', 'محمد'],
    ['arabic', 'مـحـمـد', 'محمد'],
    ['hebrew', 'ירושלים', 'ירושלימ'],
  ] as const)('%s: %s is compared as %s', ([script, written, compared]) => {
    expect(Array.from(written, (letter) => normalLetters(letter, script)).join('')).toBe(compared);
  });

  test('stops, crosses and pellets are no letters', () => {
    for (const sign of ['+', '·', ':', '✠', '.', "'", ' ', '*']) expect(normalLetters(sign, 'latin')).toBe('');
  });
});

describe('the script of a legend and its direction', () => {
  test.for([
    ['CIVITAS EBORACI', 'latin', 'ltr'],
    ['ΒΑΣΙΛΕΩΣ ΑΛΕΞΑΝΔΡΟΥ', 'greek', 'ltr'],
    ['ПЕТРЪ АЛЕѮIЕВИЧЬ', 'cyrillic', 'ltr'],
    ['لا إله إلا الله', 'arabic', 'rtl'],
    ['ירושלים הקדושה', 'hebrew', 'rtl'],
    ['ᛒᛖᚨᚷᚾᛟᚦ', 'runic', 'ltr'],
    ['OFFA REX محمد رسول الله', 'arabic', 'rtl'],
    ['', 'latin', 'ltr'],
    ['1780', 'latin', 'ltr'],
  ] as const)('%s is %s, %s (The Unicode Standard, scripts and directions)', ([legend, script, direction]) => {
    expect(scriptOf(legend)).toBe(script);
    expect(directionOf(legend)).toBe(direction);
  });
});
