import { expect, test } from 'vitest';
import { linkRecords } from '../../../../src/catalogue/link.ts';
import { readCabinet } from '../../../../src/catalogue/read-cabinet.ts';
import { publicPieces } from '../../../../src/publish/public-piece.ts';
import type { Cabinet } from '../../../../src/site/cabinet.ts';
import { citationsPage, sortedUnder, worksPage } from '../../../../src/site/models/about/works-page.ts';
import { changed, markedCabinet } from '../../../catalogue/small-cabinet.ts';

/** The marked cabinet and so many more pieces, each under its own number of the one book, the highest number first. */
async function cabinetCiting(count: number) {
  const files = Array.from({ length: count }, (_, at) => [
    `pieces/cited-${at}/piece.md`,
    `---\nnumber: "${1000 + at}"\ntitle: Piece ${at}\nkind: coin\nreferences: [plain-book ${2000 - at}]\n---\nA story.\n`,
  ]);
  const folder = changed(await markedCabinet(), Object.fromEntries(files) as Readonly<Record<string, string>>);
  const { pieces: linked, ...lists } = linkRecords(readCabinet(folder).records);
  const pieces = publicPieces({ ...lists, pieces: linked });
  return { lists, pieces, listed: pieces.filter(({ listed }) => listed), photographs: {}, changed: {} };
}

const cited = (cabinet: Cabinet) => worksPage(cabinet).letters.flatMap(({ works }) => works);

test('a book that only a story cites, by author and year, is listed for that piece', async () => {
  const { listed, ...cabinet } = await cabinetCiting(1);
  const works = {
    ...cabinet.lists.works,
    whitton: {
      id: 'whitton',
      file: '',
      story: '',
      fields: { author: 'C. A. Whitton', title: 'Coinages', year: '1949–1951' },
    },
  };
  const told = listed.map((piece, at) => (at === 0 ? { ...piece, story: 'It is late (Whitton, 1950).' } : piece));
  const shown = cited({ ...cabinet, lists: { ...cabinet.lists, works }, listed: told });
  expect(shown.find(({ id }) => id === 'whitton')).toMatchObject({ cited: 'Cited for 1 piece', pieces: [] });
  expect(shown.find(({ id }) => id === 'whitton')?.alsoIn).toHaveLength(1);
});

test('a book from which little is cited has all of it in the list, in the order of the book', async () => {
  const [work] = cited(await cabinetCiting(3));
  expect(work?.pieces.map(({ number }) => number)).toEqual(['12', '1998', '1999', '2000']);
  expect(work?.more).toBe(0);
});

test('the list of works does not grow with the pieces, and the pages of a book hold every number once', async () => {
  const cabinet = await cabinetCiting(1000);
  const [work] = cited(cabinet);
  expect(work?.pieces).toHaveLength(60);
  expect(work?.cited).toContain('1001');
  expect(work?.more).toBe(941);
  const pages = [1, 2, 3].map((page) => citationsPage(cabinet, 'plain-book', page));
  const numbers = pages.flatMap(({ pieces }) => pieces.map(({ number }) => Number(number)));
  expect(numbers).toEqual([12, ...Array.from({ length: 1000 }, (_, at) => 1001 + at)]);
  expect(Math.max(...pages.map(({ pieces }) => pieces.length))).toBe(400);
  expect(pages[0]?.pager?.pages.map(({ page }) => page)).toEqual([1, 2, 3]);
});

test('a number that is only probable is listed so', async () => {
  const { lists, pieces, ...cabinet } = await cabinetCiting(2);
  const listed = pieces.map((piece) => ({
    ...piece,
    sure: piece.number === '1000' ? { references: 'probable' as const } : {},
  }));
  const [work] = cited({ ...cabinet, lists, pieces, listed });
  expect(work?.pieces.map(({ number }) => number)).toEqual(['12', '1999', '2000 (probable)']);
});

// The order of a bibliography by family name, bodies as they are written. Common practice.
test('books are in the order of their authors', () => {
  const authors = [
    'R. A. Abdy with P. F. Mittag', 'D. F. Allen', 'C. E. Challis (editor)', 'Forum on Information Standards',
    'Portable Antiquities Scheme', 'R. D. Van Arsdell', 'George C. Williamson',
  ]; // prettier-ignore
  const filed = (author: string): string => sortedUnder({ author, title: 'A book' });
  expect(authors.toReversed().toSorted((a, b) => (filed(a) < filed(b) ? -1 : 1))).toEqual(authors);
});
