import { moved, rim, rimBand } from '../die.ts';
import type { Recipes } from '../die.ts';
import type { Face } from '../draw-face.ts';
import { head } from '../motifs/heads.ts';
import type { Layer } from '../relief.ts';
import { box, dot, fill, leaf, place, ring, round, stroke } from '../shapes.ts';

/** Lines engraved by hand: cut in, thick and thin, with a burr. */
const engraved = (draw: string, depth = 8, soft = 4): Layer => ({ draw, height: depth, mode: 'sink', round: soft });

/** A flowing hand: capitals T and M as a country engraver made them. */
const SCRIPT_T =
  stroke('M-84 -74Q-40 -110 0 -84Q40 -60 84 -92', 13) +
  stroke('M6 -84Q20 0 -10 66Q-40 96 -70 66Q-74 44 -50 44', 15) +
  stroke('M-84 -74Q-100 -50 -78 -40', 8) +
  stroke('M84 -92Q104 -110 90 -124', 6);
const SCRIPT_M =
  stroke('M-110 66Q-80 90 -66 40Q-50 -40 -44 -84', 9) +
  stroke('M-44 -84Q-20 -20 -6 50', 16) +
  stroke('M-6 50Q20 -30 44 -84', 8) +
  stroke('M44 -84Q40 0 64 56Q84 84 110 50', 15) +
  stroke('M-44 -84Q-80 -110 -100 -70Q-96 -46 -76 -58', 7);
const HEART = 'M0 76Q-96 4 -78 -44Q-50 -84 0 -34Q50 -84 78 -44Q96 4 0 76Z';
const spray =
  stroke('M0 0Q70 -50 170 -30', 6) +
  [0, 1, 2, 3, 4]
    .map((at) => leaf(30 + at * 32, -26 - at * 4 - (at % 2) * 14, 50, 19, at % 2 === 0 ? -50 : 30))
    .join('') +
  dot(186, -30, 10);

function ship(): string {
  const hull =
    stroke('M-250 110Q-230 190 -150 196L170 196Q220 180 260 96', 11) +
    stroke('M-250 110Q-100 140 60 132Q180 126 260 96', 8) +
    stroke('M-236 146Q0 172 240 136', 5) +
    [-160, -100, -40, 20, 80, 140].map((x) => box(x - 8, 140, 16, 13)).join('');
  const masts = stroke('M-140 120L-140 -190M10 130L10 -250M150 120L150 -180M-250 110L-340 50', 8);
  const sail = (x: number, y: number, wide: number, high: number): string =>
    stroke(
      `M${x - wide} ${y}L${x + wide} ${y}Q${x + wide + 24} ${y + high / 2} ${x + wide + 8} ${y + high}Q${x} ${y + high - 22} ${x - wide - 8} ${y + high}Q${x - wide + 16} ${y + high / 2} ${x - wide} ${y}`,
      6,
    ) +
    stroke(
      `M${x - wide * 0.4} ${y + 6}Q${x - wide * 0.3} ${y + high / 2} ${x - wide * 0.4} ${y + high - 12}M${x + wide * 0.4} ${y + 6}Q${x + wide * 0.56} ${y + high / 2} ${x + wide * 0.4} ${y + high - 12}`,
      3,
    );
  const sails =
    sail(-140, -160, 50, 90) +
    sail(-140, -60, 62, 130) +
    sail(10, -220, 54, 100) +
    sail(10, -110, 74, 190) +
    sail(150, -150, 46, 86) +
    sail(150, -56, 56, 120);
  const flags = stroke('M-140 -190Q-180 -200 -200 -186M10 -250Q-40 -262 -60 -246M150 -180Q110 -190 90 -176', 9);
  const sea = [0, 1, 2]
    .map((row) =>
      stroke(
        `M${-300 + row * 30} ${216 + row * 24}${Array.from({ length: 9 - row }, () => 'q33 -22 66 0').join('')}`,
        6,
      ),
    )
    .join('');
  return (
    hull +
    masts +
    sails +
    flags +
    sea +
    stroke('M-340 50L-140 -150M-140 -190L10 -120M10 -240L150 -120M150 -180L256 100', 3)
  );
}

function loveToken(face: 'obverse' | 'reverse', layers: readonly Layer[]): Face {
  return {
    layers:
      face === 'obverse'
        ? [
            { draw: rimBand(498, 440), height: 9, round: 16 },
            ...moved(head({ hair: 'long', wear: 'laurel', bust: 'drapery' }), 0, 0, 1.4).map((layer) => ({
              ...layer,
              height: layer.height * 0.045,
            })),
          ]
        : [{ draw: rimBand(498, 436), height: 9, round: 16 }],
    after: layers,
    flan: { shape: 'round', edge: 16, thick: 18, holes: [[0, face === 'obverse' ? -404 : -404, 26]] },
    metal: 'copper',
    surface: { wear: 0.5, weak: 0.1, grain: 0.16, pits: 0.15, scratches: 1, bent: 0.25, tone: 0.75, dirt: 0.4 },
  };
}

export const LOVE_TOKEN: Readonly<Record<string, Recipes>> = {
  'love-token-1797': {
    obverse: () =>
      loveToken('obverse', [
        engraved(place(SCRIPT_T, -196, -10, 1.35) + place(SCRIPT_M, 196, -10, 1.3)),
        engraved(
          stroke(HEART, 9) +
            place(stroke(HEART, 5), 0, 2, 0.78) +
            stroke('M-110 70L-60 30M60 -40L116 -90', 7) +
            fill('M116 -90L84 -86L110 -60Z') +
            stroke('M-110 70L-134 74M-104 64L-108 92', 5),
          8,
          3,
        ),
        engraved(
          place(spray, 20, 190, 1.4, 10) +
            `<g transform="scale(-1 1)">${place(spray, 20, 190, 1.4, 10)}</g>` +
            place(spray, 40, -220, 1.1, -24) +
            `<g transform="scale(-1 1)">${place(spray, 40, -220, 1.1, -24)}</g>`,
          7,
          3,
        ),
        engraved(ring(0, 0, 420, 5) + round(leaf(0, -404, 26, 7, 90), 60), 5, 3),
      ]),
    reverse: ({ parts: [text = ''], hand }) =>
      loveToken('reverse', [
        engraved(place(ship(), 0, 20, 1.02), 8, 3),
        ...rim(text, 'roman', hand, { foot: 376, height: 60, from: 14, over: 332, space: 50 }).map((layer) =>
          engraved(layer.draw, 7, 3),
        ),
      ]),
  },
};
