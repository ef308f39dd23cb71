import { describe, expect, test } from 'vitest';
import { linkRecords } from '../../src/catalogue/link.ts';
import { readCabinet } from '../../src/catalogue/read-cabinet.ts';
import { publicFacts } from '../../src/publish/public-facts.ts';
import { publicPieces } from '../../src/publish/public-piece.ts';
import { setPieceOf } from '../../src/publish/set-piece.ts';
import { setGrid, setStates } from '../../src/publish/set-states.ts';
import { changed, markedCabinet } from '../catalogue/small-cabinet.ts';

const coin = (number: string, title: string, facts: string): string =>
  `---\nnumber: "${number}"\ntitle: ${title}\nkind: coin\n${facts}---\n`;
const FULL = `struck-for: hidden-king
ruler: plain-king
issuer: A town
mint: plain-town
denomination: penny
date: 1281
dated: "AH 311"
references: [plain-book 12]
metal: silver
fineness: 1/2
weight: 2 g
made: struck
shape: round
grade: VF
grade-scale: uk
problem: cleaned
altered: { host: Another, host-ruler: plain-king, done: [{ what: engraved }] }
sure: { mint: probable }
dies: { obverse: A1 }
tags: [first]
prefer: 2
provenance: [{ when: 1934, how: auction }, { when: 2001/2003, how: exchange }]
`;
const GRID =
  'title: By town\none-per: ruler\nwhere: { realm: Plainland }\ngrid: { rows: mint, columns: denomination }\n';
const folder = changed(await markedCabinet(), {
  'pieces/full/piece.md': coin('0099', 'A full piece', FULL),
  'pieces/bare/piece.md': coin('0100', 'A bare piece', ''),
  'pieces/blank/piece.md': coin('0101', 'A blank piece', 'ruler: none\nmint: unknown\ndenomination: none\ndate: unknown\n'),
  'pieces/odd/piece.md': coin('0102', 'An odd piece', 'date: 1344?\ndated: as it may be\nprovenance: [{ when: 2001/.., how: gift }]\n'),
  'pieces/spare/piece.md': coin('0103', 'A spare', 'ruler: plain-king\nmint: second-town\ndenomination: penny\ndate: 1281\n'),
  'pieces/stray/piece.md': coin('0104', 'A stray', 'mint: third-town\ndenomination: penny\n'),
  'mints/second-town.yaml': 'name: Second Town\n',
  'mints/third-town.yaml': 'name: Third Town\n',
  'mints/fourth-town.yaml': 'name: Fourth Town\n',
  'pieces/unlisted-groat/piece.md': (text) => text.replace('mint: plain-town', 'mint: fourth-town'),
  'sets/by-town.yaml': GRID,
}); // prettier-ignore
const { pieces: all, ...lists } = linkRecords(readCabinet(folder).records);
const pieces = publicPieces({ pieces: all, ...lists });
const piece = (id: string) => pieces.find((one) => one.id === id) ?? expect.fail(id);

describe('what a set may know of a piece', () => {
  test('is every public fact a rule may ask for, each under its own name', () => {
    expect(setPieceOf(piece('full'))).toMatchObject({
      id: 'full', title: 'A full piece', kind: 'coin', status: 'kept', rulers: ['plain-king'], struckFor: ['hidden-king'], issuer: 'A town',
      mint: 'plain-town', area: 'Plainshire', denomination: 'penny', metal: 'silver', shape: 'round', made: 'struck', blanks: {},
      // AH 311: 21 April 923 to 8 April 924, by the tabular calendar.
      interval: { low: 1281, high: 1281 }, dated: { low: 923, high: 924 }, references: [{ work: 'plain-book' }], tags: ['first'],
      dies: { obverse: 'A1' }, altered: true, host: 'plain-king', details: true, stated: { text: 'VF' }, sure: { mint: 'probable' },
      acquired: 2003, prefer: 2,
    }); // prettier-ignore
    const { grade, blanks } = setPieceOf(piece('full'));
    expect(blanks).toEqual({});
    expect(grade?.low).toBeLessThanOrEqual(grade?.high ?? 0);
  });
  test('keeps what is not recorded apart from what is stated to be a blank', () => {
    expect(setPieceOf(piece('bare'))).toMatchObject({ rulers: [], blanks: {}, interval: null, grade: null, details: false, altered: false, acquired: null }); // prettier-ignore
    const bare = setPieceOf(piece('bare'));
    for (const name of ['mint', 'area', 'dated', 'host', 'dies', 'prefer'] as const) expect(bare[name]).toBeUndefined();
    expect(setPieceOf(piece('blank')).blanks).toEqual({ ruler: 'none', mint: 'unknown', denomination: 'none', date: 'unknown' }); // prettier-ignore
    // A town without an area has none.
    expect(setPieceOf(piece('spare')).area).toBeUndefined();
  });
  test('says of a date on it that cannot be read, of one in doubt, and of an open year of coming, just that', () => {
    expect(setPieceOf(piece('odd'))).toMatchObject({ dated: 'unreadable', sure: { date: 'possible' }, acquired: null });
  });
  test('has no grade where a grade has no steps', () => {
    const { grade } = piece('full');
    if (grade === null) throw new Error('It has one.');
    for (const part of ['low', 'high'])
      expect(setPieceOf({ ...piece('full'), grade: { ...grade, [part]: null } }).grade).toBeNull();
  });
});

test('a grid of a set shows what fits it and its spares, by their towns’ names; nothing unlisted and nothing else', () => {
  const states = setStates(lists, pieces);
  const at = lists.sets.findIndex(({ id }) => id === 'by-town');
  const [set, state] = [lists.sets[at] ?? expect.fail('no set'), states[at] ?? expect.fail('no state')];
  expect(state.spares.length).toBeGreaterThan(0);
  const grid = setGrid(lists, pieces, set, state) ?? expect.fail('no grid');
  const shown = grid.rows.map(({ label }, row) => [label, (grid.cells[row] ?? []).flat().map((one) => one.piece).sort()]);
  expect(Object.fromEntries(shown)).toEqual({ 'Plain Town': ['plain-penny'], 'Second Town': ['spare'] });
  expect(grid.columns.map(({ label }) => label)).toEqual(['penny']);
  const plain = lists.sets.findIndex(({ id }) => id === 'plain-set');
  expect(setGrid(lists, pieces, lists.sets[plain] ?? set, states[plain] ?? state)).toBeNull();
}); // prettier-ignore

test('what is computed for the data of a piece is there where it can be, and left out where not', () => {
  const facts = (id: string) => publicFacts(piece(id), `https://example.org/pieces/${id}/`);
  expect(facts('full')).toMatchObject({ edtf: '1281', fine: { low: expect.any(Number) as number }, grade: { low: expect.any(Number) as number } }); // prettier-ignore
  expect(facts('full')).not.toHaveProperty('afterType');
  expect(publicFacts({ ...piece('full'), fromType: ['metal'] }, 'x')).toMatchObject({ afterType: ['metal'] });
  for (const name of ['edtf', 'fine', 'grade']) expect(facts('bare')).not.toHaveProperty(name);
  const { grade } = piece('full');
  expect(publicFacts({ ...piece('full'), grade: grade === null ? null : { ...grade, low: null } }, 'x')).not.toHaveProperty('grade'); // prettier-ignore
});
