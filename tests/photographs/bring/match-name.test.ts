import { expect, test } from 'vitest';
import { matchName } from '../../../src/photographs/bring/plan-bringing.ts';

const PIECES = [
  { id: 'york-penny', number: '0123' },
  { id: 'york-penny-2', number: '0124' },
  { id: 'exeter-token', number: 'T.7a' },
  { id: 'first', number: '1' },
  { id: 'groat', number: '12a' },
  { id: 'ecu', number: 'É-9' },
];

test.for([
  ['0123-obv.jpg', 'york-penny', 'obverse'],
  ['0123o.JPG', 'york-penny', 'obverse'],
  ['0124 R.jpeg', 'york-penny-2', 'reverse'],
  ['123_b.png', 'york-penny', 'reverse'],
  ['0123_2.tif', 'york-penny', 'reverse'],
  ['york-penny-2_obverse.heic', 'york-penny-2', 'obverse'],
  ['york penny rev.webp', 'york-penny', 'reverse'],
  ['York_Penny.jpg', 'york-penny', null],
  ['T.7a revers.jpg', 'exeter-token', 'reverse'],
  ['t-7a-Vs.jpg', 'exeter-token', 'obverse'],
  ['12a.jpg', 'groat', null],
  ['12a-2.jpg', 'groat', 'reverse'],
  ['1.jpg', 'first', null],
  ['1_2.jpg', 'first', 'reverse'],
  ['0123/1.jpg', 'york-penny', 'obverse'],
  ['0123/b.jpg', 'york-penny', 'reverse'],
  ['0123/IMG_4711.jpg', 'york-penny', null],
  ['pictures/york-penny/DSC_0124.jpg', 'york-penny', null],
  ['0123 edge.jpg', 'york-penny', 'edge'],
  ['0123 detail 3.jpg', 'york-penny', 'detail-3'],
  ['0123 détail.jpg', 'york-penny', null],
  ['E\u0301-9 obv.jpg', 'ecu', 'obverse'],
  ['0123 Rückseite 📷.jpg', 'york-penny', 'reverse'],
] as const)('%s shows %s, %s', ([path, piece, face]) => {
  expect(matchName(path, PIECES)).toEqual({ ok: true, piece, face });
});

// Source for camera names: Design rule for Camera File system (JEITA CP-3461): four free signs, then a count of four figures.
test.for([
  ['IMG_0123.JPG', 'a name a camera gave'],
  ['DSCN0124.jpg', 'a name a camera gave'],
  ['DSC_0123 (2).jpg', 'a name a camera gave'],
  ['holiday.jpg', 'No number and no id'],
  ['Penny Edward 1 York.jpg', 'No number and no id'],
  ['99-obv.jpg', 'No number and no id'],
] as const)('%s is of no piece: %s', ([path, because]) => {
  const match = matchName(path, PIECES);
  expect(match.ok ? '' : match.because).toContain(because);
});

test('a number without its noughts that two pieces could have is asked about', () => {
  const match = matchName('7 obv.jpg', [
    { id: 'one', number: '007' },
    { id: 'other', number: '07' },
  ]);
  expect(match).toEqual({
    ok: false,
    because: '7 obv.jpg could be of one or other. Write the number in full, with its noughts.',
  });
});
