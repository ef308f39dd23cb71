import { BUSTS } from './head-bust.ts';
import { WORN } from './head-dress.ts';
import { HAIRS } from './head-hair.ts';
import type { Layer } from '../relief.ts';
import { crescent, fill, oval, stroke } from '../shapes.ts';

/** A head in profile to the right, modelled as engravers of Rome and of the later mints did. About 440 high, its middle at 0,0. */
export type Head = {
  readonly hair: 'locks' | 'long' | 'bun' | 'short' | 'net';
  readonly beard?: boolean;
  readonly wear?: 'laurel' | 'crown' | 'diadem' | 'veil' | 'helmet' | 'cap';
  readonly bust?: 'neck' | 'drapery' | 'cuirass' | 'ruff';
  /** A fuller face, a rounder chin. */
  readonly young?: boolean;
};

const HARD =
  'M84 -142Q106 -104 112 -66Q102 -54 106 -46L150 12Q146 26 118 26Q120 34 130 40Q122 48 114 50Q126 54 127 64Q116 74 110 80Q128 98 112 122Q84 140 44 126Q26 150 34 200L66 246Q-20 268 -104 220Q-80 170 -92 116Q-124 76 -140 20Q-164 -40 -140 -112Q-110 -190 -10 -196Q60 -192 84 -142Z';
const SOFT =
  'M84 -142Q106 -104 110 -62Q104 -52 106 -44Q122 -14 136 10Q133 22 112 25Q114 32 117 39Q112 46 107 49Q113 54 113 62Q107 70 104 78Q112 98 96 114Q66 130 40 118Q20 140 26 190L54 244Q-20 262 -96 222Q-74 170 -84 116Q-120 76 -138 20Q-160 -40 -138 -112Q-108 -188 -10 -194Q60 -190 84 -142Z';
const HAIRLINE =
  'M86 -136Q30 -126 34 -84Q0 -66 2 -18Q-34 10 -30 60Q-56 96 -92 112Q-128 72 -142 20Q-166 -40 -142 -114Q-110 -192 -10 -198Q62 -194 86 -136Z';

export function head({ hair, beard = false, wear, bust = 'neck', young = false }: Head): Layer[] {
  return [
    ...BUSTS[bust],
    { draw: fill(young ? SOFT : HARD), height: 24, round: 84 },
    { draw: oval(52, 34, 30, 34, 20) + oval(82, 100, 22, 16), height: 6, round: 34, soft: true },
    { draw: oval(50, 92, 40, 12, -24) + oval(88, 84, 10, 16), height: 5, mode: 'sink', round: 22, soft: true },
    { draw: fill('M30 -66Q70 -84 112 -66L108 -46Q70 -62 34 -48Z'), height: 8, round: 16, soft: true },
    { draw: oval(76, -28, 26, 16, 8), height: 7, mode: 'sink', round: 16, soft: true },
    { draw: oval(80, -30, 13, 10), height: 8, round: 9 },
    {
      draw: crescent(78, -28, 26, 17, 185, 345, 9, 0.4) + crescent(78, -32, 22, 14, 20, 150, 6, 0.4),
      height: 6,
      round: 5,
    },
    { draw: crescent(122, 13, 15, 12, 100, 290, 9, 0.4), height: 5, round: 6 },
    { draw: stroke('M132 48Q110 52 92 46', 5) + stroke('M98 22Q84 34 82 52', 4), height: 4, mode: 'sink', round: 4 },
    { draw: oval(108, 40, 12, 5, -8) + oval(105, 58, 11, 5, 8), height: 5, round: 7 },
    ...(beard ? bearded() : []),
    { draw: fill(HAIRLINE), height: 7, round: 26 },
    ...HAIRS[hair],
    { draw: oval(-20, -6, 25, 36, 12), height: 6, round: 16 },
    {
      draw: crescent(-21, -8, 17, 27, -80, 230, 12, 0.5) + crescent(-18, -2, 8, 14, 120, 300, 7, 0.4),
      height: 6,
      round: 6,
    },
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
    {
      draw: fill('M-26 40Q10 60 40 64Q70 60 90 74L112 84Q132 112 112 146Q70 174 24 150Q-18 120 -26 40Z'),
      height: 6,
      round: 22,
    },
    { draw: curls.join(''), height: 7, round: 6 },
  ];
}
