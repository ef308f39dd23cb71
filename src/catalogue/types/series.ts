import type { Reign } from '../../core/dating/dating.ts';
import type { DiePair } from '../../core/dies/links.ts';
import type { DieStateRow } from '../../core/dies/states.ts';
import { parseRarity } from '../../core/rarity/parse-rarity.ts';
import type { Rarity } from '../../core/rarity/rarity.ts';
import type { CitedWork } from '../../core/references/reference.ts';
import type { Character } from '../../core/types/key/character.ts';
import { parseShown } from '../../core/types/key/character.ts';
import type { Shown } from '../../core/types/key/character.ts';
import { NOT_APPLICABLE, NOT_KNOWN, seriesTree } from '../../core/types/series.ts';
import type { SeriesType } from '../../core/types/series.ts';
import { characterOf, typeIdProblem } from '../schema/series.ts';
import type { FiledSeries } from '../records.ts';
import { concordanceIn, pairsIn, specimensIn, statesIn } from './read-lines.ts';
import type { ConcordanceLine, SpecimenLine } from './read-lines.ts';
import { rowOf, rowsIn, slipAt, wanted } from './slips.ts';
import type { Found, SeriesSlip } from './slips.ts';
import { factReader, factsOf } from './type-facts.ts';
import type { TypeFacts } from './type-facts.ts';

/** A rarity as one source gave it. */
export type PublishedRarity = { readonly rarity: Rarity; readonly source: string | null; readonly date: string | null };

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
};

/** Reads what stands in the tables of a series; everything that cannot be read is a slip, and the rest is kept. */
export function readSeries(
  series: FiledSeries,
  works: readonly CitedWork[],
  reigns: readonly Reign[],
): { readonly series: TypeSeries; readonly slips: readonly SeriesSlip[] } {
  const found: Found = { slips: [], series };
  const characters = series.fields.characters.map(characterOf);
  const types = typesIn(found, characters);
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
  const known = (id: string): boolean => types.has(id);
  return {
    series: {
      ...series,
      characters,
      types,
      facts,
      shown: shownBy(found, types, characters),
      rarities: raritiesIn(found),
      numbers: concordanceIn(found, known, works),
      specimens: specimensIn(found, known),
      pairs: pairsIn(found, known),
      dieStates: statesIn(found),
    },
    slips: found.slips,
  };
}

function typesIn(found: Found, characters: readonly Character[]): ReadonlyMap<string, SeriesType> {
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
        `${fault.through.join(' is under ')}: a circle. Take one of the broader types out.`,
      );
  }
  if (characters.length !== new Set(characters.map(({ id }) => id.toLowerCase())).size)
    found.slips.push({
      table: 'series',
      line: 1,
      column: 'characters',
      says: 'Two characters have the same id. Give each its own.',
    });
  return types;
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

function raritiesIn(found: Found): ReadonlyMap<string, readonly PublishedRarity[]> {
  const rarities = new Map<string, PublishedRarity[]>();
  for (const row of rowsIn(found, 'types')) {
    const text = row.cells['rarity'];
    if (text === undefined || text === NOT_KNOWN || text === NOT_APPLICABLE) continue;
    const read = parseRarity(text, row.cells['rarity scale']);
    if (!read.ok) slipAt(found, 'types', row, 'rarity', read.problem);
    else
      rarities.set(row.cells['id'] ?? '', [
        { rarity: read.value, source: row.cells['rarity source'] ?? null, date: row.cells['rarity date'] ?? null },
      ]);
  }
  return rarities;
}
