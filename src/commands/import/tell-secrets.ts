import { answerFor } from '../../privacy/not-secret.ts';
import type { SecretQuestion } from '../../import/plan/plan-import.ts';

/** Asks of each private column that public text would tell of, once: what it holds, how often, and the three answers. */
export function tellSecrets(
  secrets: readonly SecretQuestion[],
  headings: ReadonlyMap<string, string>,
  shownMapping: string,
  today: string,
): string {
  if (secrets.length === 0) return '';
  const lines = secrets.map(({ column, field, rows }) => {
    const where = headings.get(field) ?? field;
    const count =
      rows.length === 1 ? `row ${rows[0] ?? ''}` : `${rows.length} rows, the first of them row ${rows[0] ?? ''}`;
    return `  ${column}: what it keeps is in "${where}" too, in ${count}.
    ${answerFor(column) === '*' ? 'It guards nothing (page numbers, a series)' : 'There it is no secret (a face value, a common word)'}: write ${quoted(column)},${answerFor(column)},${today} in private/not-secret.csv
    It may be published: give ${quoted(column)} a field under columns: in ${shownMapping}
    It is private: ${headings.has(field) ? `write ${quoted(where)}: ledger under columns: there, or ` : ''}take the words out of the sheet`;
  });
  return `Private columns that would be told in public; such cells and rows are kept back until you say:\n${lines.join('\n')}`;
}

function quoted(text: string): string {
  return /[",:\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
