import type { Layer } from '../relief.ts';
import { bar, crescent, dot, fill, leaf, n, stroke } from '../shapes.ts';
import { flow } from './head-hair.ts';
import type { Head } from './heads.ts';

function laurel(): string {
  const leaves: string[] = [];
  for (let at = 0; at < 9; at += 1) {
    const part = at / 8;
    const [x, y] = [-122 + part * 208, -46 - Math.sin(part * 1.75) * 104 + part * 6];
    const turn = -62 + part * 66;
    leaves.push(leaf(x, y - 15, 54, 20, turn - 16), leaf(x + 6, y + 14, 50, 18, turn + 14));
  }
  return leaves.join('');
}

const ties =
  stroke('M-128 -20Q-172 20 -150 70Q-140 96 -166 128', 11) +
  stroke('M-128 -16Q-146 40 -118 84Q-110 110 -124 140', 11) +
  dot(-132, -22, 15);
const band = fill('M-150 -64Q-60 -118 92 -126L94 -98Q-50 -88 -142 -32Z');
const fleuron = (x: number, y: number, turn: number): string =>
  `<g transform="translate(${x} ${y}) rotate(${turn})">${leaf(0, -38, 56, 26, 90)}${crescent(-17, -14, 16, 20, 95, 285, 12)}${crescent(17, -14, 16, 20, -105, 85, 12)}${bar(0, -10, 0, 16, 10, 16)}</g>`;

/** What is worn on the head. */
export const WORN: Readonly<Record<NonNullable<Head['wear']>, Layer[]>> = {
  laurel: [
    { draw: ties, height: 9, round: 6 },
    { draw: laurel(), height: 11, round: 9 },
  ],
  crown: [
    {
      draw: fill('M-146 -66Q-172 -180 -70 -232Q10 -256 60 -226Q110 -190 92 -118Q-40 -112 -146 -66Z'),
      height: 8,
      mode: 'over',
      round: 50,
    },
    { draw: band, height: 14, round: 9 },
    { draw: fleuron(-110, -82, -34) + fleuron(-28, -112, -14) + fleuron(62, -124, 8), height: 13, round: 7 },
    {
      draw:
        stroke('M-138 -66Q-150 -200 -28 -236M84 -122Q94 -214 -28 -236', 15) +
        dot(-28, -248, 17) +
        bar(-28, -256, -30, -292, 9, 11, 17) +
        bar(-50, -278, -8, -276, 8, 14),
      height: 13,
      round: 8,
    },
    {
      draw: [0, 1, 2, 3, 4, 5].map((at) => dot(-120 + at * 40, -60 - Math.sin(at / 3.6) * 48, 7)).join(''),
      height: 6,
      round: 6,
    },
  ],
  diadem: [
    { draw: ties + stroke('M-140 -40Q-40 -108 90 -112', 17), height: 11, round: 8 },
    {
      draw: [0, 1, 2, 3, 4, 5, 6].map((at) => dot(-124 + at * 34, -52 - Math.sin(at / 4) * 56, 8)).join(''),
      height: 7,
      round: 7,
    },
  ],
  veil: [
    {
      draw: fill(
        'M72 -152Q100 -196 40 -214Q-120 -240 -166 -110Q-190 0 -150 90Q-160 170 -196 226L-60 250Q-90 150 -56 70Q-40 -20 -70 -70Q-20 -130 72 -152Z',
      ),
      height: 11,
      mode: 'over',
      round: 22,
    },
    {
      draw: flow(
        [
          'M40 -196Q-100 -216 -138 -100Q-160 0 -122 96Q-126 170 -150 226',
          'M30 -178Q-84 -190 -112 -92Q-130 0 -92 92Q-96 170 -106 232',
          'M10 -160Q-60 -162 -86 -84',
        ],
        9,
      ),
      height: 8,
      round: 6,
    },
    {
      draw: [0, 1, 2, 3].map((at) => leaf(-40 + at * 40, -134 - at * 4, 46, 17, -20 + at * 5)).join(''),
      height: 9,
      round: 7,
    },
  ],
  helmet: [
    {
      draw: fill(
        'M104 -96Q100 -214 -30 -222Q-160 -210 -168 -60L-160 10Q-150 60 -118 90Q-92 30 -40 -30Q20 -90 104 -96Z',
      ),
      height: 14,
      mode: 'over',
      round: 44,
    },
    {
      draw:
        stroke('M98 -110Q30 -104 -30 -44Q-80 10 -108 76', 12) +
        stroke('M60 -238Q-60 -290 -160 -190Q-206 -110 -196 30', 26),
      height: 10,
      round: 9,
    },
    {
      draw: flow(
        Array.from({ length: 12 }, (_, at) => {
          const turn = (-60 - at * 11) * (Math.PI / 180);
          return `M${n(-40 + Math.cos(turn) * 152)} ${n(-80 + Math.sin(turn) * 160)}L${n(-40 + Math.cos(turn) * 196)} ${n(-80 + Math.sin(turn) * 204)}`;
        }),
        8,
      ),
      height: 7,
      round: 5,
    },
  ],
  cap: [
    {
      draw: fill('M100 -112Q120 -150 60 -188Q-60 -230 -150 -150Q-176 -110 -160 -70Q-40 -110 100 -112Z'),
      height: 12,
      mode: 'over',
      round: 30,
    },
    { draw: stroke('M-158 -74Q-40 -112 100 -114', 16), height: 9, round: 8 },
  ],
};
