/**
 * The letters as strokes, before a punch-cutter gives them weight. A letter is 100 high (0 at its head, 100 at its foot).
 * The first number is its width. Then: `l x1 y1 x2 y2 [weight]` a bar, `c x y across down from to [weight]` part of an
 * oval (degrees, 0 right, 90 down), `d x y radius` a pellet, `w x y turn` a wedge.
 */
const ROMAN: Readonly<Record<string, string>> = {
  A: '78;l 40 0 8 100 .8;l 40 0 70 100;l 20 66 60 66 .5',
  B: '62;l 12 0 12 100;c 12 25 38 25 -90 90;c 12 74 44 26 -90 90',
  C: '68;c 44 50 36 50 48 312',
  D: '74;l 12 0 12 100;c 12 50 54 50 -90 90',
  E: '56;l 12 0 12 100;l 12 4 50 4 .7;l 12 50 42 50 .6;l 12 96 50 96 .7',
  F: '54;l 12 0 12 100;l 12 4 50 4 .7;l 12 50 42 50 .6',
  G: '76;c 44 50 36 50 48 312;l 70 56 70 94;l 54 56 78 56 .5',
  H: '72;l 12 0 12 100;l 60 0 60 100;l 12 50 60 50 .5',
  I: '24;l 12 0 12 100',
  J: '34;l 24 0 24 78;c 8 78 16 22 0 110 .8',
  K: '68;l 12 0 12 100;l 58 0 14 54 .6;l 26 42 62 100',
  L: '54;l 12 0 12 100;l 12 96 50 96 .7',
  M: '90;l 14 0 12 100 .7;l 14 0 46 92;l 46 92 78 0 .7;l 78 0 80 100',
  N: '76;l 12 0 12 100 .7;l 12 0 64 100;l 64 0 64 100 .7',
  И: '76;l 12 0 12 100 .7;l 64 0 12 100;l 64 0 64 100 .7',
  O: '78;c 40 50 34 50 0 360',
  P: '58;l 12 0 12 100;c 12 27 42 27 -90 90',
  Q: '80;c 40 50 34 50 0 360;l 44 74 74 108 .8',
  R: '68;l 12 0 12 100;c 12 26 40 26 -90 90;l 32 52 62 100',
  S: '56;c 29 26 22 26 90 330;c 29 75 24 25 -90 150',
  T: '66;l 33 0 33 100;l 4 4 62 4 .7',
  U: '74;l 12 0 12 64;l 62 0 62 64 .7;c 37 64 25 34 0 180',
  V: '74;l 6 0 37 100;l 68 0 37 100 .7',
  W: '112;l 6 0 32 100;l 56 0 32 100 .7;l 46 0 78 100;l 106 0 78 100 .7',
  X: '72;l 8 0 64 100;l 64 0 8 100 .7',
  Y: '70;l 6 0 36 52;l 66 0 36 52 .7;l 36 50 36 100',
  Z: '62;l 8 4 54 4 .7;l 54 4 8 96;l 8 96 54 96 .7',
  Æ: '102;l 46 0 8 100 .8;l 50 0 50 100;l 22 66 50 66 .5;l 50 4 94 4 .7;l 50 50 84 50 .6;l 50 96 94 96 .7',
  Œ: '102;c 40 50 32 50 60 300;l 56 0 56 100;l 56 4 94 4 .7;l 56 50 84 50 .6;l 56 96 94 96 .7',
  Ð: '76;l 14 0 14 100;c 14 50 54 50 -90 90;l 0 50 32 50 .6',
  Þ: '58;l 12 0 12 100;c 12 30 40 26 -90 90',
  '0': '66;c 33 50 27 50 0 360',
  '1': '34;l 18 0 18 100;l 4 18 18 2 .6',
  '2': '60;c 30 28 24 28 190 380;l 52 40 8 96 .8;l 8 96 56 96 .7',
  '3': '58;c 26 26 24 26 -150 90;c 26 75 28 25 -90 150',
  '4': '66;l 46 0 46 100;l 46 0 6 70 .6;l 6 70 62 70 .6',
  '5': '58;l 14 4 52 4 .7;l 14 4 14 46 .7;c 24 70 28 30 -110 150',
  '6': '62;c 32 70 26 30 0 360;c 58 70 52 70 180 258',
  '7': '58;l 6 4 54 4 .7;l 54 4 20 100',
  '8': '60;c 30 25 22 25 0 360;c 30 74 27 26 0 360',
  '9': '62;c 30 30 26 30 0 360;c 4 30 52 70 0 78',
  "'": '22;w 10 6 20',
  '`': '22;w 10 6 20',
  ',': '26;w 12 92 20',
  '.': '26;d 12 92 9',
  '·': '34;d 16 50 10',
  ':': '34;d 16 26 10;d 16 76 10',
  '-': '44;l 6 50 38 50 .7',
  '&': '78;c 32 24 18 22 0 360 .8;c 32 72 26 28 40 330 .9;l 26 40 74 100 .8',
  '+': '96;x 48 50 48',
  '*': '70;s 34 50 34',
};

/** Letters that the medieval punch-cutter made round: they replace the Roman ones. */
const LOMBARDIC: Readonly<Record<string, string>> = {
  A: '80;l 34 8 10 100 .7;l 44 8 68 100 1.2;l 22 64 58 64 .5;l 14 4 64 4 .8',
  C: '74;c 42 50 34 50 50 310 1.3;l 68 8 68 92 .35',
  D: '74;l 14 0 14 100;c 14 50 52 50 -90 90 1.3',
  E: '76;c 44 50 36 50 60 300 1.3;l 44 50 72 50 .6;l 72 8 72 92 .35',
  G: '80;c 44 50 36 50 60 310 1.3;c 62 72 14 24 -100 120 .8',
  H: '76;l 14 0 14 100;c 28 72 36 36 -100 62 1.2',
  I: '28;l 14 0 14 100',
  M: '104;l 52 6 52 100 .9;c 46 54 38 48 80 275 1.2;c 58 54 38 48 -95 100 1.2',
  N: '78;l 14 4 14 100;c 34 48 32 44 195 360 1.1;l 66 44 66 100 1',
  И: '76;l 12 0 12 100 .7;l 64 0 12 100;l 64 0 64 100 .7',
  // The other three cuts of N by which classes of Edward I are known, and the stops of one issue of Henry VI.
  ɴ: '76;l 12 0 12 100 .7;l 12 0 64 100;l 64 0 64 100 .7',
  ǁ: '62;l 13 0 13 100;l 49 0 49 100',
  '✿': '62;d 31 32 11;d 48 44 11;d 42 64 11;d 20 64 11;d 14 44 11;d 31 50 6',
  '◇': '64;l 32 16 58 50 .5;l 58 50 32 84 .5;l 32 84 6 50 .5;l 6 50 32 16 .5',
  Z: '70;l 8 6 60 6 .8;l 60 6 10 94;l 10 94 62 94 .8;l 20 50 52 50 .5',
  O: '84;c 42 50 34 50 90 270 1.3;c 42 50 34 50 -90 90 1.3',
  Q: '84;c 42 50 34 50 90 270 1.3;c 42 50 34 50 -90 90 1.3;l 46 74 78 108 .7',
  T: '74;c 48 56 34 44 60 250 1.2;l 6 6 70 6 .9',
  U: '78;l 14 4 14 60;c 40 56 28 44 0 180 1.1;l 66 4 66 96 1',
  Y: '72;l 8 2 36 60 1;l 66 2 30 100 .7',
};

/** How a set of punches gives the strokes their weight. */
export type Punches = {
  readonly letters: Readonly<Record<string, string>>;
  /** Breadth of a full stroke at its waist. */
  readonly weight: number;
  /** How much broader a bar is at its end than at its waist. */
  readonly flare: number;
  /** Breadth of a curve at head and foot against its sides. */
  readonly thin: number;
  /** What a bar ends in. */
  readonly ends: 'plain' | 'pellet' | 'slab';
  /** Room between letters. */
  readonly apart: number;
  /** How unevenly a hand sets them: 0 is a machine. */
  readonly uneven: number;
};

export const PUNCHES = {
  /** Wedges and crescents of the recoinage of 1279 and after. */
  lombardic: {
    letters: { ...ROMAN, ...LOMBARDIC },
    weight: 19,
    flare: 1.75,
    thin: 0.34,
    ends: 'plain',
    apart: 15,
    uneven: 1,
  },
  /** Plain wedges of the tenth to twelfth centuries. */
  wedge: { letters: ROMAN, weight: 17, flare: 1.7, thin: 0.7, ends: 'plain', apart: 18, uneven: 1.25 },
  /** Letters built of thin bars and pellets. */
  stick: { letters: ROMAN, weight: 13, flare: 1.3, thin: 0.9, ends: 'pellet', apart: 20, uneven: 1.6 },
  /** The engraved letters of the Roman mint. */
  roman: { letters: ROMAN, weight: 12, flare: 1.5, thin: 0.85, ends: 'pellet', apart: 20, uneven: 0.5 },
  /** Heavy serifed capitals of the hammer's last century. */
  tudor: { letters: ROMAN, weight: 16, flare: 1.3, thin: 0.55, ends: 'slab', apart: 20, uneven: 0.7 },
  /** Serifed capitals of a screw or steam press. */
  milled: { letters: ROMAN, weight: 14, flare: 1.12, thin: 0.42, ends: 'slab', apart: 22, uneven: 0.12 },
} as const satisfies Readonly<Record<string, Punches>>;
