import { expect, test } from 'vitest';
import type { FacePictures } from '../../../../src/photographs/cache/manifest.ts';
import { faceOf } from '../../../../src/site/models/shared/face.ts';
import { wholeCabinet } from '../../whole-cabinet.ts';

const { pieces } = await wholeCabinet('content');

/** A photograph that the piece fills, so many pixels wide. */
const photograph = (width: number): FacePictures => {
  const made = { file: `obverse-${width}.webp`, width, height: width };
  const extent = { width, height: width };
  return {
    face: 'obverse',
    webp: [made],
    jpeg: made,
    span: { width: 1, height: 1 },
    placed: 'found',
    sure: 0.9,
    doubt: null,
    faults: [],
    seems: null,
    seen: { piece: extent, photograph: extent },
  };
};

// A page lays a piece at 14 pixels a millimetre at most (`--piece-most` in tokens.css): a penny of 18.6 mm takes 260.4.
test.for([
  { width: 160, isSoft: true },
  { width: 259, isSoft: true },
  { width: 262, isSoft: false },
  { width: 1280, isSoft: false },
])('a photograph of $width pixels is soft on the page of a penny: $isSoft', ({ width, isSoft }) => {
  const penny = pieces.find(({ id }) => id === 'york-penny-3b');
  if (penny === undefined) throw new Error('The demo has no york-penny-3b.');
  const face = faceOf(penny, 'obverse', { [penny.id]: [photograph(width)] });
  expect(face).toMatchObject({ shown: 'photograph', isSoft, unmeasured: false, millimetres: 18.6 });
  const unmeasured = faceOf({ ...penny, size: null }, 'obverse', { [penny.id]: [photograph(width)] });
  expect(unmeasured).toMatchObject({ unmeasured: true, millimetres: 20 });
});
