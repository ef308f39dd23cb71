import type { Layer } from '../relief.ts';
import { bar, bothSides, box, crescent, dot, fill, leaf, place, stroke } from '../shapes.ts';

/** A facing crowned bust from a few punches, as on the pennies from the twelfth century to the fifteenth. About 300 high, its middle at 0,0. */
export type FacingBust = {
  /**
   * `fleurs` is the crown of 1280, pearls on the points between its fleurs; `first` that of 1279, on a straight band; `spears` has spear-heads
   * for the pearls; `spread` those, and side fleurs that curve outwards; `beads` the plain band of pellets of the short-cross penny; `none` a bare head. */
  readonly crown?: 'fleurs' | 'first' | 'spears' | 'spread' | 'beads' | 'arched' | 'none';
  /** `locks` falls in two waves, `strands` in three; `curls` stands in three rings at each side, `two-curls` in two about a pellet. */
  readonly hair?: 'locks' | 'curls' | 'two-curls' | 'strands' | 'bushy';
  readonly beard?: boolean | 'full' | 'small';
  /** `wedges`, `segment` and `hollowed` are the drapery by which the classes of Edward I are known. */
  readonly bust?: 'drapery' | 'wedges' | 'segment' | 'hollowed' | 'bare' | 'none';
  /** How long the face is and how wide, against the usual: `[1.1, 0.9]` is long and narrow. */
  readonly face?: readonly [long: number, wide: number];
  /** A pellet or a letter on the breast. */
  readonly breast?: string;
};

export function facingBust({
  crown = 'fleurs',
  hair = 'locks',
  beard = false,
  bust = 'drapery',
  breast = '',
  face: [long, wide] = [1, 1],
}: FacingBust = {}): Layer[] {
  const shaped = (draw: string): string =>
    long === 1 && wide === 1
      ? draw
      : `<g transform="translate(0 ${-92 * (1 - long)}) scale(${wide} ${long})">${draw}</g>`;
  const face = shaped(fill('M-78 -88Q-84 -10 -64 46Q-40 98 0 106Q40 98 64 46Q84 -10 78 -88Z'));
  return [
    ...(bust === 'none' ? [] : neck(bust)),
    { draw: face, height: 15, round: 62 },
    { draw: HAIR[hair], height: 13, round: 11 },
    { draw: shaped(features()), height: 11, round: 7 },
    ...(beard === false ? [] : [{ draw: BEARDS[beard === true ? 'usual' : beard], height: 9, round: 6 }]),
    ...(crown === 'none' ? [] : [{ draw: CROWNS[crown], height: 14, round: 9 }]),
    ...(breast === '' ? [] : [{ draw: breast, height: 11, round: 7, mode: 'over' as const }]),
  ];
}

function features(): string {
  const eye =
    crescent(35, -34, 25, 18, 180, 360, 11, 0.5) + crescent(35, -35, 25, 16, 0, 180, 9, 0.5) + dot(35, -35, 9.5);
  const brow = crescent(36, -46, 36, 26, 190, 345, 11, 0.4);
  const nose = bar(0, -52, 0, 30, 12, 16, 24) + dot(-13, 30, 9) + dot(13, 30, 9);
  const mouth = bar(-26, 58, 26, 58, 9, 14) + bar(-17, 76, 17, 76, 11, 7);
  return bothSides(eye + brow) + nose + mouth;
}

const HAIR = {
  locks: bothSides(
    stroke('M86 -92Q112 -70 104 -40Q98 -14 122 6Q146 26 140 54Q132 80 104 74', 20) +
      stroke('M98 -98Q140 -74 132 -42Q126 -16 152 2Q178 24 172 58Q164 92 134 96', 19) +
      stroke('M80 -60Q88 -20 92 4Q104 36 116 50', 13),
  ),
  curls: bothSides(
    stroke('M96 -78A24 24 0 1 1 96 -30A22 22 0 1 1 110 -66', 11) +
      stroke('M96 -20A25 25 0 1 1 94 30A22 22 0 1 1 112 -8', 11) +
      dot(106, -54, 7) +
      dot(106, 5, 7) +
      stroke('M96 44A22 22 0 1 1 88 84', 11) +
      dot(104, 64, 6),
  ),
  'two-curls': bothSides(
    stroke('M92 -74A33 33 0 1 1 92 -14A30 30 0 1 1 120 -66', 12) +
      stroke('M88 10A33 33 0 1 1 84 68A30 30 0 1 1 114 16', 12) +
      dot(108, -44, 12) +
      dot(102, 40, 12),
  ),
  strands: bothSides(
    [0, 1, 2]
      .map((at) =>
        stroke(
          `M${74 + at * 20} ${-92 + at * 4}Q${96 + at * 26} -40 ${78 + at * 27} ${2 + at * 4}Q${64 + at * 26} 50 ${88 + at * 27} ${98 - at * 12}Q${98 + at * 27} ${112 - at * 12} ${108 + at * 25} ${98 - at * 12}`,
          12,
        ),
      )
      .join(''),
  ),
  bushy: bothSides(
    [0, 1, 2, 3]
      .map((at) =>
        stroke(
          `M${82 + at * 17} ${-92 + at * 6}Q${120 + at * 20} -40 ${100 + at * 16} ${4 + at * 6}Q${84 + at * 12} 46 ${112 + at * 15} ${82 - at * 7}`,
          10,
        ),
      )
      .join('') +
      dot(120, 88, 10) +
      dot(146, 80, 9),
  ),
} as const;

const fleur = (x: number, y: number, turn: number, size: number): string =>
  `<g transform="translate(${x} ${y}) rotate(${turn}) scale(${size})">${leaf(0, -42, 64, 30, 90)}${crescent(-21, -14, 19, 24, 95, 285, 15)}${crescent(21, -14, 19, 24, -105, 85, 15)}${box(-22, -6, 44, 8)}${bar(0, -10, 0, 20, 12, 20)}</g>`;

const band = fill('M-96 -112Q0 -136 96 -112L92 -90Q0 -114 -92 -90Z');

const spear = (x: number, turn: number): string =>
  place(leaf(0, -164, 40, 13, 90) + bar(0, -124, 0, -156, 7, 9, 5), x, 0, 1, turn);

const CROWNS = {
  first:
    fill('M-98 -120L98 -120L94 -92L-94 -92Z') +
    fleur(0, -142, 0, 1.12) +
    fleur(-84, -134, -10, 0.92) +
    fleur(84, -134, 10, 0.92) +
    bothSides(bar(44, -124, 46, -160, 7, 12, 5) + dot(46, -168, 8)),
  spears:
    band +
    fleur(0, -142, 0, 1.12) +
    fleur(-88, -128, -20, 0.92) +
    fleur(88, -128, 20, 0.92) +
    spear(-30, -8) +
    spear(30, 8),
  spread:
    band +
    fleur(0, -138, 0, 1.05) +
    fleur(-104, -118, -48, 1.1) +
    fleur(104, -118, 48, 1.1) +
    spear(-34, -12) +
    spear(34, 12),
  fleurs:
    band +
    fleur(0, -142, 0, 1.12) +
    fleur(-88, -128, -20, 0.92) +
    fleur(88, -128, 20, 0.92) +
    bar(-46, -124, -51, -164, 7, 12, 5) +
    bar(46, -124, 51, -164, 7, 12, 5) +
    dot(-52, -172, 9) +
    dot(52, -172, 9),
  beads:
    stroke('M-90 -92Q0 -116 90 -92', 9) +
    [-80, -54, -27, 0, 27, 54, 80].map((x) => dot(x, -116 + (x * x) / 420, 11)).join('') +
    stroke('M-90 -120Q0 -146 90 -120', 6) +
    bar(0, -140, 0, -190, 8, 10, 20) +
    bar(-22, -168, 22, -168, 8, 15),
  arched:
    band +
    stroke('M-92 -116Q-96 -196 0 -196Q96 -196 92 -116', 11) +
    stroke('M-50 -122Q-54 -186 0 -194M50 -122Q54 -186 0 -194', 8) +
    dot(0, -206, 11) +
    bar(0, -206, 0, -246, 7, 10, 16) +
    bar(-18, -230, 18, -230, 7, 13) +
    [-76, -40, 0, 40, 76].map((x) => dot(x, -122 + (x * x) / 400, 8)).join(''),
} as const;

function neck(kind: Exclude<FacingBust['bust'], 'none' | undefined>): Layer[] {
  const throat = fill('M-36 80L36 80Q40 130 66 150L-66 150Q-40 130 -36 80Z');
  if (kind === 'bare') {
    const breast = fill(
      'M-38 96Q-40 130 -92 150Q-150 168 -160 206Q-80 236 0 236Q80 236 160 206Q150 168 92 150Q40 130 38 96Z',
    );
    return [{ draw: breast, height: 12, round: 34 }];
  }
  if (kind !== 'drapery')
    return [
      { draw: throat, height: 10, round: 26 },
      { draw: DRAPERY[kind], height: 13, round: 10 },
    ];
  const collar = crescent(0, 96, 86, 68, 20, 160, 22, 0.5);
  const folds =
    bothSides(bar(58, 160, 150, 196, 12, 26) + bar(40, 182, 112, 232, 11, 24) + fill('M150 178L182 200L140 218Z')) +
    bar(0, 176, 0, 232, 12, 26) +
    fill('M-22 168L22 168L0 196Z');
  return [
    { draw: throat, height: 10, round: 26 },
    { draw: collar + folds, height: 12, round: 10 },
  ];
}

const DRAPERY = {
  wedges: bothSides(fill('M14 178L112 170L130 198L70 224Z')),
  segment: crescent(0, 20, 176, 190, 36, 144, 30, 0.7),
  hollowed: fill('M-138 190Q-96 158 -52 164Q-30 196 0 196Q30 196 52 164Q96 158 138 190L116 214Q0 242 -116 214Z'),
} as const;

/** Strokes along the jaw, so many to a side and so long. */
function bearded(times: number, long: number): string {
  const apart = 64 / times;
  return (
    bothSides(
      Array.from({ length: times }, (_, at) => {
        const [x, y] = [64 - at * apart, 44 + at * apart * 0.94];
        return bar(x, y, x + 8 * (1 - at / times), y + long, 6, 11, 5);
      }).join(''),
    ) + bar(0, 88, 0, 90 + long, 7, 12, 5)
  );
}

const BEARDS = {
  usual:
    bothSides(
      [0, 1, 2, 3].map((at) => bar(64 - at * 16, 44 + at * 15, 72 - at * 17, 72 + at * 15, 6, 11, 5)).join(''),
    ) + bar(0, 88, 0, 118, 7, 12, 5),
  full: bearded(6, 50) + bothSides(bar(16, 66, 44, 66, 6, 8)),
  small: bothSides(dot(20, 100, 7) + dot(40, 84, 6)) + dot(0, 104, 7),
} as const;
