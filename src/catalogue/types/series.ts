import type { Reign } from '../../core/dating/dating.ts';
import type { DiePair } from '../../core/dies/links.ts';
import type { DieStateRow } from '../../core/dies/states.ts';
import type { CitedWork } from '../../core/references/reference.ts';
import type { Character } from '../../core/types/key/character.ts';
import { parseShown } from '../../core/types/key/character.ts';
import type { Shown } from '../../core/types/key/character.ts';
import { lineOf, seriesTree } from '../../core/types/series.ts';
import type { SeriesType } from '../../core/types/series.ts';
import { characterOf, typeIdProblem } from '../schema/series.ts';
import type { FiledSeries } from '../records.ts';
import { concordanceIn, pairsIn, specimensIn, statesIn } from './read-lines.ts';
import type { ConcordanceLine, SpecimenLine } from './read-lines.ts';
import { raritiesIn } from './read-rarities.ts';
import type { PublishedRarity } from './read-rarities.ts';
import { rowOf, rowsIn, slipAt, wanted } from './read-tables.ts';
import type { Found, SeriesSlip } from './read-tables.ts';
import { SERIES_TABLES, TABLE_NAMES } from './series-tables.ts';
import { drawingsOf } from './drawings.ts';
import type { Drawing } from './read-drawing.ts';
import { factColumn, factReader, factsOf } from './type-facts.ts';
import type { TypeFacts } from './type-facts.ts';

/** A series, read: its types with what holds for each, and what is known of their pieces, numbers and dies. */
export type TypeSeries = FiledSeries & {
  readonly characters: readonly Character[];
  readonly types: ReadonlyMap<string, SeriesType>;
  readonly facts: ReadonlyMap<string, TypeFacts>;
  /** What the leaves show, in the order of the characters, by the id of the type. */
  readonly shown: ReadonlyMap<string, readonly Shown[]>;
  readonly rarities: ReadonlyMap<string, readonly PublishedRarity[]>;
  readonly numbers: readonly ConcordanceLine[];
  readonly specimens: readonly SpecimenLine[];
  readonly pairs: readonly DiePair[];
  readonly dieStates: readonly DieStateRow[];
  /** The drawings of its marks that can be read, by the names of their files. */
  readonly drawings: ReadonlyMap<string, Drawing>;
};

/** Reads what is in the tables of a series; everything that cannot be read is a slip, and the rest is kept. */
export function readSeries(
  series: FiledSeries,
  works: readonly CitedWork[],
  reigns: readonly Reign[],
): { readonly series: TypeSeries; readonly slips: readonly SeriesSlip[] } {
  const found: Found = { slips: [], series };
  const characters = series.fields.characters.map(characterOf);
  const types = typesIn(found);
  const columns = new Set(characters.map(({ id }) => id.toLowerCase()));
  const read = factReader(reigns);
  const facts = new Map<string, TypeFacts>();
  const told = new Set<string>();
  for (const type of types.values()) {
    const held = factsOf(type, columns, read);
    facts.set(type.id, held.facts);
    for (const cell of held.unread) {
      const key = `${cell.type ?? ''} ${cell.column}`;
      if (!told.has(key)) slipAt(found, 'types', rowOf(found, 'types', cell.type), cell.column, cell.says);
      told.add(key);
    }
  }
  orderSlips(found, types);
  for (const id of series.fields.outside)
    if (!types.has(id))
      slip(found, 'outside', `There is no type ${id} in this series. Write the id of a row of types.csv.`);
  characterSlips(found, characters);
  const known = (id: string): boolean => types.has(id);
  return {
    series: {
      ...series,
      characters,
      types,
      facts,
      shown: shownBy(found, types, characters),
      rarities: raritiesIn(found, known),
      numbers: concordanceIn(found, known, works),
      specimens: specimensIn(found, known),
      pairs: pairsIn(found, known),
      dieStates: statesIn(found),
      drawings: drawingsOf(series),
    },
    slips: found.slips,
  };
}

function typesIn(found: Found): ReadonlyMap<string, SeriesType> {
  const { levels, shared } = found.series.fields;
  const own = new Set(['id', 'broader', 'level', 'label']);
  const rows = rowsIn(found, 'types').flatMap((row) => {
    const id = wanted(found, 'types', row, 'id');
    if (id === null) return [];
    const says = typeIdProblem(id);
    if (says !== null) slipAt(found, 'types', row, 'id', says);
    const level = row.cells['level'];
    if (level !== undefined && !levels.includes(level))
      slipAt(
        found,
        'types',
        row,
        'level',
        `series.yaml has no level "${level}". Write one of ${levels.join(', ') || 'those under levels:, which is empty'}.`,
      );
    const cells = Object.fromEntries(Object.entries(row.cells).filter(([column]) => !own.has(column)));
    return [{ row, type: { id, broader: row.cells['broader'], level, label: row.cells['label'] ?? id, says: cells } }];
  });
  const fields = Object.fromEntries(Object.entries(shared).map(([column, text]) => [column.toLowerCase(), text]));
  const { types, faults } = seriesTree(
    rows.map(({ type }) => type),
    fields,
  );
  for (const fault of faults) {
    const row = rows[fault.row]?.row ?? null;
    if (fault.fault === 'twice')
      slipAt(found, 'types', row, 'id', `The type ${fault.id} stands here twice. Give the second an id of its own.`);
    else if (fault.fault === 'no-broader')
      slipAt(
        found,
        'types',
        row,
        'broader',
        `There is no type ${fault.broader} in this series. Add it, or leave broader empty.`,
      );
    else
      slipAt(
        found,
        'types',
        row,
        'broader',
        `${someOf(fault.through).join(' is under ')}: a circle. Take one of the broader types out.`,
      );
  }
  return types;
}

/** Of a long list, its first and last names. */
function someOf(names: readonly string[]): readonly string[] {
  return names.length <= 8 ? names : [...names.slice(0, 5), '…', ...names.slice(-2)];
}

/** More types above one another than any book has. */
const MOST_ABOVE = 20;

/** Each type is on a level below that of what it is under, and a table that is also in a file of its own is read from there alone. */
function orderSlips(found: Found, types: ReadonlyMap<string, SeriesType>): void {
  const { fields, tables, file } = found.series;
  for (const name of TABLE_NAMES)
    if (fields[name] !== undefined && tables[name]?.file !== file)
      slipAt(found, name, null, name, `These rows are in ${name}.csv as well, and only that file is read. Move them there, and take them out here.`); // prettier-ignore
  for (const { id, level, broader } of types.values()) {
    if (broader === null) continue;
    const above = lineOf(types, broader);
    if (above.length === MOST_ABOVE)
      slipAt(found, 'types', rowOf(found, 'types', id), 'broader', `${id} is under ${String(MOST_ABOVE)} types, one above the other. Leave some of them out.`); // prettier-ignore
    const over = above.find((one) => one.level !== null);
    if (level === null || over === undefined || over.level === null) continue;
    if (fields.levels.indexOf(level) <= fields.levels.indexOf(over.level))
      slipAt(found, 'types', rowOf(found, 'types', id), 'level', `${id} is a ${level} under ${over.id}, which is a ${over.level}; series.yaml has the levels ${fields.levels.join(', ')}, from the broadest. Correct one of the two, or leave level empty.`); // prettier-ignore
  }
}

function slip({ slips }: Found, column: string, says: string): void {
  slips.push({ table: 'series', line: 1, column, says });
}

/** A character has a column of its own in types.csv, so it cannot be called what another column there is. */
function characterSlips(found: Found, characters: readonly Character[]): void {
  if (characters.length !== new Set(characters.map(({ id }) => id.toLowerCase())).size)
    slip(found, 'characters', 'Two characters have the same id. Give each its own.');
  for (const { id } of characters) {
    const column = id.toLowerCase();
    const isFact = factColumn(column) !== null && !column.endsWith(' legend');
    if (isFact || (SERIES_TABLES.types as readonly string[]).includes(column))
      slip(found, 'characters', `A character cannot be called ${id}: types.csv has that column for ${isFact ? 'a fact of the pieces' : 'the types themselves'}. Give it another id, like ${id} seen.`); // prettier-ignore
  }
}

/** What each leaf shows of each character; only leaves are asked about. */
function shownBy(
  found: Found,
  types: ReadonlyMap<string, SeriesType>,
  characters: readonly Character[],
): ReadonlyMap<string, readonly Shown[]> {
  const known = new Map<string, Shown>();
  const told = new Set<string>();
  const read = (type: SeriesType, character: Character): Shown => {
    const cell = type.says.get(character.id.toLowerCase());
    if (cell === undefined) return { shows: 'unknown' };
    const key = `${character.id}\n${cell.text}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const shown = parseShown(cell.text, character);
    if (!shown.ok && !told.has(key))
      slipAt(found, 'types', rowOf(found, 'types', cell.by), character.id, shown.problem);
    told.add(key);
    const value: Shown = shown.ok ? shown.value : { shows: 'unknown' };
    known.set(key, value);
    return value;
  };
  const leaves = [...types.values()].filter(({ narrower }) => narrower.length === 0);
  return new Map(leaves.map((type) => [type.id, characters.map((character) => read(type, character))]));
}
