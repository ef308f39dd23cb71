import { isScaleId, SCALES } from '../../../core/grade/scales.ts';
import type { PlaceState, SetState } from '../../../core/sets/set-state.ts';
import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { countWords } from '../../words/counts.ts';
import { tied } from '../../words/no-break.ts';
import { keyWords } from '../../words/key.ts';
import { setsWords } from '../../words/sets.ts';
import { keyedPaths } from '../../keyed.ts';
import { gather } from '../shared/gather.ts';
import { cutPage, furtherPages } from '../shared/pager.ts';
import type { Pager } from '../shared/pager.ts';
import { citationOf } from '../shared/citation.ts';
import type { Citation } from '../shared/citation.ts';
import { linkedSetOf } from '../open-data/linked-lists.ts';
import { linkedHead } from '../shared/head.ts';
import type { PageHead } from '../shared/head.ts';
import { gridShown } from './set-grid.ts';
import type { GridShown } from './set-grid.ts';
import { pieceLink, placesShown, tallyInWords, tallyOf } from './place-shown.ts';
import type { Link, PlaceShown } from './place-shown.ts';
import { setHistory } from './set-history.ts';
import type { History } from './set-history.ts';
import { setOnBoard, setPictureSays } from './set-picture.ts';
import { setStatesOf } from './set-states-of.ts';

/** Pieces of which the same is to be said; of upgrades, for which place and instead of which piece. */
export type Told = {
  readonly pieces: readonly Link[];
  /** How many pieces more there are. */
  readonly more: number;
  readonly because: string;
  readonly place?: string;
  readonly insteadOf?: Link;
};

/** The first of what is told, and how much more there is. */
export type ToldList = { readonly said: readonly Told[]; readonly more: number };

/** Upgrades made, or open. */
export type UpgradeGroup = ToldList & { readonly lead: string };

export type SetPage = {
  readonly head: PageHead;
  readonly id: string;
  readonly title: string;
  /** How many places it has, and how they stand. */
  readonly says: string;
  readonly rule: string | null;
  readonly note: string | null;
  readonly aim: string | null;
  readonly sources: readonly (Link & { readonly pages: string | null })[];
  /** The first page of its places. */
  readonly places: readonly PlaceShown[];
  readonly pager: Pager | null;
  readonly grid: GridShown | null;
  /** Where a piece like most of these is identified; null where none of their series has a key. */
  readonly identify: Link | null;
  readonly upgrades: readonly UpgradeGroup[];
  readonly spares: ToldList;
  readonly leftOut: ToldList;
  /** The names of the empty places; of those with a piece that is to be bettered. */
  readonly wanted: readonly string[];
  readonly toBetter: readonly string[];
  /** The marks that occur here, with what each means. */
  readonly marks: readonly { readonly state: PlaceState['state']; readonly mark: string; readonly says: string }[];
  readonly history: History | null;
  readonly cite: Citation;
};

/** A page of the places of a set that are more than its own page holds. */
export type PlacesPage = {
  readonly head: PageHead;
  readonly title: string;
  readonly says: string;
  readonly places: readonly PlaceShown[];
  readonly pager: Pager | null;
};

/** A set of five hundred places would be a page of a megabyte. */
const ON_A_PAGE = 120;
/** Pieces of which the same is said: so many are named, and the set's file of data names all. */
const MOST_TOLD = 60;
const MOST_LINES = 40;

/** Every set by its id, for the addresses of its pages. */
export function setIds(cabinet: Cabinet): readonly string[] {
  return cabinet.lists.sets.map(({ id }) => id);
}

/** The further pages of the places of long sets. */
export const placesPaths = keyedPaths(
  (cabinet) =>
    setStatesOf(cabinet).flatMap(({ id, places }) =>
      furtherPages(places.length, ON_A_PAGE).map((page) => ({ id, page: String(page) })),
    ),
  (cabinet, { id, page }) => placesPage(cabinet, id, Number(page)),
);

export function placesPage(cabinet: Cabinet, id: string, page: number): PlacesPage {
  const { state } = foundSet(cabinet, id);
  const { shown, pager } = placesOn(cabinet, state, page);
  const title = setsWords.placesOf(state.title, page);
  const from = (page - 1) * ON_A_PAGE + 1;
  return {
    head: {
      title,
      description: title,
      here: urls.set(id, page),
      trail: [
        { name: setsWords.title, href: urls.sets() },
        { name: state.title, href: urls.set(id) },
      ],
    },
    title,
    says: setsWords.placesFrom(from, from + shown.length - 1, state.places.length),
    places: shown,
    pager,
  };
}

function placesOn(
  cabinet: Cabinet,
  state: SetState,
  page: number,
): { readonly shown: readonly PlaceShown[]; readonly pager: Pager | null } {
  const { pager } = cutPage(state.places, page, ON_A_PAGE, (one) => urls.set(state.id, one));
  return { shown: placesShown(cabinet, state, (page - 1) * ON_A_PAGE, page * ON_A_PAGE), pager };
}

export function setPage(cabinet: Cabinet, id: string): SetPage {
  const { state, fields } = foundSet(cabinet, id);
  const upgrades = (made: boolean): readonly Told[] =>
    gather(
      state.upgrades.filter((one) => one.made === made),
      ({ place, certain, from, because }) => JSON.stringify([place, certain, from, because]),
    ).flatMap(({ all }) =>
      all.slice(0, 1).map(({ place, certain, from, because }) => ({
        place: setsWords.upgrade(state.places.find(({ id }) => id === place)?.label ?? place, certain),
        pieces: all.slice(0, MOST_TOLD).map(({ to }) => pieceLink(cabinet, to)),
        more: Math.max(0, all.length - MOST_TOLD),
        insteadOf: pieceLink(cabinet, from),
        because,
      })),
    );
  const places = placesOn(cabinet, state, 1);
  const pictureSays = setPictureSays(setOnBoard(cabinet, id));
  return {
    head: {
      ...(pictureSays === null ? {} : { picture: urls.setPicture(id), pictureSays }),
      title: state.title,
      description: `${countWords.filled(state.filled, state.of)}: ${tallyInWords(state)}.`,
      here: urls.set(id),
      ...linkedHead(linkedSetOf(cabinet, id)),
      trail: [{ name: setsWords.title, href: urls.sets() }],
    },
    id,
    title: state.title,
    says: placesSay(state),
    rule: printed(fields.rule),
    note: printed(fields.note),
    aim: aimInWords(fields.aim, fields['aim-scale']),
    sources: fields.source.map(({ work, pages }) => ({
      href: urls.work(work),
      name: citedAs(cabinet, work),
      pages: pages ?? null,
    })),
    places: places.shown,
    pager: places.pager,
    grid: gridShown(cabinet, id),
    identify: identifyIn(cabinet, state),
    upgrades: [
      { lead: setsWords.upgradesMade, ...firstOf(upgrades(true)) },
      { lead: setsWords.upgradesOpen, ...firstOf(upgrades(false)) },
    ].filter(({ said }) => said.length > 0),
    spares: firstOf(told(cabinet, state.spares)),
    leftOut: firstOf(told(cabinet, state.leftOut)),
    wanted: state.wanted.flatMap(({ label, why }) => (why === 'empty' ? [label] : [])),
    toBetter: state.wanted.flatMap(({ label, why }) => (why === 'empty' ? [] : [label])),
    marks: setsWords.marks.filter((mark) => state.places.some((place) => place.state === mark.state)),
    history: setHistory(state),
    cite: setCitation(cabinet, state),
  };
}

/** The key of the series that half of the set's pieces, or more, are of. */
function identifyIn({ listed }: Cabinet, { places }: SetState): Link | null {
  const ids = new Set(places.flatMap(({ piece }) => piece ?? []));
  const pieces = listed.filter(({ id }) => ids.has(id));
  const keys = pieces.flatMap(({ types }) => [...new Set(types.flatMap(({ series, hasKey }) => (hasKey === true ? [series] : [])))]); // prettier-ignore
  const series = keys.find((one) => keys.filter((other) => other === one).length * 2 >= pieces.length);
  return series === undefined ? null : { href: urls.typeKey(series), name: keyWords.title };
}

function printed(text: string | undefined): string | null {
  return text === undefined ? null : tied(text);
}

/** A set changes when its file does, and when one of its pieces does. */
function setCitation(cabinet: Cabinet, { id, title, places, spares }: SetState): Citation {
  const pieces = [...places.flatMap(({ piece }) => piece ?? []), ...spares.map(({ piece }) => piece)];
  const { keeper } = cabinet.lists.cabinet;
  return citationOf(
    { key: id, title, number: null, keeper, here: urls.set(id), shows: pieces.map(urls.piece) },
    cabinet,
  );
}

/** A set's file and how far it has come. The pages are made from the list of sets, so it is there. */
export function foundSet(
  cabinet: Cabinet,
  id: string,
): { state: SetState; fields: Cabinet['lists']['sets'][number]['fields'] } {
  const state = setStatesOf(cabinet).find((one) => one.id === id);
  const set = cabinet.lists.sets.find((one) => one.id === id);
  if (state === undefined || set === undefined) throw new Error(`There is no set ${id}.`);
  return { state, fields: set.fields };
}

/** How the places stand; where no arrangement has them all, how many another could have; and what is not counted. */
function placesSay({ filled: { high }, places, of, excused }: SetState): string {
  const counted = places.flatMap(({ state }) => (state === 'excused' ? [] : [state]));
  const shown = counted.filter((state) => state === 'filled' || state === 'possible').length;
  return [
    setsWords.placesSay(of, tallyOf(counted)),
    ...(shown < high ? [setsWords.countReaches(high)] : []),
    ...(excused > 0 ? [setsWords.countLeavesOut(excused)] : []),
  ].join(' ');
}

export function aimInWords(aim: string | undefined, scale = 'uk'): string | null {
  if (aim === undefined) return null;
  return setsWords.aim(aim, isScaleId(scale) ? SCALES[scale].title : scale);
}

function citedAs({ lists }: Cabinet, work: string): string {
  const fields = lists.works[work]?.fields;
  return fields?.short ?? fields?.title ?? work;
}

function firstOf(all: readonly Told[]): ToldList {
  return { said: all.slice(0, MOST_LINES), more: Math.max(0, all.length - MOST_LINES) };
}

/** Gathers what is said alike of several pieces, in the order of the first of each. */
function told(
  cabinet: Cabinet,
  said: readonly { readonly piece: string; readonly because: string }[],
): readonly Told[] {
  return gather(said, ({ because }) => because).map(({ key: because, all }) => ({
    because,
    pieces: all.slice(0, MOST_TOLD).map(({ piece }) => pieceLink(cabinet, piece)),
    more: Math.max(0, all.length - MOST_TOLD),
  }));
}
