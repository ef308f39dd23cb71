/** Parts in falling order of importance; two weights compare by the first part in which they differ. All of one length. */
export type Weight = readonly number[];

/** A column a row may take, and what taking it is worth. */
export type Edge = { readonly column: number; readonly weight: Weight };

/** The column of each row, null for none. */
export type Matching = readonly (number | null)[];

/**
 * The heaviest matching of rows to columns: each row takes one column or none, each column goes to one row at most, and the sum
 * of weights, compared part by part, is the greatest there is.
 */
export function heaviestMatching(rows: readonly (readonly Edge[])[], columns: number, parts: number): Matching {
  let heaviest: Matching = [];
  for (const matching of growingMatching(rows, columns, parts)) heaviest = matching;
  return heaviest;
}

/**
 * The heaviest matching of the first row alone, then of the first two, and so on to all of them.
 *
 * Each row comes in along the shortest augmenting path, under prices that keep every earlier choice the best
 * (H. W. Kuhn, “The Hungarian method”, 1955; R. Jonker and A. Volgenant, *Computing* 38, 1987). To stay empty is a column
 * of the row's own, worth nothing. Sums of whole numbers are exact up to 2^53. Only what hangs together with a row is looked at.
 */
export function* growingMatching(
  rows: readonly (readonly Edge[])[],
  columns: number,
  parts: number,
): Generator<Matching> {
  const zero: Weight = Array.from({ length: parts }, () => 0);
  const rowPrice = rows.map(() => zero);
  const columnPrice = new Map<number, Weight>();
  const owner = new Map<number, number>();
  const taken = rows.map((): number | null => null);
  const edges = rows.map((row, at): readonly Edge[] => [...row, { column: columns + at, weight: zero }]);

  for (const start of rows.keys()) {
    const cameFrom = new Map<number, number>();
    const frontier = new Map<number, Weight>();
    const settled = new Map<number, Weight>();
    let row: number | undefined = start;
    let column = columns + start;
    let cost = zero;
    while (row !== undefined) {
      const base = minus(cost, rowPrice[row] ?? zero);
      for (const edge of edges[row] ?? []) {
        if (settled.has(edge.column)) continue;
        const through = minus(minus(base, edge.weight), columnPrice.get(edge.column) ?? zero);
        const known = frontier.get(edge.column);
        if (known !== undefined && compare(through, known) >= 0) continue;
        frontier.set(edge.column, through);
        cameFrom.set(edge.column, row);
      }
      [column, cost] = nearest(frontier);
      frontier.delete(column);
      settled.set(column, cost);
      row = owner.get(column);
    }
    rowPrice[start] = plus(rowPrice[start] ?? zero, cost);
    for (const [passed, at] of settled) {
      const held = owner.get(passed);
      if (held === undefined) continue;
      const slack = minus(cost, at);
      rowPrice[held] = plus(rowPrice[held] ?? zero, slack);
      columnPrice.set(passed, minus(columnPrice.get(passed) ?? zero, slack));
    }
    for (let next: number | null = column; next !== null;) {
      const from: number = cameFrom.get(next) ?? start;
      const given: number | null = taken[from] ?? null;
      owner.set(next, from);
      taken[from] = next;
      next = from === start ? null : given;
    }
    yield taken.map((held) => (held === null || held >= columns ? null : held));
  }
}

/** The cheapest column within reach, and of equals the last: to stay empty ends the search. A row's own is always within reach. */
function nearest(frontier: ReadonlyMap<number, Weight>): [column: number, cost: Weight] {
  let best: [number, Weight] | null = null;
  for (const [column, cost] of frontier) {
    const order = best === null ? -1 : compare(cost, best[1]);
    if (best === null || order < 0 || (order === 0 && column > best[0])) best = [column, cost];
  }
  return best ?? [-1, []];
}

export function compare(a: Weight, b: Weight): number {
  for (let at = 0; at < a.length; at++) {
    const difference = (a[at] ?? 0) - (b[at] ?? 0);
    if (difference !== 0) return difference;
  }
  return 0;
}

export function plus(a: Weight, b: Weight): Weight {
  const sum: number[] = [];
  for (let at = 0; at < a.length; at++) sum.push((a[at] ?? 0) + (b[at] ?? 0));
  return sum;
}

function minus(a: Weight, b: Weight): Weight {
  const difference: number[] = [];
  for (let at = 0; at < a.length; at++) difference.push((a[at] ?? 0) - (b[at] ?? 0));
  return difference;
}
