import { readFile } from 'node:fs/promises';
import { readSheets, type SheetChoices } from '../../../src/import/sheets/read-sheets.ts';
import type { Sheet, SheetFile } from '../../../src/import/sheets/sheet.ts';

export const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

export function publishedSheet(name: string): Promise<Uint8Array> {
  return readFile(new URL(`../../published/sheets/${name}`, import.meta.url));
}

export async function readFileOf(
  bytes: Uint8Array | string,
  name: string,
  choices: SheetChoices = {},
): Promise<SheetFile> {
  const read = await readSheets(typeof bytes === 'string' ? bytesOf(bytes) : bytes, name, choices);
  if (!read.ok) throw new Error(read.problem);
  return read.value;
}

/** The one sheet of a file, or the first. */
export async function readOne(
  bytes: Uint8Array | string,
  name = 'coins.csv',
  choices: SheetChoices = {},
): Promise<Sheet> {
  const [sheet] = (await readFileOf(bytes, name, choices)).sheets;
  if (sheet === undefined) throw new Error('no sheet');
  return sheet;
}

export async function problemOf(bytes: Uint8Array | string, name: string, choices: SheetChoices = {}): Promise<string> {
  const read = await readSheets(typeof bytes === 'string' ? bytesOf(bytes) : bytes, name, choices);
  return read.ok ? 'it was read' : read.problem;
}

export function textsOf(sheet: Sheet): readonly (readonly string[])[] {
  return sheet.rows.map(({ cells }) => cells.map(({ text }) => text));
}

export function headingsOf(sheet: Sheet): readonly string[] {
  return sheet.columns.map(({ heading }) => heading);
}
