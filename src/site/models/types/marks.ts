import type { TypeSeries } from '../../../catalogue/types/series.ts';
import { parseShown } from '../../../core/types/key/character.ts';
import type { Character, Shown } from '../../../core/types/key/character.ts';
import { mayAgree } from '../../../core/types/key/separations.ts';
import type { SeriesType } from '../../../core/types/series.ts';
import { onceFor } from '../../once-for.ts';
import { capital } from '../../words/capital.ts';
import { typesWords } from '../../words/types.ts';
import { drawingOf } from './drawings.ts';

/** A mark of a type: what it is, what it shows in words, and a drawing of each state that was drawn. */
export type MarkShown = {
  readonly character: string;
  readonly label: string;
  readonly says: string;
  readonly drawings: readonly string[];
};

/** The marks of a type: those by which it is known, the most telling first; the others; and the names of those not described. */
export type TypeMarks = {
  readonly telling: readonly MarkShown[];
  readonly common: readonly MarkShown[];
  readonly open: readonly string[];
};

/** A mark that no more than so many of the types can show is one by which a type is known. */
const FEW = 0.4;
/** Where none is so rare, the rarest of them. */
const AT_LEAST = 2;

/** What a type shows, ordered by how few types of its series can show the same. */
export function marksOf(series: TypeSeries, type: SeriesType): TypeMarks {
  const leaves = [...series.shown.values()];
  const told = series.characters.flatMap((character, at) => {
    const shown = shownOf(type, character);
    if (shown.shows === 'unknown') return [];
    const alike = leaves.filter((each) => mayAgree(each[at], shown)).length / Math.max(1, leaves.length);
    return [{ mark: markOf(series, character, shown), alike }];
  });
  const ordered = told.toSorted((one, other) => one.alike - other.alike);
  const rare = ordered.filter(({ alike }, at) => alike < 1 && (alike <= FEW || at < AT_LEAST)).map(({ mark }) => mark);
  const known = new Set(told.map(({ mark }) => mark.character));
  return {
    telling: rare,
    common: told.flatMap(({ mark }) => (rare.includes(mark) ? [] : [mark])),
    open: series.characters.flatMap(({ id, label }) => (known.has(id) ? [] : [label])),
  };
}

function shownOf(type: SeriesType, character: Character): Shown {
  const read = parseShown(type.says.get(character.id.toLowerCase())?.text ?? '', character);
  return read.ok ? read.value : { shows: 'unknown' };
}

function markOf(series: TypeSeries, character: Character, shown: Shown): MarkShown {
  return {
    character: character.id,
    label: character.label,
    says: capital(typesWords.shown(shown, character)),
    drawings: drawingsOf(series, character, shown),
  };
}

/** The drawings of what is shown, in the order of its states. */
export function drawingsOf(series: TypeSeries, { id }: Character, shown: Shown): readonly string[] {
  return shown.shows === 'states' ? shown.states.flatMap((state) => drawingOf(series, id, state) ?? []) : [];
}

/** Drawings that fit into a well. */
const IN_A_WELL = 2;

/** What each type is drawn by in an empty well: its most telling marks that are drawn and of one state. */
export const drawnBy = onceFor(
  (series: TypeSeries): ReadonlyMap<string, readonly string[]> =>
    new Map(
      [...series.types.values()].map((type) => {
        const single = marksOf(series, type).telling.filter(({ drawings }) => drawings.length === 1);
        return [type.id, single.slice(0, IN_A_WELL).flatMap(({ drawings }) => drawings)];
      }),
    ),
);
