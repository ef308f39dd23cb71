import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { readCsv } from './csv.ts';

/** A value of `private/` that must be found in nothing published. */
export type PrivateValue = { readonly value: string; readonly from: string; readonly column: string };

/** Columns that name what is public anyway. */
const PUBLIC_COLUMNS: Readonly<Record<string, readonly string[]>> = {
  'ledger.csv': ['piece'],
  'guide.csv': ['set', 'place', 'grade', 'currency', 'date'],
};

/**
 * Every value of the ledger and the guide that could be told apart in a published text: at least five characters with
 * a letter or a sign among them. A bare number or a bare day stands in too many public facts to tell anything.
 */
export async function readPrivateValues(cabinet: string): Promise<readonly PrivateValue[]> {
  const values = new Map<string, PrivateValue>();
  for (const [name, left] of Object.entries(PUBLIC_COLUMNS)) {
    const text = await readFile(join(cabinet, 'private', name), 'utf8').catch(() => '');
    for (const row of readCsv(text).rows) {
      for (const [column, raw] of Object.entries(row)) {
        const value = raw.trim();
        if (left.includes(column) || value.length < 5 || /^[\d\s.,/-]+$/.test(value)) continue;
        values.set(value, { value, from: `private/${name}`, column });
      }
    }
  }
  return [...values.values()];
}
