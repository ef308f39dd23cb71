import { expect } from 'vitest';
import type { DateContext, Dating, Reign } from '../../../src/core/dating/dating.ts';
import { parseDate } from '../../../src/core/dating/parse-date.ts';

/** The reading of a text that is sure to be one; the refusal is shown when it is not. */
export function readAs(text: string, context: DateContext = {}): Dating {
  const outcome = parseDate(text, context);
  if (!outcome.ok) return expect.fail(`${text}: ${outcome.problem}`);
  return outcome.value;
}

/** The reading of strict EDTF. */
export function readStrictly(edtf: string): Dating {
  return readAs(`edtf:${edtf}`);
}

/** The sentence that refuses a text. */
export function refusalOf(text: string, context: DateContext = {}): string {
  const outcome = parseDate(text, context);
  return outcome.ok ? expect.fail(`${text} was read as ${outcome.value.edtf}`) : outcome.problem;
}

export const EDWARD_I: Reign = {
  ruler: 'Edward I',
  names: ['Edward Longshanks'],
  from: '1272-11-20',
  to: '1307-07-07',
};

export const UNDER_EDWARD_I: DateContext = { reigns: [EDWARD_I] };
