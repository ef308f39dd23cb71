import { between, noise } from './chance.ts';
import type { Chance } from './chance.ts';
import { blank, blurred, SIDE } from './field.ts';
import type { Field } from './field.ts';
import { METALS, shadeOf } from './metals.ts';
import type { MetalName } from './metals.ts';
import type { Surface } from './surface.ts';
import { patches } from './surface.ts';

/** A soft box: the way to it (towards the viewer is +z, down the picture +y), how bright, how small. */
type Lamp = {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly bright: number;
  readonly small: number;
};

const LAMPS: readonly Lamp[] = [
  { ...way(-0.62, -0.72, 0.66), bright: 1.08, small: 3.9 },
  { ...way(0.75, -0.5, 0.75), bright: 0.34, small: 3.5 },
  { ...way(0.1, -0.25, 1), bright: 0.17, small: 2.2 },
  { ...way(-0.5, 0.8, 0.35), bright: 0.14, small: 4 },
];

function way(x: number, y: number, z: number): { x: number; y: number; z: number } {
  const long = Math.hypot(x, y, z);
  return { x: x / long, y: y / long, z: z / long };
}

/** A skin of another metal, and how much of it has gone (0 to 1). */
export type Plate = { readonly metal: MetalName; readonly gone: number };

/** What lies under the lamps: a surface in pixels of height, where it is, and what covers it. */
type Lit = {
  readonly height: Field;
  /** The design alone, which shows where hands have rubbed. */
  readonly relief: Field;
  readonly piece: Field;
  readonly deposit: Field;
  readonly metal: MetalName;
  readonly plate?: Plate;
  readonly surface: Surface;
};

/** The photograph: red, green and blue, one byte each, SIDE pixels square. */
export function photographed(
  { height, relief, piece, deposit, metal, plate, surface }: Lit,
  chance: Chance,
  colour: Chance,
): Uint8Array {
  const { bare, toned, deposit: soil, shine } = METALS[metal];
  const { tone = 0.4, dirt = 0.3 } = surface;
  const near = blurred(height, 3.5);
  const wide = blurred(height, 15);
  const patch = patches(chance);
  const flakes = plate === undefined ? null : noise(chance, 130, 5);
  const over = METALS[plate?.metal ?? metal];
  // No two pieces of one metal have quite one colour.
  const [warm, deep] = [between(colour, -1, 1), between(colour, 0.82, 1.18)];
  const board = boardUnder(piece, chance);
  const out = new Uint8Array(SIDE * SIDE * 3);
  const clean: [number, number, number] = [0, 0, 0];
  const dull: [number, number, number] = [0, 0, 0];
  const plated: [number, number, number] = [0, 0, 0];
  for (let y = 0; y < SIDE; y += 1) {
    for (let x = 0; x < SIDE; x += 1) {
      const at = y * SIDE + x;
      const cover = piece[at] ?? 0;
      const under = board[at] ?? 0;
      let [red, green, blue] = [under - 1.5, under + 0.4, under + 1.2];
      if (cover > 0.003) {
        const level = height[at] ?? 0;
        const left = height[x > 0 ? at - 1 : at] ?? 0;
        const right = height[x < SIDE - 1 ? at + 1 : at] ?? 0;
        const up = height[y > 0 ? at - SIDE : at] ?? 0;
        const down = height[y < SIDE - 1 ? at + SIDE : at] ?? 0;
        const hollow = Math.max(0, (near[at] ?? 0) - level) * 0.2 + Math.max(0, (wide[at] ?? 0) - level) * 0.1;
        const raised = Math.max(0, level - (wide[at] ?? 0));
        const fall = (x + y) / SIDE - 1;
        const light =
          (lightOn((left - right) * 0.5, (up - down) * 0.5, shine) - 0.05 * fall) * (1 - 0.55 * Math.min(1, hollow));
        const rubbed = Math.min(1, raised * 0.06 + Math.max(0, relief[at] ?? 0) * 0.014);
        const mottled = (patch[at] ?? 0) * 0.75;
        const dark = Math.min(1, Math.max(0, tone * deep * (0.4 + mottled + 1.7 * hollow) - rubbed * 0.45));
        shadeOf(bare, light, clean);
        shadeOf(toned, light, dull);
        if (flakes !== null && plate !== undefined) {
          const kept = Math.min(
            1,
            Math.max(0, 0.5 + ((flakes[at] ?? 0) * 1.5 - plate.gone + 0.62 - rubbed * 0.55) * 9),
          );
          shadeOf(over.bare, light, plated);
          for (const one of [0, 1, 2] as const) clean[one] = mix(clean[one], plated[one], kept);
          shadeOf(over.toned, light, plated);
          for (const one of [0, 1, 2] as const) dull[one] = mix(dull[one], plated[one], kept);
        }
        const filth = Math.min(
          0.85,
          (deposit[at] ?? 0) * (0.35 + dirt * 0.6) + dirt * Math.max(0, hollow - 0.22) * 0.9,
        );
        for (const shade of [clean, dull]) {
          shade[0] *= 1 + 0.02 * warm;
          shade[2] *= 1 - 0.03 * warm;
        }
        const glow = 0.45 + 0.75 * light;
        red = red * (1 - cover) + cover * (mix(clean[0], dull[0], dark) * (1 - filth) + soil[0] * glow * filth);
        green = green * (1 - cover) + cover * (mix(clean[1], dull[1], dark) * (1 - filth) + soil[1] * glow * filth);
        blue = blue * (1 - cover) + cover * (mix(clean[2], dull[2], dark) * (1 - filth) + soil[2] * glow * filth);
      }
      out[at * 3] = byte(red);
      out[at * 3 + 1] = byte(green);
      out[at * 3 + 2] = byte(blue);
    }
  }
  return out;
}

/** How bright a slope of metal looks from above: what it mirrors of the lamps and of the dark room, blurred by its roughness. */
function lightOn(slopeX: number, slopeY: number, shine: number): number {
  const long = Math.sqrt(slopeX * slopeX + slopeY * slopeY + 1);
  const [nx, ny, nz] = [slopeX / long, slopeY / long, 1 / long];
  const [mx, my, mz] = [2 * nz * nx, 2 * nz * ny, 2 * nz * nz - 1];
  let light = 0.1 + 0.06 * Math.max(0, mz);
  for (const lamp of LAMPS) {
    const glance = mx * lamp.x + my * lamp.y + mz * lamp.z;
    light +=
      lamp.bright *
      (0.86 * Math.exp(lamp.small * shine * 1.25 * (glance - 1)) +
        0.14 * Math.max(0, nx * lamp.x + ny * lamp.y + nz * lamp.z));
  }
  // The film's shoulder: lights crowd together, they do not burn out.
  return light < 0.7 ? light : 0.7 + 0.3 * (1 - Math.exp((0.7 - light) / 0.3));
}

/** The grey board with the piece's own shadow on it. */
function boardUnder(piece: Field, chance: Chance): Field {
  const contact = blurred(piece, 7);
  const soft = blurred(piece, 30);
  const weave = noise(chance, 5, 2);
  const out = blank();
  for (let y = 0; y < SIDE; y += 1) {
    for (let x = 0; x < SIDE; x += 1) {
      const at = y * SIDE + x;
      const close = shifted(contact, x - 6, y - 8);
      const far = shifted(soft, x - 16, y - 22);
      const shade = (1 - 0.5 * close) * (1 - 0.34 * far);
      out[at] = (146 - (8 * x) / SIDE - (10 * y) / SIDE + (weave[at] ?? 0) * 1.6) * shade;
    }
  }
  return out;
}

function shifted(field: Field, x: number, y: number): number {
  return field[Math.max(0, y) * SIDE + Math.max(0, x)] ?? 0;
}

function mix(one: number, other: number, part: number): number {
  return one + (other - one) * part;
}

function byte(value: number): number {
  return Math.min(255, Math.max(0, Math.round(value)));
}
