import type { SheetRow } from '../../sheets/sheet.ts';
import type { Mapping } from './mapping.ts';

/** The reason a rule leaves a row out; null when none does. */
export function skipRule(row: SheetRow, keys: readonly string[], mapping: Mapping): string | null {
  const rule = mapping.skip.find(({ column, is }) => {
    const at = keys.indexOf(column.replace(/\s+/g, ' ').trim());
    return at !== -1 && fits(row.cells[at]?.text ?? '', is);
  });
  return rule === undefined ? null : `The mapping leaves out rows where ${rule.column} is "${rule.is}".`;
}

/** `*` stands for anything; capitals do not matter. */
function fits(text: string, is: string): boolean {
  const parts = is.toLowerCase().split('*');
  const pattern = parts.map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')).join('.*');
  return new RegExp(`^${pattern}$`, 's').test(text.trim().toLowerCase());
}
