import type { TypeSeries } from '../../../catalogue/types/series.ts';
import { parseShown, usually } from '../../../core/types/key/character.ts';
import type { Character, Shown } from '../../../core/types/key/character.ts';
import { shownByAll, tellingMarks } from '../../../core/types/key/telling.ts';
import type { ShownByAll } from '../../../core/types/key/telling.ts';
import { leavesBelow } from '../../../core/types/series.ts';
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

const everyMark = onceFor((series: TypeSeries): ShownByAll =>
  shownByAll([...series.shown.values()], series.characters.length),
);

/** What a type shows: first that by which it is known from every other. What all types show alike tells nothing and is left out. */
export function marksOf(series: TypeSeries, type: SeriesType): TypeMarks {
  const all = everyMark(series);
  const shown = series.characters.map((character) => shownOf(type, character));
  const below = new Set(leavesBelow(series.types, type.id));
  const isBelow = [...series.shown.keys()].map((id) => below.has(id));
  const telling = tellingMarks(all, shown, (leaf) => isBelow[leaf] === true);
  const isTelling = new Set(telling.map(({ at }) => at));
  const mark = (at: number, rare: readonly string[] = []): readonly MarkShown[] => {
    const [character, own] = [series.characters[at], shown[at]];
    return character === undefined || own === undefined || own.shows === 'unknown'
      ? []
      : [markOf(series, character, own, rare)];
  };
  const tells = (at: number): boolean => (all.columns[at]?.shown.length ?? 0) > 1;
  return {
    telling: telling.flatMap(({ at, rare }) => mark(at, rare)),
    common: shown.flatMap((_, at) => (isTelling.has(at) || !tells(at) ? [] : mark(at))),
    open: series.characters.flatMap(({ label }, at) => (shown[at]?.shows === 'unknown' ? [label] : [])),
  };
}

function shownOf(type: SeriesType, character: Character): Shown {
  const read = parseShown(type.says.get(character.id.toLowerCase())?.text ?? '', character);
  return read.ok ? read.value : { shows: 'unknown' };
}

/** A mark in words and drawings; states that few types have are said first, and they alone are drawn. */
function markOf(series: TypeSeries, character: Character, shown: Shown, rare: readonly string[]): MarkShown {
  const first =
    shown.shows !== 'states' || rare.length === 0
      ? shown
      : { ...shown, states: [...rare, ...shown.states.filter((state) => !rare.includes(state))] };
  return {
    character: character.id,
    label: character.label,
    says: capital(typesWords.shown(first, character)),
    drawings: rare.length === 0 ? drawingsOf(series, character, shown) : drawingsOf(series, character, { shows: 'states', states: rare }),
  };
} // prettier-ignore

/** The drawings of what is shown, in the order of its states; of what is seldom there none. */
export function drawingsOf(series: TypeSeries, { id }: Character, shown: Shown): readonly string[] {
  const usual = usually(shown);
  return usual.shows === 'states' ? usual.states.flatMap((state) => drawingOf(series, id, state) ?? []) : [];
}

/** What stands for a type in a well: drawings, and words where the drawings of another type are the same. */
export type WellMarks = { readonly drawings: readonly string[]; readonly says: string | null };

/** Drawings that fit into a well. */
const IN_A_WELL = 2;

/** By what each type is shown in a well: its most telling marks of one drawing, so chosen that no two types have the same. */
export const drawnBy = onceFor((series: TypeSeries): ReadonlyMap<string, WellMarks> => {
  const types = [...series.types.values()].map((type) => {
    const { telling } = marksOf(series, type);
    const single = telling.flatMap(({ drawings }) => (drawings.length === 1 ? drawings : []));
    return { type, telling, choices: pairsOf(single) };
  });
  const count = new Map<string, number>();
  const isLeaf = ({ narrower }: SeriesType): boolean => narrower.length === 0;
  for (const { type, choices } of types)
    if (isLeaf(type)) count.set(nameOf(choices[0]), (count.get(nameOf(choices[0])) ?? 0) + 1);
  const used = new Set(count.keys());
  return new Map(
    types.map(({ type, telling, choices: [first = [], ...others] }) => {
      if (!isLeaf(type) || count.get(nameOf(first)) === 1) return [type.id, { drawings: first, says: null }];
      const free = others.find((pair) => !used.has(nameOf(pair)));
      used.add(nameOf(free));
      // Where no drawing is left to tell them, the mark that has none says it.
      const unlike = free === undefined ? telling.find(({ drawings }) => drawings.length !== 1) : undefined;
      return [
        type.id,
        { drawings: free ?? first, says: unlike === undefined ? null : usualWords(series, type, unlike) },
      ];
    }),
  );
});

/** What most specimens show of a mark, in words. */
function usualWords(series: TypeSeries, type: SeriesType, { character: id }: MarkShown): string | null {
  const character = series.characters.find((one) => one.id === id);
  return character === undefined ? null : capital(typesWords.shown(usually(shownOf(type, character)), character));
}

const nameOf = (drawings: readonly string[] = []): string => drawings.join('\n');

/** The drawings two by two, those that tell most first. */
function pairsOf(drawings: readonly string[]): readonly (readonly string[])[] {
  if (drawings.length < IN_A_WELL) return [drawings];
  return drawings.flatMap((one, at) => drawings.slice(at + 1).map((other) => [one, other]));
}
