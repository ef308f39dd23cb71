import { good, refuse, type Outcome } from '../../../core/outcome.ts';
import type { SheetRemark } from '../sheet.ts';
import { decodeAs, parseEncoding } from './encodings.ts';
import { weighEncodings } from './weigh-encodings.ts';

export type DecodedText = {
  readonly text: string;
  readonly encoding: string;
  /** As in SheetReading. */
  readonly doubts: readonly { readonly encoding: string; readonly preview: string }[];
  readonly remarks: readonly SheetRemark[];
};

/**
 * The text of a file. A mark at its beginning, the form of its bytes and UTF-8's own rules settle most files; where only
 * the words can tell, the likeliest reading is given with the others that differ from it.
 */
export function decodeText(bytes: Uint8Array, name: string, encoding?: string): Outcome<DecodedText> {
  if (encoding !== undefined) {
    const known = parseEncoding(encoding);
    if (!known.ok) return known;
    return known.value === 'utf-8' ? decodeUtf8(bytes, name) : settled(bytes, known.value, name);
  }
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return settled(bytes, 'utf-16le', name);
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return settled(bytes, 'utf-16be', name);
  const wide = wideWithoutMark(bytes);
  if (wide !== null) return settled(bytes, wide, name);
  const utf8 = tryUtf8(bytes);
  if (utf8 !== null) return clean(utf8, 'utf-8', name);
  if (isMostlyUtf8(bytes)) return refuse(brokenUtf8(bytes, name));
  const weighed = weighEncodings(bytes);
  if (!weighed.ok) return weighed;
  const read = settled(bytes, weighed.value.encoding, name);
  return read.ok ? good({ ...read.value, doubts: weighed.value.doubts }) : read;
}

function decodeUtf8(bytes: Uint8Array, name: string): Outcome<DecodedText> {
  const text = tryUtf8(bytes);
  return text === null ? refuse(brokenUtf8(bytes, name)) : clean(text, 'utf-8', name);
}

function tryUtf8(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

function brokenUtf8(bytes: Uint8Array, name: string): string {
  const lines = new TextDecoder('utf-8').decode(bytes).split(/\r\n|\r|\n/);
  const at = lines.findIndex((line) => line.includes('\uFFFD'));
  const line = (lines[at] ?? '').slice(0, 60);
  return `Line ${at + 1} of ${name} is not UTF-8, though the rest is ("${line}"). Fix the letters shown as \uFFFD there and save the file as UTF-8, or name another encoding.`;
}

function settled(bytes: Uint8Array, encoding: string, name: string): Outcome<DecodedText> {
  return clean(decodeAs(bytes, encoding), encoding, name);
}

/** A text without the noughts that some programs fill fields up with; what is mostly signs that no text has is refused. */
function clean(text: string, encoding: string, name: string): Outcome<DecodedText> {
  // eslint-disable-next-line no-control-regex -- control signs are what is looked for
  const controls = text.slice(0, 1_000_000).match(/[\0-\x08\x0e-\x1f]/g)?.length ?? 0;
  if (controls > 4 && controls > Math.min(text.length, 1_000_000) / 100) {
    return refuse(`${name} is not a text. Name a file saved as .csv, .xlsx or .ods.`);
  }
  if (!text.includes('\0')) return good({ text, encoding, doubts: [], remarks: [] });
  const says = 'The file holds bytes of nought, which no text has. They are left out.';
  return good({ text: text.replaceAll('\0', ''), encoding, doubts: [], remarks: [{ rows: [], says }] });
}

/** Letters of most scripts fill every other byte of UTF-16 with a nought, commas and figures in all of them. */
function wideWithoutMark(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | null {
  const noughts = [0, 0];
  const length = Math.min(bytes.length, 8192);
  for (let at = 0; at < length; at += 1) if (bytes[at] === 0) noughts[at % 2] = (noughts[at % 2] ?? 0) + 1;
  const [even = 0, odd = 0] = noughts;
  if (bytes.length % 2 !== 0 || even + odd < length / 20) return null;
  if (odd > (even + odd) * 0.95) return 'utf-16le';
  return even > (even + odd) * 0.95 ? 'utf-16be' : null;
}

/** Whether nearly all bytes above 127 are in sequences that UTF-8 has; a text in another encoding has hardly any. */
function isMostlyUtf8(bytes: Uint8Array): boolean {
  const text = new TextDecoder('utf-8').decode(bytes.subarray(0, 8_000_000));
  let whole = 0;
  let broken = 0;
  for (const [run] of text.matchAll(/[^\0-\x7f]/gu)) {
    if (run === '\uFFFD') broken += 1;
    else whole += 1;
  }
  return whole >= 5 && whole > broken * 3;
}
