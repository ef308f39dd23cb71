import { expect, test } from 'vitest';
import { changed, markedCabinet, problemsOf } from '../catalogue/small-cabinet.ts';

const PENNY = 'pieces/plain-penny/piece.md';
const OTHER = 'pieces/old-medal/piece.md';

/** The medal with this fact, in the place of the one of that name that it has. */
const fact = (line: string) => ({
  [OTHER]: (text: string) => text.replace(new RegExp(`^${line.split(':')[0] ?? ''}:.*\\n`, 'm'), '').replace(/^kind:/m, `${line}\nkind:`),
}); // prettier-ignore

/** Where a keeper has made a word public: facts of the pieces that are shown, and the lists. What tells of keepers and finds is not there. */
const PUBLIC: readonly (readonly [where: string, change: Readonly<Record<string, string | ((text: string) => string)>>])[] = [
  ['a title', { [OTHER]: (text) => text.replace(/^title: .*$/m, 'title: Medal of Brocklehurst') }],
  ['a number', { [OTHER]: (text) => text.replace(/^number: .*$/m, 'number: Brocklehurst-7') }],
  ['the name of a folder', { 'pieces/brocklehurst/piece.md': '---\nnumber: "77"\ntitle: Another\nkind: coin\n---\n' }],
  ['an issuer', fact('issuer: Brocklehurst')],
  ['a maker', fact('makers: [{ name: Brocklehurst, role: medallist }]')],
  ['what stands on it as a date', fact('dated: "Brocklehurst 7"')],
  ['a shape', fact('shape: Brocklehurst oval')],
  ['a treatment', fact('treatments: [Brocklehurst mark]')],
  ['a peculiarity', fact('peculiarities: [Brocklehurst flan]')],
  ['a tag', fact('tags: [Brocklehurst]')],
  ['a legend', fact('obverse: { legend: BROCKLEHURST }')],
  ['a design', fact('reverse: { design: The arms of Brocklehurst }')],
  ['an edge', fact('edge: { legend: BROCKLEHURST }')],
  ['a ruler', { 'rulers/brocklehurst.yaml': 'name: Brocklehurst\n' }],
  ['a ruler by another name', { 'rulers/x.yaml': 'name: X\nother-names: [Brocklehurst]\n' }],
  ['a realm', { 'rulers/x.yaml': 'name: X\nrealm: Brocklehurst\n' }],
  ['a mint', { 'mints/x.yaml': 'name: Brocklehurst\n' }],
  ['an area', { 'mints/x.yaml': 'name: X\narea: Brocklehurst\n' }],
  ['a denomination', { 'denominations/x.yaml': 'name: Brocklehurst\n' }],
  ['the plural of a denomination', { 'denominations/x.yaml': 'name: X\nplural: Brocklehurst\n' }],
  ['the title of a book', { 'works/x.yaml': 'title: Brocklehurst\n' }],
  ['the short name of a book', { 'works/x.yaml': 'title: X\nshort: Brocklehurst\n' }],
  ['an author', { 'works/x.yaml': 'title: X\nauthor: A. Brocklehurst\n' }],
  ['a series of books', { 'works/x.yaml': 'title: X\nseries: Brocklehurst studies\n' }],
  ['the words of the cabinet itself', { 'cabinet.yaml': (text) => text.replace(/^about: .*$/m, 'about: Coins of Brocklehurst.') }],
]; // prettier-ignore
/** Where a name tells of a person or a place, and makes nothing public. */
const TELLING: typeof PUBLIC = [
  ['a provenance', fact('provenance: [{ when: 1999, how: gift, from: A. Brocklehurst }]')],
  ['a story', { [OTHER]: (text) => `${text}\nBrocklehurst again.\n` }],
  ['a piece that is not published', { 'pieces/hidden-noble/piece.md': (text) => text.replace(/^kind:/m, 'issuer: Brocklehurst\nkind:') }],
]; // prettier-ignore

/** Whether a name of the ledger is told of in a story, in a cabinet that has been changed so. */
async function isTold(change: (typeof PUBLIC)[number][1]): Promise<boolean> {
  const folder = changed(await markedCabinet(), {
    ...change,
    'private/ledger.csv': 'piece,seller\nplain-penny,From Brocklehurst\n',
    [PENNY]: (text) => `${text}\nOld Brocklehurst let me have it.\n`,
  });
  return problemsOf(folder).some(({ kind, file }) => kind === 'private-in-text' && file === PENNY);
}

test('a rare name of the ledger in a story is told of', async () => {
  expect(await isTold({})).toBe(true);
});
test.for(PUBLIC)('a name of the ledger that is %s too is no secret', async ([, change]) => {
  expect(await isTold(change)).toBe(false);
});
test.for(TELLING)('a name of the ledger that stands in %s too is still one', async ([, change]) => {
  expect(await isTold(change)).toBe(true);
});
