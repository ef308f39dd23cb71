import { wordsOf } from './fold.ts';
import { readNumbers } from './number-list.ts';
import { AS_WEIGHT, AS_YEAR } from './pack.ts';
import type { PackedRecords, PackedTexts } from './pack.ts';
import { FACETS, PARTS } from './record.ts';
import type { FacetName, Part, ShownRecord } from './record.ts';

/** Places of records, rising; read from their text when they are first asked for. */
export type RecordList = { text: string | null; places: ArrayLike<number> };

/** A word that records hold, with those of each part that has it, parts in their order. */
export type Known = { readonly word: string; readonly in: { readonly part: Part; readonly list: RecordList }[] };

/** What can be found, as the search goes through it. */
export type FindTable = {
  readonly count: number;
  readonly words: ReadonlyMap<string, Known>;
  readonly facets: Readonly<Record<FacetName, readonly (readonly [value: string, list: RecordList])[]>>;
  readonly packed: PackedRecords;
  /** Null until the texts have come. */
  readonly legends: PackedTexts['legends'] | null;
};

/** The table of packed records, with their texts once those have come. Throws where the two count other pieces. */
export function tableOf(packed: PackedRecords, texts: PackedTexts | null): FindTable {
  if (texts !== null && texts.made !== packed.made) throw new Error('The texts are of another site than the records.');
  const words = new Map<string, Known>();
  const facets = Object.fromEntries(FACETS.map((facet) => [facet, [] as [string, RecordList][]])) as Record<FacetName, [string, RecordList][]>; // prettier-ignore
  const put = (word: string, part: Part, list: RecordList): void => {
    const known = words.get(word);
    if (known === undefined) words.set(word, { word, in: [{ part, list }] });
    else known.in.push({ part, list });
  };
  for (const part of ['title', 'number'] as const)
    for (const [word, places] of holdersIn(packed[part])) put(word, part, { text: null, places });
  for (const [text, common] of [...packed.lists, ...(texts?.lists ?? [])]) {
    const list: RecordList = { text, places: [] };
    for (const facet of FACETS) for (const value of common.facets?.[facet] ?? []) facets[facet].push([value, list]);
    for (const part of PARTS) for (const word of common[part]?.split(' ') ?? []) put(word, part, list);
  }
  const order = (part: Part): number => PARTS.indexOf(part);
  for (const known of words.values())
    if (known.in.length > 1) known.in.sort((one, other) => order(one.part) - order(other.part));
  return { count: packed.to.length, words, facets, packed, legends: texts?.legends ?? null };
}

/** For each word of these texts, the places of those that have it. */
function holdersIn(texts: readonly string[]): ReadonlyMap<string, readonly number[]> {
  const holding = new Map<string, number[]>();
  for (const [at, text] of texts.entries())
    for (const word of wordsOf(text)) {
      const held = holding.get(word);
      if (held === undefined) holding.set(word, [at]);
      else held.push(at);
    }
  return holding;
}

/** The places of a list. */
export function placesOf(list: RecordList): ArrayLike<number> {
  if (list.text !== null) {
    list.places = readNumbers(list.text);
    list.text = null;
  }
  return list.places;
}

/** Whether a list has a place. */
function hasPlace(list: RecordList, at: number): boolean {
  const places = placesOf(list);
  let [low, high] = [0, places.length - 1];
  while (low <= high) {
    const middle = (low + high) >> 1;
    const place = places[middle] ?? 0;
    if (place === at) return true;
    if (place < at) low = middle + 1;
    else high = middle - 1;
  }
  return false;
}

/** The first part of a record that holds a word: what of it the word is. */
export function partWith(known: Known, at: number): Part | null {
  return known.in.find(({ list }) => hasPlace(list, at))?.part ?? null;
}

/** One record as it is laid. */
export function shownAt({ packed }: FindTable, at: number): ShownRecord {
  const of = <T>({ all, of: places }: { readonly all: readonly T[]; readonly of: readonly number[] }): T =>
    all[places[at] ?? -1] as T;
  const [to, picture] = [packed.to[at] ?? '', packed.picture[at] ?? 0];
  const [low, high] = yearsAt(packed, at);
  return {
    // The folder of its page; a copy without a server names the page in it as well.
    id: to.replace(/(?:\/|index\.html)*$/, '').replace(/^.*\//, ''),
    to,
    title: packed.title[at] ?? '',
    number: packed.number[at] ?? '',
    line: lineAt(packed, at),
    grade: of(packed.grade),
    note: of(packed.note),
    face: (picture === 0
      ? of(packed.face)
      : { ...of(packed.face), src: picture[0], width: picture[1], height: picture[2] }) as ShownRecord['face'],
    by: {
      date: low ?? high,
      weight: packed.weight[at] ?? null,
      size: packed.size[at] ?? null,
      grade: of(packed.rank),
    },
  };
}

function lineAt({ line, year, weight }: PackedRecords, at: number): string {
  return (line[at] ?? '').replace(AS_YEAR, String(year[at])).replace(AS_WEIGHT, String(weight[at]));
}

/** The years a record may be of, null where an end is open; both are where it is undated. */
export function yearsAt(
  { year, later }: PackedRecords,
  at: number,
): readonly [low: number | null, high: number | null] {
  const [low, more] = [year[at] ?? null, later[at] ?? null];
  return [low, more === null ? null : more + (low ?? 0)];
}
