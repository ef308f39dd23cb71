import { LOST, legendOrLetters, normalGlyphs, normalLetters } from './normal-legend.ts';
import type { Legend, Script } from './parse-legend.ts';

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

export const LONGEST_MASK = 100;

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

/** Whether a mask can be part of a legend; the letter of the normal form it begins at; 0–1, how much of the legend it is. */
export type MaskMatch = { readonly matches: boolean; readonly at: number | null; readonly score: number };

const NO_MATCH: MaskMatch = { matches: false, at: null, score: 0 };

/**
 * Letters of a printed legend that a mask may spell with two: thorn is th, and both thorn and P stand for wynn, that is
 * w, in catalogues whose printers had no wynn (`EADÞARD`, `PILLELM`; common practice).
 */
const SPELLED_WITH_TWO: Readonly<Record<string, readonly string[]>> = { Þ: ['TH', 'VV'], P: ['VV'] };

/**
 * The greatest weight with which the signs can stand on the ring when the first stands at `start`; −1 when they cannot.
 * `best[i][j]`: the first i signs used up, the first j letters after `start` passed.
 */
function weightFrom(signs: readonly string[], ring: Ring, start: number): number {
  const around = ring.letters.length;
  // Rows are made when something reaches them: most starts fail at the second sign and cost one row.
  const best: (number[] | undefined)[] = new Array<number[] | undefined>(signs.length + 1).fill(undefined);
  const raise = (i: number, j: number, weight: number): void => {
    if (i > signs.length || j > around) return;
    const row = (best[i] ??= new Array<number>(around + 1).fill(-1));
    if (weight > (row[j] ?? -1)) row[j] = weight;
  };
  raise(0, 0, 0);
  for (let i = 0; i <= signs.length; i += 1) {
    const row = best[i];
    if (row === undefined) continue;
    const sign = signs[i];
    for (let j = 0; j <= around; j += 1) {
      const weight = row[j] ?? -1;
      if (weight < 0) continue;
      if (sign === '*') {
        raise(i + 1, j, weight);
        raise(i, j + 1, weight);
        continue;
      }
      if (j === around || sign === undefined) continue;
      const at = (start + j) % around;
      const letter = ring.letters[at];
      const gained = weight + (ring.weights[at] ?? 0);
      if (letter === LOST) {
        raise(i + 1, j, weight);
        if (i > 0) raise(i, j + 1, weight);
      } else if (sign === '?') {
        raise(i + 1, j + 1, weight);
        raise(i + 1, j + (ring.widths[at] ?? 1), weight);
      } else if (letter === sign) raise(i + 1, j + 1, gained);
      const pair = sign + (signs[i + 1] ?? '');
      if (SPELLED_WITH_TWO[letter ?? '']?.includes(pair) === true) raise(i + 2, j + 1, gained * 2 - weight);
      const next = (letter ?? '') + (ring.letters[(at + 1) % around] ?? '');
      if (SPELLED_WITH_TWO[sign]?.includes(next) === true) raise(i + 1, j + 2, gained);
    }
  }
  return Math.max(-1, ...(best[signs.length] ?? []));
}

/** Whether a mask that opens with this sign can begin at this letter at all. */
function mayBegin(first: string, letter: string): boolean {
  if (first === '?' || letter === LOST || letter === first) return true;
  return SPELLED_WITH_TWO[letter] !== undefined || SPELLED_WITH_TWO[first] !== undefined;
}

/**
 * Finds a worn stretch on a legend. The mask is what can be seen: letters, `?` for one character, `*` for any run, none
 * included. It may begin anywhere on the rim and run past the end to the beginning, once round at most; it need not
 * account for the whole rim. Both are compared in the normal form. A loss in the legend may stand for any letters of
 * the mask, but at least half the mask's letters must stand on letters cut (restored ones count half). A mask without
 * a letter or `?` asks nothing, and nothing answers it.
 *
 * Cost: starts × signs × letters, each tried once, because the best weight for each pair is kept: 40 × 12 × 40 =
 * 19,200 steps for twelve signs on a legend of forty letters, and far fewer when few starts fit the first sign.
 */
export function matchRing(mask: string, ring: Ring): MaskMatch {
  const signs = readMask(mask, ring.script);
  const first = signs[0];
  if (first === undefined) return NO_MATCH;
  let at: number | null = null;
  let weight = signs.filter((sign) => sign !== '?' && sign !== '*').length - 1;
  for (const [start, letter] of ring.letters.entries()) {
    if (!mayBegin(first, letter)) continue;
    const found = weightFrom(signs, ring, start);
    if (found > weight) [at, weight] = [start, found];
  }
  if (at === null) return NO_MATCH;
  const whole = ring.letters.filter((letter) => letter !== LOST).length * 2;
  return { matches: true, at, score: whole === 0 ? 0 : Math.min(1, weight / whole) };
}

/** {@link matchRing} on text. */
export function matchMask(mask: string, legend: string): MaskMatch {
  return matchRing(mask, readRing(legend));
}

/** The candidates a mask could be part of, best first: those it is the greater part of; equals in the order given. */
export function findLegends<T extends { readonly id: string; readonly legend: string }>(
  mask: string,
  candidates: readonly T[],
): readonly (T & { readonly at: number; readonly score: number })[] {
  return candidates
    .flatMap((candidate) => {
      const { at, score } = matchMask(mask, candidate.legend);
      return at === null ? [] : [{ ...candidate, at, score }];
    })
    .sort((one, other) => other.score - one.score);
}
