import { readYaml } from '../catalogue/yaml.ts';
import type { Written } from '../catalogue/yaml.ts';
import type { FieldFacts } from '../catalogue/fields/row.ts';
import { PIECE_ROWS } from '../catalogue/fields/piece-fields.ts';
import type { FiledSeries } from '../catalogue/records.ts';
import { characterOf } from '../catalogue/schema/series.ts';
import { FACT_COLUMNS } from '../catalogue/types/type-facts.ts';
import { readTypes, seriesNamed } from '../catalogue/types/types-of.ts';
import { editFacts } from '../catalogue/write/edit-list.ts';
import { addRow, cutRows, editRow } from '../catalogue/write/edit-table.ts';
import type { Outcome } from '../core/outcome.ts';
import { good, refuse } from '../core/outcome.ts';
import { readCsv } from '../catalogue/csv.ts';
import type { FileChange } from './cabinet-files.ts';
import { digestOf } from './cabinet-state.ts';
import type { CabinetState } from './cabinet-state.ts';
import { isFields } from './form/leaves.ts';
import type { Posted } from './form/leaves.ts';
import { idOf } from './new-names.ts';

/** A column in which something is said of a type: its box, and what a broader type or the whole series says where it is empty. */
export type TypeBox = {
  readonly column: string;
  /** The name of its box; a blank in a column is an underline in it. */
  readonly name: string;
  readonly row: FieldFacts;
  readonly text: string;
  readonly otherwise: string | null;
};

/** The table of types of a series as it is on the disk: `types.csv`, or the rows in its `series.yaml`. */
export type TypesOnDesk = {
  readonly series: FiledSeries;
  readonly file: string;
  readonly text: string;
  readonly digest: string;
  /** Whether the rows are those of `series.yaml`. */
  readonly isInside: boolean;
};

/** The table of types of a series; where there is none yet, the one that would be made. Null when there is no such series. */
export async function readTypesTable(state: CabinetState, id: string): Promise<TypesOnDesk | null> {
  const series = state.records().series.find((one) => one.id === id);
  if (series === undefined) return null;
  const file = series.tables.types?.file ?? `types/${id}/types.csv`;
  const text = (await state.textOf(file)) ?? '';
  return { series, file, text, digest: digestOf(text), isInside: file === series.file };
}

function line(label: string, says: string, example = ''): FieldFacts {
  return { label, says, example, control: 'line' };
}

/** What every type has beside its facts. */
const OWN: Readonly<Record<string, FieldFacts>> = {
  label: line('Label', 'What the type is called: Class 3b.'),
  broader: line('Broader type', 'The id of the type of which this is a part. What is left empty here is as there.'),
  level: line('Level', ''),
  note: line('Note', 'What is to be known of it, for visitors.'),
  rarity: line('Rarity', 'As a book gives it.'),
  'rarity scale': line('Scale of the rarity', 'The scale it is on.'),
  'rarity source': line('Source of the rarity', 'Who says so, and where.'),
  'rarity date': line('Date of the rarity', 'When that was said.'),
};

/** The boxes of a type: what it is called, what its pieces have in common, and what tells it from others. */
export function boxesOf(state: CabinetState, { series }: TypesOnDesk, id: string): readonly TypeBox[] {
  const row = series.tables.types?.rows.find(({ cells }) => cells['id'] === id);
  const says = seriesNamed(readTypes(state.records()).types, series.id)?.types.get(id)?.says;
  const characters = series.fields.characters.map(characterOf);
  const known = new Set(characters.map((one) => one.id.toLowerCase()));
  const level = line('Level', `One of ${series.fields.levels.join(', ')}.`);
  const rows: readonly (readonly [string, FieldFacts])[] = [
    ...Object.entries(OWN).map(([column, facts]) => [column, column === 'level' ? level : facts] as const),
    ...characters.map((one) => {
      const states = one.states.map((each) => each.id).join(', ');
      const what = one.kind === 'states' ? `One of ${states}; a/b where either may be.` : `A ${one.kind}.`;
      return [one.id.toLowerCase(), line(one.label, `${what} ? not known, - does not apply.`)] as const;
    }),
    ...FACT_COLUMNS.filter((column) => !known.has(column)).map((column) => [column, factRow(column)] as const),
  ];
  return rows
    .filter(([column]) => column !== 'level' || series.fields.levels.length > 0)
    .map(([column, facts]) => {
      const said = says?.get(column);
      const text = row?.cells[column] ?? '';
      const by = said === undefined || text !== '' ? null : said.by === null ? 'the series' : said.by;
      const otherwise = by === null || said === undefined ? null : `${said.text} (from ${by})`;
      return { column, name: `cell.${column.replaceAll(' ', '_')}`, row: facts, text, otherwise };
    });
}

function factRow(column: string): FieldFacts {
  const [top = '', part = ''] = column.split(' ');
  const outer: FieldFacts = PIECE_ROWS[top as keyof typeof PIECE_ROWS];
  const inner = part === '' ? outer : (outer.parts?.[part] ?? outer);
  return part === '' ? outer : { ...inner, label: `${outer.label}: ${inner.label}` };
}

/** The table with what a form says of a type; cells that were not touched keep every byte. */
export function editType(
  state: CabinetState,
  table: TypesOnDesk,
  id: string,
  boxes: readonly TypeBox[],
  posted: Posted,
): Outcome<FileChange | null> {
  const cells: Record<string, string> = {};
  for (const { column, name, row, text } of boxes) {
    const said = posted.get(name)?.replace(/\r\n?/g, '\n').trim();
    if (said === undefined || said === text.replace(/\r\n?/g, '\n')) continue;
    const { list } = row;
    const words = list === undefined ? said : said.split(';').map((one) => idOf(list, one.trim(), state.records()) ?? one.trim()).join('; '); // prettier-ignore
    if (words !== text) cells[column] = words;
  }
  return Object.keys(cells).length === 0 ? good(null) : withCells(table, id, cells);
}

function withCells(table: TypesOnDesk, id: string, cells: Readonly<Record<string, string>>): Outcome<FileChange> {
  const { file, text, isInside } = table;
  if (!isInside) {
    const key = { column: headingIn(text, 'id'), value: id };
    const named = Object.fromEntries(Object.entries(cells).map(([column, cell]) => [headingIn(text, column), cell]));
    return good({ file, text: editRow(text, key, named), from: text });
  }
  const at = placeIn(text, id);
  const changes = Object.entries(cells).map(([column, cell]) => ({ path: ['types', String(at), column], value: cell === '' ? null : cell })); // prettier-ignore
  const edited = at < 0 ? refuse('That type is not there any more.') : editFacts(text, changes, []);
  return edited.ok ? good({ file, text: edited.value, from: text }) : edited;
}

/** The table with one type more. */
export function addType(table: TypesOnDesk, cells: Readonly<Record<string, string>>): Outcome<FileChange> {
  const { file, text, isInside, series } = table;
  if (series.tables.types?.rows.some((row) => row.cells['id'] === cells['id']) === true)
    return refuse(`There is a type ${cells['id'] ?? ''} in this series already. Give this one another id.`);
  if (isInside) {
    const said = Object.fromEntries(Object.entries(cells).filter(([, cell]) => cell !== ''));
    const at = series.tables.types?.rows.length ?? 0;
    const edited = editFacts(text, [{ path: ['types', String(at)], value: said }], []);
    return edited.ok ? good({ file, text: edited.value, from: text }) : edited;
  }
  const named = Object.fromEntries(Object.entries(cells).map(([column, cell]) => [text === '' ? column : headingIn(text, column), cell])); // prettier-ignore
  return good({ file, text: addRow(text, named), from: text === '' ? null : text });
}

/** The table without a type; `check` tells what names it still. */
export function removeType({ file, text, isInside }: TypesOnDesk, id: string): Outcome<FileChange> {
  if (!isInside)
    return good({ file, text: cutRows(text, { column: headingIn(text, 'id'), value: id }).text, from: text });
  const at = placeIn(text, id);
  const edited = at < 0 ? refuse('That type is not there any more.') : editFacts(text, [{ path: ['types', String(at)], value: null }], []); // prettier-ignore
  return edited.ok ? good({ file, text: edited.value, from: text }) : edited;
}

/** The heading of a column as the file has it: `Grade Scale` for `grade scale`; the column itself where it has none yet. */
function headingIn(text: string, column: string): string {
  const plain = (heading: string): string => heading.trim().toLowerCase().replace(/\s+/gu, ' ');
  return (
    readCsv(text)
      .headings.find((heading) => plain(heading) === column)
      ?.trim() ?? column
  );
}

/** Where a type is among the rows of a `series.yaml`; -1 where it is not. */
function placeIn(text: string, id: string): number {
  const read = readYaml(text);
  const rows = read.ok && isFields(read.value) ? read.value['types'] : undefined;
  return Array.isArray(rows) ? (rows as readonly Written[]).findIndex((row) => isFields(row) && row['id'] === id) : -1;
}
