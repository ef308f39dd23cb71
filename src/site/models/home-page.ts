import type { SetState } from '../../core/sets/set-state.ts';
import { loadCabinet } from '../cabinet.ts';
import type { Cabinet } from '../cabinet.ts';
import { urls } from '../urls.ts';
import { countWords } from '../words/counts.ts';
import { homeWords } from '../words/home.ts';
import type { Board } from './board.ts';
import { boardOf } from './board.ts';
import type { PageHead } from './head.ts';
import { setStatesOf } from './set-states-of.ts';

export type SetLine = {
  readonly href: string;
  readonly title: string;
  readonly count: string;
  readonly wanted: string;
};

export type HomePage = {
  readonly head: PageHead;
  readonly about: string | null;
  readonly all: string;
  readonly onShow: {
    readonly title: string;
    readonly scope: string | null;
    readonly href: string;
    readonly board: Board;
  } | null;
  readonly sets: readonly SetLine[];
  readonly newest: Board;
};

const SHOWN = 9;
const NEWEST = 8;
const WANTED = 4;

export async function homePageOf(): Promise<HomePage> {
  const house = await loadCabinet();
  const { cabinet } = house.lists;
  return {
    head: {
      title: cabinet.title,
      here: urls.home(),
      ...(cabinet.about === undefined ? {} : { description: cabinet.about }),
    },
    about: cabinet.about ?? null,
    all: homeWords.all(countWords.pieces(house.listed.length)),
    onShow: await onShowOf(house),
    sets: setStatesOf(house).map(setLineOf),
    newest: await boardOf(house.listed.slice(-NEWEST).toReversed()),
  };
}

/** The exhibit marked as on show, or the first; with its first pieces. */
async function onShowOf({ lists, listed }: Cabinet): Promise<HomePage['onShow']> {
  const exhibit = lists.exhibits.find(({ fields }) => fields['on-show'] === 'yes') ?? lists.exhibits[0];
  if (exhibit === undefined) return null;
  const { title, scope, cases } = exhibit.fields;
  const shown = new Set(
    cases.flatMap(({ groups }) => groups.flatMap(({ pieces }) => pieces.map(({ piece }) => piece))),
  );
  const pieces = [...shown].flatMap((id) => listed.filter((piece) => piece.id === id)).slice(0, SHOWN);
  return { title, scope: scope ?? null, href: urls.exhibit(exhibit.id), board: await boardOf(pieces) };
}

function wholeInWords(filled: SetState['filled'], of: number): string {
  return filled.low === of ? homeWords.complete : homeWords.doubtful(of - filled.low);
}

function setLineOf({ id, title, filled, of, wanted }: SetState): SetLine {
  const empty = wanted.filter(({ why }) => why === 'empty').map(({ label }) => label);
  return {
    href: urls.set(id),
    title,
    count: countWords.filled(filled, of),
    wanted:
      empty.length > 0 ? homeWords.wanted(empty.slice(0, WANTED), empty.length - WANTED) : wholeInWords(filled, of),
  };
}
