import { unguarded } from '../../catalogue/csv-guard.ts';
import type { Reign } from '../../core/dating/dating.ts';
import { spelledAlike } from '../names/ruler-key.ts';
import type { Cell } from './cell-result.ts';
import type { Sheet, SheetRow } from '../sheets/sheet.ts';
import type { Written } from '../../catalogue/yaml.ts';
import type { Draft, UnreadCell } from '../plan/draft.ts';
import { columnKeys, readingsOf } from '../columns/column-key.ts';
import { composeTitle, plainTitle } from '../plan/compose-title.ts';
import { asAbove } from './blank.ts';
import { knownParts, readCell } from './read-cell.ts';
import { gather } from './gather.ts';
import type { Gathered, SaidBy } from './gather.ts';
import { FIELD_OF_HALF, joinHalves } from './halves.ts';
import type { Mapping, Reading, Settings } from '../columns/mapping.ts';
import { isOwnTable } from '../columns/own-table.ts';
import { isField } from '../columns/targets.ts';

/** A row that becomes no piece, and why. */
type SetAside = { readonly row: number; readonly text: string; readonly because: string };

/**
 * Every row of a sheet as a draft of a piece, or skipped with the reason. What a cell says is in a fact, a name,
 * the ledger or the list of cells that could not be read; no cell is dropped in silence (`accountFor` counts them).
 */
export function readRows(
  sheet: Sheet,
  mapping: Mapping,
  rulers: readonly RulerOfDates[] = [],
): { readonly drafts: readonly Draft[]; readonly setAside: readonly SetAside[] } {
  const keys = columnKeys(sheet);
  const readings = readingsOf(sheet, mapping);
  const setAside: SetAside[] = [...sheet.setAside];
  const drafts: Draft[] = [];
  const numbers = new Map<string, number>();
  const sectionOf = sectionsIn(sheet, mapping);
  const known = readings.map((some, at) =>
    knownParts(
      sheet.rows.map(({ cells }) => cells[at]?.text ?? ''),
      some,
    ),
  );
  const readOnce = onceForEachText(mapping, keys, readings, known);
  for (const row of isOwnTable(keys) ? sheet.rows.map(asWritten) : asAbove(sheet, keys, mapping)) {
    const skipped = skipRule(row, keys, mapping);
    if (skipped !== null) {
      setAside.push({ row: row.row, text: rowText(row), because: skipped });
      continue;
    }
    const settings = settingsOf(row, keys, mapping);
    const readAll = (ruled?: Ruled): readonly SaidBy[] => {
      const said: SaidBy[] = [];
      for (let at = 0; at < row.cells.length; at += 1)
        for (const one of readOnce(at, row.cells[at], settings, ruled)) said.push(one);
      return said;
    };
    const first = readAll();
    // What a date alone leaves open its ruler may settle, whichever column comes first.
    const ruled = first.some(isOpenDate) ? ruledBy(first, rulers) : null;
    const all = ruled === null ? first : readAll(ruled);
    const said = [...all, ...underHeading(all, sectionOf(row.row), mapping)];
    const gathered = joinHalves(row.row, gather(row.row, [...said, ...always(said, mapping)]), settings);
    const numbered = numberOf(gathered, row.row, mapping, numbers, headingOf(all));
    if (numbered === null) setAside.push({ row: row.row, text: rowText(row), because: NO_NUMBER });
    else drafts.push(draftOf(row.row, gathered, numbered, mapping));
  }
  return { drafts, setAside };
}

/**
 * Reads a cell of the column at that place. Columns repeat themselves: a text that was in its column before, read with the
 * settings of the mapping alone, is not read again.
 */
function onceForEachText(
  mapping: Mapping,
  keys: readonly string[],
  readings: readonly (readonly Reading[])[],
  known: readonly Cell['known'][],
): (at: number, cell: SheetRow['cells'][number] | undefined, settings: Settings, ruled?: Ruled) => readonly SaidBy[] {
  const columns = keys.map(() => new Map<string, readonly SaidBy[]>());
  return (at, cell, settings, ruled) => {
    if (cell === undefined || cell.text === '') return [];
    const { text, value } = cell;
    const heading = keys[at] ?? '';
    const isPlain = value === undefined && ruled === undefined && settings === mapping.settings;
    const before = isPlain ? columns[at]?.get(text) : undefined;
    if (before !== undefined) return before;
    const whole = { text, value, settings, ruled, known: known[at] };
    const read = readCell(whole, readings[at] ?? [], heading, mapping).map((said) => ({ said, heading, text }));
    if (isPlain) columns[at]?.set(text, read);
    return read;
  };
}

/** A ruler of the cabinet, as far as dates are settled by one. */
export type RulerOfDates = {
  readonly names: readonly string[];
  readonly realm?: string | undefined;
  readonly reigns: readonly Reign[];
};
type Ruled = NonNullable<Cell['ruled']>;

function isOpenDate({ said }: SaidBy): boolean {
  return said.kind === 'unread' && said.field === 'date';
}

/** What a row says of its ruler: the realm of its own column or of the one ruler so called, and when that one came to the throne. */
function ruledBy(all: readonly SaidBy[], rulers: readonly RulerOfDates[]): Ruled | null {
  const names = new Set(
    all
      .flatMap(({ said }) => (said.kind === 'name' && said.field === 'ruler' ? said.names : []))
      .map(({ name }) => spelledAlike(name)),
  );
  const found = rulers.filter((ruler) => ruler.names.some((name) => names.has(spelledAlike(name))));
  const [only] = found.length === 1 ? found : [];
  const realm = all.flatMap(({ said }) => (said.kind === 'realm' ? [said.text] : []))[0] ?? only?.realm;
  if (realm === undefined && only === undefined) return null;
  return {
    ...(realm === undefined ? {} : { realm }),
    ...(only === undefined ? {} : { accessions: only.reigns.map(({ from }) => from), reigns: only.reigns }),
  };
}

/** A row of our own table as it was before its cells were kept from being evaluated. */
function asWritten(row: SheetRow): SheetRow {
  return { ...row, cells: row.cells.map((cell) => ({ ...cell, text: unguarded(cell.text) })) };
}

const NO_NUMBER =
  'This row has no inventory number. Give it one, or write unnumbered: row under read: in the mapping to number such rows after their row.';

function rowText(row: SheetRow): string {
  return row.cells
    .map(({ text }) => text)
    .filter((text) => text !== '')
    .join(' · ');
}

type Section = { readonly row: number; readonly text: string };

/** The last heading between the rows above a row, where the mapping says that such headings state something. */
function sectionsIn({ setAside }: Sheet, { sections }: Mapping): (row: number) => Section | null {
  const headings = setAside.filter(({ isHeading }) => isHeading === true).toSorted((a, b) => b.row - a.row);
  return (row) => (sections === null ? null : (headings.find((one) => one.row < row) ?? null));
}

/** What the heading above a row states of it; a cell of the row itself goes first. */
function underHeading(all: readonly SaidBy[], section: Section | null, mapping: Mapping): readonly SaidBy[] {
  const { sections } = mapping;
  if (section === null || sections === null || statedIn(all).has(sections)) return [];
  const cell = { text: section.text, settings: mapping.settings };
  return readCell(cell, [{ kind: 'field', field: sections }], sections, mapping).map((said) => ({
    said,
    heading: `heading in row ${section.row}`,
    text: section.text,
  }));
}

/** The fields that the cells of a row state or could not be read as: a cell that was refused is not filled from elsewhere. */
function statedIn(all: readonly SaidBy[]): ReadonlySet<string> {
  return new Set(
    all.flatMap(({ said }): readonly string[] => {
      if (said.kind === 'half') return [said.of, FIELD_OF_HALF[said.of]];
      if (said.kind === 'reference') return ['references'];
      return 'field' in said ? [said.field] : [said.kind];
    }),
  );
}

/** What the keeper says of every row, for the fields of which no cell of this one says anything. */
function always(all: readonly SaidBy[], mapping: Mapping): readonly SaidBy[] {
  const stated = statedIn(all);
  return Object.entries(mapping.always).flatMap(([field, text]) => {
    if (!isField(field)) return [];
    const cell = { text, settings: mapping.settings };
    const saids = readCell(cell, [{ kind: 'field', field }], field, mapping);
    return saids
      .filter((said) => !('field' in said && stated.has(said.field)) && !stated.has(said.kind))
      .map((said) => ({ said, heading: `always ${field}`, text }));
  });
}

/** The column that gave the number. */
function headingOf(all: readonly SaidBy[]): string {
  return all.find(({ said }) => said.kind === 'fact' && said.field === 'number')?.heading ?? 'number';
}

type Numbered = { readonly number: string; readonly told: readonly UnreadCell[] };

/** The number as written; the second of the same number is distinguished by a suffix, and told of. */
function numberOf(
  gathered: Gathered,
  row: number,
  mapping: Mapping,
  taken: Map<string, number>,
  heading: string,
): Numbered | null {
  const written = gathered.facts.get('number');
  if (typeof written !== 'string') {
    if (mapping.settings.unnumbered !== 'row') return null;
    return unique(`row-${row}`, row, taken, null, heading);
  }
  return unique(written, row, taken, written, heading);
}

function unique(
  wanted: string,
  row: number,
  taken: Map<string, number>,
  text: string | null,
  heading: string,
): Numbered {
  const first = taken.get(wanted);
  if (first === undefined) {
    taken.set(wanted, row);
    return { number: wanted, told: [] };
  }
  let at = 2;
  while (taken.has(`${wanted}-${at}`)) at += 1;
  const number = `${wanted}-${at}`;
  taken.set(number, row);
  const because = `The number "${wanted}" is already in row ${first}, so this piece is numbered ${number}. Write another if you like.`;
  return { number, told: [{ row, heading, text: text ?? wanted, because, field: 'number' }] };
}

function draftOf(row: number, gathered: Gathered, { number, told }: Numbered, mapping: Mapping): Draft {
  const { facts, names, ledger, story, unread, id } = gathered;
  const kind = facts.get('kind') ?? 'unknown';
  const given = facts.get('title');
  const composed = given === undefined ? composeTitle(mapping.title, facts, names) : null;
  const title = given ?? composed ?? plainTitle(typeof kind === 'string' ? kind : '', number);
  return {
    row,
    ...(id === null ? {} : { id }),
    facts: nested(new Map([...facts, ['number', number], ['title', title], ['kind', kind]])),
    names,
    ...(composed === null ? {} : { titledBy: mapping.title }),
    story: story.join('\n\n'),
    ledger: Object.fromEntries(ledger),
    unread: [...unread, ...told],
  };
}

/** `obverse.legend` as a field inside `obverse`. */
function nested(flat: ReadonlyMap<string, Written>): Draft['facts'] {
  const whole: Record<string, Written> = {};
  for (const [path, value] of flat) {
    const [field = path, inside] = path.split('.');
    whole[field] = inside === undefined ? value : { ...insideOf(whole[field]), [inside]: value };
  }
  return whole;
}

function insideOf(held: Written | undefined): Readonly<Record<string, Written>> {
  return held === undefined || typeof held === 'string' || Array.isArray(held)
    ? {}
    : Object.fromEntries(Object.entries(held));
}

/** The reason a rule leaves a row out; null when none does. */
function skipRule(row: SheetRow, keys: readonly string[], mapping: Mapping): string | null {
  const rule = mapping.skip.find(({ column, is }) => saysIn(row, keys, column, is));
  return rule === undefined ? null : `The mapping leaves out rows where ${rule.column} is "${rule.is}".`;
}

/** What the keeper settled, for this row: with the calendar its other columns say. */
export function settingsOf(row: SheetRow, keys: readonly string[], { settings, calendars }: Mapping): Settings {
  const rule = calendars.find(({ column, is }) => saysIn(row, keys, column, is));
  if (rule === undefined) return settings;
  const { years } = rule;
  return { ...settings, calendar: years, ...(years === 'AD' || years === 'BC' || years === 'AH' ? { years } : {}) };
}

function saysIn(row: SheetRow, keys: readonly string[], column: string, is: string): boolean {
  const at = keys.indexOf(column.replace(/\s+/g, ' ').trim());
  return at !== -1 && fits(row.cells[at]?.text ?? '', is);
}

/** `*` stands for anything; capitals do not matter. */
function fits(text: string, is: string): boolean {
  const parts = is.toLowerCase().split('*');
  const pattern = parts.map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')).join('.*');
  return new RegExp(`^${pattern}$`, 's').test(text.trim().toLowerCase());
}
