import type { Lettering } from '../references/ranges.ts';
import { isEntry, plainNumber, plainVolume } from '../references/reference.ts';
import type { HowSure } from '../sets/set-piece.ts';
import { noSurer } from './inherit.ts';

/**
 * How the entry of a book stands to the type it is set beside: it covers the same (`equal`), nearly the same (`close`),
 * more than the type (`broader`), less than it (`narrower`), or each covers something the other does not (`overlaps`).
 * The relations of SKOS and of the TDWG taxon concept schema.
 */
export const TYPE_RELATIONS = ['equal', 'close', 'broader', 'narrower', 'overlaps'] as const;
export type TypeRelation = (typeof TYPE_RELATIONS)[number];

/** An entry of a book: the key of the work, and the number as printed there; `to` for the last of several. */
export type Entry = {
  readonly work: string;
  readonly number: string;
  readonly volume?: string | undefined;
  readonly to?: string | undefined;
  /** Whether its book keeps `8a` apart from `8A`. */
  readonly letters?: Lettering | undefined;
};

/** One line of a concordance. `type` names its series: `series/id`. */
export type ConcordanceRow = Entry & {
  readonly type: string;
  readonly relation: TypeRelation;
  readonly sure: HowSure;
  readonly source?: string | undefined;
  readonly date?: string | undefined;
};

export type Disagreement = {
  readonly work: string;
  readonly number: string;
  readonly types: readonly string[];
  /** Rows concerned, counted from 0. */
  readonly rows: readonly number[];
  readonly why: 'several-types' | 'several-numbers' | 'two-relations' | 'two-certainties';
};

export type Concordance = {
  readonly rows: readonly ConcordanceRow[];
  readonly byType: ReadonlyMap<string, readonly ConcordanceRow[]>;
  readonly byNumber: ReadonlyMap<string, readonly ConcordanceRow[]>;
  /** The keys of numbers by their small letters. */
  readonly folded: ReadonlyMap<string, readonly string[]>;
  readonly disagreements: readonly Disagreement[];
  /** The rows that name several numbers together: `1038-1039`. */
  readonly runs: readonly ConcordanceRow[];
  /** Numbers that several types of one series claim as their equal, and those of which one type claims several of one book: nothing is concluded through them. */
  readonly disputed: ReadonlySet<string>;
};

/** One writing of an entry, for comparing. */
export function numberKey({ work, number, volume, to }: Entry): string {
  const numbers = to === undefined ? plainNumber(number) : `${plainNumber(number)} to ${plainNumber(to)}`;
  return `${work.toLowerCase()} ${volume === undefined ? '' : `${plainVolume(volume)} `}${numbers}`;
}

/** The lines of every concordance together, with what contradicts itself in them. Nothing is merged. */
export function concordanceOf(rows: readonly ConcordanceRow[]): Concordance {
  const byType = groupedBy(rows, (row) => row.type);
  const byNumber = groupedBy(rows, numberKey);
  const at = new Map(rows.map((row, index) => [row, index]));
  const told = (group: readonly ConcordanceRow[], why: Disagreement['why']): Disagreement => ({
    work: group[0]?.work ?? '',
    number: group[0]?.number ?? '',
    types: [...new Set(group.map(({ type }) => type))],
    rows: group.map((row) => at.get(row) ?? 0),
    why,
  });
  const disagreements: Disagreement[] = [];
  const disputed = new Set<string>();
  for (const [key, group] of byNumber) {
    const equal = group.filter(({ relation }) => relation === 'equal');
    for (const claims of groupedBy(equal, ({ type }) => seriesOf(type)).values()) {
      if (new Set(claims.map(({ type }) => type)).size < 2) continue;
      disagreements.push(told(claims, 'several-types'));
      disputed.add(key);
    }
    for (const said of groupedBy(group, ({ type }) => type).values()) {
      if (new Set(said.map(({ relation }) => relation)).size > 1) disagreements.push(told(said, 'two-relations'));
      else if (new Set(said.map(({ sure }) => sure)).size > 1) disagreements.push(told(said, 'two-certainties'));
    }
  }
  for (const group of byType.values()) {
    const equal = group.filter(({ relation }) => relation === 'equal');
    for (const numbers of groupedBy(equal, ({ work }) => work.toLowerCase()).values()) {
      const keys = new Set(numbers.map(numberKey));
      if (keys.size < 2) continue;
      disagreements.push(told(numbers, 'several-numbers'));
      for (const key of keys) disputed.add(key);
    }
  }
  const runs = rows.filter(({ to }) => to !== undefined);
  const folded = groupedBy([...byNumber.keys()], (key) => key.toLowerCase());
  return { rows, byType, byNumber, folded, disagreements, runs, disputed };
}

function groupedBy<T>(all: readonly T[], by: (one: T) => string): ReadonlyMap<string, readonly T[]> {
  const groups = new Map<string, T[]>();
  for (const one of all) {
    const group = groups.get(by(one));
    if (group === undefined) groups.set(by(one), [one]);
    else group.push(one);
  }
  return groups;
}

/** The series a type belongs to: what stands before the stroke. */
export function seriesOf(type: string): string {
  return type.slice(0, Math.max(0, type.indexOf('/')));
}

/** A type or a number as it stands to what was asked for; `null` where the lines do not say how. */
export type Concorded = { readonly relation: TypeRelation | null; readonly sure: HowSure };
export type ConcordedNumber = Concorded & { readonly row: ConcordanceRow };
export type ConcordedType = Concorded & {
  readonly type: string;
  /** Its numbers in all books but the one asked for; `row.relation` is how each stands to the type itself. */
  readonly numbers: readonly ConcordedNumber[];
  /** Whether it was reached through another type that is its equal. */
  readonly through: string | null;
  readonly disputed: boolean;
};

/**
 * The types a number stands for, and their numbers elsewhere. Goes from a type to a type of another series only where
 * both are the *equal* of one number that nobody disputes; never through `close` or `overlaps`.
 */
export function concord(asked: Entry, all: Concordance): readonly ConcordedType[] {
  const found: ConcordedType[] = [];
  const { key, isOtherCase } = keyIn(asked, all);
  const disputed = all.disputed.has(key);
  for (const row of all.byNumber.get(key) ?? []) {
    if (found.some(({ type }) => type === row.type)) continue;
    const sure = isOtherCase ? noSurer(row.sure, 'possible') : row.sure;
    found.push(reached(row.type, row.relation, sure, key, null, disputed, all));
  }
  for (const row of all.runs) {
    if (numberKey(row) === key || found.some(({ type }) => type === row.type)) continue;
    if (!isAmong(asked, row)) continue;
    const relation = row.relation === 'equal' || row.relation === 'narrower' ? 'narrower' : null;
    found.push(reached(row.type, relation, row.sure, key, null, false, all));
  }
  for (let next = 0; next < found.length; next += 1) {
    const from = found[next];
    if (from === undefined || from.disputed) continue;
    for (const { type, sure } of equalsOf(from.type, all)) {
      if (found.some((one) => one.type === type)) continue;
      found.push(reached(type, from.relation, noSurer(from.sure, sure), key, from.type, false, all));
    }
  }
  return found;
}

/**
 * The key of a number in the lines; failing it, of the one that differs in the size of a letter alone, unless the book keeps such
 * numbers apart. What follows through that one is only possible, unless the book takes them for one.
 */
function keyIn(asked: Entry, all: Concordance): { readonly key: string; readonly isOtherCase: boolean } {
  const key = numberKey(asked);
  if (all.byNumber.has(key) || asked.letters === 'apart') return { key, isOtherCase: false };
  const others = all.folded.get(key.toLowerCase()) ?? [];
  const [other = key] = others.length === 1 ? others : [];
  return { key: other, isOtherCase: other !== key && asked.letters !== 'alike' };
}

/** Whether one number is one of a run that a book gives together. */
function isAmong(asked: Entry, run: Entry): boolean {
  const cited = ({ work, number, volume, to }: Entry) => ({
    work,
    number,
    relation: 'is' as const,
    ...(volume === undefined ? {} : { volume }),
    ...(to === undefined ? {} : { to }),
  });
  return isEntry(cited(asked), cited(run)) === 'yes';
}

function reached(
  type: string,
  relation: TypeRelation | null,
  sure: HowSure,
  asked: string,
  through: string | null,
  disputed: boolean,
  all: Concordance,
): ConcordedType {
  const numbers = (all.byType.get(type) ?? [])
    .filter((row) => numberKey(row) !== asked)
    .map((row) => ({
      row,
      relation:
        disputed || relation === null || all.disputed.has(numberKey(row)) ? null : joined(relation, row.relation),
      sure: noSurer(sure, row.sure),
    }));
  return { type, relation, sure, numbers, through, disputed };
}

/** The types of other series that are the equal of a type, by a number that is the equal of both. */
export function equalsOf(type: string, all: Concordance): readonly { readonly type: string; readonly sure: HowSure }[] {
  return (all.byType.get(type) ?? [])
    .filter((row) => row.relation === 'equal' && !all.disputed.has(numberKey(row)))
    .flatMap((row) =>
      (all.byNumber.get(numberKey(row)) ?? [])
        .filter((other) => other.relation === 'equal' && seriesOf(other.type) !== seriesOf(type))
        .map((other) => ({ type: other.type, sure: noSurer(row.sure, other.sure) })),
    );
}

const TURNED: Readonly<Record<TypeRelation, TypeRelation>> = {
  equal: 'equal',
  close: 'close',
  broader: 'narrower',
  narrower: 'broader',
  overlaps: 'overlaps',
};

/**
 * How the second number stands to the first, when the first stands so to a type and the second so to the same type; null
 * where nothing follows. An equal passes anything on; broader than what is broader is broader; nothing else follows.
 */
export function joined(first: TypeRelation, second: TypeRelation): TypeRelation | null {
  if (first === 'equal') return second;
  if (second === 'equal') return TURNED[first];
  // The first covers less than the type, and the second more: the second covers more than the first.
  if (first === 'narrower' && second === 'broader') return 'broader';
  if (first === 'broader' && second === 'narrower') return 'narrower';
  return null;
}
