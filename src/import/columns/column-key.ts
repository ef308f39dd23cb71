import type { Sheet } from '../sheets/sheet.ts';
import type { Mapping, Reading } from './mapping.ts';

/** The name a mapping file knows each column by: its heading; `Price [F]` or `[F]` where it stands twice or is empty. */
export function columnKeys(sheet: Sheet): readonly string[] {
  const headings = sheet.columns.map(({ heading }) => heading.replace(/\s+/g, ' ').trim());
  const times = new Map<string, number>();
  for (const heading of headings) times.set(heading, (times.get(heading) ?? 0) + 1);
  return headings.map((heading, at) => {
    if (heading !== '' && times.get(heading) === 1) return heading;
    return `${heading} [${sheet.columns[at]?.letter ?? ''}]`.trim();
  });
}

export const TO_LEDGER: readonly Reading[] = [{ kind: 'ledger' }];

/** How each column is read; one that the mapping does not name goes to the ledger. */
export function readingsOf(sheet: Sheet, mapping: Mapping): readonly (readonly Reading[])[] {
  const named = new Map(
    mapping.columns.map(({ heading, readings }) => [heading.replace(/\s+/g, ' ').trim(), readings]),
  );
  return columnKeys(sheet).map((key) => {
    const readings = named.get(key);
    return readings === undefined || readings.length === 0 ? TO_LEDGER : readings;
  });
}
