import { expect, test } from 'vitest';
import { linkRecords } from '../../../../src/catalogue/link.ts';
import { readCabinet } from '../../../../src/catalogue/read-cabinet.ts';
import { publicPieces } from '../../../../src/publish/public-piece.ts';
import { piecesOfRuler } from '../../../../src/site/models/rulers/pieces-of-ruler.ts';
import { setsOf } from '../../../../src/site/models/sets/sets-of.ts';
import { changed, markedCabinet } from '../../../catalogue/small-cabinet.ts';

const folder = changed(await markedCabinet(), {
  'pieces/late-penny/piece.md':
    '---\nnumber: "0099"\ntitle: Late penny\nkind: coin\nruler: plain-king\nstruck-for: hidden-king\ndenomination: penny\nmint: plain-town\n---\nIn the name of the dead.\n',
});
const { pieces: linked, ...lists } = linkRecords(readCabinet(folder).records);
const pieces = publicPieces({ ...lists, pieces: linked });
const cabinet = { lists, pieces, listed: pieces.filter(({ listed }) => listed), photographs: {}, changed: {} };

test('a piece that is in a set says in which place', () => {
  expect(setsOf(cabinet, 'plain-penny').map(({ does, place }) => [does, place?.state])).toContainEqual([
    'stands',
    'filled',
  ]);
});

test('a piece nobody lists serves no set', () => {
  expect(setsOf(cabinet, 'unlisted-groat')).toEqual([]);
  expect(setsOf(cabinet, 'hidden-noble')).toEqual([]);
});

test('a posthumous piece is in the name of one and struck for the other', () => {
  const ids = (list: readonly { id: string }[]) => list.map(({ id }) => id);
  expect(ids(piecesOfRuler(cabinet, 'plain-king').forOther)).toEqual(['late-penny']);
  expect(ids(piecesOfRuler(cabinet, 'plain-king').own)).not.toContain('late-penny');
  expect(ids(piecesOfRuler(cabinet, 'hidden-king').inOther)).toEqual(['late-penny']);
});

test('an unpublished or unlisted piece is in no list of a ruler', () => {
  const { own, forOther, inOther } = piecesOfRuler(cabinet, 'hidden-king');
  expect([...own, ...forOther, ...inOther].map(({ id }) => id)).toEqual(['late-penny']);
});
