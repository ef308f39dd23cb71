import type { CabinetFolder } from '../files.ts';
import { splitFrontMatter } from '../front-matter.ts';
import type { Spot } from '../problem.ts';
import { lineOf } from '../yaml.ts';

/** The spot of a field in a file: `place('pieces/a/piece.md', ['ruler', 0])`. */
export type Place = (file: string, path: readonly (string | number)[]) => Spot;

export function placesIn(folder: CabinetFolder): Place {
  return (file, path) => {
    const text = folder.files.find((held) => held.file === file)?.text ?? '';
    const halves = file.endsWith('.md') ? splitFrontMatter(text) : { facts: text, factsFrom: 1 };
    const line = halves === null ? null : lineOf(halves.facts, path) + halves.factsFrom - 1;
    return { file, line, field: path.join('.') || null };
  };
}
