import type { Earlier } from '../kept-answers.ts';
import type { CabinetFolder } from '../files.ts';
import { splitFrontMatter } from '../front-matter.ts';
import type { Problem, Spot } from '../problem.ts';
import type { Records } from '../records.ts';
import { lineOf } from '../yaml.ts';

/** The spot of a field in a file: `place('pieces/a/piece.md', ['ruler', 0])`; without a field, of the words it holds. */
export type Place = (file: string, path: readonly (string | number)[], words?: string) => Spot;

/** What a rule is given: every record, the way to the line a field stands on, the day it is, `2026-11-30`, and what earlier runs found. */
export type Rule = (records: Records, place: Place, day: string, earlier?: Earlier) => readonly Problem[];

export function placesIn(folder: CabinetFolder): Place {
  const texts = new Map(folder.files.map(({ file, text }) => [file, text]));
  return (file, path, words) => {
    const text = texts.get(file) ?? '';
    const at = path.length === 0 && words !== undefined ? text.indexOf(words) : -1;
    if (at !== -1) return { file, line: text.slice(0, at).split('\n').length, field: null };
    const halves = file.endsWith('.md') ? splitFrontMatter(text) : { facts: text, factsFrom: 1 };
    const line = halves === null ? null : lineOf(halves.facts, path) + halves.factsFrom - 1;
    return { file, line, field: path.join('.') || null };
  };
}
