import type { Chance } from './chance.ts';
import type { Face } from './draw-face.ts';
import { onRim } from './lettering.ts';
import type { Rim } from './lettering.ts';
import type { Layer } from './relief.ts';
import { beads, n, place, teeth } from './shapes.ts';
import { PUNCHES } from './skeletons.ts';
import type { Surface } from './surface.ts';

/** What a recipe is given: the legend as the piece's file has it, cut at its commas, and a hand that is the same every time. */
export type Inscription = { readonly parts: readonly string[]; readonly hand: Chance };

/** The photographs of one piece: one recipe a face. */
export type Recipes = Readonly<Record<string, (inscription: Inscription) => Face>>;

type Hand = keyof typeof PUNCHES;

/** A legend round the rim; what is restored in brackets is all but worn away. */
export function rim(text: string, hand: Hand, chance: Chance, where: Partial<Rim> = {}): Layer[] {
  const { whole, faint } = onRim(
    text,
    PUNCHES[hand],
    { foot: 318, height: 128, from: -8, over: 357, ...where },
    chance,
  );
  const high = hand === 'milled' || hand === 'roman' ? 11 : hand === 'tudor' ? 12 : 14;
  const round = hand === 'milled' ? 6 : hand === 'roman' || hand === 'tudor' ? 8 : 11;
  return [
    ...(whole === '' ? [] : [{ draw: whole, height: high, round }]),
    ...(faint === '' ? [] : [{ draw: faint, height: high * 0.17, round }]),
  ];
}

/** A legend parted by the four arms of a cross; the first word stands between twelve and three o'clock. */
export function quartered(
  text: string,
  hand: Hand,
  chance: Chance,
  where: Partial<Rim> & { margin?: number; turn?: number } = {},
): Layer[] {
  const { margin = 8, turn = 0, ...rest } = where;
  return text
    .split(' ')
    .flatMap((word, at) => rim(word, hand, chance, { from: turn + at * 90 + margin, over: 90 - 2 * margin, ...rest }));
}

/** A ring of beads that bounds a legend, set by hand. */
export function beaded(radius: number, size = 8.5, apart = 2.3): Layer {
  return { draw: beads(radius, Math.round((2 * Math.PI * radius) / (size * apart)), size), height: 9, round: size };
}

/** The toothed border of a milled piece, with its raised rim. */
export function toothed(radius = 488, length = 26, times = 120): Layer[] {
  return [
    { draw: teeth(radius, length, times, (2 * Math.PI * radius) / times / 1.75), height: 8, round: 6 },
    { draw: rimBand(500, 484), height: 9, round: 8 },
  ];
}

/** A plain raised ring between two radii. */
export function rimBand(outer: number, inner: number): string {
  const middle = (outer + inner) / 2;
  return `<circle r="${n(middle)}" fill="none" stroke="#fff" stroke-width="${n(outer - inner)}"/>`;
}

/** The same layers, moved, made larger or smaller, and turned. */
export function moved(layers: readonly Layer[], x: number, y: number, scale = 1, turn = 0): Layer[] {
  return layers.map((layer) => ({
    ...layer,
    draw: place(layer.draw, x, y, scale, turn),
    round: (layer.round ?? 7) * scale,
  }));
}

/** The same layers in a mirror. */
export function turnedRound(layers: readonly Layer[]): Layer[] {
  return layers.map((layer) => ({ ...layer, draw: `<g transform="scale(-1 1)">${layer.draw}</g>` }));
}

/** The skin of a hammered silver piece of ordinary preservation. */
const HAMMERED: Surface = {
  wear: 0.35,
  weak: 0.4,
  grain: 0.4,
  pits: 0.2,
  scratches: 0.35,
  bent: 0.5,
  tone: 0.55,
  dirt: 0.25,
};

/** A hammered silver face: what is cut in its die, and what is peculiar to this piece. */
export function hammered(
  layers: readonly Layer[],
  own: Partial<Omit<Face, 'layers' | 'surface'>> & { readonly surface?: Partial<Surface> } = {},
): Face {
  const { surface = {}, flan, ...rest } = own;
  return {
    metal: 'silver',
    layers,
    ...rest,
    flan: { shape: 'round', uneven: 0.012, ...flan },
    surface: { ...HAMMERED, ...surface },
  };
}

/** A piece from a screw or steam press: a true circle, a raised rim, an even blow. */
export function milled(
  layers: readonly Layer[],
  own: Partial<Omit<Face, 'layers' | 'surface'>> & { readonly surface?: Partial<Surface> } = {},
): Face {
  const { surface = {}, flan, ...rest } = own;
  return {
    metal: 'silver',
    layers,
    ...rest,
    flan: { shape: 'round', edge: 9, thick: 12, ...flan },
    surface: {
      wear: 0.4,
      weak: 0.06,
      grain: 0.13,
      pits: 0.08,
      scratches: 0.6,
      bent: 0.12,
      tone: 0.5,
      dirt: 0.2,
      ...surface,
    },
  };
}
