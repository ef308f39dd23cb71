import type { Layer } from '../relief.ts';
import { bar, box, crescent, dot, fill, leaf, n, oval, ring, stroke } from '../shapes.ts';

/** A small figure's head in profile to the left, with its hair. */
function smallHead(x: number, y: number, size = 1): Layer[] {
  const at = (draw: string): string => `<g transform="translate(${x} ${y}) scale(${size})">${draw}</g>`;
  return [
    { draw: at(oval(0, 0, 30, 36) + fill('M-24 -14L-38 8L-24 12Z') + box(-10, 26, 22, 26)), height: 14, round: 22 },
    { draw: at(crescent(6, -8, 27, 28, 190, 420, 15, 0.4) + dot(30, 4, 13)), height: 7, round: 6 },
    { draw: at(dot(-15, -5, 4)), height: 4, mode: 'sink', round: 3 },
  ];
}

function folds(paths: readonly string[], width = 9): Layer {
  return { draw: paths.map((path) => stroke(path, width)).join(''), height: 8, round: 6 };
}

/** Victory walking to the right: wreath before her, palm over her shoulder. */
export function victory(): Layer[] {
  return [
    { draw: fill('M-20 -120Q-120 -190 -210 -150Q-180 -60 -120 -10Q-70 10 -30 -40Z'), height: 9, round: 22 },
    folds([
      'M-40 -100Q-120 -150 -190 -136',
      'M-40 -84Q-110 -110 -178 -96',
      'M-40 -66Q-100 -70 -150 -52',
      'M-40 -50Q-84 -36 -118 -16',
    ]),
    {
      draw: fill(
        'M-40 -150Q0 -166 40 -146Q52 -90 30 -40Q84 60 74 150L120 226L40 246L-10 200L-64 250L-120 246Q-80 180 -70 110Q-72 20 -38 -40Q-58 -100 -40 -150Z',
      ),
      height: 17,
      round: 36,
    },
    folds([
      'M-30 -40Q-50 60 -84 236',
      'M-10 -36Q-16 70 -40 226',
      'M10 -36Q22 80 20 210',
      'M24 -34Q56 70 60 220',
      'M-34 -44Q0 -28 32 -44',
      'M-30 -140Q0 -90 36 -80',
    ]),
    ...mirrorHead(4, -196),
    { draw: stroke('M34 -132Q90 -130 136 -162', 24) + stroke('M-30 -128Q-52 -70 -90 -60', 24), height: 13, round: 12 },
    { draw: ring(170, -190, 36, 17), height: 12, round: 8 },
    {
      draw:
        stroke('M-92 -50Q-104 -160 -70 -240', 12) +
        [0, 1, 2, 3, 4]
          .map(
            (at) => leaf(-104 + at * 3, -110 - at * 28, 40, 14, 40) + leaf(-74 + at * 4, -110 - at * 28, 40, 14, 140),
          )
          .join(''),
      height: 11,
      round: 6,
    },
    { draw: oval(96, 244, 28, 12) + oval(-98, 254, 28, 11), height: 10, round: 9 },
  ];
}

function mirrorHead(x: number, y: number): Layer[] {
  return smallHead(0, 0).map((layer) => ({
    ...layer,
    draw: `<g transform="translate(${x} ${y}) scale(-1 1)">${layer.draw}</g>`,
  }));
}

/** A robed figure standing to the left, for Liberty and her related: what it holds is drawn by `held`. */
export function robed(held: readonly Layer[]): Layer[] {
  return [
    {
      draw: fill('M-46 -150Q0 -170 46 -150Q66 -90 44 -30Q80 90 84 230L76 250L-74 250Q-84 90 -40 -30Q-66 -96 -46 -150Z'),
      height: 17,
      round: 38,
    },
    folds([
      'M-26 -30Q-48 90 -58 240',
      'M-8 -26Q-18 100 -22 244',
      'M10 -26Q20 100 18 244',
      'M28 -30Q54 90 54 242',
      'M-40 -34Q0 -14 42 -34',
      'M-40 -130Q0 -80 44 -94',
      'M40 -30Q-30 30 -60 40',
      'M46 0Q-10 80 -66 96',
    ]),
    ...smallHead(0, -200),
    { draw: stroke('M-40 -132Q-90 -96 -120 -88', 24) + stroke('M42 -132Q86 -84 92 -40', 24), height: 13, round: 12 },
    { draw: oval(-40, 256, 28, 11) + oval(36, 256, 28, 11), height: 10, round: 9 },
    ...held,
  ];
}

/** Liberty's cap and sceptre. */
export const LIBERTY: readonly Layer[] = [
  { draw: fill('M-156 -84Q-156 -134 -128 -136Q-102 -132 -102 -84Z') + box(-160, -88, 62, 10), height: 12, round: 12 },
  { draw: stroke('M96 -230L90 246', 12) + dot(96, -236, 13), height: 11, round: 6 },
];

/** The Sun standing to the left, rays round his head, right hand raised, a globe in his left. */
export function sun(): Layer[] {
  const rays = Array.from({ length: 7 }, (_, at) => {
    const turn = ((-165 + at * 25) * Math.PI) / 180;
    return stroke(
      `M${n(Math.cos(turn) * 44)} ${n(-204 + Math.sin(turn) * 44)}L${n(Math.cos(turn) * 74)} ${n(-204 + Math.sin(turn) * 74)}`,
      8,
    );
  }).join('');
  return [
    { draw: fill('M34 -140Q110 -100 120 60Q124 140 84 200Q90 60 34 -40Z'), height: 9, round: 20 },
    folds(['M52 -120Q104 -30 100 170', 'M44 -90Q84 0 92 120']),
    {
      draw: fill(
        'M-52 -142Q0 -164 52 -142Q60 -80 30 -20Q46 20 36 60L40 150L44 240L14 240L0 120L-12 60L-30 140L-52 240L-80 238L-56 120Q-50 30 -34 -20Q-62 -90 -52 -142Z',
      ),
      height: 18,
      round: 26,
    },
    folds(
      [
        'M-30 -70Q0 -54 30 -70',
        'M-26 -36Q0 -22 26 -36',
        'M0 -130L0 -30',
        'M-34 -4Q0 12 32 -4',
        'M-40 -120Q-10 -96 0 -110Q10 -96 40 -120',
      ],
      7,
    ),
    ...smallHead(0, -204),
    { draw: rays, height: 9, round: 5 },
    {
      draw:
        stroke('M-46 -128Q-90 -130 -104 -178L-104 -206', 22) +
        stroke('M46 -128Q84 -90 64 -52', 22) +
        [-114, -104, -94].map((x) => stroke(`M${x} -206L${x - 2} -232`, 7)).join(''),
      height: 13,
      round: 11,
    },
    { draw: dot(66, -46, 30), height: 14, round: 26 },
    { draw: oval(-76, 250, 30, 11) + oval(36, 250, 30, 11), height: 10, round: 9 },
  ];
}

/** Britannia seated, her head on her hand, a large shield beside her. */
export function britannia(): Layer[] {
  return [
    {
      draw: fill('M-190 250Q-180 170 -120 160Q-110 120 -60 130Q-40 90 30 100Q80 110 90 170Q160 180 180 250Z'),
      height: 8,
      round: 26,
    },
    folds(['M-170 236Q-150 190 -110 190', 'M-60 240Q-40 200 0 210', 'M40 240Q60 200 110 210']),
    {
      draw: fill(
        'M-40 -120Q0 -140 50 -116Q70 -60 56 0Q90 50 80 110L104 226L40 240L10 120L-40 110L-60 236L-116 226Q-90 120 -80 40Q-66 0 -42 -20Q-60 -70 -40 -120Z',
      ),
      height: 17,
      round: 34,
    },
    folds([
      'M-66 30Q-20 50 60 20',
      'M-70 60Q-84 150 -92 224',
      'M-40 70Q-60 150 -70 226',
      'M30 60Q60 130 76 228',
      'M56 40Q80 130 94 220',
      'M-30 -100Q10 -60 50 -70',
      'M-34 -50Q0 -30 50 -40',
    ]),
    ...smallHead(-8, -172),
    {
      draw: stroke('M-40 -100Q-90 -60 -70 -30Q-50 -70 -40 -140', 20) + stroke('M50 -100Q90 -50 100 0', 22),
      height: 13,
      round: 10,
    },
    { draw: oval(146, 70, 56, 110, 6), height: 16, mode: 'over', round: 50 },
    {
      draw:
        `<ellipse cx="146" cy="70" rx="48" ry="100" transform="rotate(6 146 70)" fill="none" stroke="#fff" stroke-width="9"/>` +
        dot(146, 70, 22) +
        bar(146, 60, 150, 6, 6, 10, 16),
      height: 8,
      round: 6,
    },
    { draw: stroke('M-150 -190L-112 200', 11) + leaf(-152, -206, 52, 16, 84), height: 11, round: 5 },
  ];
}

/** A lit altar with a garland, an eagle on each side. */
export function altarOfMemory(): Layer[] {
  const eagle =
    fill(
      'M96 -40Q120 -80 150 -70Q172 -60 158 -34Q200 20 190 110L210 190L160 176L150 216L116 214L124 170Q90 100 96 -40Z',
    ) + fill('M150 -70L190 -58L160 -44Z');
  const feathers = ['M120 -10Q150 40 150 130', 'M138 -10Q172 50 172 130', 'M112 20Q126 90 134 150']
    .map((path) => stroke(path, 8))
    .join('');
  const pair = (draw: string): string => `${draw}<g transform="scale(-1 1)">${draw}</g>`;
  return [
    { draw: box(-74, -20, 148, 26) + box(-60, 6, 120, 170) + box(-78, 176, 156, 28), height: 14, round: 12 },
    { draw: stroke('M-54 34Q0 120 54 34', 18) + dot(-54, 32, 13) + dot(54, 32, 13), height: 9, round: 8 },
    {
      draw: [-44, -16, 16, 44].map((x, at) => leaf(x, -56 - (at % 2) * 22, 90, 26, 90 + x / 4)).join(''),
      height: 11,
      round: 9,
    },
    { draw: pair(eagle), height: 14, round: 24 },
    { draw: pair(feathers), height: 7, round: 6 },
    { draw: box(-230, 216, 460, 10), height: 9, round: 5 },
  ];
}

/** Ladle, sprinkler, jug and augur's staff. */
export function implementsOfPriests(): Layer[] {
  const jug = fill('M52 -110L104 -110Q96 -70 112 -40Q132 40 104 96L116 130L40 130L52 96Q22 40 44 -40Q60 -70 52 -110Z');
  return [
    {
      draw: stroke('M-186 -150L-176 90', 17) + oval(-174, 118, 40, 36) + stroke('M-186 -150Q-204 -186 -226 -160', 15),
      height: 13,
      round: 15,
    },
    {
      draw:
        stroke('M-74 -160L-70 20', 18) +
        [-34, -17, 0, 17, 34].map((lean) => stroke(`M-70 10Q${-70 + lean * 0.7} 60 ${-70 + lean} 130`, 12)).join('') +
        box(-98, -20, 58, 22),
      height: 13,
      round: 9,
    },
    { draw: jug, height: 16, round: 36 },
    {
      draw:
        stroke('M108 -86Q160 -70 140 -6Q132 20 116 30', 15) +
        stroke('M46 -44L110 -44', 9) +
        stroke('M36 34L120 34', 9) +
        box(40, -124, 76, 17),
      height: 11,
      round: 7,
    },
    { draw: stroke('M214 140L208 -70Q204 -160 254 -150Q290 -130 264 -98Q246 -88 240 -108', 18), height: 13, round: 9 },
  ];
}
