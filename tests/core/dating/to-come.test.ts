import { expect, test } from 'vitest';
import { isToCome } from '../../../src/core/dating/interval.ts';
import { readAs } from './read-as.ts';

/**
 * What has not come on 30 November 2026, reasoned from the calendar: AH 1448 began in June 2026 and AH 1500 begins in 2076
 * (tabular Hijri calendar); BE 2570 is 2027 as Siam counts.
 */
test.for([
  ['AD 2300', true],
  ['2027', true],
  ['struck 2027', true],
  ['c. 2031', true],
  ['AH 1500', true],
  ['BE 2570', true],
  ['1999-2027', true],
  ['AD 2000 - 2300', true],
  ['before AD 2300', true],
  ['24 December 2026', true],
  ['from 2030', true],
  ['2026', false],
  ['30 November 2026', false],
  ['November 2026', false],
  ['AH 1448', false],
  ['BE 2569', false],
  ['202X', false],
  ['2020s', false],
  ['21st century', false],
  ['20th-21st century', false],
  ['early 21st century', false],
  ['1985 onwards', false],
  ['1985/..', false],
  ['after 1985', false],
  ['n.d.', false],
] as const)('%s', ([text, isLater]) => {
  expect(isToCome(readAs(text), '2026-11-30')).toBe(isLater);
});
