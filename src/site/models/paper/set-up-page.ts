import type { Exhibit } from '../../../catalogue/catalogue.ts';
import type { Cabinet } from '../../cabinet.ts';
import { faceWords } from '../../words/faces.ts';
import { paperWords } from '../../words/paper.ts';
import { shownExhibit } from '../exhibit/shown-exhibit.ts';
import { urls } from '../../urls.ts';
import { withoutName } from './anonymous.ts';
import { policyFor } from './print-style.ts';
import type { BarePage } from './print-page.ts';

/** A piece to be laid: its number in the exhibit and in the cabinet, and the faces that lie upwards. */
export type PieceToLay = {
  readonly id: string;
  readonly says: string;
  readonly number: string;
  readonly where: string;
  readonly faces: readonly { readonly says: string; readonly src: string | null }[];
};

/** What a telephone shows while a case is laid. It names no keeper, and leads to no page that does. */
export type SetUpPage = {
  readonly bare: BarePage;
  readonly heading: string;
  readonly how: string;
  readonly pieces: readonly PieceToLay[];
};

export function setUpPage(cabinet: Cabinet, exhibit: Exhibit): SetUpPage {
  const { shown } = withoutName(shownExhibit(cabinet, exhibit), cabinet);
  const heading = paperWords.setUpTitle(shown.title);
  const style = '@layer tokens,base,components,page;';
  return {
    bare: {
      language: 'en',
      title: heading,
      description: paperWords.setUpHow,
      style,
      policy: policyFor(style),
    },
    heading,
    how: paperWords.setUpHow,
    pieces: shown.cases.flatMap(({ number, groups }) =>
      groups.flatMap(({ title, pieces }) =>
        pieces.map(({ key, piece, faces }): PieceToLay => ({
          id: `piece-${key}`,
          says: `${key}. ${piece.title}`,
          number: piece.number,
          where: paperWords.inCase(number, title),
          faces: faces.map((face) => {
            const made = cabinet.photographs[piece.id]?.find((one) => one.face === face);
            return {
              says: paperWords.setUpFace(piece.title, faceWords.called(face, piece)),
              src: made === undefined ? null : urls.photograph(piece.id, (made.webp[0] ?? made.jpeg).file),
            };
          }),
        })),
      ),
    ),
  };
}
