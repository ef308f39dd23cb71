import { compareGrades } from '../grade/compare-grades.ts';
import type { Graded } from '../grade/compare-grades.ts';

/** One line of a census: a specimen somebody recorded. `sameAs`: another line, or a piece, that is the same object. */
export type Specimen = {
  readonly specimen: string;
  readonly grade: Graded | null;
  readonly sameAs: readonly string[];
};

/** Where one stands among those recorded: `2nd to 4th of 7`. `without`: how many of them nothing compares it with. */
export type Standing = {
  /** Whether it has a grade to be ranked by. */
  readonly isGraded: boolean;
  readonly best: number;
  readonly worst: number;
  readonly of: number;
  readonly withoutComparison: number;
};

/** An object with every grade it was given by those who recorded it. */
export type CensusObject = { readonly names: readonly string[]; readonly grades: readonly (Graded | null)[] };

/** The lines of a census as objects: lines that are the same object are one, through any number of steps. */
export function objectsOf(specimens: readonly Specimen[]): readonly CensusObject[] {
  const groups = new Map<string, Set<string>>();
  const groupOf = (name: string): Set<string> => {
    const group = groups.get(name) ?? new Set([name]);
    groups.set(name, group);
    return group;
  };
  for (const { specimen, sameAs } of specimens) {
    for (const other of sameAs) {
      const whole = new Set([...groupOf(specimen), ...groupOf(other)]);
      for (const name of whole) groups.set(name, whole);
    }
  }
  const objects = new Map<Set<string>, { names: Set<string>; grades: (Graded | null)[] }>();
  for (const { specimen, grade } of specimens) {
    const group = groupOf(specimen);
    const object = objects.get(group) ?? { names: new Set(group), grades: [] };
    object.grades.push(grade);
    objects.set(group, object);
  }
  return [...objects.values()].map(({ names, grades }) => ({ names: [...names], grades }));
}

/**
 * Where a piece stands among the recorded specimens of its type. It is counted once, whether or not it is among them
 * (`piece`: its name there). Those certainly better push it down; those it may or may not beat, and those nothing
 * compares it with, only widen the interval. An object with several grades is better only if it is so by each.
 */
export function standingOf(
  piece: { readonly name: string; readonly grade: Graded | null },
  specimens: readonly Specimen[],
): Standing {
  const others = objectsOf(specimens).filter(({ names }) => !names.includes(piece.name));
  let better = 0;
  let worse = 0;
  let without = 0;
  for (const { grades } of others) {
    const verdicts = grades.map((grade) => between(grade, piece.grade));
    if (verdicts.every((verdict) => verdict === 'better')) better += 1;
    else if (verdicts.every((verdict) => verdict === 'worse or equal')) worse += 1;
    else if (verdicts.some((verdict) => verdict === 'incomparable')) without += 1;
  }
  const of = others.length + 1;
  const isGraded = piece.grade !== null && piece.grade.low !== null;
  return { isGraded, best: better + 1, worst: of - worse, of, withoutComparison: without };
}

function between(other: Graded | null, mine: Graded | null): 'better' | 'worse or equal' | 'open' | 'incomparable' {
  if (other === null || mine === null) return 'incomparable';
  const up = compareGrades(other, mine).verdict;
  if (up === 'cannot be compared') return 'incomparable';
  if (up === 'certainly better') return 'better';
  return up === 'not better' ? 'worse or equal' : 'open';
}

const ENDINGS: Readonly<Record<string, string>> = { one: 'st', two: 'nd', few: 'rd', other: 'th' };
const ORDINALS = new Intl.PluralRules('en', { type: 'ordinal' });

/** `1st`, `2nd`, `11th`. */
export function ordinal(count: number): string {
  return `${String(count)}${ENDINGS[ORDINALS.select(count)] ?? 'th'}`;
}

/** `2nd to 4th of 7 recorded`; `the only one recorded`; `one of 7 recorded; it is not graded, so it is not ranked`. */
export function formatStanding({ isGraded, best, worst, of }: Standing): string {
  if (of === 1) return 'the only one recorded';
  if (!isGraded) return `one of ${String(of)} recorded; it is not graded, so it is not ranked`;
  const place = best === worst ? ordinal(best) : `${ordinal(best)} to ${ordinal(worst)}`;
  return `${place} of ${String(of)} recorded`;
}
