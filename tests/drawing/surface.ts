import { between, noise } from './chance.ts';
import type { Chance } from './chance.ts';
import { blank, blurred, SIDE } from './field.ts';
import type { Field } from './field.ts';
import { masked } from './relief.ts';
import { dot, n, stroke } from './shapes.ts';

/** What time and hands have done to the skin of a piece. Each from 0 (nothing) to 1 (a great deal). */
export type Surface = {
  /** High parts rubbed flat. */
  readonly wear: number;
  /** Parts that never came up in the striking. */
  readonly weak?: number;
  /** The texture of the flan. */
  readonly grain?: number;
  /** Small deep pits. */
  readonly pits?: number;
  /** Eaten patches. */
  readonly corrosion?: number;
  readonly scratches?: number;
  /** Fine parallel lines, all one way: cleaned with something coarse. */
  readonly hairlines?: number;
  /** Pecks of a knife point. */
  readonly pecks?: number;
  /** How much it waves. */
  readonly bent?: number;
  /** How dark it has toned. */
  readonly tone?: number;
  /** Soil or bloom left in the hollows. */
  readonly dirt?: number;
};

/** The relief after wear: its top rubbed away, its edges rounded, parts of it weak. */
export function worn(relief: Field, { wear, weak = 0.25 }: Surface, chance: Chance): Field {
  const patches = noise(chance, 330, 2);
  const rub = noise(chance, 150, 3);
  const most = 30 - 21 * wear;
  const base = blurred(relief, 8);
  // Metal does not fill a corner: it flows up to the design in a hollow curve.
  const flow = blurred(relief, 5);
  const out = blank();
  for (let at = 0; at < out.length; at += 1) {
    const full = relief[at] ?? 0;
    const here = Math.min(1, Math.max(0, 1 - weak * Math.max(0, (patches[at] ?? 0) * 2.6 - 0.25)));
    const cap = Math.max(1.6, most * (1 + 0.35 * (rub[at] ?? 0)));
    const soft = full * 0.82 + (flow[at] ?? 0) * 0.34;
    const rubbed = soft > 0 ? cap * (1 - Math.exp(-soft / cap)) : soft;
    const levelled = Math.min(rubbed, (base[at] ?? 0) * (1 - 0.1 * wear) + (1.3 - wear) * 12);
    out[at] = levelled * here;
  }
  return blurred(out, 0.35 + wear * 1.7);
}

/** The roughness of the skin, in the same pixels of height, and where deposits sit (0 to 1). */
export async function skin(
  surface: Surface,
  chance: Chance,
): Promise<{ readonly height: Field; readonly deposit: Field }> {
  const { grain = 0.4, pits = 0.1, corrosion = 0, scratches = 0.3, hairlines = 0, pecks = 0 } = surface;
  const height = blank();
  const deposit = blank();
  const fine = blurred(noise(chance, 3, 1), 1);
  const middling = noise(chance, 16, 2);
  const rough = noise(chance, 120, 2);
  const eaten = noise(chance, 90, 4);
  const crumbs = noise(chance, 11, 3);
  for (let at = 0; at < height.length; at += 1) {
    const spread = 0.7 + 0.6 * (rough[at] ?? 0);
    let level = grain * spread * ((fine[at] ?? 0) * 0.55 + (middling[at] ?? 0) * 1.1);
    const hole = corrosion <= 0 ? 0 : Math.min(1, Math.max(0, ((eaten[at] ?? 0) - 0.42 + corrosion * 0.42) * 5));
    if (hole > 0) {
      level -= hole * (1.2 + 3.2 * Math.max(0, 0.4 + (crumbs[at] ?? 0))) * (0.5 + corrosion);
      deposit[at] = hole * Math.min(1, Math.max(0, 0.35 + (crumbs[at] ?? 0) * 1.4));
    }
    height[at] = level;
  }
  await sink(height, deposit, pitMarks(pits, chance), 2.6, 1.5, 0.7);
  await sink(height, null, lines(Math.round(scratches * 44), chance), 1.05, 0.7, 0);
  if (hairlines > 0) await sink(height, null, cleaned(Math.round(hairlines * 320), chance), 0.75, 0.55, 0);
  if (pecks > 0) await sink(height, null, peckMarks(Math.round(pecks * 14), chance), 3.4, 1.2, 0);
  return { height, deposit };
}

async function sink(
  height: Field,
  deposit: Field | null,
  draw: string,
  depth: number,
  soft: number,
  dirty: number,
): Promise<void> {
  if (draw === '') return;
  const mask = blurred(await masked(draw, { x: 0, y: 0, turn: 0, scale: 1 }), soft);
  for (let at = 0; at < height.length; at += 1) {
    const here = mask[at] ?? 0;
    height[at] = (height[at] ?? 0) - depth * here;
    if (deposit !== null) deposit[at] = Math.max(deposit[at] ?? 0, here * dirty);
  }
}

function spot(chance: Chance): [number, number] {
  const angle = between(chance, 0, Math.PI * 2);
  const far = 490 * Math.sqrt(chance());
  return [Math.cos(angle) * far, Math.sin(angle) * far];
}

function pitMarks(pits: number, chance: Chance): string {
  return Array.from({ length: Math.round(pits * 260) }, () => {
    const [x, y] = spot(chance);
    return dot(Math.round(x), Math.round(y), Math.round((0.8 + 3.6 * chance() ** 4) * 10) / 10);
  }).join('');
}

function lines(count: number, chance: Chance): string {
  return Array.from({ length: count }, () => {
    const [x, y] = spot(chance);
    const angle = between(chance, 0, Math.PI);
    const long = 14 + 190 * chance() ** 3;
    const bow = between(chance, -0.08, 0.08) * long;
    const [dx, dy] = [(Math.cos(angle) * long) / 2, (Math.sin(angle) * long) / 2];
    const path = `M${n(x - dx)} ${n(y - dy)}Q${n(x - (dy / long) * bow * 2)} ${n(y + (dx / long) * bow * 2)} ${n(x + dx)} ${n(y + dy)}`;
    return `<g opacity="${n(0.25 + 0.75 * chance() ** 2)}">${stroke(path, Math.round(between(chance, 8, 22)) / 10)}</g>`;
  }).join('');
}

function cleaned(count: number, chance: Chance): string {
  const lean = between(chance, 20, 40);
  return Array.from({ length: count }, () => {
    const [x, y] = spot(chance);
    const angle = ((lean + between(chance, -7, 7)) * Math.PI) / 180;
    const long = between(chance, 60, 330);
    const [dx, dy] = [(Math.cos(angle) * long) / 2, (Math.sin(angle) * long) / 2];
    return `<g opacity="${n(0.2 + 0.6 * chance())}">${stroke(`M${n(x - dx)} ${n(y - dy)}L${n(x + dx)} ${n(y + dy)}`, 1.2)}</g>`;
  }).join('');
}

function peckMarks(count: number, chance: Chance): string {
  return Array.from({ length: count }, () => {
    const [x, y] = spot(chance);
    const angle = between(chance, -0.6, 0.9);
    const long = between(chance, 7, 15);
    return stroke(`M${n(x * 0.8)} ${n(y * 0.8)}l${n(Math.cos(angle) * long)} ${n(Math.sin(angle) * long)}`, 5);
  }).join('');
}

/** How the flan itself waves: broad, shallow hills. */
export function waves(bent: number, chance: Chance): Field {
  const broad = noise(chance, 520, 1);
  const lesser = noise(chance, 190, 2);
  const out = blank();
  for (let at = 0; at < out.length; at += 1) out[at] = bent * ((broad[at] ?? 0) * 15 + (lesser[at] ?? 0) * 6);
  return blurred(out, 12);
}

/** Patches of tone, about -1 to 1, larger than any letter and never square to the picture. */
export function patches(chance: Chance): Field {
  const one = noise(chance, 310, 4);
  const other = noise(chance, 170, 3);
  const turn = between(chance, 0.3, 1.2);
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const half = SIDE / 2;
  const out = blank();
  let sum = 0;
  for (let y = 0; y < SIDE; y += 1) {
    for (let x = 0; x < SIDE; x += 1) {
      const across = Math.round(half + ((x - half) * cos - (y - half) * sin) * 0.7);
      const down = Math.round(half + ((x - half) * sin + (y - half) * cos) * 0.7);
      const value = (one[down * SIDE + across] ?? 0) + 0.6 * (other[y * SIDE + x] ?? 0);
      out[y * SIDE + x] = value;
      sum += value;
    }
  }
  const mean = sum / out.length;
  for (let at = 0; at < out.length; at += 1) out[at] = (out[at] ?? 0) - mean;
  return blurred(out, 6);
}
