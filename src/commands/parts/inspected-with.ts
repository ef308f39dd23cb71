import type { CabinetFolder } from '../../catalogue/files.ts';
import type { Records } from '../../catalogue/records.ts';
import { guardOf } from '../../privacy/guard.ts';

/** A site that was held against nothing, as on a machine that private/ never reaches, is not said to be without its secrets. */
export function inspectedWith(folder: CabinetFolder, records: Records): string {
  const { values, sums } = guardOf(folder, records);
  return values.byWord.size + values.wordless.length + sums.size > 0
    ? 'every byte inspected, nothing private in it'
    : 'every byte inspected, but private/ holds nothing to look for in it';
}
