import { describe, expect, test } from 'vitest';
import { formatDate } from '../../../src/core/dating/format-date.ts';
import { parseDate } from '../../../src/core/dating/parse-date.ts';
import { DATE_CONVENTIONS, DATE_QUESTIONS } from '../../published/date-conventions.ts';
import { DATE_PAIRS, PAIR_QUESTIONS } from '../../published/date-pairs.ts';
import { readAs, readStrictly, refusalOf } from './read-as.ts';

describe('dates by the conventions of lists, statutes and calendars', () => {
  test.for([...DATE_CONVENTIONS, ...DATE_PAIRS])(
    '$write is $earliest to $latest $marks ($source)',
    ({ write, earliest, latest, marks }) => {
      const sense = { earliest, latest, about: marks.includes('about'), doubtful: marks.includes('doubtful') };
      const dating = readAs(write);
      expect(dating).toMatchObject(sense);
      const { from, to } = dating;
      expect(readAs(formatDate(dating))).toMatchObject({ ...sense, ...(from && { from }), ...(to && { to }) });
      expect(readStrictly(dating.edtf)).toMatchObject(sense);
    },
  );
});

describe('what has two readings asks, and offers each', () => {
  test.for([...DATE_QUESTIONS, ...PAIR_QUESTIONS])('%s', ([write, ...offered]) => {
    const problem = refusalOf(write);
    expect(problem).toMatch(/\.$/);
    for (const way of offered) {
      expect(problem).toContain(way);
      expect(parseDate(way), way).toMatchObject({ ok: true });
    }
  });
});

describe('a context settles what would ask', () => {
  test('a date of an event has a month where a date of making asks', () => {
    expect(readAs('1902-10', { dateOf: 'event' })).toMatchObject({ from: '1902-10-01', to: '1902-10-31' });
    expect(readAs('1998-99', { dateOf: 'event' })).toMatchObject({ earliest: 1998, latest: 1999 });
    expect(refusalOf('1998/10', { dateOf: 'event' })).toContain('1998-10');
  });

  test('a column settles its hyphens, its negative years and its era once', () => {
    expect(readAs('1902-10', { hyphen: 'range' })).toMatchObject({ earliest: 1902, latest: 1910 });
    expect(readAs('1902-10', { hyphen: 'month' })).toMatchObject({ from: '1902-10-01' });
    expect(readAs('-57 to -38', { negative: 'historical' })).toMatchObject({ earliest: -56, latest: -37 });
    expect(readAs('-57 to -38', { negative: 'astronomical' })).toMatchObject({ earliest: -57, latest: -38 });
    expect(readAs('-27-14', { negative: 'historical' })).toMatchObject({ earliest: -26, latest: 14 });
    expect(readAs('-530.0', { negative: 'historical' })).toMatchObject({ earliest: -529, latest: -529 });
    expect(readAs('498 to 507', { era: 'AD' })).toMatchObject({ earliest: 498, latest: 507 });
    expect(readAs('c. 211-08', { era: 'BC' })).toMatchObject({ earliest: -210, latest: -207, about: true });
    expect(readAs('294', { era: 'AH' })).toMatchObject({ earliest: 906, latest: 907 });
  });

  test('a century in a column of years before Christ asks, unless it says which', () => {
    expect(refusalOf('3rd century', { era: 'BC' })).toContain('3rd century BC or 3rd century AD');
    expect(refusalOf('late 3rd century', { era: 'AH' })).toContain('AD');
    expect(readAs('3rd century AD', { era: 'BC' })).toMatchObject({ earliest: 201, latest: 300 });
    expect(readAs('3rd-2nd century BC', { era: 'BC' })).toMatchObject({ earliest: -299, latest: -100 });
    expect(readAs('3rd century', { era: 'AD' })).toMatchObject({ earliest: 201, latest: 300 });
    expect(readAs('162/1-150/49', { era: 'BC' })).toMatchObject({ earliest: -161, latest: -148 });
    expect(refusalOf('145-38/7', { era: 'BC' })).toContain('145-138/7 BC');
  });

  // Calendar (New Style) Act 1750; the others by Grotefend, Taschenbuch der Zeitrechnung, from memory.
  test.for([
    ['2 September 1752', 'Great Britain', '1752-09-13'],
    ['14 September 1752', 'Great Britain', '1752-09-14'],
    ['2-14 September 1752', 'Great Britain', '1752-09-13/1752-09-14'],
    ['September 1752', 'England', '1752-09-12/1752-09-30'],
    ['10 October 1582', 'England', '1582-10-20'],
    ['9 December 1582', 'France', '1582-12-19'],
    ['20 December 1582', 'France', '1582-12-20'],
    ['18 February 1700', 'Denmark', '1700-02-28'],
    ['1 March 1700', 'Denmark', '1700-03-01'],
    ['17 February 1753', 'Sweden', '1753-02-28'],
    ['25 October 1917', 'Russia', '1917-11-07'],
    ['14 February 1918', 'Russia', '1918-02-14'],
    ['14 February 1700', 'Prussia', '1700-02-14'],
    ['15 February 1923', 'Greece', '1923-02-28'],
    ['31 March 1916', 'Bulgaria', '1916-04-13'],
  ] as const)('%s in %s is %s', ([write, realm, days]) => {
    const { from = '', to = '' } = readAs(write, { realm });
    expect(from === to ? from : `${from}/${to}`).toBe(days);
  });

  test.for([
    ['10 September 1752', 'Great Britain', '2 September 1752 was followed by 14 September'],
    ['5-15 September 1752', 'England', '14 September'],
    ['15 December 1582', 'France', '20 December'],
    ['20 February 1700', 'Denmark', '1 March'],
    ['5 February 1918', 'Russia', '14 February'],
    ['10 October 1582', 'Spain', '15 October'],
  ] as const)('%s in %s was left out', ([write, realm, next]) => {
    const problem = refusalOf(write, { realm });
    expect(problem).toContain(next);
    expect(parseDate(`${write.replace(/^\d+-/, '')} OS`, { realm })).toMatchObject({ ok: true });
    expect(parseDate(`${write.replace(/^\d+-/, '')} NS`, { realm })).toMatchObject({ ok: true });
  });

  test('the realm says which era ME is', () => {
    expect(readAs('ME 1200', { realm: 'Burma' })).toMatchObject({ earliest: 1838, latest: 1839 });
    expect(readAs('ME 1080', { realm: 'Travancore' })).toMatchObject({ earliest: 1904, latest: 1905 });
  });

  test('the realm says which year a Hijri pair names, and the accession contradicts it', () => {
    const ottoman = { realm: 'the Ottoman Empire' };
    expect(readAs('AH 1255//15', ottoman)).toMatchObject({ from: '1852-10-15', to: '1853-10-03' });
    expect(readAs('AH 1221 RY 46', { realm: 'Mughal Empire' })).toMatchObject({ earliest: 1806, latest: 1807 });
    // Selim III came to the throne on 7 April 1789, AH 1203; Shah Alam II on 10 October 1760, AH 1174 (common practice).
    expect(readAs('AH 1203//15', { accessions: ['1789-04-07'] })).toMatchObject({ earliest: 1802, latest: 1803 });
    expect(readAs('AH 1202//30', { accessions: ['1760-10-10'] })).toMatchObject({ earliest: 1787, latest: 1788 });
    // With a comma as well: under Shah Alam II both name one year, under Abdülmecid (AH 1255) the first is then no accession.
    expect(readAs('AH 1180, year 8', { realm: 'Mughal Empire' })).toMatchObject({ earliest: 1766, latest: 1767 });
    expect(readAs('AH 1269, year 15', { accessions: ['1839-07-02'] })).toMatchObject({ earliest: 1852, latest: 1853 });
    expect(readAs('AH 1255, year 15', { ...ottoman, accessions: ['1839-07-02'] })).toMatchObject({ earliest: 1852 });
    expect(refusalOf('AH 1202//19', { realm: 'Mughal Empire', accessions: ['1760-10-10'] })).toContain('frozen');
    expect(refusalOf('AH 1222//5', { ...ottoman, accessions: ['1789-04-07'] })).toContain('accession');
  });

  // AH 1327, year 9 is AH 1335: October 1916 to October 1917 (common practice: how lists give the coins of Mehmed V).
  test('the realm says whether a pair is a year of reign, and which George is meant', () => {
    expect(readAs('1327/9', { realm: 'Ottoman Empire' })).toMatchObject({ earliest: 1916, latest: 1917 });
    expect(readAs('1255/15', { realm: 'Ottoman Empire' })).toMatchObject({ earliest: 1852, latest: 1853 });
    expect(readAs('1327/9 (1916/17)')).toMatchObject({ earliest: 1916, latest: 1917 });
    expect(readAs('1327/9', { realm: 'England' })).toMatchObject({ earliest: 1327, latest: 1329 });
    expect(readAs('1327/8', { dateOf: 'event', hyphen: 'range' })).toMatchObject({ earliest: 1327, latest: 1328 });
    const george = { ruler: 'George I of Greece', names: ['George I'], from: '1863', to: '1913' };
    expect(refusalOf('10 George I', { reigns: [george] })).toContain('more than one reign');
    expect(readAs('10 George I', { reigns: [george], realm: 'Great Britain' })).toMatchObject({ earliest: 1872 });
    expect(readAs('10 George I')).toMatchObject({ earliest: 1723, latest: 1724 });
  });

  test('the realm says which era a sign or a bare year is of', () => {
    expect(readAs('SE 1738', { realm: 'Ahom kingdom of Assam' })).toMatchObject({ earliest: 1816, latest: 1817 });
    expect(readAs('SE 182', { realm: 'the Seleucid kingdom' })).toMatchObject({ earliest: -130, latest: -129 });
    expect(readAs('5708', { realm: 'Israel' })).toMatchObject({ earliest: 1947, latest: 1948 });
    expect(readAs('2505', { realm: 'Thailand' })).toMatchObject({ earliest: 1962, latest: 1962 });
    expect(readAs('BE 1214', { realm: 'Burma' })).toMatchObject({ earliest: 1852, latest: 1853 });
    expect(refusalOf('BE 1214')).toContain('Chula Sakarat 1214 or Buddhist 1214');
    expect(readAs('BE 2538', { realm: 'Cambodia' })).toMatchObject({ earliest: 1994, latest: 1995 });
    expect(readAs('7208', { realm: 'Russia' })).toMatchObject({ earliest: 1699, latest: 1700 });
    expect(readAs('Republic year 7', { realm: 'France' })).toMatchObject({ earliest: 1798, latest: 1799 });
    expect(readAs('AN 12', { realm: 'Haiti' })).toMatchObject({ earliest: 1815, latest: 1815 });
    expect(refusalOf('2020', { realm: 'Nepal' })).toContain('VS 2020');
    expect(refusalOf('33 Hen. VIII', { realm: 'Castile' })).toContain('year AD');
    expect(refusalOf('14 Wilhelm II')).toContain('No reign of "Wilhelm II" is known here');
  });

  test('a day of England before September 1752 is Julian, and is shown so', () => {
    const day = readAs('5 November 1605', { realm: 'England' });
    expect(day).toMatchObject({ from: '1605-11-15', calendar: 'julian' });
    expect(formatDate(day)).toBe('5 November 1605 (old style)');
    expect(readAs('5 November 1605')).toMatchObject({ from: '1605-11-05', calendar: 'gregorian' });
  });

  test('a span that crosses 1582 begins on a Julian day and ends on a Gregorian one', () => {
    const span = readAs('1 January 1500 - 1 January 1600');
    expect(span).toMatchObject({ from: '1500-01-01', to: '1600-01-01', dayCalendar: 'julian to gregorian' });
  });
});

// Common practice of setting text: a range of figures has a dash; a day in figures has none.
test('a range of another era is told with a dash, and a day with its hyphens', () => {
  expect(formatDate(readAs('AH 291-295'))).toMatch(/^AH 291–295 \(/);
  expect(formatDate(readAs('AH 291–295'))).toMatch(/^AH 291–295 \(/);
  expect(formatDate({ ...readAs('AH 291'), text: 'AH 1255-03-04' })).toMatch(/^AH 1255-03-04 \(/);
});

test('about and perhaps stay at the end where they were written', () => {
  expect(readAs('1279 - c. 1281').edtf).toBe('1279/1281~');
  expect(readAs('c. 1279 - c. 1281').edtf).toBe('1279~/1281~');
  expect(formatDate(readAs('1279 - c. 1281'))).toBe('from 1279 to about 1281');
});
