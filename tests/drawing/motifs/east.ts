import type { Punches } from '../skeletons.ts';
import type { Layer } from '../relief.ts';
import { bar, crescent, dot, fill, leaf, n, oval, place, stroke } from '../shapes.ts';

/** Arabic letters as the Kufic die-cutter made them: straight, angular, on one base line. Dots are left out, as he left them. */
const KUFIC_SHAPES: Readonly<Record<string, string>> = {
  ا: '30;l 14 0 14 84',
  ل: '46;l 34 0 34 80;l 0 80 40 80',
  ه: '54;c 28 58 22 22 0 360;l 0 80 56 80',
  ة: '54;c 28 58 22 22 0 360;l 0 80 56 80',
  م: '44;c 22 66 17 16 0 360;l 0 80 46 80',
  د: '52;l 6 80 46 80;l 46 80 46 46;l 46 46 14 46',
  ح: '58;l 0 80 58 80;l 50 42 10 78',
  ر: '40;l 30 52 30 82;c 10 82 20 20 0 95',
  و: '48;c 28 58 17 16 0 360;l 44 60 44 84;c 22 84 22 18 0 95',
  ب: '38;l 26 46 26 80;l 0 80 38 80',
  س: '78;l 68 48 68 80;l 43 48 43 80;l 18 48 18 80;l 0 80 78 80',
  ك: '62;l 0 80 54 80;l 54 80 54 42;l 54 42 10 42;l 48 42 62 6',
  ق: '46;c 24 52 17 16 0 360;l 40 54 40 80;l 0 80 42 80',
  ص: '66;l 0 80 62 80;l 62 80 62 50;l 62 50 18 50;l 18 50 18 80',
  ط: '66;l 0 80 62 80;l 62 80 62 50;l 62 50 18 50;l 24 0 24 80',
  ع: '54;c 26 56 18 17 30 330;l 0 80 52 80',
  '١': '26;l 12 20 12 92',
  '٢': '46;l 12 20 12 92;l 12 26 38 26;l 38 26 38 44',
  '٥': '48;c 24 62 17 22 0 360',
};
const SAME: Readonly<Record<string, string>> = {
  ذ: 'د',
  ج: 'ح',
  خ: 'ح',
  ز: 'ر',
  ت: 'ب',
  ث: 'ب',
  ن: 'ب',
  ي: 'ب',
  ى: 'ب',
  ش: 'س',
  ف: 'ق',
  ض: 'ص',
  ظ: 'ط',
  غ: 'ع',
  أ: 'ا',
  إ: 'ا',
};

export const KUFIC: Punches = {
  letters: {
    ...KUFIC_SHAPES,
    ...Object.fromEntries(Object.entries(SAME).map(([sign, like]) => [sign, KUFIC_SHAPES[like] ?? ''])),
  },
  weight: 13,
  flare: 1.5,
  thin: 0.9,
  ends: 'plain',
  apart: 2,
  uneven: 0.5,
};

/** Arabic stands from right to left; the punches set from left to right. */
export function rightToLeft(text: string): string {
  return Array.from(text)
    .reverse()
    .map((sign) => (sign === '[' ? ']' : sign === ']' ? '[' : sign))
    .join('');
}

/** The few Chinese characters of a Japanese sen, stroke by stroke. */
export const BRUSH: Punches = {
  letters: {
    大: '100;l 8 34 92 34;l 50 4 46 50;l 46 50 8 96;l 52 46 92 96',
    日: '100;l 24 8 24 92;l 76 8 76 92;l 24 8 76 8;l 24 50 76 50;l 24 92 76 92',
    本: '100;l 8 30 92 30;l 50 4 50 98;l 46 32 10 76;l 54 32 90 76;l 32 74 68 74',
    明: '100;l 6 16 6 80;l 36 16 36 80;l 6 16 36 16;l 6 48 36 48;l 6 80 36 80;l 54 6 54 60;l 54 60 46 96;l 90 6 90 94;l 54 6 90 6;l 54 34 90 34;l 54 62 90 62',
    治: '100;l 8 12 20 24;l 4 40 18 50;l 6 94 22 66;l 60 4 40 40;l 40 40 88 36;l 76 22 92 44;l 42 58 42 94;l 86 58 86 94;l 42 58 86 58;l 42 94 86 94',
    十: '100;l 6 46 94 46;l 50 4 50 98',
    年: '100;l 28 4 10 32;l 24 20 86 20;l 26 46 80 46;l 4 68 96 68;l 56 20 56 98;l 26 46 26 68',
    一: '100;l 6 50 94 50',
    錢: '100;l 24 4 4 34;l 24 4 46 34;l 12 40 38 40;l 6 60 44 60;l 25 40 25 92;l 10 72 16 84;l 40 72 34 84;l 2 94 48 94;l 54 18 96 14;l 52 34 96 30;l 68 4 92 48;l 94 36 70 50;l 54 64 96 60;l 52 80 96 76;l 68 52 92 96;l 94 84 70 98',
    以: '100;l 18 14 18 80;l 18 80 40 66;l 44 24 52 40;l 80 10 74 60;l 74 60 48 96;l 74 60 92 94',
    百: '100;l 6 10 94 10;l 50 10 40 32;l 22 32 22 96;l 78 32 78 96;l 22 32 78 32;l 22 62 78 62;l 22 94 78 94',
    枚: '100;l 4 28 42 28;l 22 4 22 98;l 20 32 4 66;l 24 40 40 56;l 62 4 50 34;l 56 24 96 24;l 84 24 52 96;l 58 50 94 96',
    換: '100;l 4 26 36 26;l 22 4 22 92;l 22 92 8 84;l 4 66 38 54;l 58 4 44 30;l 56 14 80 14;l 80 14 72 30;l 48 32 48 60;l 90 32 90 60;l 48 32 90 32;l 44 64 96 64;l 66 66 42 98;l 70 66 96 98',
    圓: '100;l 6 4 6 98;l 6 4 94 4;l 94 4 94 98;l 6 98 94 98;l 32 16 68 16;l 32 16 32 32;l 68 16 68 32;l 32 32 68 32;l 28 42 28 76;l 72 42 72 76;l 28 42 72 42;l 28 53 72 53;l 28 64 72 64;l 28 76 72 76;l 40 78 22 92;l 60 78 78 92',
  },
  weight: 9,
  flare: 1.35,
  thin: 0.9,
  ends: 'plain',
  apart: 18,
  uneven: 0.1,
};

/** The sultan's cypher: three tall strokes, two great loops to the left, arms to the right. */
export function tughra(): Layer[] {
  const loops =
    stroke('M40 96C-60 0 -260 -50 -300 60C-320 170 -110 190 30 130', 17) +
    stroke('M36 100C-40 40 -190 0 -220 70C-236 140 -100 160 24 124', 14);
  const arms = stroke('M30 130C130 190 240 150 330 40', 16) + stroke('M20 150C130 220 260 170 340 76', 13);
  const tall =
    bar(-40, 110, -56, -250, 15, 20, 26) + bar(20, 110, 8, -280, 15, 20, 26) + bar(80, 110, 72, -250, 15, 20, 26);
  const flags =
    stroke('M-56 -240C-120 -190 -110 -100 -46 -70C-10 -50 -10 -10 -30 20', 11) +
    stroke('M8 -270C-50 -210 -40 -110 18 -80C54 -60 54 -16 30 16', 11) +
    stroke('M72 -240C20 -190 20 -110 80 -80C112 -60 110 -20 88 16', 11);
  const words =
    stroke('M-80 150Q-40 110 0 150Q40 190 80 140M-100 180Q-30 140 20 184Q70 210 120 164M-70 210Q0 180 60 214', 13) +
    dot(-100, 140, 9) +
    dot(100, 200, 9) +
    dot(0, 224, 9);
  return [
    { draw: loops + arms, height: 13, round: 8 },
    { draw: tall, height: 14, round: 9 },
    { draw: flags + words, height: 12, round: 7 },
  ];
}

/** A wreath of two branches tied below, open above. */
export function wreath(far: number, leaves: number, size: number): string {
  const branch = Array.from({ length: leaves }, (_, at) => {
    const turn = 172 - (at / (leaves - 1)) * 150;
    return place(
      leaf(-size * 0.34, -far, size, size * 0.36, -38) +
        leaf(size * 0.2, -far - size * 0.3, size, size * 0.34, 10) +
        dot(size * 0.5, -far + size * 0.3, size * 0.12),
      0,
      0,
      1,
      turn,
    );
  }).join('');
  return (
    branch +
    `<g transform="scale(-1 1)">${branch}</g>` +
    stroke(`M-60 ${far + 30}Q0 ${far - 50} 60 ${far + 30}M-60 ${far - 40}Q0 ${far + 50} 60 ${far - 40}`, 12)
  );
}

/** A dragon in a coil, as on the sen. */
export function dragon(): Layer[] {
  const points = Array.from({ length: 60 }, (_, at): [number, number, number] => {
    const part = at / 59;
    const angle = -0.7 + part * Math.PI * 3.1;
    const far = 56 + part * 176 + Math.sin(part * 19) * 16;
    return [Math.cos(angle) * far, Math.sin(angle) * far * 0.94, angle];
  });
  const path = `M${points.map(([x, y]) => `${n(x)} ${n(y)}`).join('L')}`;
  const scales = points
    .map(([x, y, angle], at) =>
      at > 6
        ? place(crescent(0, 0, 15, 17, 100, 260, 8, 0.4), x, y, 1.05 - at * 0.012, (angle * 180) / Math.PI + 90)
        : '',
    )
    .join('');
  const spines = points
    .filter((_, at) => at > 8 && at % 2 === 0)
    .map(([x, y, angle]) => place(fill('M-9 0L2 -24L10 0Z'), x * 1.13, y * 1.13, 1, (angle * 180) / Math.PI + 90))
    .join('');
  const claw = (x: number, y: number, turn: number): string =>
    place(bar(0, 0, 0, 60, 18, 26, 16) + stroke('M0 60L-24 88M0 60L0 96M0 60L24 86', 9), x, y, 1, turn);
  return [
    { draw: spines, height: 8, round: 5 },
    {
      draw: points.map(([x, y], at) => dot(Math.round(x), Math.round(y), 28 - at * 0.36)).join('') + stroke(path, 13),
      height: 17,
      round: 25,
    },
    { draw: scales, height: 6, round: 4 },
    {
      draw: claw(-150, 90, 40) + claw(150, 110, -40) + claw(120, -140, -150) + claw(-160, -110, 130),
      height: 12,
      round: 8,
    },
    {
      draw:
        oval(26, -34, 62, 46, -20) +
        fill('M60 -60Q116 -70 122 -40Q96 -26 62 -18Z') +
        fill('M62 -16Q104 -10 110 10Q84 20 56 4Z'),
      height: 19,
      round: 24,
    },
    {
      draw:
        stroke('M0 -70Q-40 -110 -70 -96M24 -80Q10 -126 -16 -132', 12) +
        stroke('M110 -54Q150 -90 130 -124M108 -30Q160 -20 170 -56M10 10Q-30 30 -60 6M0 -10Q-44 -10 -60 -40', 9),
      height: 12,
      round: 6,
    },
    { draw: dot(44, -52, 9) + dot(108, -50, 6), height: 8, mode: 'sink', round: 5 },
  ];
}
