import type { Outcome } from '../outcome.ts';
import type { Reading, Reign } from './dating.ts';

/** What a reader may look things up in. */
export interface Surroundings {
  readonly reigns: readonly Reign[];
}

/**
 * Reads one point in time from the whole of a text: a year, a century, a day. Undefined when the text is not of the
 * reader's kind; a refusal when it is and something about it is wrong. No reader leaves a word unread.
 */
export type PointReader = (text: string, surroundings: Surroundings) => Outcome<Reading> | undefined;
