import type { SetState } from '../../../core/sets/set-state.ts';
import { loadCabinet } from '../../cabinet.ts';
import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { countWords } from '../../words/counts.ts';
import { homeWords } from '../../words/home.ts';
import { tied } from '../../words/no-break.ts';
import type { Board } from '../shared/board.ts';
import { altOf } from '../shared/alt.ts';
import { boardOf } from '../shared/board.ts';
import { groupsInTurn, sharingPictureSays } from '../exhibit/sharing-picture.ts';
import type { ShownExhibit } from '../exhibit/shown-exhibit.ts';
import { piecesShown, shownExhibit } from '../exhibit/shown-exhibit.ts';
import { firstSentence } from '../shared/first-sentence.ts';
import type { PageHead } from '../shared/head.ts';
import { setStatesOf } from '../sets/set-states-of.ts';

export type SetLine = {
  readonly href: string;
  readonly title: string;
  readonly count: string;
  readonly wanted: string;
};

export type HomePage = {
  readonly head: PageHead;
  /** What the keeper says of the cabinet: its first sentence, and the rest. */
  readonly about: { readonly first: string; readonly rest: string } | null;
  readonly all: string;
  readonly onShow: {
    readonly title: string;
    readonly scope: string | null;
    readonly href: string;
    /** The way on from the pieces shown here to all of them. */
    readonly onward: string;
    readonly board: Board;
  } | null;
  readonly sets: readonly SetLine[];
  readonly newest: Board;
};

/** Two rows of a wide page. */
const SHOWN = 12;
const NEWEST = 8;
const WANTED = 4;

export async function homePageOf(): Promise<HomePage> {
  const house = await loadCabinet();
  const { cabinet } = house.lists;
  const exhibit = exhibitOnShow(house);
  const about = cabinet.about === undefined ? null : inTwo(cabinet.about);
  return {
    head: {
      title: cabinet.title,
      here: urls.home(),
      ...(about === null ? {} : { description: about.first }),
      ...sharedBy(house, exhibit),
    },
    about,
    all: homeWords.all(countWords.pieces(house.listed.length)),
    onShow: exhibit === null ? null : await onShowOf(house, exhibit),
    sets: setStatesOf(house).map(setLineOf),
    newest: await boardOf(house.listed.slice(-NEWEST).toReversed()),
  };
}

/** The exhibit marked as on show, or the first. */
function exhibitOnShow(house: Cabinet): ShownExhibit | null {
  const { exhibits } = house.lists;
  const exhibit = exhibits.find(({ fields }) => fields['on-show'] === 'yes') ?? exhibits[0];
  return exhibit === undefined ? null : shownExhibit(house, exhibit);
}

/** A few pieces of every group, in the order of the exhibit, and the first sentence of its statement. */
async function onShowOf({ listed }: Cabinet, exhibit: ShownExhibit): Promise<NonNullable<HomePage['onShow']>> {
  const { id, title, scope, cases } = exhibit;
  const all = piecesShown(exhibit);
  const inTurn = groupsInTurn(exhibit).filter(({ piece }) => listed.includes(piece));
  const first = new Set(inTurn.map(({ piece }) => piece).slice(0, SHOWN));
  return {
    title,
    scope: scope === null ? null : tied(firstSentence(scope)),
    href: urls.exhibit(id),
    onward: homeWords.onward(all.length, cases.length),
    board: await boardOf([...new Set(all.map(({ piece }) => piece))].filter((piece) => first.has(piece))),
  };
}

/** The picture the home page is shared by: that of the exhibit on show, else of the newest piece that has one. */
function sharedBy(house: Cabinet, exhibit: ShownExhibit | null): Pick<PageHead, 'picture' | 'pictureSays'> {
  const says = exhibit === null ? null : sharingPictureSays(exhibit, house);
  if (exhibit !== null && says !== null) return { picture: urls.exhibitPicture(exhibit.id), pictureSays: says };
  const newest = house.listed.findLast(({ id }) => house.photographs[id] !== undefined);
  const made = newest === undefined ? undefined : house.photographs[newest.id]?.[0];
  if (newest === undefined || made === undefined) return {};
  return { picture: urls.photograph(newest.id, made.jpeg.file), pictureSays: altOf(newest, made.face) };
}

function inTwo(text: string): { readonly first: string; readonly rest: string } {
  const first = firstSentence(text);
  return { first, rest: text.slice(first.length).trim() };
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
