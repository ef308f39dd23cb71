import type { FieldFacts, ReadAs } from './row.ts';

/** For whom a schedule of the cabinet is written; each is told only what it needs. */
export const READERS = ['keeper', 'insurer', 'police'] as const;
export type Reader = (typeof READERS)[number];

/** What a column of the ledger has beside what its box at the desk says. */
export type LedgerFacts = FieldFacts & {
  /** What stands above it in a schedule, and who is told it there. */
  readonly heading: string;
  readonly told: readonly Reader[];
  /** How `add` asks for it; a column without is only taken from its flag. */
  readonly asks?: string;
};

const line = (label: string, says: string, example: string, reads?: ReadAs): FieldFacts => ({
  label,
  says,
  example,
  control: 'line',
  ...(reads === undefined ? {} : { reads }),
});
const INSURER: readonly Reader[] = ['keeper', 'insurer'];
const KEEPER: readonly Reader[] = ['keeper'];

/**
 * The columns of `private/ledger.csv`, one row each, in the order of the file, the form, the questions and the schedule: none of
 * them is ever published, and what they hold is looked for in everything that is. A sum names its currency.
 */
const ROWS = {
  cost: {
    ...line('Cost', 'What you paid, with its currency.', '45 GBP', 'money'),
    heading: 'Cost', told: INSURER, asks: 'What did it cost? (private)',
  },
  value: {
    ...line('Value', 'What it is worth to you, with its currency; a range where you know no better: 50-60 GBP.', '60 GBP', 'money'),
    heading: 'Value', told: READERS,
  },
  insured: {
    ...line('Insured for', 'What it is insured for.', '70 GBP', 'money'),
    heading: 'Insured for', told: INSURER,
  },
  acquired: {
    ...line('Acquired', 'When you got it.', '2011-05-14', 'event'),
    heading: 'Acquired', told: READERS, asks: 'When did you get it? (private)',
  },
  seller: {
    ...line('Seller', 'From whom you have it.', 'a stall at the fair'),
    heading: 'Bought from', told: INSURER, asks: 'From whom? (private)',
  },
  storage: {
    ...line('Kept', 'Where it is kept.', 'cabinet S, tray 3'),
    heading: 'Kept', told: KEEPER, asks: 'Where do you keep it? (private)',
  },
  'find-spot': {
    ...line('Find spot', 'Exactly where it was found.', 'the field behind the barn'),
    heading: 'Found at', told: KEEPER,
  },
  certificate: {
    ...line('Certificate', 'The number of its certificate.', 'A-1'),
    heading: 'Certificate', told: READERS,
  },
  notes: {
    ...line('Notes', 'Anything else that nobody else is to read.', 'weigh again'),
    heading: 'Notes', told: KEEPER,
  },
} as const satisfies Readonly<Record<string, LedgerFacts>>; // prettier-ignore

export type LedgerColumn = keyof typeof ROWS;
export const LEDGER_ROWS: Readonly<Record<LedgerColumn, LedgerFacts>> = ROWS;
export const LEDGER_NAMES = Object.keys(ROWS) as readonly LedgerColumn[];
/** The columns that hold sums of money. */
export const SUMS: ReadonlySet<LedgerColumn> = new Set(
  LEDGER_NAMES.filter((column) => LEDGER_ROWS[column].reads === 'money'),
);
/** All of them, `piece` first, which names the piece. */
export const LEDGER_COLUMNS: readonly ['piece', ...LedgerColumn[]] = ['piece', ...LEDGER_NAMES];

/** Whether a heading is one that every ledger may have; the keeper's own columns are private as well. */
export function isLedgerColumn(name: string): name is LedgerColumn {
  return Object.hasOwn(ROWS, name);
}
