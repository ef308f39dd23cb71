import { good, refuse, type Outcome } from '../../core/outcome.ts';
import { packageKind } from './file-kind.ts';
import { readOds } from './ods/read-ods.ts';
import type { Grid } from './grid.ts';
import { packageOf } from './package/read-part.ts';
import { openZip } from './package/zip.ts';
import type { Sheet, SheetFile } from './sheet.ts';
import { sheetOfGrid } from './sheet-of-grid.ts';
import { readXls } from './xls/read-xls.ts';
import { readXlsx } from './xlsx/read-xlsx.ts';

/** Reads a workbook of any kind: all its sheets, or the one that is named. */
export async function readWorkbookFile(
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
