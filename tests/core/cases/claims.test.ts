import { describe, expect, test } from 'vitest';
import { claimsIn, completenessIn } from '../../../src/core/cases/claims.ts';

/** Words a judge asks a book for, and words that only look like them. Common practice. */
const CLAIMS = [
  ['This die is unique.', ['unique']],
  ['The only known penny of the mint.', ['The only known']],
  ['The finest known of its type.', ['The finest known']],
  ['The first English sixpence.', ['The first English']],
  ['York’s last coin.', ['York’s last coin']],
  ['The rarest of all.', ['The rarest']],
  ['In his first reign he struck none.', []],
  ['The first of the three rows.', []],
  ['At first he struck none, and at last he did.', []],
  ['Struck in the last year of the war.', []],
  ['It was at its best in 1280.', []],
  ['York could only put its name on it.', []],
  ['A town, and at the last a single letter.', []],
  ['A unicorn and a firstling.', []],
] as const;

describe('a claim', () => {
  test.for(CLAIMS)('%s', ([text, claims]) => expect(claimsIn(text)).toEqual(claims));
});

const COMPLETE = [
  ['27 of 42 are here.', [{ says: '27 of 42', is: 'counted', low: 27, high: 27, of: 42 }]],
  ['27 to 30 of the 42.', [{ says: '27 to 30 of the 42', is: 'counted', low: 27, high: 30, of: 42 }]],
  ['A complete set of kings.', [{ says: 'A complete set', is: 'whole' }]],
  ['The last gap in a complete set.', [{ says: 'a complete set', is: 'whole' }]],
  ['An incomplete set.', []],
  ['This is not a complete set.', []],
  ['Almost the complete series.', []],
  ['About 7 of 1280 mm.', []],
  ['The recoinage of 1279.', []],
] as const;

describe('what a text says of how complete a set is', () => {
  test.for(COMPLETE)('%s', ([text, said]) => expect(completenessIn(text)).toEqual(said));
});
