import { licenceAddress } from '../../../publish/licences.ts';
import { exhibitJsonLd } from '../../../publish/exhibit-json-ld.ts';
import type { Cabinet } from '../../cabinet.ts';
import { inFull, urls } from '../../urls.ts';
import { exhibitWords } from '../../words/exhibits.ts';
import { citationOf } from '../shared/citation.ts';
import type { Citation } from '../shared/citation.ts';
import type { PageHead } from '../shared/head.ts';
import { sharingPictureSays } from './sharing-picture.ts';
import type { ShownExhibit } from './shown-exhibit.ts';
import { piecesShown } from './shown-exhibit.ts';
import { workLine } from './work-line.ts';

/** What the page of an exhibit says of itself, to those who link to it and to machines. */
export function headOf(shown: ShownExhibit, cabinet: Cabinet): PageHead {
  const { id, title, scope } = shown;
  const says = sharingPictureSays(shown, cabinet);
  return {
    title,
    here: urls.exhibit(id),
    trail: [{ name: exhibitWords.title, href: urls.exhibits() }],
    ...(scope === null ? {} : { description: scope }),
    ...(says === null ? {} : { picture: urls.exhibitPicture(id), pictureSays: says }),
    linked: linkedExhibit(shown, cabinet),
  };
}

/** How the exhibit is cited. */
export function exhibitCitation(shown: ShownExhibit, cabinet: Cabinet): Citation {
  const { id, title, keeper } = shown;
  const shows = piecesShown(shown).map(({ piece }) => urls.piece(piece.id));
  return citationOf({ key: id, title, number: null, keeper, here: urls.exhibit(id), shows }, cabinet);
}

/** The exhibit as linked data. */
export function linkedExhibit(shown: ShownExhibit, { photographs, lists: { cabinet } }: Cabinet): object {
  const { id, title, scope, keeper, bibliography } = shown;
  return exhibitJsonLd({
    page: inFull(urls.exhibit(id)),
    title,
    scope,
    keeper,
    language: cabinet.language,
    licence: licenceAddress(cabinet.licence?.texts ?? ''),
    picture: sharingPictureSays(shown, { photographs }) !== null ? inFull(urls.exhibitPicture(id)) : null,
    pieces: piecesShown(shown).map(({ piece }) => ({
      page: inFull(urls.piece(piece.id)),
      title: piece.title,
      number: piece.number,
    })),
    books: bibliography.map((work) =>
      workLine(work)
        .map(({ text }) => text)
        .join(''),
    ),
    collection: { page: inFull(urls.home()), title: cabinet.title },
  });
}
