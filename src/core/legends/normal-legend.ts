import type { Legend, Part } from './legend.ts';
import { normalLetters } from './letter-forms.ts';
import { LONGEST_LEGEND, parseLegend } from './parse-legend.ts';
import { scriptOf } from './script.ts';

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
