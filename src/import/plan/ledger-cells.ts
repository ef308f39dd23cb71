import { parseDate } from '../../core/dating/parse-date.ts';
import { parseMoney } from '../../core/money/money.ts';
import { parseMoneyRange } from '../../core/money/money-range.ts';
import { isOwnColumn } from '../../catalogue/ledger-and-guide.ts';
import { LEDGER_COLUMNS } from '../../catalogue/schema/cabinet.ts';
import type { UnreadCell } from './draft.ts';

const READ: Readonly<Record<string, (cell: string) => boolean>> = {
  cost: (cell) => parseMoney(cell).ok,
  value: (cell) => parseMoneyRange(cell).ok,
  insured: (cell) => parseMoney(cell).ok,
  acquired: (cell) => parseDate(cell, { dateOf: 'event' }).ok,
};

/**
 * What a row puts in the ledger, by the ledger's own headings. A column that nobody mapped keeps its heading; where that could be
 * taken for one that is read, it is told apart by words behind it. So is a cell that its column could not hold.
 */
export function ledgerCells(
  cells: Readonly<Record<string, string>>,
  unread: readonly UnreadCell[],
): Readonly<Record<string, string>> {
  const kept: Record<string, string> = {};
  const put = (heading: string, text: string): void => {
    const held = kept[heading];
    kept[heading] = held === undefined || held === text ? text : `${held}; ${text}`;
  };
  for (const [heading, text] of Object.entries(cells)) {
    if (text.trim() === '') continue;
    const isRead = isLedgerColumn(heading) && heading !== 'piece' && (READ[heading]?.(text.trim()) ?? true);
    put(isRead ? heading : ownHeading(heading), text);
  }
  for (const { heading, text } of unread) put(ownHeading(heading), text);
  return kept;
}

/** A heading for a column of the keeper's own. */
export function ownHeading(heading: string): string {
  const name = heading.replace(/\s+/gu, ' ').trim();
  return isOwnColumn(name) ? name : `${name} (in the sheet)`.trim();
}

export function isLedgerColumn(name: string): boolean {
  return LEDGER_COLUMNS.some((column) => column === name);
}
