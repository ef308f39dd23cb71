import { columnKeys, readingsOf } from '../../import/columns/column-key.ts';
import type { Mapping, Reading } from '../../import/columns/mapping.ts';
import { formatReading } from '../../import/columns/parse-column-rule.ts';
import type { ImportPlan } from '../../import/plan/plan-import.ts';
import type { Sheet } from '../../import/sheets/sheet.ts';

/** Columns side by side, a line each: the heading, what its cells become, how many there are, how many could not be read. */
export function tellColumns(sheet: Sheet, mapping: Mapping, plan: ImportPlan): string {
  const keys = columnKeys(sheet);
  const readings = readingsOf(sheet, mapping);
  const unread = new Map<string, number>();
  for (const { heading } of plan.unread)
    for (const key of heading.split(' + ')) unread.set(key, (unread.get(key) ?? 0) + 1);
  const rows = keys.map((key, at) => {
    const filled = sheet.rows.filter(({ cells }) => (cells[at]?.text ?? '') !== '').length;
    const missed = unread.get(key) ?? 0;
    const counts = filled === 0 ? 'empty' : `${filled} ${filled === 1 ? 'cell' : 'cells'}`;
    return [shorten(key, 28), becomes(readings[at] ?? []), `${counts}${missed === 0 ? '' : `, ${missed} not read`}`];
  });
  return inColumns(rows);
}

/** What a column becomes, in a keeper's words. */
function becomes(readings: readonly Reading[]): string {
  return shorten(readings.map(inWords).join('; '), 46);
}

function inWords(reading: Reading): string {
  if (reading.kind === 'nothing') return 'left out';
  if (reading.kind === 'ledger')
    return reading.column === undefined
      ? 'ledger, under its own heading'
      : `ledger: ${formatReading(reading).replace('ledger ', '')}`;
  return formatReading(reading);
}

export function shorten(text: string, length: number): string {
  return text.length <= length ? text : `${text.slice(0, length - 1)}…`;
}

/** Rows with their cells one under the other. */
export function inColumns(rows: readonly (readonly string[])[]): string {
  const widths = (rows[0] ?? []).map((_, at) => Math.max(...rows.map((row) => (row[at] ?? '').length)));
  return rows
    .map((row) => `  ${row.map((cell, at) => cell.padEnd(at === row.length - 1 ? 0 : (widths[at] ?? 0))).join('  ')}`)
    .join('\n');
}
