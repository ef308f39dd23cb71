import type { PublicPiece } from '../../../publish/public-piece.ts';
import { faceWords } from '../../words/faces.ts';

/** A photograph for those who do not see it: in the keeper's own words, else from the design and the legend of the face. */
export function altOf(piece: PublicPiece, face: string): string {
  return piece.pictures.find((picture) => picture.face === face)?.alt ?? faceWords.alt(face, piece);
}
