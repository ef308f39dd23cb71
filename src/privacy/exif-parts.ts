/** The tags of an EXIF block that say more than the rest. Source: CIPA DC-008 (Exif 2.32), §4.6; TIFF 6.0, section 2. */
const TAGS: ReadonlyMap<number, string> = new Map([
  [0x8825, 'the place it was taken (GPS)'],
  [0x927c, "the camera's own note (maker note)"],
  [0x0201, 'a thumbnail'],
  [0xa431, 'the serial number of the camera'],
]);
/** Tags that lead to another table: EXIF and interoperability. */
const LEADS = new Set([0x8769, 0xa005]);
/** More tables than this no camera writes: a guard against a block that leads in circles. */
const MOST_TABLES = 16;

/** What an EXIF block holds that tells of a place, a camera or a second picture; nothing when it cannot be read. `bytes` begin at the block's TIFF head. */
export function exifParts(bytes: Uint8Array): readonly string[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const isLittle = bytes[0] === 0x49;
  const short = (at: number): number => (at + 2 <= bytes.length ? view.getUint16(at, isLittle) : 0);
  const long = (at: number): number => (at + 4 <= bytes.length ? view.getUint32(at, isLittle) : 0);
  const found = new Set<string>();
  const waiting = [long(4)];
  for (let table = 0; table < MOST_TABLES; table += 1) {
    const start = waiting.pop();
    if (start === undefined || start === 0) continue;
    const entries = short(start);
    for (let entry = 0; entry < entries && start + 2 + entry * 12 < bytes.length; entry += 1) {
      const at = start + 2 + entry * 12;
      const name = TAGS.get(short(at));
      if (name !== undefined) found.add(name);
      if (LEADS.has(short(at))) waiting.push(long(at + 8));
    }
    // The next table after this one: the thumbnail's.
    waiting.push(long(start + 2 + entries * 12));
  }
  return [...found];
}
