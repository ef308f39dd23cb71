import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import { keyedBy } from '../../keyed.ts';
import { storyHtml } from '../../markdown.ts';
import { urls } from '../../urls.ts';
import type { CautionName } from '../../words/cautions.ts';
import { capital } from '../../words/capital.ts';
import { tied } from '../../words/no-break.ts';
import { compareWords } from '../../words/compare.ts';
import { faceWords } from '../../words/faces.ts';
import { pieceWords } from '../../words/piece.ts';
import { siteWords } from '../../words/site.ts';
import { facesShared, sharedFile } from '../../../photographs/cache/manifest.ts';
import type { Board } from '../shared/board.ts';
import { citationOf } from '../shared/citation.ts';
import type { Citation } from '../shared/citation.ts';
import { acrossClass, faceOf, pixelsOf } from '../shared/face.ts';
import type { FaceView } from '../shared/face.ts';
import { firstSentence } from '../shared/first-sentence.ts';
import { keeperLanguage } from '../shared/head.ts';
import type { PageHead } from '../shared/head.ts';
import { linkedData } from '../open-data/linked.ts';
import { alone, aroundPiece, pieceNamed } from './around-piece.ts';
import type { AroundPiece } from './around-piece.ts';
import { attributionRows } from './attribution.ts';
import { conditionOf } from './condition.ts';
import type { Condition } from './condition.ts';
import { eraRows, timeChartOf } from './eras.ts';
import type { EraRow, TimeChart } from './eras.ts';
import { sidesOf } from './legends.ts';
import type { SideInWords } from './legends.ts';
import { measureRows } from './measures.ts';
import { otherPictures } from './other-pictures.ts';
import { outlineOf } from './outline.ts';
import type { Outline } from './outline.ts';
import type { OtherPicture } from './other-pictures.ts';
import { chainOf } from './provenance.ts';
import type { Chain } from './provenance.ts';
import type { Row } from './row.ts';
import type { SetRow } from './sets.ts';
import { dateInWords, ticketOf } from '../shared/ticket.ts';
import type { Ticket } from '../shared/ticket.ts';

export type PiecePage = {
  readonly head: PageHead;
  readonly faces: { readonly obverse: FaceView; readonly reverse: FaceView };
  /** What each of the two is called. */
  readonly called: { readonly obverse: string; readonly reverse: string };
  /** Clock hours; null when it has no axis or none is recorded. */
  readonly axis: number | null;
  /** Size classes of both faces in one row, margins included. */
  readonly across: string;
  /** Pixels a millimetre at most, for what its pictures hold. */
  readonly pixels: number;
  /** Its outline at a scale that all pages share, next to that of another; null where its size is not recorded. */
  readonly outline: Outline | null;
  readonly ticket: Ticket;
  /** That it is lent, sold or gone; empty where it is kept. */
  readonly status: string;
  readonly isListed: boolean;
  /** Where it is next to another: its nearest related, and one of the visitor's choice. */
  readonly beside: readonly { readonly title: string; readonly to: string }[];
  readonly others: readonly OtherPicture[];
  readonly credits: readonly string[];
  readonly attribution: readonly Row[];
  readonly sides: readonly SideInWords[];
  readonly condition: Condition;
  readonly measures: readonly Row[];
  readonly chain: Chain | null;
  readonly eras: readonly EraRow[];
  readonly time: TimeChart | null;
  readonly sets: readonly SetRow[];
  readonly cautions: readonly CautionName[];
  /** HTML. */
  readonly story: string;
  /** The language of title and story where it is not English. */
  readonly language: string | undefined;
  readonly cite: Citation;
  readonly files: readonly { readonly name: string; readonly to: string }[];
  readonly neighbours: Board | null;
};

/** A path for every piece that has a page, listed or not. */
export const piecePaths = keyedBy(
  ({ pieces }) => pieces.map(({ id }) => ({ id })),
  (cabinet, { id }) => aroundPiece(cabinet, pieceNamed(cabinet, id)),
  piecePageOf,
);

/** Everything the page of a piece shows. */
function piecePageOf({ base: { piece, own }, related, sets, neighbours, usual }: AroundPiece): PiecePage {
  const cabinet = alone(piece, own);
  const { photographs } = cabinet;
  const eras = piece.years === null ? [] : eraRows(piece, cabinet);
  const faces = { obverse: faceOf(piece, 'obverse', photographs), reverse: faceOf(piece, 'reverse', photographs) };
  return {
    head: headOf(piece, cabinet),
    faces,
    called: { obverse: faceWords.called('obverse', piece), reverse: faceWords.called('reverse', piece) },
    across: acrossClass([[faces.obverse, faces.reverse]]),
    axis: piece.axis?.hours ?? null,
    pixels: pixelsOf([faces.obverse, faces.reverse]),
    outline: outlineOf(piece, usual),
    ticket: ticketOf(piece),
    status: pieceWords.status[piece.status],
    isListed: piece.listed,
    beside: besideOf(piece, related),
    others: otherPictures(piece, photographs),
    credits: creditsOf(piece),
    attribution: attributionRows(piece),
    sides: sidesOf(piece),
    condition: conditionOf(piece),
    measures: measureRows(piece, cabinet),
    chain: chainOf(piece),
    eras,
    time: timeChartOf(piece, cabinet, eras),
    sets,
    cautions: cautionsOf(piece),
    story: storyHtml(piece.story),
    language: keeperLanguage(cabinet),
    cite: citationOf(
      {
        key: piece.id,
        title: piece.title,
        number: piece.number,
        keeper: cabinet.lists.cabinet.keeper,
        here: urls.piece(piece.id),
      },
      cabinet,
    ),
    files: filesOf(piece, cabinet),
    neighbours,
  };
}

function headOf(piece: PublicPiece, cabinet: Cabinet): PageHead {
  const faces = cabinet.photographs[piece.id] ?? [];
  const shared = sharedFile(faces);
  return {
    title: piece.title,
    description: descriptionOf(piece),
    here: urls.piece(piece.id),
    trail: [{ name: siteWords.pieces, href: urls.pieces() }],
    unlisted: !piece.listed,
    ...(shared === null
      ? {}
      : {
          picture: urls.photograph(piece.id, shared),
          pictureSays: pieceWords.pictureSays(
            piece.title,
            facesShared(faces).map(({ face }) => face),
          ),
        }),
    ...(piece.listed ? { linked: linkedData(cabinet, piece) } : {}),
  };
}

/** When it was made, of what and how heavy; then the first sentence of its story. */
function descriptionOf(piece: PublicPiece): string {
  const plain = piece.story.replace(/[*_#>[\]`]|\(https?:[^)]*\)/g, '').replace(/\s+/g, ' ');
  const facts = [capital(dateInWords(piece)), piece.metal ?? '', ...ticketOf(piece).measures.slice(0, 2)];
  return `${facts.filter((fact) => fact !== '').join(', ')}. ${firstSentence(plain.trim())}`.trim();
}

function besideOf(piece: PublicPiece, related: AroundPiece['related']): PiecePage['beside'] {
  return [
    ...related.map(({ id, title }) => ({ title, to: urls.compare(piece.id, id) })),
    { title: compareWords.another, to: urls.compare(piece.id) },
  ];
}

function creditsOf({ pictures }: PublicPiece): readonly string[] {
  const all = pictures.flatMap(({ by, licence, what }) =>
    by === null ? [] : [tied(pieceWords.photographs(by, licence, what))],
  );
  return [...new Set(all)];
}

function filesOf({ id, listed }: PublicPiece, { photographs }: Cabinet): PiecePage['files'] {
  if (!listed) return [];
  const linked = { name: pieceWords.linked, to: urls.pieceJson(id) };
  return photographs[id] === undefined ? [linked] : [linked, { name: pieceWords.iiif, to: urls.iiif(id) }];
}

/** The cautions a piece calls for, none for most. */
function cautionsOf(piece: PublicPiece): readonly CautionName[] {
  const told = [piece.problem, piece.grade?.text, ...piece.treatments].join(' ');
  const wasFound =
    piece.found !== null || piece.provenance.some(({ how }) => /\bfind\b|\bfound\b|detect/i.test(how ?? ''));
  const calls: readonly (readonly [CautionName, boolean])[] = [
    ['copies', piece.kind === 'replica'],
    ['counterfeits', piece.kind === 'counterfeit'],
    ['finds', wasFound],
    ['cleaning', /\b(?:(?:over)?clean(?:ed|ing)|polish(?:ed|ing)|whizzed|dipped)\b/i.test(told)],
    ['lead', /\blead\b|pewter/i.test(piece.metal ?? '')],
  ];
  return calls.filter(([, isCalledFor]) => isCalledFor).map(([name]) => name);
}
