import type { SetState } from '../../../core/sets/set-state.ts';
import type { Cabinet } from '../../cabinet.ts';
import { keyedPaths } from '../../keyed.ts';
import { urls } from '../../urls.ts';
import { setsWords } from '../../words/sets.ts';
import type { PageHead } from '../shared/head.ts';
import { cutPage, furtherPages } from '../shared/pager.ts';
import type { Pager } from '../shared/pager.ts';
import { drawnSmall, placesShown, tallyInWords } from './place-shown.ts';
import type { PlaceShown } from './place-shown.ts';
import { setStatesOf } from './set-states-of.ts';

/** A set in a line or two, with its first places drawn small. */
export type SetSummary = {
  readonly href: string;
  readonly title: string;
  readonly tally: string;
  readonly rule: string | null;
  readonly places: readonly PlaceShown[];
  /** How many places more it has. */
  readonly more: number;
  readonly wanted: string;
  /** Whether a place is empty. */
  readonly isWanting: boolean;
};

export type SetsPage = { readonly head: PageHead; readonly sets: readonly SetSummary[]; readonly pager: Pager | null };

/** Sets on a page, and places drawn of each. */
const ON_A_PAGE = 30;
const DRAWN = 72;

/** The pages of the list of sets after the first. */
export const furtherSetsPaths = keyedPaths(
  ({ lists }) => furtherPages(lists.sets.length, ON_A_PAGE).map((page) => ({ page: String(page) })),
  (cabinet, { page }) => setsPage(cabinet, Number(page)),
);

export function setsPage(cabinet: Cabinet, page = 1): SetsPage {
  const { description } = setsWords;
  const { shown, pager } = cutPage(setStatesOf(cabinet), page, ON_A_PAGE, urls.sets);
  const title = page === 1 ? setsWords.title : setsWords.titleOfPage(page);
  return {
    head: { title, description, here: urls.sets(page), trail: [] },
    sets: shown.map((state) => summaryOf(cabinet, state)),
    pager,
  };
}

function summaryOf(cabinet: Cabinet, state: SetState): SetSummary {
  return {
    href: urls.set(state.id),
    title: state.title,
    tally: setsWords.placesSay(state.of, tallyInWords(state)),
    rule: cabinet.lists.sets.find(({ id }) => id === state.id)?.fields.rule ?? null,
    places: drawnSmall(placesShown(cabinet, state, 0, DRAWN)),
    more: Math.max(0, state.places.length - DRAWN),
    wanted: urls.wanted(state.id),
    isWanting: state.wanted.some(({ why }) => why === 'empty'),
  };
}
