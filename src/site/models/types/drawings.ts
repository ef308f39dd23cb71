import type { Drawing } from '../../../catalogue/types/read-drawing.ts';
import { namedDrawings } from '../../../catalogue/types/drawings.ts';
import type { TypeSeries } from '../../../catalogue/types/series.ts';
import { onceFor } from '../../once-for.ts';

/** A drawing as a page holds it once; what shows it names it by `id`. */
export type DrawnSymbol = Drawing & { readonly id: string };

/** The drawing of one state of a character, by the id it has on a page; null where nobody drew it. */
export function drawingOf(series: TypeSeries, character: string, state: string): string | null {
  return drawnStates(series).get(`${character}\n${state}`) ?? null;
}

const drawnStates = onceFor(
  (series: TypeSeries): ReadonlyMap<string, string> =>
    new Map(
      namedDrawings(series).flatMap(({ character, state, name }) =>
        series.drawings.has(name) ? [[`${character}\n${state}`, idOf(series.id, name)] as const] : [],
      ),
    ),
);

/** Every drawing that a state of the series names. */
export function everyDrawing(series: TypeSeries): readonly string[] {
  return [...drawnStates(series).values()];
}

function idOf(series: string, name: string): string {
  return `drawn-${series}-${name.replace(/\.svg$/, '')}`;
}

/** The drawings that a page shows, each once, in the order of the series. */
export function symbolsOf(series: TypeSeries, shown: Iterable<string>): readonly DrawnSymbol[] {
  const wanted = new Set(shown);
  return [...series.drawings].flatMap(([name, drawing]) => {
    const id = idOf(series.id, name);
    return wanted.has(id) ? [{ id, ...drawing }] : [];
  });
}
