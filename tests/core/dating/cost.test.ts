import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parseDate } from '../../../src/core/dating/parse-date.ts';
import { patternsTried, processorMilliseconds } from '../cost-of.ts';
import { refusalOf } from './read-as.ts';
import { tries } from '../../tries.ts';

/*
 * A date is a phrase of at most 120 signs (a set of years in EDTF, 900), joined at most five times by each kind of
 * joint, marked at most four times, and no words in it are read twice. So the work has a limit whatever is written.
 */

/** Scraps that joined, marked or nested a date once too often in a search for the costliest text. */
const SCRAPS = [
  ...[' to ', ' or ', ' and ', ' - ', ' à ', ' ad ', 'bis ', '-', '/', ', ', '= ', '(', ')', '?', 'X', '..'],
  ...['c. 1279-81', 'AH 1255, year 15', '1641/2', '12th ', '(1)', '2004-06-11%', 'n.d. (1489-95)', 'jiazi (1864)'],
  ...['post ', 'not before ', 'from ', 'between ', 'the ', 'year 1 ', 'perhaps ', 'c. ', 'I ', 'XII ', 's. ', '1 ', '1, '],
]; // prettier-ignore
const knotted = fc
  .array(fc.constantFrom(...SCRAPS), { minLength: 4, maxLength: 40 })
  .map((scraps) => scraps.join('').slice(0, 120));

const read = (text: string) => () => void parseDate(text);

test('no text of 120 signs has more than 50,000 patterns tried on it, and a plain date has fewer than 500', () => {
  fc.assert(
    fc.property(knotted, (text) => patternsTried(read(text)) < 50_000),
    { numRuns: tries(2000) },
  );
  for (const plain of ['1279', '1279/1281', 'AH 294', '44 BC', 'late 12th century', '14 October 1066'])
    expect(patternsTried(read(plain))).toBeLessThan(500);
});

test('the costliest of many knotted texts takes less than five milliseconds of processor', () => {
  const texts = fc.sample(knotted, 600);
  const ranked = texts
    .map((text) => ({ text, tried: patternsTried(read(text)) }))
    .toSorted((a, b) => b.tried - a.tried);
  for (const { text } of ranked.slice(0, 10)) expect(processorMilliseconds(read(text)), text).toBeLessThan(5);
});

/** Texts whose readers nest: each once took a time that grew with the square of its length, or worse. */
const NESTS = ['(1)', '(1279) ', 'n.d. (1489-95)', '- 1 ', '1 BC - ', '? ', 'c. ', '1/', 'the year ', '- ', '9', '1) '];

test.for(NESTS)('%s over and over is cheap as a phrase, cheaper when too long for one, and then free', (scrap) => {
  const tried = (length: number) => patternsTried(read(`${scrap.repeat(910).slice(0, length - 1)}1`));
  expect(tried(120)).toBeLessThan(20_000);
  // Beyond a phrase only EDTF is tried, beyond 900 signs nothing is read at all.
  expect(tried(130)).toBeLessThan(200);
  expect(tried(901)).toBe(0);
});

test('a longer text than any date is refused unread, with what to write instead', () => {
  for (const text of ['1279 '.repeat(181), ' '.repeat(901), '1'.repeat(100_000)])
    expect(refusalOf(text)).toBe(
      'The date is too long to be one; write a date such as 1279, 1279/1281, c. 1280, 44 BC, AH 294 or 12th century, and the rest in the story.',
    );
  expect(refusalOf('1279 or 1281 '.repeat(12))).toContain('too long');
});
