/** A colour picture as plain numbers: rows of red, green, blue, and with four channels one byte more. */
export type Pixels = { readonly width: number; readonly height: number; readonly rgb: Uint8Array };

/** How many bytes a pixel has. */
export function channelsOf({ rgb, width, height }: Pixels): number {
  return rgb.length / (width * height);
}

/** The size of a picture, in pixels. */
export type Extent = { readonly width: number; readonly height: number };

/** A part of a picture, in its pixels. */
export type Box = { readonly left: number; readonly top: number; readonly width: number; readonly height: number };

/** The picture made smaller till its longest side is `longest`, each new pixel the mean of those under it; as it is when it is no larger. */
export function reduced(pixels: Pixels, longest: number): Pixels {
  const most = Math.max(pixels.width, pixels.height);
  if (most <= longest) return pixels;
  const width = Math.max(1, Math.round((pixels.width * longest) / most));
  const height = Math.max(1, Math.round((pixels.height * longest) / most));
  const rgb = new Uint8Array(width * height * 3);
  const lefts = Int32Array.from({ length: width + 1 }, (_, x) => Math.floor((x * pixels.width) / width));
  for (let y = 0; y < height; y += 1) {
    const top = Math.floor((y * pixels.height) / height);
    const bottom = Math.max(top + 1, Math.floor(((y + 1) * pixels.height) / height));
    reduceRows(pixels, top, bottom, lefts, rgb, y * width * 3);
  }
  return { width, height, rgb };
}

/** One new row from the old ones from `top` to before `bottom`; `lefts` is the first old column of each new one. */
function reduceRows(
  { rgb, width }: Pixels,
  top: number,
  bottom: number,
  lefts: Int32Array,
  into: Uint8Array,
  start: number,
): void {
  for (let x = 0; x + 1 < lefts.length; x += 1) {
    const left = lefts[x] ?? 0;
    const right = Math.max(left + 1, lefts[x + 1] ?? 0);
    for (let colour = 0; colour < 3; colour += 1) {
      let sum = 0;
      for (let row = top; row < bottom; row += 1)
        for (let column = left; column < right; column += 1) sum += rgb[(row * width + column) * 3 + colour] ?? 0;
      into[start + x * 3 + colour] = Math.round(sum / ((bottom - top) * (right - left)));
    }
  }
}

/** Gives the memory of a picture back at once: waiting for it to be collected, many would be held. Its pixels are gone. */
export function release({ buffer }: Uint8Array): void {
  const held: { readonly byteLength: number; transfer?(length: number): unknown } = buffer;
  held.transfer?.(0);
}
