import { expect, test } from 'vitest';
import { readCabinet } from '../../src/catalogue/read-cabinet.ts';
import { citationRemarks, textCitations, workCited } from '../../src/catalogue/text-citations.ts';
import { changed, markedCabinet } from './small-cabinet.ts';

// Author and year in brackets: common practice of journals (Harvard references).
test.for([
  ['its classes (Booth, 1984) go by the beast', ['Booth, 1984']],
  [
    'commoner early than late (Blunt and Whitton 1945–1948), and (see Metcalf 1993)',
    ['Blunt and Whitton 1945', 'Metcalf 1993'],
  ],
  ['divided (Whitton, 1949–1951; Challis 1978 tells of the mint)', ['Whitton, 1949', 'Challis 1978']],
  ['one line (Van Arsdell, 1989)', ['Van Arsdell, 1989']],
  ['struck at Christmas (December 1797), and before (In 1808)', []],
  ['he died (1547) and Whitton wrote in 1949', []],
  ['the groat (weight 12345)', []],
] as const)('“%s” cites %j', ([text, cited]) => {
  expect(textCitations(text).map(({ words }) => words)).toEqual(cited);
});

test.for([
  ['Whitton', '1950', true],
  ['Whitton', '1952', false],
  ['Blunt', '1950', false],
  ['Metcalf', '1994', true],
  ['North', '1994', true],
  ['North', '1992', false],
] as const)('%s of %s has a file: %s', ([name, year, expected]) => {
  const works = [
    { fields: { title: 'A', author: 'C. A. Whitton', year: '1949–1951' } },
    { fields: { title: 'B', author: 'D. M. Metcalf', year: '1993–4' } },
    { fields: { title: 'C', author: 'J. J. North', year: '1991 and 1994' } },
  ];
  expect(workCited({ words: '', name, year }, works) !== undefined).toBe(expected);
});

test('a book without a file is remarked on, a town with a year is not', async () => {
  const story = (text: string) => ({
    'pieces/one/piece.md': `---\nnumber: "1"\ntitle: One\nkind: coin\n---\n${text}\n`,
  });
  const remarksOn = async (text: string) =>
    citationRemarks(readCabinet(changed(await markedCabinet(), story(text))).records);
  const [remark = '', ...others] = await remarksOn('It is rare (Nobody, 1984).');
  expect(others).toEqual([]);
  expect(remark).toContain('pieces/one/piece.md: the story cites “Nobody, 1984”');
  expect(await remarksOn('Struck there (Plain Town 1984).')).toEqual([]);
});
