import { good, type Outcome } from '../../../core/outcome.ts';
import { sayRows, type Grid, type Hanging } from '../grid.ts';
import type { Package, Taken } from '../package/read-part.ts';
import type { SheetRemark } from '../sheet.ts';
import { readComments, readTableRow } from './hanging-parts.ts';
import { readRelations, type Relation } from './relations.ts';
import { readWorkbook } from './workbook.ts';
import { readWorksheet, type Worksheet } from './worksheet.ts';

/** The sheets of a workbook (ECMA-376, ISO/IEC 29500), transitional or strict; only those asked for are read. */
export function readXlsx(
  from: Package,
  isWanted: (name: string) => boolean,
): Outcome<{ names: readonly string[]; grids: readonly Grid[] }> {
  const workbook = readWorkbook(from);
  if (!workbook.ok) return workbook;
  const grids: Grid[] = [];
  const taken: Taken = { letters: 0, cells: 0 };
  for (const { name, part, isHidden } of workbook.value.sheets.filter((sheet) => isWanted(sheet.name))) {
    const relations = readRelations(from, part);
    if (!relations.ok) return relations;
    const sheet = readWorksheet(from, part, name, workbook.value, taken);
    if (!sheet.ok) return sheet;
    const comments = readComments(from, relations.value);
    if (!comments.ok) return comments;
    const tableRow = readTableRow(from, relations.value);
    if (!tableRow.ok) return tableRow;
    const { rows, hiddenColumns, merges, filterRow } = sheet.value;
    const stated = tableRow.value ?? filterRow;
    grids.push({
      name,
      isHidden,
      rows,
      hiddenColumns,
      merges,
      comments: comments.value,
      links: linksOf(sheet.value, relations.value),
      ...(stated !== null && { statedHeadingRow: stated }),
      remarks: remarksOn(sheet.value, relations.value),
    });
  }
  return good({ names: workbook.value.sheets.map(({ name }) => name), grids });
}

/** Addresses that cells lead to, where they do not stand in the cell's own text. */
function linksOf({ rows, links, linked }: Worksheet, relations: readonly Relation[]): readonly Hanging[] {
  const targets = new Map(relations.filter(({ isOutside }) => isOutside).map(({ id, target }) => [id, target]));
  const texts = new Map(rows.map(({ row, cells }) => [row, cells]));
  const outward = linked.flatMap(({ row, column, relation }) => {
    const text = targets.get(relation);
    return text === undefined ? [] : [{ row, column, text }];
  });
  const bare = (address: string): string => address.replace(/^mailto:/, '').replace(/\/$/, '');
  return [...links, ...outward].filter(
    ({ row, column, text }) => bare(texts.get(row)?.[column]?.text ?? '') !== bare(text),
  );
}

function remarksOn({ unanswered, pictured }: Worksheet, relations: readonly Relation[]): readonly SheetRemark[] {
  const remarks: SheetRemark[] = [];
  const rows = [...new Set(unanswered)];
  if (rows.length > 0) {
    const says = `Formulas in ${sayRows(rows)} have no stored result, so they stand as written. Open the workbook in a spreadsheet program and save it again, and their results are read.`;
    remarks.push({ rows, says });
  }
  if (pictured.length > 0 || relations.some(({ type }) => type === 'drawing')) {
    const says = 'Pictures or charts lie on this sheet. They are not imported; save them as files of their own.';
    remarks.push({ rows: [...new Set(pictured)], says });
  }
  return remarks;
}
