import type { Exhibit, Work } from '../../../catalogue/catalogue.ts';
import type { Abbreviation } from '../../../catalogue/exhibits/abbreviations.ts';
import type { Run } from '../../../core/cases/typeset-text.ts';
import type { Cabinet } from '../../cabinet.ts';
import { storyHtml } from '../../markdown.ts';
import { urls } from '../../urls.ts';
import { exhibitWords } from '../../words/exhibits.ts';
import { tied } from '../../words/no-break.ts';
import type { Citation } from '../shared/citation.ts';
import type { FaceView } from '../shared/face.ts';
import { acrossClass, faceOf } from '../shared/face.ts';
import { longestRow, piecesInRow, ROOM } from '../shared/rows.ts';
import { keeperLanguage } from '../shared/head.ts';
import type { Crumb, PageHead } from '../shared/head.ts';
import type { CaseFromAbove } from './case-from-above.ts';
import { caseFromAbove, nameIn } from './case-from-above.ts';
import { exhibitCitation, headOf } from './exhibit-head.ts';
import { setCase } from './planned-case.ts';
import type { SetGroup } from './planned-case.ts';
import type { ShownCase, ShownExhibit, ShownPiece } from './shown-exhibit.ts';
import { piecesShown, shownExhibit } from './shown-exhibit.ts';
import { workLine } from './work-line.ts';

/** A piece as it lies on line: its faces, its label, the way to its own page. */
export type LaidOut = {
  readonly href: string;
  readonly title: string;
  /** What its label says: the words that name it, which lead to its page, and the others. */
  readonly label: { readonly name: string; readonly rest: string };
  readonly faces: readonly FaceView[];
};
export type GroupView = {
  readonly id: string;
  readonly title: string;
  readonly text: string | null;
  readonly boardName: string;
  readonly across: string;
  /** How many are in a row on a wide screen: a row of the case stays one, where it fits. */
  readonly inRow: number;
  readonly pieces: readonly LaidOut[];
};
export type CaseView = {
  readonly id: string;
  /** `Case 1: Eboracum to Jorvik`, and its two parts; no title where it has none. */
  readonly heading: string;
  readonly name: string;
  readonly title: string | null;
  readonly says: string;
  readonly groups: readonly GroupView[];
  readonly figure: CaseFromAbove;
  /** Its page of its own. */
  readonly alone: string;
  /** The way on at its end: the case before; the case after, or what stands behind the last. */
  readonly previous: Crumb | null;
  readonly next: Crumb;
};
export type BookView = { readonly href: string; readonly line: readonly Run[] };
export type FormLink = { readonly href: string; readonly name: string };

export type ExhibitPage = {
  readonly head: PageHead;
  readonly title: string;
  readonly scope: string | null;
  readonly says: string;
  readonly statement: string;
  /** The language of title and texts where it is not English. */
  readonly language: string | undefined;
  readonly cases: readonly CaseView[];
  readonly abbreviations: readonly Abbreviation[];
  readonly books: readonly { readonly id: string; readonly heading: string; readonly books: readonly BookView[] }[];
  readonly research: string | null;
  readonly acknowledgements: string | null;
  readonly cite: Citation;
  readonly forms: readonly FormLink[];
};

/** Every exhibit has pages. */
export function exhibitIds({ lists }: Cabinet): readonly { readonly id: string }[] {
  return lists.exhibits.map(({ id }) => ({ id }));
}

export function exhibitOf({ lists }: Cabinet, id: string): Exhibit {
  const found = lists.exhibits.find((exhibit) => exhibit.id === id);
  if (found === undefined) throw new Error(`There is no exhibit ${id}.`);
  return found;
}

export function exhibitPage(cabinet: Cabinet, exhibit: Exhibit): ExhibitPage {
  const shown = shownExhibit(cabinet, exhibit);
  const { title, scope, keeper, statement, abbreviations, bibliography, furtherReading, research, acknowledgements } =
    shown;
  const pieces = piecesShown(shown);
  const extent = exhibitWords.extent(pieces.length, shown.cases.length);
  return {
    head: headOf(shown, cabinet),
    title: tied(title),
    scope: scope === null ? null : tied(scope),
    says: keeper === null ? extent : `${extent} ${exhibitWords.shownBy(keeper)}`,
    statement: storyHtml(tied(statement)),
    language: keeperLanguage(cabinet),
    cases: shown.cases.map((one) => caseView(one, shown, cabinet)),
    abbreviations,
    books: [
      { id: 'books', heading: exhibitWords.bibliography, books: bibliography.map(bookView) },
      { id: 'further', heading: exhibitWords.furtherReading, books: furtherReading.map(bookView) },
    ].filter(({ books }) => books.length > 0),
    research: research === null ? null : tied(research),
    acknowledgements: acknowledgements === null ? null : tied(acknowledgements),
    cite: exhibitCitation(shown, cabinet),
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

/** One case by itself: search engines are led to the whole exhibit. */
export type CasePage = {
  readonly head: PageHead;
  readonly one: CaseView;
  readonly others: readonly Crumb[];
  readonly whole: string;
};

export function casePage(cabinet: Cabinet, exhibit: Exhibit, number: number): CasePage {
  const shown = shownExhibit(cabinet, exhibit);
  const one = shown.cases.find((each) => each.number === number);
  if (one === undefined) throw new Error(`The exhibit ${exhibit.id} has no case ${String(number)}.`);
  const whole = urls.exhibit(exhibit.id);
  return {
    head: {
      title: headingOf(one),
      here: urls.exhibitCase(exhibit.id, number),
      trail: [
        { name: exhibitWords.title, href: urls.exhibits() },
        { name: shown.title, href: whole },
      ],
      unlisted: true,
    },
    one: caseView(one, shown, cabinet),
    others: shown.cases
      .filter((other) => other !== one)
      .map((other) => ({ name: headingOf(other), href: urls.exhibitCase(exhibit.id, other.number) })),
    whole,
  };
}

function caseView(one: ShownCase, { id, cases, label }: ShownExhibit, cabinet: Cabinet): CaseView {
  const { number, title, groups } = one;
  const beside = (step: number): Crumb | null => {
    const other = cases.find((another) => another.number === number + step);
    return other === undefined ? null : { name: headingOf(other), href: `#${idOf(other)}` };
  };
  const set = setCase(one, label);
  return {
    id: idOf(one),
    heading: headingOf(one),
    name: exhibitWords.caseName(number, null),
    title: title === null ? null : tied(title),
    says: exhibitWords.pieces(groups.reduce((sum, { pieces }) => sum + pieces.length, 0)),
    groups: set.groups.map((group, index) => groupView(group, `${idOf(one)}-${index + 1}`, cabinet)),
    figure: caseFromAbove(set, cabinet.photographs),
    alone: urls.exhibitCase(id, number),
    previous: beside(-1),
    next: beside(1) ?? { name: exhibitWords.end, href: '#closing' },
  };
}

function idOf({ number }: ShownCase): string {
  return `case-${number}`;
}

function headingOf({ number, title }: ShownCase): string {
  return tied(exhibitWords.caseName(number, title));
}

function groupView({ group, cells }: SetGroup, id: string, { photographs }: Cabinet): GroupView {
  const { title, text, pieces } = group;
  const laid = pieces.map((shown) => laidOut(shown, photographs));
  return {
    id,
    title: tied(title),
    text: text === null ? null : tied(text),
    boardName: exhibitWords.boardName(title),
    across: acrossClass(laid.map(({ faces }) => faces)),
    inRow: piecesInRow(
      laid.map(({ faces }) => faces),
      longestRow(cells.map(({ faces }) => faces[0]?.box.left ?? 0)),
      ROOM.labelled,
    ),
    pieces: laid,
  };
}

/** A piece of an exhibit as it lies on a board, in the faces that the exhibit shows. */
export function laidOut({ piece, faces, label }: ShownPiece, photographs: Cabinet['photographs']): LaidOut {
  const says = tied(label);
  const name = nameIn(says);
  return {
    href: urls.piece(piece.id),
    title: tied(piece.title),
    label: { name, rest: says.slice(name.length) },
    faces: faces.map((face) => faceOf(piece, face, photographs)),
  };
}

function bookView(work: Work): BookView {
  return { href: urls.work(work.id), line: workLine(work).map((run) => ({ ...run, text: tied(run.text) })) };
}
