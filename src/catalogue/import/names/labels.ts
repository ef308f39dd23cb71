import type { NamedInSheet } from '../draft.ts';
import { reignIn } from './reign.ts';

export type Span = { readonly low: number; readonly high: number };

/** One way a name is spelled in the sheet, with the reign beside it, and how often it stands there. */
export type Label = {
  readonly text: string;
  readonly name: string;
  readonly years: Span | null;
  readonly uses: number;
};

/** How a spelling stands in the names file: `Æthelred II (978-1016)`. */
export function labelOf({ name, years }: NamedInSheet): string {
  return years === undefined ? name : `${name} (${years})`;
}

/** Every spelling once, the most usual first. */
export function labelsIn(uses: readonly NamedInSheet[]): readonly Label[] {
  const counts = new Map<string, { use: NamedInSheet; uses: number }>();
  for (const use of uses) {
    const text = labelOf(use);
    counts.set(text, { use, uses: (counts.get(text)?.uses ?? 0) + 1 });
  }
  return [...counts]
    .map(([text, { use, uses: count }]) => ({ text, name: use.name, years: reignOf(use.years), uses: count }))
    .sort((a, b) => b.uses - a.uses);
}

function reignOf(years: string | undefined): Span | null {
  return years === undefined ? null : (reignIn(years)?.span ?? null);
}

export function overlaps(a: Span, b: Span): boolean {
  return a.low <= b.high && b.low <= a.high;
}

/** Labels of one name parted where their reigns do not meet; those without a reign join where there is one place for them. */
export function byReign(group: readonly Label[]): readonly (readonly Label[])[] {
  const dated = group.filter(({ years }) => years !== null);
  const undated = group.filter(({ years }) => years === null);
  const clusters: Label[][] = [];
  for (const label of dated) {
    const met = clusters.find((cluster) =>
      cluster.some(({ years }) => years !== null && label.years !== null && overlaps(years, label.years)),
    );
    if (met === undefined) clusters.push([label]);
    else met.push(label);
  }
  const [only] = clusters;
  if (clusters.length === 0) return [undated];
  if (clusters.length === 1 && only !== undefined) return [[...only, ...undated]];
  return clusters;
}

/** The spelling for pages: written out, with small letters, and the most usual of those. */
export function bestSpelled(labels: readonly Label[]): Label {
  const [first] = [...labels].sort((a, b) => Number(isProper(b.name)) - Number(isProper(a.name)) || b.uses - a.uses);
  if (first === undefined) throw new Error('A name is spelled in at least one way.');
  return first;
}

/** Whether a name is written out, and not all in capitals. */
export function isProper(name: string): boolean {
  return !/\p{L}\./u.test(name) && !(name === name.toUpperCase() && /\p{L}{4}/u.test(name));
}

/** A name for pages where the sheet gives the name of a file: `edward-i` is `Edward I`. */
export function nameFrom(name: string): string {
  if (!/^[a-z0-9]+(-[a-z0-9]+)+$/.test(name)) return name;
  return name
    .split('-')
    .map((word) =>
      /^(?=[ivx])(x{0,2})(ix|iv|v?i{0,3})$/.test(word)
        ? word.toUpperCase()
        : word.replace(/^./, (first) => first.toUpperCase()),
    )
    .join(' ');
}
