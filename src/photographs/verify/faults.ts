import type { CutOut } from '../render/cut-out.ts';
import type { Pixels } from '../locate/pixels.ts';

/** What a photograph suffers from, so that it is better taken again. */
export type Fault = 'dark' | 'glare' | 'blurred' | 'tinted';

/** Of 255: under this the lightest tenth of a piece is dark; from this on a pixel is burnt out. */
const DARK = 50;
const BURNT = 252;
/** The part of a piece that may be burnt out. */
const GLARE = 0.06;
/** How much of the light's changes over eight pixels must happen within one, lest it be blurred. */
const SHARP = 0.34;
/** The least change of light over six pixels, of twice 255, that is relief. */
const RELIEF = 16;
/** A piece is judged as if it were so many pixels across: what is finer than that no page shows. */
const JUDGED_AT = 360;
/** Pixels looked at along each side of a photograph; how far from neutral, as a logarithm, and how few are nearer, for a tint. */
const GRID = 64;
const NEUTRAL = 0.15;
const FEW = 0.01;
const TINTED = 1;

/** What could be seen better on a piece that was cut out, and in its photograph. */
export function faultsOf(cut: CutOut, photograph: Pixels): readonly Fault[] {
  const { upper, burnt } = lightsOf(cut);
  const found: Fault[] = [];
  if (upper < DARK) found.push('dark');
  if (burnt > GLARE) found.push('glare');
  if (sharpness(cut) < SHARP) found.push('blurred');
  if (isTinted(photograph)) found.push('tinted');
  return found;
}

/** Of every fourth pixel of the piece: the light that a tenth of them is not under, and the part that is burnt out. */
function lightsOf({ bytes }: CutOut): { readonly upper: number; readonly burnt: number } {
  const tally = new Uint32Array(256);
  let all = 0;
  let burnt = 0;
  for (let at = 0; at + 3 < bytes.length; at += 16) {
    if (bytes[at + 3] !== 255) continue;
    const r = bytes[at] ?? 0;
    const g = bytes[at + 1] ?? 0;
    const b = bytes[at + 2] ?? 0;
    const light = Math.max(r, g, b);
    tally[light] = (tally[light] ?? 0) + 1;
    all += 1;
    if (Math.min(r, g, b) >= BURNT) burnt += 1;
  }
  if (all === 0) return { upper: 255, burnt: 0 };
  const until = Math.floor(all * 0.9);
  let [upper, sum] = [0, tally[0] ?? 0];
  while (sum <= until) sum += tally[++upper] ?? 0;
  return { upper, burnt: burnt / all };
}

/** How much light changes over two pixels, as a part of what it changes over six, of the size a piece is judged at. */
function sharpness({ bytes, width, height }: CutOut): number {
  const unit = 4 * Math.max(1, Math.round(Math.max(width, height) / JUDGED_AT));
  let [near, far, count] = [0, 0, 0];
  for (let y = 2; y < height - 2; y += 3) {
    const row = y * width * 4;
    for (let at = row; at + 8 * unit < row + width * 4; at += 12) {
      if (bytes[at + 3] !== 255 || bytes[at + 8 * unit + 3] !== 255) continue;
      // Two pixels beside two, so that the grain of a sensor does not pass for sharpness; of the three colours, green.
      const first = pair(bytes, at + unit, unit);
      near += Math.abs(pair(bytes, at + 3 * unit, unit) - first);
      far += Math.abs(pair(bytes, at + 7 * unit, unit) - pair(bytes, at, unit));
      count += 1;
    }
  }
  // On what is worn smooth there is nothing to be sharp.
  return far < RELIEF * count || far === 0 ? 1 : near / far;
}

function pair(bytes: Uint8Array, at: number, unit: number): number {
  return (bytes[at + 1] ?? 0) + (bytes[at + unit + 1] ?? 0);
}

/** Whether nothing in a photograph is neutral, and all of it leans to orange or to blue. */
function isTinted({ rgb, width, height }: Pixels): boolean {
  const leans = new Float64Array(GRID * GRID);
  let neutral = 0;
  for (let row = 0; row < GRID; row += 1)
    for (let column = 0; column < GRID; column += 1) {
      const x = Math.floor(((column + 0.5) * width) / GRID);
      const at = (Math.floor(((row + 0.5) * height) / GRID) * width + x) * 3;
      const lean = Math.log(((rgb[at] ?? 0) + 12) / ((rgb[at + 2] ?? 0) + 12));
      leans[row * GRID + column] = lean;
      if (Math.abs(lean) < NEUTRAL) neutral += 1;
    }
  const middle = leans.sort()[leans.length >> 1] ?? 0;
  return neutral < FEW * leans.length && Math.abs(middle) > TINTED;
}
