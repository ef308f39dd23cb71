import { expect, test } from 'vitest';
import { countWords } from '../../../src/site/words/counts.ts';

test('what was sold or lent is told beside what is kept, and nothing where all is kept', () => {
  const of = (...statuses: ('kept' | 'lent' | 'sold' | 'given')[]) =>
    countWords.byStatus(statuses.map((status) => ({ status })));
  expect(of('kept', 'sold', 'kept', 'lent')).toBe('2 kept, 1 lent, 1 sold');
  expect(of('given')).toBe('1 given away');
  expect(of('kept', 'kept')).toBeNull();
  expect(of()).toBeNull();
});
