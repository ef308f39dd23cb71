/** Things of one key, in the order in which they came. */
export type Gathered<Key, Thing> = { readonly key: Key; readonly all: readonly Thing[] };

/** Gathers things by a key, the keys in the order of their first thing. */
export function gather<Key, Thing>(
  things: readonly Thing[],
  keyOf: (thing: Thing) => Key,
): readonly Gathered<Key, Thing>[] {
  const byKey = new Map<Key, Thing[]>();
  for (const thing of things) {
    const key = keyOf(thing);
    const known = byKey.get(key);
    if (known === undefined) byKey.set(key, [thing]);
    else known.push(thing);
  }
  return [...byKey].map(([key, all]) => ({ key, all }));
}

/** Things under each of the names they bear, in the order in which they came. */
export function filedUnder<Thing>(
  things: readonly Thing[],
  namesOf: (thing: Thing) => readonly string[],
): ReadonlyMap<string, readonly Thing[]> {
  const held = new Map<string, Thing[]>();
  for (const thing of things)
    for (const name of new Set(namesOf(thing))) {
      const known = held.get(name);
      if (known === undefined) held.set(name, [thing]);
      else known.push(thing);
    }
  return held;
}
