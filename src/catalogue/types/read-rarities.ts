import { parseRarity } from '../../core/rarity/parse-rarity.ts';
import type { Rarity } from '../../core/rarity/rarity.ts';
import { RARITY_SCALES, rarityScale } from '../../core/rarity/scales.ts';
import { NOT_APPLICABLE, NOT_KNOWN } from '../../core/types/series.ts';
import { rowsIn, slipAt, typeIn } from './read-tables.ts';
import type { Found } from './read-tables.ts';
import type { SeriesRow } from './series-tables.ts';

/** A rarity as one source gave it. `rarity` is null on a scale whose classes are not known here: it is shown as printed. */
export type PublishedRarity = {
  readonly printed: string;
  readonly scale: string;
  readonly rarity: Rarity | null;
  readonly source: string | null;
  readonly date: string | null;
};

/** Every rarity published of each type: that of its row in types.csv, and the rows of rarities.csv. Never summed. */
export function raritiesIn(
  found: Found,
  isKnown: (id: string) => boolean,
): ReadonlyMap<string, readonly PublishedRarity[]> {
  const rarities = new Map<string, PublishedRarity[]>();
  const add = (type: string, rarity: PublishedRarity | null): void => {
    if (rarity !== null) rarities.set(type, [...(rarities.get(type) ?? []), rarity]);
  };
  for (const row of rowsIn(found, 'types')) {
    const { id = '', rarity, 'rarity scale': scale, 'rarity source': source, 'rarity date': date } = row.cells;
    add(id, publishedIn(found, 'types', row, { rarity, scale, source, date }));
  }
  for (const row of rowsIn(found, 'rarities')) {
    const type = typeIn(found, 'rarities', row, isKnown);
    if (type === null) continue;
    const { rarity, scale, source, date } = row.cells;
    if (rarity === undefined)
      slipAt(found, 'rarities', row, 'rarity', 'This row has no rarity. Write it as printed, or take the row out.');
    add(type, publishedIn(found, 'rarities', row, { rarity, scale, source, date }));
  }
  return rarities;
}

/** Those on a scale whose classes are known here. */
export function raritiesKnown(published: readonly PublishedRarity[] = []): readonly Rarity[] {
  return published.flatMap(({ rarity }) => rarity ?? []);
}

type Cells = Readonly<Record<'rarity' | 'scale' | 'source' | 'date', string | undefined>>;

function publishedIn(
  found: Found,
  table: 'types' | 'rarities',
  row: SeriesRow,
  { rarity: printed, scale, ...cells }: Cells,
): PublishedRarity | null {
  const [source, date] = [cells.source ?? null, cells.date ?? null];
  if (printed === undefined || printed === NOT_KNOWN || printed === NOT_APPLICABLE) return null;
  const column = (name: string): string => (table === 'types' && name !== 'rarity' ? `rarity ${name}` : name);
  if (scale !== undefined && rarityScale(scale) === null) {
    // A scale in words is that of a book; one like an id of ours is a slip of the pen.
    if (/[\p{Lu}\s]/u.test(scale)) return { printed, scale, rarity: null, source, date };
    const ids = RARITY_SCALES.map(({ id }) => id).join(', ');
    slipAt(found, table, row, column('scale'), `No rarity scale is called "${scale}" here. Write one of ${ids}, or the scale in the words of the book, like RIC IV.`); // prettier-ignore
    return null;
  }
  const read = parseRarity(printed, scale);
  if (read.ok)
    return { printed: read.value.class, scale: rarityScale(read.value.scale)?.title ?? '', rarity: read.value, source, date };
  slipAt(found, table, row, 'rarity', scale === undefined ? `${read.problem} Or write the scale in the words of the book in the column ${column('scale')}.` : read.problem); // prettier-ignore
  return null;
} // prettier-ignore
