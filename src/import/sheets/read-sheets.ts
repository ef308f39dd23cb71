import { good, refuse, type Outcome } from '../../core/outcome.ts';
import { kindOf } from './file-kind.ts';
import { LIMITS, tooManyBytes } from './limits.ts';
import { readWorkbookFile } from './read-workbook-file.ts';
import type { SheetFile } from './sheet.ts';
import { decodeText } from './text/decode-text.ts';
import { readText } from './text/read-text.ts';
import { basename } from 'node:path';
import { readUpTo } from '../../catalogue/files.ts';

/** What a keeper may settle where a file leaves a doubt. */
export type SheetChoices = {
  /** As the Encoding Standard labels it: `windows-1250`. Of text files. */
  readonly encoding?: string;
  /** The character itself, or `comma`, `semicolon`, `tab`, `pipe`. Of text files. */
  readonly separator?: string;
  /** The name of the one sheet to read. Of workbooks. */
  readonly sheet?: string;
  /** The row the headings stand in, the first being 1; 0 where there are none. Of every sheet that is read. */
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
