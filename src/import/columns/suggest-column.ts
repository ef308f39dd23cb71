import type { SheetCell } from '../sheets/sheet.ts';
import type { Language, Reading } from './mapping.ts';
import { matchHeading } from './match-heading.ts';
import { bookQuestion, fieldQuestion, privateQuestion } from './column-questions.ts';
import { filled, looksPaid, numbersEachRow, saysKinds, tellsStriking } from './detect-conventions.ts';
import type { Question } from './question.ts';
import { isField, UNITS } from './targets.ts';
import type { LedgerColumn } from '../../catalogue/fields/ledger-columns.ts';
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
  if (matched.kind === 'ledger') return column([inLedger(matched.column, unit)]);
  if (matched.kind === 'field' && isField(matched.field)) {
    // A public heading over sums of money is private all the same.
    if (looksPaid(said) && ['number', 'title', 'weight', 'grade', 'date'].includes(matched.field))
      return asked('value', { kind: 'ledger' });
    const speaks = privateQuestion(matched.field, key, said);
    if (speaks !== null) return column([{ kind: 'ledger' }], [speaks]);
    // `From` is as often whom a piece came from.
    if (
      matched.field === 'date from' &&
      said.length > 0 &&
      said.filter(({ text }) => /\d/.test(text)).length * 2 < said.length
    )
      return column([inLedger('seller', null)]);
    const takes = UNITS[matched.field] ?? [];
    return column([
      { kind: 'field', field: matched.field, ...(unit !== null && takes.includes(unit) ? { unit } : {}) },
    ]);
  }
  if (matched.kind === 'doubtful') {
    if (matched.doubt === 'date' && tellsStriking(said)) return column([{ kind: 'field', field: 'date' }]);
    if (matched.doubt === 'number' && numbersEachRow(cells, 0.8)) return column([{ kind: 'field', field: 'number' }]);
    if (matched.doubt === 'description' && saysKinds(said)) return column([{ kind: 'field', field: 'kind' }]);
    return asked(matched.doubt, privateWay(matched.doubt, heading));
  }
  const work = lists.works.find((name) => name.toLowerCase() === heading.trim().toLowerCase().replace(/\.$/, ''));
  if (work !== undefined) return column([{ kind: 'reference', work: heading.trim() }]);
  const book = BOOK.exec(heading.trim())?.[1];
  if (book !== undefined && said.filter(({ text }) => IN_A_BOOK.test(text)).length * 2 >= Math.max(1, said.length))
    return column([{ kind: 'ledger' }], [bookQuestion(key, book, example)]);
  const named = NAMED.find(([list]) => areMostlyOf(lists[list], said));
  return named === undefined ? column([{ kind: 'ledger' }]) : asked(named[1], { kind: 'ledger' });
}

/** The short name of a book over a column: `KM#`, `RIC`, `Y no.` */
const BOOK = /^(\p{Lu}{1,4}|Cr)[ .]*(?:#|n[or]s?\.?|n[°º])?$/u;
const IN_A_BOOK = /^(?:\p{L}{1,4}\.? ?)?#? ?\d+[\p{L}\d./-]*$/u;

const NAMED = [
  ['rulers', 'ruler'],
  ['mints', 'mint'],
  ['denominations', 'denomination'],
] as const;

function areMostlyOf(names: readonly string[], said: readonly SheetCell[]): boolean {
  const known = new Set(names.map((name) => name.toLowerCase()));
  const hits = said.filter(({ text }) => known.has(text.toLowerCase())).length;
  return hits > 0 && hits * 2 >= said.length;
}

function inLedger(column: LedgerColumn, unit: string | null): Reading {
  const isSum = ['cost', 'value', 'insured'].includes(column);
  return { kind: 'ledger', column, ...(isSum && unit !== null && isCurrency(unit) && { currency: unit }) };
}

const AREA = /region|origin|herkunft|city|town|ville|stadt|citt|ciudad|\bstad\b/i;

/** Where a column goes until its question is answered. */
function privateWay(doubt: string, heading: string): Reading {
  if (doubt === 'date') return { kind: 'ledger', column: 'acquired' };
  if (doubt === 'value') return { kind: 'ledger', column: 'value' };
  return doubt === 'place' && !AREA.test(heading) ? { kind: 'ledger', column: 'storage' } : { kind: 'ledger' };
}
