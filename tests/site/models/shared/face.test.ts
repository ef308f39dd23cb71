import { expect, test } from 'vitest';
import type { FacePictures } from '../../../../src/photographs/cache/manifest.ts';
import { faceOf, pixelsOf } from '../../../../src/site/models/shared/face.ts';
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
  { width: 160, pixels: 8 },
  { width: 259, pixels: 13 },
  { width: 262, pixels: 14 },
  { width: 1280, pixels: 14 },
])('a photograph of $width pixels shows a penny at $pixels pixels a millimetre', ({ width, pixels }) => {
  const penny = pieces.find(({ id }) => id === 'york-penny-3b');
  if (penny === undefined) throw new Error('The demo has no york-penny-3b.');
  const face = faceOf(penny, 'obverse', { [penny.id]: [photograph(width)] });
  expect(face).toMatchObject({ shown: 'photograph', unmeasured: false, millimetres: 18.6 });
  expect(pixelsOf([face])).toBe(pixels);
  const unmeasured = faceOf({ ...penny, size: null }, 'obverse', { [penny.id]: [photograph(width)] });
  expect(unmeasured).toMatchObject({ unmeasured: true, millimetres: 20 });
});

// Until a picture has come a plain disc shows that a piece lies there; what is not nearly a disc would let it be seen round its edge.
test.for([
  { what: 'a round picture', height: 1, part: 0.88, doubt: null, under: true },
  { what: 'a picture half as high as wide', height: 0.5, part: 0.88, doubt: null, under: false },
  { what: 'a photograph shown whole', height: 1, part: 1, doubt: 'unsure', under: false },
] as const)('$what has a plain disc under it: $under', ({ height, part, doubt, under }) => {
  const penny = pieces.find(({ id }) => id === 'york-penny-3b');
  if (penny === undefined) throw new Error('The demo has no york-penny-3b.');
  const plain = photograph(200);
  const made = { file: 'obverse-200.webp', width: 200, height: 200 * height };
  const picture = { ...plain, webp: [made], jpeg: made, span: { width: part, height: part }, doubt } as FacePictures;
  const { wide } = faceOf(penny, 'obverse', { [penny.id]: [picture] });
  expect(wide.split(' ').includes('under')).toBe(under);
  expect(wide.split(' ').includes('silver')).toBe(under);
});
