import { distance } from 'fastest-levenshtein';
import type { NamedInSheet } from '../draft.ts';
import type { ListKind } from '../../write/write-piece.ts';
import { fileId, freeId } from './file-id.ts';
import { bestSpelled, byReign, isProper, labelOf, labelsIn, nameFrom, overlaps } from './labels.ts';
import type { Label, Span } from './labels.ts';
import { rulerKey, spelledAlike } from './ruler-key.ts';

/** A list file that is there: its id, every name it has, and when it reigned; no reigns for what does not reign. */
export type KnownName = { readonly id: string; readonly names: readonly string[]; readonly reigns: readonly Span[] };

/** A name where it stands in the sheet, with the years its piece was made in. */
export type NameUse = NamedInSheet & { readonly row: number; readonly made: Span | null };

/** A file a name gets that has none yet. */
export type NewName = {
  readonly id: string;
  readonly name: string;
  readonly otherNames: readonly string[];
  /** The reign as the sheet has it: `1272-1307`. */
  readonly years: string | null;
};

/** Names that are spelled in several ways and may be one; `spelled` as the sheet has them, the reign in brackets. */
export type NameQuestion = {
  readonly kind: ListKind;
  readonly id: string;
  /** Whether there is a file already. */
  readonly isKnown: boolean;
  readonly spelled: readonly string[];
};

/** What a keeper has said: under each file's name, the spellings that are meant by it. */
export type SaidNames = Readonly<Record<string, readonly string[]>>;

export type JoinedNames = {
  readonly created: readonly NewName[];
  readonly questions: readonly NameQuestion[];
  /** The file that a name means; a sentence where it could mean several. */
  readonly idOf: (use: NameUse) => { readonly id: string } | { readonly because: string };
};

type Meant = { readonly id: string; readonly spans: readonly Span[] };

/** Joins the names of a sheet to the files of a list, and finds which new files are wanted. Each name is spelled as it is. */
export function joinNames(
  kind: ListKind,
  uses: readonly NameUse[],
  known: readonly KnownName[],
  said: SaidNames,
): JoinedNames {
  const labels = labelsIn(uses);
  const keys = keysOf(kind, labels, known);
  const meant = new Map<string, readonly Meant[]>();
  const questions: NameQuestion[] = [];
  const created: NewName[] = [];
  const isTaken = (id: string): boolean => [...known, ...created].some((one) => one.id === id);

  for (const [id, spellings] of Object.entries(said)) {
    const mine = labels.filter(({ text, name }) => spellings.includes(text) || spellings.includes(name));
    const file = known.find((one) => one.id === id);
    for (const { text } of mine) meant.set(text, [{ id, spans: file?.reigns ?? [] }]);
    if (file === undefined && mine.length > 0) created.push(newName(id, mine));
  }
  const spelled = indexed(known, spelledAlike);
  const keyed = indexed(known, keys);
  for (const label of labels.filter(({ text }) => !meant.has(text))) {
    const same = (spelled.get(spelledAlike(label.name)) ?? []).filter((file) => agrees(label, file));
    const near = (keyed.get(keys(label.name)) ?? []).filter((file) => agrees(label, file));
    const found = same.length > 0 ? same : near;
    const [only] = found;
    if (only === undefined) continue;
    meant.set(label.text, found.map(asMeant));
    if (same.length === 0 && found.length === 1)
      questions.push({ kind, id: only.id, isKnown: true, spelled: [label.text] });
  }
  const left = labels.filter(({ text }) => !meant.has(text));
  for (const group of grouped(left, ({ name }) => keys(name))) {
    const clusters = byReign(group);
    const made = clusters.map((cluster) => {
      const best = bestSpelled(cluster);
      const isOneOfSeveral = clusters.length > 1 || spelled.has(spelledAlike(best.name));
      const since = cluster.find(({ years }) => years !== null)?.years?.low;
      const id = freeId(
        fileId(isOneOfSeveral && since !== undefined ? `${best.name} ${Math.abs(since)}` : best.name),
        isTaken,
      );
      const file = newName(id, cluster);
      created.push(file);
      if (new Set(cluster.map(({ name }) => spelledAlike(name))).size > 1)
        questions.push({ kind, id, isKnown: false, spelled: cluster.map(({ text }) => text) });
      return {
        cluster,
        names: [file.name, ...file.otherNames],
        meant: { id, spans: cluster.flatMap(({ years }) => (years === null ? [] : [years])) },
      };
    });
    for (const label of group) {
      const own = made.filter(({ cluster }) => cluster.includes(label));
      const alike = made.filter(({ names }) => names.some((one) => spelledAlike(one) === spelledAlike(label.name)));
      const found = [own, alike, made].find((some) => some.length > 0) ?? [];
      meant.set(
        label.text,
        found.map((one) => one.meant),
      );
    }
  }
  return { created, questions, idOf: (use) => chosen(use, meant.get(labelOf(use)) ?? [], kind) };
}

/** Of the files a name could mean, the one whose reign the piece falls in. */
function chosen(use: NameUse, meant: readonly Meant[], kind: ListKind): { id: string } | { because: string } {
  const [only] = meant;
  if (only !== undefined && meant.length === 1) return { id: only.id };
  const { made } = use;
  const inReign = made === null ? [] : meant.filter(({ spans }) => spans.some((span) => overlaps(span, made)));
  const [one] = inReign;
  if (one !== undefined && inReign.length === 1) return { id: one.id };
  const ids = meant.map(({ id }) => id);
  return {
    because: `${ids.length} ${kind} are called ${use.name}, and nothing here says which. Write ${ids.join(' or ')}.`,
  };
}

/**
 * What names are told apart by: a ruler's in any spelling, any other in plain letters. A name of six letters and more that is one
 * letter from a more usual one counts as that one, and is asked about.
 */
function keysOf(kind: ListKind, labels: readonly Label[], known: readonly KnownName[]): (name: string) => string {
  if (kind === 'rulers') return rulerKey;
  const usual: string[] = known.flatMap(({ id, names }) => [id, ...names].map(spelledAlike));
  const keys = new Map<string, string>();
  for (const { name } of labels) {
    const plain = spelledAlike(name);
    const isWord = plain.length >= 6 && !/\d/.test(plain);
    const near =
      isWord && !usual.includes(plain) ? usual.find((one) => one.length >= 6 && distance(one, plain) === 1) : plain;
    keys.set(plain, near ?? plain);
    if (near === undefined || near === plain) usual.push(plain);
  }
  return (name) => keys.get(spelledAlike(name)) ?? spelledAlike(name);
}

function asMeant({ id, reigns }: KnownName): Meant {
  return { id, spans: reigns };
}

/** Whether the sheet's reign is one of the file's; with nothing to compare they agree. */
function agrees({ years }: Label, { reigns }: KnownName): boolean {
  return years === null || reigns.length === 0 || reigns.some((reign) => overlaps(reign, years));
}

function grouped<T>(all: readonly T[], keyOf: (one: T) => string): readonly (readonly T[])[] {
  const groups = new Map<string, T[]>();
  for (const one of all) groups.set(keyOf(one), [...(groups.get(keyOf(one)) ?? []), one]);
  return [...groups.values()];
}

/** The file for spellings of one name. */
function newName(id: string, labels: readonly Label[]): NewName {
  const best = bestSpelled(labels);
  const dated = labels.find((label) => label.years !== null);
  const years = dated === undefined ? null : dated.text.slice(dated.name.length + 2, -1);
  const others = labels
    .map(({ name }) => name)
    .filter((name) => spelledAlike(name) !== spelledAlike(best.name) && isProper(name));
  return { id, name: nameFrom(best.name), otherNames: [...new Set(others)], years };
}

/** The files of a list by each of their names, told apart by `keyOf`. */
function indexed(
  known: readonly KnownName[],
  keyOf: (name: string) => string,
): ReadonlyMap<string, readonly KnownName[]> {
  const index = new Map<string, KnownName[]>();
  for (const file of known)
    for (const key of new Set([file.id, ...file.names].map(keyOf))) {
      const held = index.get(key);
      if (held === undefined) index.set(key, [file]);
      else held.push(file);
    }
  return index;
}
