import { hammered, milled, moved, rim, rimBand, toothed } from '../die.ts';
import type { Inscription, Recipes } from '../die.ts';
import { inLine, onRim } from '../lettering.ts';
import { BRUSH, dragon, KUFIC, rightToLeft, tughra, wreath } from '../motifs/east.ts';
import type { Layer } from '../relief.ts';
import { beads, bar, dot, leaf, ring, round } from '../shapes.ts';

const kufic = (text: string, y: number, high: number, hand: Inscription['hand'], x = 0, most = 470): Layer => ({
  draw: inLine(rightToLeft(text), KUFIC, x, y, high, hand, most),
  height: 11,
  round: 7,
});

/** Words round the rim, right to left, their feet to the centre. */
function around(text: string, foot: number, height: number, hand: Inscription['hand']): Layer {
  const { whole } = onRim(rightToLeft(text), KUFIC, { foot, height, from: 94, over: 352, space: 44 }, hand);
  return { draw: whole, height: 10, round: 6 };
}

const half = { shape: 'round', uneven: 0.012, edge: 9, thick: 8, cut: [0, -6] } as const;
const thin = { wear: 0.34, weak: 0.6, grain: 0.3, bent: 1, tone: 0.55 } as const;
const sprig = (turn: number): string =>
  `<g transform="rotate(${turn})">${[0, 1, 2, 3, 4, 5, 6].map((at) => `<g transform="rotate(${at * 11})">${leaf(-10, -404, 54, 17, -30)}${leaf(14, -386, 50, 16, 14)}</g>`).join('')}</g>`;

export const EAST: Readonly<Record<string, Recipes>> = {
  'samanid-dirham-cut': {
    obverse: ({ parts, hand }) =>
      hammered(
        [
          {
            draw: ring(0, 0, 258, 8) + ring(0, 0, 372, 7) + ring(0, 0, 480, 9) + ring(0, 0, 464, 6),
            height: 8,
            round: 4,
          },
          kufic('لا اله الا', -112, 116, hand),
          kufic('الله وحده', 34, 116, hand),
          kufic('لا شريك له', 168, 116, hand),
          around(parts[1] ?? 'ضرب هذا الدرهم بالشاش سنة وتسعين ومئتين', 276, 76, hand),
          around('لله الامر من قبل ومن بعد ويومئذ يفرح المؤمنون بنصر الله', 390, 62, hand),
        ],
        { at: { y: -244 }, strike: { x: 6, y: 0, turn: 0 }, flan: half, surface: thin },
      ),
    reverse: ({ hand }) =>
      hammered(
        [
          { draw: ring(0, 0, 300, 8) + ring(0, 0, 474, 9), height: 8, round: 4 },
          kufic('لله', -216, 100, hand),
          kufic('محمد', -106, 104, hand),
          kufic('رسول الله', 8, 100, hand),
          kufic('المكتفي بالله', 112, 94, hand),
          kufic('اسمعيل بن احمد', 208, 84, hand, 0, 390),
          around('محمد رسول الله ارسله بالهدى ودين الحق ليظهره على الدين كله', 330, 92, hand),
        ],
        { alone: true, at: { y: -244 }, strike: { x: -8, y: 2, turn: 0 }, flan: half, surface: thin },
      ),
  },
  'ottoman-twenty-para': {
    obverse: ({ hand }) =>
      milled(
        [
          { draw: rimBand(500, 484), height: 7, round: 6 },
          { draw: sprig(110) + sprig(-176) + round(dot(0, -440, 9), 60), height: 8, round: 4 },
          ...moved(tughra(), -6, -30, 0.98),
          kufic('سنة', 306, 78, hand, 50),
          kufic('١٥', 306, 78, hand, -60),
          {
            draw: `<g transform="translate(232 -196)">${round(bar(0, 0, 0, -38, 7, 12, 4), 6)}</g>`,
            height: 8,
            round: 5,
          },
        ],
        {
          surface: { wear: 0.36, tone: 0.5, grain: 0.2, bent: 0.5 },
          flan: { shape: 'round', uneven: 0.006, edge: 8, thick: 7 },
        },
      ),
    reverse: ({ hand }) =>
      milled(
        [
          { draw: rimBand(500, 484), height: 7, round: 6 },
          { draw: wreath(392, 13, 84), height: 9, round: 5 },
          kufic('ضرب', -170, 116, hand, 20),
          kufic('في', -54, 96, hand),
          kufic('قسطنطينية', 66, 116, hand),
          kufic('١٢٥٥', 200, 104, hand),
        ],
        { surface: { wear: 0.36, tone: 0.5, grain: 0.2, bent: 0.5 } },
      ),
  },
  'meiji-sen': {
    obverse: ({ hand }) => {
      const text = onRim(
        '大日本 明治十年',
        BRUSH,
        { foot: 372, height: 74, from: 226, over: 268, space: 90 },
        hand,
      ).whole;
      return milled(
        [
          ...toothed(490, 20, 140),
          { draw: beads(346, 76, 8), height: 7, round: 7 },
          { draw: text, height: 9, round: 4 },
          ...rim('1 SEN', 'milled', hand, {
            foot: 446,
            height: 66,
            from: 204,
            over: 48,
            outward: true,
            set: 'middle',
            space: 50,
          }),
          ...moved(dragon(), 0, 4, 1.22),
        ],
        { metal: 'copper', surface: { wear: 0.26, tone: 0.75 } },
      );
    },
    reverse: ({ hand }) => {
      const text = onRim('以百枚換一圓', BRUSH, { foot: 420, height: 52, from: -58, over: 116 }, hand).whole;
      return milled(
        [
          ...toothed(490, 20, 140),
          { draw: text, height: 8, round: 4 },
          { draw: wreath(318, 12, 92), height: 10, round: 6 },
          {
            draw: inLine('一', BRUSH, 0, -112, 170, hand) + inLine('錢', BRUSH, 0, 74, 190, hand),
            height: 11,
            round: 6,
          },
          {
            draw: `<g transform="translate(0 -318)">${round(leaf(0, -30, 50, 18, 90), 16)}${ring(0, 0, 17, 8)}</g>`,
            height: 9,
            round: 5,
          },
        ],
        { metal: 'copper', surface: { wear: 0.28, tone: 0.75 } },
      );
    },
  },
};
