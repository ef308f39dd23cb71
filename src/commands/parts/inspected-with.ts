import { existsSync } from 'node:fs';
import { join } from 'node:path';

/** A site that was held against no ledger, as on a machine that private/ never reaches, is not said to be without its secrets. */
export function inspectedWith(cabinet: string): string {
  return existsSync(join(cabinet, 'private', 'ledger.csv'))
    ? 'every byte inspected, nothing private in it'
    : 'every byte inspected, but there is no private/ledger.csv to hold it against';
}
