import { readManifest } from '../photographs/manifest.ts';
import type { PhotographManifest } from '../photographs/manifest.ts';

let reading: Promise<PhotographManifest> | null = null;

/** Which pictures were made of which piece, read once for a build; while following edits, anew for every page. */
export function loadPictures(): Promise<PhotographManifest> {
  if (import.meta.env.DEV) return readManifest();
  reading ??= readManifest();
  return reading;
}
