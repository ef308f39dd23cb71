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
  const { lights, burnt } = lightsOf(cut);
  const found: Fault[] = [];
  if ((lights[Math.floor(lights.length * 0.9)] ?? 255) < DARK) found.push('dark');
  if (burnt > GLARE * lights.length) found.push('glare');
  if (sharpness(cut) < SHARP) found.push('blurred');
  if (isTinted(photograph)) found.push('tinted');
  return found;
}

/** The light of every fourth pixel of the piece, least first, and how many of them are burnt out. */
function lightsOf({ bytes }: CutOut): { readonly lights: Uint8Array; readonly burnt: number } {
  const lights = new Uint8Array(Math.ceil(bytes.length / 16));
  let [count, burnt] = [0, 0];
  for (let at = 0; at + 3 < bytes.length; at += 16) {
    if (bytes[at + 3] !== 255) continue;
    const [r, g, b] = [bytes[at] ?? 0, bytes[at + 1] ?? 0, bytes[at + 2] ?? 0];
    lights[count] = Math.max(r, g, b);
    count += 1;
    if (Math.min(r, g, b) >= BURNT) burnt += 1;
  }
  return { lights: lights.subarray(0, count).sort(), burnt };
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
      const pair = (from: number): number => (bytes[at + from + 1] ?? 0) + (bytes[at + from + unit + 1] ?? 0);
      const first = pair(unit);
      near += Math.abs(pair(3 * unit) - first);
      far += Math.abs(pair(7 * unit) - pair(0));
      count += 1;
    }
  }
  // On what is worn smooth there is nothing to be sharp.
  return far < RELIEF * count || far === 0 ? 1 : near / far;
}

/** Whether nothing in a photograph is neutral, and all of it leans to orange or to blue. */
function isTinted({ rgb, width, height }: Pixels): boolean {
  const leans: number[] = [];
  let neutral = 0;
  for (let row = 0; row < GRID; row += 1)
    for (let column = 0; column < GRID; column += 1) {
      const x = Math.floor(((column + 0.5) * width) / GRID);
      const at = (Math.floor(((row + 0.5) * height) / GRID) * width + x) * 3;
      const lean = Math.log(((rgb[at] ?? 0) + 12) / ((rgb[at + 2] ?? 0) + 12));
      leans.push(lean);
      if (Math.abs(lean) < NEUTRAL) neutral += 1;
    }
  const middle = leans.sort((one, other) => one - other)[leans.length >> 1] ?? 0;
  return neutral < FEW * leans.length && Math.abs(middle) > TINTED;
}
