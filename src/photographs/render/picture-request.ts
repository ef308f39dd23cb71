import type { Crop } from '../../catalogue/crop.ts';
import { formatCrop } from '../../catalogue/crop.ts';
import type { FiledPiece } from '../../catalogue/records.ts';
import { known } from '../../catalogue/schema/fields.ts';

/** What is known of a face before its photograph is opened. */
export type PictureRequest = {
  /** Where the keeper says the piece is. */
  readonly crop: Crop | null;
  /** A `face` is of a piece whose record does not say whether it is round. */
  readonly shows: 'face' | 'round face' | 'oblong face' | 'edge' | 'detail';
  /** Its width by its height; 1 where that is not known. */
  readonly ratio: number;
};

/** Words for a `shape` whose rim is not sought as a round one. */
const NOT_ROUND =
  /\b(?:squar|rectang|oblong|bar\b|ingot|cut|half|quarter|fragment|irregular|triang|spade|knife|klippe|lozenge)/i;

/** What is to be made of one photograph of a piece. */
export function requestFor({ fields }: FiledPiece, face: string): PictureRequest {
  const size = known(fields.diameter);
  const oblong = size?.shape === 'rectangle' ? size : null;
  const isOblong = oblong !== null || NOT_ROUND.test(fields.shape ?? '');
  const credits = fields.photographs ?? {};
  const crop = Object.entries(credits).find(([name]) => name === face)?.[1].crop ?? null;
  if (face !== 'obverse' && face !== 'reverse') return { crop, shows: face === 'edge' ? 'edge' : 'detail', ratio: 1 };
  const isRound = size?.shape === 'round' || /\bround\b/i.test(fields.shape ?? '');
  return {
    crop,
    shows: isOblong ? 'oblong face' : isRound ? 'round face' : 'face',
    ratio: oblong === null ? 1 : oblong.width / oblong.height,
  };
}

/** A request in words, for telling whether it has changed. */
export function requestInWords({ crop, shows, ratio }: PictureRequest): string {
  return [shows, ratio.toFixed(3), ...(crop === null ? [] : [formatCrop(crop)])].join(', ');
}
