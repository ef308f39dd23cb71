/** One part of a picture file that is not its pixels: `EXIF`, `XMP`, `colour profile`, `a comment` … */
type Segment = { readonly name: string };

const latin = (bytes: Uint8Array, from: number, length: number): string =>
  String.fromCharCode(...bytes.subarray(from, from + length));

/**
 * Lists everything a JPEG, PNG or WebP carries besides its pixels, from its first byte to its last. Sources: ITU-T T.81
 * Annex B (JPEG markers), JFIF 1.02, W3C PNG (third edition) §5, the WebP container specification (RIFF).
 * Null when the bytes are none of the three, or break off: what cannot be read is not taken to be clean.
 */
export function segmentsOf(bytes: Uint8Array): readonly Segment[] | null {
  const names =
    bytes[0] === 0xff && bytes[1] === 0xd8
      ? jpegNames(bytes)
      : latin(bytes, 0, 4) === 'RIFF' && latin(bytes, 8, 4) === 'WEBP'
        ? webpNames(bytes)
        : latin(bytes, 1, 3) === 'PNG'
          ? pngNames(bytes)
          : null;
  return names === null ? null : names.map((name) => ({ name }));
}

const AFTER = 'more after the end of the picture';

function exifNames(bytes: Uint8Array): readonly string[] {
  const parts = exifParts(bytes);
  return [parts.length === 0 ? 'EXIF' : `EXIF with ${parts.join(', ')}`];
}

/** A JPEG: its segments, between its scans too, and what stands after its end. */
function jpegNames(bytes: Uint8Array): readonly string[] | null {
  const found: string[] = [];
  for (let at = 2; at + 2 <= bytes.length;) {
    if (bytes[at] !== 0xff) return null;
    const marker = bytes[at + 1] ?? 0;
    if (marker === 0xff) at += 1;
    else if (marker === 0xd9) return at + 2 === bytes.length ? found : [...found, AFTER];
    else {
      const length = ((bytes[at + 2] ?? 0) << 8) | (bytes[at + 3] ?? 0);
      // One that is too short, or goes on behind the end, leads to no marker, and so to null.
      found.push(...jpegSegment(marker, bytes.subarray(at + 4, at + 2 + length)));
      at += 2 + length;
      if (marker === 0xda) at = afterScan(bytes, at);
    }
  }
  return null;
}

/** Where the next marker stands after the pixels of a scan: FF 00 is a pixel's byte, FF D0 to FF D7 restart within it. */
function afterScan(bytes: Uint8Array, from: number): number {
  for (let at = bytes.indexOf(0xff, from); at !== -1; at = bytes.indexOf(0xff, at + 1)) {
    const next = bytes[at + 1] ?? 0;
    if (next !== 0 && (next < 0xd0 || next > 0xd7)) return at;
  }
  return bytes.length;
}

/** Frames, tables, scans and restarts: C0 to CF but for C8, and DB to DF. Extensions and reserved kinds may hold anything. */
function isOfPixels(marker: number): boolean {
  return (marker >= 0xc0 && marker <= 0xcf && marker !== 0xc8) || (marker >= 0xda && marker <= 0xdf);
}

function jpegSegment(marker: number, body: Uint8Array): readonly string[] {
  if (marker === 0xfe) return ['a comment'];
  if (marker < 0xe0 || marker > 0xef)
    return isOfPixels(marker) ? [] : [`a segment of the kind ${marker.toString(16).toUpperCase()}`];
  const label = latin(body, 0, Math.min(32, body.length));
  if (marker === 0xe0) {
    // The JFIF head ends in the width and height of a thumbnail, which must be none.
    if (label.startsWith('JFIF\0') && body.length === 14 && body[12] === 0 && body[13] === 0) return [];
    return ['a thumbnail (JFIF)'];
  }
  if (label.startsWith('Exif\0')) return exifNames(body.subarray(6));
  if (label.startsWith('http://ns.adobe.com/xap') || label.startsWith('http://ns.adobe.com/xmp')) return ['XMP'];
  if (label.startsWith('ICC_PROFILE')) return ['a colour profile'];
  if (label.startsWith('Photoshop 3.0')) return ['IPTC'];
  if (label.startsWith('MPF\0')) return ['a second picture (MPF)'];
  return [`application segment ${marker - 0xe0}`];
}

/** The WebP chunks that are pixels or say how to read them. An animation is no photograph. */
const WEBP_PIXELS = new Set(['VP8 ', 'VP8L', 'VP8X', 'ALPH']);
/** The bytes of a chunk VP8X: flags, width and height. */
const VP8X_SIZE = 10;
const WEBP_NAMES: ReadonlyMap<string, string> = new Map([
  ['ICCP', 'a colour profile'],
  ['XMP ', 'XMP'],
  ['ANIM', 'an animation'],
  ['ANMF', 'a frame of an animation'],
]);

function webpNames(bytes: Uint8Array): readonly string[] | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.length < 12) return null;
  const end = view.getUint32(4, true) + 8;
  if (end > bytes.length) return null;
  const found: string[] = [];
  for (let at = 12; at < end;) {
    if (at + 8 > end) return null;
    const name = latin(bytes, at, 4);
    const size = view.getUint32(at + 4, true);
    if (at + 8 + size > end) return null;
    const body = bytes.subarray(at + 8, at + 8 + size);
    // Some writers put the head of the JPEG segment before the block.
    if (name === 'EXIF') found.push(...exifNames(latin(body, 0, 5) === 'Exif\0' ? body.subarray(6) : body));
    else if (name === 'VP8X' && size !== VP8X_SIZE) found.push('more than its size (VP8X)');
    else if (!WEBP_PIXELS.has(name)) found.push(WEBP_NAMES.get(name) ?? `a chunk ${name.trim()}`);
    at += 8 + size + (size % 2);
  }
  return end === bytes.length ? found : [...found, AFTER];
}

/** The PNG chunks that are pixels or say how to read them, and the most bytes each may have. */
const PNG_PIXELS: ReadonlyMap<string, number> = new Map([
  ['IHDR', 13], ['PLTE', 768], ['IDAT', Infinity], ['IEND', 0], ['tRNS', 256], ['sRGB', 1], ['gAMA', 4], ['cHRM', 32],
  ['pHYs', 9], ['bKGD', 6], ['sBIT', 4],
]); // prettier-ignore
const PNG_NAMES: ReadonlyMap<string, string> = new Map([
  ['iCCP', 'a colour profile'],
  ['tEXt', 'a comment'],
  ['zTXt', 'a comment'],
  ['iTXt', 'a comment or XMP'],
  ['tIME', 'the time it was last changed'],
  ['acTL', 'an animation'],
]);

function pngNames(bytes: Uint8Array): readonly string[] | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const found: string[] = [];
  for (let at = 8; at + 12 <= bytes.length;) {
    const size = view.getUint32(at);
    const name = latin(bytes, at + 4, 4);
    if (at + 12 + size > bytes.length) return null;
    if (name === 'eXIf') found.push(...exifNames(bytes.subarray(at + 8, at + 8 + size)));
    else if (size > (PNG_PIXELS.get(name) ?? Infinity)) found.push(`a chunk ${name} of ${size} bytes`);
    else if (!PNG_PIXELS.has(name)) found.push(PNG_NAMES.get(name) ?? `a chunk ${name}`);
    at += 12 + size;
    if (name === 'IEND') return at === bytes.length ? found : [...found, AFTER];
  }
  return null;
}

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
function exifParts(bytes: Uint8Array): readonly string[] {
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
