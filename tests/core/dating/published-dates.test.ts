import { describe, expect, test } from 'vitest';
import { CYCLICAL_YEARS, ERA_YEARS } from '../../published/calendar-facts.ts';
import { REGNAL_YEARS } from '../../published/regnal-years.ts';
import { PERIOD_LABELS } from '../../published/period-labels.ts';
import { readAs } from './read-as.ts';

describe('bounds of published periods are read as their editors read them', () => {
  test.for(PERIOD_LABELS)('%s is %i to %i (%s)', ([label, earliest, latest]) => {
    expect(readAs(label)).toMatchObject({ earliest, latest });
  });
});

describe('years of other eras', () => {
  test.for(ERA_YEARS)('$write is $earliest to $latest ($source)', ({ write, earliest, latest }) => {
    expect(readAs(write)).toMatchObject({ earliest, latest });
  });
});

describe('regnal years (Cheney, A Handbook of Dates)', () => {
  test.for(REGNAL_YEARS)('$ruler, year $year is $first to $last', ({ ruler, from, to, year, first, last }) => {
    const dating = readAs(`${ruler}, year ${String(year)}`, { reigns: [{ ruler, names: [], from, to }] });
    expect(dating).toMatchObject({ from: first, to: last, dayCalendar: 'julian', calendar: 'regnal' });
  });
});

describe('cyclical years that name an event', () => {
  test.for(CYCLICAL_YEARS)('$pair is $year: $event', ({ pair, characters, year }) => {
    const years = readAs(pair).years?.map(([first]) => first);
    expect(years).toContain(year);
    expect(readAs(characters).years?.map(([first]) => first)).toEqual(years);
    expect(readAs(`${pair} (${String(year)})`)).toMatchObject({ earliest: year, latest: year });
  });
});

test('AH 1255, year 15 is AH 1269: 15 October 1852 to 3 October 1853 (common practice)', () => {
  const days = { from: '1852-10-15', to: '1853-10-03', dayCalendar: 'gregorian' };
  expect(readAs('AH 1255, year 15')).toMatchObject(days);
  expect(readAs('AH 1255//15', { realm: 'the Ottoman Empire' })).toMatchObject(days);
  expect(readAs('AH 1269')).toMatchObject(days);
});

test('30 January 1648/9 is 9 February 1649, and the year of the death warrant sorts as 1649', () => {
  expect(readAs('30 January 1648/9')).toMatchObject({ earliest: 1649, from: '1649-02-09', dayCalendar: 'gregorian' });
  expect(readAs('1648/9 OS')).toMatchObject({ earliest: 1649, latest: 1649, calendar: 'julian' });
  expect(readAs('1648/9')).toMatchObject({ earliest: 1648, latest: 1649, edtf: '1648/1649' });
});

/** Dates as English, French and German lists print them; common practice, the years by the plain meaning of the words. */
const LISTED: readonly (readonly [string, number | null, number | null])[] = [
  ['um 1280', 1280, 1280],
  ['vor 1280', null, 1279],
  ['nach 1280', 1281, null],
  ['Anfang 13. Jh.', 1201, 1234],
  ['3. Viertel des 4. Jh. v. Chr.', -349, -325],
  ['12./13. Jh.', 1101, 1300],
  ['Ende 4. – Anfang 3. Jh. v. Chr.', -333, -266],
  ['o. J. (1489-95)', 1489, 1495],
  ['vers 1280', 1280, 1280],
  ['IVe s. av. J.-C.', -399, -300],
  ['1re moitié du XIIe s.', 1101, 1150],
  ['s.d. (1489-95)', 1489, 1495],
  ['avant 1280', null, 1279],
  ['entre 1279 et 1281', 1279, 1281],
  ['s. XIII in.', 1201, 1234],
  ['saec. XIII', 1201, 1300],
  ['s. XII/XIII', 1101, 1300],
  ['14 octobre 1066', 1066, 1066],
  ['30. Januar 1649', 1649, 1649],
  ['AH ٢٩٤', 906, 907],
];

test.for(LISTED)('%s is %s to %s', ([text, earliest, latest]) => {
  expect(readAs(text)).toMatchObject({ earliest, latest });
});
