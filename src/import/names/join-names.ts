import type { ListKind } from '../../catalogue/write/write-piece.ts';
import { fileId, freeId } from '../../core/file-id.ts';
import { grouped } from './grouped.ts';
import { likenessOf } from './keys.ts';
import { clustersOf, spansOf, toldApart } from './group-spellings.ts';
import { bestSpelled, isProper, labelOf, labelsIn, nameFrom, oneRealm } from './labels.ts';
import type { Label } from './labels.ts';
import { labelsSaid, yearsSaid } from './labels-given.ts';
import type { KnownName, Likeness, NameQuestion, NameUse, NewName, SaidNames } from './name.ts';
import type { Parting } from './split-rulers.ts';
import { areaPartingOf, isSameRealm, partingOf } from './split-rulers.ts';
import { spelledAlike } from './ruler-key.ts';
import { formatYears, hullOf, overlaps, yearsBetween } from './spans.ts';
import type { Span } from './spans.ts';

export type JoinedNames = {
  readonly created: readonly NewName[];
  readonly questions: readonly NameQuestion[];
  /** The file that a name means; a sentence where it could mean several. */
  readonly idOf: (use: NameUse) => { readonly id: string } | { readonly because: string };
};

type Meant = { readonly id: string; readonly spans: readonly Span[]; readonly realm: string | null };

/** What has been found so far of the names of one list. */
type Joining = {
  readonly kind: ListKind;
  readonly known: readonly KnownName[];
  readonly said: SaidNames;
  readonly labels: readonly Label[];
  readonly likeness: Likeness;
  /** Whether the sheet is a table of our own, in which names are those of files. */
  readonly namesFiles: boolean;
  readonly meant: Map<string, readonly Meant[]>;
  readonly created: NewName[];
  readonly questions: NameQuestion[];
};

/**
 * Joins the names of a sheet to the files of a list, and finds which new files are wanted. Names are joined when they are the
 * same but for capitals, accents, points, titles and the way a numeral is written; names that are nearly the same stay apart and
 * are asked about.
 */
export function joinNames(
  kind: ListKind,
  uses: readonly NameUse[],
  known: readonly KnownName[],
  said: SaidNames,
  namesFiles = false,
): JoinedNames {
  const partOf: Parting =
    kind === 'rulers' ? partingOf(uses, known) : kind === 'mints' ? areaPartingOf(uses, known) : () => '';
  const labels = labelsIn(uses, partOf);
  const likeness = likenessOf(kind, labels, known);
  const joining: Joining = {
    kind, known, said, labels, likeness, namesFiles, meant: new Map(), created: [], questions: [],
  }; // prettier-ignore
  takeWhatWasSaid(joining);
  joinToFiles(joining);
  makeFiles(joining);
  const { meant, created } = joining;
  return {
    created,
    questions: [...joining.questions, ...alikeQuestions(joining)].toSorted((a, b) => b.uses - a.uses),
    idOf: (use) => chosen(use, meant.get(labelOf(use, partOf)) ?? [], kind),
  };
}

/** Names that the keeper has settled in the names file. */
function takeWhatWasSaid({ kind, known, labels, said, meant, created, namesFiles }: Joining): void {
  for (const [id, mine] of labelsSaid(labels, said)) {
    const file = known.find((one) => one.id === id);
    for (const { text } of mine)
      meant.set(text, [
        ...(meant.get(text) ?? []),
        {
          id,
          spans: file !== undefined && file.reigns.length > 0 ? file.reigns : spansOf(mine),
          realm: file?.realm ?? oneRealm(mine),
        },
      ]);
    if (file === undefined) created.push(newName(kind, id, mine, namesFiles));
  }
}

/** The files that are there, and those of names the keeper has settled: another spelling may be one of theirs. */
function filesOf({ known, said, meant, created }: Joining): readonly KnownName[] {
  const saidOf = (id: string): readonly string[] => (Object.hasOwn(said, id) ? (said[id] ?? []) : []);
  return [
    ...known.map((file) =>
      file.reigns.length > 0
        ? file
        : { ...file, reigns: [...yearsSaid(saidOf(file.id)), ...meantSpans(meant, file.id)] },
    ),
    ...created.map(({ id, name, otherNames, realm }) => ({
      id,
      names: [name, ...otherNames],
      reigns: meantSpans(meant, id),
      ...(realm === undefined ? {} : { realm }),
    })),
  ];
}

/** Names that are those of a file which is there. */
function joinToFiles(joining: Joining): void {
  const { kind, known, labels, likeness, meant, questions } = joining;
  const files = filesOf(joining);
  const spelled = indexed(files, spelledAlike);
  const keyed = indexed(files, likeness.same);
  for (const label of labels.filter(({ text }) => !meant.has(text))) {
    const same = (spelled.get(spelledAlike(label.name)) ?? []).filter((file) => agrees(label, file));
    const near = (keyed.get(likeness.same(label.name)) ?? []).filter((file) => agrees(label, file));
    const found = same.length > 0 ? same : near;
    const [only] = found;
    if (only === undefined) continue;
    meant.set(label.text, found.map(asMeant));
    const isElsewhere = label.realm !== null && only.realm !== undefined && !isSameRealm(label.realm, only.realm);
    if (found.length === 1 && (same.length === 0 || isElsewhere))
      questions.push({
        kind,
        id: only.id,
        isKnown: known.some(({ id }) => id === only.id),
        isParted: false,
        spelled: [label.text],
        uses: label.uses,
        like: [],
      });
  }
}

/** Files for the names that are left. */
function makeFiles(joining: Joining): void {
  const { known, labels, likeness, meant, created } = joining;
  const spelled = indexed(filesOf(joining), spelledAlike);
  const isTaken = (id: string): boolean => [...known, ...created].some((one) => one.id === id);
  const left = labels.filter(({ text }) => !meant.has(text));
  for (const group of grouped(left, ({ name }) => likeness.same(name))) {
    const clusters = clustersOf(group, joining.kind === 'rulers');
    const made = clusters.map((cluster) => makeFile(joining, cluster, clusters.length > 1, spelled, isTaken));
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
}

type Made = { readonly cluster: readonly Label[]; readonly names: readonly string[]; readonly meant: Meant };

function makeFile(
  { kind, created, questions, namesFiles }: Joining,
  cluster: readonly Label[],
  isAmongSeveral: boolean,
  spelled: ReadonlyMap<string, readonly KnownName[]>,
  isTaken: (id: string) => boolean,
): Made {
  const best = bestSpelled(cluster);
  const isOneOfSeveral = isAmongSeveral || spelled.has(spelledAlike(best.name));
  const id = freeId(fileId(isOneOfSeveral ? toldApart(best.name, cluster) : best.name), isTaken);
  const file = newName(kind, id, cluster, namesFiles);
  created.push(file);
  const isParted = isOneOfSeveral && cluster.some(({ part }) => part !== '');
  if (isParted || new Set(cluster.map(({ name, part }) => `${spelledAlike(name)} ${part}`)).size > 1)
    questions.push({
      kind,
      id,
      isKnown: false,
      isParted,
      spelled: cluster.map(({ text }) => text),
      uses: usesOf(cluster),
      like: [],
    });
  return {
    cluster,
    names: [file.name, ...file.otherNames],
    meant: { id, spans: spansOf(cluster), realm: oneRealm(cluster) },
  };
}

/** A question for each name that is nearly that of another file: both stand apart, each with its count. */
function alikeQuestions({ kind, known, said, labels, likeness, meant, created }: Joining): readonly NameQuestion[] {
  const files = [...known, ...created.map(({ id, name, otherNames }) => ({ id, names: [name, ...otherNames] }))];
  const usedBy = (id: string): readonly Label[] =>
    labels.filter(({ text }) => (meant.get(text) ?? []).some((one) => one.id === id));
  return created.flatMap(({ id, name }): readonly NameQuestion[] => {
    if (Object.hasOwn(said, id)) return [];
    const like = files
      .filter((file) => file.id !== id && file.names.some((other) => likeness.isNear(name, other)))
      .map((file) => ({ id: file.id, name: file.names[0] ?? file.id, uses: usesOf(usedBy(file.id)) }))
      .toSorted((a, b) => b.uses - a.uses);
    // A spelling without brackets in the names file means every file so called: one that could mean several is not said of one.
    const mine = usedBy(id).filter(({ text }) => meant.get(text)?.length === 1);
    if (like.length === 0 || mine.length === 0) return [];
    return [
      { kind, id, isKnown: false, isParted: true, spelled: mine.map(({ text }) => text), uses: usesOf(mine), like },
    ];
  });
}

function usesOf(labels: readonly Label[]): number {
  return labels.reduce((sum, { uses }) => sum + uses, 0);
}

function meantSpans(meant: ReadonlyMap<string, readonly Meant[]>, id: string): readonly Span[] {
  return [...meant.values()].flat().flatMap((one) => (one.id === id ? one.spans : []));
}

/** Of the files a name could mean, the one whose realm it names and whose reign the piece falls in. */
function chosen(use: NameUse, all: readonly Meant[], kind: ListKind): { id: string } | { because: string } {
  const { realm } = use;
  const there = realm === undefined ? [] : all.filter((one) => one.realm !== null && isSameRealm(one.realm, realm));
  const meant = there.length > 0 ? there : all;
  const [only] = meant;
  if (only !== undefined && meant.length === 1) return { id: only.id };
  const { made } = use;
  const inReign = made === null ? [] : meant.filter(({ spans }) => spans.some((span) => overlaps(span, made)));
  const [one] = inReign;
  if (one !== undefined && inReign.length === 1) return { id: one.id };
  return { because: whichOf(use.name, meant, kind) };
}

/** `York (mints) stands for …`: each with what tells it from the others, the earliest first. */
function whichOf(name: string, meant: readonly Meant[], kind: ListKind): string {
  const each = meant
    .map(({ id, realm, spans }) => ({ id, span: hullOf(spans), realm }))
    .toSorted((a, b) => (a.span?.low ?? 0) - (b.span?.low ?? 0))
    .map(({ id, span, realm }) => {
      const told = [realm ?? '', span === null ? '' : formatYears(span)].filter((one) => one !== '');
      return told.length === 0 ? id : `${id} (${told.join(', ')})`;
    });
  const what = { rulers: 'rulers', mints: 'mints', denominations: 'denominations', works: 'books' }[kind];
  return `Nothing in this row says which of ${each.length} ${what} called ${name} is meant: ${each.join(', ')}. Write one of these, as it stands before the brackets, in the cell.`;
}

function asMeant({ id, reigns, realm }: KnownName): Meant {
  return { id, spans: reigns, realm: realm ?? null };
}

/** Whether a name may be the file's: by the reign beside it, or else by its realm and date; with nothing to compare they agree. */
function agrees({ years, realm, part, made }: Label, { reigns, realm: ruled }: KnownName): boolean {
  if (years !== null) return reigns.length === 0 || reigns.some((reign) => overlaps(reign, years));
  if (part === '') return true;
  const isFar = made !== null && reigns.length > 0 && reigns.every((reign) => yearsBetween(reign, made) > NEAR_REIGN);
  if (isFar) return false;
  const isThere = made !== null && reigns.some((reign) => overlaps(reign, made));
  return isThere || realm === null || ruled === undefined || isSameRealm(realm, ruled);
}

/** Coins went on in a name for a while after its bearer had died. */
const NEAR_REIGN = 50;

/** The file for spellings of one name. */
function newName(kind: ListKind, id: string, labels: readonly Label[], namesFiles: boolean): NewName {
  const best = bestSpelled(labels);
  const dated = labels.find((label) => label.years !== null);
  const years = dated === undefined ? null : dated.text.slice(dated.name.length + 2, -1);
  const others = labels
    .map(({ name }) => name)
    .filter((name) => spelledAlike(name) !== spelledAlike(best.name) && isProper(name));
  const realm = kind === 'rulers' || kind === 'mints' ? oneRealm(labels) : null;
  return {
    id,
    name: namesFiles ? nameFrom(best.name) : best.name,
    otherNames: [...new Set(others)],
    years,
    ...(realm === null ? {} : { realm }),
  };
}

/** The files of a list by each of their names, distinguished by `keyOf`. */
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
