import { isLedgerColumn, LEDGER_ROWS } from '../../catalogue/fields/ledger-columns.ts';
import type { FieldFacts } from '../../catalogue/fields/row.ts';

/** How a column of the ledger is shown; one of the keeper's own has its heading for a label. */
export function ledgerRow(column: string): FieldFacts {
  if (isLedgerColumn(column)) return LEDGER_ROWS[column];
  return { label: column, says: 'A column of your own.', example: '', control: 'line' };
}

/** `12.50`, `1.200,00`, `50-60`, `2,-`. */
const BARE = /^\d[\d., ]*(?:[-–]{1,2}(?:\d[\d., ]*)?)?$/;

/** A sum without its currency is in the one that the cabinet says its ledger is kept in; it is written with it. */
export function withCurrency(words: string, currency: string | undefined): string {
  return currency !== undefined && BARE.test(words.trim()) ? `${words.trim()} ${currency}` : words;
}
