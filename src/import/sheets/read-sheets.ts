import { good, refuse } from '../../core/outcome.ts';
import type { Outcome } from '../../core/outcome.ts';
import { kindOf, packageKind } from './file-kind.ts';
import { LIMITS, tooManyBytes } from './limits.ts';
import type { SheetFile, Sheet } from './sheet.ts';
import { decodeText } from './text/decode-text.ts';
import { readText } from './text/read-text.ts';
import { basename } from 'node:path';
import { readUpTo } from '../../catalogue/files.ts';
import { readOds } from './ods/read-ods.ts';
import type { Grid } from './grid.ts';
import { packageOf } from './package/read-part.ts';
import { openZip } from './package/zip.ts';
import { sheetOfGrid } from './sheet-of-grid.ts';
import { readXls } from './xls/read-xls.ts';
import { readXlsx } from './xlsx/read-xlsx.ts';

/** What a keeper may settle where a file leaves a doubt. */
export type SheetChoices = {
  /** As the Encoding Standard labels it: `windows-1250`. Of text files. */
  readonly encoding?: string;
  /** The character itself, or `comma`, `semicolon`, `tab`, `pipe`. Of text files. */
  readonly separator?: string;
  /** The name of the one sheet to read. Of workbooks. */
  readonly sheet?: string;
  /** The row the headings are in, the first being 1; 0 where there are none. Of every sheet that is read. */
  readonly headingRow?: number;
};

/**
 * Reads a sheet file by what is in it, whatever its name says: what it holds and how it was read. Nothing in it is
 * executed, resolved or written; memory is bounded by LIMITS.
 */
export async function readSheets(
  bytes: Uint8Array,
  name: string,
  choices: SheetChoices = {},
): Promise<Outcome<SheetFile>> {
  if (bytes.length > LIMITS.fileBytes) return refuse(tooManyBytes(name, bytes.length));
  const kind = kindOf(bytes);
  if (kind.kind === 'other') return refuse(`${name} ${kind.says}`);
  if (kind.kind !== 'text') return readWorkbookFile(bytes, kind.kind, name, choices);
  const decoded = decodeText(bytes, name, choices.encoding);
  if (!decoded.ok) return decoded;
  const { text, encoding, doubts, remarks } = decoded.value;
  const read = readText(text, name, choices, remarks);
  if (!read.ok) return read;
  return good({
    reading: { kind: 'text', encoding, separator: read.value.separator, doubts },
    sheets: [read.value.sheet],
  });
}

/** Reads a sheet file from the disk; one that is too large is told of before a byte of it is read. */
export async function readSheetsFrom(path: string, choices: SheetChoices = {}): Promise<Outcome<SheetFile>> {
  const found = await readUpTo(path, LIMITS.fileBytes);
  const name = basename(path);
  if (found === 'missing') return refuse(`There is no file ${path}. Name the spreadsheet to import.`);
  if (found === 'folder') return refuse(`${path} is a folder. Name the spreadsheet in it.`);
  if ('tooLarge' in found) return refuse(tooManyBytes(name, found.tooLarge));
  return readSheets(found.bytes, name, choices);
}

/** Reads a workbook of any kind: all its sheets, or the one that is named. */
async function readWorkbookFile(
  bytes: Uint8Array,
  kind: 'zip' | 'xls',
  name: string,
  choices: { readonly sheet?: string; readonly headingRow?: number },
): Promise<Outcome<SheetFile>> {
  const wanted = choices.sheet?.trim().toLowerCase();
  const isWanted = (sheet: string): boolean => wanted === undefined || sheet.trim().toLowerCase() === wanted;
  const read = kind === 'zip' ? readPackage(bytes, name, isWanted) : await readOld(bytes, name, isWanted);
  if (!read.ok) return read;
  const { format, names, grids } = read.value;
  if (grids.length === 0) {
    return refuse(`${name} has no sheet called "${choices.sheet ?? ''}". Write one of: ${names.join(', ')}.`);
  }
  const sheets: Sheet[] = [];
  for (const grid of grids) {
    const sheet = sheetOfGrid(grid, choices.headingRow);
    if (!sheet.ok) return sheet;
    sheets.push(sheet.value);
  }
  return good({ reading: { kind: 'workbook', format }, sheets });
}

type Book = {
  readonly format: 'xlsx' | 'ods' | 'xls';
  readonly names: readonly string[];
  readonly grids: readonly Grid[];
};
type IsWanted = (sheet: string) => boolean;

function readPackage(bytes: Uint8Array, name: string, isWanted: IsWanted): Outcome<Book> {
  const zip = openZip(bytes);
  if (!zip.ok) return refuse(`${name} cannot be read. ${zip.problem}`);
  const format = packageKind(zip.value);
  if (typeof format !== 'string') return refuse(`${name} ${format.says}`);
  const read = (format === 'xlsx' ? readXlsx : readOds)(packageOf(zip.value, name), isWanted);
  return read.ok ? good({ format, ...read.value }) : read;
}

async function readOld(bytes: Uint8Array, name: string, isWanted: IsWanted): Promise<Outcome<Book>> {
  const read = await readXls(bytes, name, isWanted);
  return read.ok ? good({ format: 'xls', ...read.value }) : read;
}
