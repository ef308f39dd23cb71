import { loadCabinet } from '../../cabinet.ts';
import type { Cabinet } from '../../cabinet.ts';
import type { FacetName } from '../../find/record.ts';
import { FACETS } from '../../find/record.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import { keyedPaths } from '../../keyed.ts';
import { onceFor } from '../../once-for.ts';
import { urls } from '../../urls.ts';
import { countWords } from '../../words/counts.ts';
import { findWords } from '../../words/find.ts';
import { rulersWords } from '../../words/rulers.ts';
import { tallyOfMint } from '../mints/mints-page.ts';
import { piecesOfRuler, tallyOfRuler } from '../rulers/pieces-of-ruler.ts';
import { digestedOnce } from '../../digest.ts';
import { boardOf } from '../shared/board.ts';
import type { Board, LaidPiece } from '../shared/board.ts';
import { facetLists } from './facets.ts';
import type { FacetList } from './facets.ts';
import type { PageHead } from '../shared/head.ts';
import type { Link } from '../sets/place-shown.ts';
import { cutPage, furtherPages } from '../shared/pager.ts';
import type { Pager } from '../shared/pager.ts';

/** How many pieces lie on one page. */
const ON_A_PAGE = 48;

/** A value that can be chosen, and the list that needs no script. */
export type FacetChoice = {
  readonly value: string;
  readonly label: string;
  readonly count: number;
  readonly to: string;
  /** A grade that speaks of wear alone, beside a problem. */
  readonly isDetails: boolean;
};
export type FacetGroup = { readonly name: string | null; readonly choices: readonly FacetChoice[] };
export type Facet = { readonly name: FacetName; readonly groups: readonly FacetGroup[] };

export type FindPage = {
  readonly head: PageHead;
  /** What the list holds: `75 pieces`, `page 2 of 3`. */
  readonly says: string;
  /** Of the whole list: how many are kept, lent, sold; null where all are kept. */
  readonly statuses: string | null;
  readonly all: number;
  readonly board: Board;
  /** Of the pieces of a ruler or a mint: the page that tells of it. */
  readonly tells: Link | null;
  readonly pager: Pager | null;
  /** Null on the further pages and on the lists of a facet, which are plain. */
  readonly finder: { readonly facets: readonly Facet[]; readonly records: string; readonly texts: string } | null;
};

type Cut = { readonly pieces: readonly PublicPiece[]; readonly page: number; readonly to: (page: number) => string };

/** One path for every page after the first of the complete list. */
export const listPaths = keyedPaths(
  ({ listed }) => furtherPages(listed.length, ON_A_PAGE).map((page) => ({ page: String(page) })),
  (_, { page }) => findPageOf(Number(page)),
);

/** One path for every page of the list of every value of every facet. */
export const facetPaths = keyedPaths(
  (cabinet) =>
    facetLists(cabinet).flatMap(({ facet, value, pieces }) =>
      [1, ...furtherPages(pieces.length, ON_A_PAGE)].map((page) => ({
        facet,
        value,
        page: page === 1 ? undefined : String(page),
      })),
    ),
  (cabinet, { facet, value, page = '1' }) => facetPageOf(listNamed(cabinet, facet, value), Number(page)),
);

function listNamed(cabinet: Cabinet, facet: string, value: string): FacetList {
  const list = listsByName(cabinet).get(`${facet} ${value}`);
  if (list === undefined) throw new Error(`There is no list of ${facet} ${value}.`);
  return list;
}

const listsByName = onceFor(
  (cabinet: Cabinet) => new Map(facetLists(cabinet).map((list) => [`${list.facet} ${list.value}`, list])),
);

/** A page of the complete list, with everything to find by. */
export async function findPageOf(page: number): Promise<FindPage> {
  const cabinet = await loadCabinet();
  const laid = await cutOf({ pieces: cabinet.listed, page, to: urls.piecesPage });
  // The script may lay any piece of the cabinet on the first page.
  const { across } = page === 1 ? await boardOf(cabinet.listed) : laid.board;
  return {
    ...laid,
    board: { ...laid.board, across },
    head: {
      title: page === 1 ? findWords.title : findWords.titleOfPage(page),
      description: findWords.description,
      here: urls.piecesPage(page),
      ...(page === 1 ? {} : { trail: [{ name: findWords.title, href: urls.pieces() }] }),
    },
    tells: null,
    finder: page === 1 ? { facets: facetsFor(cabinet), records: urls.searchJson(), texts: urls.searchTexts() } : null,
  };
}

/** A page of the list of one value of one facet. */
async function facetPageOf(list: FacetList, page: number): Promise<FindPage> {
  const { facet, value, label, group, pieces } = list;
  const laid = await cutOf({ pieces, page, to: (at) => urls.facet(facet, value, at) });
  const counted = countOf(await loadCabinet(), list);
  const title = findWords.by(facet, group === null ? label : `${label} (${group})`);
  return {
    ...laid,
    head: {
      title,
      description: findWords.byDescription(title, pieces.length),
      here: urls.facet(facet, value, page),
      trail: [{ name: findWords.title, href: urls.pieces() }],
    },
    says: counted === null ? laid.says : findWords.counted(laid.says, counted),
    tells: tellsOf(await loadCabinet(), list),
    finder: null,
  };
}

/** What a list comes to as the page of its ruler or its mint counts it; null where it is as many as it is long. */
function countOf(cabinet: Cabinet, { facet, value, pieces }: FacetList): string | null {
  const isListed =
    facet === 'ruler' ? cabinet.lists.rulers[value] : facet === 'mint' ? cabinet.lists.mints[value] : undefined;
  if (isListed === undefined) return null;
  const counted =
    facet === 'ruler'
      ? rulersWords.count(tallyOfRuler(piecesOfRuler(cabinet, value)))
      : countWords.tally(tallyOfMint(cabinet, value));
  return counted === countWords.pieces(pieces.length) ? null : counted;
}

function tellsOf({ lists }: Cabinet, { facet, value, label }: FacetList): Link | null {
  const name = findWords.tells(label);
  if (facet === 'ruler' && lists.rulers[value] !== undefined) return { href: urls.ruler(value), name };
  if (facet === 'mint' && lists.mints[value] !== undefined) return { href: urls.mint(value), name };
  return null;
}

async function cutOf({
  pieces,
  page,
  to,
}: Cut): Promise<Pick<FindPage, 'says' | 'statuses' | 'all' | 'board' | 'pager'>> {
  const { shown, count, pager } = cutPage(pieces, page, ON_A_PAGE, to);
  const counted = findWords.found(pieces.length, pieces.length);
  const board = await boardOf(shown, undefined, pieces);
  return {
    says: count === 1 ? counted : `${counted}, ${findWords.page(page, count)}`,
    statuses: statusesOf(pieces),
    all: pieces.length,
    board: { ...board, laid: board.laid.map(withNumber) },
    pager,
  };
}

/** Counted once for all pages of a list. */
const statusesOf = onceFor(countWords.byStatus);

/** A piece in a list in the order of the numbers: its own is told. */
const withNumber = onceFor((laid: LaidPiece): LaidPiece =>
  digestedOnce({ ...laid, line: findWords.numbered(laid.number, laid.line) }),
);

const facetsFor = onceFor((cabinet: Cabinet): readonly Facet[] => {
  const lists = facetLists(cabinet);
  return FACETS.map((name) => {
    const own = lists.filter(({ facet }) => facet === name);
    const groups = [...new Set(own.map(({ group }) => group))];
    return {
      name,
      groups: groups.map((group) => ({
        name: group,
        choices: own
          .filter((list) => list.group === group)
          .map(({ value, label, pieces, isDetails = false }) => ({
            value,
            label,
            count: pieces.length,
            to: urls.facet(name, value),
            isDetails,
          })),
      })),
    };
  }).filter(({ groups }) => groups.length > 0);
});
