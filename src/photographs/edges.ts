import type { Pixels } from './find-piece.ts';

/** The frame of the picture that is taken to be board, as a part of its shorter side. */
const FRAME = 0.04;
/** The least step of light between neighbours, of 255, that is an edge: a quieter one no board is free of. */
const LEAST_STEP = 7;

/**
 * Where the picture changes sharply: Sobel's operator in each colour (R. Gonzalez and R. Woods, Digital Image
 * Processing, ch. 10), against what the board itself shows at the rim of the picture. One byte a pixel.
 */
export function edgesOf(pixels: Pixels): Uint8Array {
  const { width, height } = pixels;
  const steps = stepsOf(pixels);
  const rim = Math.max(3, Math.round(Math.min(width, height) * FRAME));
  const quiet: number[] = [];
  for (let y = 1; y < height - 1; y += 1)
    for (let x = 1; x < width - 1; x += 1)
      if (x < rim || y < rim || x >= width - rim || y >= height - rim) quiet.push(steps[y * width + x] ?? 0);
  quiet.sort((a, b) => a - b);
  const usual = quiet[Math.floor(quiet.length / 2)] ?? 0;
  const rare = quiet[Math.floor(quiet.length * 0.9)] ?? 0;
  const least = Math.max(LEAST_STEP, usual + 3 * (rare - usual));
  return Uint8Array.from(steps, (step) => (step > least ? 1 : 0));
}

/** The largest step of any colour at each pixel, 0 at the outermost. */
function stepsOf({ width, height, rgb }: Pixels): Float32Array {
  const steps = new Float32Array(width * height);
  const line = width * 3;
  for (let y = 1; y < height - 1; y += 1) {
    for (let x = 1; x < width - 1; x += 1) {
      let most = 0;
      for (let colour = 0; colour < 3; colour += 1) {
        const at = y * line + x * 3 + colour;
        const p = (offset: number): number => rgb[at + offset] ?? 0;
        const across = p(3 - line) + 2 * p(3) + p(3 + line) - p(-3 - line) - 2 * p(-3) - p(-3 + line);
        const down = p(line - 3) + 2 * p(line) + p(line + 3) - p(-line - 3) - 2 * p(-line) - p(-line + 3);
        most = Math.max(most, across * across + down * down);
      }
      steps[y * width + x] = Math.sqrt(most) / 4;
    }
  }
  return steps;
}
