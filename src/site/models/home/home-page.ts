import type { SetState } from '../../../core/sets/set-state.ts';
import { loadCabinet } from '../../cabinet.ts';
import { sharedFile } from '../../../photographs/cache/manifest.ts';
import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { countWords } from '../../words/counts.ts';
import { homeWords } from '../../words/home.ts';
import { tied } from '../../words/no-break.ts';
import type { Board } from '../shared/board.ts';
import { boardOf } from '../shared/board.ts';
import type { LaidOut } from '../exhibit/exhibit-page.ts';
import { laidOut } from '../exhibit/exhibit-page.ts';
import { groupsInTurn, sharingPictureSays } from '../exhibit/sharing-picture.ts';
import type { ShownExhibit, ShownPiece } from '../exhibit/shown-exhibit.ts';
import { piecesShown, shownExhibit } from '../exhibit/shown-exhibit.ts';
import { acrossClass } from '../shared/face.ts';
import { piecesInRow, ROOM } from '../shared/rows.ts';
import { exhibitWords } from '../../words/exhibits.ts';
import { firstSentence } from '../shared/first-sentence.ts';
import { linkedHomeOf } from '../open-data/linked-lists.ts';
import type { PageHead } from '../shared/head.ts';
import { someToDraw, tallyInWords } from '../sets/place-shown.ts';
import type { PlaceShown } from '../sets/place-shown.ts';
import { setsWords } from '../../words/sets.ts';
import { setStatesOf } from '../sets/set-states-of.ts';

export type SetLine = {
  readonly href: string;
  readonly title: string;
  readonly tally: string;
  /** The first of what is wanted; null where nothing is. */
  readonly wanted: string | null;
  /** Some of its pieces and of its slips, drawn small. */
  readonly places: readonly PlaceShown[];
};

export type HomePage = {
  readonly head: PageHead;
  /** What the keeper says of the cabinet: its first sentence, and the rest. */
  readonly about: { readonly first: string; readonly rest: string } | null;
  readonly all: string;
  readonly onShow: {
    readonly title: string;
    readonly href: string;
    /** How much there is of it: `37 pieces in 2 cases, some of them here`. */
    readonly extent: string;
    /** A dozen of its pieces, from every part of it, in its order; one face of each. */
    readonly pieces: readonly LaidOut[];
    readonly across: string;
    /** How many are in a row on a wide screen. */
    readonly inRow: number;
    readonly boardName: string;
  } | null;
  readonly sets: readonly SetLine[];
  /** The newest pieces that are kept and photographed. */
  readonly newest: Board;
};

const NEWEST = 12;
const ON_SHOW = 14;
const IN_ROW = 7;
const WANTED = 4;
const DRAWN = { pieces: 9, wanted: 4 };

export async function homePageOf(): Promise<HomePage> {
  const house = await loadCabinet();
  const { cabinet } = house.lists;
  const exhibit = exhibitOnShow(house);
  const about = cabinet.about === undefined ? null : inTwo(tied(cabinet.about));
  return {
    head: {
      title: cabinet.title,
      here: urls.home(),
      linked: linkedHomeOf(house),
      ...(cabinet.about === undefined ? {} : { description: inTwo(cabinet.about).first }),
      ...sharedBy(house, exhibit),
    },
    about,
    all: homeWords.all(countWords.pieces(house.listed.length)),
    onShow: exhibit === null ? null : onShowOf(house, exhibit),
    sets: setStatesOf(house).map((state) => setLineOf(house, state)),
    newest: await newestOf(house),
  };
}

/** The exhibit marked as on show, or the first. */
function exhibitOnShow(house: Cabinet): ShownExhibit | null {
  const { exhibits } = house.lists;
  const exhibit = exhibits.find(({ fields }) => fields['on-show'] === 'yes') ?? exhibits[0];
  return exhibit === undefined ? null : shownExhibit(house, exhibit);
}

/** The pieces of the exhibit that a visitor sees first. */
function onShowOf({ photographs }: Cabinet, exhibit: ShownExhibit): HomePage['onShow'] {
  const { id, title, cases } = exhibit;
  if (cases.length === 0) return null;
  const isPictured = ({ piece }: ShownPiece): boolean => photographs[piece.id] !== undefined;
  const chosen = groupsInTurn(exhibit).filter(isPictured).slice(0, ON_SHOW);
  const pieces = chosen
    .toSorted((a, b) => a.key - b.key)
    .map((shown) => laidOut({ ...shown, faces: shown.faces.slice(0, 1) }, photographs));
  const all = piecesShown(exhibit).length;
  return {
    title: tied(title),
    href: urls.exhibit(id),
    extent: homeWords.extent(all, cases.length, all > pieces.length),
    pieces,
    across: acrossClass(pieces.map(({ faces }) => faces)),
    inRow: piecesInRow(
      pieces.map(({ faces }) => faces),
      IN_ROW,
      ROOM.brief,
    ),
    boardName: exhibitWords.boardName(title),
  };
}

/** What is kept and photographed comes first; a cabinet without a photograph still shows what it has. */
async function newestOf({ listed, photographs }: Cabinet): Promise<Board> {
  const seen = listed.filter(({ id, status }) => status === 'kept' && photographs[id] !== undefined);
  return boardOf((seen.length > 0 ? seen : listed).slice(-NEWEST).toReversed());
}

/** The picture the home page is shared by: that of the exhibit on show, else of the newest piece that has one. */
function sharedBy(house: Cabinet, exhibit: ShownExhibit | null): Pick<PageHead, 'picture' | 'pictureSays'> {
  const says = exhibit === null ? null : sharingPictureSays(exhibit, house);
  if (exhibit !== null && says !== null) return { picture: urls.exhibitPicture(exhibit.id), pictureSays: says };
  const newest = house.listed.findLast(({ id }) => sharedFile(house.photographs[id] ?? []) !== null);
  const file = newest === undefined ? null : sharedFile(house.photographs[newest.id] ?? []);
  return newest === undefined || file === null
    ? {}
    : { picture: urls.photograph(newest.id, file), pictureSays: newest.title };
}

function inTwo(text: string): { readonly first: string; readonly rest: string } {
  const first = firstSentence(text);
  return { first, rest: text.slice(first.length).trim() };
}

function setLineOf(house: Cabinet, state: SetState): SetLine {
  const { id, title, wanted } = state;
  const empty = wanted.filter(({ why }) => why === 'empty').map(({ label }) => label);
  return {
    href: urls.set(id),
    title,
    tally: setsWords.placesSay(state.of, tallyInWords(state)),
    wanted: empty.length === 0 ? null : homeWords.wanted(empty.slice(0, WANTED), empty.length - WANTED),
    places: someToDraw(house, state, DRAWN),
  };
}
