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
  for (let y = 0; y < height; y += 1) {
    const [top, bottom] = under(y, height, pixels.height);
    for (let x = 0; x < width; x += 1) {
      const [left, right] = under(x, width, pixels.width);
      for (let colour = 0; colour < 3; colour += 1) {
        let sum = 0;
        for (let row = top; row < bottom; row += 1)
          for (let column = left; column < right; column += 1)
            sum += pixels.rgb[(row * pixels.width + column) * 3 + colour] ?? 0;
        rgb[(y * width + x) * 3 + colour] = Math.round(sum / ((bottom - top) * (right - left)));
      }
    }
  }
  return { width, height, rgb };
}

/** The old pixels under a new one: from the first to before the last. */
function under(at: number, now: number, before: number): readonly [number, number] {
  const from = Math.floor((at * before) / now);
  return [from, Math.max(from + 1, Math.floor(((at + 1) * before) / now))];
}

/** Gives the memory of a picture back at once: waiting for it to be collected, many would be held. Its pixels are gone. */
export function release({ buffer }: Uint8Array): void {
  const held: { readonly byteLength: number; transfer?(length: number): unknown } = buffer;
  held.transfer?.(0);
}
