import { grouped } from './grouped.ts';
import type { NameUse } from './name.ts';
import type { Parting } from './split-rulers.ts';
import { isSameRealm } from './split-rulers.ts';
import { reignIn } from './reign.ts';
import type { Span } from './spans.ts';
import { hullOf, overlaps } from './spans.ts';

/** One way a name is spelled in the sheet, with the reign beside it, and how often it stands there. */
export type Label = {
  readonly text: string;
  readonly name: string;
  readonly years: Span | null;
  /** What the sheet says was ruled. */
  readonly realm: string | null;
  /** What parts it from others of the same name: `Scotland`, `1424-1437`; empty where nothing does. */
  readonly part: string;
  /** The years the pieces were made in, those distinguished by them alone. */
  readonly made: Span | null;
  readonly uses: number;
};

/** How a spelling is in the names file: `Æthelred II (978-1016)`, or `James I [Scotland]` where several are distinguished. */
export function labelOf(use: NameUse, partOf: Parting): string {
  if (use.years !== undefined) return `${use.name} (${use.years})`;
  const part = partOf(use);
  return part === '' ? use.name : `${use.name} [${part}]`;
}

/** Every spelling once, the most usual first. */
export function labelsIn(uses: readonly NameUse[], partOf: Parting): readonly Label[] {
  return grouped(uses, (use) => labelOf(use, partOf))
    .flatMap((some): readonly Label[] => {
      const [use] = some;
      if (use === undefined) return [];
      return [
        {
          text: labelOf(use, partOf),
          name: use.name,
          years: reignOf(use.years),
          realm: oneRealm(some),
          part: use.years === undefined ? partOf(use) : '',
          made: hullOf(
            some.flatMap(({ made }) => (made === null || !Number.isFinite(made.high - made.low) ? [] : [made])),
          ),
          uses: some.length,
        },
      ];
    })
    .sort((a, b) => b.uses - a.uses);
}

/** What all of them ruled; null where the sheet says different things, or nothing. */
export function oneRealm(some: readonly { readonly realm?: string | null }[]): string | null {
  const realms = some.flatMap(({ realm }) => realm ?? []);
  const [first] = realms;
  return first !== undefined && realms.every((realm) => isSameRealm(realm, first)) ? first : null;
}

function reignOf(years: string | undefined): Span | null {
  return years === undefined ? null : (reignIn(years)?.span ?? null);
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
  const [first] = [...labels].sort(
    (a, b) =>
      Number(isProper(b.name)) - Number(isProper(a.name)) ||
      Number(isInitials(a.name)) - Number(isInitials(b.name)) ||
      b.uses - a.uses,
  );
  if (first === undefined) throw new Error('A name is spelled in at least one way.');
  return first;
}

/** Whether a name is written out, and not all in capitals. */
export function isProper(name: string): boolean {
  return !/\p{L}\./u.test(name) && !(name === name.toUpperCase() && /\p{L}{4}/u.test(name));
}

/** `N`, `RIC`, `D&H`: a name that is shortened to letters. */
function isInitials(name: string): boolean {
  return !/\p{L}{4}|\p{Ll}{2}/u.test(name);
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
