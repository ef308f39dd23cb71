import { join } from 'node:path';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import type { Finding } from '../../../src/photographs/locate/find-piece.ts';
import { findPiece, findPieces, LOOK_AT } from '../../../src/photographs/locate/find-piece.ts';
import { reduced } from '../../../src/photographs/locate/pixels.ts';
import { placePiece } from '../../../src/photographs/locate/place-piece.ts';
import { cutOut } from '../../../src/photographs/render/cut-out.ts';
import { decodePhotograph } from '../../../src/photographs/render/open-photograph.ts';
import type { PictureRequest } from '../../../src/photographs/render/picture-request.ts';
import { off, readTaken } from '../fit/real.ts';
import { photographOf } from './scenes.ts';

// Photographs and measures: tests/photographs/real/NOTICE.md. The measures were set by eye, to 1 to 3 per cent.
const REAL = join(import.meta.dirname, '../real');
const TAKEN = await readTaken(REAL);
const ROUND: PictureRequest = { crop: null, shows: 'round face', ratio: 1 };

/** Right by the bounds of `off`; whole; or wrong, and by how much. */
async function verdictOn(photograph: (typeof TAKEN)[number]): Promise<string> {
  const placed = await placePiece(photograph, ROUND);
  if (placed.how === 'whole') return 'whole';
  const by = off(await cutOut(photograph, placed, 1280), photograph.coin);
  return by < 1 ? 'right' : `wrong by ${by}`;
}

function photographNamed(file: string): (typeof TAKEN)[number] {
  return TAKEN.find((one) => one.file === file) ?? fail();
}

function fail(): never {
  throw new Error('There is no such photograph.');
}

describe('twelve photographs of coins on wood, cloth, paper and stone', () => {
  test('at least ten are cut out rightly, and none wrongly', { timeout: 120_000 }, async () => {
    const verdicts: string[] = [];
    for (const one of TAKEN) verdicts.push(`${one.file} ${await verdictOn(one)}`);
    expect(verdicts).toHaveLength(12);
    expect(verdicts.filter((one) => one.includes('wrong'))).toEqual([]);
    expect(verdicts.filter((one) => one.endsWith('right')).length).toBeGreaterThanOrEqual(10);
  });

  test('one whose frame cuts the coin is left whole, and it is said why', () => {
    const { rgb, width, height, coin } = photographNamed('101.jpg');
    // From the left side to a quarter of the radius beyond the middle.
    const until = Math.round(coin.x + coin.rx / 4);
    const cut = new Uint8Array(until * height * 3);
    for (let y = 0; y < height; y += 1) cut.set(rgb.subarray(y * width * 3, (y * width + until) * 3), y * until * 3);
    expect(findPiece(reduced({ width: until, height, rgb: cut }, LOOK_AT)).doubt).not.toBeNull();
  });
});

/** One of the photographs with something drawn over it, given its size and the coin's middle and radius; as it is looked at. */
async function withDrawn(
  file: string,
  draw: (size: { width: number; height: number }, coin: { x: number; y: number; r: number }) => string,
  isUnderCoin = false,
): Promise<Finding & { readonly wide: number }> {
  const { rgb, width, height, coin: known } = photographNamed(file);
  const coin = { ...known, r: (known.rx + known.ry) / 2 };
  const svg = (inner: string): Buffer => Buffer.from(`<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}">${inner}</svg>`); // prettier-ignore
  const photograph = sharp(rgb, { raw: { width, height, channels: 3 } });
  const disc = svg(`<circle cx="${coin.x}" cy="${coin.y}" r="${coin.r}"/>`);
  const cut = await photograph.clone().ensureAlpha().composite([{ input: disc, blend: 'dest-in' }]).png().toBuffer(); // prettier-ignore
  const drawn = [{ input: svg(draw({ width, height }, coin)) }, ...(isUnderCoin ? [{ input: cut }] : [])];
  const { data } = await photograph.composite(drawn).removeAlpha().raw().toBuffer({ resolveWithObject: true });
  const finding = findPiece(reduced({ width, height, rgb: data }, LOOK_AT));
  const times = Math.max(width, height) / LOOK_AT;
  const box = finding.piece?.box;
  const wide = box === undefined ? 1 : Math.abs(((box.width + box.height) * times) / 4 / coin.r - 1);
  return { ...finding, wide };
}

describe('what lies on a photograph besides the coin', () => {
  test('a finger over the rim is seen, and the photograph left whole', async () => {
    const finger: Parameters<typeof withDrawn>[1] = ({ width, height }, { x, y, r }) =>
      `<path d="M${x + 0.65 * r} ${y + 0.4 * r} L${width} ${height}" stroke="#c98f74" stroke-width="${0.6 * r}" stroke-linecap="round"/>`;
    for (const file of ['047.jpg', '071.jpg', '152.jpg']) expect((await withDrawn(file, finger)).doubt, file).toBe('covered'); // prettier-ignore
  });

  test('a label where the coin was is not taken for the piece', async () => {
    const label: Parameters<typeof withDrawn>[1] = (_, { x, y, r }) =>
      `<g transform="rotate(7 ${x} ${y})"><rect x="${x - 1.25 * r}" y="${y - 1.05 * r}" width="${2.5 * r}" height="${2.1 * r}" fill="#f6f1e2"/><text x="${x - 0.9 * r}" y="${y}" font-size="${0.4 * r}">No. 1472</text></g>`;
    const cut: string[] = [];
    for (const { file } of TAKEN) if ((await withDrawn(file, label)).doubt === null) cut.push(file);
    expect(cut).toEqual([]);
  });

  test('what has straight sides is not cut out for a piece that is recorded as round', async () => {
    const bar = { name: '', board: 'grey', pieces: [{ x: 480, y: 360, width: 420, height: 300 }] } as const;
    const photograph = await photographOf(bar);
    const placed = (shows: PictureRequest['shows']) => placePiece(photograph, { ...ROUND, shows });
    expect(await placed('round face')).toMatchObject({ how: 'whole', doubt: 'a label' });
    expect((await placed('face')).how).toBe('found');
    expect((await placed('oblong face')).how).toBe('found');
  });

  test('a holder is not taken for the piece', async () => {
    const holder: Parameters<typeof withDrawn>[1] = (_, { x, y, r }) =>
      `<rect x="${x - 1.3 * r}" y="${y - 1.3 * r}" width="${2.6 * r}" height="${2.6 * r}" fill="#b9c4cc"/>`;
    for (const file of ['012.jpg', '036.jpg', '071.jpg']) {
      const { doubt, wide } = await withDrawn(file, holder, true);
      expect(doubt === 'in a holder' || wide < 0.06, `${file} ${doubt} ${wide}`).toBe(true);
    }
  });

  test(
    'the foam of a capsule is not taken for the piece, but round one worn as smooth as it',
    { timeout: 120_000 },
    async () => {
      const wrong: string[] = [];
      for (const { file } of TAKEN)
        for (const [colour, part] of [
          ['#1d1d1f', 1.4],
          ['#808080', 1.3],
          ['#f2f2ef', 1.25],
        ] as const) {
          const foam: Parameters<typeof withDrawn>[1] = (_, { x, y, r }) => `<circle cx="${x}" cy="${y}" r="${part * r}" fill="${colour}"/>`; // prettier-ignore
          const { doubt, wide } = await withDrawn(file, foam, true);
          if (doubt === null && wide > 0.06) wrong.push(`${file} ${colour} ${wide}`);
        }
      expect(wrong.length, wrong.join('; ')).toBeLessThanOrEqual(1);
    },
  );

  test('a hard shadow beside it is left out', { timeout: 120_000 }, async () => {
    const shadow: Parameters<typeof withDrawn>[1] = (_, { x, y, r }) =>
      `<circle cx="${x + 0.14 * r}" cy="${y + 0.1 * r}" r="${r}" fill="#000" opacity="0.5"/>`;
    for (const { file } of TAKEN) {
      const { doubt, wide } = await withDrawn(file, shadow, true);
      expect(doubt !== null || wide < 0.06, `${file} ${wide}`).toBe(true);
    }
  });
});

test('a piece that is small in its photograph is looked at from near, and found to two pixels', async () => {
  const svg = '<svg xmlns="http://www.w3.org/2000/svg" width="2400" height="1800"><rect width="2400" height="1800" fill="#b9b2a6"/><circle cx="900" cy="700" r="110" fill="#6b4a2f"/></svg>'; // prettier-ignore
  const rgb = await sharp(Buffer.from(svg)).removeAlpha().raw().toBuffer();
  const size = { width: 2400, height: 1800 };
  const { how, box } = await placePiece({ ...size, rgb, full: size }, ROUND);
  expect(how).toBe('found');
  for (const [is, drawn] of [[box.left, 790], [box.top, 590], [box.width, 220], [box.height, 220]] as const) expect(Math.abs(is - drawn)).toBeLessThan(2); // prettier-ignore
});

describe('a plate of 24 coins of irregular flan', () => {
  const plate = decodePhotograph(join(REAL, 'museum-greek-coins.png'));

  test('every coin is found, six in each of its four rows', async () => {
    const found = findPieces(await plate, 40).map(({ box }) => box.top + box.height / 2);
    // Between the rows there is board at these heights, read from the picture of 384 by 303.
    const rowOf = (y: number): number => [88, 158, 228].filter((height) => y > height).length;
    const rows = [0, 1, 2, 3].map((row) => found.filter((y) => rowOf(y) === row).length);
    expect(rows).toEqual([6, 6, 6, 6]);
  });

  test('none of them is cut out as if it were the one meant', async () => {
    expect(findPiece(reduced(await plate, LOOK_AT)).doubt).toBe('several');
  });
});
