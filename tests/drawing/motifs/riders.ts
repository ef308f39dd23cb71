import type { Layer } from '../relief.ts';
import { bar, crescent, dot, fill, leaf, oval, stroke } from '../shapes.ts';

const HORSE =
  'M-150 -66Q-196 -140 -226 -156L-236 -176L-214 -164L-276 -112Q-292 -88 -268 -82L-228 -98Q-212 -50 -184 0Q-182 30 -160 54Q-20 104 70 62Q110 76 140 70Q190 40 182 -10Q168 -64 92 -70Q-30 -46 -92 -54Z';

/** A king on a horse to the left, sword raised. */
export function kingOnHorse(): Layer[] {
  const legs =
    bar(-150, 40, -210, 110, 34, 44, 26) +
    bar(-210, 110, -250, 70, 22, 26, 30) +
    bar(-120, 60, -130, 150, 30, 42, 24) +
    bar(-130, 150, -140, 224, 20, 24, 36) +
    bar(120, 50, 100, 150, 34, 50, 26) +
    bar(100, 150, 60, 222, 22, 26, 36) +
    bar(160, 40, 190, 140, 34, 50, 26) +
    bar(190, 140, 172, 224, 22, 26, 36);
  return [
    { draw: legs, height: 14, round: 14 },
    { draw: fill(HORSE), height: 20, round: 44 },
    {
      draw:
        stroke('M178 -30Q250 -30 248 60Q256 130 226 190M184 -24Q230 10 224 90', 20) +
        stroke('M-206 -140Q-160 -110 -140 -50', 15),
      height: 12,
      round: 9,
    },
    {
      draw:
        stroke('M-270 -96L-226 -128M-244 -90Q-150 -80 -60 -100', 7) +
        dot(-240, -134, 6) +
        stroke('M-160 30Q-60 10 -20 -30M60 60Q110 20 120 -50', 9),
      height: 6,
      round: 5,
    },
    {
      draw: fill('M-60 -210Q0 -236 50 -206Q70 -140 60 -70L40 10L-20 90L-50 84L-20 10L-70 -60Q-76 -140 -60 -210Z'),
      height: 19,
      round: 34,
    },
    {
      draw:
        stroke('M-50 -180Q0 -150 46 -190M-54 -130Q0 -110 54 -130M-60 -90Q0 -70 56 -90', 10) +
        stroke('M44 -190Q140 -150 150 -70M50 -170Q110 -130 116 -60', 13),
      height: 9,
      round: 7,
    },
    { draw: oval(-6, -258, 36, 44), height: 18, round: 30 },
    {
      draw:
        stroke('M26 -270Q50 -230 30 -200M34 -252Q54 -220 44 -196', 11) +
        fill('M-40 -286L-44 -320L-22 -304L-4 -330L12 -304L34 -320L30 -284Q-4 -300 -40 -286Z') +
        dot(-26, -262, 5),
      height: 11,
      round: 6,
    },
    {
      draw:
        stroke('M44 -190Q110 -220 90 -280', 22) + bar(92, -286, 20, -400, 9, 14, 5) + bar(72, -280, 114, -294, 9, 12),
      height: 14,
      round: 9,
    },
    { draw: bar(-20, 84, -64, 104, 20, 24, 18), height: 12, round: 8 },
  ];
}

/** St George on horseback to the right, the dragon under him. */
export function saintGeorge(): Layer[] {
  const mirror = (draw: string): string => `<g transform="scale(-1 1)">${draw}</g>`;
  const legs =
    bar(-140, 30, -230, 40, 34, 44, 24) +
    bar(-230, 40, -226, 110, 20, 24, 30) +
    bar(-150, 50, -200, 120, 32, 44, 24) +
    bar(-200, 120, -160, 180, 20, 24, 30) +
    bar(120, 50, 150, 150, 36, 52, 28) +
    bar(150, 150, 110, 226, 22, 28, 38) +
    bar(160, 30, 226, 110, 36, 52, 28) +
    bar(226, 110, 214, 206, 22, 28, 38);
  const turned = (draw: string): string => `<g transform="rotate(-14)">${mirror(draw)}</g>`;
  return [
    { draw: stroke('M-20 250Q80 200 190 250Q260 280 300 220M190 250Q120 290 20 280', 36), height: 15, round: 18 },
    {
      draw:
        oval(20, 262, 60, 30) +
        fill('M-60 230Q-110 210 -120 240L-84 250L-116 268Q-90 290 -40 276Z') +
        fill('M110 230Q170 150 260 170Q220 190 226 214Q190 206 180 240Z'),
      height: 16,
      round: 20,
    },
    { draw: turned(legs), height: 15, round: 14 },
    { draw: turned(fill(HORSE)), height: 22, round: 46 },
    {
      draw: turned(
        stroke('M178 -30Q260 -60 300 10Q320 60 290 110M184 -16Q240 -20 262 40', 19) +
          stroke('M-212 -146Q-170 -116 -146 -50M-196 -120Q-150 -90 -130 -50', 15),
      ),
      height: 12,
      round: 9,
    },
    {
      draw: turned(
        stroke('M-160 30Q-60 10 -20 -30M60 60Q110 20 120 -50M-268 -96L-226 -126M-244 -92Q-150 -80 -60 -100', 7) +
          dot(-242, -134, 6),
      ),
      height: 6,
      round: 5,
    },
    {
      draw: fill('M-66 -200Q-10 -240 40 -206Q60 -130 40 -50Q90 0 80 70L100 118L62 124L40 60L-20 -20Q-80 -80 -66 -200Z'),
      height: 21,
      round: 34,
    },
    {
      draw: stroke('M-50 -160Q0 -140 46 -170M-46 -120Q0 -100 48 -126M-30 -76Q10 -60 44 -80M20 -200Q-20 -120 0 -70', 9),
      height: 8,
      round: 6,
    },
    { draw: fill('M-50 -200Q-170 -210 -230 -120Q-260 -60 -220 20Q-180 -60 -60 -130Z'), height: 12, round: 22 },
    {
      draw: stroke('M-60 -180Q-170 -180 -220 -60M-60 -160Q-150 -140 -206 -20M-80 -190Q-190 -190 -232 -90', 9),
      height: 8,
      round: 6,
    },
    { draw: oval(10, -254, 34, 42) + stroke('M-20 -280Q10 -320 50 -290', 18), height: 19, round: 28 },
    {
      draw: stroke('M-30 -290Q-70 -330 -90 -270Q-100 -230 -80 -200', 20) + crescent(12, -262, 36, 40, 180, 350, 14),
      height: 12,
      round: 9,
    },
    {
      draw: stroke('M-40 -190Q-110 -170 -130 -110', 24) + bar(-120, -126, -170, -20, 11, 16, 5),
      height: 15,
      round: 10,
    },
    { draw: stroke('M40 -190Q90 -150 120 -160', 22), height: 14, round: 10 },
  ];
}

/** St Michael with wings, spearing the dragon below. */
export function saintMichael(): Layer[] {
  const wing = fill('M30 -120Q110 -240 210 -200Q240 -100 180 60Q160 -10 120 -20Q110 -60 40 -60Z');
  const quills = stroke(
    'M60 -110Q140 -200 200 -170M60 -90Q140 -150 208 -110M60 -76Q150 -100 200 -40M80 -60Q140 -60 180 20',
    9,
  );
  const both = (draw: string): string => `${draw}<g transform="scale(-1 1)">${draw}</g>`;
  return [
    { draw: both(wing), height: 13, round: 24 },
    { draw: both(quills), height: 8, round: 6 },
    {
      draw: fill(
        'M-50 -120Q0 -144 50 -120Q64 -50 40 10Q70 90 60 170L16 190L0 90L-26 190L-66 170Q-66 80 -40 10Q-66 -50 -50 -120Z',
      ),
      height: 19,
      round: 32,
    },
    {
      draw: stroke('M-30 -90Q0 -60 34 -90M-40 10Q0 30 40 10M-20 30Q-40 100 -46 160M24 30Q40 100 40 160', 10),
      height: 8,
      round: 6,
    },
    { draw: oval(0, -176, 36, 42), height: 18, round: 30 },
    { draw: `<circle cx="0" cy="-180" r="62" fill="none" stroke="#fff" stroke-width="11"/>`, height: 11, round: 6 },
    { draw: stroke('M44 -100Q100 -60 60 -10M-44 -100Q-90 -50 -40 -10', 22), height: 13, round: 10 },
    { draw: stroke('M130 -250L-130 260', 15) + leaf(134, -262, 70, 20, -63), height: 15, round: 8 },
    { draw: stroke('M-220 250Q-130 190 -60 250Q20 300 110 240Q190 200 240 260', 40), height: 16, round: 20 },
    {
      draw:
        fill('M-190 240Q-260 190 -280 236L-240 250L-276 270Q-240 296 -190 270Z') +
        fill('M60 230Q100 160 170 190L130 236Z'),
      height: 15,
      round: 16,
    },
  ];
}
