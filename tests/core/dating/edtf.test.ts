import { describe, expect, test } from 'vitest';
import { readEdtf } from '../../../src/core/dating/edtf.ts';
import { EDTF_STRINGS as rows } from '../../published/edtf-strings.ts';
import { readAs, readStrictly, refusalOf } from './read-as.ts';

// Where we differ from the suites the reason stands below.
const CENTURIES_AND_DECADES =
  'ISO 8601-1 writes a century in two figures and a decade in three; the EDTF text of 2019 does not, and on a coin 193 is a year';
const SUB_YEAR_GROUPS =
  'level 2 groups of a year, 25 to 41, are quarters and halves; on a ticket 1625-34 is a range of years';

const DISAGREEMENTS: readonly { readonly because: string; readonly of: readonly string[] }[] = [
  { because: CENTURIES_AND_DECADES, of: ['19', '193', '019', '009', '-193', '197~', '197?', '197%', '19~', '19?'] },
  {
    because: SUB_YEAR_GROUPS,
    of: [
      ...['2001-25', '2001-26', '2001-27', '2001-28', '2001-29', '2001-30', '2001-31', '2001-32', '2001-33', '2001-36'],
      ...['-2001-34', '-2001-35', '-2001-36', '-2001-38', '-2001-39', '-2001-40'],
    ],
  },
  {
    because: 'spaces in a set: one suite refuses them, another accepts them, and nothing else can be meant',
    of: ['[1667,1668, 1670..1672]'],
  },
  {
    because:
      'a day to the end of its own month is no range that runs backwards, though its end has the earlier first day',
    of: ['0000-01-03/0000-01', '2004-06-11%/2004-%06', '2004-06-11%/2004-06~'],
  },
  { because: 'the range runs forwards; the suite that refuses it compares the letters', of: ['Y-61000/-2000'] },
];
const disputed = new Set(DISAGREEMENTS.flatMap(({ of }) => of));

describe('strings of three public suites', () => {
  test.for(rows.filter(({ edtf }) => !disputed.has(edtf)))(
    '$source: "$edtf" is accepted: $accepted',
    ({ edtf, accepted }) => {
      expect(readEdtf(edtf)?.ok ?? false).toBe(accepted);
    },
  );

  test.for(DISAGREEMENTS)('every disagreement is a real one: $because', ({ of }) => {
    for (const string of of) {
      const theirs = rows.filter(({ edtf }) => edtf === string).map(({ accepted }) => accepted);
      expect(theirs, string).toContain(!(readEdtf(string)?.ok ?? false));
    }
  });
});

test('a string of those suites that is not EDTF is no date either, but for what a keeper may mean', () => {
  const meant = new Set([' 1863-03-29', '[..176 0-12-03]']);
  for (const { edtf, accepted } of rows) {
    if (accepted || disputed.has(edtf) || meant.has(edtf)) continue;
    refusalOf(edtf);
  }
});

/** Examples of the Library of Congress text of 2019, with the years they allow. */
const EXAMPLES: readonly (readonly [string, number | null | 'open', number | null | 'open'])[] = [
  ['1985-04-12', 1985, 1985],
  ['1985-04', 1985, 1985],
  ['1985', 1985, 1985],
  ['1964/2008', 1964, 2008],
  ['2004-02-01/2005-02', 2004, 2005],
  ['Y170000002', 170_000_002, 170_000_002],
  ['Y-170000002', -170_000_002, -170_000_002],
  ['2001-21', 2001, 2001],
  ['1984?', 1984, 1984],
  ['2004-06~', 2004, 2004],
  ['2004-06-11%', 2004, 2004],
  ['201X', 2010, 2019],
  ['20XX', 2000, 2099],
  ['2004-XX', 2004, 2004],
  ['1985-04-12/..', 1985, 'open'],
  ['../1985', 'open', 1985],
  ['1985-04-12/', 1985, null],
  ['/1985-04-12', null, 1985],
  ['-1985', -1985, -1985],
  ['Y-17E7', -170_000_000, -170_000_000],
  ['1950S2', 1900, 1999],
  ['Y171010000S3', 171_000_000, 171_999_999],
  ['Y3388E2S3', 338_000, 338_999],
  ['[1667,1668,1670..1672]', 1667, 1672],
  ['[..1760-12-03]', 'open', 1760],
  ['[1760-12..]', 1760, 'open'],
  ['[1667,1760-12]', 1667, 1760],
  ['{1667,1668,1670..1672}', 1667, 1672],
  ['{..1984}', 'open', 1984],
  ['156X-12-25', 1560, 1569],
  ['1XXX-12', 1000, 1999],
  ['1984-1X', 1984, 1984],
];

test.for(EXAMPLES)('the Library of Congress example %s allows %s to %s', ([text, earliest, latest]) => {
  expect(readStrictly(text)).toMatchObject({ earliest, latest, edtf: text });
});

test('a wholly unspecified year is an unknown one, and open is not unknown', () => {
  expect(readAs('XXXX')).toMatchObject({ earliest: null, latest: null });
  expect(readAs('1279/')).toMatchObject({ earliest: 1279, latest: null });
  expect(readAs('1279/..')).toMatchObject({ earliest: 1279, latest: 'open' });
});

test('the year -0044 is 45 BC, and 44 BC is -0043', () => {
  expect(readAs('-0044').earliest).toBe(-44);
  expect(readAs('45 BC').edtf).toBe('-0044');
  expect(readAs('44 BC').edtf).toBe('-0043');
  expect(readAs('1 BC').edtf).toBe('0000');
});

/** Forms of the draft of 2012 (Library of Congress, EDTF 1.0), and what each became in 2019. */
const FORMER: readonly (readonly [string, string])[] = [
  ['199u', '199X'],
  ['19uu', '19XX'],
  ['1999-uu', '1999-XX'],
  ['1999-01-uu', '1999-01-XX'],
  ['unknown/2006', '/2006'],
  ['2004-06-01/unknown', '2004-06-01/'],
  ['2004-01-01/open', '2004-01-01/..'],
  ['y170000002', 'Y170000002'],
  ['y-17e7', 'Y-17E7'],
  ['196x', '196X'],
  ['19xx', '19XX'],
  ['1984?~', '1984%'],
  ['2004-(06)?-11', '2004-06?-11'],
  ['2001-21^southernHemisphere', '2001-21'],
];

test.for(FORMER)('%s of 2012 is refused and %s offered', ([former, now]) => {
  expect(refusalOf(former)).toContain(`write ${now} instead.`);
  readAs(now);
});

test('before 15 October 1582 a day is Julian, from then on Gregorian', () => {
  expect(readAs('1500-02-29')).toMatchObject({ from: '1500-02-29', dayCalendar: 'julian', calendar: 'julian' });
  expect(readAs('1582-10-04')).toMatchObject({ from: '1582-10-04', dayCalendar: 'julian' });
  // The ten days that Rome left out were lived through elsewhere, and are named with their style.
  expect(refusalOf('1582-10-14')).toContain('write 14 October 1582 OS');
  expect(readAs('14 October 1582 OS')).toMatchObject({ from: '1582-10-24', dayCalendar: 'gregorian' });
  expect(readAs('1582-10-15')).toMatchObject({ dayCalendar: 'gregorian', calendar: 'gregorian' });
  expect(refusalOf('1900-02-29')).toContain('a day its month does not have');
});
