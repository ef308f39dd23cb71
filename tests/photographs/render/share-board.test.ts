import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { segmentsOf } from '../../../src/privacy/picture-segments.ts';
import { SHARED, shareBoard } from '../../../src/photographs/render/share-board.ts';
import { balancedRows } from '../../../src/photographs/render/share-board.ts';

const ROOM = { width: 1000, height: 450 };

test('rows keep their order, lose nothing, stay within the room, and no other way allows a larger scale', () => {
  const side = fc.double({ min: 5, max: 80, noNaN: true });
  const pictures = fc.array(fc.record({ wide: side, high: side }), { minLength: 1, maxLength: 8 });
  fc.assert(
    fc.property(pictures, (all) => {
      const { rows, scale } = balancedRows(all, ROOM, 40, 16);
      expect(rows.flat()).toEqual(all);
      expect(scale).toBeLessThanOrEqual(16);
      const high = rows.map((row) => Math.max(...row.map((one) => one.high)) * scale);
      expect(high.reduce((sum, one) => sum + one, 0) + 40 * (rows.length - 1)).toBeLessThanOrEqual(ROOM.height + 1e-6);
      for (const row of rows)
        expect(row.reduce((sum, { wide }) => sum + wide * scale, 40)).toBeLessThanOrEqual(ROOM.width + 1e-6);
      const inOne = Math.min(
        16,
        (ROOM.width - 40 * (all.length + 1)) / all.reduce((sum, { wide }) => sum + wide, 0),
        ROOM.height / Math.max(...all.map((one) => one.high)),
      );
      expect(scale).toBeGreaterThanOrEqual(inOne - 1e-9);
    }),
  );
});

test('the picture has the size links are shown at, carries nothing, and shows a piece of twice the size twice as wide', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'share-'));
  const file = join(folder, 'red.webp');
  await sharp({ create: { width: 400, height: 400, channels: 4, background: '#c00000' } })
    .webp()
    .toFile(file);
  const made = await shareBoard([
    { file, wide: 12, high: 12 },
    { file, wide: 24, high: 24 },
  ]);
  expect(segmentsOf(made)).toEqual([]);
  const { data, info } = await sharp(made).raw().toBuffer({ resolveWithObject: true });
  expect(info).toMatchObject(SHARED);
  const isRed = (x: number, y: number): boolean => {
    const at = (y * info.width + x) * info.channels;
    return (data[at] ?? 0) > 120 && (data[at + 1] ?? 255) < 60;
  };
  // Both lie on one centre line; along it the red runs are the two widths.
  const middle = Array.from({ length: info.height }, (_, y) => y).filter((y) => isRed(info.width >> 2, y));
  const y = middle[middle.length >> 1] ?? 0;
  const runs: number[] = [];
  for (let x = 1; x < info.width; x += 1) {
    if (isRed(x, y) && !isRed(x - 1, y)) runs.push(0);
    if (isRed(x, y)) runs.push((runs.pop() ?? 0) + 1);
  }
  expect(runs).toHaveLength(2);
  expect((runs[1] ?? 0) / (runs[0] ?? 1)).toBeCloseTo(2, 1);
});
