import type { Rule } from '../catalogue/check-records.ts';
import type { Problem } from '../catalogue/problem.ts';
import { problem } from '../catalogue/problem.ts';
import { LEDGER_COLUMNS } from '../catalogue/schema/cabinet.ts';
import { filesOf } from './hidden-in-text.ts';
import { exactSpotIn } from './exact-spots.ts';
import { textsIn } from '../catalogue/rules/texts-in.ts';

/** Fields whose figures are measures, or numbers in a list or a book, and no places. */
const NUMBERED = new Set([
  'number', 'references', 'dies', 'weight', 'diameter', 'thickness', 'fineness', 'inside', 'coordinates', 'identifiers', 'address',
]); // prettier-ignore

/** What names an exact spot in public text is for the ledger. Where a mint stood is no find. */
export const checkExactLocations: Rule = (records, place) => {
  return filesOf(records).flatMap(({ file, fields, story }) => [
    ...textsIn(fields, [], NUMBERED).flatMap(({ path, text }): readonly Problem[] => {
      const spot = exactSpotIn(text);
      return spot === null ? [] : [problem('spot-too-exact', place(file, path), withoutFigures(spot))];
    }),
    ...spotsInStory(story).map(({ line, spot }) =>
      problem('spot-too-exact', place(file, [], line), withoutFigures(spot)),
    ),
  ]);
};

/** The first spot of a story, and the line it stands on or begins on. */
function spotsInStory(story: string): readonly { readonly line: string; readonly spot: string }[] {
  const spot = exactSpotIn(story);
  if (spot === null) return [];
  const line = story.split('\n').find((one) => exactSpotIn(one) !== null) ?? spot;
  return [{ line, spot }];
}

/** What is printed may be shown to others: the figures of a spot are left out. */
function withoutFigures(spot: string): string {
  return spot.replace(/\d/g, '·');
}

/** What a sheet said of money, storage or a seller stands in no file but the ledger, also where it could not be read. */
export const checkAsWritten: Rule = (records, place) =>
  records.pieces.flatMap(({ file, fields }) =>
    Object.keys(fields['as-written'] ?? {})
      .filter((name) => LEDGER_COLUMNS.some((column) => column === name.replace(/^ledger /, '')))
      .map((name) => problem('ledger-in-piece', place(file, ['as-written', name]), name.replace(/^ledger /, ''))),
  );
