import { describe, expect, test } from 'vitest';
import { readOne } from './read-one.ts';

const HEADINGS = 'ID,Ruler,Denomination,Mint,Weight,Paid';
const setAsideIn = async (rows: readonly string[]): Promise<readonly (readonly [number, string])[]> =>
  (await readOne(`${HEADINGS}\n${rows.join('\n')}\n`)).setAside.map(({ row, because }) => [row, because]);

const PIECES = [
  'D-1,Edward I,Penny,London,1.41,£45',
  'D-2,Edward I,Penny,York,1.38,£22',
  'D-3,Edward II,Penny,Durham,1.35,£28',
];

// How people keep lists; common practice.
describe('what stands between the rows and is no piece', () => {
  test.for([
    ['a heading of what follows', 'HAMMERED SILVER,,,,,', 'it is a heading between the rows'],
    ['a heading with a century in it', 'Tokens of the 17th century,,,,,', 'it is a heading between the rows'],
    ['a heading in the second column', ',Hammered silver,,,,', 'it is a heading between the rows'],
    ['a total', 'TOTAL,,,,,£95', 'it is a total'],
    ['a subtotal with words', 'Sub-total hammered,,,,,£95', 'it is a total'],
    ['a total without a sum', 'Zwischensumme:,,,,,', 'it is the line of a total'],
    ['a total beside how many there are', 'Gesamt,,60 Stück,,,"6.543,50 €"', 'it is a total'],
    ['a total with a count', 'Totaal (3),,,,4.14,95', 'it is a total'],
    ['the headings again, in other letters', 'Id,RULER,DENOMINATION,MINT,WEIGHT,PAID', 'it repeats the headings'],
    ['a line of dashes', '-----,-----,-----,,,', 'it is a line drawn between the rows'],
  ] as const)('%s is told of with its row', async ([, line, because]) => {
    // In the middle, where a sheet of several parts has it, and a blank line after it.
    const [first = '', ...others] = PIECES;
    expect(await setAsideIn([first, line, ',,,,,', ...others])).toEqual([
      [3, expect.stringContaining(because) as string],
    ]);
  });

  test.for([
    ['a piece of which the number alone is known', 'D-9,,,,,'],
    ['a piece with the word in its own fields', 'D-9,Total eclipse medal,,,,£5'],
    ['a ruler alone, where rulers stand', ',Henry III,,,,'],
    ['a number with a letter', '9a,,,,,'],
    ['a maker called Totalini', 'Totalini,Edward I,Penny,London,1.3,£5'],
  ] as const)('%s stays a row', async ([, line]) => {
    expect(await setAsideIn([...PIECES, line, ...PIECES])).toEqual([]);
  });

  test('a heading is known beside headings that come again', async () => {
    expect(await setAsideIn([...PIECES, HEADINGS, 'TOKENS,,,,,', ...PIECES])).toEqual([
      [5, 'it repeats the headings'],
      [6, expect.stringContaining('it is a heading between the rows') as string],
    ]);
  });

  test('a list of names in two columns has no headings between its rows', async () => {
    const sheet = await readOne('Ruler,Note\nEDWARD I,\nHenry III,mine\nStephen,\n');
    expect(sheet.setAside).toEqual([]);
  });
});
