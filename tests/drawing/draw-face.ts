import sharp from 'sharp';
import { chanceFrom } from './chance.ts';
import { blank, blurred, depthWithin, RADIUS, SIDE } from './field.ts';
import type { Field } from './field.ts';
import { flanShape } from './flan.ts';
import type { Flan } from './flan.ts';
import { photographed } from './light.ts';
import type { Plate } from './light.ts';
import type { MetalName } from './metals.ts';
import { masked, struck } from './relief.ts';
import type { Layer, Strike } from './relief.ts';
import { skin, waves, worn } from './surface.ts';
import type { Surface } from './surface.ts';

/** The side of a finished photograph, in pixels. */
export const PICTURE = 900;

/** Everything that makes one photograph. */
export type Face = {
  readonly layers: readonly Layer[];
  /** Marks made after the striking, on the piece itself: nicks, engraving, a countermark. They do not wear. */
  readonly after?: readonly Layer[];
  readonly flan: Flan;
  /** The flan is this face's own, and not the other face's seen from behind. */
  readonly alone?: boolean;
  /** Where the whole piece lies in the picture, when not in the middle: for halves. */
  readonly at?: Partial<Strike>;
  readonly strike?: Partial<Strike>;
  /** A second blow beside the first: how far moved and turned, and how strong. */
  readonly second?: Strike & { readonly strong: number };
  readonly metal: MetalName;
  /** A skin of another metal, and how much of it has gone (0 to 1). */
  readonly plate?: Plate;
  readonly surface: Surface;
};

const STILL: Strike = { x: 0, y: 0, turn: 0, scale: 1 };

/**
 * Draws one face as a JPEG. The same name and face give the same bytes. The name is the piece's id and the face, parted by a space:
 * the flan's outline and the metal's colour belong to the piece.
 */
export async function drawFace(name: string, face: Face): Promise<Buffer> {
  const chance = chanceFrom(name);
  const [id = name] = name.split(' ');
  const flanChance = chanceFrom(`${id} flan`);
  const { flan, surface } = face;
  const lies = { ...STILL, ...face.at };
  const piece = blurred(await masked(flanShape(flan, flanChance), lies), 0.8);
  const blow = { ...STILL, ...face.strike };
  const strike = {
    x: blow.x + lies.x,
    y: blow.y + lies.y,
    turn: blow.turn + lies.turn,
    scale: blow.scale * lies.scale,
  };
  const design = await struck(face.layers, strike);
  if (face.second !== undefined) await ghost(design, face.layers, strike, face.second);
  const relief = worn(design, surface, chance);
  const marks = face.after === undefined ? null : await struck(face.after, lies);
  const { height: rough, deposit } = await skin(surface, chance);
  const wave = waves(surface.bent ?? 0.4, chance);
  const body = edged(piece, flan);
  const height = blank();
  for (let at = 0; at < height.length; at += 1)
    height[at] = (relief[at] ?? 0) + (rough[at] ?? 0) + (wave[at] ?? 0) + (body[at] ?? 0) + (marks?.[at] ?? 0);
  const rgb = photographed(
    {
      height,
      relief,
      piece,
      deposit,
      metal: face.metal,
      surface,
      ...(face.plate === undefined ? {} : { plate: face.plate }),
    },
    chance,
    chanceFrom(`${id} colour`),
  );
  return developed(rgb);
}

/** The reverse of a piece has the flan of its obverse, turned like a page and then upright: `hours` is the die axis. */
export function backOf(obverse: Face, reverse: Face, hours: number): Face {
  if (reverse.alone === true) return reverse;
  const { x = 0, y = 0 } = obverse.at ?? {};
  const turn = (-hours * Math.PI) / 6;
  const at = {
    ...obverse.at,
    x: -x * Math.cos(turn) - y * Math.sin(turn),
    y: -x * Math.sin(turn) + y * Math.cos(turn),
  };
  return { ...reverse, at, flan: { ...obverse.flan, turnedTo: hours } };
}

async function ghost(
  design: Field,
  layers: readonly Layer[],
  first: Strike,
  second: Strike & { readonly strong: number },
): Promise<void> {
  const strike = {
    x: first.x + second.x,
    y: first.y + second.y,
    turn: first.turn + second.turn,
    scale: first.scale * second.scale,
  };
  const again = await struck(layers, strike);
  for (let at = 0; at < design.length; at += 1) {
    const one = design[at] ?? 0;
    const other = (again[at] ?? 0) * second.strong;
    design[at] = Math.abs(other) > Math.abs(one) ? other : one;
  }
}

/** How the flan falls away to its edge. */
function edged(piece: Field, flan: Flan): Field {
  const { edge = 14, thick = 11 } = flan;
  const reach = (edge * RADIUS) / 500;
  const depth = depthWithin(piece);
  const out = blank();
  for (let at = 0; at < out.length; at += 1) {
    const part = Math.min(1, (depth[at] ?? 0) / reach);
    out[at] = thick * Math.sqrt(1 - (1 - part) ** 2);
  }
  return blurred(out, 1.2);
}

async function developed(rgb: Uint8Array): Promise<Buffer> {
  return sharp(rgb, { raw: { width: SIDE, height: SIDE, channels: 3 } })
    .resize(PICTURE, PICTURE, { kernel: 'lanczos3' })
    .sharpen({ sigma: 0.6, m1: 0.4, m2: 0.8 })
    .jpeg({ quality: 66, mozjpeg: true, chromaSubsampling: '4:2:0' })
    .toBuffer();
}
