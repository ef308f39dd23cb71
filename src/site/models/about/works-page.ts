import type { Work } from '../../../catalogue/catalogue.ts';
import { compareReferences, formatReference } from '../../../core/references/reference.ts';
import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { worksWords } from '../../words/works.ts';
import type { PageHead } from '../shared/head.ts';
import type { Link } from '../sets/place-shown.ts';

export type CitedPiece = Link & { readonly number: string };

/** A book, as a bibliography gives it, and what it is cited for. */
export type WorkShown = {
  readonly id: string;
  readonly author: string | null;
  readonly title: string;
  /** Place, year, series and pages: `London, 1991 and 1994`. */
  readonly imprint: string;
  readonly short: string | null;
  readonly note: string | null;
  readonly address: string | null;
  readonly cited: string;
  readonly pieces: readonly CitedPiece[];
  readonly alsoIn: readonly Link[];
};

export type WorksPage = {
  readonly head: PageHead;
  readonly works: readonly WorkShown[];
  /** Cited for no piece, set or exhibit. */
  readonly behind: readonly WorkShown[];
};

export function worksPage(cabinet: Cabinet): WorksPage {
  const { title, description } = worksWords;
  const works = Object.values(cabinet.lists.works)
    .toSorted((a, b) => (sortedUnder(a) < sortedUnder(b) ? -1 : 1))
    .map((work) => workShown(cabinet, work));
  const isCited = ({ pieces, alsoIn }: WorkShown): boolean => pieces.length + alsoIn.length > 0;
  return {
    head: { title, description, here: urls.works() },
    works: works.filter(isCited),
    behind: works.filter((work) => !isCited(work)),
  };
}

function workShown(cabinet: Cabinet, { id, fields }: Work): WorkShown {
  const pieces = piecesCiting(cabinet, id);
  const count = new Set(pieces.map(({ href }) => href)).size;
  return {
    id,
    author: fields.author ?? null,
    title: fields.title,
    imprint: [fields.place, fields.year, fields.series, fields.pages].filter((part) => part !== undefined).join(', '),
    short: fields.short === undefined ? null : worksWords.short(fields.short),
    note: fields.note ?? null,
    address: fields.address ?? null,
    cited: worksWords.cited(count),
    pieces,
    alsoIn: [...setsCiting(cabinet, id), ...exhibitsCiting(cabinet, id)],
  };
}

/** Every citation of a work by a listed piece, in the order of the book's own numbers. */
function piecesCiting({ listed }: Cabinet, id: string): readonly CitedPiece[] {
  return listed
    .flatMap((piece) => piece.references.filter(({ work }) => work === id).map((reference) => ({ piece, reference })))
    .toSorted((a, b) => compareReferences(a.reference, b.reference))
    .map(({ piece, reference }) => ({
      href: urls.piece(piece.id),
      name: piece.title,
      number: formatReference(reference, ''),
    }));
}

function setsCiting({ lists }: Cabinet, id: string): readonly Link[] {
  return lists.sets
    .filter(({ fields }) => fields.source.some(({ work }) => work === id))
    .map((set) => ({ href: urls.set(set.id), name: worksWords.set(set.fields.title) }));
}

function exhibitsCiting({ lists }: Cabinet, id: string): readonly Link[] {
  return lists.exhibits
    .filter(({ fields }) => fields.bibliography.includes(id))
    .map((exhibit) => ({ href: urls.exhibit(exhibit.id), name: worksWords.exhibit(exhibit.fields.title) }));
}

/** The first author's last name, then the year; a book without an author by its title. */
function sortedUnder({ fields }: Work): string {
  const first = fields.author
    ?.split(/,| and | & /)[0]
    ?.trim()
    .split(' ')
    .at(-1);
  return `${(first ?? fields.title).toLowerCase()} ${fields.year ?? ''} ${fields.title}`;
}
