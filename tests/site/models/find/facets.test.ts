import { expect, test } from 'vitest';
import { NO_ADDRESSES } from '../../../../src/catalogue/addresses.ts';
import { handOver } from '../../../../src/catalogue/handed-over.ts';
import { linkRecords } from '../../../../src/catalogue/link.ts';
import { readCabinet } from '../../../../src/catalogue/read-cabinet.ts';
import { publicPieces } from '../../../../src/publish/public-piece.ts';
import { parseState } from '../../../../src/site/find/state.ts';
import { facetLists } from '../../../../src/site/models/find/facets.ts';
import { findRecords } from '../../../../src/site/models/find/record-of.ts';
import { changed, markedCabinet } from '../../../catalogue/small-cabinet.ts';
import { finderAsSent } from '../../find/sent.ts';

const piece = (number: string, facts: string): string =>
  `---\nnumber: "${number}"\ntitle: Piece ${number}\nkind: coin\n${facts}---\nA story.\n`;

const { records } = readCabinet(
  changed(await markedCabinet(), {
    'rulers/henry-a.yaml': 'name: Henry\nreigns: [{ from: 1100, to: 1135 }]\n',
    'rulers/henry-b.yaml': 'name: Henry\nreigns: [{ from: 1154, to: 1189 }]\n',
    'pieces/a/piece.md': piece('a1', 'ruler: henry-a\ngrade: VF\ngrade-scale: uk\n'),
    'pieces/b/piece.md': piece('b2', 'ruler: henry-b\ngrade: VF\ngrade-scale: uk\nproblem: cleaned\n'),
    'pieces/c/piece.md': piece('c3', 'ruler: henry-b\ngrade: F\ngrade-scale: uk\n'),
    'pieces/d/piece.md': piece('d4', 'ruler: henry-b\ngrade: F\ngrade-scale: us\n'),
    'pieces/e/piece.md': piece('e5', 'ruler: henry-a\nstruck-for: henry-b\n'),
    'pieces/f/piece.md': piece('f6', 'ruler: none\nmint: unknown\n'),
  }),
);
handOver({ records, photographs: '', hasAddress: true, addresses: NO_ADDRESSES });
const { pieces: linked, ...lists } = linkRecords(records);
const pieces = publicPieces({ ...lists, pieces: linked });
const cabinet = { lists, pieces, listed: pieces.filter(({ listed }) => listed), photographs: {}, changed: {} };

test('two rulers of one name are distinguished by their years', () => {
  const rulers = facetLists(cabinet).filter(({ facet, label }) => facet === 'ruler' && label.startsWith('Henry'));
  expect(rulers.map(({ value }) => value)).toEqual(['henry-a', 'henry-b']);
  expect(rulers[0]?.label).toContain('1100');
  expect(rulers[1]?.label).toContain('1154');
});

test('a grade is chosen by its words, scale by scale, the poorest first', () => {
  const grades = facetLists(cabinet).filter(({ facet, group }) => facet === 'grade' && group !== null);
  const british = grades.filter(({ group }) => group === 'British').map(({ label }) => label);
  expect(british.filter((label) => !label.includes('problem'))).toEqual(['F', 'VF']);
  expect(british.filter((label) => label.includes('problem'))).toHaveLength(1);
  expect(new Set(grades.map(({ value }) => value)).size).toBe(grades.length);
  expect(grades.filter(({ label }) => label === 'F').map(({ pieces: held }) => held.map(({ id }) => id))).toEqual([
    ['d'],
    ['c'],
  ]);
});

test('sorted by grade, a piece with a problem comes after every sound one', async () => {
  const all = await findRecords(cabinet);
  const order = finderAsSent(all)(parseState('?sort=grade'))
    .first(all.length)
    .map(({ record }) => record.id);
  expect(order.indexOf('a')).toBeLessThan(order.indexOf('c'));
  expect(order.indexOf('c')).toBeLessThan(order.indexOf('b'));
  // A piece without a grade is last of all.
  expect(order.indexOf('b')).toBeLessThan(order.indexOf('old-medal'));
});

test('a piece in one name and struck for another is found under both', () => {
  const of = (value: string) =>
    facetLists(cabinet).find((list) => list.facet === 'ruler' && list.value === value)?.pieces;
  expect(of('henry-a')?.map(({ id }) => id)).toEqual(['a', 'e']);
  expect(of('henry-b')?.map(({ id }) => id)).toContain('e');
});

test.for(['ruler', 'mint', 'denomination'] as const)(
  'every piece answers to a line of the %s, and one without to the last',
  (name) => {
    const lists = facetLists(cabinet).filter(({ facet }) => facet === name);
    expect(new Set(lists.flatMap(({ pieces: held }) => held)).size).toBe(cabinet.listed.length);
    expect(lists.at(-1)?.value).toBe('none');
    expect(lists.at(-1)?.pieces.map(({ id }) => id)).toContain('f');
  },
);

test('a piece under no period of any scheme is listed as that', () => {
  const periods = facetLists(cabinet).filter(({ facet }) => facet === 'era');
  expect(periods.at(-1)?.value).toBe('none');
  // Undated.
  expect(periods.at(-1)?.pieces.map(({ id }) => id)).toContain('f');
  expect(new Set(periods.flatMap(({ pieces: held }) => held)).size).toBe(cabinet.listed.length);
});
