import { readFile } from 'node:fs/promises';
import sharp from 'sharp';
import type { Outcome } from '../../core/outcome.ts';
import { good, refuse } from '../../core/outcome.ts';
import { decodePhotograph, MOST_PIXELS } from '../render/open-photograph.ts';
import type { Pixels } from '../locate/pixels.ts';
import { tellsPlace } from './place-inside.ts';

/** A photograph as it comes from a phone, as pixels, and whether it said where it was taken. */
export type Brought = { readonly pixels: Pixels; readonly hadPlace: boolean };

/** Endings of the files that are looked at. */
export const PICTURES = /\.(jpe?g|png|tiff?|webp|avif|hei[cf])$/i;

/** What the optional package gives back. Source: its README. */
type Decode = (picture: {
  readonly buffer: Uint8Array;
}) => Promise<{ width: number; height: number; data: Uint8ClampedArray }>;

/** Opens a photograph of any of the kinds that are imported; HEIC through a package that may be absent. */
export async function openAny(
  file: string,
  heic: () => Promise<Decode | null> = heicDecoder,
): Promise<Outcome<Brought>> {
  try {
    const head = await sharp(file, { limitInputPixels: false }).metadata();
    if (head.width * head.height > MOST_PIXELS)
      return refuse(
        `This picture is ${head.width} × ${head.height} pixels, more than are opened. Make it smaller, 6000 pixels at most.`,
      );
    const hadPlace = tellsPlace(head);
    if (head.compression !== 'hevc') return good({ pixels: await decodePhotograph(file), hadPlace });
    const decode = await heic();
    if (decode === null)
      return refuse(
        'This is an HEIC picture, and the package that opens them is not installed. Write npm install heic-decode --no-save, or save the picture as JPEG.',
      );
    const { width, height, data } = await decode({ buffer: await readFile(file) });
    const rgb = await sharp(data, { raw: { width, height, channels: 4 } })
      .removeAlpha()
      .raw()
      .toBuffer();
    return good({ pixels: { width, height, rgb }, hadPlace });
  } catch {
    return refuse('This cannot be opened as a picture: it is damaged, or something else under a picture’s name.');
  }
}

/** The decoder of the optional package; null when it was left out. */
async function heicDecoder(): Promise<Decode | null> {
  try {
    const name = 'heic-decode';
    const found: unknown = await import(name);
    const decode = typeof found === 'object' && found !== null && 'default' in found ? found.default : null;
    return typeof decode === 'function' ? (decode as Decode) : null;
  } catch {
    return null;
  }
}
