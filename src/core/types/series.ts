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
  const rowOf = (id: string): number => byId.get(id)?.at ?? 0;
  for (const circle of circlesIn(broaderOf)) {
    const first = circle.reduce((least, id) => (rowOf(id) < rowOf(least) ? id : least));
    const at = circle.indexOf(first);
    faults.push({
      row: rowOf(first),
      id: first,
      fault: 'circle',
      through: [...circle.slice(at), ...circle.slice(0, at), first],
    });
    broaderOf.set(first, null);
  }
  return { types: filledIn(byId, broaderOf, shared), faults: faults.sort((a, b) => a.row - b.row) };
}

/** Types that are under one another in a circle, each circle once; every type is walked over once. */
function circlesIn(broaderOf: ReadonlyMap<string, string | null>): readonly (readonly string[])[] {
  const circles: (readonly string[])[] = [];
  const walkFrom = new Map<string, string>();
  for (const start of broaderOf.keys()) {
    const way: string[] = [];
    let id: string | null = start;
    while (id !== null && !walkFrom.has(id)) {
      walkFrom.set(id, start);
      way.push(id);
      id = broaderOf.get(id) ?? null;
    }
    if (id !== null && walkFrom.get(id) === start) circles.push(way.slice(way.indexOf(id)));
  }
  return circles;
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
    const line: string[] = [];
    for (let one: string | null = id; one !== null && !known.has(one); one = broaderOf.get(one) ?? null) line.push(one);
    for (const one of line.reverse()) {
      const says = new Map(known.get(broaderOf.get(one) ?? '') ?? top);
      for (const [column, text] of Object.entries(byId.get(one)?.row.says ?? {})) says.set(column, { text, by: one });
      known.set(one, says);
    }
    return known.get(id) ?? top;
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
