import type { Layer } from '../relief.ts';
import { bar, crescent, dot, fill, leaf, n, oval, stroke } from '../shapes.ts';

/** A head in profile to the right, modelled as engravers of Rome and of the later mints did. About 440 high, its middle at 0,0. */
export type Head = {
  readonly hair: 'locks' | 'long' | 'bun' | 'short' | 'net';
  readonly beard?: boolean;
  readonly wear?: 'laurel' | 'crown' | 'diadem' | 'veil' | 'helmet' | 'cap';
  readonly bust?: 'neck' | 'drapery' | 'cuirass' | 'ruff';
  /** A fuller face, a rounder chin. */
  readonly young?: boolean;
};

const HARD = 'M84 -142Q106 -104 112 -66Q102 -54 106 -46L150 12Q146 26 118 26Q120 34 130 40Q122 48 114 50Q126 54 127 64Q116 74 110 80Q128 98 112 122Q84 140 44 126Q26 150 34 200L66 246Q-20 268 -104 220Q-80 170 -92 116Q-124 76 -140 20Q-164 -40 -140 -112Q-110 -190 -10 -196Q60 -192 84 -142Z';
const SOFT = 'M84 -142Q106 -104 110 -62Q104 -52 106 -44Q122 -14 138 12Q134 24 114 26Q116 33 123 40Q117 47 110 50Q120 54 119 64Q110 72 106 80Q112 100 94 116Q66 130 40 118Q20 140 26 190L54 244Q-20 262 -96 222Q-74 170 -84 116Q-120 76 -138 20Q-160 -40 -138 -112Q-108 -188 -10 -194Q60 -190 84 -142Z';
const HAIRLINE = 'M86 -136Q30 -126 34 -84Q0 -66 2 -18Q-34 10 -30 60Q-56 96 -92 112Q-128 72 -142 20Q-166 -40 -142 -114Q-110 -192 -10 -198Q62 -194 86 -136Z';

export function head({ hair, beard = false, wear, bust = 'neck', young = false }: Head): Layer[] {
  return [
    ...BUSTS[bust],
    { draw: fill(young ? SOFT : HARD), height: 24, round: 84 },
    { draw: oval(62, 40, 34, 40, 20) + oval(70, 104, 26, 18), height: 4, round: 34 },
    { draw: fill('M30 -66Q70 -84 112 -66L108 -46Q70 -62 34 -48Z'), height: 7, round: 14 },
    { draw: oval(78, -30, 24, 14, 8), height: 5, mode: 'sink', round: 12 },
    { draw: oval(80, -30, 13, 10), height: 8, round: 9 },
    { draw: crescent(78, -28, 26, 17, 185, 345, 9, 0.4) + crescent(78, -32, 22, 14, 20, 150, 6, 0.4), height: 6, round: 5 },
    { draw: crescent(122, 13, 15, 12, 100, 290, 9, 0.4), height: 5, round: 6 },
    { draw: stroke('M132 48Q110 52 92 46', 5) + stroke('M98 22Q84 34 82 52', 4), height: 4, mode: 'sink', round: 4 },
    { draw: oval(114, 42, 15, 6, -8) + oval(113, 60, 13, 6, 8), height: 5, round: 6 },
    ...(beard ? bearded() : []),
    { draw: fill(HAIRLINE), height: 7, round: 26 },
    ...HAIRS[hair],
    { draw: oval(-20, -6, 25, 36, 12), height: 6, round: 16 },
    { draw: crescent(-21, -8, 17, 27, -80, 230, 12, 0.5) + crescent(-18, -2, 8, 14, 120, 300, 7, 0.4), height: 6, round: 6 },
    ...(wear === undefined ? [] : WORN[wear]),
  ];
}

/** Curls in rows across the jaw. */
function bearded(): Layer[] {
  const curls: string[] = [];
  for (let row = 0; row < 4; row += 1)
    for (let at = 0; at < 7; at += 1) {
      const x = -14 + at * 19 - row * 3;
      const y = 52 + row * 24 + at * 8 - (at > 4 ? (at - 4) * 7 : 0);
      if (x < 120 && !(at > 5 && row < 2)) curls.push(crescent(x, y, 10, 11, 20 + at * 25, 250 + at * 25, 9, 0.4));
    }
  return [
    { draw: fill('M-26 40Q10 60 40 64Q70 60 90 74L112 84Q132 112 112 146Q70 174 24 150Q-18 120 -26 40Z'), height: 6, round: 22 },
    { draw: curls.join(''), height: 7, round: 6 },
  ];
}

/** Short locks in rows from the crown of the head outward. */
function lockRows(): string {
  const locks: string[] = [];
  for (let row = 0; row < 5; row += 1) {
    const far = 38 + row * 34;
    const times = 5 + row * 3;
    for (let at = 0; at < times; at += 1) {
      const angle = 96 + row * 4 + (at / (times - 1)) * 236;
      const turn = (angle * Math.PI) / 180;
      const [x, y] = [-34 + Math.cos(turn) * far * 0.96, -74 + Math.sin(turn) * far * 0.92];
      if (insideHair(x, y)) locks.push(`<g transform="rotate(${n(angle + 100)} ${n(x)} ${n(y)})">${crescent(x, y, 15, 12, 180, 350, 12, 0.25)}</g>`);
    }
  }
  return locks.join('');
}

function insideHair(x: number, y: number): boolean {
  if (Math.hypot((x + 36) / 112, (y + 66) / 128) > 1) return false;
  return !(x > 8 && y > -76) && !(x > -34 && y > -16);
}

const flow = (paths: readonly string[], width: number): string => paths.map((path) => stroke(path, width)).join('');

const HAIRS: Readonly<Record<Head['hair'], Layer[]>> = {
  locks: [{ draw: lockRows(), height: 8, round: 6 }],
  short: [
    {
      draw: flow(
        Array.from({ length: 9 }, (_, at) => `M${-30 + at * 3} ${-178 + at * 9}Q${-128 + at * 10} ${-130 + at * 12} ${-128 + at * 11} ${at * 9}`),
        7,
      ) + flow(Array.from({ length: 6 }, (_, at) => `M${-20 + at * 4} ${-176 + at * 11}Q${30 + at * 2} ${-170 + at * 10} ${74 - at * 6} ${-136 + at * 9}`), 7),
      height: 6,
      round: 5,
    },
  ],
  long: [
    { draw: fill('M-30 -150Q60 -190 84 -140Q40 -100 40 -60Q0 0 30 60Q-10 120 16 180Q30 236 -30 250Q-120 250 -150 170Q-190 60 -164 -40Q-150 -150 -30 -150Z'), height: 9, round: 34 },
    {
      draw: flow(
        Array.from({ length: 9 }, (_, at) => {
          const x = -152 + at * 19;
          return `M${n(x * 0.5 - 10)} ${-168 + at * 7}C${x - 22} -90 ${x + 16} -40 ${x - 8} 20S${x + 22} 110 ${x + 4} 150S${x + 18} 206 ${x + 4} ${236 - Math.abs(at - 5) * 8}`;
        }),
        11,
      ),
      height: 9,
      round: 7,
    },
  ],
  bun: [
    { draw: oval(-172, -42, 46, 40, -20), height: 16, round: 34 },
    { draw: [0, 1, 2].map((at) => crescent(-172, -42, 36 - at * 12, 31 - at * 10, 20 + at * 60, 300 + at * 60, 9, 0.4)).join(''), height: 6, round: 5 },
    { draw: flow(Array.from({ length: 10 }, (_, at) => `M${80 - at * 5} ${-138 + at * 8}Q${-20 - at * 7} ${-206 + at * 26} -138 ${-66 + at * 6}`), 8), height: 6, round: 5 },
    { draw: flow(['M-136 -8Q-110 30 -122 70Q-96 110 -112 150', 'M-112 0Q-92 40 -100 74'], 13), height: 8, round: 7 },
  ],
  net: [
    { draw: flow(Array.from({ length: 8 }, (_, at) => `M${84 - at * 6} ${-136 + at * 4}Q${-40 - at * 8} ${-186 + at * 24} ${-142 + at * 3} ${-70 + at * 20}`), 9), height: 7, round: 6 },
    { draw: flow(['M-134 30Q-110 80 -86 110', 'M-140 0Q-116 60 -76 96'], 10), height: 6, round: 6 },
  ],
};

function laurel(): string {
  const leaves: string[] = [];
  for (let at = 0; at < 9; at += 1) {
    const part = at / 8;
    const [x, y] = [-122 + part * 208, -46 - Math.sin(part * 1.75) * 104 + part * 6];
    const turn = -62 + part * 66;
    leaves.push(leaf(x, y - 15, 54, 20, turn - 16), leaf(x + 6, y + 14, 50, 18, turn + 14));
  }
  return leaves.join('');
}

const ties = stroke('M-128 -20Q-172 20 -150 70Q-140 96 -166 128', 11) + stroke('M-128 -16Q-146 40 -118 84Q-110 110 -124 140', 11) + dot(-132, -22, 15);
const band = fill('M-150 -64Q-60 -118 92 -126L94 -98Q-50 -88 -142 -32Z');
const fleuron = (x: number, y: number, turn: number): string =>
  `<g transform="translate(${x} ${y}) rotate(${turn})">${leaf(0, -38, 56, 26, 90)}${crescent(-17, -14, 16, 20, 95, 285, 12)}${crescent(17, -14, 16, 20, -105, 85, 12)}${bar(0, -10, 0, 16, 10, 16)}</g>`;

const WORN: Readonly<Record<NonNullable<Head['wear']>, Layer[]>> = {
  laurel: [
    { draw: ties, height: 9, round: 6 },
    { draw: laurel(), height: 11, round: 9 },
  ],
  crown: [
    { draw: fill('M-146 -66Q-172 -180 -70 -232Q10 -256 60 -226Q110 -190 92 -118Q-40 -112 -146 -66Z'), height: 8, mode: 'over', round: 50 },
    { draw: band, height: 14, round: 9 },
    { draw: fleuron(-110, -82, -34) + fleuron(-28, -112, -14) + fleuron(62, -124, 8), height: 13, round: 7 },
    { draw: stroke('M-138 -66Q-150 -200 -28 -236M84 -122Q94 -214 -28 -236', 15) + dot(-28, -248, 17) + bar(-28, -256, -30, -292, 9, 11, 17) + bar(-50, -278, -8, -276, 8, 14), height: 13, round: 8 },
    { draw: [0, 1, 2, 3, 4, 5].map((at) => dot(-120 + at * 40, -60 - Math.sin(at / 3.6) * 48, 7)).join(''), height: 6, round: 6 },
  ],
  diadem: [
    { draw: ties + stroke('M-140 -40Q-40 -108 90 -112', 17), height: 11, round: 8 },
    { draw: [0, 1, 2, 3, 4, 5, 6].map((at) => dot(-124 + at * 34, -52 - Math.sin(at / 4) * 56, 8)).join(''), height: 7, round: 7 },
  ],
  veil: [
    { draw: fill('M72 -152Q100 -196 40 -214Q-120 -240 -166 -110Q-190 0 -150 90Q-160 170 -196 226L-60 250Q-90 150 -56 70Q-40 -20 -70 -70Q-20 -130 72 -152Z'), height: 11, mode: 'over', round: 22 },
    { draw: flow(['M40 -196Q-100 -216 -138 -100Q-160 0 -122 96Q-126 170 -150 226', 'M30 -178Q-84 -190 -112 -92Q-130 0 -92 92Q-96 170 -106 232', 'M10 -160Q-60 -162 -86 -84'], 9), height: 8, round: 6 },
    { draw: [0, 1, 2, 3].map((at) => leaf(-40 + at * 40, -134 - at * 4, 46, 17, -20 + at * 5)).join(''), height: 9, round: 7 },
  ],
  helmet: [
    { draw: fill('M104 -96Q100 -214 -30 -222Q-160 -210 -168 -60L-160 10Q-150 60 -118 90Q-92 30 -40 -30Q20 -90 104 -96Z'), height: 14, mode: 'over', round: 44 },
    { draw: stroke('M98 -110Q30 -104 -30 -44Q-80 10 -108 76', 12) + stroke('M60 -238Q-60 -290 -160 -190Q-206 -110 -196 30', 26), height: 10, round: 9 },
    { draw: flow(Array.from({ length: 12 }, (_, at) => { const turn = (-60 - at * 11) * (Math.PI / 180); return `M${n(-40 + Math.cos(turn) * 152)} ${n(-80 + Math.sin(turn) * 160)}L${n(-40 + Math.cos(turn) * 196)} ${n(-80 + Math.sin(turn) * 204)}`; }), 8), height: 7, round: 5 },
  ],
  cap: [
    { draw: fill('M100 -112Q120 -150 60 -188Q-60 -230 -150 -150Q-176 -110 -160 -70Q-40 -110 100 -112Z'), height: 12, mode: 'over', round: 30 },
    { draw: stroke('M-158 -74Q-40 -112 100 -114', 16), height: 9, round: 8 },
  ],
};

const fold = (path: string): string => stroke(path, 15);
const BUSTS: Readonly<Record<NonNullable<Head['bust']>, Layer[]>> = {
  neck: [],
  drapery: [
    { draw: fill('M-60 150Q-150 180 -190 262Q-60 330 130 274Q110 210 40 176Z'), height: 13, round: 40 },
    { draw: fold('M-92 190Q-10 210 92 240') + fold('M-120 220Q-20 246 106 268') + fold('M-40 172Q20 184 60 204') + fold('M-150 240Q-60 280 20 288') + dot(-76, 178, 20), height: 10, round: 9 },
  ],
  cuirass: [
    { draw: fill('M-60 150Q-160 170 -200 262Q-60 330 140 274Q120 210 44 176Z'), height: 13, round: 40 },
    { draw: stroke('M-70 168Q-10 206 60 182', 15) + Array.from({ length: 7 }, (_, at) => stroke(`M${-176 + at * 46} ${262 + Math.sin(at / 2) * 20}L${-160 + at * 42} ${226 + Math.sin(at / 2) * 14}`, 15)).join('') + crescent(-110, 224, 44, 40, 120, 330, 16) + dot(-20, 236, 15), height: 10, round: 9 },
  ],
  ruff: [
    { draw: fill('M-110 150Q-180 190 -200 270Q-60 330 130 274Q120 214 60 160Z'), height: 12, round: 40 },
    { draw: Array.from({ length: 9 }, (_, at) => crescent(-106 + at * 22, 140 + Math.sin(at / 2.6) * 22, 17, 24, 60, 300, 12, 0.4)).join(''), height: 13, mode: 'over', round: 7 },
    { draw: fold('M-150 212Q-110 240 -130 288') + fold('M-70 206Q-40 240 -50 304') + fold('M10 206Q20 250 20 304') + fold('M70 196Q100 230 96 284') + stroke('M-100 196Q-20 236 70 190', 8), height: 9, round: 8 },
    { draw: [0, 1, 2, 3, 4].map((at) => dot(-80 + at * 36, 214 + Math.sin(at / 1.4) * 14, 9)).join(''), height: 7, round: 7 },
  ],
};
