import { posix } from 'node:path';
import { known } from '../../../catalogue/schema/fields.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import { loadCabinet } from '../../cabinet.ts';
import { MOST } from '../../compare/state.ts';
import { urls } from '../../urls.ts';
import { compareWords } from '../../words/compare.ts';
import { siteWords } from '../../words/site.ts';
import type { FaceView } from '../shared/face.ts';
import { tellingFace, toldByReverse } from '../shared/telling-face.ts';
import type { PageHead } from '../shared/head.ts';
import { worthComparing } from './worth-comparing.ts';

/** Pieces worth laying side by side: why, and where they lie together. */
export type Suggestion = {
  readonly because: string;
  readonly pieces: readonly { readonly title: string; readonly face: FaceView }[];
  readonly together: { readonly name: string; readonly to: string };
};

export type ComparePage = {
  readonly head: PageHead;
  /** The file of what can be added; the script finds the files of single pieces from where it lies. */
  readonly records: string;
  /** The way from there to the file of one piece, whose id takes the place of the star. */
  readonly way: string;
  readonly suggestions: readonly Suggestion[];
};

/** As many suggestions as are read. */
const SUGGESTED = 8;

export async function comparePage(): Promise<ComparePage> {
  const { listed, photographs } = await loadCabinet();
  return {
    head: {
      title: compareWords.title,
      description: compareWords.description,
      here: urls.compare(),
      trail: [{ name: siteWords.pieces, href: urls.pieces() }],
    },
    records: urls.searchJson(),
    way: posix.relative(posix.dirname(urls.searchJson()), urls.pieceJson('*')),
    suggestions: worthComparing(listed)
      .slice(0, SUGGESTED)
      .map(({ because, pieces }) => {
        const few = pieces.slice(0, MOST);
        const byReverse = toldByReverse(few);
        return {
          because: because === 'die' ? compareWords.sameDie : sameTypeIn(pieces),
          pieces: few.map((piece) => ({
            title: piece.title,
            face: tellingFace(piece, byReverse, photographs),
          })),
          together: { name: compareWords.these(few.length), to: urls.compare(...few.map(({ id }) => id)) },
        };
      }),
  };
}

/** Of one number in a book; at different mints where that tells them apart. */
function sameTypeIn(pieces: readonly PublicPiece[]): string {
  const mints = [...new Set(pieces.flatMap(({ mint }) => known(mint)?.name ?? []))];
  return mints.length > 1 ? compareWords.sameTypeOfMints : compareWords.sameType;
}
