import { expect, test } from 'vitest';
import { parseDate } from '../../src/core/dating/parse-date.ts';
import { datesForOthers } from '../../src/publish/dates-for-others.ts';

/**
 * What each format may say. Sources: schema.org dateCreated (Date: ISO 8601) and temporalCoverage (ISO 8601 interval, `..` for an
 * open end, as its definition gives it); ISO 8601-1:2019 §4.3.2 (year zero) and §5.5 (intervals); EDTF of 2019 (Library of
 * Congress) for the rest.
 */
const DATES: readonly (readonly [written: string, created: string | undefined, covers: string | undefined])[] = [
  ['1797', '1797', '1797'],
  ['1279/1281', undefined, '1279/1281'],
  ['c. 1280', undefined, '1280'],
  ['1280?', undefined, '1280'],
  ['44 BC', undefined, '-0043'],
  ['1 BC', undefined, '0000'],
  ['27 BC/AD 14', undefined, '-0026/0014'],
  ['AH 294', undefined, '0906/0907'],
  ['12th century', undefined, '1101/1200'],
  ['1780/..', undefined, '1780/..'],
  ['/1588', undefined, undefined],
  // A day of the Julian calendar is no day of ISO 8601; its year is.
  ['30 January 1279', '1279', '1279'],
  ['14 September 1752', '1752-09-14', '1752'],
  ['1797-05-12', '1797-05-12', '1797'],
];

test.for(DATES)('%s is created %s and covers %s', ([written, dateCreated, temporalCoverage]) => {
  const date = parseDate(written);
  if (!date.ok) throw new Error(date.problem);
  const said = datesForOthers(date.value);
  expect(said.dateCreated).toBe(dateCreated);
  expect(said.temporalCoverage).toBe(temporalCoverage);
  expect(said.edtf).toBe(date.value.edtf);
});
