import { problem } from '../problem.ts';
import { namedDrawings } from '../types/drawings.ts';
import { readDrawing } from '../types/read-drawing.ts';
import type { Rule } from './rule.ts';

/** Every drawing that a series names is in its folder, every one there is named, and each is lines and nothing else. */
export const checkDrawings: Rule = ({ series }, place) =>
  series.flatMap((one) => {
    const named = namedDrawings(one);
    const names = new Set(named.map(({ name }) => name));
    const files = [...one.drawn.keys()];
    const folder = one.file.slice(0, one.file.lastIndexOf('/'));
    return [
      ...named.flatMap(({ name, at }) =>
        one.drawn.has(name) ? [] : [problem('drawing-missing', place(one.file, at), name, folder, files)],
      ),
      ...[...one.drawn].flatMap(([name, text]) => {
        const spot = { file: `${folder}/${name}` };
        const read = readDrawing(text);
        if (!read.ok) return [problem('drawing-unreadable', spot, read.problem)];
        return names.has(name) || !one.whole ? [] : [problem('drawing-unused', spot, name)];
      }),
    ];
  });
