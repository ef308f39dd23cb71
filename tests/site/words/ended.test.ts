import { expect, test } from 'vitest';
import { ended } from '../../../src/site/words/ended.ts';

// Common practice (any style guide of English prose): an abbreviation's point ends the sentence too; there are never two.
test.for([
  ['Kept by Hester Layerthorpe', 'Kept by Hester Layerthorpe.'],
  ['Kept by J. K.', 'Kept by J. K.'],
  ['Who kept it?', 'Who kept it?'],
])('%s ends in one stop', ([text, sentence]) => {
  expect(ended(text ?? '')).toBe(sentence);
});
