import type { Outcome } from '../outcome.ts';
import { good, refuse } from '../outcome.ts';
import { quoted, tidy, writeAmount } from './amount.ts';
import { formatLength, parseLength } from './parse-length.ts';

/** How big the face of a piece is, in millimetres. */
export type Size =
  | { readonly shape: 'round'; readonly low: number; readonly high: number; readonly text: string }
  | { readonly shape: 'rectangle'; readonly height: number; readonly width: number; readonly text: string };

const CROSS = / ?(?:x|×|\*| by ) ?/i;

/** Reads a diameter (`18.6 mm`, `18.2-19.4 mm`) or height × width (`9 x 24 mm`). */
export function parseSize(text: string): Outcome<Size> {
  const words = tidy(text);
  const sides = words.split(CROSS);
  if (sides.length > 2) {
    return refuse(`${quoted(text)} has three measures. Write height x width here, and the thickness in its own field.`);
  }
  const [first = '', second] = sides;
  if (second === undefined) {
    const length = parseLength(first);
    return length.ok
      ? good({ shape: 'round', low: length.value.low, high: length.value.high, text: text.trim() })
      : length;
  }
  const unit = second.replace(/^[\d.,/ ½¼¾-]+/, '');
  const width = parseLength(second);
  const height = parseLength(/[a-z"]$/i.test(first) ? first : `${first} ${unit}`);
  if (!width.ok) return width;
  if (!height.ok) return height;
  if (height.value.low < height.value.high || width.value.low < width.value.high) {
    return refuse(`${quoted(text)} gives a side two lengths. Write the greatest of each, like 9 x 24 mm.`);
  }
  return good({ shape: 'rectangle', height: height.value.high, width: width.value.high, text: text.trim() });
}

/** In millimetres, to be read back: `18.2–19.4 mm`, `9 × 24 mm` (height first). */
export function formatSize(size: Size): string {
  if (size.shape === 'round') return formatLength(size);
  return `${writeAmount(size.height, 3)} × ${writeAmount(size.width, 3)} mm`;
}

/** The room it takes when drawn, in millimetres; a flan that varies takes its greatest diameter. */
export function sizeSpan(size: Size): { readonly width: number; readonly height: number } {
  if (size.shape === 'round') return { width: size.high, height: size.high };
  return { width: size.width, height: size.height };
}
