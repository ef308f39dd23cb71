import { createHash } from 'node:crypto';
import { resolve } from 'node:path';

/** A folder of our own for what is kept between runs, one for each thing it is kept for. */
export function cacheFolder(kind: string, ...keptFor: readonly string[]): string {
  return resolve('.cache', kind, createHash('sha256').update(keptFor.join('\n')).digest('hex').slice(0, 12));
}
