import type { Legend, Script } from './legend.ts';
import { normalLetters } from './letter-forms.ts';
import { LOST, legendOrLetters, normalGlyphs } from './normal-legend.ts';

/**
 * A legend as a closed ring of normal letters. `weights`: 2 for a letter cut, 1 for one restored, 0 for a lost stretch
 * (whose letter is `…`). `widths`: how many letters the character beginning here takes (2 for W and Æ), 1 otherwise.
 */
export type Ring = {
  readonly letters: readonly string[];
  readonly weights: readonly number[];
  readonly widths: readonly number[];
  readonly script: Script;
};

export function ringOf(legend: Legend): Ring {
  const letters: string[] = [];
  const weights: number[] = [];
  const widths: number[] = [];
  for (const glyph of normalGlyphs(legend)) {
    const spelled = Array.from(glyph.letters);
    for (const [position, letter] of spelled.entries()) {
      letters.push(letter);
      weights.push(glyph.state === 'cut' ? 2 : glyph.state === 'restored' ? 1 : 0);
      widths.push(position === 0 ? spelled.length : 1);
    }
  }
  return { letters, weights, widths, script: legend.script };
}

const LONGEST_MASK = 100;

/** A ring from text; see {@link legendOrLetters} for text that is not a legend. */
export function readRing(text: string): Ring {
  return ringOf(legendOrLetters(text));
}

/**
 * What a mask asks for, sign by sign: a normal letter, `?` for one character, `*` for any run. Everything else in it is
 * passed over; `…` and `...` are runs; a run at either end says nothing and falls away. No worn stretch is longer than a
 * hundred characters: of a longer mask nothing is asked.
 */
export function readMask(mask: string, script: Script): readonly string[] {
  const signs: string[] = [];
  if (mask.length > LONGEST_MASK) return signs;
  for (const sign of mask.replace(/\.{3,}/gu, LOST).normalize('NFC')) {
    if (sign === '?' || sign === '؟') signs.push('?');
    else if (sign === '*' || sign === LOST) {
      if (signs.length > 0 && signs.at(-1) !== '*') signs.push('*');
    } else signs.push(...Array.from(normalLetters(sign, script)));
  }
  if (signs.at(-1) === '*') signs.pop();
  return signs;
}
