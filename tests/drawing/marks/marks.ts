import { BUSTS } from './busts.ts';
import { CROWNS } from './crowns.ts';
import { asFile } from './ink.ts';
import { LETTERS } from './letters.ts';

/** Every mark of the demo's series as a file, by its name. */
export function drawnMarks(): ReadonlyMap<string, string> {
  const all = { ...CROWNS, ...BUSTS, ...LETTERS };
  return new Map(Object.entries(all).map(([name, inside]) => [`${name}.svg`, asFile(inside)]));
}
