import type { CitedWork } from '../../core/references/reference.ts';
import type { Records } from '../records.ts';

/** Made once for a list of books, for what is known of a book's names is known of the same object. */
const made = new WeakMap<Records['works'], readonly CitedWork[]>();

/** The books of a cabinet as they may be cited: by key, and by the short name; and how each numbers, where its file says so. */
export function citedWorks(works: Records['works']): readonly CitedWork[] {
  const cited = made.get(works) ?? works.map(citedWork);
  made.set(works, cited);
  return cited;
}

function citedWork({ id, fields: { short, numbers, letters } }: Records['works'][number]): CitedWork {
  return { id, names: short === undefined ? [] : [short], ...(numbers && { numbers }), ...(letters && { letters }) };
}
