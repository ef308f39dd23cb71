/**
 * A series of types as published: a tree whose leaves are what a piece can be a specimen of. Terms after Nomisma (type
 * series, type series item). A cell left blank says what the broader type says; `?` is not known, `-` does not apply.
 */
export type TypeRow = {
  readonly id: string;
  readonly broader?: string | undefined;
  readonly level?: string | undefined;
  readonly label: string;
  /** What the row itself says, by column: text, `?` or `-`. Blank cells are left out. */
  readonly says: Readonly<Record<string, string>>;
};

/** One cell as it holds for a type: what it says, and the type that says it (null: the whole series does). */
export type Said = { readonly text: string; readonly by: string | null };

export type SeriesType = {
  readonly id: string;
  readonly broader: string | null;
  readonly level: string | null;
  readonly label: string;
  /** What holds for it, inherited cells included, by column. */
  readonly says: ReadonlyMap<string, Said>;
  /** The types directly below it, in the order of the rows; none for a leaf. */
  readonly narrower: readonly string[];
};

export type SeriesFault = { readonly row: number; readonly id: string } & (
  | { readonly fault: 'twice' }
  | { readonly fault: 'no-broader'; readonly broader: string }
  | { readonly fault: 'circle'; readonly through: readonly string[] }
);

export type SeriesTree = {
  readonly types: ReadonlyMap<string, SeriesType>;
  readonly faults: readonly SeriesFault[];
};

export const NOT_KNOWN = '?';
export const NOT_APPLICABLE = '-';

/**
 * The tree of a series, each type with everything that holds for it. `shared` is what the whole series says. A row that
 * cannot be placed is told as a fault (counted from 0) and stands at the top, so that what is below it is still read.
 */
export function seriesTree(rows: readonly TypeRow[], shared: Readonly<Record<string, string>> = {}): SeriesTree {
  const faults: SeriesFault[] = [];
  const byId = new Map<string, { readonly row: TypeRow; readonly at: number }>();
  for (const [at, row] of rows.entries()) {
    if (byId.has(row.id)) faults.push({ row: at, id: row.id, fault: 'twice' });
    else byId.set(row.id, { row, at });
  }
  const broaderOf = new Map<string, string | null>();
  for (const [id, { row, at }] of byId) {
    const broader = row.broader ?? null;
    if (broader !== null && !byId.has(broader)) faults.push({ row: at, id, fault: 'no-broader', broader });
    broaderOf.set(id, broader !== null && byId.has(broader) ? broader : null);
  }
  for (const [id, { at }] of byId) {
    const through = circleFrom(id, broaderOf);
    if (through === null) continue;
    faults.push({ row: at, id, fault: 'circle', through });
    broaderOf.set(id, null);
  }
  return { types: filledIn(byId, broaderOf, shared), faults: faults.sort((a, b) => a.row - b.row) };
}

function circleFrom(id: string, broaderOf: ReadonlyMap<string, string | null>): readonly string[] | null {
  const through = [id];
  for (let above = broaderOf.get(id) ?? null; above !== null; above = broaderOf.get(above) ?? null) {
    if (above === id) return [...through, id];
    if (through.includes(above)) return null;
    through.push(above);
  }
  return null;
}

function filledIn(
  byId: ReadonlyMap<string, { readonly row: TypeRow }>,
  broaderOf: ReadonlyMap<string, string | null>,
  shared: Readonly<Record<string, string>>,
): ReadonlyMap<string, SeriesType> {
  const narrower = new Map<string, string[]>();
  for (const [id, broader] of broaderOf) {
    if (broader !== null) narrower.set(broader, [...(narrower.get(broader) ?? []), id]);
  }
  const top = new Map(Object.entries(shared).map(([column, text]): [string, Said] => [column, { text, by: null }]));
  const known = new Map<string, ReadonlyMap<string, Said>>();
  const saysOf = (id: string): ReadonlyMap<string, Said> => {
    const before = known.get(id);
    if (before !== undefined) return before;
    const broader = broaderOf.get(id) ?? null;
    const says = new Map(broader === null ? top : saysOf(broader));
    for (const [column, text] of Object.entries(byId.get(id)?.row.says ?? {})) says.set(column, { text, by: id });
    known.set(id, says);
    return says;
  };
  return new Map(
    [...byId].map(([id, { row }]) => [
      id,
      {
        id,
        broader: broaderOf.get(id) ?? null,
        level: row.level ?? null,
        label: row.label,
        says: saysOf(id),
        narrower: narrower.get(id) ?? [],
      },
    ]),
  );
}

/** A type and everything above it, the nearest first. */
export function lineOf(types: ReadonlyMap<string, SeriesType>, id: string): readonly SeriesType[] {
  const line: SeriesType[] = [];
  for (let type = types.get(id); type !== undefined; type = type.broader === null ? undefined : types.get(type.broader))
    line.push(type);
  return line;
}

/** The leaves at or below a type: what a piece known only to that type may be. */
export function leavesBelow(types: ReadonlyMap<string, SeriesType>, id: string): readonly string[] {
  const type = types.get(id);
  if (type === undefined) return [];
  return type.narrower.length === 0 ? [id] : type.narrower.flatMap((below) => leavesBelow(types, below));
}

/** The type at this level that a type is or lies under; null when it is broader than that, and may be any of several. */
export function atLevel(types: ReadonlyMap<string, SeriesType>, id: string, level: string): string | null {
  return lineOf(types, id).find((type) => type.level === level)?.id ?? null;
}
