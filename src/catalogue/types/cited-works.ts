import type { CitedWork } from '../../core/references/reference.ts';
import type { Records } from '../records.ts';

/** The books of a cabinet as they may be cited: by key, and by the short name; and how each numbers, where its file says so. */
export function citedWorks(works: Records['works']): readonly CitedWork[] {
  return works.map(({ id, fields }) => ({
    id,
    names: fields.short === undefined ? [] : [fields.short],
    ...(fields.numbers && { numbers: fields.numbers }),
    ...(fields.letters && { letters: fields.letters }),
  }));
}
