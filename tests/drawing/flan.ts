import { between } from './chance.ts';
import type { Chance } from './chance.ts';
import { dot, fill, n } from './shapes.ts';

/** The metal before and after the blow: its outline and what has been done to it. In the die's units; the rim lies at 500. */
export type Flan = {
  readonly shape: 'round' | 'square' | 'drawn';
  /** A path, when the shape is drawn. */
  readonly path?: string;
  /** Across and down against the normal radius of 500. */
  readonly across?: number;
  readonly down?: number;
  /** How sharp the corners of a square one are: 7 as sawn, 3 as snipped and beaten. */
  readonly corners?: number;
  /** How far the outline wanders, as a part of the radius. A machine's flan: 0. */
  readonly uneven?: number;
  /** Straight snips: clock angle in degrees, and how deep. */
  readonly snips?: readonly (readonly [number, number])[];
  /** Pieces broken from the edge: clock angle, size. */
  readonly chips?: readonly (readonly [number, number])[];
  /** Splits from the edge: clock angle, length. */
  readonly cracks?: readonly (readonly [number, number])[];
  /** Holes: x, y, radius. */
  readonly holes?: readonly (readonly [number, number, number])[];
  /** Cut along a line: clock angle of the side that is gone, and how far the line lies from the centre. */
  readonly cut?: readonly [number, number];
  /** How far in the edge is rounded, and how thick the piece looks. */
  readonly edge?: number;
  readonly thick?: number;
  /** Seen from the other side: the clock hour to which the reverse's top points when the piece is turned like a page. */
  readonly turnedTo?: number;
};

/** The outline of a flan, white where there is metal. */
export function flanShape(flan: Flan, chance: Chance): string {
  const { across = 500, down = 500, uneven = 0 } = flan;
  const body = flan.path === undefined ? fill(outline(flan, across, down, uneven, chance)) : fill(flan.path);
  const gone = [
    ...(flan.snips ?? []).map(([angle, depth]) => side(angle, 500 - depth, 4, chance)),
    ...(flan.chips ?? []).map(([angle, size]) => chip(angle, size, across, down, chance)),
    ...(flan.cracks ?? []).map(([angle, length]) => crack(angle, length, chance)),
    ...(flan.holes ?? []).map(([x, y, radius]) => hole(x, y, radius, chance)),
    ...(flan.cut === undefined ? [] : [side(flan.cut[0], flan.cut[1], 7, chance)]),
  ];
  const shape = `${body}<g fill="#000">${gone.join('')}</g>`;
  return flan.turnedTo === undefined ? shape : `<g transform="rotate(${-30 * flan.turnedTo}) scale(-1 1)">${shape}</g>`;
}

function outline({ shape, corners = 7 }: Flan, across: number, down: number, uneven: number, chance: Chance): string {
  const waves = [2, 3, 4, 5, 7, 9, 13].map((times) => ({
    times,
    high: (uneven * between(chance, 0.4, 1)) / Math.sqrt(times),
    from: between(chance, 0, 6.283),
  }));
  const points = Array.from({ length: 240 }, (_, at) => {
    const angle = (at / 240) * Math.PI * 2;
    const wander = waves.reduce((sum, { times, high, from }) => sum + high * Math.sin(times * angle + from), 0);
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    const corner = shape === 'square' ? (Math.abs(cos) ** corners + Math.abs(sin) ** corners) ** (-1 / corners) : 1;
    return `${n(cos * across * corner * (1 + wander))} ${n(sin * down * corner * (1 + wander))}`;
  });
  return `M${points.join('L')}Z`;
}

/** Everything beyond a line, which wavers a little. */
function side(angle: number, from: number, waver: number, chance: Chance): string {
  const points = Array.from(
    { length: 25 },
    (_, at) => `${-720 + at * 60} ${n(-from + between(chance, -waver, waver))}`,
  );
  return `<path transform="rotate(${angle})" d="M-720 -900L${points.join('L')}L720 -900Z"/>`;
}

function chip(angle: number, size: number, across: number, down: number, chance: Chance): string {
  const turn = (angle * Math.PI) / 180;
  const [x, y] = [Math.sin(turn) * across, -Math.cos(turn) * down];
  const points = Array.from({ length: 14 }, (_, at) => {
    const way = (at / 14) * Math.PI * 2;
    const far = size * between(chance, 0.75, 1.15);
    return `${n(x + Math.cos(way) * far)} ${n(y + Math.sin(way) * far)}`;
  });
  return fill(`M${points.join('L')}Z`);
}

function crack(angle: number, length: number, chance: Chance): string {
  const steps = 7;
  const middle = Array.from({ length: steps + 1 }, (_, at) => between(chance, -5, 5) * (at === 0 ? 0 : 1));
  const row = (sign: number): string[] =>
    middle.map(
      (x, at) =>
        `${n(x + sign * (1 - at / steps) ** 0.8 * (4 + length * 0.045))} ${n(-520 + (at / steps) * (length + 20))}`,
    );
  return `<path transform="rotate(${angle})" d="M${row(1).join('L')}L${row(-1).reverse().join('L')}Z"/>`;
}

function hole(x: number, y: number, radius: number, chance: Chance): string {
  return [0, 1, 2]
    .map(() => dot(x + between(chance, -2, 2), y + between(chance, -2, 2), radius * between(chance, 0.93, 1)))
    .join('');
}
