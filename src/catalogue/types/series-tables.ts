/** The tables of a series and their columns; the first is wanted in each row. `types` takes facts and characters besides. */
export const SERIES_TABLES = {
  types: ['id', 'broader', 'level', 'label', 'rarity', 'rarity scale', 'rarity source', 'rarity date', 'note'],
  concordance: ['type', 'relation', 'reference', 'sure', 'source', 'date'],
  rarities: ['type', 'rarity', 'scale', 'source', 'date'],
  specimens: ['type', 'specimen', 'grade', 'grade scale', 'problem', 'source', 'date', 'same as'],
  dies: ['obverse', 'reverse', 'type', 'mint', 'coins', 'source'],
  'die-states': ['die', 'state', 'after', 'sign'],
} as const;
export type SeriesTable = keyof typeof SERIES_TABLES;
export const TABLE_NAMES = Object.keys(SERIES_TABLES) as readonly SeriesTable[];

export function isTableFile(name: string): boolean {
  return TABLE_NAMES.some((table) => name === `${table}.csv`);
}

/** A file that may hold the drawing of a mark. */
export function isDrawingFile(name: string): boolean {
  return /^[a-z0-9]+(-[a-z0-9]+)*\.svg$/.test(name);
}

/** A row as written: its line in the file, and its cells by column, small letters; blank cells are left out. */
export type SeriesRow = { readonly line: number; readonly cells: Readonly<Record<string, string>> };
export type SeriesRows = {
  readonly file: string;
  readonly columns: readonly string[];
  readonly rows: readonly SeriesRow[];
};
