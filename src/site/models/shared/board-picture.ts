import { createHash } from 'node:crypto';
import { mkdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { handedOver } from '../../../catalogue/handed-over.ts';
import type { FacePictures } from '../../../photographs/cache/manifest.ts';
import { BOARDS, writeWhole } from '../../../photographs/cache/picture-cache.ts';
import { shareBoard } from '../../../photographs/render/share-board.ts';
import type { LaidPicture } from '../../../photographs/render/share-board.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import { pictureWidth } from './sizes.ts';

/** As many pieces as can still be distinguished in a picture as small as a message shows it. */
export const MOST_ON_BOARD = 8;
/** The made picture taken is this many pixels wide at least. */
const FINE_ENOUGH = 400;

/** A piece and the picture of it that lies on the board. */
export type OnBoard = { readonly piece: PublicPiece; readonly made: FacePictures };

/** The picture that a set or an exhibit is shared by: its pieces at one scale. Made once for the same pieces. */
export async function boardPicture(pieces: readonly OnBoard[]): Promise<Buffer> {
  const { photographs } = handedOver();
  const laid = pieces.map((one) => laidPicture(one, photographs));
  const name = createHash('sha256').update(JSON.stringify(laid)).digest('hex').slice(0, 16);
  const file = join(photographs, BOARDS, `${name}.jpg`);
  const known = await readFile(file).catch(() => null);
  if (known !== null) return known;
  const made = await shareBoard(laid);
  await mkdir(join(photographs, BOARDS), { recursive: true });
  await writeWhole(file, made);
  return made;
}

function laidPicture({ piece, made }: OnBoard, photographs: string): LaidPicture {
  const picture = made.webp.find(({ width }) => width >= FINE_ENOUGH) ?? made.webp.at(-1) ?? made.jpeg;
  const wide = pictureWidth(piece, made);
  return { file: join(photographs, piece.id, picture.file), wide, high: (wide * picture.height) / picture.width };
}
