import { readLedger } from '../../import/cells/ledger-cell.ts';
import { isLedgerField } from '../../import/columns/targets.ts';
import type { Outcome } from '../../core/outcome.ts';
import { good, refuse } from '../../core/outcome.ts';

/** A private answer as it will be in the ledger, read as import reads a cell: `28/11/2026`, and `240` in the cabinet's currency. */
export function privateAnswer(column: string, answer: string, currency: string | undefined): Outcome<string> {
  if (!isLedgerField(column)) return good(answer);
  const settings = currency === undefined ? {} : { currency };
  const said = readLedger({ text: answer, settings }, column, column, undefined);
  const unread = said.find(({ kind }) => kind === 'unread');
  if (unread?.kind === 'unread') return refuse(unread.because.replace(/Say in the mapping [^.]*?, or write/, 'Write'));
  const [first] = said;
  return good(first?.kind === 'ledger' ? first.text : answer);
}
