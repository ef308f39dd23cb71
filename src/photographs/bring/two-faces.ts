import { findPieces, LOOK_AT } from '../locate/find-piece.ts';
import type { Box, Pixels } from '../locate/pixels.ts';
import { reduced } from '../locate/pixels.ts';

/** Board kept round a face that is cut out of a picture of two, as a part of its longer side. */
const MARGIN = 0.12;
/** Two things in a picture are the two faces of one piece when neither is smaller than this part of the other. */
const ALIKE = 0.8;

/**
 * The two faces in a picture that shows them side by side or one above the other: obverse left or above. Null when it
 * does not show two things of one size.
 */
export function twoFaces(pixels: Pixels): readonly [obverse: Box, reverse: Box] | null {
  const look = reduced(pixels, LOOK_AT);
  const [one, other, ...more] = findPieces(look, 3);
  // Three things of one size are no two faces.
  if (one === undefined || other === undefined || more.length > 0) return null;
  const times = pixels.width / look.width;
  const [a, b] = [one, other].map(({ box: { left, top, width, height } }) => ({ left: left * times, top: top * times, width: width * times, height: height * times })) as [Box, Box]; // prettier-ignore
  const isAlike = (first: number, second: number): boolean =>
    Math.min(first, second) >= ALIKE * Math.max(first, second);
  if (!isAlike(a.width, b.width) || !isAlike(a.height, b.height)) return null;
  const across = Math.abs(a.left - b.left);
  const down = Math.abs(a.top - b.top);
  const isFirst = across >= down ? a.left <= b.left : a.top <= b.top;
  const [first, second] = isFirst ? [a, b] : [b, a];
  const between = across >= down ? second.left - (first.left + first.width) : second.top - (first.top + first.height);
  const margin = Math.min(MARGIN * Math.max(a.width, a.height, b.width, b.height), Math.max(0, between / 2));
  return [grown(first, margin, pixels), grown(second, margin, pixels)];
}

function grown({ left, top, width, height }: Box, by: number, within: { width: number; height: number }): Box {
  const from = { x: Math.max(0, Math.floor(left - by)), y: Math.max(0, Math.floor(top - by)) };
  const to = {
    x: Math.min(within.width, Math.ceil(left + width + by)),
    y: Math.min(within.height, Math.ceil(top + height + by)),
  };
  return { left: from.x, top: from.y, width: to.x - from.x, height: to.y - from.y };
}
