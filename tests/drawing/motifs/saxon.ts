import type { Layer } from '../relief.ts';
import { bar, box, crescent, crossPattee, dot, fill, leaf, n, oval, place, round, stroke } from '../shapes.ts';

/** A linear bust in profile to the right, as cut for the later Anglo-Saxon pennies. About 560 high, its middle at 0,0. */
type SaxonBust = {
  readonly wear: 'diadem' | 'crown' | 'bare' | 'arches';
  readonly beard?: boolean;
  readonly sceptre?: 'cross' | 'trefoil' | 'pellets';
  readonly drapery?: boolean;
};

export function saxonBust({ wear, beard = false, sceptre, drapery = true }: SaxonBust): Layer[] {
  const skull = fill(
    'M64 -136Q86 -96 88 -60L124 4L92 14L98 34L90 46L96 60L88 74Q84 116 40 118Q-4 112 -30 70Q-100 60 -116 -20Q-118 -130 -40 -160Q20 -170 64 -136Z',
  );
  const edge =
    stroke('M66 -124Q86 -90 88 -60L124 4L96 12', 15) +
    bar(84, 34, 112, 34, 10, 13, 17) +
    bar(82, 56, 110, 58, 10, 13, 17) +
    stroke('M88 78Q84 116 40 118Q6 114 -12 92', 14);
  const eye =
    crescent(48, -42, 27, 19, 180, 360, 11, 0.5) +
    crescent(48, -42, 27, 15, 0, 180, 9, 0.5) +
    dot(48, -42, 10) +
    crescent(48, -58, 40, 26, 200, 340, 11, 0.4);
  return [
    ...(drapery
      ? DRAPERY
      : [{ draw: bar(-30, 84, -44, 190, 15, 18, 26) + bar(36, 116, 40, 190, 15, 18, 26), height: 12, round: 10 }]),
    { draw: skull, height: 15, round: 66 },
    { draw: edge + eye, height: 11, round: 8 },
    { draw: hair(wear), height: 12, round: 8 },
    ...(beard
      ? [
          {
            draw: [0, 1, 2, 3, 4, 5]
              .map((at) => bar(84 - at * 22, 74 + at * 5 + (at > 1 ? 12 : 0), 92 - at * 22, 126 + at * 4, 7, 11, 5))
              .join(''),
            height: 10,
            round: 6,
          },
        ]
      : []),
    ...ON_HEAD[wear],
    ...(sceptre === undefined ? [] : [{ draw: SCEPTRES[sceptre], height: 13, round: 8 }]),
  ];
}

function hair(wear: SaxonBust['wear']): string {
  const times = wear === 'bare' ? 10 : 7;
  return Array.from({ length: times }, (_, at) => {
    const turn = ((wear === 'bare' ? -58 : -150) - at * (wear === 'bare' ? 18 : 14)) * (Math.PI / 180);
    const [x, y] = [-24 + Math.cos(turn) * 62, -50 + Math.sin(turn) * 66];
    const [fx, fy] = [-24 + Math.cos(turn) * 128, -50 + Math.sin(turn) * 134];
    return (
      stroke(`M${n(x)} ${n(y)}Q${n((x + fx) / 2 - 12)} ${n((y + fy) / 2 + 6)} ${n(fx)} ${n(fy)}`, 14) +
      dot(Math.round(fx), Math.round(fy), 10)
    );
  }).join('');
}

const DRAPERY: readonly Layer[] = [
  { draw: fill('M-34 90L38 118L42 150Q150 180 176 290L-190 290Q-170 190 -50 160Z'), height: 9, round: 40 },
  {
    draw:
      bar(-34, 90, -48, 158, 14, 16, 22) +
      bar(38, 120, 42, 156, 14, 16, 20) +
      stroke('M-56 160Q0 196 50 154', 14) +
      stroke('M-180 284Q-160 200 -64 172', 15) +
      stroke('M-136 290Q-120 224 -46 196', 15) +
      stroke('M-90 294Q-76 246 -20 210', 15) +
      stroke('M166 286Q148 196 60 164', 15) +
      stroke('M122 290Q108 224 40 194', 15) +
      stroke('M76 294Q62 248 14 214', 15) +
      dot(-2, 206, 18) +
      bar(0, 220, 0, 292, 12, 14, 22),
    height: 12,
    round: 9,
  },
];

const fleuron =
  leaf(0, -40, 60, 26, 90) +
  crescent(-18, -16, 16, 20, 95, 285, 13) +
  crescent(18, -16, 16, 20, -105, 85, 13) +
  bar(0, -10, 0, 16, 11, 18);

const ON_HEAD: Readonly<Record<SaxonBust['wear'], readonly Layer[]>> = {
  bare: [],
  diadem: [
    {
      draw:
        stroke('M70 -112Q-30 -100 -116 -20', 13) +
        stroke('M76 -88Q-20 -80 -110 2', 13) +
        stroke('M-116 -8Q-170 10 -186 70', 14) +
        stroke('M-112 6Q-150 50 -140 110', 14) +
        dot(-190, 82, 13) +
        dot(-140, 120, 13),
      height: 14,
      round: 8,
    },
  ],
  crown: [
    { draw: stroke('M74 -108Q-30 -112 -112 -34', 20), height: 14, round: 10 },
    {
      draw:
        place(fleuron, 58, -126, 1.15, 12) +
        place(fleuron, -22, -112, 1.2, -16) +
        place(fleuron, -94, -64, 1.1, -46) +
        dot(20, -150, 11) +
        dot(-66, -118, 11),
      height: 14,
      round: 8,
    },
    { draw: stroke('M-118 -24Q-166 10 -160 80', 13) + stroke('M-108 -6Q-134 40 -120 90', 13), height: 11, round: 8 },
  ],
  arches: [
    {
      draw:
        stroke('M78 -106Q-30 -112 -114 -30', 20) +
        stroke('M70 -116Q50 -210 -30 -196Q-120 -170 -110 -46', 15) +
        stroke('M20 -122Q0 -190 -50 -190', 12),
      height: 14,
      round: 9,
    },
    {
      draw:
        dot(-34, -212, 17) +
        crossPattee(-34, -246, 26, 8, 20) +
        [-90, -54, -16, 24, 60].map((x, at) => dot(x, -58 - Math.sin((at + 0.6) / 1.6) * 52, 9)).join(''),
      height: 13,
      round: 8,
    },
  ],
};

const SCEPTRES = {
  cross: stroke('M170 240L196 -150', 14) + crossPattee(200, -196, 48, 14, 36),
  trefoil: stroke('M170 240L196 -140', 14) + dot(174, -160, 21) + dot(222, -156, 21) + dot(200, -200, 23),
  pellets: stroke('M172 240L190 -170', 14) + dot(190, -186, 22) + dot(182, 40, 16),
} as const;

/** A short cross of double lines, with what stands at its ends. */
export function voidedCross(
  reach: number,
  apart: number,
  width = 14,
  ends: 'open' | 'crescents' | 'pellets' = 'open',
): string {
  const arm =
    box(-apart - width / 2, -reach, width, reach - apart + width / 2) +
    box(apart - width / 2, -reach, width, reach - apart + width / 2);
  const end =
    ends === 'crescents'
      ? crescent(0, -reach - 6, apart * 2, apart * 1.2, 200, 340, 18, 0.5)
      : ends === 'pellets'
        ? dot(-apart, -reach, width * 0.95) + dot(apart, -reach, width * 0.95)
        : '';
  return round(arm + end, 4);
}

/** A cross whose ends split and curl back. */
export function crossMoline(reach: number): string {
  return round(
    bar(0, 0, 0, -reach * 0.72, 28, 32, 26) +
      crescent(-reach * 0.2, -reach * 0.86, reach * 0.2, reach * 0.2, -20, 170, 30, 0.3) +
      crescent(reach * 0.2, -reach * 0.86, reach * 0.2, reach * 0.2, 10, 200, 30, 0.3),
    4,
  );
}

/** A four-lobed frame of two lines. */
export function quatrefoil(far: number, radius: number, width = 13): string {
  return [0, 90, 180, 270]
    .map((turn) => place(crescent(0, -far, radius, radius, 162, 378, width, 0.9), 0, 0, 1, turn))
    .join('');
}

/** Sword to the right with a lobed pommel, as the kindred of Ragnald bore it. */
export function vikingSword(): Layer[] {
  return [
    { draw: fill('M-210 -17L236 -10L282 2L236 14L-210 19Z'), height: 14, round: 14 },
    {
      draw:
        bar(-214, -56, -214, 58, 20, 30) +
        bar(-262, 0, -214, 0, 20, 20) +
        oval(-280, 0, 22, 40) +
        oval(-298, -26, 20, 20) +
        oval(-298, 26, 20, 20) +
        oval(-310, 0, 20, 18),
      height: 15,
      round: 10,
    },
  ];
}

/** Thor's hammer hanging head down, or a tau cross, as one likes to see it. */
export function hammer(size: number): string {
  return (
    bar(0, -size, 0, size * 0.3, size * 0.26, size * 0.34, size * 0.3) +
    fill(
      `M${n(-size * 0.8)} ${n(size * 0.2)}L${n(size * 0.8)} ${n(size * 0.2)}L${n(size * 0.74)} ${n(size * 0.72)}L${n(-size * 0.74)} ${n(size * 0.72)}Z`,
    )
  );
}

/** A bird of prey, wings spread, its head to the left. */
export function raven(): Layer[] {
  const wing = fill(
    'M30 -90Q130 -190 220 -150Q250 -60 210 120L180 60L176 150L146 80L138 160L110 90L96 140Q60 60 34 50Z',
  );
  const quills = [
    'M60 -70Q150 -120 206 -90',
    'M70 -40Q160 -70 202 -20',
    'M180 -20L178 120',
    'M146 -10L140 130',
    'M112 -6L104 110',
  ]
    .map((path) => stroke(path, 9))
    .join('');
  const pair = (draw: string): string => `${draw}<g transform="scale(-1 1)">${draw}</g>`;
  return [
    { draw: pair(wing), height: 15, round: 26 },
    { draw: pair(quills), height: 8, round: 6 },
    {
      draw: oval(0, 10, 56, 120) + fill('M-40 100L-70 230L-30 214L0 236L30 214L70 230L40 100Z'),
      height: 20,
      round: 44,
    },
    {
      draw:
        [0, 1, 2, 3]
          .map(
            (at) =>
              crescent(-22, -30 + at * 38, 17, 18, 20, 160, 10) + crescent(20, -12 + at * 38, 17, 18, 20, 160, 10),
          )
          .join('') + stroke('M-30 130L-44 214M0 126L0 220M30 130L44 214', 9),
      height: 7,
      round: 5,
    },
    { draw: oval(-18, -142, 48, 42) + fill('M-50 -166Q-110 -150 -108 -112Q-90 -128 -48 -126Z'), height: 20, round: 30 },
    { draw: dot(-34, -150, 9), height: 8, mode: 'sink', round: 6 },
  ];
}
