import { good, refuse, type Outcome } from '../../../core/outcome.ts';
import type { Grid, GridRow, Hanging, Merge } from '../grid.ts';
import { LIMITS, tooManyCells, tooManyLetters, tooManyRows } from '../limits.ts';
import { hasPart, readPart, type Package, type Taken } from '../package/read-part.ts';
import { LOCKED } from '../package/zip.ts';
import type { SheetCell, SheetRemark } from '../sheet.ts';
import { cellOf } from './cell-text.ts';
import { paragraphCollector, type Paragraphs } from './paragraphs.ts';

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
const CELLS = new Set(['table:table-cell', 'table:covered-table-cell']);
const MOST_COLUMNS = 16_384;

/** The sheets of an OpenDocument workbook (OpenDocument 1.3 part 3, 9); only those asked for are kept. */
export function readOds(
  from: Package,
  isWanted: (name: string) => boolean,
): Outcome<{ readonly names: readonly string[]; readonly grids: readonly Grid[] }> {
  const locked = isLocked(from);
  if (!locked.ok) return locked;
  if (locked.value) return refuse(`${from.name} cannot be read. ${LOCKED}`);

  const reader = new ContentReader(from, isWanted);
  const read = readPart(from, 'content.xml', reader, () => reader.whyStop());
  if (!read.ok) return read;
  return reader.names.length === 0
    ? refuse(
        `${from.name} holds no sheets that can be read. Open it in a spreadsheet program and save it as .ods or .xlsx.`,
      )
    : good({ names: reader.names, grids: reader.tables.map(gridOf) });
}

/** A cell's text, and everything else of it that a table keeps. */
function hang(table: Table, row: number, column: number, text: string, of: Paragraphs, attributes: Attributes): void {
  const at = { row, column };
  if (of.comment() !== '') table.comments.push({ ...at, text: of.comment() });
  for (const link of of.links())
    if (!text.includes(link.replace(/^mailto:|\/$/g, ''))) table.links.push({ ...at, text: link });
  const down = count(attributes['table:number-rows-spanned']);
  const across = count(attributes['table:number-columns-spanned']);
  if (down > 1 || across > 1)
    table.merges.push({ fromRow: row, toRow: row + down - 1, fromColumn: column, toColumn: column + across - 1 });
}

/** Takes the tables out of `content.xml`, one element after another. */
class ContentReader {
  readonly tables: Table[] = [];
  readonly names: string[] = [];
  /** Why reading ends before the end; null as long as it goes on. */
  stop: string | null = null;
  readonly #from: Package;
  readonly #isWanted: (name: string) => boolean;
  readonly #hiddenStyles = new Set<string>();
  readonly #paragraphs = paragraphCollector();
  readonly #taken: Taken = { letters: 0, cells: 0 };
  #style = '';
  #aside = 0;
  #table: Table | null = null;
  #hiddenGroups: boolean[] = [];
  #columnsSeen = 0;
  #rowsSeen = 0;
  #row = { repeat: 1, isHidden: false, cells: [] as (SheetCell | undefined)[] };
  #column = 0;
  #cell: Attributes | null = null;

  constructor(from: Package, isWanted: (name: string) => boolean) {
    this.#from = from;
    this.#isWanted = isWanted;
  }

  whyStop(): string | null {
    return this.stop ?? (this.#taken.letters > LIMITS.letters ? tooManyLetters(this.#from.name) : null);
  }

  open(name: string, attributes: Attributes): void {
    if (ASIDE.has(name)) this.#aside += 1;
    if (this.#aside > 0) return;
    if (this.#cell !== null) {
      this.#paragraphs.open(name, attributes);
      if (name === 'draw:image' && this.#table !== null) this.#table.hasPictures = true;
    } else if (CELLS.has(name)) {
      this.#cell = attributes;
      this.#paragraphs.begin();
    } else if (name === 'table:table-row') this.#beginRow(attributes);
    else if (name === 'table:table-row-group') this.#hiddenGroups.push(attributes['table:display'] === 'false');
    else if (name === 'table:table-column') this.#passColumns(attributes);
    else if (name === 'table:table') this.#beginTable(attributes);
    else if (name === 'table:database-range') setFilter(this.tables, attributes);
    else if (name === 'style:style') this.#style = attributes['style:name'] ?? '';
    else if (name === 'style:table-properties' && attributes['table:display'] === 'false')
      this.#hiddenStyles.add(this.#style);
  }

  close(name: string): void {
    if (ASIDE.has(name)) this.#aside -= 1;
    else if (this.#aside > 0) return;
    else if (CELLS.has(name)) {
      if (this.#cell !== null) this.#endCell(this.#cell);
      this.#cell = null;
    } else if (this.#cell !== null) this.#paragraphs.close(name);
    else if (name === 'table:table-row') this.#endRow();
    else if (name === 'table:table-row-group') this.#hiddenGroups.pop();
    else if (name === 'table:table') this.#table = null;
  }

  text(text: string): void {
    if (this.#cell !== null && this.#aside === 0) this.#paragraphs.take(text);
  }

  #beginTable(attributes: Attributes): void {
    const title = attributes['table:name'] ?? '';
    this.names.push(title);
    this.#table = newTable(title, this.#hiddenStyles.has(attributes['table:style-name'] ?? ''));
    if (this.#isWanted(title)) this.tables.push(this.#table);
    this.#rowsSeen = 0;
    this.#columnsSeen = 0;
    this.#hiddenGroups = [];
  }

  #passColumns(attributes: Attributes): void {
    const repeat = count(attributes['table:number-columns-repeated']);
    for (let at = 0; isOut(attributes) && at < repeat && at < MOST_COLUMNS; at += 1)
      this.#table?.hiddenColumns.add(this.#columnsSeen + at);
    this.#columnsSeen += repeat;
  }

  #beginRow(attributes: Attributes): void {
    this.#row = { repeat: count(attributes['table:number-rows-repeated']), isHidden: isOut(attributes), cells: [] };
    this.#column = 0;
  }

  #endCell(attributes: Attributes): void {
    const known = cellOf({
      type: attributes['office:value-type'] ?? '',
      isError: attributes['calcext:value-type'] === 'error',
      value: valueOf(attributes),
      currency: attributes['office:currency'] ?? '',
      shown: this.#paragraphs.shown(),
    });
    if (this.#table !== null)
      hang(this.#table, this.#rowsSeen + 1, this.#column, known.text, this.#paragraphs, attributes);
    const end = this.#column + count(attributes['table:number-columns-repeated']);
    if (known.text !== '') {
      if (end > MOST_COLUMNS) this.stop ??= tooManyCells(this.#table?.name ?? this.#from.name);
      for (let at = this.#column; at < end && this.stop === null; at += 1) this.#row.cells[at] = known;
      this.#taken.cells += (end - this.#column) * this.#row.repeat;
      this.#taken.letters += known.text.length;
    }
    this.#column = end;
  }

  #endRow(): void {
    const { repeat, cells } = this.#row;
    if (this.#table !== null && cells.length > 0) {
      if (this.#table.rows.length + repeat > LIMITS.rows) this.stop ??= tooManyRows(this.#table.name);
      if (this.#taken.cells > LIMITS.cells) this.stop ??= tooManyCells(this.#table.name);
      const isHidden = this.#row.isHidden || this.#hiddenGroups.includes(true);
      for (let at = 1; at <= repeat && this.stop === null; at += 1)
        this.#table.rows.push({ row: this.#rowsSeen + at, cells, ...(isHidden && { isHidden }) });
    }
    this.#rowsSeen += repeat;
  }
}

function isOut(attributes: Attributes): boolean {
  return ['collapse', 'filter'].includes(attributes['table:visibility'] ?? '');
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
