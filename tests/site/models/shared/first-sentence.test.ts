import { expect, test } from 'vitest';
import { firstSentence } from '../../../../src/site/models/shared/first-sentence.ts';

// Common practice: a point after an abbreviation or an initial ends no sentence; a closing quotation mark belongs to the sentence before it.
test.for([
  {
    text: 'Money before it has been made into money. Silver was melted.',
    first: 'Money before it has been made into money.',
  },
  { text: 'Struck c. 1280 at York. It is worn.', first: 'Struck c. 1280 at York.' },
  { text: 'J. J. North has it as 1017. It is common.', first: 'J. J. North has it as 1017.' },
  { text: 'Found at St. Peter’s (cf. North). Kept since.', first: 'Found at St. Peter’s (cf. North).' },
  { text: 'It says “York. Good.” Nobody knows why.', first: 'It says “York. Good.”' },
  { text: 'Whose is it? Nobody says.', first: 'Whose is it?' },
  { text: 'One sentence that does not end', first: 'One sentence that does not end' },
  { text: 'Weighs 1.38 g. Good metal.', first: 'Weighs 1.38 g.' },
  { text: 'It is 2" across. It is worn.', first: 'It is 2" across.' },
  { text: 'He said “never. It was sold. It came back.', first: 'He said “never.' },
  { text: '', first: '' },
])('of “$text” the first sentence is “$first”', ({ text, first }) => {
  expect(firstSentence(text)).toBe(first);
});
