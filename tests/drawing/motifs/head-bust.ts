import type { Layer } from '../relief.ts';
import { crescent, dot, fill, stroke } from '../shapes.ts';
import type { Head } from './heads.ts';

const fold = (path: string): string => stroke(path, 15);
/** How the head ends below. */
export const BUSTS: Readonly<Record<NonNullable<Head['bust']>, Layer[]>> = {
  neck: [],
  drapery: [
    { draw: fill('M-60 150Q-150 180 -190 262Q-60 330 130 274Q110 210 40 176Z'), height: 13, round: 40 },
    {
      draw:
        fold('M-92 190Q-10 210 92 240') +
        fold('M-120 220Q-20 246 106 268') +
        fold('M-40 172Q20 184 60 204') +
        fold('M-150 240Q-60 280 20 288') +
        dot(-76, 178, 20),
      height: 10,
      round: 9,
    },
  ],
  cuirass: [
    { draw: fill('M-60 150Q-160 170 -200 262Q-60 330 140 274Q120 210 44 176Z'), height: 13, round: 40 },
    {
      draw:
        stroke('M-70 168Q-10 206 60 182', 15) +
        Array.from({ length: 7 }, (_, at) =>
          stroke(
            `M${-176 + at * 46} ${262 + Math.sin(at / 2) * 20}L${-160 + at * 42} ${226 + Math.sin(at / 2) * 14}`,
            15,
          ),
        ).join('') +
        crescent(-110, 224, 44, 40, 120, 330, 16) +
        dot(-20, 236, 15),
      height: 10,
      round: 9,
    },
  ],
  ruff: [
    { draw: fill('M-110 150Q-180 190 -200 270Q-60 330 130 274Q120 214 60 160Z'), height: 12, round: 40 },
    {
      draw: Array.from({ length: 9 }, (_, at) =>
        crescent(-106 + at * 22, 140 + Math.sin(at / 2.6) * 22, 17, 24, 60, 300, 12, 0.4),
      ).join(''),
      height: 13,
      mode: 'over',
      round: 7,
    },
    {
      draw:
        fold('M-150 212Q-110 240 -130 288') +
        fold('M-70 206Q-40 240 -50 304') +
        fold('M10 206Q20 250 20 304') +
        fold('M70 196Q100 230 96 284') +
        stroke('M-100 196Q-20 236 70 190', 8),
      height: 9,
      round: 8,
    },
    {
      draw: [0, 1, 2, 3, 4].map((at) => dot(-80 + at * 36, 214 + Math.sin(at / 1.4) * 14, 9)).join(''),
      height: 7,
      round: 7,
    },
  ],
};
