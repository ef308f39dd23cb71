import type { Layer } from '../relief.ts';
import { crescent, fill, n, oval, stroke } from '../shapes.ts';
import type { Head } from './heads.ts';

/** Short locks in rows from the crown of the head outward. */
function lockRows(): string {
  const locks: string[] = [];
  for (let row = 0; row < 5; row += 1) {
    const far = 38 + row * 34;
    const times = 5 + row * 3;
    for (let at = 0; at < times; at += 1) {
      const angle = 96 + row * 4 + (at / (times - 1)) * 236;
      const turn = (angle * Math.PI) / 180;
      const [x, y] = [-34 + Math.cos(turn) * far * 0.96, -74 + Math.sin(turn) * far * 0.92];
      if (insideHair(x, y))
        locks.push(
          `<g transform="rotate(${n(angle + 100)} ${n(x)} ${n(y)})">${crescent(x, y, 15, 12, 180, 350, 12, 0.25)}</g>`,
        );
    }
  }
  return locks.join('');
}

function insideHair(x: number, y: number): boolean {
  if (Math.hypot((x + 36) / 112, (y + 66) / 128) > 1) return false;
  return !(x > 8 && y > -76) && !(x > -34 && y > -16);
}

/** Strokes of one breadth. */
export const flow = (paths: readonly string[], width: number): string =>
  paths.map((path) => stroke(path, width)).join('');

/** How the hair is dressed. */
export const HAIRS: Readonly<Record<Head['hair'], Layer[]>> = {
  locks: [{ draw: lockRows(), height: 8, round: 6 }],
  short: [
    {
      draw:
        flow(
          Array.from(
            { length: 9 },
            (_, at) =>
              `M${-30 + at * 3} ${-178 + at * 9}Q${-128 + at * 10} ${-130 + at * 12} ${-128 + at * 11} ${at * 9}`,
          ),
          7,
        ) +
        flow(
          Array.from(
            { length: 6 },
            (_, at) =>
              `M${-20 + at * 4} ${-176 + at * 11}Q${30 + at * 2} ${-170 + at * 10} ${74 - at * 6} ${-136 + at * 9}`,
          ),
          7,
        ),
      height: 6,
      round: 5,
    },
  ],
  long: [
    {
      draw: fill(
        'M-30 -150Q60 -190 84 -140Q40 -100 40 -60Q0 0 30 60Q-10 120 16 180Q30 236 -30 250Q-120 250 -150 170Q-190 60 -164 -40Q-150 -150 -30 -150Z',
      ),
      height: 9,
      round: 34,
    },
    {
      draw: flow(
        Array.from({ length: 9 }, (_, at) => {
          const x = -152 + at * 19;
          return `M${n(x * 0.5 - 10)} ${-168 + at * 7}C${x - 22} -90 ${x + 16} -40 ${x - 8} 20S${x + 22} 110 ${x + 4} 150S${x + 18} 206 ${x + 4} ${236 - Math.abs(at - 5) * 8}`;
        }),
        11,
      ),
      height: 9,
      round: 7,
    },
  ],
  bun: [
    { draw: oval(-172, -42, 46, 40, -20), height: 16, round: 34 },
    {
      draw: [0, 1, 2]
        .map((at) => crescent(-172, -42, 36 - at * 12, 31 - at * 10, 20 + at * 60, 300 + at * 60, 9, 0.4))
        .join(''),
      height: 6,
      round: 5,
    },
    {
      draw: flow(
        Array.from(
          { length: 10 },
          (_, at) => `M${80 - at * 5} ${-138 + at * 8}Q${-20 - at * 7} ${-206 + at * 26} -138 ${-66 + at * 6}`,
        ),
        8,
      ),
      height: 6,
      round: 5,
    },
    { draw: flow(['M-136 -8Q-110 30 -122 70Q-96 110 -112 150', 'M-112 0Q-92 40 -100 74'], 13), height: 8, round: 7 },
  ],
  net: [
    {
      draw: flow(
        Array.from(
          { length: 8 },
          (_, at) =>
            `M${84 - at * 6} ${-136 + at * 4}Q${-40 - at * 8} ${-186 + at * 24} ${-142 + at * 3} ${-70 + at * 20}`,
        ),
        9,
      ),
      height: 7,
      round: 6,
    },
    { draw: flow(['M-134 30Q-110 80 -86 110', 'M-140 0Q-116 60 -76 96'], 10), height: 6, round: 6 },
  ],
};
