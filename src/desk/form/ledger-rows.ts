import { LEDGER_COLUMNS } from '../../catalogue/schema/cabinet.ts';
import type { FactsTable, FieldFacts, ReadAs } from '../../catalogue/fields/row.ts';

function line(label: string, says: string, example: string, reads?: ReadAs): FieldFacts {
  return { label, says, example, control: 'line', ...(reads === undefined ? {} : { reads }) };
}

/** The columns of the ledger as the desk shows them; none of them is ever published. */
const ROWS: FactsTable = {
  cost: line('Cost', 'What you paid, with its currency.', '45 GBP', 'money'),
  value: line(
    'Value',
    'What it is worth to you, with its currency; a range where you know no better: 50-60 GBP.',
    '60 GBP',
    'money',
  ),
  insured: line('Insured for', 'What it is insured for.', '70 GBP', 'money'),
  storage: line('Kept', 'Where it is kept.', 'cabinet S, tray 3'),
  seller: line('Seller', 'From whom you have it.', 'a stall at the fair'),
  'find-spot': line('Find spot', 'Exactly where it was found.', 'the field behind the barn'),
  certificate: line('Certificate', 'The number of its certificate.', 'A-1'),
  acquired: line('Acquired', 'When you got it.', '2011-05-14', 'event'),
  notes: line('Notes', 'Anything else that nobody else is to read.', 'weigh again'),
};

/** The row of a column; one of the keeper's own has its heading for a label. */
export function ledgerRow(column: string): FieldFacts {
  return (Object.hasOwn(ROWS, column) ? ROWS[column] : undefined) ?? line(column, 'A column of your own.', '');
}

/** The columns that every ledger has, in the order of the form. */
export const LEDGER_NAMES: readonly string[] = LEDGER_COLUMNS.filter((column) => column !== 'piece');

/** `12.50`, `1.200,00`, `50-60`, `2,-`. */
const BARE = /^\d[\d., ]*(?:[-–]{1,2}(?:\d[\d., ]*)?)?$/;

/** A sum without its currency is in the one that the cabinet says its ledger is kept in; it is written with it. */
export function withCurrency(words: string, currency: string | undefined): string {
  return currency !== undefined && BARE.test(words.trim()) ? `${words.trim()} ${currency}` : words;
}
