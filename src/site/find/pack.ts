import { writeNumbers } from './number-list.ts';
import { FACETS, PARTS } from './record.ts';
import type { FacetName, FindRecord, FoundFace, Part } from './record.ts';

/** Few values that many records share, and which of them each record has. */
export type Shared<T> = { readonly all: readonly T[]; readonly of: readonly number[] };

/** What the same records have in common: words of a part, separated by spaces, and values of facets. */
export type Common = Readonly<Partial<Record<Part, string>>> & {
  readonly facets?: Readonly<Partial<Record<FacetName, readonly string[]>>>;
};

/** Lists of records, as `number-list.ts` writes them, each with what its records have in common. */
export type PackedLists = readonly (readonly [records: string, common: Common])[];

/**
 * Every record by columns, as a browser is sent them: a quarter of what they take one by one, and a list of records for each
 * word, so that nothing is gone through to find one. Words of titles and numbers are read from those.
 */
export type PackedRecords = {
  /** What tells one order of pieces from another: a place in it means nothing in another. Both files say theirs. */
  readonly made: string;
  readonly to: readonly string[];
  readonly title: readonly string[];
  readonly number: readonly string[];
  /** With `AS_YEAR` and `AS_WEIGHT` for a year and a weight that are in it as in their own columns. */
  readonly line: readonly string[];
  readonly grade: Shared<string | null>;
  readonly note: Shared<string | null>;
  /** All of a face but its picture. */
  readonly face: Shared<Omit<FoundFace, 'src' | 'width' | 'height'>>;
  readonly picture: readonly (readonly [src: string, width: number, height: number] | 0)[];
  /** The first year it may be of, null where that is open; and how many later the last is, or, after an open first, the last itself. */
  readonly year: readonly (number | null)[];
  readonly later: readonly (number | null)[];
  readonly weight: readonly (number | null)[];
  readonly size: readonly (number | null)[];
  readonly rank: Shared<number | null>;
  readonly lists: PackedLists;
};

/** What is sent after the records, for who asks on: the words of descriptions and stories, and legends as read. */
export type PackedTexts = {
  readonly made: string;
  readonly lists: PackedLists;
  readonly legends: readonly (readonly string[])[];
};

/** The parts whose words are in a file of their own, the largest. */
const LONG: readonly Part[] = ['legend', 'story'];
/** The parts whose words are read from their own columns. */
const READ: readonly Part[] = ['title', 'number'];

/** Packs the records of a cabinet, in their order. */
export function packRecords(records: readonly FindRecord[], made: string): PackedRecords {
  return {
    made,
    to: records.map(({ to }) => to),
    title: records.map(({ title }) => title),
    number: records.map(({ number }) => number),
    line: records.map(shortLine),
    grade: shared(records.map(({ grade }) => grade)),
    note: shared(records.map(({ note }) => note)),
    face: shared(records.map(({ face }) => ('src' in face ? { wide: face.wide } : face))),
    picture: records.map(({ face }) => ('src' in face ? [face.src, face.width, face.height] : 0)),
    year: records.map(({ years }) => years?.[0] ?? null),
    later: records.map(({ years }) => {
      const [low, high] = years ?? [null, null];
      return high === null ? null : high - (low ?? 0);
    }),
    weight: records.map(({ by }) => by.weight),
    size: records.map(({ by }) => by.size),
    rank: shared(records.map(({ by }) => by.grade)),
    lists: listsOf(records, FACETS, PARTS.filter((part) => !LONG.includes(part) && !READ.includes(part))), // prettier-ignore
  };
}

/** Packs what is long of them. */
export function packTexts(records: readonly FindRecord[], made: string): PackedTexts {
  return { made, lists: listsOf(records, [], LONG), legends: records.map(({ legends }) => legends) };
}

/** What the line of a record has for its year and its weight, signs that no text has. */
export const AS_YEAR = '\u0002';
export const AS_WEIGHT = '\u0003';

function shortLine({ line, years, by }: FindRecord): string {
  const year = years?.[0] ?? null;
  const dated = year === null ? line : line.replace(String(year), AS_YEAR);
  return by.weight === null ? dated : dated.replace(String(by.weight), AS_WEIGHT);
}

function shared<T>(values: readonly T[]): Shared<T> {
  const places = new Map<string, number>();
  const all: T[] = [];
  const of = values.map((value) => {
    const key = JSON.stringify(value);
    const place = places.get(key) ?? all.push(value) - 1;
    places.set(key, place);
    return place;
  });
  return { all, of };
}

/** For each value of a facet and each word of a part the records that have it; what the same records have is told once. */
function listsOf(records: readonly FindRecord[], facets: readonly FacetName[], parts: readonly Part[]): PackedLists {
  const commons = new Map<string, { [part in Part]?: string } & { facets?: { [facet in FacetName]?: string[] } }>();
  const commonTo = (held: readonly number[]) => {
    const list = writeNumbers(held);
    const common = commons.get(list) ?? {};
    commons.set(list, common);
    return common;
  };
  for (const facet of facets)
    for (const [value, held] of holders(records, (record) => record.facets[facet]))
      ((commonTo(held).facets ??= {})[facet] ??= []).push(value);
  for (const part of parts)
    for (const [word, held] of holders(records, ({ words }) => words[part])) {
      const common = commonTo(held);
      common[part] = common[part] === undefined ? word : `${common[part]} ${word}`;
    }
  return [...commons];
}

/** For each value that any record has, the places of those that have it; values in their order. */
function holders(
  records: readonly FindRecord[],
  valuesOf: (record: FindRecord) => readonly string[] | undefined,
): readonly (readonly [value: string, held: readonly number[]])[] {
  const holding = new Map<string, number[]>();
  for (const [at, record] of records.entries())
    for (const value of valuesOf(record) ?? []) {
      const held = holding.get(value);
      if (held === undefined) holding.set(value, [at]);
      else held.push(at);
    }
  return [...holding].sort(([one], [other]) => (one < other ? -1 : 1));
}
