import type { SaidNames } from './name.ts';
import type { Label } from './labels.ts';
import type { Span } from './spans.ts';
import { parseYears, yearsBetween } from './spans.ts';

/** A spelling of the names file, what is in square brackets behind it apart: `James I [Scotland, 1424-1437]`. */
type Said = {
  readonly text: string;
  readonly name: string;
  readonly realm: string;
  readonly years: Span | null;
};

/**
 * What a keeper has said of the names, file by file. A spelling counts as it stands; then one of the same realm whose years are nearest,
 * because the years of the pieces change with every new one; then the name alone, which means all that are called so.
 */
export function labelsSaid(
  labels: readonly Label[],
  said: SaidNames,
): readonly (readonly [id: string, labels: readonly Label[]])[] {
  const files = Object.entries(said).map(([id, spellings]) => ({ id, spellings: spellings.map(parsed) }));
  const meant = new Map<string, readonly string[]>();
  for (const label of labels) {
    const idsOf = (fits: (one: Said) => boolean): readonly string[] =>
      files.filter(({ spellings }) => spellings.some(fits)).map(({ id }) => id);
    const exact = idsOf(({ text }) => text === label.text);
    const near = exact.length > 0 ? [] : nearest(label, files);
    const ids = [exact, near, idsOf(({ text }) => text === label.name)].find((some) => some.length > 0) ?? [];
    meant.set(label.text, ids);
  }
  return files
    .map(({ id }) => [id, labels.filter(({ text }) => meant.get(text)?.includes(id) === true)] as const)
    .filter(([, mine]) => mine.length > 0);
}

/** The years that are in spellings of a names file. */
export function yearsSaid(spellings: readonly string[]): readonly Span[] {
  return spellings.flatMap((text) => parsed(text).years ?? []);
}

function nearest(
  label: Label,
  files: readonly { readonly id: string; readonly spellings: readonly Said[] }[],
): readonly string[] {
  if (label.part === '') return [];
  const { realm } = parsed(label.text);
  const away = files.flatMap(({ id, spellings }) =>
    spellings
      .filter((one) => one.name === label.name && one.realm === realm && one.text !== one.name)
      .map(({ years }) => ({ id, years: years === null || label.made === null ? 0 : yearsBetween(years, label.made) })),
  );
  const [best] = away.toSorted((a, b) => a.years - b.years);
  // Further off than one reign it is somebody else, and asked about.
  return best === undefined || best.years > 72 ? [] : [best.id];
}

function parsed(text: string): Said {
  const [, name = text, inside = ''] = /^(.*) \[([^\]]*)\]$/.exec(text) ?? [];
  const parts = inside.split(', ');
  const years = parseYears(parts.at(-1) ?? '');
  return { text, name, realm: (years === null ? parts : parts.slice(0, -1)).join(', '), years };
}
