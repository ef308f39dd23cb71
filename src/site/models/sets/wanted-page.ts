import type { PlaceState } from '../../../core/sets/set-state.ts';
import { listedPiece } from '../../cabinet.ts';
import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { setsWords } from '../../words/sets.ts';
import { gather } from '../shared/gather.ts';
import type { PageHead } from '../shared/head.ts';
import { pieceLink } from './place-shown.ts';
import type { Link } from './place-shown.ts';
import { aimInWords, foundSet } from './set-page.ts';

export type WantedGroup = {
  readonly title: string;
  /** How the places are marked. */
  readonly mark: PlaceState['state'];
  readonly rows: readonly {
    readonly label: string;
    readonly here: (Link & { readonly grade: string | null }) | null;
    /** What is said where nothing stands. */
    readonly none: string;
  }[];
};

/** What a set still wants, on paper: no prices, and nothing private. */
export type WantedPage = {
  readonly head: PageHead;
  readonly title: string;
  readonly keeper: string;
  readonly set: string;
  readonly rule: string | null;
  readonly aim: string | null;
  readonly groups: readonly WantedGroup[];
};

export function wantedPage(cabinet: Cabinet, id: string): WantedPage {
  const { state, fields } = foundSet(cabinet, id);
  const title = setsWords.wantedTitle(state.title);
  return {
    head: {
      title,
      description: setsWords.wantedDescription(state.title),
      here: urls.wanted(id),
      trail: [
        { name: setsWords.title, href: urls.sets() },
        { name: state.title, href: urls.set(id) },
      ],
    },
    title,
    keeper: setsWords.wantedKeeper(cabinet.lists.cabinet.keeper),
    set: urls.set(id),
    rule: fields.rule ?? null,
    aim: aimInWords(fields.aim, fields['aim-scale']),
    groups: gather(state.wanted, ({ why }) => why).map(({ key, all }) => ({
      title: setsWords.wantedWhy[key],
      mark: MARKS[key],
      rows: all.map(({ place, label }) => ({
        label,
        here: pieceIn(cabinet, state.places, place),
        none: noneIn(state.places, place),
      })),
    })),
  };
}

const MARKS = { empty: 'wanted', filler: 'filler', possible: 'possible', 'below the aim': 'filled' } as const;

/** An empty place may have a piece that would fit and is needed for another. */
function noneIn(
  places: readonly { readonly id: string; readonly others?: readonly string[] }[],
  place: string,
): string {
  const others = places.find((one) => one.id === place)?.others?.length ?? 0;
  return others === 0 ? setsWords.wantedNothing : setsWords.wantedElsewhere(others);
}

function pieceIn(
  cabinet: Cabinet,
  places: readonly { readonly id: string; readonly piece?: string }[],
  place: string,
): (Link & { readonly grade: string | null }) | null {
  const id = places.find((one) => one.id === place)?.piece;
  const piece = listedPiece(cabinet, id ?? '');
  return piece === undefined ? null : { ...pieceLink(cabinet, piece.id), grade: piece.grade?.text ?? null };
}
