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
import type { CaseFromAbove } from '../exhibit/case-from-above.ts';
import { caseFromAbove } from '../exhibit/case-from-above.ts';
import { sharingPictureSays } from '../exhibit/sharing-picture.ts';
import type { ShownExhibit } from '../exhibit/shown-exhibit.ts';
import { piecesShown, shownExhibit } from '../exhibit/shown-exhibit.ts';
import { setCase } from '../exhibit/typeset-case.ts';
import { firstSentence } from '../shared/first-sentence.ts';
import { linkedHomeOf } from '../open-data/linked-lists.ts';
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
    readonly href: string;
    /** The way on from the case shown here to the whole. */
    readonly onward: string;
    readonly figure: CaseFromAbove;
  } | null;
  readonly sets: readonly SetLine[];
  /** The newest pieces that are kept and photographed. */
  readonly newest: Board;
};

const NEWEST = 12;
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
      linked: linkedHomeOf(house),
      ...(about === null ? {} : { description: about.first }),
      ...sharedBy(house, exhibit),
    },
    about,
    all: homeWords.all(countWords.pieces(house.listed.length)),
    onShow: exhibit === null ? null : onShowOf(house, exhibit),
    sets: setStatesOf(house).map(setLineOf),
    newest: await newestOf(house),
  };
}

/** The exhibit marked as on show, or the first. */
function exhibitOnShow(house: Cabinet): ShownExhibit | null {
  const { exhibits } = house.lists;
  const exhibit = exhibits.find(({ fields }) => fields['on-show'] === 'yes') ?? exhibits[0];
  return exhibit === undefined ? null : shownExhibit(house, exhibit);
}

/** The first case of the exhibit. */
function onShowOf(house: Cabinet, exhibit: ShownExhibit): HomePage['onShow'] {
  const { id, title, cases, label } = exhibit;
  const [first] = cases;
  if (first === undefined) return null;
  return {
    title: tied(title),
    href: urls.exhibit(id),
    onward: homeWords.onward(piecesShown(exhibit).length, cases.length),
    figure: caseFromAbove(setCase(first, label), house.photographs),
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
