import type { Layer } from '../relief.ts';
import { bar, box, crescent, crossPattee, dot, fill, leaf, oval, place, ring, round, stroke } from '../shapes.ts';

const lily =
  leaf(0, -14, 56, 22, 90) +
  crescent(-15, -6, 13, 17, 95, 290, 10) +
  crescent(15, -6, 13, 17, -110, 85, 10) +
  box(-16, 2, 32, 7) +
  bar(0, 4, 0, 20, 7, 14);
const lion =
  stroke('M-40 2Q-20 -12 4 -4Q24 2 36 -4', 17) +
  dot(-46, -9, 12) +
  stroke('M-34 6L-42 22M-20 4L-18 22M18 4L14 22M34 2L42 20', 8) +
  stroke('M36 -6Q56 -14 48 -30Q40 -36 36 -26', 7);

/** A shield 300 wide and 360 high: France in the first and fourth quarters, England in the others. */
export function royalShield(arched = false): Layer[] {
  const body = arched
    ? 'M-150 -180L150 -180L150 20Q146 130 0 190Q-146 130 -150 20Z'
    : 'M-150 -176Q-120 -166 -100 -180L100 -180Q120 -166 150 -176L150 10Q150 120 0 184Q-150 120 -150 10Z';
  const lilies =
    place(lily, -104, -118) +
    place(lily, -46, -118) +
    place(lily, -76, -46) +
    place(lily, 46, 46, 0.95) +
    place(lily, 102, 46, 0.95) +
    place(lily, 66, 108, 0.9);
  const lions =
    [-144, -96, -48].map((y) => place(lion, 74, y, 0.95)).join('') +
    [36, 78, 118].map((y, at) => place(lion, -72 + at * 12, y, 0.9 - at * 0.1)).join('');
  return [
    { draw: fill(body), height: 7, mode: 'over', round: 12 },
    { draw: stroke(body, 13) + box(-5, -180, 10, 356) + box(-150, -5, 300, 10), height: 10, round: 6 },
    { draw: lilies + lions, height: 9, round: 5 },
  ];
}

const castle = box(-30, 8, 60, 30) + [-30, -8, 14].map((x) => box(x, -24, 16, 34) + box(x - 3, -32, 22, 9)).join('');
const lionUp = place(lion, 0, 0, 0.95, -38);

/** The arms of a king of England by marriage: Castile and Leon quartered on the left, France and England on the right. */
export function impaledShield(): Layer[] {
  const body = 'M-150 -180L150 -180L150 20Q146 130 0 190Q-146 130 -150 20Z';
  const spain =
    place(castle, -114, -118, 0.85) +
    place(lionUp, -40, -118, 0.8) +
    place(lionUp, -108, 40, 0.8) +
    place(castle, -40, 56, 0.85);
  const england =
    [
      [24, -130],
      [56, -130],
      [40, -70],
    ]
      .map(([x = 0, y = 0]) => place(lily, x, y, 0.8))
      .join('') +
    [-136, -96, -56].map((y) => place(lion, 112, y, 0.62)).join('') +
    [32, 68, 104].map((y) => place(lion, 40, y, 0.62)).join('') +
    [
      [94, 34],
      [126, 34],
      [106, 84],
    ]
      .map(([x = 0, y = 0]) => place(lily, x, y, 0.75))
      .join('');
  return [
    { draw: fill(body), height: 7, mode: 'over', round: 12 },
    {
      draw:
        stroke(body, 13) +
        box(-6, -180, 12, 366) +
        box(-150, -4, 300, 8) +
        box(-79, -180, 7, 320) +
        box(74, -180, 7, 320),
      height: 10,
      round: 6,
    },
    { draw: spain + england, height: 9, round: 5 },
  ];
}

/** A cross fourchée behind a shield, to the edge of the piece. */
export function crossBehind(reach: number): string {
  return round(
    bar(0, 0, 0, -reach * 0.88, 26, 26, 30) +
      crescent(-32, -reach + 26, 30, 30, -40, 150, 22) +
      crescent(32, -reach + 26, 30, 30, 30, 220, 22) +
      dot(0, -reach + 6, 14),
    4,
  );
}

/** A closed crown, 200 wide. */
export const CROWN: string =
  fill('M-92 40Q0 20 92 40L90 66Q0 48 -90 66Z') +
  stroke('M-90 38Q-124 -44 -20 -50M90 38Q124 -44 20 -50M-50 32Q-60 -40 -8 -50M50 32Q60 -40 8 -50', 12) +
  dot(0, -58, 15) +
  crossPattee(0, -92, 26, 8, 22) +
  [-60, -20, 20, 60].map((x) => dot(x, 12 + (x * x) / 700, 8)).join('');

/** A five-petalled rose. */
export function rose(size: number): string {
  return place(round(oval(0, -52, 34, 30) + leaf(0, -92, 36, 12, 90), 5) + dot(0, 0, 26), 0, 0, size / 110);
}

/** A key with its bit at the head. */
export const KEY: string =
  bar(0, -80, 0, 60, 14, 16, 16) +
  ring(0, 86, 26, 14) +
  fill('M6 -84L56 -84L56 -34L40 -34L40 -54L30 -54L30 -34L6 -34Z');

const TRESSURE_TIMES = 9;
/** The frame of arches round the bust of a groat. */
export function tressure(far: number): string {
  const width = (2 * Math.PI * far) / TRESSURE_TIMES / 2;
  return (
    round(crescent(0, -far, width * 1.02, width * 0.72, 180, 360, 15, 0.75), TRESSURE_TIMES, 180 / TRESSURE_TIMES) +
    round(dot(0, -far + 8, 14) + leaf(0, -far - 18, 36, 12, 90), TRESSURE_TIMES)
  );
}

/** Four crowned shields set as a cross: England, Scotland, France and Ireland. */
export function crownedShields(): Layer[] {
  const shield = 'M-112 -316L112 -316L112 -200Q106 -122 0 -78Q-106 -122 -112 -200Z';
  const filled = [
    [-270, -208, -150].map((y, at) => place(lion, 0, y, 1.5 - at * 0.14)).join(''),
    place(
      stroke(
        'M-20 60Q-50 10 -10 -10Q-40 -40 -6 -60Q10 -74 24 -56M-10 -10L34 -24M-12 0L36 14M-20 56L-6 84M-14 40L24 74M-20 50Q-66 20 -46 -40',
        13,
      ),
      6,
      -204,
      1.34,
    ),
    place(lily, -50, -252, 1.7) + place(lily, 50, -252, 1.7) + place(lily, 0, -150, 1.7),
    place(
      stroke('M-44 -276Q30 -300 36 -240Q40 -180 0 -142L-44 -276M-24 -262L-12 -186M-6 -270L2 -166M14 -272L14 -180', 8),
      0,
      98,
      1.42,
    ),
  ];
  const all = (draw: (at: number) => string): string =>
    [0, 1, 2, 3].map((at) => place(draw(at), 0, 0, 1, at * 90)).join('');
  return [
    { draw: all(() => fill(shield)), height: 6, round: 10 },
    { draw: all(() => stroke(shield, 10) + place(CROWN, 0, -374, 0.92)), height: 9, round: 6 },
    { draw: all((at) => filled[at] ?? ''), height: 8, round: 5 },
    { draw: ring(0, 0, 52, 9) + place(fill('M-28 -26L28 -26L22 16L0 36L-22 16Z'), 0, 0), height: 9, round: 6 },
  ];
}

/** The king enthroned, facing, as on the sovereign pennies. */
export function enthroned(): Layer[] {
  return [
    {
      draw:
        box(-214, -190, 24, 440) +
        [-190, -100, 0, 100, 200].map((y) => dot(-202, y, 22)).join('') +
        box(190, 20, 18, 226) +
        box(-214, 236, 420, 18),
      height: 12,
      round: 10,
    },
    {
      draw: fill('M-84 -70Q0 -96 84 -70Q110 40 150 120L176 236L-176 236L-150 120Q-110 40 -84 -70Z'),
      height: 14,
      round: 44,
    },
    {
      draw: stroke(
        'M-60 -50Q-90 60 -120 226M-30 -50Q-50 60 -60 230M0 -40L0 120M30 -50Q50 60 60 230M60 -50Q90 60 120 226M-100 100Q0 150 100 100',
        12,
      ),
      height: 10,
      round: 7,
    },
    { draw: oval(0, -130, 52, 62), height: 16, round: 40 },
    {
      draw: dot(-18, -138, 8) + dot(18, -138, 8) + bar(0, -136, 0, -112, 7, 10) + bar(-14, -92, 14, -92, 7, 9),
      height: 9,
      round: 5,
    },
    { draw: place(CROWN, 0, -216, 0.62), height: 13, round: 6 },
    {
      draw:
        stroke('M-80 -40Q-140 0 -130 30', 26) +
        stroke('M-140 60L-120 -150', 13) +
        leaf(-118, -172, 70, 30, 95) +
        stroke('M80 -40Q140 -10 130 20', 26) +
        dot(134, -10, 36) +
        crossPattee(134, -70, 26, 8, 20),
      height: 14,
      round: 10,
    },
  ];
}
