import { createHash } from 'node:crypto';
import type { PhotographManifest } from '../../photographs/manifest.ts';
import type { PublicPiece } from '../../publish/public-piece.ts';
import { faceShown } from './face.ts';

/** Tenths of a millimetre: finer than any measure a cabinet records. */
export function sizeClass(millimetres: number): string {
  return `mm-${Math.round(millimetres * 10)}`;
}

/**
 * The one style that stands in a page: the order of the cascade's layers, and a length for every size the cabinet holds.
 * A strict content security policy allows no style on an element, so an element says its size by a class.
 */
export function inlineStyle(pieces: readonly PublicPiece[], photographs: PhotographManifest): string {
  const faces = pieces.flatMap((piece) => ['obverse', 'reverse', 'edge'].map((face) => faceShown(piece, face, photographs)));
  const tenths = new Set(faces.flatMap(({ width, height, span }) => [width, height, span.width, span.height].map((one) => Math.round(one * 10))));
  for (const rule of [540, 1040]) tenths.add(rule);
  const rules = [...tenths].sort((a, b) => a - b).map((tenth) => `.mm-${tenth}{--mm:${tenth / 10}}.hm-${tenth}{--hm:${tenth / 10}}`);
  return `@layer tokens,base,components;${rules.join('')}`;
}

export function heightClass(millimetres: number): string {
  return `hm-${Math.round(millimetres * 10)}`;
}

/** What a content security policy wants to know of an inline style. */
export function styleHash(style: string): string {
  return `sha256-${createHash('sha256').update(style).digest('base64')}`;
}
