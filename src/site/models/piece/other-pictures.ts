import type { PhotographManifest } from '../../../photographs/manifest.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import { urls } from '../../urls.ts';
import { pieceWords } from '../../words/piece.ts';

/** A picture that is neither face: the edge, a detail. It is not at the common scale. */
export type OtherPicture = { readonly name: string; readonly src: string; readonly width: number; readonly height: number; readonly alt: string };

export function otherPictures(piece: PublicPiece, photographs: PhotographManifest): readonly OtherPicture[] {
  return (photographs[piece.id] ?? []).flatMap(({ face, webp }) => {
    const words = piece.pictures.find((one) => one.face === face);
    const picture = webp.at(-1);
    if (face === 'obverse' || face === 'reverse' || words === undefined || picture === undefined) return [];
    const name = face === 'edge' ? pieceWords.face.edge : face.replace(/-/g, ' ');
    return [{ name, src: urls.photograph(piece.id, picture.file), width: picture.width, height: picture.height, alt: words.alt }];
  });
}
