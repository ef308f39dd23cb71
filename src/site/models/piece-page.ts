import type { PublicPiece } from '../../publish/public-piece.ts';
import type { Cabinet } from '../cabinet.ts';
import { storyHtml } from '../markdown.ts';
import { absolute, hasPublicAddress, urls } from '../urls.ts';
import type { CautionName } from '../words/cautions.ts';
import { pieceWords } from '../words/piece.ts';
import { siteWords } from '../words/site.ts';
import { dateInWords } from './board.ts';
import type { FaceShown } from './face.ts';
import { facesShown } from './face.ts';
import { linkedData } from './linked-data.ts';
import type { Page } from './page.ts';
import { framePage } from './page.ts';
import { attributionRows } from './piece/attribution.ts';
import { cautionsFor } from './piece/cautions.ts';
import type { ConditionShown } from './piece/condition.ts';
import { conditionShown } from './piece/condition.ts';
import type { EraRow } from './piece/eras.ts';
import { eraRows } from './piece/eras.ts';
import type { SideShown } from './piece/legends.ts';
import { sidesShown } from './piece/legends.ts';
import { measureRows } from './piece/measures.ts';
import type { OtherPicture } from './piece/other-pictures.ts';
import { otherPictures } from './piece/other-pictures.ts';
import type { ChainShown } from './piece/provenance.ts';
import { chainShown } from './piece/provenance.ts';
import type { Row } from './piece/row.ts';
import type { Ticket } from './piece/ticket.ts';
import { ticketOf } from './piece/ticket.ts';
import type { SetServed } from './sets-of.ts';
import { setsOf } from './sets-of.ts';

export type PiecePage = {
  readonly head: Page;
  readonly title: string;
  readonly number: string;
  readonly date: string;
  readonly faces: readonly FaceShown[];
  /** Clock hours; null when it has no axis or none is recorded. */
  readonly axis: number | null;
  readonly others: readonly OtherPicture[];
  readonly credit: string | null;
  readonly ticket: Ticket;
  readonly attribution: readonly Row[];
  readonly sides: readonly SideShown[];
  readonly condition: ConditionShown | null;
  readonly measures: readonly Row[];
  readonly chain: ChainShown | null;
  readonly eras: readonly EraRow[];
  readonly sets: readonly SetServed[];
  readonly cautions: readonly CautionName[];
  /** HTML. */
  readonly story: string;
  readonly cite: string;
  readonly isListed: boolean;
  readonly data: readonly { readonly name: string; readonly to: string }[];
  readonly neighbours: { readonly previous: Neighbour | null; readonly next: Neighbour | null };
};

type Neighbour = { readonly title: string; readonly to: string };

/** Everything the page of a piece shows. */
export function piecePage(piece: PublicPiece, cabinet: Cabinet): PiecePage {
  const { listed, photographs, lists } = cabinet;
  const at = listed.findIndex(({ id }) => id === piece.id);
  const beside = (step: number): Neighbour | null => {
    const found = at === -1 ? undefined : listed[at + step];
    return found === undefined ? null : { title: found.title, to: urls.piece(found.id) };
  };
  const own = urls.piece(piece.id);
  const shared = photographs[piece.id]?.[0]?.jpeg.file;
  const { title, keeper } = lists.cabinet;
  const cited = pieceWords.cite(keeper, piece.title, piece.number, title);
  const credits = [...new Set(piece.pictures.flatMap(({ by, licence }) => (by === null ? [] : [pieceWords.photograph(by, licence)])))];
  return {
    head: framePage(cabinet, {
      title: piece.title,
      description: descriptionOf(piece),
      own,
      trail: [{ name: siteWords.pieces, to: urls.pieces }],
      hidden: !piece.listed,
      ...(shared === undefined ? {} : { picture: urls.photograph(piece.id, shared) }),
      ...(piece.listed ? { linked: linkedData(cabinet, piece) } : {}),
    }),
    title: piece.title,
    number: siteWords.number(piece.number),
    date: dateInWords(piece),
    faces: facesShown(piece, photographs),
    axis: piece.axis?.hours ?? null,
    others: otherPictures(piece, photographs),
    credit: credits.length === 0 ? null : credits.join(' '),
    ticket: ticketOf(piece),
    attribution: attributionRows(piece),
    sides: sidesShown(piece),
    condition: conditionShown(piece),
    measures: measureRows(piece, cabinet),
    chain: chainShown(piece),
    eras: eraRows(piece, cabinet),
    sets: piece.listed ? setsOf(cabinet, piece.id) : [],
    cautions: cautionsFor(piece),
    story: storyHtml(piece.story),
    cite: hasPublicAddress ? `${cited}, ${absolute(own)}` : cited,
    isListed: piece.listed,
    data: piece.listed
      ? [
          { name: pieceWords.linked, to: urls.pieceJson(piece.id) },
          { name: pieceWords.iiif, to: urls.iiif(piece.id) },
        ]
      : [],
    neighbours: { previous: beside(-1), next: beside(1) },
  };
}

/** The first sentence of the story, or the facts of the ticket. */
function descriptionOf(piece: PublicPiece): string {
  const plain = piece.story.replace(/[*_#>[\]`]|\(https?:[^)]*\)/g, '').replace(/\s+/g, ' ');
  const sentence = /^.{20,180}?[.!?](?=\s|$)/.exec(plain)?.[0];
  return sentence ?? [piece.title, dateInWords(piece)].filter((part) => part !== '').join(', ');
}
