import { good, refuse, type Outcome } from '../../../core/outcome.ts';
import type { Grid, GridRow, Hanging, Merge } from '../grid.ts';
import { LIMITS, tooManyCells, tooManyLetters, tooManyRows } from '../limits.ts';
import { hasPart, readPart, type Package, type Taken } from '../package/read-part.ts';
import { LOCKED } from '../package/zip.ts';
import type { SheetCell, SheetRemark } from '../sheet.ts';
import { cellOf } from './cell-text.ts';
import { paragraphCollector } from './paragraphs.ts';

type Table = {
  readonly name: string;
  readonly isHidden: boolean;
  readonly rows: GridRow[];
  readonly hiddenColumns: Set<number>;
  readonly merges: Merge[];
  readonly comments: Hanging[];
  readonly links: Hanging[];
  headingRow: number | null;
  hasPictures: boolean;
};

type Attributes = Readonly<Record<string, string | undefined>>;

/** Parts of a document that hold tables which are no sheets: what was deleted, what other files were asked for. */
const ASIDE = new Set(['table:tracked-changes', 'table:dde-links', 'office:forms', 'table:shapes', 'table:scenario']);
const MOST_COLUMNS = 16_384;

/** The sheets of an OpenDocument workbook (OpenDocument 1.3 part 3, 9); only those asked for are kept. */
export function readOds(
  from: Package,
  isWanted: (name: string) => boolean,
): Outcome<{ readonly names: readonly string[]; readonly grids: readonly Grid[] }> {
  const locked = isLocked(from);
  if (!locked.ok) return locked;
  if (locked.value) return refuse(`${from.name} cannot be read. ${LOCKED}`);

  const tables: Table[] = [];
  const names: string[] = [];
  const hiddenStyles = new Set<string>();
  const taken: Taken = { letters: 0, cells: 0 };
  const paragraphs = paragraphCollector();
  let stop: string | null = null;
  let style = '';
  let aside = 0;
  let table: Table | null = null;
  let row = 0;
  let rowRepeat = 1;
  let isRowHidden = false;
  let hiddenGroups: boolean[] = [];
  let columnsSeen = 0;
  let cells: (SheetCell | undefined)[] = [];
  let column = 0;
  let cell: Attributes | null = null;

  const endCell = (attributes: Attributes): void => {
    const repeat = count(attributes['table:number-columns-repeated']);
    const known = cellOf({
      type: attributes['office:value-type'] ?? '',
      isError: attributes['calcext:value-type'] === 'error',
      value: valueOf(attributes),
      currency: attributes['office:currency'] ?? '',
      shown: paragraphs.shown(),
    });
    const at = { row: row + 1, column };
    if (paragraphs.comment() !== '') table?.comments.push({ ...at, text: paragraphs.comment() });
    for (const link of paragraphs.links())
      if (!known.text.includes(link.replace(/^mailto:|\/$/g, ''))) table?.links.push({ ...at, text: link });
    const down = count(attributes['table:number-rows-spanned']);
    const across = count(attributes['table:number-columns-spanned']);
    if (down > 1 || across > 1) {
      table?.merges.push({ fromRow: row + 1, toRow: row + down, fromColumn: column, toColumn: column + across - 1 });
    }
    if (known.text !== '') {
      if (column + repeat > MOST_COLUMNS) stop ??= tooManyCells(table?.name ?? from.name);
      for (let index = column; index < column + repeat && stop === null; index += 1) cells[index] = known;
      taken.cells += repeat * rowRepeat;
      taken.letters += known.text.length;
    }
    column += repeat;
  };
  const endRow = (): void => {
    if (table !== null && cells.length > 0) {
      if (table.rows.length + rowRepeat > LIMITS.rows) stop ??= tooManyRows(table.name);
      if (taken.cells > LIMITS.cells) stop ??= tooManyCells(table.name);
      const isHidden = isRowHidden || hiddenGroups.includes(true);
      for (let at = 1; at <= rowRepeat && stop === null; at += 1) {
        table.rows.push({ row: row + at, cells, ...(isHidden && { isHidden }) });
      }
    }
    row += rowRepeat;
  };
  const isOut = (attributes: Attributes): boolean =>
    ['collapse', 'filter'].includes(attributes['table:visibility'] ?? '');

  const read = readPart(
    from,
    'content.xml',
    {
      open(name, attributes) {
        if (ASIDE.has(name)) aside += 1;
        if (aside > 0) return;
        if (cell !== null) {
          paragraphs.open(name, attributes);
          if (name === 'draw:image' && table !== null) table.hasPictures = true;
        } else if (name === 'table:table-cell' || name === 'table:covered-table-cell') {
          cell = attributes;
          paragraphs.begin();
        } else if (name === 'table:table-row') {
          rowRepeat = count(attributes['table:number-rows-repeated']);
          isRowHidden = isOut(attributes);
          cells = [];
          column = 0;
        } else if (name === 'table:table-row-group') hiddenGroups.push(attributes['table:display'] === 'false');
        else if (name === 'table:table-column') {
          const repeat = count(attributes['table:number-columns-repeated']);
          for (let at = 0; isOut(attributes) && at < repeat && at < MOST_COLUMNS; at += 1)
            table?.hiddenColumns.add(columnsSeen + at);
          columnsSeen += repeat;
        } else if (name === 'table:table') {
          const title = attributes['table:name'] ?? '';
          names.push(title);
          table = newTable(title, hiddenStyles.has(attributes['table:style-name'] ?? ''));
          if (isWanted(title)) tables.push(table);
          row = 0;
          columnsSeen = 0;
          hiddenGroups = [];
        } else if (name === 'style:style') style = attributes['style:name'] ?? '';
        else if (name === 'style:table-properties' && attributes['table:display'] === 'false') hiddenStyles.add(style);
        else if (name === 'table:database-range') setFilter(tables, attributes);
      },
      close(name) {
        if (ASIDE.has(name)) aside -= 1;
        else if (aside > 0) return;
        else if (name === 'table:table-cell' || name === 'table:covered-table-cell') {
          if (cell !== null) endCell(cell);
          cell = null;
        } else if (cell !== null) paragraphs.close(name);
        else if (name === 'table:table-row') endRow();
        else if (name === 'table:table-row-group') hiddenGroups.pop();
        else if (name === 'table:table') table = null;
      },
      text(text) {
        if (cell !== null && aside === 0) paragraphs.take(text);
      },
    },
    () => stop ?? (taken.letters > LIMITS.letters ? tooManyLetters(from.name) : null),
  );
  if (!read.ok) return read;
  return names.length === 0
    ? refuse(
        `${from.name} holds no sheets that can be read. Open it in a spreadsheet program and save it as .ods or .xlsx.`,
      )
    : good({ names, grids: tables.map(gridOf) });
}

function newTable(name: string, isHidden: boolean): Table {
  return {
    name,
    isHidden,
    rows: [],
    hiddenColumns: new Set(),
    merges: [],
    comments: [],
    links: [],
    headingRow: null,
    hasPictures: false,
  };
}

function gridOf({ headingRow, hasPictures, ...table }: Table): Grid {
  const says = 'Pictures lie on this sheet. They are not imported; save them as files of their own.';
  const remarks: SheetRemark[] = hasPictures ? [{ rows: [], says }] : [];
  return { ...table, remarks, ...(headingRow !== null && { statedHeadingRow: headingRow }) };
}

function count(attribute: string | undefined): number {
  const number = Number(attribute ?? '1');
  return Number.isInteger(number) && number >= 1 ? number : 1;
}

function valueOf(attributes: Attributes): string {
  return (
    attributes['office:value'] ??
    attributes['office:date-value'] ??
    attributes['office:string-value'] ??
    attributes['office:boolean-value'] ??
    attributes['office:time-value'] ??
    ''
  );
}

/** A range with filter buttons begins with the row of headings. */
function setFilter(tables: readonly Table[], attributes: Attributes): void {
  if (attributes['table:display-filter-buttons'] !== 'true' || attributes['table:contains-header'] === 'false') return;
  const range = /^\$?(?:'(?<quoted>(?:[^']|'')+)'|(?<plain>[^'.]+))\.\$?[A-Z]+\$?(?<row>\d+):/.exec(
    attributes['table:target-range-address'] ?? '',
  );
  const name = range?.groups?.['quoted']?.replaceAll("''", "'") ?? range?.groups?.['plain'];
  const table = tables.find((known) => known.name === name);
  if (table !== undefined) table.headingRow = Number(range?.groups?.['row']);
}

function isLocked(from: Package): Outcome<boolean> {
  if (!hasPart(from, 'META-INF/manifest.xml')) return good(false);
  let found = false;
  const read = readPart(from, 'META-INF/manifest.xml', {
    open(name) {
      if (name === 'manifest:encryption-data') found = true;
    },
  });
  return read.ok ? good(found) : read;
}
