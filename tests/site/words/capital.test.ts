import { expect, test } from 'vitest';
import { kindInWords } from '../../../src/site/words/capital.ts';

test('a page says of a piece whose kind nobody has said that it is not known, and not that it is another', () => {
  expect(kindInWords('unknown')).toBe('Kind not known');
  expect(kindInWords('other')).toBe('Other');
  expect(kindInWords('coin-weight')).toBe('Coin weight');
});
