/** A place on the earth in degrees, north and east positive. */
export type OnEarth = { readonly north: number; readonly east: number };

/**
 * Groups of places near one another: two belong together when a chain of steps, none longer than `degrees`, leads from one to the
 * other. A degree east counts less towards the poles, as it is shorter there. The largest group first.
 */
export function clustersOf<Place extends OnEarth>(
  places: readonly Place[],
  degrees: number,
): readonly (readonly Place[])[] {
  const groups: Place[][] = [];
  for (const place of places) {
    const near = groups.filter((group) => group.some((other) => stepBetween(place, other) <= degrees));
    const joined = [...near.flat(), place];
    for (const group of near) groups.splice(groups.indexOf(group), 1);
    groups.push(joined);
  }
  return groups.toSorted((a, b) => b.length - a.length);
}

function stepBetween(a: OnEarth, b: OnEarth): number {
  const shorter = Math.cos((Math.PI / 180) * ((a.north + b.north) / 2));
  const east = Math.abs(a.east - b.east);
  return Math.hypot(a.north - b.north, Math.min(east, 360 - east) * shorter);
}
