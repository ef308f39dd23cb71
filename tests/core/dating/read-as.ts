import { expect } from 'vitest';
import type { Dating, Reign } from '../../../src/core/dating/dating.ts';
import { parseDate } from '../../../src/core/dating/parse-date.ts';

/** The reading of a text that is sure to be one; the refusal is shown when it is not. */
export function readAs(text: string, reigns: readonly Reign[] = []): Dating {
  const outcome = parseDate(text, { reigns });
  if (!outcome.ok) return expect.fail(`${text}: ${outcome.problem}`);
  return outcome.value;
}

/** The sentence that refuses a text. */
export function refusalOf(text: string, reigns: readonly Reign[] = []): string {
  const outcome = parseDate(text, { reigns });
  return outcome.ok ? expect.fail(`${text} was read as ${outcome.value.edtf}`) : outcome.problem;
}

export const EDWARD_I: Reign = {
  ruler: 'Edward I',
  names: ['Edward Longshanks'],
  from: '1272-11-20',
  to: '1307-07-07',
};
