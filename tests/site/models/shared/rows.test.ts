import { describe, expect, test } from 'vitest';
import type { FaceView } from '../../../../src/site/models/shared/face.ts';
import { longestRow, piecesInRow, ROOM } from '../../../../src/site/models/shared/rows.ts';

/** Pieces of one face each, so many millimetres wide. */
const wide = (...millimetres: number[]): FaceView[][] =>
  millimetres.map((across) => [{ shown: 'disc', millimetres: across } as FaceView]);

describe('a row of a case on a wide board', () => {
  test('is as long as the row in the case', () => {
    expect(longestRow([0, 80, 160, 0, 80])).toBe(3);
    expect(longestRow([0])).toBe(1);
    expect(piecesInRow(wide(20, 20, 20, 20, 20), 5, ROOM.labelled)).toBe(5);
    expect(piecesInRow(wide(20, 20), 5, ROOM.labelled)).toBe(2);
  });

  test('is broken into even rows where its pieces are too wide, and none is left alone', () => {
    // Five of 60 mm are 1,500 pixels at five a millimetre, three of them 900; seven narrow ones take 170 each with their words.
    expect(piecesInRow(wide(60, 60, 60, 60, 60), 5, ROOM.labelled)).toBe(3);
    expect(piecesInRow(wide(20, 20, 20, 20, 20, 20, 20), 7, ROOM.labelled)).toBe(4);
  });

  test('shares its columns with the next, so that one wide piece widens one column', () => {
    expect(piecesInRow(wide(90, ...Array.from({ length: 13 }, () => 20)), 7, ROOM.brief)).toBe(5);
    expect(piecesInRow(wide(...Array.from({ length: 14 }, () => 20)), 7, ROOM.brief)).toBe(7);
  });

  test('one piece that is wider than the board stands by itself', () => {
    expect(piecesInRow(wide(300, 20), 2, ROOM.labelled)).toBe(1);
  });
});
