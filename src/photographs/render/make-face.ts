import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import type { Sharp } from 'sharp';
import { faultsOf } from '../verify/faults.ts';
import { cutOut } from './cut-out.ts';
import type { CutOut } from './cut-out.ts';
import { writeWhole } from '../cache/picture-cache.ts';
import type { FacePictures, MadePicture } from '../cache/manifest.ts';
import { BOARD, decodePhotograph } from './open-photograph.ts';
import type { Box } from '../locate/pixels.ts';
import { release } from '../locate/pixels.ts';
import { placePiece } from '../locate/place-piece.ts';
import { PICTURE_SETTINGS } from '../cache/picture-settings.ts';
import type { PictureRequest } from './picture-request.ts';

/** What is made of a photograph, for which face, into which folder; the stamp becomes a part of every name. */
export type FaceToMake = {
  readonly photograph: string;
  readonly face: string;
  readonly request: PictureRequest;
  readonly folder: string;
  readonly stamp: string;
};

/**
 * Makes everything a page needs of one photograph: WebP at several sizes with the piece cut out, and one JPEG on a neutral
 * board. The photograph is decoded once; nothing it carried besides its pixels is kept. Throws when it cannot be read.
 */
export async function makeFace({ photograph, face, request, folder, stamp }: FaceToMake): Promise<FacePictures> {
  const pixels = await decodePhotograph(photograph);
  const placed = await placePiece(pixels, request);
  const cut = await cutOut(pixels, placed, PICTURE_SETTINGS.sides.at(-1) ?? Infinity);
  await mkdir(folder, { recursive: true });
  const webp: MadePicture[] = [];
  let smaller: Held = cut;
  for (const side of sidesOf(cut).toReversed()) {
    const next = await resized(smaller, side);
    if (next !== smaller && smaller !== cut) release(smaller.bytes);
    smaller = next;
    const picture = held(smaller).webp(PICTURE_SETTINGS.webp);
    webp.unshift(await write(picture, folder, (width) => `${face}-${width}.${stamp}.webp`));
  }
  const share = held(cut)
    .resize(PICTURE_SETTINGS.share, PICTURE_SETTINGS.share, { fit: 'inside', withoutEnlargement: true })
    .flatten({ background: BOARD })
    .jpeg(PICTURE_SETTINGS.jpeg);
  const jpeg = await write(share, folder, () => `${face}-share.${stamp}.jpg`);
  const faults = placed.rim.kind === 'none' ? [] : faultsOf(cut, pixels);
  release(pixels.rgb);
  release(cut.bytes);
  const { full } = pixels;
  const ofFull = (length: number): number => Math.round((length * full.width) / pixels.width);
  const boxOfFull = ({ left, top, width, height }: Box): Box => ({
    left: ofFull(left),
    top: ofFull(top),
    width: ofFull(width),
    height: ofFull(height),
  });
  return {
    face,
    webp,
    jpeg,
    span: cut.span,
    placed: placed.how,
    sure: Math.round(placed.sure * 100) / 100,
    doubt: placed.doubt,
    faults,
    seems: placed.seems === null ? null : boxOfFull(placed.seems),
    seen: {
      piece: { width: ofFull(cut.box.width), height: ofFull(cut.box.height) },
      photograph: { width: full.width, height: full.height },
    },
  };
}

/** The longest sides that are made: each of the recipe that is smaller than what there is, and that. */
function sidesOf({ width, height }: CutOut): readonly number[] {
  const longest = Math.max(width, height);
  return [...PICTURE_SETTINGS.sides.slice(0, -1).filter((side) => side < longest), longest];
}

type Held = Pick<CutOut, 'bytes' | 'width' | 'height'>;

function held({ bytes, width, height }: Held): Sharp {
  return sharp(bytes, { raw: { width, height, channels: 4 } });
}

/** A picture made smaller till its longest side is so long: each from the next larger one, which is a quarter of the work of making all from the largest. */
async function resized(picture: Held, side: number): Promise<Held> {
  if (side >= Math.max(picture.width, picture.height)) return picture;
  const { data, info } = await held(picture)
    .resize(side, side, { fit: 'inside' })
    .raw()
    .toBuffer({ resolveWithObject: true });
  return { bytes: data, width: info.width, height: info.height };
}

async function write(picture: Sharp, folder: string, nameFor: (width: number) => string): Promise<MadePicture> {
  const { data, info } = await picture.toBuffer({ resolveWithObject: true });
  const file = nameFor(info.width);
  await writeWhole(join(folder, file), data);
  return { file, width: info.width, height: info.height };
}
