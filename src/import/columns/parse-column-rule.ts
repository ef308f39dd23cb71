import type { Outcome } from '../../core/outcome.ts';
import { good, refuse } from '../../core/outcome.ts';
import { isCurrency } from '../../core/money/currencies.ts';
import { nearestName } from '../../catalogue/nearest.ts';
import type { Reading } from './mapping.ts';
import { isLedgerColumn, LEDGER_NAMES, SUMS } from '../../catalogue/fields/ledger-columns.ts';
import { FIELDS, isField, UNITS } from './targets.ts';
import { patternProblem } from './pattern.ts';

/** Reads `weight in g`, `grade in uk`, `ledger cost in GBP`, `reference to North`, `nothing`, or a pattern with parts in braces. */
export function parseReading(text: string): Outcome<Reading> {
  const words = text.trim().replace(/\s+/g, ' ');
  if (words.includes('{')) {
    const wrong = patternProblem(text);
    return wrong === null ? good({ kind: 'pattern', pattern: text }) : refuse(wrong);
  }
  if (words === 'nothing') return good({ kind: 'nothing' });
  const [, work] = /^reference to (.+)$/.exec(words) ?? [];
  if (work !== undefined) return good({ kind: 'reference', work });
  const [, name = '', unit] = /^(.*?)(?: in (.+))?$/.exec(words) ?? [];
  if (/^ledger\b/.test(name)) return parseLedger(name.slice('ledger'.length).trim(), unit);
  if (!isField(name)) return refuse(unknownField(name));
  if (unit === undefined) return good({ kind: 'field', field: name });
  const units = UNITS[name];
  if (units === undefined) return refuse(`"${name}" has no unit. Write ${name} alone.`);
  const called = name === 'grade' ? 'scale' : 'unit';
  if (!units.includes(unit))
    return refuse(`"${unit}" is no ${called} of ${name}. Write ${name} in ${units.join(', ')}.`);
  return good({ kind: 'field', field: name, unit });
}

export function formatReading(reading: Reading): string {
  if (reading.kind === 'pattern') return reading.pattern;
  if (reading.kind === 'nothing') return 'nothing';
  if (reading.kind === 'reference') return `reference to ${reading.work}`;
  if (reading.kind === 'field') return reading.field + (reading.unit === undefined ? '' : ` in ${reading.unit}`);
  const column = reading.column === undefined ? 'ledger' : `ledger ${reading.column}`;
  return reading.currency === undefined ? column : `${column} in ${reading.currency}`;
}

function parseLedger(column: string, currency: string | undefined): Outcome<Reading> {
  if (column === '' && currency === undefined) return good({ kind: 'ledger' });
  if (!isLedgerColumn(column)) {
    const near = nearestName(column, LEDGER_NAMES);
    const instead = near === null ? `one of ledger ${LEDGER_NAMES.join(', ledger ')}` : `ledger ${near}`;
    return refuse(`The ledger has no column "${column}". Write ${instead}, or ledger alone to keep the heading.`);
  }
  if (currency === undefined) return good({ kind: 'ledger', column });
  if (!SUMS.has(column)) return refuse(`"${column}" is no sum and has no currency. Write ledger ${column}.`);
  if (!isCurrency(currency)) return refuse(`"${currency}" is no currency. Write its three letters, like GBP or EUR.`);
  return good({ kind: 'ledger', column, currency });
}

function unknownField(name: string): string {
  const near = nearestName(name, FIELDS);
  return near === null
    ? `There is no field "${name}". Write ledger to keep the column private, or one of ${FIELDS.join(', ')}.`
    : `There is no field "${name}". Write ${near}.`;
}
