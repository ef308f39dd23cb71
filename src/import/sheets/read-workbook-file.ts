import { good, refuse, type Outcome } from '../../core/outcome.ts';
import { packageKind } from './file-kind.ts';
import { readOds } from './ods/read-ods.ts';
import { packageOf } from './package/read-part.ts';
import { openZip } from './package/zip.ts';
import type { Sheet, SheetFile } from './sheet.ts';
import { sheetOfGrid } from './sheet-of-grid.ts';
import { readXlsx } from './xlsx/read-xlsx.ts';

/** Reads a workbook of either kind: all its sheets, or the one that is named. */
export function readWorkbookFile(
  bytes: Uint8Array,
  name: string,
  choices: { readonly sheet?: string; readonly headingRow?: number },
): Outcome<SheetFile> {
  const zip = openZip(bytes);
  if (!zip.ok) return refuse(`${name} cannot be read. ${zip.problem}`);
  const format = packageKind(zip.value);
  if (typeof format !== 'string') return refuse(`${name} ${format.says}`);
  const wanted = choices.sheet?.trim().toLowerCase();
  const isWanted = (sheet: string): boolean => wanted === undefined || sheet.trim().toLowerCase() === wanted;
  const read = (format === 'xlsx' ? readXlsx : readOds)(packageOf(zip.value, name), isWanted);
  if (!read.ok) return read;
  if (read.value.grids.length === 0) {
    return refuse(
      `${name} has no sheet called "${choices.sheet ?? ''}". Write one of: ${read.value.names.join(', ')}.`,
    );
  }
  const sheets: Sheet[] = [];
  for (const grid of read.value.grids) {
    const sheet = sheetOfGrid(grid, choices.headingRow);
    if (!sheet.ok) return sheet;
    sheets.push(sheet.value);
  }
  return good({ reading: { kind: 'workbook', format }, sheets });
}
