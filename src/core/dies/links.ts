/**
 * A pair of dies and what was struck from it. `types`: what the pair is used for, as the rows say it; `coins`: how many
 * are recorded, null where nobody counted them.
 */
export type DiePair = {
  readonly obverse: string;
  readonly reverse: string;
  readonly types: readonly string[];
  readonly coins: number | null;
};

/** Types that were struck together, being of one pair of dies or joined by pairs of several, with all pairs of theirs. */
export type Issue = { readonly types: readonly string[]; readonly pairs: readonly DiePair[] };

export type Side = 'obverse' | 'reverse';
export type Die = { readonly side: Side; readonly die: string };

/** Dies that hang together through pairs that share one, with the pairs that hold them. */
export type LinkedGroup = {
  readonly obverses: readonly string[];
  readonly reverses: readonly string[];
  readonly pairs: readonly DiePair[];
  readonly types: readonly string[];
  /** Null where a pair was not counted. */
  readonly coins: number | null;
  /** The dies without which the group would fall apart into pieces that share no die. */
  readonly joints: readonly Die[];
};

/** Dies used for more than one type: what links the types. */
export type TypeLink = Die & { readonly types: readonly string[] };

type Graph = ReadonlyMap<string, ReadonlySet<string>>;

const NAMED = /^(obverse|reverse) (.*)$/su;

function nameOf(side: Side, die: string): string {
  return `${side} ${die}`;
}

function dieOf(name: string): Die {
  const [, side, die = ''] = NAMED.exec(name) ?? [];
  return { side: side === 'reverse' ? 'reverse' : 'obverse', die };
}

/** The pairs as a bipartite graph: a line from each obverse die to each reverse die it was used with. */
function graphOf(pairs: readonly DiePair[]): Graph {
  const graph = new Map<string, Set<string>>();
  const line = (from: string, to: string): void => {
    const known = graph.get(from);
    if (known === undefined) graph.set(from, new Set([to]));
    else known.add(to);
  };
  for (const { obverse, reverse } of pairs) {
    line(nameOf('obverse', obverse), nameOf('reverse', reverse));
    line(nameOf('reverse', reverse), nameOf('obverse', obverse));
  }
  return graph;
}

/** The groups of linked dies, in the order of the pairs. Rows that name a pair again are one pair. */
export function linkedGroups(rows: readonly DiePair[]): readonly LinkedGroup[] {
  const pairs = pairsOf(rows);
  const graph = graphOf(pairs);
  const group = new Map<string, number>();
  let groups = 0;
  for (const start of graph.keys()) {
    if (group.has(start)) continue;
    const reached = [start];
    group.set(start, groups);
    for (const die of reached) {
      for (const next of graph.get(die) ?? []) {
        if (group.has(next)) continue;
        group.set(next, groups);
        reached.push(next);
      }
    }
    groups += 1;
  }
  const joints = jointsOf(graph);
  const held: DiePair[][] = Array.from({ length: groups }, () => []);
  for (const pair of pairs) held[group.get(nameOf('obverse', pair.obverse)) ?? 0]?.push(pair);
  return held.map((inGroup, at) => ({
    obverses: [...new Set(inGroup.map(({ obverse }) => obverse))],
    reverses: [...new Set(inGroup.map(({ reverse }) => reverse))],
    pairs: inGroup,
    types: [...new Set(inGroup.flatMap(({ types }) => types))],
    coins: sumOf(inGroup.map(({ coins }) => coins)),
    joints: joints.filter(({ side, die }) => group.get(nameOf(side, die)) === at),
  }));
}

/** The pairs by issue, in the order of the rows: a pair of two types joins them; a pair of no type is of none. */
export function issuesOf(rows: readonly DiePair[]): readonly Issue[] {
  let issues: readonly Issue[] = [];
  for (const pair of pairsOf(rows)) {
    if (pair.types.length === 0) continue;
    const joined = issues.filter(({ types }) => types.some((type) => pair.types.includes(type)));
    const one = {
      types: [...new Set([...joined.flatMap(({ types }) => types), ...pair.types])],
      pairs: [...joined.flatMap(({ pairs }) => pairs), pair],
    };
    const [first] = joined;
    issues =
      first === undefined
        ? [...issues, one]
        : issues.flatMap((issue) => (issue === first ? [one] : joined.includes(issue) ? [] : [issue]));
  }
  return issues;
}

/** Every pair once: its types together, its coins added. */
export function pairsOf(rows: readonly DiePair[]): readonly DiePair[] {
  const pairs = new Map<string, DiePair>();
  for (const row of rows) {
    const key = JSON.stringify([row.obverse, row.reverse]);
    const known = pairs.get(key);
    pairs.set(
      key,
      known === undefined
        ? row
        : { ...known, types: [...new Set([...known.types, ...row.types])], coins: sumOf([known.coins, row.coins]) },
    );
  }
  return [...pairs.values()];
}

function sumOf(counts: readonly (number | null)[]): number | null {
  return counts.reduce((sum, count) => (sum === null || count === null ? null : sum + count), 0);
}

/**
 * Dies whose loss would break their group into parts that still hold pairs: the cut vertices (Hopcroft and Tarjan) of
 * what is left when every die that was used with one partner only is left out.
 */
function jointsOf(whole: Graph): readonly Die[] {
  const partnersOf = (die: string): readonly string[] =>
    [...(whole.get(die) ?? [])].filter((other) => (whole.get(other)?.size ?? 0) > 1);
  const order = new Map<string, number>();
  const low = new Map<string, number>();
  const joints = new Set<string>();
  for (const root of whole.keys()) {
    if (order.has(root) || (whole.get(root)?.size ?? 0) < 2) continue;
    // A walk without recursion: a long chain of dies must not exhaust the stack.
    const path: { die: string; from: string | null; partners: readonly string[]; next: number }[] = [];
    const enter = (die: string, from: string | null): void => {
      low.set(die, order.size);
      order.set(die, order.size);
      path.push({ die, from, partners: partnersOf(die), next: 0 });
    };
    enter(root, null);
    let ofRoot = 0;
    for (let here = path.at(-1); here !== undefined; here = path.at(-1)) {
      const next = here.partners[here.next];
      here.next += 1;
      if (next !== undefined) {
        if (!order.has(next)) enter(next, here.die);
        else if (next !== here.from) lower(low, here.die, order.get(next) ?? 0);
        continue;
      }
      path.pop();
      if (here.from === null) continue;
      lower(low, here.from, low.get(here.die) ?? 0);
      if (here.from === root) ofRoot += 1;
      else if ((low.get(here.die) ?? 0) >= (order.get(here.from) ?? 0)) joints.add(here.from);
    }
    if (ofRoot > 1) joints.add(root);
  }
  return [...joints].map(dieOf);
}

function lower(low: Map<string, number>, die: string, to: number): void {
  low.set(die, Math.min(low.get(die) ?? to, to));
}

/** The shortest chain of dies from one to another, both included, each paired with the next; null when nothing links them. */
export function chainBetween(rows: readonly DiePair[], from: Die, to: Die): readonly Die[] | null {
  const graph = graphOf(rows);
  const start = nameOf(from.side, from.die);
  const goal = nameOf(to.side, to.die);
  if (!graph.has(start) || !graph.has(goal)) return null;
  const cameFrom = new Map<string, string | null>([[start, null]]);
  for (const die of cameFrom.keys()) {
    if (die === goal) break;
    for (const next of graph.get(die) ?? []) if (!cameFrom.has(next)) cameFrom.set(next, die);
  }
  if (!cameFrom.has(goal)) return null;
  const chain: string[] = [];
  for (let die: string | null = goal; die !== null; die = cameFrom.get(die) ?? null) chain.unshift(die);
  return chain.map(dieOf);
}

/** The dies that were used for several types. */
export function typeLinks(rows: readonly DiePair[]): readonly TypeLink[] {
  const types = new Map<string, Set<string>>();
  for (const row of rows) {
    for (const name of [nameOf('obverse', row.obverse), nameOf('reverse', row.reverse)]) {
      const known = types.get(name) ?? new Set<string>();
      for (const type of row.types) known.add(type);
      types.set(name, known);
    }
  }
  return [...types].filter(([, used]) => used.size > 1).map(([name, used]) => ({ ...dieOf(name), types: [...used] }));
}

/** How many coins each die of a side is known from: what an estimate needs. Null where a pair was not counted. */
export function dieCounts(
  rows: readonly DiePair[],
  side: Side,
): { n: number; d: number; d1: number; d2: number } | null {
  const counts = new Map<string, number>();
  for (const pair of pairsOf(rows)) {
    if (pair.coins === null) return null;
    counts.set(pair[side], (counts.get(pair[side]) ?? 0) + pair.coins);
  }
  const each = [...counts.values()].filter((count) => count > 0);
  return {
    n: each.reduce((sum, count) => sum + count, 0),
    d: each.length,
    d1: each.filter((count) => count === 1).length,
    d2: each.filter((count) => count === 2).length,
  };
}
