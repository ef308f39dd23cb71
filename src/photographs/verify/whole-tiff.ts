/** Reads so many bytes of a file from a place on; fewer where it ends. */
export type PartOf = (at: number, length: number) => Promise<Buffer>;

/** The tags that say where the strips or tiles of a picture lie, each with the one that says how long they are. */
const PIXELS = [
  { at: 273, long: 279 },
  { at: 324, long: 325 },
] as const;
/** The bytes of a number of each type that such a tag may have: 3 is SHORT, 4 is LONG. */
const WIDTHS: ReadonlyMap<number, 2 | 4> = new Map([[3, 2], [4, 4]]); // prettier-ignore

/**
 * Whether all pixels that the first directory of a TIFF points at lie within the file (TIFF 6.0, 1992, §2 and §15). A
 * file of the larger kind, with a 43 in its head, is not judged.
 */
export async function holdsItsPixels(size: number, part: PartOf): Promise<boolean> {
  const head = await part(0, 8);
  const isLittle = head.toString('latin1', 0, 2) === 'II';
  const read = (bytes: Buffer, at: number, width: 2 | 4): number =>
    isLittle ? bytes.readUIntLE(at, width) : bytes.readUIntBE(at, width);
  if (head.length < 8) return false;
  if (read(head, 2, 2) !== 42) return true;

  const directory = read(head, 4, 4);
  const counted = await part(directory, 2);
  if (counted.length < 2) return false;
  const entries = await part(directory + 2, read(counted, 0, 2) * 12);
  if (entries.length < read(counted, 0, 2) * 12) return false;
  const numbersOf = async (tag: number): Promise<readonly number[] | null> => {
    for (let entry = 0; entry < entries.length; entry += 12) {
      if (read(entries, entry, 2) !== tag) continue;
      const width = WIDTHS.get(read(entries, entry + 2, 2));
      const count = read(entries, entry + 4, 4);
      if (width === undefined || count * width > size) return null;
      const isHere = count * width <= 4;
      const held = isHere ? entries.subarray(entry + 8, entry + 12) : await part(read(entries, entry + 8, 4), count * width); // prettier-ignore
      if (held.length < count * width) return null;
      return Array.from({ length: count }, (_, at) => read(held, at * width, width));
    }
    return [];
  };
  for (const { at, long } of PIXELS) {
    const [places, lengths] = [await numbersOf(at), await numbersOf(long)];
    if (places === null || lengths === null) return false;
    if (places.some((place, index) => place + (lengths[index] ?? 0) > size)) return false;
  }
  return true;
}
