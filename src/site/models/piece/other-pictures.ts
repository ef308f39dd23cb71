import type { PhotographManifest } from '../../../photographs/cache/manifest.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import { urls } from '../../urls.ts';
import { faceWords } from '../../words/faces.ts';
import { altOf } from '../shared/alt.ts';

/** A picture that is neither face: the edge, a detail. It is not at the common scale. */
export type OtherPicture = {
  readonly name: string;
  readonly src: string;
  readonly width: number;
  readonly height: number;
  readonly alt: string;
};

export function otherPictures(piece: PublicPiece, photographs: PhotographManifest): readonly OtherPicture[] {
  return (photographs[piece.id] ?? []).flatMap(({ face, webp }) => {
    const picture = webp.at(-1);
    if (face === 'obverse' || face === 'reverse' || picture === undefined) return [];
    const { width, height, file } = picture;
    return [
      { name: faceWords.name(face), src: urls.photograph(piece.id, file), width, height, alt: altOf(piece, face) },
    ];
  });
}
