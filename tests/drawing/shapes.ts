/**
 * Shapes of a die, as SVG. The die's centre is 0,0 and its rim lies at 500, whatever the piece's true size; y goes down.
 * Everything white stands up from the die (or is sunk, when the layer says so).
 */
export function fill(path: string): string {
  return `<path d="${path}"/>`;
}

export function stroke(path: string, width: number, ends: 'round' | 'butt' = 'round'): string {
  return `<path d="${path}" fill="none" stroke="#fff" stroke-width="${width}" stroke-linecap="${ends}" stroke-linejoin="round"/>`;
}

export function dot(x: number, y: number, radius: number): string {
  return `<circle cx="${x}" cy="${y}" r="${radius}"/>`;
}

export function oval(x: number, y: number, across: number, down: number, turn = 0): string {
  return `<ellipse cx="${x}" cy="${y}" rx="${across}" ry="${down}" transform="rotate(${turn} ${x} ${y})"/>`;
}

export function ring(x: number, y: number, radius: number, width: number): string {
  return `<circle cx="${x}" cy="${y}" r="${radius}" fill="none" stroke="#fff" stroke-width="${width}"/>`;
}

export function box(x: number, y: number, width: number, height: number): string {
  return `<rect x="${x}" y="${y}" width="${width}" height="${height}"/>`;
}

/** Moves, turns (degrees clockwise) and scales a drawing. */
export function place(drawing: string, x: number, y: number, scale = 1, turn = 0): string {
  return `<g transform="translate(${x} ${y}) rotate(${turn}) scale(${scale})">${drawing}</g>`;
}

/** The drawing as seen in a mirror held upright. */
function mirrored(drawing: string): string {
  return `<g transform="scale(-1 1)">${drawing}</g>`;
}

/** The drawing and its mirror image. */
export function bothSides(drawing: string): string {
  return drawing + mirrored(drawing);
}

/** The drawing, several times round the centre. */
export function round(drawing: string, times: number, from = 0): string {
  return Array.from({ length: times }, (_, at) => place(drawing, 0, 0, 1, from + (at * 360) / times)).join('');
}

/** A ring of beads. */
export function beads(radius: number, times: number, size: number): string {
  return round(dot(0, -radius, size), times);
}

/** A ring of short bars pointing to the centre. */
export function teeth(radius: number, length: number, times: number, width: number): string {
  return round(box(-width / 2, -radius, width, length), times);
}

/** A bar that is broader at its ends, as a wedge punch leaves it. */
export function bar(x1: number, y1: number, x2: number, y2: number, middle: number, end1: number, end2 = end1): string {
  const length = Math.hypot(x2 - x1, y2 - y1) || 1;
  const [ax, ay] = [-(y2 - y1) / length, (x2 - x1) / length];
  const [mx, my] = [(x1 + x2) / 2, (y1 + y2) / 2];
  // A quadratic curve passes half-way to its control point, so the control is set to make the waist right.
  const waist = middle - (end1 + end2) / 4;
  const p = (x: number, y: number, wide: number): string => `${n(x + ax * wide)} ${n(y + ay * wide)}`;
  return fill(
    `M${p(x1, y1, end1 / 2)}Q${p(mx, my, waist)} ${p(x2, y2, end2 / 2)}L${p(x2, y2, -end2 / 2)}Q${p(mx, my, -waist)} ${p(x1, y1, -end1 / 2)}Z`,
  );
}

/** A cross with splayed arms. */
export function crossPattee(x: number, y: number, reach: number, waist = reach * 0.2, end = reach * 0.8): string {
  const arm = fill(
    `M${n(-waist / 2)} 0Q${n(-waist / 2)} ${n(-reach * 0.5)} ${n(-end / 2)} ${n(-reach)}L${n(end / 2)} ${n(-reach)}Q${n(waist / 2)} ${n(-reach * 0.5)} ${n(waist / 2)} 0Z`,
  );
  return place(round(arm, 4) + dot(0, 0, waist * 0.6), x, y);
}

/** A crescent: the thick part of a ring between two angles (degrees; 0 right, 90 down), thin at its ends. */
export function crescent(
  x: number,
  y: number,
  across: number,
  down: number,
  from: number,
  to: number,
  thick: number,
  thin = 0.15,
): string {
  const steps = Math.max(8, Math.ceil(Math.abs(to - from) / 9));
  const side = (sign: number): string[] =>
    Array.from({ length: steps + 1 }, (_, at) => {
      const part = at / steps;
      const angle = ((from + (to - from) * part) * Math.PI) / 180;
      const wide = (thick / 2) * (thin + (1 - thin) * Math.sin(Math.PI * part)) * sign;
      return `${n(x + Math.cos(angle) * (across + wide))} ${n(y + Math.sin(angle) * (down + wide))}`;
    });
  return fill(`M${side(1).join('L')}L${side(-1).reverse().join('L')}Z`);
}

/** A pointed oval. */
export function leaf(x: number, y: number, length: number, width: number, turn = 0): string {
  return place(
    fill(`M${n(-length / 2)} 0Q0 ${n(-width)} ${n(length / 2)} 0Q0 ${n(width)} ${n(-length / 2)} 0Z`),
    x,
    y,
    1,
    turn,
  );
}

/** A number short enough for a path. */
export function n(value: number): string {
  return String(Math.round(value * 100) / 100);
}
