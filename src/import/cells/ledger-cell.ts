import { formatMoney, parseMoney } from '../../core/money/money.ts';
import type { Settings } from '../columns/mapping.ts';
import { SUMS } from '../../catalogue/fields/ledger-columns.ts';
import type { LedgerColumn } from '../../catalogue/fields/ledger-columns.ts';
import { datingOf, shortYear } from './date-cell.ts';
import type { Read } from './date-cell.ts';
import { plainSum } from './figures.ts';
import type { Cell, Said } from './cell-result.ts';

/**
 * A cell of a private column. Sums need their currency and days their order; one that cannot be read is told of and
 * stays in the ledger under its own heading, so that nothing is lost and `check` has nothing to refuse.
 */
export function readLedger(
  cell: Cell,
  column: LedgerColumn | undefined,
  heading: string,
  currency: string | undefined,
): readonly Said[] {
  if (column === undefined) return [{ kind: 'ledger', column: ownHeading(heading), text: cell.text }];
  const read = SUMS.has(column) ? sumOf(cell, currency) : column === 'acquired' ? acquiredIn(cell) : null;
  if (read === null) return [{ kind: 'ledger', column, text: cell.text }];
  if (read.ok) return [{ kind: 'ledger', column, text: read.text }];
  return [
    { kind: 'ledger', column: ownHeading(heading), text: cell.text },
    { kind: 'unread', field: `ledger ${column}`, because: read.because },
  ];
}

/** The day, month or year of a purchase. What the column of coins has settled of its years is nothing to it: only its days are. */
function acquiredIn({ text, value, settings: { days, short } }: Cell): Read {
  const settings: Settings = { ...(days === undefined ? {} : { days }), ...(short === undefined ? {} : { short }) };
  const [, month = '', year = ''] = /^(0?[1-9]|1[0-2]) ?[./] ?(\d\d)$/.exec(text.trim()) ?? [];
  const whole = value?.kind === 'day' || year === '' ? null : shortYear(year, short);
  return datingOf({ text: whole === null ? text : `${month}/${whole}`, value, settings }, 'event');
}

const NAMES: ReadonlySet<string> = new Set(['piece', 'cost', 'value', 'insured', 'acquired']);

/** A heading that would pass for a column of the ledger that wants more than words is distinguished. */
export function ownHeading(heading: string): string {
  return NAMES.has(heading.trim().toLowerCase()) ? `${heading.trim()} (as in the sheet)` : heading.trim();
}

function sumOf(cell: Cell, currency: string | undefined): ReturnType<typeof datingOf> {
  const { value, settings } = cell;
  const known = currency ?? settings.currency;
  if (value?.kind === 'money') return moneyRead(`${value.figure} ${value.currency}`, cell.text);
  const figure = value?.kind === 'number' ? value.figure : plainSum(cell.text, settings.decimal);
  const tidy = figure
    .replace(/^[~ca. ]*(?=\d)/i, '')
    .replace(/(\d)[.,](?:-{1,2}|–|—)/, '$1')
    .replace(/(\d)[.,](?=\s|$)/, '$1')
    .trim();
  const bare = /^[\d.,'’\s]+$/.test(tidy);
  return moneyRead(bare && known !== undefined ? `${tidy} ${known}` : tidy, cell.text, known);
}

function moneyRead(text: string, written: string, dollar?: string): ReturnType<typeof datingOf> {
  const read = parseMoney(text);
  const inDollars = read.ok ? read : parseMoney(text, { dollar });
  // A bare $ is written with the letters of its currency, which the ledger needs.
  if (!read.ok && inDollars.ok) return { ok: true, text: formatMoney(inDollars.value) };
  const twice = read.ok ? read : parseMoney(written);
  if (twice.ok) return { ok: true, text: read.ok ? text : written };
  return { ok: false, because: twice.problem };
}
