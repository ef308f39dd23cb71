/** Things that have one key together, in the order in which their keys first come. */
export function grouped<T>(all: readonly T[], keyOf: (one: T) => string): readonly (readonly T[])[] {
  const groups = new Map<string, T[]>();
  for (const one of all) {
    const key = keyOf(one);
    const held = groups.get(key);
    if (held === undefined) groups.set(key, [one]);
    else held.push(one);
  }
  return [...groups.values()];
}
