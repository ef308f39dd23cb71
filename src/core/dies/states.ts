/** A state of a die as a row gives it: which came before it, and by what it is known. */
export type DieStateRow = {
  readonly die: string;
  readonly state: string;
  /** The states it is later than. */
  readonly after: readonly string[];
  readonly sign?: string | undefined;
};

export type DieStateFault =
  | {
      readonly fault: 'unknown-state';
      readonly row: number;
      readonly die: string;
      readonly state: string;
      readonly after: string;
    }
  | { readonly fault: 'circle'; readonly die: string; readonly states: readonly string[] };

/**
 * The states of one die from the earliest. Those of one step are in no order to one another: nothing said says which
 * came first. States in a circle have no place and are named in `faults`.
 */
export type DieHistory = {
  readonly die: string;
  readonly steps: readonly (readonly string[])[];
  /** Pairs that nothing puts in order. */
  readonly open: readonly (readonly [string, string])[];
};

export type DieStates = { readonly histories: readonly DieHistory[]; readonly faults: readonly DieStateFault[] };

/** The states of every die as a partial order: what is said, what follows from it, and what contradicts itself. */
export function dieStates(rows: readonly DieStateRow[]): DieStates {
  const faults: DieStateFault[] = [];
  const dies = [...new Set(rows.map(({ die }) => die))];
  const histories = dies.map((die) => {
    const mine = rows.filter((row) => row.die === die);
    const states = [...new Set(mine.map(({ state }) => state))];
    const before = new Map<string, Set<string>>(states.map((state) => [state, new Set()]));
    for (const [at, row] of rows.entries()) {
      if (row.die !== die) continue;
      for (const after of row.after) {
        if (before.has(after)) before.get(row.state)?.add(after);
        else faults.push({ fault: 'unknown-state', row: at, die, state: row.state, after });
      }
    }
    const earlier = closure(before);
    const circular = states.filter((state) => earlier.get(state)?.has(state) === true);
    for (const circle of circlesOf(circular, earlier)) faults.push({ fault: 'circle', die, states: circle });
    const sound = states.filter((state) => !circular.includes(state));
    return { die, steps: stepsOf(sound, earlier), open: openPairs(sound, earlier) };
  });
  return { histories, faults };
}

type Earlier = ReadonlyMap<string, ReadonlySet<string>>;

/** Everything each state is later than, through any number of steps. */
function closure(before: Earlier): Earlier {
  return new Map(
    [...before.keys()].map((state) => {
      const found = new Set<string>();
      const reached = [...(before.get(state) ?? [])];
      for (const one of reached) {
        if (found.has(one)) continue;
        found.add(one);
        reached.push(...(before.get(one) ?? []));
      }
      return [state, found];
    }),
  );
}

function circlesOf(states: readonly string[], earlier: Earlier): readonly (readonly string[])[] {
  const told = new Set<string>();
  return states.flatMap((state) => {
    if (told.has(state)) return [];
    const circle = states.filter(
      (other) => earlier.get(state)?.has(other) === true && earlier.get(other)?.has(state) === true,
    );
    for (const one of circle) told.add(one);
    return [circle];
  });
}

/** Each state in the step after the last of those it must follow. */
function stepsOf(states: readonly string[], earlier: Earlier): readonly (readonly string[])[] {
  const depth = new Map<string, number>();
  const byNumber = states.toSorted((a, b) => (earlier.get(a)?.size ?? 0) - (earlier.get(b)?.size ?? 0));
  for (const state of byNumber) {
    const depths = [...(earlier.get(state) ?? [])].map((one) => depth.get(one) ?? -1);
    depth.set(state, Math.max(-1, ...depths) + 1);
  }
  const steps: string[][] = [];
  for (const state of states) (steps[depth.get(state) ?? 0] ??= []).push(state);
  return steps.filter((step) => step.length > 0);
}

function openPairs(states: readonly string[], earlier: Earlier): readonly (readonly [string, string])[] {
  return states.flatMap((one, at) =>
    states
      .slice(at + 1)
      .filter((other) => earlier.get(one)?.has(other) !== true && earlier.get(other)?.has(one) !== true)
      .map((other): readonly [string, string] => [one, other]),
  );
}
