import { readFile } from 'node:fs/promises';
import sharp from 'sharp';
import type { Outcome } from '../../core/outcome.ts';
import { good, refuse } from '../../core/outcome.ts';
import { decodePhotograph, MOST_PIXELS } from '../render/open-photograph.ts';
import type { Pixels } from '../locate/pixels.ts';

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

/** The tag of the table of places in a photograph's notes. Source: Exif 2.32 (CIPA DC-008), 4.6.3. */
const GPS_TABLE = 0x8825;
/** Latitude and longitude in that table. */
const COORDINATES = [0x0002, 0x0004];
/** Fields of other notes that name a place. Sources: XMP specification part 2, IPTC Photo Metadata Standard. */
const NAMED_IN_XMP = /GPSL(?:atitude|ongitude)|photoshop:City|Iptc4xmpCore:Location|Iptc4xmpExt:Location|LocationShown/;

/** What a photograph carries that may tell a place. */
export type Notes = { readonly exif?: Uint8Array | undefined; readonly xmp?: Uint8Array | undefined };

/** Whether a photograph says where it was taken. What cannot be read is taken to say nothing. */
export function tellsPlace({ exif, xmp }: Notes): boolean {
  const says = xmp === undefined ? '' : new TextDecoder('utf-8').decode(xmp);
  return NAMED_IN_XMP.test(says) || (exif !== undefined && hasCoordinates(exif));
}

function hasCoordinates(exif: Uint8Array): boolean {
  const start = String.fromCharCode(...exif.subarray(0, 4)) === 'Exif' ? 6 : 0;
  const view = new DataView(exif.buffer, exif.byteOffset + start, Math.max(0, exif.byteLength - start));
  try {
    const isLittle = view.getUint16(0) === 0x4949;
    const table = (at: number): ReadonlyMap<number, number> => {
      const count = view.getUint16(at, isLittle);
      return new Map(
        Array.from({ length: count }, (_, row) => {
          const entry = at + 2 + row * 12;
          return [view.getUint16(entry, isLittle), view.getUint32(entry + 8, isLittle)];
        }),
      );
    };
    const places = table(view.getUint32(4, isLittle)).get(GPS_TABLE);
    return places !== undefined && COORDINATES.some((tag) => table(places).has(tag));
  } catch {
    return false;
  }
}
