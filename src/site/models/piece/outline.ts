import { known } from '../../../catalogue/schema/fields.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import { onceFor } from '../../once-for.ts';
import { extentOf, isRound } from '../shared/sizes.ts';
import type { Extent } from '../shared/sizes.ts';

/** A round piece that a visitor of this cabinet has seen most of: `penny`, and its usual width in millimetres. */
export type UsualPiece = { readonly name: string; readonly millimetres: number };

/** The outline of a piece, in millimetres, and another next to it. */
export type Outline = Extent & { readonly round: boolean; readonly usual: UsualPiece | null };

/** Of fewer pieces nothing is usual. */
const FEW = 5;

/** The denomination of which there are most, and the middle one of their widths; null where none is frequent. */
export const usualPieceOf = onceFor(({ listed }: Cabinet): UsualPiece | null => {
  const widths = new Map<string, number[]>();
  for (const piece of listed) {
    const name = known(piece.denomination)?.name;
    const width = extentOf(piece)?.width;
    if (name === undefined || width === undefined || !isRound(piece)) continue;
    widths.set(name, [...(widths.get(name) ?? []), width]);
  }
  const [name, most] = [...widths].toSorted(([, a], [, b]) => b.length - a.length)[0] ?? ['', []];
  const millimetres = most.toSorted((a, b) => a - b)[Math.floor(most.length / 2)];
  return millimetres === undefined || most.length < FEW ? null : { name: name.toLowerCase(), millimetres };
});

export function outlineOf(piece: PublicPiece, usual: UsualPiece | null): Outline | null {
  const extent = extentOf(piece);
  return extent === null ? null : { ...extent, round: isRound(piece), usual };
}
