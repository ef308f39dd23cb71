import { PROBLEMS } from './problems.ts';

export type ProblemKind = keyof typeof PROBLEMS;

/** One thing that is wrong: where it stands, what it is, what to write instead. */
export type Problem = {
  readonly kind: ProblemKind;
  /** Path inside the cabinet, with forward slashes. */
  readonly file: string;
  /** Counted from 1; null when the whole file is meant. */
  readonly line: number | null;
  /** `provenance.2.when`; null when the whole file is meant. */
  readonly field: string | null;
  readonly says: string;
};

/** Where a problem is in a cabinet. */
export type Spot = { readonly file: string; readonly line?: number | null; readonly field?: string | null };

/** A problem of a kind from the one table, with the facts its sentence needs. */
export function problem<K extends ProblemKind>(
  kind: K,
  spot: Spot,
  ...facts: Parameters<(typeof PROBLEMS)[K]>
): Problem {
  const say: (...facts: Parameters<(typeof PROBLEMS)[K]>) => string = PROBLEMS[kind] as never;
  return { kind, file: spot.file, line: spot.line ?? null, field: spot.field ?? null, says: say(...facts) };
}

/** In the order a keeper would fix them: file by file, from the top. */
export function orderProblems(problems: readonly Problem[]): readonly Problem[] {
  return [...problems].sort(
    (a, b) =>
      (a.file < b.file ? -1 : a.file > b.file ? 1 : 0) ||
      (a.line ?? 0) - (b.line ?? 0) ||
      (a.field ?? '').localeCompare(b.field ?? ''),
  );
}

/** Lines of a table that are named one by one. */
const LINES_NAMED = 5;

/** In a table the same slip in the same column, many times over, is told once, with its lines. In file order. */
export function gatherProblems(problems: readonly Problem[]): readonly Problem[] {
  const groups = new Map<string, Problem[]>();
  for (const one of problems) {
    const isInTable = one.file.endsWith('.csv') && one.line !== null;
    const key = JSON.stringify(isInTable ? [one.kind, one.file, one.field, one.says] : [groups.size]);
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  return [...groups.values()].flatMap(([first, ...more]) => {
    if (first === undefined || more.length === 0) return first ?? [];
    const named = more.slice(0, LINES_NAMED).map(({ line }) => String(line));
    const others = more.length > LINES_NAMED ? ` and ${String(more.length - LINES_NAMED)} more` : '';
    return {
      ...first,
      says: `${first.says} The same in line${more.length === 1 ? '' : 's'} ${named.join(', ')}${others}.`,
    };
  });
}

/** Two lines: where, then what to write instead. */
export function formatProblem(found: Problem, folder: string): string {
  const where = [`${folder}/${found.file}${found.line === null ? '' : `:${found.line}`}`, found.field]
    .filter((part) => part !== null)
    .join(' · ');
  return `${where}\n  ${found.says}`;
}
