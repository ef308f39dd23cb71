import type { Work } from '../../../catalogue/catalogue.ts';
import { textCitations, workCited } from '../../../catalogue/text-citations.ts';
import { compareReferences, formatReference } from '../../../core/references/reference.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import { keyedPaths } from '../../keyed.ts';
import { onceFor } from '../../once-for.ts';
import { urls } from '../../urls.ts';
import { ticketWords } from '../../words/ticket.ts';
import { worksWords } from '../../words/works.ts';
import { filedUnder, gather } from '../shared/gather.ts';
import type { PageHead } from '../shared/head.ts';
import { cutPage, furtherPages } from '../shared/pager.ts';
import type { Pager } from '../shared/pager.ts';
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
  /** The first of the numbers that are cited from it, in its own order. */
  readonly pieces: readonly CitedPiece[];
  /** How many more there are, and the page with all of them. */
  readonly more: number;
  readonly all: string;
  readonly alsoIn: readonly Link[];
};

export type WorksPage = {
  readonly head: PageHead;
  /** The books under each letter, and the address of the letter. */
  readonly letters: readonly { readonly letter: string; readonly href: string; readonly works: readonly WorkShown[] }[];
  /** Cited for no piece, set or exhibit. */
  readonly behind: readonly WorkShown[];
};

/** All numbers that are cited from one book, a page of them. */
export type CitationsPage = {
  readonly head: PageHead;
  readonly title: string;
  /** The book, as a bibliography gives it. */
  readonly work: string;
  readonly back: string;
  readonly pieces: readonly CitedPiece[];
  readonly pager: Pager | null;
};

/** More numbers than this of one book are on pages of their own, so many on each; where many books are cited, more than a share. */
const MOST = 60;
const MOST_OF_ALL = 900;
const LEAST = 6;

const mostOfOne = onceFor(({ listed }: Cabinet): number => {
  const books = byWork(listed).size;
  return Math.min(MOST, Math.max(LEAST, Math.floor(MOST_OF_ALL / Math.max(1, books))));
});
const ON_A_PAGE = 400;

/** The pages of the books from which more is cited than the list of works holds. */
export const citationPaths = keyedPaths(
  (cabinet) =>
    Object.keys(cabinet.lists.works).flatMap((id) => {
      const count = citing(cabinet, id).length;
      if (count <= mostOfOne(cabinet)) return [];
      return [undefined, ...furtherPages(count, ON_A_PAGE).map(String)].map((page) => ({ id, page }));
    }),
  (cabinet, { id, page = '1' }) => citationsPage(cabinet, id, Number(page)),
);

/** A page of the numbers cited from a book. */
export function citationsPage(cabinet: Cabinet, id: string, page: number): CitationsPage {
  const fields = cabinet.lists.works[id]?.fields;
  const title = worksWords.citedFrom(fields?.short ?? fields?.title ?? id);
  const cut = cutPage(citing(cabinet, id), page, ON_A_PAGE, (at) => urls.citations(id, at));
  return {
    head: {
      title: page === 1 ? title : worksWords.page(title, page),
      description: title,
      here: urls.citations(id, page),
      trail: [{ name: worksWords.title, href: urls.works() }],
    },
    title,
    work: [fields?.author, fields?.title, fields?.year].filter((part) => part !== undefined).join(', '),
    back: urls.work(id),
    pieces: cut.shown.map(citedPiece),
    pager: cut.pager,
  };
}

export function worksPage(cabinet: Cabinet): WorksPage {
  const { title, description } = worksWords;
  const ordered = Object.values(cabinet.lists.works).toSorted((a, b) =>
    sortedUnder(a.fields) < sortedUnder(b.fields) ? -1 : 1,
  );
  const works = ordered.map((work) => ({ letter: letterOf(work), shown: workShown(cabinet, work) }));
  const isCited = ({ shown: { pieces, alsoIn } }: (typeof works)[number]): boolean => pieces.length + alsoIn.length > 0;
  return {
    head: { title, description, here: urls.works() },
    letters: gather(works.filter(isCited), ({ letter }) => letter).map(({ key, all }) => ({
      letter: key,
      href: `#${worksWords.letterId(key)}`,
      works: all.map(({ shown }) => shown),
    })),
    behind: works.filter((work) => !isCited(work)).map(({ shown }) => shown),
  };
}

function letterOf({ fields }: Work): string {
  return sortedUnder(fields).charAt(0).toUpperCase();
}

function workShown(cabinet: Cabinet, { id, fields }: Work): WorkShown {
  const citations = citing(cabinet, id);
  const most = mostOfOne(cabinet);
  const texts = citedInTexts(cabinet).get(id) ?? [];
  const count = new Set([...citations.map(({ piece }) => piece), ...texts]).size;
  const [sets, exhibits] = [setsCiting(cabinet, id), exhibitsCiting(cabinet, id)];
  return {
    id,
    author: fields.author ?? null,
    title: fields.title,
    imprint: [fields.place, fields.year, fields.series, fields.pages].filter((part) => part !== undefined).join(', '),
    short: fields.short === undefined ? null : worksWords.short(fields.short),
    note: fields.note ?? null,
    address: fields.address ?? null,
    cited: worksWords.cited(count, sets.length, exhibits.length),
    pieces: citations.slice(0, most).map(citedPiece),
    more: Math.max(0, citations.length - most),
    all: urls.citations(id),
    alsoIn: [
      ...sets,
      ...exhibits,
      ...texts.map((piece) => ({ href: urls.piece(piece.id), name: worksWords.text(piece.title) })),
    ],
  };
}

type Citing = { readonly piece: PublicPiece; readonly reference: PublicPiece['references'][number] };

/** Every citation of a work by a listed piece, in the order of the book's own numbers. */
function citing({ listed }: Cabinet, id: string): readonly Citing[] {
  return byWork(listed).get(id) ?? [];
}

const byWork = onceFor((listed: readonly PublicPiece[]): ReadonlyMap<string, readonly Citing[]> => {
  const all = listed.flatMap((piece) => piece.references.map((reference) => ({ piece, reference })));
  return filedUnder(
    all.toSorted((a, b) => compareReferences(a.reference, b.reference)),
    ({ reference }) => [reference.work],
  );
});

/** The pieces whose stories cite a work by its author and year. */
const citedInTexts = onceFor(({ listed, lists }: Cabinet): ReadonlyMap<string, readonly PublicPiece[]> => {
  const works = Object.values(lists.works);
  return filedUnder(listed, ({ story }) => [
    ...new Set(textCitations(story).flatMap((one) => workCited(one, works)?.id ?? [])),
  ]);
});

function citedPiece({ piece, reference }: Citing): CitedPiece {
  const number = ticketWords.unsure(formatReference(reference, ''), piece.sure.references);
  return { href: urls.piece(piece.id), name: piece.title, number };
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

const PARTICLES = /^(?:van|von|de|du|della|di|le|la|ter|ten)$/i;
/** Words of a body that publishes: it is filed as it is written, and not under its last word. */
const BODY = /\b(?:of|on|for|scheme|forum|museum|society|trust|office|institute|university|library|council)\b/i;

/** The first author's family name, then the year; a body as it is written, and a book without an author by its title. */
export function sortedUnder({ author, year, title }: Work['fields']): string {
  const first = author
    ?.replace(/\s*\(.*?\)/g, '')
    .split(/,| and | with | & /)[0]
    ?.trim();
  const names = first === undefined || BODY.test(first) ? [] : first.split(' ');
  const from = names.findIndex((name, at) => at === names.length - 1 || (at > 0 && PARTICLES.test(name)));
  const filed = names.length === 0 ? (first ?? title) : names.slice(from).join(' ');
  return `${filed.toLowerCase()} ${year ?? ''} ${title}`;
}
