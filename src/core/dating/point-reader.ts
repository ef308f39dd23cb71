import type { Outcome } from '../outcome.ts';
import type { Reading } from './dating.ts';

/**
 * Reads one point in time from the whole of a text: a year, a century, a day. Undefined when the text is not of the
 * reader's kind; a refusal when it is and something about it is wrong. No reader leaves a word unread.
 */
export type PointReader = (text: string) => Outcome<Reading> | undefined;
