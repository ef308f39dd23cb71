import { LONGEST_LEGEND, parseLegend, scriptOf } from './parse-legend.ts';
import type { Legend, Part, Script } from './parse-legend.ts';

/**
 * What each form of a letter is compared as, in capitals, after marks above and below are gone.
 * Latin forms: A. Cappelli, *Lexicon abbreviaturarum* (1899), for ligatures and struck letters; the reversed,
 * inverted and Lombardic forms are common practice in transcribing English and Frankish coins.
 */
const LATIN: Readonly<Record<string, string>> = {
  U: 'V', J: 'I', W: 'VV', Ƿ: 'VV', Æ: 'AE', Œ: 'OE', Ꜳ: 'AA', Ꜵ: 'AO', Ꜷ: 'AV', Ꜹ: 'AV',
  // Eth stands for th. Thorn stays: printers also use it for wynn (EOFERÞIC), so only a mask can tell which it is.
  Ð: 'TH', Đ: 'TH', Ɖ: 'TH', Ø: 'O', Ł: 'L', Ħ: 'H', ẞ: 'SS', Ŋ: 'N', '&': 'ET', '⁊': 'ET',
  // Letters upside down, back to front or open, as engravers left them.
  Ɐ: 'A', Ʌ: 'A', Ǝ: 'E', Ɛ: 'E', Ɔ: 'C', Ↄ: 'C', Ꟶ: 'H', Ⱶ: 'H', Ɯ: 'M', ꟽ: 'M', Ꞁ: 'L', Ꝛ: 'R', Ꝺ: 'D', Ꞇ: 'T', Ꝼ: 'F', Ᵹ: 'G', Ꝑ: 'P', Ꝓ: 'P', Ꝗ: 'Q', Ꝙ: 'Q', Ꝟ: 'V', Ꝫ: 'ET',
  // Greek and Cyrillic letters typed for the Latin ones that look like them.
  Α: 'A', Λ: 'A', Β: 'B', Ε: 'E', Є: 'E', Ζ: 'Z', Η: 'H', Ι: 'I', Κ: 'K', Μ: 'M', Ν: 'N', Ο: 'O', Ρ: 'P', Σ: 'S', Τ: 'T', Υ: 'V', Χ: 'X', Ϲ: 'C',
  А: 'A', В: 'B', С: 'C', Е: 'E', Н: 'H', І: 'I', К: 'K', М: 'M', О: 'O', Р: 'P', Ѕ: 'S', Т: 'T', Х: 'X', И: 'N', Я: 'R',
}; // prettier-ignore

/** The lunate sigma and omega of coins beside the printed ones, and Latin letters typed for Greek. */
const GREEK: Readonly<Record<string, string>> = {
  Ϲ: 'Σ', ς: 'Σ', Ѡ: 'Ω', W: 'Ω', ϒ: 'Υ',
  A: 'Α', B: 'Β', C: 'Σ', E: 'Ε', Є: 'Ε', Z: 'Ζ', H: 'Η', I: 'Ι', K: 'Κ', M: 'Μ', N: 'Ν', O: 'Ο', P: 'Ρ', R: 'Ρ', S: 'Σ', T: 'Τ', Y: 'Υ', V: 'Υ', X: 'Χ',
}; // prettier-ignore

/** Letters that Russian type dropped in 1918 beside those that took their place; Latin letters typed for Cyrillic. */
const CYRILLIC: Readonly<Record<string, string>> = {
  І: 'И', Ї: 'И', Ѣ: 'Е', Ѳ: 'Ф', Ѵ: 'И', Ѡ: 'О', Є: 'Е', Ѕ: 'З', Ꙋ: 'У', Ѹ: 'У', Ѧ: 'Я', Ꙗ: 'Я',
  A: 'А', B: 'В', C: 'С', E: 'Е', H: 'Н', K: 'К', M: 'М', O: 'О', P: 'Р', T: 'Т', X: 'Х',
}; // prettier-ignore

/** Seats of hamza fall with the marks; final forms of ya, the Persian letters and the stretched line (tatweel) go here. */
const ARABIC: Readonly<Record<string, string>> = { ى: 'ي', ی: 'ي', ک: 'ك', ٱ: 'ا', ـ: '', ہ: 'ه', ۀ: 'ه' };

const HEBREW: Readonly<Record<string, string>> = { ך: 'כ', ם: 'מ', ן: 'נ', ף: 'פ', ץ: 'צ' };

const NONE: Readonly<Record<string, string>> = {};

const FORMS: Readonly<Record<Script, Readonly<Record<string, string>>>> = {
  latin: LATIN,
  greek: GREEK,
  cyrillic: CYRILLIC,
  arabic: ARABIC,
  hebrew: HEBREW,
  runic: NONE,
  other: NONE,
};

/**
 * The value of a digit in any script, as an ordinary figure: the Arabic ٦ is 6. Unicode keeps the digits of a script in one
 * run, from nought upwards, and what adjoins it is another run of ten.
 */
function figure(digit: string): string {
  let zero = digit.codePointAt(0) ?? 0;
  while (/\p{Nd}/u.test(String.fromCodePoint(zero - 1))) zero -= 1;
  return String(((digit.codePointAt(0) ?? 0) - zero) % 10);
}

/**
 * The letters one written character is compared as in a legend of this script: none for a stop, a mark or an accent,
 * two for W and Æ.
 */
export function normalLetters(character: string, script: Script): string {
  const forms = FORMS[script];
  let letters = '';
  for (const letter of character.normalize('NFKD').toUpperCase().normalize('NFKD')) {
    const form = Object.hasOwn(forms, letter) ? forms[letter] : undefined;
    if (form !== undefined) letters += form;
    else if (/\p{Nd}/u.test(letter)) letters += figure(letter);
    else if (/[\p{L}\p{Nl}]/u.test(letter)) letters += letter;
  }
  return letters;
}

/** What one written character is compared as. A lost stretch, of unknown length, is `…`. */
export type Glyph = { readonly letters: string; readonly state: 'cut' | 'restored' | 'lost' };

/** Where a stretch nobody can read is in a normal form. */
export const LOST = '…';

function glyphsOf(part: Part, script: Legend['script']): readonly Glyph[] {
  if (part.kind === 'lost') return [{ letters: LOST, state: 'lost' }];
  if (part.kind !== 'cut' && part.kind !== 'restored') return [];
  const state = part.kind;
  return Array.from(part.text.normalize('NFC'))
    .map((character) => ({ letters: normalLetters(character, script), state }))
    .filter((glyph) => glyph.letters !== '');
}

/** The characters of a legend that are compared: cut, restored and lost; never those that complete an abbreviation. */
export function normalGlyphs(legend: Legend): readonly Glyph[] {
  return legend.parts.flatMap((part) => glyphsOf(part, legend.script));
}

/** Reads a legend, or, where its brackets are in disorder, takes every letter of it (of the first thousand) as cut. */
export function legendOrLetters(text: string): Legend {
  const outcome = parseLegend(text);
  if (outcome.ok) return outcome.value;
  const letters = text.slice(0, LONGEST_LEGEND);
  return { text, parts: [{ kind: 'cut', text: letters }], direction: 'ltr', script: scriptOf(letters) };
}

/**
 * The form in which two legends are compared: capitals without space, stop, mark or accent; U as V, J as I, W as VV,
 * Æ as AE, eth as TH, Lombardic and back-to-front letters as the plain ones, figures of any script as 0–9, every other
 * script kept. Restored letters count; those in `( )` do not, because they never stood there; a loss is `…`.
 */
export function normalLegend(text: string): string {
  return normalGlyphs(legendOrLetters(text))
    .map((glyph) => glyph.letters)
    .join('');
}
