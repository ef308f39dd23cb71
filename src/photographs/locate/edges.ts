import type { Pixels } from './pixels.ts';

/** The frame of the picture that is taken to be board, as a part of its shorter side. */
const FRAME = 0.04;
/** The least step of light between neighbours, of 255, that is an edge: a quieter one no board is free of. */
const LEAST_STEP = 7;
/** Steps are counted in quarters, as Sobel's sums come; the largest there is. */
const MOST_STEP = 1448;

/**
 * Where the picture changes sharply: Sobel's operator in each colour (R. Gonzalez and R. Woods, Digital Image
 * Processing, ch. 10), against what the board itself shows at the rim of the picture. One byte a pixel.
 */
export function edgesOf(pixels: Pixels): Uint8Array {
  const { width, height } = pixels;
  const steps = stepsOf(pixels);
  const rim = Math.max(3, Math.round(Math.min(width, height) * FRAME));
  const tally = new Uint32Array(MOST_STEP + 1);
  let all = 0;
  for (let y = 1; y < height - 1; y += 1) {
    const isAcross = y < rim || y >= height - rim;
    for (let x = 1; x < width - 1; x += 1) {
      if (!isAcross && x === rim) x = Math.max(x, width - rim);
      const step = steps[y * width + x] ?? 0;
      tally[step] = (tally[step] ?? 0) + 1;
      all += 1;
    }
  }
  const usual = stepAt(tally, all * 0.5);
  // The upper quarter, not the uppermost tenth: a piece may lie close to the rim of the picture.
  const upper = stepAt(tally, all * 0.75);
  const least = Math.max(4 * LEAST_STEP, usual + 6 * (upper - usual));
  const edges = new Uint8Array(steps.length);
  for (let at = 0; at < edges.length; at += 1) edges[at] = (steps[at] ?? 0) > least ? 1 : 0;
  return edges;
}

/** The step that so many are not above. */
function stepAt(tally: Uint32Array, count: number): number {
  let sum = 0;
  for (let step = 0; step < tally.length; step += 1) {
    sum += tally[step] ?? 0;
    if (sum > count) return step;
  }
  return MOST_STEP;
}

/** Four times the largest step of any colour at each pixel, 0 at the outermost. */
function stepsOf({ width, height, rgb }: Pixels): Uint16Array {
  const steps = new Uint16Array(width * height);
  const line = width * 3;
  for (let y = 1; y < height - 1; y += 1) {
    for (let x = 1; x < width - 1; x += 1) {
      let most = 0;
      const first = y * line + x * 3;
      for (let at = first; at < first + 3; at += 1) {
        const upLeft = rgb[at - line - 3] ?? 0;
        const upRight = rgb[at - line + 3] ?? 0;
        const downLeft = rgb[at + line - 3] ?? 0;
        const downRight = rgb[at + line + 3] ?? 0;
        const across = upRight - upLeft + 2 * ((rgb[at + 3] ?? 0) - (rgb[at - 3] ?? 0)) + downRight - downLeft;
        const along = downLeft - upLeft + 2 * ((rgb[at + line] ?? 0) - (rgb[at - line] ?? 0)) + downRight - upRight;
        const square = across * across + along * along;
        if (square > most) most = square;
      }
      steps[y * width + x] = Math.sqrt(most);
    }
  }
  return steps;
}
