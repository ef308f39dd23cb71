import type { CabinetFolder } from './files.ts';
import type { Problem } from './problem.ts';
import type { Records } from './records.ts';

/** Finds what is wrong in the ledger and the guide. */
export function checkPrivate(_records: Records, _folder: CabinetFolder): readonly Problem[] {
  return [];
}
