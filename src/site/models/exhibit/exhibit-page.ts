import type { Exhibit, Work } from '../../../catalogue/catalogue.ts';
import type { LabelStyle } from '../../../core/cases/case-to-set.ts';
import type { Run } from '../../../core/cases/set-text.ts';
import type { Cabinet } from '../../cabinet.ts';
import { storyHtml } from '../../markdown.ts';
import { urls } from '../../urls.ts';
import { exhibitWords } from '../../words/exhibits.ts';
import type { FaceView } from '../face.ts';
import { faceOf } from '../face.ts';
import type { PageHead } from '../head.ts';
import type { CaseFigure } from './case-figure.ts';
import { caseFigure } from './case-figure.ts';
import { dateOf } from './label-of.ts';
import { setCase } from './set-case.ts';
import type { ShownCase, ShownGroup, ShownPiece } from './shown-exhibit.ts';
import { piecesShown, shownExhibit } from './shown-exhibit.ts';
import { workLine } from './work-line.ts';

/** A piece as it lies on line: its faces, its label, the way to its own page. */
export type LaidOut = {
  readonly href: string;
  readonly title: string;
  /** Its date and number. */
  readonly line: string;
  readonly label: string;
  readonly faces: readonly FaceView[];
};
export type GroupView = {
  readonly id: string;
  readonly title: string;
  readonly text: string | null;
  readonly boardName: string;
  readonly pieces: readonly LaidOut[];
};
export type CaseView = {
  readonly id: string;
  readonly heading: string;
  readonly groups: readonly GroupView[];
  readonly figure: CaseFigure;
};
export type BookView = { readonly href: string; readonly line: readonly Run[] };
export type FormLink = { readonly href: string; readonly name: string };

export type ExhibitPage = {
  readonly head: PageHead;
  readonly title: string;
  readonly scope: string | null;
  readonly says: string;
  readonly statement: string;
  readonly cases: readonly CaseView[];
  readonly books: readonly { readonly id: string; readonly heading: string; readonly books: readonly BookView[] }[];
  readonly acknowledgements: string | null;
  readonly forms: readonly FormLink[];
};

export function exhibitPage(cabinet: Cabinet, exhibit: Exhibit): ExhibitPage {
  const shown = shownExhibit(cabinet, exhibit);
  const { title, scope, keeper, statement, bibliography, furtherReading, acknowledgements } = shown;
  const pieces = piecesShown(shown);
  const extent = exhibitWords.extent(pieces.length, shown.cases.length);
  return {
    head: {
      title,
      here: urls.exhibit(exhibit.id),
      trail: [{ name: exhibitWords.title, href: urls.exhibits() }],
      ...(scope === null ? {} : { description: scope }),
      ...pictureOf(cabinet, pieces),
    },
    title,
    scope,
    says: keeper === null ? extent : `${extent} ${exhibitWords.shownBy(keeper)}`,
    statement: storyHtml(statement),
    cases: shown.cases.map((one) => caseView(one, shown.label, cabinet)),
    books: [
      { id: 'books', heading: exhibitWords.bibliography, books: bibliography.map(bookView) },
      { id: 'further', heading: exhibitWords.furtherReading, books: furtherReading.map(bookView) },
    ].filter(({ books }) => books.length > 0),
    acknowledgements,
    forms: [
      {
        href: urls.exhibitPrint(exhibit.id),
        name: keeper === null ? exhibitWords.printPlain : exhibitWords.printNamed,
      },
      ...(keeper === null
        ? []
        : [{ href: urls.exhibitPrint(exhibit.id, 'anonymous'), name: exhibitWords.printAnonymous }]),
    ],
  };
}

function caseView(one: ShownCase, label: LabelStyle, cabinet: Cabinet): CaseView {
  return {
    id: `case-${one.number}`,
    heading: exhibitWords.caseName(one.number, one.title),
    groups: one.groups.map((group, index) => groupView(group, `case-${one.number}-${index + 1}`, cabinet)),
    figure: caseFigure(setCase(one, label)),
  };
}

function groupView({ title, text, pieces }: ShownGroup, id: string, { photographs }: Cabinet): GroupView {
  return {
    id,
    title,
    text,
    boardName: exhibitWords.boardName(title),
    pieces: pieces.map(({ piece, faces, label }) => ({
      href: urls.piece(piece.id),
      title: piece.title,
      line: [dateOf(piece), piece.number].filter((part) => part !== null).join(' · '),
      label,
      faces: faces.map((face) => faceOf(piece, face, photographs)),
    })),
  };
}

function bookView(work: Work): BookView {
  return { href: urls.work(work.id), line: workLine(work) };
}

/** The first photograph of the exhibit, for sharing. */
function pictureOf({ photographs }: Cabinet, pieces: readonly ShownPiece[]): { readonly picture?: string } {
  for (const { piece, faces } of pieces) {
    const made = photographs[piece.id]?.find(({ face }) => face === faces[0]);
    if (made !== undefined) return { picture: urls.photograph(piece.id, made.jpeg.file) };
  }
  return {};
}
