import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Fault } from '../verify/faults.ts';
import type { Doubt } from '../locate/find-piece.ts';
import type { Box, Extent } from '../locate/pixels.ts';
import type { Placing } from '../locate/place-piece.ts';

/** One made picture: a file under `/photographs/`, with its size in pixels. */
export type MadePicture = { readonly file: string; readonly width: number; readonly height: number };

/** What was made of one photograph of one face. */
export type FacePictures = {
  readonly face: string;
  /** WebP with the board gone round the piece, smallest first. */
  readonly webp: readonly MadePicture[];
  /** One JPEG on a neutral board, for sharing. */
  readonly jpeg: MadePicture;
  /** How much of the picture's width and height the piece itself fills, 0–1; the whole when it could not be found. */
  readonly span: { readonly width: number; readonly height: number };
  /** How the piece was placed in its photograph; how sure that is, 0 to 1; and why nothing was cut out, if a piece was sought. */
  readonly placed: Placing;
  readonly sure: number;
  readonly doubt: Doubt | null;
  /** What the photograph suffers from, as far as the piece was cut out of it. */
  readonly faults: readonly Fault[];
  /** Where the piece seems to be in the upright photograph, in its own pixels, when that was too unsure to cut it out. */
  readonly seems: Box | null;
  /** How large the piece is in the photograph, and the photograph itself upright, in pixels. */
  readonly seen: { readonly piece: Extent; readonly photograph: Extent };
};

/**
 * How wide a picture must be for the piece in it to have its true size: pictures keep a margin round the piece, and a piece that
 * is not quite round takes its greatest diameter. In the units of `extent`, the piece's own.
 */
export function trueWidth(
  { webp, jpeg, span }: FacePictures,
  extent: { readonly width: number; readonly height: number },
  isRound: boolean,
): number {
  const { width, height } = webp.at(-1) ?? jpeg;
  const across = width * span.width;
  return (width * extent.width) / (isRound ? Math.max(across, height * span.height) : across);
}

/** The picture of a piece's faces together, which it is shared by: its name; null where neither was photographed. */
export function sharedFile(faces: readonly FacePictures[]): string | null {
  const shown = facesShared(faces);
  const made = shown.map(({ webp }) => webp.at(-1)?.file ?? '').join(' ');
  return shown.length === 0 ? null : `together.${createHash('sha256').update(made).digest('hex').slice(0, 10)}.jpg`;
}

/** The faces that picture shows. */
export function facesShared(faces: readonly FacePictures[]): readonly FacePictures[] {
  return ['obverse', 'reverse'].flatMap((name) => faces.find(({ face }) => face === name) ?? []);
}

/** By the id of the piece. */
export type PhotographManifest = Readonly<Record<string, readonly FacePictures[]>>;

/** What the last run of the step made and kept in a folder; nothing when it has not run. */
export async function readManifest(folder: string): Promise<PhotographManifest> {
  try {
    return JSON.parse(await readFile(join(folder, 'manifest.json'), 'utf8')) as PhotographManifest;
  } catch {
    return {};
  }
}
