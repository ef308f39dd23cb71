/** One part of a picture file that is not its pixels: `EXIF`, `XMP`, `ICC profile`, `comment` … */
export type Segment = { readonly name: string };

const latin = (bytes: Uint8Array, from: number, length: number): string =>
  String.fromCharCode(...bytes.subarray(from, from + length));

/**
 * Lists everything a JPEG, PNG or WebP carries besides its pixels. Sources: ITU-T T.81 Annex B (JPEG markers),
 * W3C PNG (third edition) §5, the WebP container specification (RIFF).
 * Null when the bytes are none of the three, or break off.
 */
export function segmentsOf(bytes: Uint8Array): readonly Segment[] | null {
  if (bytes[0] === 0xff && bytes[1] === 0xd8) return jpegSegments(bytes);
  if (latin(bytes, 0, 4) === 'RIFF' && latin(bytes, 8, 4) === 'WEBP') return riffSegments(bytes);
  if (latin(bytes, 1, 3) === 'PNG') return pngSegments(bytes);
  return null;
}

function jpegSegments(bytes: Uint8Array): readonly Segment[] | null {
  const found: Segment[] = [];
  let at = 2;
  while (at + 4 <= bytes.length && bytes[at] === 0xff) {
    const marker = bytes[at + 1] ?? 0;
    if (marker === 0xda) return found;
    const length = ((bytes[at + 2] ?? 0) << 8) | (bytes[at + 3] ?? 0);
    const label = latin(bytes, at + 4, Math.min(32, Math.max(0, length - 2)));
    if (marker === 0xfe) found.push({ name: 'comment' });
    else if (marker >= 0xe1 && marker <= 0xef) found.push({ name: jpegName(marker, label) });
    // APP0 is the JFIF header; anything else there, or a thumbnail in it, is not ours.
    else if (marker === 0xe0 && (!label.startsWith('JFIF\0') || length !== 16))
      found.push({ name: 'JFIF thumbnail or extension' });
    at += 2 + length;
  }
  return null;
}

function jpegName(marker: number, label: string): string {
  if (label.startsWith('Exif\0')) return 'EXIF';
  if (label.startsWith('http://ns.adobe.com/xap') || label.startsWith('http://ns.adobe.com/xmp')) return 'XMP';
  if (label.startsWith('ICC_PROFILE')) return 'ICC profile';
  if (label.startsWith('Photoshop 3.0')) return 'IPTC';
  return `application segment ${marker - 0xe0}`;
}

/** The WebP chunks that are pixels or say how to read them. */
const WEBP_PIXELS = new Set(['VP8 ', 'VP8L', 'VP8X', 'ALPH', 'ANIM', 'ANMF']);

function riffSegments(bytes: Uint8Array): readonly Segment[] | null {
  const found: Segment[] = [];
  let at = 12;
  while (at + 8 <= bytes.length) {
    const name = latin(bytes, at, 4);
    const size =
      (bytes[at + 4] ?? 0) | ((bytes[at + 5] ?? 0) << 8) | ((bytes[at + 6] ?? 0) << 16) | ((bytes[at + 7] ?? 0) << 24);
    if (!WEBP_PIXELS.has(name)) found.push({ name: name.trim() === 'ICCP' ? 'ICC profile' : name.trim() });
    at += 8 + size + (size % 2);
  }
  return at === bytes.length ? found : null;
}

/** The PNG chunks that are pixels or say how to read them. */
const PNG_PIXELS = new Set(['IHDR', 'PLTE', 'IDAT', 'IEND', 'tRNS', 'sRGB', 'gAMA', 'cHRM', 'pHYs', 'bKGD', 'sBIT']);

function pngSegments(bytes: Uint8Array): readonly Segment[] | null {
  const found: Segment[] = [];
  let at = 8;
  while (at + 12 <= bytes.length) {
    const size =
      ((bytes[at] ?? 0) << 24) | ((bytes[at + 1] ?? 0) << 16) | ((bytes[at + 2] ?? 0) << 8) | (bytes[at + 3] ?? 0);
    const name = latin(bytes, at + 4, 4);
    if (!PNG_PIXELS.has(name)) found.push({ name: name === 'eXIf' ? 'EXIF' : name === 'iCCP' ? 'ICC profile' : name });
    at += 12 + size;
  }
  return at === bytes.length ? found : null;
}
