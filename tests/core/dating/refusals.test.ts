import { describe, expect, test } from 'vitest';
import { parseDate } from '../../../src/core/dating/parse-date.ts';
import { UNDER_EDWARD_I, refusalOf } from './read-as.ts';

/** What is written, and what the refusal offers to be pasted in its place; undefined where only the keeper can know. */
const REFUSED: readonly (readonly [text: string, offered: string | undefined])[] = [
  ['1281/1279', '1279/1281'],
  ['1281-1279', '1279 - 1281'],
  ['1281-79', '1279 - 1281'],
  ['AD 14 - 27 BC', '27 BC - AD 14'],
  ['13th-12th century', '12th century - 13th century'],
  ['1279 or so much', '1279'],
  ['1279 foo', '1279'],
  ['AH 294 dirham', 'AH 294'],
  ['1279, 1280', '1279 or 1280'],
  ['44', 'AD 44'],
  ['193-211', 'AD 193'],
  ['-44', '44 BC'],
  ['1641/0', '1641'],
  ['0 BC', undefined],
  ['AD 0', undefined],
  ['1900s', '1900-1909'],
  ['330s', '330s BC'],
  ['AH 1255/6', 'AH 1255-1256'],
  ['AH 294 (1906)', 'AH 294'],
  ['AH 0', 'AH 1'],
  ['١٢٥٥', 'AH 1255'],
  ['١٩٥٥', 'AD 1955'],
  ['AH 2000', undefined],
  ['AM 708', 'AM 5708'],
  ['Meiji 46', undefined],
  ['jiachou', undefined],
  ['3/4/1649', '1649-04-03'],
  ['30 January 1649 OS', '30 January 1648/9 OS'],
  ['25 March 1648/9', '25 March 1648'],
  ['31 April 1700', undefined],
  ['29 February 1700', undefined],
  ['1985-13', undefined],
  ['1985-02-30', undefined],
  ['22nd century', '13th century'],
  ['0th century', '13th century'],
  ['Olaf II, year 7', undefined],
  ['reign of Edward II', undefined],
  ['Y2006', '2006'],
  // An era without a year, and words that mean one thing in one list and another in the next. Common practice.
  ['9 BC-AD', '9 BC'],
  ['9 BC to AD', '9 BC - AD 14'],
  ['9 B.C. - A.D.', '9 BC - AD 14'],
  ['c. 9 BC/AD', '9 BC'],
  ['BC/AD 14', 'AD 14'],
  ['9 v. Chr. - n. Chr.', '9 v. Chr. - AD 14'],
  ['h. 1280', 'c. 1280'],
  ['h. 1280', 'AH 1280'],
  ['v. 1280', 'before 1280'],
  ['Samvat 1943', 'VS 1943'],
  ['AH 29?', 'AH 29X'],
  ['AH 29?', 'AH 29 (?)'],
  ['MCMX (1911)', 'MCMX'],
  ['1911 (MCMX)', 'MCMX'],
  ['1937H', '1937'],
  ['1881-CC', '1881'],
  ['1921-D', '1921'],
  ['Augustus, 27 BC-AD 14', undefined],
  ['14 BC-37', undefined],
  ['after 1290 and before 1279', undefined],
  ['AH 1293/4', 'AH 1293, year 4'],
  ['127-', '127X'],
  ['179?', '179X'],
  ['157?', '157X'],
  ['157?', 'AD 157 (?)'],
  ['c. 157?', '157X'],
  ['1???', '1XXX'],
  ['1???', 'AD 1 (?)'],
  ['n. 1300', 'after 1300'],
  ['03/1911', 'March 1911'],
  ['1911 A, D', '1911'],
  ['Jahr 3 = 286/7', 'AD 286/7'],
];

describe('what cannot be read is refused in a sentence that says what to write', () => {
  test.for(REFUSED)('%s', ([text, offered]) => {
    const problem = refusalOf(text, UNDER_EDWARD_I);
    expect(problem).toMatch(/\.$/);
    if (offered === undefined) return;
    expect(problem).toContain(offered);
    expect(parseDate(offered, UNDER_EDWARD_I).ok).toBe(true);
  });
});

test('a regnal year outside the reign is refused with the bounds of the reign', () => {
  expect(refusalOf('Edward I, year 36', UNDER_EDWARD_I)).toContain('1272-11-20 to 1307-07-07');
});

test('a figure lost is asked about in a column of years AD as well, and not where only a year of so few figures can be meant', () => {
  expect(refusalOf('157?', { era: 'AD' })).toContain('157X for 1570-1579, or AD 157 (?)');
  const years = (text: string, context: object) => {
    const read = parseDate(text, context);
    return read.ok ? read.value.edtf : null;
  };
  expect(years('157?', { era: 'BC' })).toBe('-0156?');
  expect(years('157?', { era: 'AD', realm: 'Rome' })).toBe('0157?');
  // The 3240s are yet to come.
  expect(years('324?', { era: 'AD' })).toBe('0324?');
});

/** Words, marks and half-dates that must never become a year. */
const NONSENSE = [
  // Words in which a single letter could pass for a century, an era or a lost figure.
  ...['is', 'six', 'vis', 'vic', 'seconds', 'firsts', 'iOS', 'vies', 'sex', `AH ${'X'.repeat(3)}`],
  ...[
    '',
    ' ',
    '-',
    '/1/',
    '..',
    '?',
    '~',
    '%',
    'c.',
    'ca',
    'about',
    'AH',
    'BC',
    'AD',
    'year',
    'or',
    '1279 or',
    'or 1279',
  ],
  ...[
    'MIX',
    'DIM',
    'CIVIL',
    'MCMXI1',
    'IIII',
    'MDCIL',
    'a penny',
    'Edward',
    '12 79',
    '1,279',
    '12790',
    '127',
    '1279-1',
    '1985-',
  ],
  ...[
    '1279/1280/1281',
    '[1279',
    '1279]',
    '{1279]',
    '[]',
    '{}',
    '[1279,]',
    '[..]',
    '1279..1281',
    'century',
    'late century',
  ],
  ...[
    'third half of the 12th century',
    '5th quarter of the 12th century',
    '4 C',
    '2S',
    '1 6460s',
    'before',
    'before after',
  ],
  ...[
    'AH',
    'AH twelve',
    'AH 1255, year',
    'year 15',
    'Meiji',
    'Meiji zero',
    '明治三元年',
    'SE',
    'wu',
    'jia',
    '1279 BC AD',
    'AD 1279 BC',
  ],
  ...[
    '20 1278',
    'November',
    '20 November',
    '32 January 1649',
    'January 32, 1649',
    '99th century',
    'XYZ century',
    '1850-1900-1950',
  ],
];

test.for(NONSENSE)('"%s" is no date', (text) => {
  expect(parseDate(text, UNDER_EDWARD_I)).toMatchObject({ ok: false });
});

test('a refusal never speaks of machines', () => {
  for (const text of [...NONSENSE, ...REFUSED.map(([written]) => written)]) {
    expect(refusalOf(text, UNDER_EDWARD_I).replace(`"${text}"`, '')).not.toMatch(
      /invalid|unexpected|null|undefined|schema|NaN|\bregex/i,
    );
  }
});
