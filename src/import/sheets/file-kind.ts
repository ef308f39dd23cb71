import type { Zip } from './package/zip.ts';

/** What the bytes of a file are, whatever its name says; `other` with a sentence that says what to do instead. */
export type FileKind =
  | { readonly kind: 'text' }
  | { readonly kind: 'zip' }
  | { readonly kind: 'xls' }
  | { readonly kind: 'other'; readonly says: string };

const AS_XLSX = 'Open it in a spreadsheet program and save it as .xlsx, .ods or .csv.';

/** First bytes of what people name .csv or .xlsx by mistake. */
const BEGINNINGS: readonly (readonly [string, string])[] = [
  ['%PDF', `is a PDF. Copy its table into a spreadsheet and save that as .xlsx, .ods or .csv.`],
  ['{\\rtf', `is a text with a layout (RTF). Copy its table into a spreadsheet and save that as .xlsx, .ods or .csv.`],
  ['\x1f\x8b', 'is packed (gzip). Unpack it and name the file that lay in it.'],
  ['7z\xbc\xaf', 'is packed (7z). Unpack it and name the file that lay in it.'],
  ['Rar!', 'is packed (RAR). Unpack it and name the file that lay in it.'],
  ['BZh', 'is packed (bzip2). Unpack it and name the file that lay in it.'],
  ['\xff\xd8\xff', 'is a photograph. Name the spreadsheet; photographs are imported with npm run photos.'],
  ['\x89PNG', 'is a picture. Name the spreadsheet; photographs are imported with npm run photos.'],
  ['SQLite format 3', 'is a database. Export its table as .csv and name that.'],
  ['\x00\x01\x00\x00Standard', 'is a database. Export its table as .csv and name that.'],
];

/** First bytes of old workbooks without a shell (BIFF2 to BIFF5). */
const BARE_XLS = ['\x09\x08\x10\x00', '\x09\x08\x08\x00', '\x09\x04\x06\x00', '\x09\x02\x06\x00', '\x09\x00\x04\x00'];
const COMPOUND = '\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1';

export function kindOf(bytes: Uint8Array): FileKind {
  const begins = String.fromCharCode(...bytes.subarray(0, 16));
  if (begins.startsWith('PK\x03\x04') || begins.startsWith('PK\x05\x06')) return { kind: 'zip' };
  if (begins.startsWith(COMPOUND)) return compound(bytes);
  if (BARE_XLS.some((beginning) => begins.startsWith(beginning))) return { kind: 'xls' };
  const found = BEGINNINGS.find(([beginning]) => begins.startsWith(beginning));
  if (found !== undefined) return { kind: 'other', says: found[1] };
  const head = new TextDecoder('utf-8').decode(bytes.subarray(0, 2048)).trimStart();
  if (/^(<!doctype html|<html|<table|<head|<meta)/i.test(head))
    return { kind: 'other', says: `is a web page. ${AS_XLSX}` };
  if (/^<(\?xml\s|office:document|Workbook[\s>])/.test(head)) {
    return { kind: 'other', says: `is XML, whatever its name. ${AS_XLSX}` };
  }
  if (/^(\[\s*)?\{\s*"/.test(head)) {
    return { kind: 'other', says: 'is JSON. Export its records as .csv and name that.' };
  }
  return { kind: 'text' };
}

const LOCKED = 'is locked with a password. Open it, save it again as .xlsx without the password, and name that file.';

/** A compound file is an old workbook, or the shell round a workbook with a password (MS-CFB 2.6, MS-OFFCRYPTO 2.3.4.4). */
function compound(bytes: Uint8Array): FileKind {
  const holds = (name: string): boolean =>
    Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length).includes(Buffer.from(name, 'utf16le'));
  if (holds('EncryptedPackage')) return { kind: 'other', says: LOCKED };
  if (holds('Workbook') || holds('Book')) return { kind: 'xls' };
  return { kind: 'other', says: `is no spreadsheet that can be read. ${AS_XLSX}` };
}

/** Which kind of workbook a package is, or a sentence that says what it is instead. */
export function packageKind({ entries }: Zip): 'xlsx' | 'ods' | { readonly says: string } {
  const has = (name: string): boolean => entries.has(name);
  const hasUnder = (folder: string): boolean => [...entries.keys()].some((name) => name.startsWith(folder));
  if (has('xl/workbook.bin')) return { says: `is a binary workbook (.xlsb), which is not read. ${AS_XLSX}` };
  if (has('[content_types].xml')) {
    if (hasUnder('word/'))
      return { says: `is a text document. Copy its table into a spreadsheet and save that as .xlsx.` };
    if (hasUnder('ppt/'))
      return { says: `is a set of slides. Copy its table into a spreadsheet and save that as .xlsx.` };
    return 'xlsx';
  }
  if (has('content.xml')) return 'ods';
  if (hasUnder('index/'))
    return { says: `is a workbook of a kind that is not read (.numbers). Export it as .xlsx or .csv and name that.` };
  return { says: 'is a packed folder, no spreadsheet. Unpack it and name the spreadsheet that lay in it.' };
}
