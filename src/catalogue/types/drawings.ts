import type { FiledSeries } from '../records.ts';
import type { Drawing } from './read-drawing.ts';
import { readDrawing } from './read-drawing.ts';

/** The drawings of a series that can be read, by the names of their files. */
export function drawingsOf({ drawn }: Pick<FiledSeries, 'drawn'>): ReadonlyMap<string, Drawing> {
  return new Map(
    [...drawn].flatMap(([name, text]) => {
      const read = readDrawing(text);
      return read.ok ? [[name, read.value] as const] : [];
    }),
  );
}

/** A drawing that a state names, and where `series.yaml` names it. */
export type NamedDrawing = {
  readonly character: string;
  readonly state: string;
  readonly name: string;
  readonly at: readonly (string | number)[];
};

export function namedDrawings({ fields }: Pick<FiledSeries, 'fields'>): readonly NamedDrawing[] {
  return fields.characters.flatMap(({ id, states }, character) =>
    (states ?? []).flatMap(({ id: state, drawing }, index) =>
      drawing === undefined
        ? []
        : [{ character: id, state, name: drawing, at: ['characters', character, 'states', index, 'drawing'] }],
    ),
  );
}
