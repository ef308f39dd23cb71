import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { countWords } from '../../words/counts.ts';
import { setsWords } from '../../words/sets.ts';
import type { PageHead } from '../shared/head.ts';
import { placesShown, tallyInWords } from './place-shown.ts';
import type { PlaceShown } from './place-shown.ts';
import { setStatesOf } from './set-states-of.ts';

/** A set in a line or two, with all its places drawn small. */
export type SetSummary = {
  readonly href: string;
  readonly title: string;
  readonly count: string;
  readonly tally: string;
  readonly rule: string | null;
  readonly places: readonly PlaceShown[];
  readonly wanted: string;
};

export type SetsPage = { readonly head: PageHead; readonly sets: readonly SetSummary[] };

export function setsPage(cabinet: Cabinet): SetsPage {
  const { title, description } = setsWords;
  return {
    head: { title, description, here: urls.sets(), trail: [] },
    sets: setSummaries(cabinet),
  };
}

/** Every set of the cabinet, in the order of its files. */
export function setSummaries(cabinet: Cabinet): readonly SetSummary[] {
  return setStatesOf(cabinet).map((state) => ({
    href: urls.set(state.id),
    title: state.title,
    count: countWords.filled(state.filled, state.of),
    tally: tallyInWords(state),
    rule: cabinet.lists.sets.find(({ id }) => id === state.id)?.fields.rule ?? null,
    places: placesShown(cabinet, state),
    wanted: urls.wanted(state.id),
  }));
}
