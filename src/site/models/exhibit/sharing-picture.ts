import type { FacePictures } from '../../../photographs/cache/manifest.ts';
import type { Exhibit } from '../../../catalogue/catalogue.ts';
import type { Cabinet } from '../../cabinet.ts';
import { exhibitWords } from '../../words/exhibits.ts';
import { boardPicture, MOST_ON_BOARD } from '../shared/board-picture.ts';
import type { ShownExhibit, ShownPiece } from './shown-exhibit.ts';
import { shownExhibit } from './shown-exhibit.ts';

type Chosen = { readonly piece: ShownPiece; readonly made: FacePictures };

/** The exhibits that have a picture to be shared by: those of which any piece was photographed. */
export function sharedExhibits({ lists, ...rest }: Cabinet): readonly Exhibit[] {
  return lists.exhibits.filter((exhibit) => chosenFor(shownExhibit({ lists, ...rest }, exhibit), rest).length > 0);
}

/** The picture itself: pieces of every group in turn, at one scale. */
export async function sharingPicture(cabinet: Cabinet, exhibit: Exhibit): Promise<Buffer> {
  const chosen = chosenFor(shownExhibit(cabinet, exhibit), cabinet);
  return boardPicture(chosen.map(({ piece, made }) => ({ piece: piece.piece, made })));
}

/** What the picture shows, in words; null when there is none. */
export function sharingPictureSays(shown: ShownExhibit, cabinet: Pick<Cabinet, 'photographs'>): string | null {
  const chosen = chosenFor(shown, cabinet);
  return chosen.length === 0 ? null : exhibitWords.pictureSays(chosen.map(({ piece }) => piece.piece.title));
}

/** The first pieces of all groups, then all the second, and so on. */
export function groupsInTurn({ cases }: ShownExhibit): readonly ShownPiece[] {
  const groups = cases.flatMap((one) => one.groups);
  const rounds = Math.max(0, ...groups.map(({ pieces }) => pieces.length));
  return Array.from({ length: rounds }, (_, at) => groups.flatMap(({ pieces }) => pieces[at] ?? [])).flat();
}

/** Pieces of every group in turn until there are enough; in the order of the exhibit. */
function chosenFor(shown: ShownExhibit, { photographs }: Pick<Cabinet, 'photographs'>): readonly Chosen[] {
  const pictured = groupsInTurn(shown).flatMap((piece): readonly Chosen[] => {
    const made = photographs[piece.piece.id]?.find(({ face }) => face === piece.faces[0]);
    return made === undefined ? [] : [{ piece, made }];
  });
  return pictured.slice(0, MOST_ON_BOARD).toSorted((a, b) => a.piece.key - b.piece.key);
}
