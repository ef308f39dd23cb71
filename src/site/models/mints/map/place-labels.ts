/** A dot on a map with a name to be written beside it, in the units of the drawing. */
export type Dot = { readonly x: number; readonly y: number; readonly name: string };

/** Where a name begins or ends; null where there is no room for it. */
export type PlacedLabel = {
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
} | null;

export type Frame = { readonly width: number; readonly height: number; readonly letter: number; readonly line: number };

type Box = { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };

const CLEAR = 9;

/**
 * Finds room for each name to the right of its dot, to the left, above or below, without covering a dot or another name or
 * leaving the frame. Names are tried in the order given, so the more important come first.
 */
export function placeLabels(dots: readonly Dot[], frame: Frame): readonly PlacedLabel[] {
  const taken: Box[] = dots.map(({ x, y }) => ({ left: x - 6, right: x + 6, top: y - 6, bottom: y + 6 }));
  return dots.map((dot, at) => {
    const own = taken[at];
    for (const { label, box } of choicesOf(dot, frame)) {
      const inside = box.left >= 0 && box.right <= frame.width && box.top >= 0 && box.bottom <= frame.height;
      if (!inside || taken.some((other) => other !== own && overlap(box, other))) continue;
      taken.push(box);
      return label;
    }
    return null;
  });
}

function choicesOf({ x, y, name }: Dot, { letter, line }: Frame): readonly { label: PlacedLabel; box: Box }[] {
  const width = name.length * letter;
  const at = (anchor: 'start' | 'middle' | 'end', dx: number, dy: number): { label: PlacedLabel; box: Box } => {
    const from = anchor === 'start' ? x + dx : anchor === 'end' ? x + dx - width : x + dx - width / 2;
    const base = y + dy;
    return {
      label: { x: x + dx, y: base, anchor },
      box: { left: from, right: from + width, top: base - line * 0.62, bottom: base + line * 0.12 },
    };
  };
  const half = line * 0.3;
  return [
    at('start', CLEAR, half), at('end', -CLEAR, half), at('middle', 0, -CLEAR), at('middle', 0, CLEAR + line * 0.7),
    at('start', CLEAR * 0.7, -CLEAR * 0.6), at('start', CLEAR * 0.7, CLEAR + half), at('end', -CLEAR * 0.7, -CLEAR * 0.6),
    at('end', -CLEAR * 0.7, CLEAR + half),
  ]; // prettier-ignore
}

function overlap(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}
