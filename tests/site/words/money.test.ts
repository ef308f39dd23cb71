import { expect, test } from 'vitest';
import { pieceWords } from '../../../src/site/words/piece.ts';

// Significant figures as in any textbook of measurement; pence only where the figures reach them.
test.for([
  { minor: 2010, figures: 2, says: '£20' },
  { minor: 2010, figures: 4, says: '£20.10' },
  { minor: 123456, figures: 2, says: '£1,200' },
  { minor: 542, figures: 2, says: '£5' },
  { minor: 42, figures: 2, says: '£0.42' },
  { minor: 0, figures: 2, says: '£0.00' },
])('$minor pence to $figures figures are $says', ({ minor, figures, says }) => {
  expect(pieceWords.money(minor, 'GBP', figures)).toBe(says);
});

test('yen have no smaller coin', () => expect(pieceWords.money(20100, 'JPY', 2)).toMatch(/20,000$/u));
