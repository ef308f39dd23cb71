import { known } from '../../../catalogue/schema/fields.ts';
import type { PhotographManifest } from '../../../photographs/cache/manifest.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import { fold } from '../../find/fold.ts';
import { onceFor } from '../../once-for.ts';
import { faceOf, leadingFace } from './face.ts';
import type { FaceView } from './face.ts';
import { gather } from './gather.ts';

/**
 * The pieces among these that only the reverse distinguishes: the obverse is of the same design as another's, in the
 * same name and denomination, and what stands on the reverse is not the same. So pence of one king show their mints.
 */
export function toldByReverse(pieces: readonly PublicPiece[]): ReadonlySet<PublicPiece> {
  const alike = gather(
    pieces.filter((piece) => told(piece).obverse !== null),
    (piece) => told(piece).obverse,
  );
  return new Set(alike.flatMap(({ all }) => (new Set(all.map((piece) => told(piece).reverse)).size > 1 ? all : [])));
}

/** What either side of a piece tells, read once: a piece is in lists of its ruler, mint, metal, era … */
const told = onceFor((piece: PublicPiece) => ({
  obverse: piece.faces === 'uniface' || designOf(piece.obverse) === '' ? null : obverseOf(piece),
  reverse: reverseOf(piece.reverse),
}));

/** The face of a piece on a board of these: its reverse where that is what tells it from another, else the usual one. */
export function tellingFace(
  piece: PublicPiece,
  byReverse: ReadonlySet<PublicPiece>,
  photographs: PhotographManifest,
): FaceView {
  const isSeen = (photographs[piece.id] ?? []).some(({ face }) => face === 'reverse');
  return byReverse.has(piece) && isSeen ? faceOf(piece, 'reverse', photographs) : leadingFace(piece, photographs);
}

type Side = PublicPiece['obverse'];

/** Of a piece with a type the first words of its design: what follows them are the marks of its class, as small as a punch. */
function obverseOf({ rulers, denomination, obverse, types }: PublicPiece): string {
  const ids = (known(rulers) ?? []).map(({ id }) => id);
  const design = designOf(obverse, types.length > 0);
  return JSON.stringify([ids, known(denomination)?.id ?? null, design]);
}

/** What befell a piece after it was made is no part of its design. */
const LATER =
  /[,;] (?:an? |two |three )?(?:holes?|nicks?|creases?|scratch\w*|graffit\w*|mount\w*|countermark\w*)\b[^,;]*/g;

function designOf(side: Side, isTyped = false): string {
  const [first = ''] = (side?.design ?? '').split(isTyped ? /[,;]| with / : /$/);
  return fold(first)
    .replace(LATER, '')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}

/** A legend by its letters alone, for breaks and marks are the cutter's; and the design. */
function reverseOf(side: Side): string {
  return `${fold(side?.legend?.text ?? '').replace(/[^\p{L}\p{N}]/gu, '')} ${designOf(side)}`;
}
