import { expect, test } from 'vitest';
import { parseDate } from '../../src/core/dating/parse-date.ts';
import { datesForOthers } from '../../src/publish/json-ld.ts';

/**
 * What each format may say. Sources: schema.org dateCreated (Date: ISO 8601) and temporalCoverage (ISO 8601 interval, `..` for an
 * open end, as its definition gives it); ISO 8601-1:2019 §4.2.1 (the Gregorian calendar, also before its introduction), §4.3.2
 * (year zero) and §5.5 (intervals); EDTF of 2019 (Library of Congress) for the rest, which counts as ISO 8601 does.
 */
const DATES: readonly (readonly [written: string, created: string | null, covers: string | null, edtf: string])[] = [
  ['1797', '1797', '1797', '1797'],
  ['1279/1281', null, '1279/1281', '1279/1281'],
  ['c. 1280', null, '1280', '1280~'],
  ['1280?', null, '1280', '1280?'],
  ['AD 79', '0079', '0079', '0079'],
  ['44 BC', null, '-0043', '-0043'],
  ['1 BC', null, '0000', '0000'],
  ['c. 454/404 BC', null, '-0453/-0403', '-0453~/-0403~'],
  ['27 BC/AD 14', null, '-0026/0014', '-0026/0014'],
  ['AH 294', null, '0906/0907', '0906/0907'],
  ['12th century', null, '1101/1200', '1101/1200'],
  ['1279 or 1281', null, '1279/1281', '[1279,1281]'],
  ['1780/..', null, '1780/..', '1780/..'],
  ['../1588', null, '../1588', '../1588'],
  ['/1588', null, null, '/1588'],
  // A day of the Julian calendar is no day of ISO 8601 or EDTF; its year is.
  ['30 January 1279', '1279', '1279', '1279'],
  ['15 March 44 BC', null, '-0043', '-0043'],
  ['14 September 1752', '1752', '1752', '1752-09-14'],
  ['30 January 1648/9', '1649', '1649', '1649-02-09'],
  ['1797-05-12', '1797', '1797', '1797-05-12'],
];

test.for(DATES)('%s is created %s, covers %s, and is %s', ([written, dateCreated, temporalCoverage, edtf]) => {
  const date = parseDate(written);
  if (!date.ok) throw new Error(date.problem);
  expect(datesForOthers(date.value)).toEqual({
    ...(dateCreated === null ? {} : { dateCreated }),
    ...(temporalCoverage === null ? {} : { temporalCoverage }),
    edtf,
  });
});
