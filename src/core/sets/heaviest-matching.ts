/** Parts in falling order of importance; two weights compare by the first part in which they differ. All of one length. */
export type Weight = readonly number[];

/** A column a row may take, and what taking it is worth. */
export type Edge = { readonly column: number; readonly weight: Weight };

/**
 * The heaviest matching of rows to columns: each row takes one column or none, each column goes to one row at most, and the sum
 * of weights, compared part by part, is the greatest there is. Answers the column of each row, null for none.
 *
 * Rows come in one at a time, each along the shortest augmenting path under prices that keep every earlier choice the best
 * (H. W. Kuhn, “The Hungarian method”, 1955; R. Jonker and A. Volgenant, *Computing* 38, 1987). To stay empty is a column
 * of the row's own, worth nothing. Sums of whole numbers are exact up to 2^53. Only what hangs together with a row is looked at.
 */
export function heaviestMatching(
  rows: readonly (readonly Edge[])[],
  columns: number,
  parts: number,
): readonly (number | null)[] {
  const zero: Weight = Array.from({ length: parts }, () => 0);
  const rowPrice = rows.map(() => zero);
  const columnPrice = new Map<number, Weight>();
  const owner = new Map<number, number>();
  const taken = rows.map((): number | null => null);
  const edgesOf = (row: number): readonly Edge[] => [...(rows[row] ?? []), { column: columns + row, weight: zero }];

  for (const start of rows.keys()) {
    const reached = new Map<number, { cost: Weight; from: number }>();
    const settled = new Map<number, Weight>();
    let row = start;
    let cost = zero;
    let end: number | undefined;
    while (end === undefined) {
      const base = minus(cost, rowPrice[row] ?? zero);
      for (const { column, weight } of edgesOf(row)) {
        if (settled.has(column)) continue;
        const through = minus(base, plus(weight, columnPrice.get(column) ?? zero));
        const known = reached.get(column);
        if (known === undefined || compare(through, known.cost) < 0) reached.set(column, { cost: through, from: row });
      }
      const next = nearest(reached, settled);
      cost = next.cost;
      settled.set(next.column, cost);
      const next_ = owner.get(next.column);
      if (next_ === undefined) end = next.column;
      else row = next_;
    }
    rowPrice[start] = plus(rowPrice[start] ?? zero, cost);
    for (const [column, at] of settled) {
      const held = owner.get(column);
      if (held === undefined) continue;
      const slack = minus(cost, at);
      rowPrice[held] = plus(rowPrice[held] ?? zero, slack);
      columnPrice.set(column, minus(columnPrice.get(column) ?? zero, slack));
    }
    for (let column: number | null = end; column !== null;) {
      const from: number = reached.get(column)?.from ?? start;
      const given: number | null = taken[from] ?? null;
      owner.set(column, from);
      taken[from] = column;
      column = from === start ? null : given;
    }
  }
  return taken.map((column) => (column === null || column >= columns ? null : column));
}

function nearest(
  reached: ReadonlyMap<number, { cost: Weight }>,
  settled: ReadonlyMap<number, Weight>,
): { column: number; cost: Weight } {
  let best: { column: number; cost: Weight } | null = null;
  for (const [column, { cost }] of reached) {
    if (settled.has(column)) continue;
    const order = best === null ? -1 : compare(cost, best.cost);
    if (best === null || order < 0 || (order === 0 && column < best.column)) best = { column, cost };
  }
  // A row's own empty column is always within reach, so that there is always a nearest one.
  return best ?? { column: -1, cost: [] };
}

export function compare(a: Weight, b: Weight): number {
  for (const [at, part] of a.entries()) {
    const difference = part - (b[at] ?? 0);
    if (difference !== 0) return difference;
  }
  return 0;
}

export function plus(a: Weight, b: Weight): Weight {
  return a.map((part, at) => part + (b[at] ?? 0));
}

function minus(a: Weight, b: Weight): Weight {
  return a.map((part, at) => part - (b[at] ?? 0));
}
