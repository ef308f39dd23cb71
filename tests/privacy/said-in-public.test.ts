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
  ['a metal', fact('metal: Brocklehurst brass')],
  ['a way of making', fact('made: Brocklehurst press')],
  ['a problem', fact('problem: Brocklehurst scratch')],
  ['a reference', fact('references: ["plain-book Brocklehurst 7"]')],
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

/** The same name in four files of one kind: a word of the subject of a cabinet is in more than three public ones. */
const four = (file: (at: number) => string, facts = '') =>
  Object.fromEntries(
    [1, 2, 3, 4].map((at) => [
      file(at),
      `---\nnumber: "7${at}"\ntitle: X ${at}\nkind: coin\n${facts}---\nBrocklehurst.\n`,
    ]),
  );
const HIDDEN_FOUR = four((at) => `pieces/x-${at}/piece.md`, 'publish: no\n');
const SHOWN_FOUR = four((at) => `pieces/x-${at}/piece.md`);
const PRIVATE_FOUR = four((at) => `private/import/x/${at}.md`);

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
test('what many public texts say is the subject of the cabinet; many hidden or private ones make nothing public', async () => {
  expect(await isTold(SHOWN_FOUR)).toBe(false);
  expect(await isTold(HIDDEN_FOUR)).toBe(true);
  expect(await isTold(PRIVATE_FOUR)).toBe(true);
});

/** The tables beside the ledger, and the columns that name what is public anyway. */
const TABLES = {
  'private/life.csv':
    'piece,date,event,amount,with,due,deal,note\nplain-penny,2001,lent,,,2002-05,long-loan-to-the-hall,\n',
  'private/prices.csv':
    'piece,set,place,type,grade,price,currency,date,when,how,source,note\nplain-penny,plain-set,plain-king,long-type,VF,20,GBP,2001,long-ago-then,hammer-price,,\n',
};
test('what a table of private/ names and is public anyway sets off no alarm', async () => {
  const words = 'Of plain-penny, the plain-set, a long-type; long-ago-then, hammer-price, lent in the long-loan-to-the-hall.';
  const folder = changed(await markedCabinet(), { ...TABLES, [PENNY]: (text) => `${text}\n${words}\n` });
  expect(problemsOf(folder).filter(({ kind }) => kind === 'private-in-text')).toEqual([]);
}); // prettier-ignore

/** A table of the ledger's rows, what a story says, and whether that is told of. */
const ROWS: readonly (readonly [why: string, ledger: string, story: string, told: boolean])[] = [
  [
    'a place of a find that is a mint by its older name',
    'piece,find-spot\nplain-penny,"Kettlebury, by the ford"\n',
    'Struck at Kettlebury.',
    false,
  ],
  [
    'a place of a find that is no mint',
    'piece,find-spot\nplain-penny,"Kettlewell, by the ford"\n',
    'Walked at Kettlewell.',
    true,
  ],
  [
    'a category, a word in many rows of a column of one’s own',
    `piece,Album\n${'plain-penny,by Kettlewell\n'.repeat(5)}`,
    'Walked at Kettlewell.',
    false,
  ],
  [
    'a name in a few rows of a column of one’s own',
    `piece,Album\n${'plain-penny,by Kettlewell\n'.repeat(2)}`,
    'Walked at Kettlewell.',
    true,
  ],
];
test.for(ROWS)('%s', async ([, ledger, story, told]) => {
  const folder = changed(await markedCabinet(), {
    'private/ledger.csv': ledger,
    'mints/plain-town.yaml': (text) => `${text}names: [{ name: Kettlebury }]\n`,
    [PENNY]: (text) => `${text}\n${story}\n`,
  });
  expect(problemsOf(folder).some(({ kind }) => kind === 'private-in-text')).toBe(told);
});

test.for([
  ['the area of a mint', 'mints/x.yaml', 'name: X\narea: Vale of Brocklehurst\n'],
  ['another name of a mint', 'mints/x.yaml', 'name: X\nnames: [{ name: Vale of Brocklehurst }]\n'],
  ['the name of a denomination', 'denominations/x.yaml', 'name: Vale of Brocklehurst\n'],
] as const)('a note that is %s tells nothing', async ([, file, text]) => {
  const told = async (change: Readonly<Record<string, string>>) =>
    problemsOf(
      changed(await markedCabinet(), {
        ...change,
        'private/ledger.csv':
          'piece,notes\nplain-penny,the vale of brocklehurst in 1905\nplain-penny,Vale of Brocklehurst\n',
        [PENNY]: (story: string) => `${story}\nIt speaks of the vale of Brocklehurst.\n`,
      }),
    ).filter(({ kind }) => kind === 'private-in-text').length;
  expect(await told({})).toBe(1);
  expect(await told({ [file]: text })).toBe(0);
});

test('an area of a find is public only where its piece is', async () => {
  const found = (publish: string) => ({
    'pieces/x/piece.md': `---\nnumber: "77"\ntitle: X\nkind: coin\npublish: ${publish}\nfound: { area: Great Kettlewell }\n---\n`,
    'private/ledger.csv': 'piece,find-spot\nplain-penny,"Far Carr, Great Kettlewell"\n',
    [PENNY]: (text: string) => `${text}\nIt came from Great Kettlewell.\n`,
  });
  const told = async (publish: string) =>
    problemsOf(changed(await markedCabinet(), found(publish))).filter(({ kind, file }) => kind === 'private-in-text' && file === PENNY).length;
  expect([await told('yes'), await told('no')]).toEqual([0, 1]);
}); // prettier-ignore

// A sheet's column of remarks may have been read as the problem and as the private notes at once.
test.for([
  ['a sentence', 'Not to be shown to anybody', true],
  ['the name of a fault', 'holed twice', false],
] as const)('%s of the notes that is the problem of the piece too', async ([, words, told]) => {
  const folder = changed(await markedCabinet(), {
    'private/ledger.csv': `piece,notes\nplain-penny,${words}\n`,
    ...fact(`problem: ${words}`),
  });
  expect(problemsOf(folder).some(({ kind }) => kind === 'private-in-text')).toBe(told);
});
