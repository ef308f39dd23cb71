import { between } from './chance.ts';
import type { Chance } from './chance.ts';
import { bar, crossPattee, dot, fill, n, place } from './shapes.ts';
import type { Punches } from './skeletons.ts';

type Letter = { readonly draw: string; readonly width: number };

/** A letter as these punches cut it; null when the alphabet has no such letter. Small letters are read as capitals. */
export function letter(sign: string, punches: Punches): Letter | null {
  const skeleton = punches.letters[sign] ?? punches.letters[sign.toUpperCase()];
  if (skeleton === undefined) return null;
  const [width = '0', ...strokes] = skeleton.split(';');
  return { width: Number(width), draw: strokes.map((one) => cut(one, punches)).join('') };
}

function cut(stroke: string, punches: Punches): string {
  const [kind, ...rest] = stroke.split(' ');
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 1] = rest.map(Number);
  if (kind === 'd') return dot(a, b, c);
  if (kind === 'w') return place(fill('M-9 -14L9 -14L2 22L-2 22Z'), a, b, 1, c);
  if (kind === 'x') return crossPattee(a, b, c, c * 0.3, c * 0.85);
  if (kind === 's') return [0, 60, 120].map((turn) => place(bar(0, -c, 0, c, 6, 18), a, b, 1, turn)).join('');
  if (kind === 'c') return curve(a, b, c, d, e, f, punches, g);
  return straight(a, b, c, d, punches, rest.length > 4 ? e : 1);
}

function straight(x1: number, y1: number, x2: number, y2: number, punches: Punches, weight: number): string {
  const waist = Math.max(4, punches.weight * weight);
  const end = punches.ends === 'plain' ? waist * punches.flare * (weight < 0.5 ? 0.7 : 1) : waist * punches.flare;
  const body = bar(x1, y1, x2, y2, waist, end);
  if (punches.ends === 'pellet') return body + dot(x1, y1, punches.weight * 0.72) + dot(x2, y2, punches.weight * 0.72);
  if (punches.ends === 'plain') return body;
  const level = Math.abs(y2 - y1) < Math.abs(x2 - x1) * 0.5;
  const half = level ? punches.weight * 0.7 : punches.weight * 0.5 + waist * 0.62;
  const serif = (x: number, y: number, inward: number): string =>
    level
      ? fill(
          `M${n(x - 2.5)} ${n(y - 2)}L${n(x + 2.5)} ${n(y - 2)}L${n(x + 3)} ${n(y + half * inward)}L${n(x - 3)} ${n(y + half * inward)}Z`,
        )
      : fill(
          `M${n(x - half)} ${n(y)}L${n(x + half)} ${n(y)}L${n(x + half)} ${n(y + 4 * inward)}L${n(x - half)} ${n(y + 4 * inward)}Z`,
        );
  if (level) {
    // A level arm has its serif at the free end only, turned towards the middle of the letter.
    const inward = (y1 + y2) / 2 > 60 ? -1 : 1;
    return (
      body + (weight > 0.55 ? serif(x2, y2, inward) : '') + (x1 < 10 && weight > 0.55 ? serif(x1, y1, inward) : '')
    );
  }
  const head = y1 < y2 ? 1 : -1;
  return body + serif(x1, y1, head) + serif(x2, y2, -head);
}

/** Part of an oval whose stroke is thick at the sides and thin at head and foot, with a wedge at a free end. */
function curve(
  x: number,
  y: number,
  across: number,
  down: number,
  from: number,
  to: number,
  punches: Punches,
  weight: number,
): string {
  const steps = Math.ceil(Math.abs(to - from) / 10);
  const full = punches.weight * weight;
  const [wide, high] = [across - full * 0.1, down - full * 0.35];
  const point = (part: number, sign: number): string => {
    const angle = ((from + (to - from) * part) * Math.PI) / 180;
    const side = Math.abs(Math.cos(angle));
    const open = Math.abs(to - from) < 350 && Math.abs(to - from) > 190;
    const end = open ? Math.max(0, 1 - Math.min(part, 1 - part) * 7) : 0;
    const half = (full / 2) * (punches.thin + (1 - punches.thin) * side + end * 0.8) * sign;
    return `${n(x + Math.cos(angle) * (wide + half))} ${n(y + Math.sin(angle) * (high + half))}`;
  };
  const row = (sign: number): string[] => Array.from({ length: steps + 1 }, (_, at) => point(at / steps, sign));
  return fill(`M${row(1).join('L')}L${row(-1).reverse().join('L')}Z`);
}

/** Where a legend stands round the rim. */
export type Rim = {
  /** Distance of the foot of the letters from the centre, and their height. */
  readonly foot: number;
  readonly height: number;
  /** Clock angle in degrees at which it begins (0 at the top, clockwise). */
  readonly from: number;
  /** How many degrees it may fill. */
  readonly over: number;
  /** Letters read from outside, along the bottom, instead of from the centre. */
  readonly outward?: boolean;
  /** `fill` spaces the letters to use all the room, `middle` keeps them together in the middle of it, `start` at its beginning. */
  readonly set?: 'fill' | 'middle' | 'start';
  readonly space?: number;
};

/** A cut legend, sorted by how well it came up: whole, or worn away almost to nothing (what a reader restores in brackets). */
type Lettered = { readonly whole: string; readonly faint: string };

type Spaced = { readonly sign: string; readonly faint: boolean; readonly letter: Letter | null };

/** Letters of a text, with what stands in brackets marked as faint and what is lost as room without a letter. */
function spell(text: string, punches: Punches): Spaced[] {
  let faint = false;
  const out: Spaced[] = [];
  for (const sign of text) {
    if (sign === '[' || sign === ']') faint = sign === '[';
    else if (sign === '…')
      for (let at = 0; at < 3; at += 1) out.push({ sign: ' ', faint: true, letter: { width: 70, draw: '' } });
    else if (sign === ' ') out.push({ sign, faint, letter: null });
    else {
      const found = letter(sign, punches);
      if (found !== null) out.push({ sign, faint, letter: found });
    }
  }
  return out;
}

/** Sets a text round the rim. */
export function onRim(text: string, punches: Punches, rim: Rim, chance: Chance): Lettered {
  const { foot, height, from, over, outward = false, set = 'fill', space = 36 } = rim;
  const spelt = spell(text, punches);
  const widths = spelt.map(({ letter: one }) => (one === null ? space : one.width + punches.apart));
  const natural = widths.reduce((sum, width) => sum + width, 0);
  const radius = outward ? foot - height / 2 : foot + height / 2;
  const room = (over * Math.PI * radius) / 180;
  const scale = height / 100;
  const squeeze = Math.min(set === 'fill' ? 1.32 : 1, room / (natural * scale));
  const spare = Math.max(0, room - natural * scale * squeeze);
  const extra = set === 'fill' ? spare / Math.max(1, spelt.length) : 0;
  let along = set === 'middle' ? spare / 2 : 0;
  const out = { whole: '', faint: '' };
  spelt.forEach(({ faint, letter: one }, at) => {
    const width = (widths[at] ?? 0) * scale * squeeze + extra;
    const middle = along + width / 2;
    along += width;
    if (one === null || one.draw === '') return;
    const angle = outward ? from - (middle / radius) * (180 / Math.PI) : from + (middle / radius) * (180 / Math.PI);
    const off = punches.uneven;
    const turn = between(chance, -2.6, 2.6) * off;
    const tall = scale * (1 + between(chance, -0.035, 0.035) * off);
    const shift = between(chance, -0.02, 0.02) * off * height;
    const glyph = `<g transform="rotate(${n(turn)}) scale(${n4(tall * Math.min(1.32, squeeze * (squeeze < 1 ? 1.04 : 1)))} ${n4(tall)}) translate(${-one.width / 2} -50)">${one.draw}</g>`;
    const stand = outward ? place(glyph, 0, radius + shift, 1) : place(glyph, 0, -radius + shift, 1);
    const set1 = place(stand, 0, 0, 1, outward ? angle - 180 : angle);
    if (faint) out.faint += set1;
    else out.whole += set1;
  });
  return out;
}

/** Sets a text in a straight line round a middle point; returns its drawing. */
export function inLine(
  text: string,
  punches: Punches,
  x: number,
  y: number,
  height: number,
  chance: Chance,
  most = 1e9,
): string {
  const spelt = spell(text, punches);
  const widths = spelt.map(({ letter: one }) => (one === null ? 40 : one.width + punches.apart));
  const natural = (widths.reduce((sum, width) => sum + width, 0) * height) / 100;
  const squeeze = Math.min(1, most / natural);
  let along = x - (natural * squeeze) / 2;
  let out = '';
  spelt.forEach(({ letter: one }, at) => {
    const width = ((widths[at] ?? 0) * height * squeeze) / 100;
    const off = punches.uneven;
    if (one !== null) {
      const glyph = `<g transform="scale(${(height / 100) * squeeze} ${height / 100}) translate(${-one.width / 2} -50)">${one.draw}</g>`;
      out += place(glyph, along + width / 2, y + between(chance, -1.5, 1.5) * off, 1, between(chance, -2, 2) * off);
    }
    along += width;
  });
  return out;
}

function n4(value: number): string {
  return String(Math.round(value * 10000) / 10000);
}
