import type { Problem } from '../../catalogue/problem.ts';

/**
 * Whether a problem of the cabinet may change a plan. A missing photograph or a slip in an exhibit does not; a piece, a rule or
 * a price that cannot be read does.
 */
export function concernsPlan({ kind, file }: Problem): boolean {
  return !/^(photograph|picture)-/.test(kind) && !/^(exhibits|eras|works)\/|^private\/ledger\.csv$/.test(file);
}
