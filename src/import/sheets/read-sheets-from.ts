import { basename } from 'node:path';
import { refuse, type Outcome } from '../../core/outcome.ts';
import { readUpTo } from '../../catalogue/files.ts';
import { LIMITS, tooManyBytes } from './limits.ts';
import { readSheets, type SheetChoices } from './read-sheets.ts';
import type { SheetFile } from './sheet.ts';

/** Reads a sheet file from the disk; one that is too large is told of before a byte of it is read. */
export async function readSheetsFrom(path: string, choices: SheetChoices = {}): Promise<Outcome<SheetFile>> {
  const found = await readUpTo(path, LIMITS.fileBytes);
  const name = basename(path);
  if (found === 'missing') return refuse(`There is no file ${path}. Name the spreadsheet to import.`);
  if (found === 'folder') return refuse(`${path} is a folder. Name the spreadsheet in it.`);
  if ('tooLarge' in found) return refuse(tooManyBytes(name, found.tooLarge));
  return readSheets(found.bytes, name, choices);
}
