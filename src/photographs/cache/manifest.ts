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
