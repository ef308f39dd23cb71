import { good, refuse, type Outcome } from '../../../core/outcome.ts';
import { decodeAs } from './encodings.ts';
import { plausibility } from './plausibility.ts';

/** What a text that is not Unicode is weighed as, in the order in which equals are taken. */
const CANDIDATES = [
  'windows-1252',
  'windows-1250',
  'windows-1251',
  'windows-1253',
  'windows-1254',
  'windows-1256',
  'macintosh',
] as const;

const SAMPLE_LINES = 2000;
const PREVIEW = 90;

/** Readings that are less than this share as plausible as the best are no readings: they make no words at all. */
const LEAST = 0.6;

type Weighed = {
  readonly encoding: string;
  readonly doubts: readonly { readonly encoding: string; readonly preview: string }[];
};

/** The likeliest encoding of these bytes, and every other that makes different words that could be meant. */
export function weighEncodings(bytes: Uint8Array): Outcome<Weighed> {
  const { used, lines } = highBytes(bytes);
  const readings: { encoding: string; letters: string; lines: readonly string[]; weight: number }[] = [];
  for (const encoding of CANDIDATES) {
    const letters = decodeAs(used, encoding);
    // A byte that an encoding has no letter for is a sign that the file is in another.
    if (/[\x80-\x9f\uFFFD]/.test(letters) || readings.some((known) => known.letters === letters)) continue;
    const decoded = lines.map((line) => decodeAs(line, encoding));
    readings.push({ encoding, letters, lines: decoded, weight: plausibility(decoded) });
  }
  readings.sort((a, b) => b.weight - a.weight);
  const best = readings[0];
  if (best === undefined) {
    return refuse(
      'The letters of this file are in no encoding that is known here. Save it as UTF-8, or as .xlsx or .ods.',
    );
  }
  const possible = readings.filter(({ weight }) => weight > best.weight * LEAST);
  if (possible.length === 1) return good({ encoding: best.encoding, doubts: [] });
  const at = tellingLine(possible.map((reading) => reading.lines));
  const doubts = possible.map(({ encoding, lines: decoded }) => ({ encoding, preview: cut(decoded, best.lines, at) }));
  return good({ encoding: best.encoding, doubts });
}

/** Every byte above 127 that occurs, once each, and the lines they stand in, as many as are needed to weigh. */
function highBytes(bytes: Uint8Array): { readonly used: Uint8Array; readonly lines: readonly Uint8Array[] } {
  const seen = new Set<number>();
  const lines: Uint8Array[] = [];
  let from = 0;
  let isHigh = false;
  for (let at = 0; at <= bytes.length; at += 1) {
    const byte = bytes[at] ?? 10;
    if (byte > 127) {
      seen.add(byte);
      isHigh = true;
    } else if (byte === 10 || byte === 13) {
      if (isHigh && lines.length < SAMPLE_LINES) lines.push(bytes.subarray(from, Math.min(at, from + 4000)));
      from = at + 1;
      isHigh = false;
    }
  }
  return { used: Uint8Array.from([...seen].sort((a, b) => a - b)), lines };
}

/** The line that reads in the most different ways. */
function tellingLine(readings: readonly (readonly string[])[]): number {
  let best = { at: 0, ways: 0 };
  const count = readings[0]?.length ?? 0;
  for (let at = 0; at < count; at += 1) {
    const ways = new Set(readings.map((lines) => lines[at])).size;
    if (ways > best.ways) best = { at, ways };
  }
  return best.at;
}

/** A stretch of that line round its first letter that is in doubt. */
function cut(lines: readonly string[], best: readonly string[], at: number): string {
  const line = lines[at] ?? '';
  const first = Math.max(0, (best[at] ?? '').search(/[^\0-\x7f]/));
  const from = Math.max(0, first - PREVIEW / 3);
  return `${from > 0 ? '…' : ''}${line.slice(from, from + PREVIEW).trim()}${line.length > from + PREVIEW ? '…' : ''}`;
}
