import { describe, expect, test } from 'vitest';
import { altOf } from '../../../../src/site/models/shared/alt.ts';
import { faceOf } from '../../../../src/site/models/shared/face.ts';
import { wholeCabinet } from '../../whole-cabinet.ts';

const { pieces } = await wholeCabinet('content');
const pieceOf = (id: string): (typeof pieces)[number] => {
  const piece = pieces.find((one) => one.id === id);
  if (piece === undefined) throw new Error(`The demo has no ${id}.`);
  return piece;
};

/** What is in the demo's own files is what must be heard; no outside source is needed for that. */
describe('a photograph in words', () => {
  test('tells the face, the design and the legend with its reading', () => {
    expect(altOf(pieceOf('william-iii-sixpence'), 'obverse')).toBe(
      'The obverse of Sixpence of William III, York, 1696. First laureate and draped bust of the king to right, y below. Legend: GVLIELMVS III DEI GRA, that is, Gulielmus tertius Dei gratia.',
    );
  });

  test("is the keeper's own where the keeper wrote one", () => {
    const piece = pieceOf('william-iii-sixpence');
    const picture = { face: 'obverse', by: null, licence: null };
    expect(altOf({ ...piece, pictures: [{ ...picture, alt: 'A worn king.' }] }, 'obverse')).toBe('A worn king.');
    expect(altOf({ ...piece, pictures: [{ ...picture, alt: null }] }, 'obverse')).toContain('First laureate');
  });

  test('of a detail says whose it is', () => {
    expect(altOf(pieceOf('lead-token'), 'detail-1')).toBe('A detail of Lead token with cross and pellets.');
  });

  test('says which face is blank, and which was not photographed', () => {
    expect(faceOf(pieceOf('lead-token'), 'reverse', {})).toMatchObject({
      shown: 'blank',
      alt: 'The reverse of Lead token with cross and pellets is blank.',
    });
    // The die of the stater's obverse was plain: its reverse bears the horse.
    expect(faceOf(pieceOf('gallo-belgic-stater'), 'obverse', {})).toMatchObject({
      shown: 'blank',
      alt: 'The obverse of Gold stater of Gallo-Belgic type E is blank.',
    });
    expect(faceOf(pieceOf('edward-i-farthing-york'), 'obverse', {})).toMatchObject({
      shown: 'disc',
      alt: expect.stringContaining('no photograph') as string,
    });
  });
});
