import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { exhibitWords } from '../../words/exhibits.ts';
import { acrossClass } from '../shared/face.ts';
import type { PageHead } from '../shared/head.ts';
import { piecesInRow, ROOM } from '../shared/rows.ts';
import type { LaidOut } from './exhibit-page.ts';
import { exhibitPage } from './exhibit-page.ts';

/** An exhibit in the list of them: a few words, and the first pieces of each case. */
export type ExhibitInList = {
  readonly href: string;
  readonly title: string;
  readonly scope: string | null;
  readonly says: string;
  readonly boardName: string;
  readonly across: string;
  readonly inRow: number;
  readonly pieces: readonly LaidOut[];
};
export type ExhibitsPage = { readonly head: PageHead; readonly exhibits: readonly ExhibitInList[] };

/** How many pieces of a group stand for it in the list; no more in all than one row of a wide page holds. */
const A_GROUP = 1;
const A_ROW = 7;

export function exhibitsPage(cabinet: Cabinet): ExhibitsPage {
  return {
    head: { title: exhibitWords.title, description: exhibitWords.description, here: urls.exhibits() },
    exhibits: cabinet.lists.exhibits.map((exhibit) => {
      const { title, scope, says, cases } = exhibitPage(cabinet, exhibit);
      const parts = cases.flatMap(({ groups }) => groups);
      const all = parts.flatMap(({ pieces }) => pieces);
      const laid = parts
        .flatMap(({ pieces }) => pieces.slice(0, A_GROUP).map((one) => ({ ...one, faces: one.faces.slice(0, 1) })))
        .slice(0, A_ROW);
      return {
        href: urls.exhibit(exhibit.id),
        title,
        scope,
        says: laid.length < all.length ? `${says} ${exhibitWords.below(laid.length)}` : says,
        boardName: exhibitWords.boardName(title),
        across: acrossClass(laid.map(({ faces }) => faces)),
        inRow: piecesInRow(
          laid.map(({ faces }) => faces),
          A_ROW,
          ROOM.brief,
        ),
        pieces: laid,
      };
    }),
  };
}
