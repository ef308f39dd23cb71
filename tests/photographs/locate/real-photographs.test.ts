import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import Papa from 'papaparse';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import type { Finding } from '../../../src/photographs/locate/find-piece.ts';
import { findPiece, findPieces, LOOK_AT } from '../../../src/photographs/locate/find-piece.ts';
import { reduced } from '../../../src/photographs/locate/pixels.ts';
import { placePiece } from '../../../src/photographs/locate/place-piece.ts';
import { cutOut } from '../../../src/photographs/render/cut-out.ts';
import { decodePhotograph } from '../../../src/photographs/render/open-photograph.ts';
import type { PictureRequest } from '../../../src/photographs/render/picture-request.ts';

// Photographs and measures: tests/photographs/real/NOTICE.md. The measures were set by eye, to 1 to 3 per cent.
const REAL = join(import.meta.dirname, '../real');
type Row = Readonly<Record<'file' | 'centre_x' | 'centre_y' | 'radius' | 'radius_x' | 'radius_y', string>>;
const ROWS = Papa.parse<Row>(readFileSync(join(REAL, 'truth.csv'), 'utf8').trim(), { header: true }).data;
const ROUND: PictureRequest = { crop: null, shows: 'round face', ratio: 1 };

/** Right within 5 per cent of the proportions and 6 of the radius, and as full as a disc; whole; or wrong, and how. */
async function verdictOn(row: Row): Promise<string> {
  const photograph = await decodePhotograph(join(REAL, row.file));
  const placed = await placePiece(photograph, ROUND);
  if (placed.how === 'whole') return 'whole';
  const { box, bytes, width, height, span } = await cutOut(photograph, placed, 1280);
  const [x, y, r, rx, ry] = [row.centre_x, row.centre_y, row.radius, row.radius_x, row.radius_y].map(Number) as [
    number, number, number, number, number,
  ]; // prettier-ignore
  let solid = 0;
  for (let at = 3; at < bytes.length; at += 4) if ((bytes[at] ?? 0) > 127) solid += 1;
  const off = {
    proportions: Math.abs(box.width / box.height / (rx / ry) - 1) / 0.05,
    radius: Math.abs((box.width + box.height) / 4 / r - 1) / 0.06,
    middle: Math.hypot(box.left + box.width / 2 - x, box.top + box.height / 2 - y) / r / 0.08,
    // The rim is drawn in by up to one per cent, which a disc's share of its box takes twice.
    fill: Math.abs(solid / (width * span.width * height * span.height) - Math.PI / 4) / 0.045,
  };
  return Math.max(...Object.values(off)) < 1 ? 'right' : `wrong: ${JSON.stringify(off)}`;
}

describe('twelve photographs of coins on wood, cloth, paper and stone', () => {
  test('at least ten are cut out rightly, and none wrongly', { timeout: 120_000 }, async () => {
    const verdicts: string[] = [];
    for (const row of ROWS) verdicts.push(`${row.file} ${await verdictOn(row)}`);
    expect(verdicts).toHaveLength(12);
    expect(verdicts.filter((one) => one.includes('wrong'))).toEqual([]);
    expect(verdicts.filter((one) => one.endsWith('right')).length).toBeGreaterThanOrEqual(10);
  });

  test('one whose frame cuts the coin is left whole, and it is said why', async () => {
    const { rgb, width, height } = await decodePhotograph(join(REAL, '101.jpg'));
    const row = ROWS.find(({ file }) => file === '101.jpg');
    // From the left side to a quarter of the radius beyond the middle.
    const until = Math.round(Number(row?.centre_x) + Number(row?.radius) / 4);
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
): Promise<Finding & { readonly off: number }> {
  const row = ROWS.find((one) => one.file === file);
  const coin = { x: Number(row?.centre_x), y: Number(row?.centre_y), r: Number(row?.radius) };
  const { rgb, width, height } = await decodePhotograph(join(REAL, file));
  const svg = (inner: string): Buffer => Buffer.from(`<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}">${inner}</svg>`); // prettier-ignore
  const photograph = sharp(rgb, { raw: { width, height, channels: 3 } });
  const disc = svg(`<circle cx="${coin.x}" cy="${coin.y}" r="${coin.r}"/>`);
  const cut = await photograph.clone().ensureAlpha().composite([{ input: disc, blend: 'dest-in' }]).png().toBuffer(); // prettier-ignore
  const drawn = [{ input: svg(draw({ width, height }, coin)) }, ...(isUnderCoin ? [{ input: cut }] : [])];
  const { data } = await photograph.composite(drawn).removeAlpha().raw().toBuffer({ resolveWithObject: true });
  const finding = findPiece(reduced({ width, height, rgb: data }, LOOK_AT));
  const times = Math.max(width, height) / LOOK_AT;
  const box = finding.piece?.box;
  const off = box === undefined ? 1 : Math.abs(((box.width + box.height) * times) / 4 / coin.r - 1);
  return { ...finding, off };
}

describe('what lies on a photograph besides the coin', () => {
  test('a finger over the rim is seen, and the photograph left whole', async () => {
    const finger: Parameters<typeof withDrawn>[1] = ({ width, height }, { x, y, r }) =>
      `<path d="M${x + 0.65 * r} ${y + 0.4 * r} L${width} ${height}" stroke="#c98f74" stroke-width="${0.6 * r}" stroke-linecap="round"/>`;
    for (const file of ['047.jpg', '071.jpg', '152.jpg']) expect((await withDrawn(file, finger)).doubt, file).toBe('covered'); // prettier-ignore
  });

  test('a holder is not taken for the piece', async () => {
    const holder: Parameters<typeof withDrawn>[1] = (_, { x, y, r }) =>
      `<rect x="${x - 1.3 * r}" y="${y - 1.3 * r}" width="${2.6 * r}" height="${2.6 * r}" fill="#b9c4cc"/>`;
    for (const file of ['012.jpg', '036.jpg', '071.jpg']) {
      const { doubt, off } = await withDrawn(file, holder, true);
      expect(doubt === 'in a holder' || off < 0.06, `${file} ${doubt} ${off}`).toBe(true);
    }
  });

  test('a hard shadow beside it is left out', { timeout: 120_000 }, async () => {
    const shadow: Parameters<typeof withDrawn>[1] = (_, { x, y, r }) =>
      `<circle cx="${x + 0.14 * r}" cy="${y + 0.1 * r}" r="${r}" fill="#000" opacity="0.5"/>`;
    for (const { file } of ROWS) {
      const { doubt, off } = await withDrawn(file, shadow, true);
      expect(doubt !== null || off < 0.06, `${file} ${off}`).toBe(true);
    }
  });
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
