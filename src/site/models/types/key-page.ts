import type { Character, Shown } from '../../../core/types/key/character.ts';
import { NOT_KNOWN } from '../../../core/types/series.ts';
import type { SeriesType } from '../../../core/types/series.ts';
import type { PlaceOnFace } from '../../../catalogue/schema/series.ts';
import { rarityPrior } from '../../../core/types/key/identify.ts';
import { raritiesKnown } from '../../../catalogue/types/read-rarities.ts';
import type { TypeSeries } from '../../../catalogue/types/series.ts';
import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { keyWords } from '../../words/key.ts';
import { typesWords } from '../../words/types.ts';
import type { PageHead } from '../shared/head.ts';
import { cutPage } from '../shared/pager.ts';
import type { Pager } from '../shared/pager.ts';
import type { Link } from '../sets/place-shown.ts';
import { drawingOf, everyDrawing, symbolsOf } from './drawings.ts';
import type { DrawnSymbol } from './drawings.ts';
import { drawingsOf } from './marks.ts';
import { keyCoin } from './key-coin.ts';
import type { KeyCoin } from './key-coin.ts';
import { wellRows } from './type-wells.ts';
import type { WellRow } from './type-wells.ts';
import {
  describedIds,
  foundSeries,
  leafIds,
  pagedPaths,
  seriesTrail,
  seriesWithKey,
  titleOfPage,
} from './types-page.ts';

/** What the key in the browser works on: `data/types/<series>.json`. */
export type KeyFile = {
  /** How common each type is, by published rarity, in their order; null where nothing tells. */
  readonly prior: readonly number[] | null;
  readonly characters: readonly (Character & {
    readonly look: string | null;
    /** On which face it is, and where on it, where a photograph can show it. */
    readonly face: 'obverse' | 'reverse' | 'edge' | null;
    readonly at: PlaceOnFace | null;
    /** The question as one would ask it aloud; null where its label is all there is. */
    readonly ask: string | null;
    /** The drawings on the page, by the state each shows. */
    readonly drawn: Readonly<Record<string, string>>;
  })[];
  /** The types that have others under them. */
  readonly broader: readonly {
    readonly id: string;
    readonly label: string;
    readonly href: string;
    readonly under?: string;
  }[];
  readonly types: readonly {
    readonly id: string;
    readonly label: string;
    readonly href: string;
    /** The type it lies under, one of `broader`; left out where it lies under none. */
    readonly under?: string;
    /** What it shows of each character, as a cell of types.csv has it. */
    readonly shown: readonly string[];
    /** Whether it is only there to be led to; left out of most. */
    readonly outside?: true;
  }[];
};

export type KeyPage = {
  readonly head: PageHead;
  /** What the questions work on; null on the further pages of the table. */
  readonly data: string | null;
  /** Whether published rarities can be taken into account. */
  readonly hasRarity: boolean;
  readonly characters: readonly { readonly label: string; readonly look: string | null }[];
  readonly rows: readonly {
    readonly type: Link;
    readonly cells: readonly { readonly text: string; readonly drawings: readonly string[] }[];
  }[];
  /** What to make sure of before any question; null where the series says nothing. */
  readonly first: string | null;
  readonly title: string;
  readonly series: string;
  /** A piece of the series on which one sees where to look; null where no mark has a place, or no piece a whole photograph. */
  readonly coin: KeyCoin | null;
  /** The types as wells that empty as answers are given; none on further pages, or where there are too many. */
  readonly board: readonly WellRow[];
  readonly outside: readonly (Link & { readonly id: string })[];
  readonly symbols: readonly DrawnSymbol[];
  readonly drawnSo: string | null;
  readonly pager: Pager | null;
};

/** Types that lie as wells on one board. */
const ON_A_BOARD = 200;
/** Types in the table of one page. */
const ON_A_PAGE = 100;

export function keyPaths(cabinet: Cabinet) {
  return pagedPaths(seriesWithKey(cabinet), (id) => leafIds(foundSeries(cabinet, id)).length, ON_A_PAGE);
}

export function keyFile(cabinet: Cabinet, id: string): KeyFile {
  const series = foundSeries(cabinet, id);
  const named = ({ id: type, label, broader }: Pick<SeriesType, 'id' | 'label' | 'broader'>) => ({
    id: type,
    label,
    href: urls.type(id, type),
    ...(broader === null ? {} : { under: broader }),
  });
  return {
    prior: priorOf(series),
    characters: series.characters.map((character, at) => ({
      ...character,
      look: series.fields.characters[at]?.look ?? null,
      ask: series.fields.characters[at]?.ask ?? null,
      face: series.fields.characters[at]?.on ?? null,
      at: series.fields.characters[at]?.at ?? null,
      drawn: drawnStates(series, character),
    })),
    broader: [...series.types.values()].filter(({ narrower }) => narrower.length > 0).map((type) => named(type)),
    types: leafIds(series).map((type) => ({
      ...named(series.types.get(type) ?? { id: type, label: type, broader: null }),
      shown: series.characters.map(
        ({ id: character }) => series.types.get(type)?.says.get(character.toLowerCase())?.text ?? NOT_KNOWN,
      ),
      ...(series.fields.outside.includes(type) ? { outside: true } : {}),
    })),
  };
}

function drawnStates(series: TypeSeries, { id, states }: Character): Readonly<Record<string, string>> {
  return Object.fromEntries(
    states.flatMap((state) => {
      const drawing = drawingOf(series, id, state.id);
      return drawing === null ? [] : [[state.id, drawing]];
    }),
  );
}

export function keyPage(cabinet: Cabinet, id: string, page: number): KeyPage {
  const series = foundSeries(cabinet, id);
  const leaves = leafIds(series);
  const { shown, pager } = cutPage(leaves, page, ON_A_PAGE, (at) => urls.typeKey(id, at));
  const shownAt = (type: string, at: number): Shown => series.shown.get(type)?.[at] ?? { shows: 'unknown' };
  // What is not known is left blank: told in every second cell, it would drown what is.
  const cell = (type: string, at: number): string => {
    const [character, shown] = [series.characters[at], shownAt(type, at)];
    return character === undefined || shown.shows === 'unknown' ? '' : typesWords.shown(shown, character);
  };
  const drawings = (type: string, at: number): readonly string[] => {
    const character = series.characters[at];
    return character === undefined ? [] : drawingsOf(series, character, shownAt(type, at));
  };
  const described = describedIds(series);
  const board = page === 1 && described.length <= ON_A_BOARD ? wellRows(cabinet, series, described) : [];
  const characters = series.characters.map(({ label }, at) => {
    const says = new Set(leaves.map((type) => cell(type, at)));
    return { at, label, look: series.fields.characters[at]?.look ?? null, tells: leaves.length < 2 || says.size > 1 };
  });
  // What all types show alike identifies none.
  const columns = characters.filter(({ tells }) => tells);
  return {
    head: {
      title: titleOfPage(`${keyWords.title} · ${series.fields.title}`, page),
      here: urls.typeKey(id, page),
      trail: seriesTrail(series, true) ?? [],
    },
    data: page === 1 ? urls.seriesJson(id) : null,
    hasRarity: priorOf(series) !== null,
    characters: columns.map(({ label, look }) => ({ label, look })),
    rows: shown.map((type) => ({
      type: { href: urls.type(id, type), name: series.types.get(type)?.label ?? type },
      cells: columns.map(({ at }) => ({ text: cell(type, at), drawings: drawings(type, at) })),
    })),
    pager,
    first: series.fields.first ?? null,
    title: titleOfPage(keyWords.title, page),
    series: series.fields.title,
    coin: page === 1 ? keyCoin(cabinet, series) : null,
    board,
    outside: series.fields.outside.map((type) => ({
      id: type,
      href: urls.type(id, type),
      name: series.types.get(type)?.label ?? type,
    })),
    symbols: symbolsOf(series, everyDrawing(series)),
    drawnSo: series.fields.drawings ?? null,
  };
}

function priorOf(series: TypeSeries): readonly number[] | null {
  return rarityPrior(leafIds(series).map((type) => raritiesKnown(series.rarities.get(type))));
}
