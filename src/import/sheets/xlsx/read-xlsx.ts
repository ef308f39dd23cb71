import { good } from '../../../core/outcome.ts';
import type { Outcome } from '../../../core/outcome.ts';
import { sayRows } from '../grid.ts';
import type { Grid, Hanging } from '../grid.ts';
import { readPart } from '../package/read-part.ts';
import type { Package, Taken } from '../package/read-part.ts';
import type { SheetRemark } from '../sheet.ts';
import { readRelations } from './relations.ts';
import type { Relation } from './relations.ts';
import { readWorkbook } from './workbook.ts';
import { readWorksheet, place, range } from './worksheet.ts';
import type { Worksheet } from './worksheet.ts';
import { cellText, textCollector } from './rich-text.ts';

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
      remarks: [...remarksOn(sheet.value, relations.value), ...coloursIn(sheet.value)],
    });
  }
  return good({ names: workbook.value.sheets.map(({ name }) => name), grids });
}

/** Addresses that cells lead to, where the cell's own text does not hold them. */
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

/** Rows at the top in which a colour marks a title or the headings. */
const TOP = 6;
/** A colour in a larger share of the rows is a pattern of stripes, or the ground of the whole. */
const MARKS = 0.4;
const COLOURS_TOLD = 6;

/** The colours that mark some rows out of all, the commonest first; what they mean is in nobody's words. */
function coloursIn({ rows, coloured }: Worksheet): readonly SheetRemark[] {
  const inSheet = new Set(rows.map(({ row }) => row));
  const marks = [...coloured]
    .map(([colour, all]) => ({ colour, rows: [...all].filter((row) => inSheet.has(row)).sort((a, b) => a - b) }))
    .filter(({ rows: some }) => some.length <= rows.length * MARKS && (some.at(-1) ?? 0) > TOP)
    .toSorted((a, b) => b.rows.length - a.rows.length);
  if (marks.length === 0) return [];
  const told = marks.slice(0, COLOURS_TOLD).map((mark) => `${mark.colour} in ${sayRows(mark.rows)}`);
  const more = marks.length > told.length ? `; and ${marks.length - told.length} more` : '';
  const says = `Cells are filled with colours: ${told.join('; ')}${more}. What a colour means is not read. If it says something of a piece (not sure, sold, to be photographed), write that in a column of its own.`;
  return [{ rows: [...new Set(marks.flatMap((mark) => mark.rows))].sort((a, b) => a - b), says }];
}

function remarksOn(
  { unanswered, pictured }: Pick<Worksheet, 'unanswered' | 'pictured'>,
  relations: readonly Relation[],
): readonly SheetRemark[] {
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

/** The comments of a sheet: those in threads where there are any, and the older ones of other cells. */
function readComments(from: Package, relations: readonly Relation[]): Outcome<readonly Hanging[]> {
  const comments: Hanging[] = [];
  for (const { target } of relations.filter(({ type }) => type === 'threadedComment')) {
    const read = collect(from, target, 'threaded:threadedComment', 'threaded:text');
    if (!read.ok) return read;
    comments.push(...read.value);
  }
  const threaded = new Set(comments.map(({ row, column }) => `${row} ${column}`));
  for (const { target } of relations.filter(({ type }) => type === 'comments')) {
    const read = collect(from, target, 'comment', 't');
    if (!read.ok) return read;
    comments.push(...read.value.filter(({ row, column }) => !threaded.has(`${row} ${column}`)));
  }
  return good(comments);
}

function collect(from: Package, part: string, comment: string, text: string): Outcome<readonly Hanging[]> {
  const comments: Hanging[] = [];
  const collector = textCollector();
  let at: ReturnType<typeof place> = null;
  const read = readPart(from, part, {
    open(name, attributes) {
      if (name === comment) {
        at = place(attributes['ref']);
        collector.begin();
      }
      collector.open(name === text ? 't' : name);
    },
    close(name) {
      collector.close(name === text ? 't' : name);
      const said = name === comment ? cellText(collector.text()) : '';
      if (at !== null && said !== '') comments.push({ ...at, text: said });
    },
    text: collector.take,
  });
  return read.ok ? good(comments) : read;
}

/** The first row of the one table of a sheet, which is its row of headings; null where there is none or there are several. */
function readTableRow(from: Package, relations: readonly Relation[]): Outcome<number | null> {
  const tables = relations.filter(({ type }) => type === 'table');
  const table = tables.length === 1 ? tables[0] : undefined;
  if (table === undefined) return good(null);
  let row: number | null = null;
  const read = readPart(from, table.target, {
    open(name, attributes) {
      if (name === 'table' && attributes['headerRowCount'] !== '0') row = range(attributes['ref'])?.fromRow ?? null;
    },
  });
  return read.ok ? good(row) : read;
}
