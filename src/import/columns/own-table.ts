import { PIECE_ROWS } from '../../catalogue/fields/piece-fields.ts';
import type { Reading } from './mapping.ts';
import { isField } from './targets.ts';

/** Headings of `pieces.csv` that are not called as their fields are. */
const RENAMED: ReadonlyMap<string, string> = new Map(
  Object.entries(PIECE_ROWS).flatMap(([name, row]) => ('fact' in row ? [[row.fact, name] as const] : [])),
);

/** Follow from the other columns, and are worked out again. */
// A type names a series of the cabinet it came from, which another need not have.
const COMPUTED: ReadonlySet<string> = new Set(['edtf', 'address', 'type']);

/** Whether a sheet is a table that this program wrote. */
export function isOwnTable(headings: readonly string[]): boolean {
  return ['id', 'number', 'title', 'kind', 'edtf', 'gradeAsGiven', 'address'].every((heading) =>
    headings.includes(heading),
  );
}

export function ownReading(heading: string): Reading {
  if (COMPUTED.has(heading)) return { kind: 'nothing' };
  const field = RENAMED.get(heading) ?? heading;
  return isField(field) ? { kind: 'field', field } : { kind: 'ledger' };
}
