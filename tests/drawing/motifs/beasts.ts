import type { Layer } from '../relief.ts';
import { bar, crescent, dot, fill, leaf, oval, ring, stroke } from '../shapes.ts';

/** The horse of the Gallo-Belgic staters, come apart into crescents and pellets. */
export function disjointedHorse(): Layer[] {
  return [
    { draw: crescent(-40, 24, 172, 112, 186, 354, 104, 0.45), height: 34, round: 50 },
    { draw: leaf(-186, 14, 190, 124, 66) + leaf(132, -20, 190, 104, -62), height: 32, round: 46 },
    { draw: leaf(216, -142, 170, 76, 30), height: 28, round: 26 },
    {
      draw:
        crescent(196, -210, 40, 60, 160, 300, 24) + stroke('M150 -130Q110 -170 60 -160M140 -100Q90 -130 44 -118', 18),
      height: 20,
      round: 10,
    },
    {
      draw:
        bar(-200, 60, -280, 190, 36, 52, 46) +
        bar(-280, 190, -220, 290, 26, 36, 44) +
        bar(-160, 70, -120, 200, 36, 52, 46) +
        bar(-120, 200, -170, 300, 26, 36, 44),
      height: 24,
      round: 16,
    },
    {
      draw:
        bar(120, 40, 110, 180, 36, 52, 44) +
        bar(110, 180, 60, 280, 26, 36, 44) +
        bar(150, 20, 246, 110, 36, 52, 44) +
        bar(246, 110, 220, 220, 26, 36, 44),
      height: 24,
      round: 16,
    },
    {
      draw:
        stroke('M-240 -10Q-320 10 -330 100', 20) +
        stroke('M-240 -24Q-350 -30 -366 50', 20) +
        stroke('M-240 -40Q-366 -80 -396 -10', 20),
      height: 18,
      round: 9,
    },
    { draw: dot(0, 150, 46), height: 28, round: 42 },
    {
      draw: dot(-210, -200, 30) + dot(-130, -260, 30) + dot(-40, -290, 28) + dot(60, -280, 28) + dot(-280, -120, 28),
      height: 24,
      round: 28,
    },
    {
      draw:
        crescent(-120, -150, 80, 54, 180, 340, 36) +
        crescent(30, -200, 76, 46, 190, 350, 32) +
        crescent(310, -20, 60, 90, 120, 250, 30),
      height: 22,
      round: 16,
    },
    { draw: stroke('M-330 340Q0 400 340 320', 15), height: 14, round: 8 },
  ];
}

/** The she-wolf to the left with the twins. */
export function wolf(): Layer[] {
  return [
    {
      draw: fill(
        'M-230 -70Q-210 -130 -160 -120Q-120 -110 -90 -90Q40 -120 150 -80Q210 -50 206 40L214 180L180 184L164 70Q120 40 90 50L100 180L66 184L50 60Q-40 80 -100 60L-110 184L-144 182L-138 60L-160 184L-194 180Q-190 60 -170 0Q-200 10 -216 -20Q-250 -30 -230 -70Z',
      ),
      height: 19,
      round: 34,
    },
    { draw: fill('M-160 -116L-150 -160L-130 -110Z') + stroke('M206 -30Q250 20 226 100', 20), height: 13, round: 9 },
    {
      draw:
        [0, 1, 2, 3, 4, 5]
          .map((at) => stroke(`M${-90 + at * 40} ${-70 - (at % 2) * 8}Q${-80 + at * 40} -30 ${-90 + at * 40} 10`, 8))
          .join('') + dot(-206, -76, 7),
      height: 6,
      round: 5,
    },
    {
      draw:
        dot(-50, 104, 22) +
        dot(10, 104, 22) +
        leaf(-46, 160, 92, 46, 80) +
        leaf(14, 160, 92, 46, 100) +
        stroke('M-44 130L-70 80M8 130L30 80', 13),
      height: 14,
      round: 16,
    },
  ];
}

/** The long-tailed beast of Aldfrith's sceats, to the left, its tail over its back. */
export function longTailedBeast(): Layer[] {
  return [
    { draw: stroke('M-190 -60Q-100 -90 0 -60Q110 -30 170 20', 62), height: 26, round: 30 },
    { draw: oval(-240, -100, 66, 42, 24), height: 24, round: 34 },
    {
      draw: stroke('M-300 -86Q-330 -70 -336 -40', 20) + stroke('M-226 -130Q-210 -190 -180 -196', 24),
      height: 18,
      round: 11,
    },
    {
      draw:
        bar(-170, -30, -210, 150, 26, 32, 44) +
        bar(-120, -30, -110, 170, 26, 32, 44) +
        bar(120, 20, 90, 190, 26, 32, 44) +
        bar(180, 30, 220, 180, 26, 32, 44),
      height: 22,
      round: 18,
    },
    {
      draw: stroke('M190 10Q290 -60 250 -180Q180 -290 40 -250Q-60 -210 -20 -150Q30 -130 60 -170', 26),
      height: 20,
      round: 13,
    },
    { draw: dot(-246, -110, 11), height: 10, round: 9 },
    { draw: dot(-290, 60, 20) + dot(0, 110, 20) + dot(-60, 220, 20), height: 16, round: 18 },
  ];
}

/** The beast of Eadberht's sceats, to the right with a raised foreleg. */
export function raisedForelegBeast(): Layer[] {
  return [
    { draw: stroke('M-190 -20Q-80 -110 40 -80Q120 -70 150 -130', 56), height: 26, round: 28 },
    { draw: oval(212, -180, 68, 38, 16), height: 24, round: 32 },
    {
      draw:
        stroke('M150 -206Q130 -250 150 -280M186 -216Q180 -260 206 -284', 20) +
        stroke('M270 -170Q306 -160 310 -130', 17),
      height: 18,
      round: 10,
    },
    {
      draw:
        bar(-180, 0, -230, 170, 26, 32, 46) + bar(-130, -20, -110, 170, 26, 32, 46) + bar(70, -40, 60, 170, 26, 32, 46),
      height: 22,
      round: 18,
    },
    { draw: stroke('M116 -50Q200 -30 230 40Q220 80 180 70', 27), height: 22, round: 14 },
    { draw: stroke('M-200 -20Q-300 -60 -280 -180Q-220 -260 -140 -200', 24), height: 20, round: 12 },
    { draw: dot(220, -188, 10), height: 10, round: 8 },
    { draw: ring(0, 250, 4, 8), height: 2, round: 4 },
  ];
}
