import { describe, expect, test } from 'vitest';
import { readGuide } from '../../../src/commands/plan/read-guide.ts';

const HEADINGS = 'set,place,grade,low,high,currency,source,date';

function read(row: string) {
  return readGuide(`${HEADINGS}\n${row}\n`, () => 'uk');
}

test('a price is read to the penny, its grade on the scale of the set, its age from the date', () => {
  expect(read('mints,york,45,66.05,82,GBP,A list,2025-02-15').prices.get('mints')).toMatchObject([
    {
      place: 'york',
      grade: '45',
      graded: { low: 45, high: 45 },
      price: { low: 6605, high: 8200 },
      currency: 'GBP',
      source: 'A list',
      year: 2025,
    },
  ]);
});

test('a currency without pence, as ISO 4217 has the yen, is whole yen', () => {
  expect(read('mints,york,VF,5000,6000,JPY,A list,2025').prices.get('mints')).toMatchObject([
    { price: { low: 5000, high: 6000 } },
  ]);
});

describe('a row that is not whole is not used, and nothing is put in its place', () => {
  test.for([
    ['mints,york,VF,,82,GBP,A list,2025', /guide\.csv:2 is not used\. It has no low price\./],
    ['mints,york,VF,66,,GBP,A list,2025', /It has no high price\./],
    ['mints,york,VF,66,82,,A list,2025', /Its currency is missing\. Fill the column currency\./],
    ['mints,york,,66,82,GBP,A list,2025', /Its grade is missing/],
    ['mints,,VF,66,82,GBP,A list,2025', /Its place is missing/],
    ['mints,york,VF,66,82,GBP,,2025', /no source\. Write under source where it comes from/],
    ['mints,york,VF,66,82,GBP,A list,', /no date, so that its age cannot be told/],
    ['mints,york,VF,66,82,GBP,A list,2025/..', /does not say in which year/],
    ['mints,york,VF,82,66,GBP,A list,2025', /runs backwards, from 82 to 66\. Write 66 under low and 82 under high\./],
    ['mints,york,VF,66,82,QQQ,A list,2025', /"QQQ" is no currency/],
    ['mints,york,VF,66.555,82,GBP,A list,2025', /Write/],
    ['mints,york,splendid,66,82,GBP,A list,2025', /splendid/],
    ['mints,york,not graded,66,82,GBP,A list,2025', /not a grade to look for\. Write VF\./],
    ['mints,york,"VF details, cleaned",66,82,GBP,A list,2025', /problem piece, which fills no place/],
  ] as const)('%s', ([row, says]) => {
    const { prices, unread } = read(row);
    expect([...prices]).toEqual([]);
    expect(unread.map(({ says: said }) => said)).toEqual([expect.stringMatching(says)]);
  });
});
