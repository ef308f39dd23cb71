import { beaded, hammered, rim } from '../die.ts';
import type { Inscription } from '../die.ts';
import type { Face } from '../draw-face.ts';
import { inLine } from '../lettering.ts';
import { smallCross } from '../motifs/crosses.ts';
import type { Layer } from '../relief.ts';
import { PUNCHES } from '../skeletons.ts';
import type { Surface } from '../surface.ts';

export const W = PUNCHES.wedge;
export const outer = beaded(484, 8.5);
export const rims = { foot: 306, height: 138, from: -10, over: 357 } as const;
export const bustRims = { foot: 322, height: 122 } as const;
export const skinOf = (wear: number, more: Partial<Surface> = {}): Partial<Surface> => ({ wear, grain: 0.36, ...more });

export function word(
  text: string,
  x: number,
  y: number,
  height: number,
  inscription: Inscription,
  most?: number,
): Layer {
  return { draw: inLine(text, W, x, y, height, inscription.hand, most), height: 14, round: 11 };
}

/** A legend round a small cross: half of all the pennies of the tenth century. */
export function crossFace(
  own: Parameters<typeof hammered>[1],
  extra: readonly Layer[] = [],
  inner = 272,
): (inscription: Inscription) => Face {
  return ({ parts: [text = ''], hand }) =>
    hammered(
      [
        beaded(inner),
        outer,
        ...rim(text, 'wedge', hand, { ...rims, foot: inner + 30, height: 146 }),
        { draw: smallCross(inner * 0.46), height: 16, round: 14 },
        ...extra,
      ],
      own,
    );
}

/** The saint's name in two lines. */
export function twoLines(
  inscription: Inscription,
  between: readonly Layer[],
  lines: readonly [string, string],
  high: number,
): Layer[] {
  return [
    outer,
    word(lines[0], 0, -high, 150, inscription, 720),
    word(lines[1], 0, high, 150, inscription, 720),
    ...between,
  ];
}
