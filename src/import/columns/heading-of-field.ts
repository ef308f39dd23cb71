import type { Sheet } from '../sheets/sheet.ts';
import { columnKeys, readingsOf } from './column-key.ts';
import type { Mapping, Reading } from './mapping.ts';
import { parseReading } from './parse-column-rule.ts';
import { partsOf } from './pattern.ts';

/** The heading under which the sheet says each field of a piece, for telling a keeper where to look. */
export function headingsOfFields(sheet: Sheet, mapping: Mapping): ReadonlyMap<string, string> {
  const keys = columnKeys(sheet);
  const headings = new Map<string, string>();
  for (const [at, readings] of readingsOf(sheet, mapping).entries())
    for (const field of readings.flatMap(fieldsOf)) if (!headings.has(field)) headings.set(field, keys[at] ?? '');
  return headings;
}

function fieldsOf(reading: Reading): readonly string[] {
  if (reading.kind === 'reference') return ['references'];
  if (reading.kind === 'pattern')
    return partsOf(reading.pattern).flatMap((part) => {
      const read = parseReading(part);
      return read.ok ? fieldsOf(read.value) : [];
    });
  if (reading.kind !== 'field') return [];
  const { field } = reading;
  const [side = '', inner] = field.split(' ');
  if (inner !== undefined && ['obverse', 'reverse', 'edge', 'found'].includes(side)) return [`${side}.${inner}`, side];
  if (inner === 'from' || inner === 'to') return [side];
  return field.startsWith('reference') ? ['references'] : [field];
}
