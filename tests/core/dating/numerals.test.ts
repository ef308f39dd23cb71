import { describe, expect, test } from 'vitest';
import { readCyrillic } from '../../../src/core/dating/numerals.ts';
import { readHanNumber } from '../../../src/core/dating/numerals.ts';
import { readHebrewNumber } from '../../../src/core/dating/numerals.ts';
import { readRoman } from '../../../src/core/dating/numerals.ts';
import { readAs } from './read-as.ts';

/** Numerals and the values books and standards give them. */
const ROMAN: readonly (readonly [string, number | undefined])[] = [
  ['MDCCCCX', 1910],
  ['MCMX', 1910],
  ['MDCCXLVII', 1747],
  ['MDCVIIII', 1609],
  ['MCMXCIX', 1999],
  ['MDCCC', 1800],
  ['M.DCC.XLVII', 1747],
  ['M·D·LXX', 1570],
  ['CIƆIƆCCXLVIII', 1748],
  ['MDCXXIIIJ', 1624],
  ['MIM', undefined],
  ['IIIII', undefined],
  ['VX', undefined],
  ['MDCD', undefined],
  ['', undefined],
];

test.for(ROMAN)('Roman %s is %s', ([written, number]) => {
  expect(readRoman(written)).toBe(number);
});

/** Coins of Peter I, whose years in letters are known from the same years in figures after 1721; common practice. */
const CYRILLIC: readonly (readonly [string, number | undefined])[] = [
  ['҂АѰ', 1700],
  ['҂АѰА', 1701],
  ['АѰГ', 1703],
  ['҂АѰІ', 1710],
  ['҂АѰГІ', 1713],
  ['АѰК', 1720],
  ['҂АѰКА', 1721],
  ['АХЧ', 1690],
  ['҂АХЧѲ', 1699],
  ['ААА', undefined],
  ['ПЕНИ', undefined],
];

test.for(CYRILLIC)('Cyrillic %s is %s', ([written, number]) => {
  expect(readCyrillic(written)).toBe(number);
});

test('a second opinion on every Chinese number to 99, from the numbers of Intl (hanidec) and from counting', () => {
  const figures = new Intl.NumberFormat('en-u-nu-hanidec', { useGrouping: false });
  const digits = '〇一二三四五六七八九'.split('');
  for (let number = 1; number <= 99; number += 1) {
    const [tens, units] = [Math.floor(number / 10), number % 10];
    const spoken = `${tens > 1 ? (digits[tens] ?? '') : ''}${tens > 0 ? '十' : ''}${units > 0 ? (digits[units] ?? '') : ''}`;
    expect(readHanNumber(spoken), spoken).toBe(number);
    expect(readHanNumber(figures.format(number)), figures.format(number)).toBe(number);
  }
});

test('元 is the first year, 廿 twenty, 卅 thirty', () => {
  expect(['元', '廿三', '卅四', '一百零'].map(readHanNumber)).toEqual([1, 23, 34, undefined]);
});

/** Years as the coins of Israel write them; the years of ours stand beside them on the same coins or in the law of issue. */
describe('Hebrew years', () => {
  test.for([
    ['תש״ח', 5708],
    ['תש״ט', 5709],
    ['תשט״ו', 5715],
    ['תשט״ז', 5716],
    ['תש״ך', 5720],
    ['התשמ״ה', 5745],
    ['תשע״ד', 5774],
  ] as const)('%s is %s', ([written, number]) => {
    expect(readHebrewNumber(written)).toBe(number);
  });

  test('a word is no year', () => {
    expect(readHebrewNumber('ירושלים')).toBeUndefined();
    expect(readHebrewNumber('שלום')).toBeUndefined();
    expect(readHebrewNumber('א')).toBeUndefined();
  });

  test('a year in letters is the year in figures', () => {
    expect(readAs('תש״ח')).toMatchObject({ earliest: 1947, latest: 1948, calendar: 'hebrew' });
  });
});
