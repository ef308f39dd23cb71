import edtf from 'edtf';
import { expect, test } from 'vitest';
import { readEdtf } from '../../../src/core/dating/edtf.ts';
import { yearsOf } from '../../../src/core/dating/interval.ts';
import { DATE_EXAMPLES } from '../../../src/core/dating/date-examples.ts';
import { EDTF_STRINGS } from '../../published/edtf-strings.ts';

/*
 * A second opinion on every EDTF string of three public suites and of our own table of readings: the package `edtf`
 * (edtf.js, which follows ISO 8601-2). It must refuse what we refuse and give the same first and last year, or the
 * string stands below with the reason.
 */
interface Disagreement {
  readonly because: string;
  readonly strings: readonly string[];
}

const DISAGREEMENTS: readonly Disagreement[] = [
  {
    because:
      'the package gives an end that is not known (an empty one) no bound; here it is no limit, as when one asks what a period may hold',
    strings: ['-2004-06-01/', '/1985', '../', '/', '/1350', '/1588', '/1351', '/1066-10-13', '1352/', '1351/', '1279/'],
  },
  {
    because:
      'the package wants an interval to begin before it ends; one that begins and ends with the same year, season or day can be meant, X may stand for a later one, and two of the suites accept them',
    strings: [
      ...['0000/0000', '2003-22/2003-22', '1111-01-01/1111', '0000-01-03/0000-01'],
      ...['1984-11-12/1984-11-XX', '2000/2000-XX-XX', '2004-06-11%/2004-%06', '2004-06-11%/2004-06~'],
      ...['1919-XX-02/1919-XX-01', '1919-08-02/1919-0X-01', '1919-10-02/1919-X1-01', '1919-07-30/1919-07-3X'],
      ...['1908-05-02/1908-05-0X', '1112-08-22/1112-08-2X', '2015-02-27/2015-02-X8', '2016-02-28/2016-02-X9'],
    ],
  },
  {
    because:
      'the package takes a season beside a year in an interval for level 3 and refuses it; another suite accepts it',
    strings: ['1923-21/1924', '1952-23~/1953'],
  },
  { because: 'the package refuses this range, which runs forwards', strings: ['Y-61000/-2000'] },
  {
    because: 'the package takes XXXX for the years 0 to 9999; the text of 2019 says unspecified, which is not known',
    strings: ['XXXX', 'XXXX-XX-XX', 'XXXX-12-XX', '-XXXX-12-XX', 'XXXX-12-21/1890-09-2X'],
  },
  {
    because: 'the standard gives an interval no time of day, and two of the suites refuse it',
    strings: [
      ...[
        '2005-07-25T10:10:10Z/2006-01-01T10:10:10Z',
        '2005-07-25T10:10:10Z/2006-01',
        '2005-07-25/2006-01-01T10:10:10Z',
      ],
    ],
  },
  {
    because:
      'a century of two figures and a decade of three stand in ISO 8601-1 but not in the text of 2019; on a coin 193 is a year',
    strings: ['19', '193', '019', '009', '-193', '197~', '197?', '197%', '19~', '19?'],
  },
  {
    because: 'groups of a year, 25 to 41, are level 2 quarters and halves; on a ticket 1625-34 is a range of years',
    strings: [
      ...['2001-25', '2001-26', '2001-27', '2001-28', '2001-29', '2001-30', '2001-31', '2001-32', '2001-33', '2001-36'],
      ...['-2001-34', '-2001-35', '-2001-36', '-2001-38', '-2001-39', '-2001-40'],
    ],
  },
  {
    because:
      'the package ends a set with the first year of its last range, or with its last member; the last year of all is meant',
    strings: [
      ...['[1667,1668, 1670..1672]', '{1667, 1670..1672}', '[-1740-02-12..-1200-01-29]', '{-1667,1668,1670..1672}'],
      ...['{1960,-1961-12}', '[1667,1670..1672]'],
    ],
  },
  {
    because: 'the package counts no years beyond the 275,760 that JavaScript’s Date reaches',
    strings: [
      ...['Y17E7', 'Y17101000S3', 'Y-17101E3S3', 'Y170000002', 'Y-17E7', 'Y171010000S3', 'Y3388E2S3', 'Y-171010000S2'],
      ...['Y-3388E2S3'],
    ],
  },
  {
    because:
      'the package passes over the number of significant digits; the text of 2019 has 1950S2 lie between 1900 and 1999',
    strings: ['1950S2'],
  },
  { because: 'the package ends a season of a negative year in the positive one', strings: ['-2004-23'] },
];
const explained = new Set(DISAGREEMENTS.flatMap(({ strings }) => strings));

const ours = (text: string) => {
  const outcome = readEdtf(text);
  return outcome?.ok ? yearsOf(outcome.value) : 'refused';
};

function theirs(text: string) {
  try {
    const { min, max } = edtf(text);
    return { low: yearOf(min), high: yearOf(max) };
  } catch {
    return 'refused';
  }
}

function yearOf(milliseconds: number | null): number | null {
  if (milliseconds === null || !Number.isFinite(milliseconds)) return milliseconds;
  return new Date(milliseconds).getUTCFullYear();
}

const readings = DATE_EXAMPLES.flatMap(({ rows }) => rows.map((row) => row.edtf));
const strings = [...new Set([...EDTF_STRINGS.map((row) => row.edtf), ...readings])];

test.for(strings.filter((text) => !explained.has(text)))('the package edtf reads "%s" alike', (text) => {
  expect(ours(text)).toEqual(theirs(text));
});

test.for(DISAGREEMENTS)('every disagreement is real and about a string of the suites: $because', (row) => {
  for (const text of row.strings) {
    expect(strings).toContain(text);
    expect(ours(text), text).not.toEqual(theirs(text));
  }
});
