import type { SheetRow } from '../sheets/sheet.ts';
import type { Mapping, Settings } from './mapping.ts';

/** The reason a rule leaves a row out; null when none does. */
export function skipRule(row: SheetRow, keys: readonly string[], mapping: Mapping): string | null {
  const rule = mapping.skip.find(({ column, is }) => saysIn(row, keys, column, is));
  return rule === undefined ? null : `The mapping leaves out rows where ${rule.column} is "${rule.is}".`;
}

/** What the keeper settled, for this row: with the calendar its other columns say. */
export function settingsOf(row: SheetRow, keys: readonly string[], { settings, calendars }: Mapping): Settings {
  const rule = calendars.find(({ column, is }) => saysIn(row, keys, column, is));
  if (rule === undefined) return settings;
  const { years } = rule;
  return { ...settings, calendar: years, ...(years === 'AD' || years === 'BC' || years === 'AH' ? { years } : {}) };
}

function saysIn(row: SheetRow, keys: readonly string[], column: string, is: string): boolean {
  const at = keys.indexOf(column.replace(/\s+/g, ' ').trim());
  return at !== -1 && fits(row.cells[at]?.text ?? '', is);
}

/** `*` stands for anything; capitals do not matter. */
function fits(text: string, is: string): boolean {
  const parts = is.toLowerCase().split('*');
  const pattern = parts.map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')).join('.*');
  return new RegExp(`^${pattern}$`, 's').test(text.trim().toLowerCase());
}
