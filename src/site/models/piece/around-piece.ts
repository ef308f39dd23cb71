import { known } from '../../../catalogue/schema/fields.ts';
import { concordanceOf } from '../../../core/types/concordance.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import { digestedOnce } from '../../digest.ts';
import { onceFor } from '../../once-for.ts';
import { pathInSite, urls } from '../../urls.ts';
import { pieceWords } from '../../words/piece.ts';
import { orderOf, relatedTo } from '../compare/worth-comparing.ts';
import { boardOf } from '../shared/board.ts';
import type { Board } from '../shared/board.ts';
import { inOneFile } from '../shared/face.ts';
import { usualPieceOf } from './outline.ts';
import type { UsualPiece } from './outline.ts';
import { setRows } from './sets.ts';
import type { SetRow } from './sets.ts';

/**
 * A piece and everything else its page and its file of data are made from, as plain data. They see nothing but this, so a
 * digest of it is the key of both.
 */
export type AroundPiece = {
  readonly base: PieceWithOwn;
  readonly related: readonly { readonly id: string; readonly title: string }[];
  readonly sets: readonly SetRow[];
  readonly neighbours: Board | null;
  readonly usual: UsualPiece | null;
};

/** A piece, and what its file of data may ask of the cabinet. */
export type PieceWithOwn = {
  readonly piece: PublicPiece;
  readonly own: Pick<Cabinet['lists'], 'cabinet' | 'eras' | 'rulers' | 'mints' | 'denominations'> &
    Pick<Cabinet, 'photographs' | 'changed'>;
};

/** How many pieces before it and after it in the cabinet are shown with it. */
const RUN = 2;

// More names would be a list to read.
const MOST_RELATED = 2;

/** A piece that has a page, by its id. The pages are made from the list of pieces, so it is there. */
export function pieceNamed(cabinet: Cabinet, id: string): PublicPiece {
  const piece = byId(cabinet).get(id);
  if (piece === undefined) throw new Error(`There is no piece ${id}.`);
  return piece;
}

const byId = onceFor(({ pieces }: Cabinet) => new Map(pieces.map((piece) => [piece.id, piece])));

export async function aroundPiece(cabinet: Cabinet, piece: PublicPiece): Promise<AroundPiece> {
  return {
    base: withOwn(cabinet, piece.id),
    related: relatedTo(piece, cabinet.listed)
      .slice(0, MOST_RELATED)
      .map(({ id, title }) => ({ id, title })),
    sets: piece.listed ? setRows(cabinet, piece.id) : [],
    neighbours: await neighboursOf(piece, cabinet),
    usual: usualPieceOf(cabinet),
  };
}

/** A piece with its own, by its id: put together and digested once for its page and its file. */
export function withOwn(cabinet: Cabinet, id: string): PieceWithOwn {
  const known = allWithOwn(cabinet).get(id);
  if (known !== undefined) return known;
  const piece = pieceNamed(cabinet, id);
  const made = digestedOnce({ piece, own: ownOf(cabinet, piece) });
  allWithOwn(cabinet).set(id, made);
  return made;
}

const allWithOwn = onceFor((_: Cabinet) => new Map<string, PieceWithOwn>());

/** What of the cabinet belongs to one piece: the records of the names it bears, its pictures, and what is the whole cabinet's. */
function ownOf({ lists, photographs, changed }: Cabinet, piece: PublicPiece): PieceWithOwn['own'] {
  const rulers = [...(known(piece.rulers) ?? []), ...piece.struckFor].map(({ id }) => id);
  return {
    cabinet: digestedOnce(lists.cabinet),
    eras: digestedOnce(lists.eras),
    rulers: picked(lists.rulers, rulers),
    mints: picked(lists.mints, [known(piece.mint)?.id ?? '']),
    denominations: picked(lists.denominations, [known(piece.denomination)?.id ?? '']),
    photographs: picked(photographs, [piece.id]),
    changed: picked(changed, [pathInSite(urls.piece(piece.id))]),
  };
}

/** The cabinet as if it held this piece alone and no more than is its own. */
export function alone(piece: PublicPiece, { photographs, changed, ...lists }: PieceWithOwn['own']): Cabinet {
  const types = { series: [], concordance: concordanceOf([]), holders: new Map() };
  return {
    lists: { ...lists, works: {}, sets: [], exhibits: [], types },
    pieces: [piece],
    listed: piece.listed ? [piece] : [],
    photographs,
    changed,
  };
}

function picked<Thing>(from: Readonly<Record<string, Thing>>, ids: readonly string[]): Readonly<Record<string, Thing>> {
  return Object.fromEntries(
    ids.flatMap((id) => {
      const thing = from[id];
      return thing === undefined ? [] : [[id, thing]];
    }),
  );
}

async function neighboursOf(piece: PublicPiece, { listed }: Cabinet): Promise<Board | null> {
  const at = orderOf(listed).get(piece);
  if (at === undefined) return null;
  const run = listed.slice(Math.max(0, at - RUN), at + RUN + 1);
  // Offered its other files too, a browser that has just shown the piece above takes the largest.
  const board = await boardOf(run, (one) => (one === piece ? pieceWords.thisPiece : null));
  return {
    ...board,
    laid: board.laid.map((laid) =>
      laid.id === piece.id ? { ...laid, isHere: true, face: inOneFile(laid.face, 'small') } : laid,
    ),
  };
}
