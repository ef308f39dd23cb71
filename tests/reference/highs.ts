import load from 'highs';

/** A sum of whole multiples of the columns, in their order, that may not pass `most`. */
export type Row = { readonly of: readonly number[]; readonly most: number };

/**
 * The greatest value of each objective in turn, every earlier one held at its own greatest, over columns that are 0 or 1. Solved by
 * HiGHS (J. A. J. Hall and others, University of Edinburgh; MIT), a general solver of mixed-integer programs that knows nothing
 * of coins. Each objective is a programme of its own, so that no weights need be chosen between them.
 */
export function bestInTurn(objectives: readonly (readonly number[])[], rows: readonly Row[]): readonly number[] {
  const held = rows
    .filter(({ of }) => of.some((part) => part !== 0))
    .map(({ of, most }) => `${sumOf(of)} <= ${String(most)}`);
  return objectives.map((objective) => {
    if (objective.every((part) => part === 0)) return 0;
    const best = maximum(objective, held);
    held.push(`${sumOf(objective)} = ${String(best)}`);
    return best;
  });
}

const solver = await load();
/** No gap between the best found and the best there may be; the defaults allow one in ten thousand. */
const EXACT = { output_flag: false, mip_rel_gap: 0, mip_abs_gap: 0 } as const;

function maximum(objective: readonly number[], constraints: readonly string[]): number {
  const columns = objective.map((_, at) => `x${String(at)}`);
  const problem = [
    'Maximize',
    ` best: ${sumOf(objective)}`,
    'Subject To',
    ...constraints.map((line, at) => ` c${String(at)}: ${line}`),
    'Binary',
    ...columns.map((column) => ` ${column}`),
    'End',
  ].join('\n');
  const solution = solver.solve(problem, EXACT);
  if (solution.Status !== 'Optimal') throw new Error(`The reference solver ended with ${solution.Status}.`);
  // Every multiple is whole, so the value is; the solver's arithmetic is not.
  return objective.reduce((sum, part, at) => {
    const primal = solution.Columns[`x${String(at)}`]?.Primal ?? 0;
    return sum + part * Math.round(primal);
  }, 0);
}

function sumOf(of: readonly number[]): string {
  return of
    .flatMap((part, at) => (part === 0 ? [] : [`${part < 0 ? '-' : '+'} ${String(Math.abs(part))} x${String(at)}`]))
    .join('\n ');
}
