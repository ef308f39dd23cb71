import { Inflate } from 'fflate';
import { crc32 } from 'node:zlib';
import { good, refuse, type Outcome } from '../../../core/outcome.ts';

/** A part of a package as its directory tells of it. */
type Entry = {
  readonly method: number;
  readonly isEncrypted: boolean;
  readonly packed: number;
  readonly crc: number;
  /** Where its local header begins. */
  readonly at: number;
};

/**
 * A package opened in memory. Parts are asked for by name and unpacked as they are read; nothing is ever written, so a
 * name such as `../../x` is only a name that nobody asks for.
 */
export type Zip = {
  readonly bytes: Uint8Array;
  /** By name in small letters: the names of a package differ in more than case (ECMA-376 part 2). */
  readonly entries: ReadonlyMap<string, Entry>;
};

export const DAMAGED = 'It is damaged or was cut short on its way. Copy it again from where it came, or save it again.';

/** Opens a ZIP by the directory at its end (PKWARE APPNOTE 6.3.10, 4.3.12 and 4.3.16). */
export function openZip(bytes: Uint8Array): Outcome<Zip> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = findEnd(view);
  if (end === null) return refuse(DAMAGED);
  const entries = new Map<string, Entry>();
  let at = end.directory;
  for (let count = 0; count < end.entries; count += 1) {
    if (at + 46 > bytes.length || view.getUint32(at, true) !== 0x02014b50) return refuse(DAMAGED);
    const nameLength = view.getUint16(at + 28, true);
    const extraLength = view.getUint16(at + 30, true);
    const next = at + 46 + nameLength + extraLength + view.getUint16(at + 32, true);
    if (next > bytes.length) return refuse(DAMAGED);
    const name = nameOf(new TextDecoder().decode(bytes.subarray(at + 46, at + 46 + nameLength)));
    const entry = {
      method: view.getUint16(at + 10, true),
      isEncrypted: (view.getUint16(at + 8, true) & 1) === 1,
      crc: view.getUint32(at + 16, true),
      packed: view.getUint32(at + 20, true),
      at: view.getUint32(at + 42, true),
    };
    const whole = long(view, entry, at, nameLength, extraLength);
    // A part is named twice; names that differ are a damaged directory, by which a sheet or its strings would be missed.
    if (localName(view, whole.at) !== name) return refuse(DAMAGED);
    if (!entries.has(name)) entries.set(name, whole);
    at = next;
  }
  return good({ bytes, entries });
}

function localName(view: DataView, at: number): string | null {
  if (at + 30 > view.byteLength || view.getUint32(at, true) !== 0x04034b50) return null;
  const length = view.getUint16(at + 26, true);
  if (at + 30 + length > view.byteLength) return null;
  return nameOf(new TextDecoder().decode(new Uint8Array(view.buffer, view.byteOffset + at + 30, length)));
}

function nameOf(name: string): string {
  return name.replaceAll('\\', '/').replace(/^\//, '').toLowerCase();
}

function findEnd(view: DataView): { readonly entries: number; readonly directory: number } | null {
  for (let at = view.byteLength - 22; at >= Math.max(0, view.byteLength - 22 - 65535); at -= 1) {
    if (view.getUint32(at, true) !== 0x06054b50) continue;
    const short = { entries: view.getUint16(at + 10, true), directory: view.getUint32(at + 16, true) };
    const isLong = short.entries === 0xffff || short.directory === 0xffffffff;
    if (!isLong || at < 20 || view.getUint32(at - 20, true) !== 0x07064b50) return short;
    const record = Number(view.getBigUint64(at - 12, true));
    if (record + 56 > view.byteLength || view.getUint32(record, true) !== 0x06064b50) return short;
    return {
      entries: Number(view.getBigUint64(record + 32, true)),
      directory: Number(view.getBigUint64(record + 48, true)),
    };
  }
  return null;
}

/** The entry with the long figures of ZIP64, where its short ones are filled up (APPNOTE 4.5.3). */
function long(view: DataView, entry: Entry, at: number, nameLength: number, extraLength: number): Entry {
  const unpackedIsLong = view.getUint32(at + 24, true) === 0xffffffff;
  if (entry.packed !== 0xffffffff && entry.at !== 0xffffffff) return entry;
  let field = at + 46 + nameLength;
  const end = field + extraLength;
  while (field + 4 <= end) {
    const size = view.getUint16(field + 2, true);
    if (view.getUint16(field, true) === 1) {
      const figures: number[] = [];
      for (let figure = field + 4; figure + 8 <= Math.min(end, field + 4 + size); figure += 8) {
        figures.push(Number(view.getBigUint64(figure, true)));
      }
      if (unpackedIsLong) figures.shift();
      const packed = entry.packed === 0xffffffff ? figures.shift() : entry.packed;
      const begins = entry.at === 0xffffffff ? figures.shift() : entry.at;
      return { ...entry, packed: packed ?? entry.packed, at: begins ?? entry.at };
    }
    field += 4 + size;
  }
  return entry;
}

/** How many bytes may still be unpacked; shared by all parts of one file, so that a bomb in pieces is a bomb too. */
export type Allowance = { bytes: number };

/** What came of unpacking: nothing to say; the reader had enough; or the allowance was used up. */
type Unpacked = Outcome<'whole' | 'stopped' | 'too much'>;

/**
 * Unpacks one part and hands it over in chunks, until the taker returns false. What a part says of its own size is not
 * believed: bytes are counted as they come, and the sum of the whole part is checked against its directory.
 */
export function unpack(zip: Zip, name: string, allowance: Allowance, take: (chunk: Uint8Array) => boolean): Unpacked {
  const entry = zip.entries.get(nameOf(name));
  const { bytes } = zip;
  if (entry === undefined) return refuse(DAMAGED);
  if (entry.isEncrypted) return refuse(LOCKED);
  if (entry.method !== 0 && entry.method !== 8) {
    return refuse('It is packed in an uncommon way. Open it in a spreadsheet program and save it again.');
  }
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (entry.at + 30 > bytes.length || view.getUint32(entry.at, true) !== 0x04034b50) return refuse(DAMAGED);
  const begins = entry.at + 30 + view.getUint16(entry.at + 26, true) + view.getUint16(entry.at + 28, true);
  if (begins + entry.packed > bytes.length) return refuse(DAMAGED);
  const packed = bytes.subarray(begins, begins + entry.packed);

  const so: { far: 'whole' | 'stopped' | 'too much'; isLast: boolean; crc: number } = {
    far: 'whole',
    isLast: false,
    crc: 0,
  };
  const hand = (chunk: Uint8Array, last: boolean): void => {
    if (so.far !== 'whole') return;
    so.isLast = last;
    allowance.bytes -= chunk.length;
    if (allowance.bytes < 0) {
      so.far = 'too much';
      return;
    }
    so.crc = crc32(chunk, so.crc);
    if (!take(chunk)) so.far = 'stopped';
  };
  const stopped = (): boolean => so.far !== 'whole';

  try {
    if (entry.method === 0) hand(packed, true);
    else {
      const inflate = new Inflate(hand);
      // A chunk of 16 KB unpacks to 16 MB at most, so that no more than this is ever held beyond the allowance.
      for (let at = 0; at < packed.length && !stopped(); at += CHUNK) {
        inflate.push(packed.subarray(at, at + CHUNK), at + CHUNK >= packed.length);
      }
    }
  } catch {
    return refuse(DAMAGED);
  }
  if (stopped()) return good(so.far);
  return so.isLast && so.crc === entry.crc ? good('whole') : refuse(DAMAGED);
}

const CHUNK = 16 * 1024;

export const LOCKED = 'It is locked with a password. Open it, save it again without the password, and name that file.';
