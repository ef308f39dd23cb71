import { heldPixels } from '../render/open-photograph.ts';
import type { Box, Pixels } from '../locate/pixels.ts';

/** A tidy copy is worked from again and again, so it loses nothing that can be seen. */
const QUALITY = 93;

/** A photograph as a JPEG with nothing in it but its pixels, upright, in sRGB; the whole of it, or a part. */
export async function tidyCopy(pixels: Pixels, part: Box | null): Promise<Uint8Array> {
  const held = heldPixels(pixels);
  const cut =
    part === null ? held : held.extract({ left: part.left, top: part.top, width: part.width, height: part.height });
  return cut.jpeg({ quality: QUALITY, chromaSubsampling: '4:4:4' }).toBuffer();
}
