import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import type { Sharp } from 'sharp';
import { cutOut } from './cut-out.ts';
import type { CutOut } from './cut-out.ts';
import { writeWhole } from './kept.ts';
import type { FacePictures, MadePicture } from './manifest.ts';
import { BOARD, decodePhotograph } from './open-photograph.ts';
import type { Pixels } from './pixels.ts';
import { placePiece } from './place-piece.ts';
import { RECIPE } from './recipe.ts';
import type { Wish } from './wish.ts';

/** What is made of a photograph, for which face, into which folder; the stamp becomes a part of every name. */
export type FaceToMake = {
  readonly photograph: string;
  readonly face: string;
  readonly wish: Wish;
  readonly folder: string;
  readonly stamp: string;
};

/**
 * Makes everything a page needs of one photograph: WebP at several sizes with the piece cut out, and one JPEG on a neutral
 * board. The photograph is decoded once; nothing it carried besides its pixels is kept. Throws when it cannot be read.
 */
export async function makeFace({ photograph, face, wish, folder, stamp }: FaceToMake): Promise<FacePictures> {
  const pixels = await decodePhotograph(photograph);
  const placed = await placePiece(pixels, wish);
  const cut = await cutOut(pixels, placed, RECIPE.sides.at(-1) ?? Infinity);
  await mkdir(folder, { recursive: true });
  const webp: MadePicture[] = [];
  for (const side of sidesOf(cut)) {
    const picture = resized(cut, side).webp(RECIPE.webp);
    webp.push(await write(picture, folder, (width) => `${face}-${width}.${stamp}.webp`));
  }
  const share = resized(cut, RECIPE.share).flatten({ background: BOARD }).jpeg(RECIPE.jpeg);
  const jpeg = await write(share, folder, () => `${face}-share.${stamp}.jpg`);
  release(pixels);
  const { full } = pixels;
  const ofFull = (length: number): number => Math.round((length * full.width) / pixels.width);
  return {
    face,
    webp,
    jpeg,
    span: cut.span,
    placed: placed.how,
    seen: {
      piece: { width: ofFull(cut.box.width), height: ofFull(cut.box.height) },
      photograph: { width: full.width, height: full.height },
    },
  };
}

/** Gives the memory of a photograph back at once: waiting for it to be collected, many would be held. Its pixels are gone. */
function release({ rgb }: Pixels): void {
  const held: { readonly byteLength: number; transfer?(length: number): unknown } = rgb.buffer;
  held.transfer?.(0);
}

/** The longest sides that are made: each of the recipe that is smaller than what there is, and that. */
function sidesOf({ width, height }: CutOut): readonly number[] {
  const longest = Math.max(width, height);
  return [...RECIPE.sides.slice(0, -1).filter((side) => side < longest), longest];
}

function resized({ bytes, width, height, channels }: CutOut, side: number): Sharp {
  const picture = sharp(bytes, { raw: { width, height, channels } });
  return side >= Math.max(width, height) ? picture : picture.resize(side, side, { fit: 'inside' });
}

async function write(picture: Sharp, folder: string, nameFor: (width: number) => string): Promise<MadePicture> {
  const { data, info } = await picture.toBuffer({ resolveWithObject: true });
  const file = nameFor(info.width);
  await writeWhole(join(folder, file), data);
  return { file, width: info.width, height: info.height };
}
