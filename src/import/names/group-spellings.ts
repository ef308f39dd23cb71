import type { Label } from './labels.ts';
import { byReign, oneRealm } from './labels.ts';
import { grouped } from './grouped.ts';
import { joinedParts } from './split-rulers.ts';
import { hullOf, parseYears } from './spans.ts';
import type { Span } from './spans.ts';

/**
 * Spellings of one name, a ruler’s distinguished by reign, or else by realm and date, a place by its area; what nothing distinguishes is in
 * no cluster of several.
 */
export function clustersOf(group: readonly Label[], areRulers: boolean): readonly (readonly Label[])[] {
  const parted = group.filter(({ part }) => part !== '');
  const rest = group.filter(({ part }) => part === '');
  if (parted.length === 0) return byReign(rest);
  const clusters = areRulers ? joinedParts(parted) : grouped(parted, ({ part }) => part);
  const dated = rest.filter(({ years }) => years !== null);
  return dated.length === 0 ? clusters : [...clusters, ...byReign(dated)];
}

/** A name with what its file is told from others by: a reign, a realm, or the years of its pieces. */
export function toldApart(name: string, cluster: readonly Label[]): string {
  const since = cluster.find(({ years }) => years !== null)?.years?.low ?? null;
  const realm = oneRealm(cluster);
  const isByRealm = since === null && realm !== null && cluster.some(({ part }) => part.startsWith(realm));
  const isByDate = cluster.some(({ part }) => parseYears(part.split(', ').at(-1) ?? '') !== null);
  const year = since ?? (isByDate || !isByRealm ? (hullOf(spansOf(cluster))?.low ?? null) : null);
  return [name, ...(isByRealm ? [realm] : []), ...(year === null ? [] : [year > 0 ? year : 1 - year])].join(' ');
}

/** The years that tell which of several a piece belongs to: reigns, or where none is said the years of the pieces. */
export function spansOf(labels: readonly Label[]): readonly Span[] {
  const reigns = labels.flatMap(({ years }) => (years === null ? [] : [years]));
  return reigns.length > 0 ? reigns : labels.flatMap(({ made, part }) => (made === null || part === '' ? [] : [made]));
}
