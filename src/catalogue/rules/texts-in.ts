/** A text in the fields of a file, and the way to it. */
export type Text = { readonly path: readonly (string | number)[]; readonly text: string };

/** Every text in the fields of a file, but for those of some fields. */
export function textsIn(held: unknown, path: Text['path'], left: ReadonlySet<string>): readonly Text[] {
  if (typeof held === 'string') return [{ path, text: held }];
  if (Array.isArray(held)) return held.flatMap((one, index) => textsIn(one, [...path, index], left));
  if (typeof held !== 'object' || held === null) return [];
  return Object.entries(held)
    .filter(([field]) => !left.has(field))
    .flatMap(([field, one]) => textsIn(one, [...path, field], left));
}
