import { parseMoney } from '../core/money/money.ts';
import { readCsv } from '../catalogue/csv.ts';
import { LEDGER_COLUMNS } from '../catalogue/fields/ledger-columns.ts';
import type { CabinetFolder } from '../catalogue/files.ts';
import { lettersOf } from './letters.ts';
import { MONEY } from './private-cells.ts';
import { whereStands } from './find-values.ts';

/** What a keeper has answered once: this value, in this column, may be known. */
export const NOT_SECRET = 'private/not-secret.csv';
/** The column under which a place in a public text is answered for. */
export const PLACE = 'place';

/**
 * What a keeper writes as the value of an answer: a column with a meaning of its own, such as cost or seller, guards something in
 * every other row, so there the words alone are answered for.
 */
export function answerFor(column: string): '*' | 'the words' {
  return column !== 'notes' && LEDGER_COLUMNS.some((known) => known === column) ? 'the words' : '*';
}

/** The column under which it is answered, once for all its cells, that a private column and a public fact of a piece say the same. */
export const bothOf = (column: string, field: string): string => `${column} in ${field}`;

export type Answered = (column: string, value: string) => boolean;

/**
 * Whether a private value is answered for in `private/not-secret.csv`. An answer covers what is written there and every part of
 * it; of a sum, the same sum however it is written; a star answers for every value of a column that guards nothing, such as a
 * column of page numbers or of series.
 */
export function answeredIn(folder: CabinetFolder): Answered {
  const { rows } = readCsv(folder.files.find(({ file }) => file === NOT_SECRET)?.text ?? '');
  const byColumn = new Map<string, Answer[]>();
  for (const row of rows) {
    const [column, value] = [(row['column'] ?? '').trim(), row['value'] ?? ''];
    const answer = { letters: lettersOf(value), sum: sumOf(value), isWhole: value.trim() === '*' };
    byColumn.set(column, [...(byColumn.get(column) ?? []), answer]);
  }
  return (column, value) => {
    const answers = byColumn.get(column);
    if (answers === undefined) return false;
    const letters = lettersOf(value).trim();
    const sum = MONEY.includes(column) ? sumOf(value) : null;
    return answers.some(
      (one) => one.isWhole || whereStands(one.letters, letters) !== -1 || (sum !== null && one.sum === sum),
    );
  };
}

type Answer = { readonly letters: string; readonly sum: string | null; readonly isWhole: boolean };

function sumOf(text: string): string | null {
  const money = parseMoney(text, { dollar: 'USD' });
  return money.ok ? `${money.value.currency} ${money.value.minor}` : null;
}
