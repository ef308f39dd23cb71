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
