import { usually } from './character.ts';
import type { Shown } from './character.ts';
import { mayAgree, sameShown } from './separations.ts';

/** A mark by which a type is known: its place among the characters, and the states that few other types have (none: all it shows). */
export type TellingMark = { readonly at: number; readonly rare: readonly string[] };

/** A mark that no more than this share of the types can show is one by which a type is known. */
const FEW = 0.4;
/** Where none is so rare, the rarest of them; and no more than it takes, once there are so many. */
const AT_LEAST = 2;
const ENOUGH = 4;
/** A state that no more than this share of the types usually show tells a type that may have it, though others may lack it too. */
const RARE = 0.15;
/** Among more states than this no single one is worth naming. */
const FEW_STATES = 3;

/** The cells of one character that are unlike each other, how many leaves have each, and which of them may agree. */
type Column = {
  readonly shown: readonly Shown[];
  /** By leaf: its place in `shown`. */
  readonly of: readonly number[];
  readonly count: readonly number[];
  /** The share of the leaves that usually show a state. */
  readonly having: ReadonlyMap<string, number>;
};

/** What the leaves of a series show, made ready once; leaves and characters in their order. */
export type ShownByAll = { readonly columns: readonly Column[]; readonly leaves: number };

export function shownByAll(leaves: readonly (readonly Shown[])[], characters: number): ShownByAll {
  return {
    leaves: leaves.length,
    columns: Array.from({ length: characters }, (_, at) =>
      columnOf(leaves.map((shown) => shown[at] ?? { shows: 'unknown' })),
    ),
  };
}

function columnOf(cells: readonly Shown[]): Column {
  const places = new Map<string, number>();
  const [shown, of, count]: [Shown[], number[], number[]] = [[], [], []];
  const having = new Map<string, number>();
  for (const cell of cells) {
    const name = sameShown(cell);
    const place = places.get(name) ?? shown.push(cell) - 1;
    places.set(name, place);
    of.push(place);
    count[place] = (count[place] ?? 0) + 1;
    for (const state of statesOf(usually(cell))) having.set(state, (having.get(state) ?? 0) + 1 / cells.length);
  }
  return { shown, of, count, having };
}

function statesOf(shown: Shown): readonly string[] {
  return shown.shows === 'states' ? shown.states : [];
}

/** Which of the cells of a column a type can have: told by what most of its specimens show. */
function agreeing({ shown }: Column, own: Shown): readonly boolean[] {
  return shown.map((cell) => mayAgree(usually(cell), usually(own)));
}

/**
 * The marks by which a type is known, the most telling first: those that few types can show; those of which it may have a state
 * that few have; and whatever else it takes until they together separate it from each other leaf that any mark separates it from.
 * Of leaves that no mark always separates, one in which they differ at all. `isBelow`: the leaf is the type itself or under it.
 */
export function tellingMarks(
  { columns, leaves }: ShownByAll,
  own: readonly Shown[],
  isBelow: (leaf: number) => boolean,
): readonly TellingMark[] {
  const marks = columns.flatMap((column, at) => {
    const shown = own[at] ?? { shows: 'unknown' as const };
    if (shown.shows === 'unknown') return [];
    const agrees = agreeing(column, shown);
    const alike = column.count.reduce((sum, count, place) => sum + (agrees[place] === true ? count : 0), 0) / Math.max(1, leaves);
    const rare = rareStates(column, shown);
    // A state that it shows in one specimen of two tells half as much.
    const rarest = Math.min(1, ...rare.map((state) => (column.having.get(state) ?? 1) * statesOf(usually(shown)).length));
    return [{ at, rare, agrees, alike, strength: Math.min(alike, rarest), same: sameShown(shown) }];
  }); // prettier-ignore
  const ordered = marks.toSorted((one, other) => one.strength - other.strength);
  const cellOf = (leaf: number, at: number): number => columns[at]?.of[leaf] ?? 0;
  const separates = ({ at, agrees }: (typeof marks)[number], leaf: number): boolean =>
    agrees[cellOf(leaf, at)] !== true;
  const differs = ({ at, same }: (typeof marks)[number], leaf: number): boolean => {
    const cell = columns[at]?.shown[cellOf(leaf, at)];
    return cell !== undefined && sameShown(cell) !== same;
  };
  const others = Array.from({ length: leaves }, (_, leaf) => leaf).filter((leaf) => !isBelow(leaf));
  const chosen = ordered
    .filter(({ strength }, place) => strength < 1 && (strength <= FEW || place < AT_LEAST))
    .slice(0, ENOUGH);
  for (const parts of [separates, differs]) {
    let open = others.filter((leaf) => !chosen.some((mark) => parts(mark, leaf)));
    while (open.length > 0) {
      const left = open;
      const worth = (mark: (typeof marks)[number]): number => left.filter((leaf) => parts(mark, leaf)).length;
      const [best] = ordered
        .filter((mark) => !chosen.includes(mark))
        .map((mark) => ({ mark, parted: worth(mark) }))
        .toSorted((one, other) => other.parted - one.parted);
      if (best === undefined || best.parted === 0) break;
      chosen.push(best.mark);
      open = open.filter((leaf) => !parts(best.mark, leaf));
    }
  }
  return chosen.map(({ at, rare }) => ({ at, rare }));
}

/** The states that a type usually has next to common ones, and that few types have. */
function rareStates({ having }: Column, shown: Shown): readonly string[] {
  const states = statesOf(usually(shown));
  const rare = states.filter((state) => (having.get(state) ?? 1) <= RARE);
  return states.length > FEW_STATES || rare.length === states.length ? [] : rare;
}
