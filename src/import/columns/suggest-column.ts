import type { SheetCell } from '../sheets/sheet.ts';
import type { Language, Reading } from './mapping.ts';
import { matchHeading } from './match-heading.ts';
import { fieldQuestion } from './column-questions.ts';
import { filled, looksPaid, numbersEachRow, saysKinds, tellsStriking } from './detect-conventions.ts';
import type { Question } from './question.ts';
import { isField, UNITS } from './targets.ts';
import type { LedgerField } from './targets.ts';
import { isCurrency } from '../../core/money/currencies.ts';

export type Suggested = {
  readonly heading: string;
  readonly readings: readonly Reading[];
  readonly questions: readonly Question[];
  readonly languages: readonly Language[];
};
export type ListNames = {
  readonly rulers: readonly string[];
  readonly mints: readonly string[];
  readonly denominations: readonly string[];
  readonly works: readonly string[];
};

/** How one column is read, by its heading and its cells; where either leaves a doubt, the private way and a question. */
export function suggestColumn(heading: string, key: string, cells: readonly SheetCell[], lists: ListNames): Suggested {
  const matched = matchHeading(heading);
  const { languages, unit } = matched;
  const said = filled(cells);
  const example = said[0]?.text ?? '';
  const column = (readings: readonly Reading[], questions: readonly Question[] = []): Suggested => ({
    heading: key,
    readings,
    questions,
    languages,
  });
  const asked = (doubt: string, otherwise: Reading) => {
    const question = fieldQuestion(doubt, key, example, unit);
    return column([otherwise], question === null || said.length === 0 ? [] : [question]);
  };
  if (matched.kind === 'ledger') {
    const currency = unit !== null && isCurrency(unit) ? { currency: unit } : {};
    return column([
      {
        kind: 'ledger',
        column: matched.column,
        ...(['cost', 'value', 'insured'].includes(matched.column) ? currency : {}),
      },
    ]);
  }
  if (matched.kind === 'field' && isField(matched.field)) {
    // A public heading over sums of money is private all the same.
    if (looksPaid(said) && ['number', 'title', 'weight', 'grade', 'date'].includes(matched.field))
      return asked('value', { kind: 'ledger' });
    const takes = UNITS[matched.field] ?? [];
    return column([
      { kind: 'field', field: matched.field, ...(unit !== null && takes.includes(unit) ? { unit } : {}) },
    ]);
  }
  if (matched.kind === 'doubtful') {
    if (matched.doubt === 'date' && tellsStriking(said)) return column([{ kind: 'field', field: 'date' }]);
    if (matched.doubt === 'number' && numbersEachRow(cells)) return column([{ kind: 'field', field: 'number' }]);
    if (matched.doubt === 'description' && saysKinds(said)) return column([{ kind: 'field', field: 'kind' }]);
    const isArea = /region|origin|herkunft|city|town|ville|stadt|citt|ciudad|\bstad\b/i.test(heading);
    const inLedger: Readonly<Record<string, LedgerField>> = {
      date: 'acquired',
      value: 'value',
      ...(isArea ? {} : { place: 'storage' }),
    };
    const known = Object.entries(inLedger).find(([doubt]) => doubt === matched.doubt)?.[1];
    return asked(matched.doubt, known === undefined ? { kind: 'ledger' } : { kind: 'ledger', column: known });
  }
  const work = lists.works.find((name) => name.toLowerCase() === heading.trim().toLowerCase().replace(/\.$/, ''));
  if (work !== undefined) return column([{ kind: 'reference', work: heading.trim() }]);
  const named = (
    [
      ['rulers', 'ruler'],
      ['mints', 'mint'],
      ['denominations', 'denomination'],
    ] as const
  ).find(([list]) => {
    const known = new Set(lists[list].map((name) => name.toLowerCase()));
    const hits = said.filter(({ text }) => known.has(text.toLowerCase())).length;
    return hits > 0 && hits * 2 >= said.length;
  });
  return named === undefined ? column([{ kind: 'ledger' }]) : asked(named[1], { kind: 'ledger' });
}
