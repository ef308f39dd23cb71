import { PIECE_ROWS } from '../catalogue/fields/piece-fields.ts';
import type { FieldFacts } from '../catalogue/fields/row.ts';
import type { Records } from '../catalogue/records.ts';
import { onceFor } from '../site/once-for.ts';
import { namesIn } from './new-names.ts';

/** A value of a piece in the keeper's words: as it was written, with the names of rulers, mints and denominations for their ids. */
export function factInWords(field: string, value: unknown, records: Records): string {
  const row: FieldFacts | undefined = Object.hasOwn(PIECE_ROWS, field) ? PIECE_ROWS[field as keyof typeof PIECE_ROWS] : undefined; // prettier-ignore
  const words = written(value);
  const names = row?.list === undefined ? undefined : calledIn(records).get(row.list);
  if (names === undefined) return words.join('; ');
  return words.map((id) => names.get(id) ?? id).join('; ');
}

/** What everything in the lists is called, by its id. */
const calledIn = onceFor(
  (records: Records) =>
    new Map(
      (['rulers', 'mints', 'denominations'] as const).map((list) => [
        list as string,
        new Map(namesIn(list, records).map(({ id, names }) => [id, names[0] ?? id])),
      ]),
    ),
);

function written(value: unknown): readonly string[] {
  if (value === undefined || value === null) return [];
  if (Array.isArray(value)) return value.flatMap(written);
  if (typeof value === 'string') return [value];
  if (typeof value === 'number') return [String(value)];
  const { text, hours } = value as { readonly text?: string; readonly hours?: number | null };
  if (text !== undefined) return [text];
  return hours === undefined ? [] : [hours === null ? 'none' : `${hours}h`];
}
