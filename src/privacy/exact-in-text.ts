import { NOT_EARLIER } from '../catalogue/earlier.ts';
import type { Earlier } from '../catalogue/earlier.ts';
import type { Rule } from '../catalogue/rules/rule.ts';
import type { Problem } from '../catalogue/problem.ts';
import { problem } from '../catalogue/problem.ts';
import { LEDGER_COLUMNS } from '../catalogue/schema/cabinet.ts';
import { inEachFile, textsIn } from './hidden-in-text.ts';
import type { CabinetFolder } from '../catalogue/files.ts';
import type { Records } from '../catalogue/records.ts';
import { placesIn } from '../catalogue/rules/rule.ts';
import { exactSpotIn, houseIn } from './exact-spots.ts';
import { answeredIn, NOT_SECRET, PLACE } from './not-secret.ts';

/** Fields whose figures are numbers in a list or a book, and no places. */
const NUMBERED = new Set(['number', 'references', 'dies', 'identifiers', 'address']);

/** Fields in which a keeper may write of home, as in a story. */
const TOLD = ['about', 'scope', 'cases'];

/** What names an exact spot in public text is for the ledger. Where a mint stood is no find. */
export function checkExactLocations(
  records: Records,
  folder: CabinetFolder,
  earlier: Earlier = NOT_EARLIER,
): readonly Problem[] {
  const place = placesIn(folder);
  const isAnswered = answeredIn(folder);
  const spotIn = (text: string, isStory: boolean): string | null => {
    const spot = exactSpotIn(text) ?? (isStory ? houseIn(text) : null);
    return spot === null || isAnswered(PLACE, spot) ? null : spot;
  };
  const answers = folder.files.find(({ file }) => file === NOT_SECRET)?.text ?? '';
  return inEachFile(records, ['exact', answers], earlier, ({ file, fields, story }) => [
    ...textsIn(fields, [], NUMBERED).flatMap(({ path, text }): readonly Problem[] => {
      const spot = spotIn(text, TOLD.includes(String(path[0])));
      return spot === null ? [] : [problem('spot-too-exact', place(file, path), withoutFigures(spot))];
    }),
    ...spotsInStory(story, (text) => spotIn(text, true)).map(({ line, spot }) =>
      problem('spot-too-exact', place(file, [], line), withoutFigures(spot)),
    ),
  ]);
}

/** The first spot of a story, and the line it stands on or begins on. */
function spotsInStory(
  story: string,
  spotIn: (text: string) => string | null,
): readonly { readonly line: string; readonly spot: string }[] {
  const lines = story.split('\n').flatMap((line) => {
    const spot = spotIn(line);
    return spot === null ? [] : [{ line, spot }];
  });
  const over = lines.length === 0 ? spotIn(story) : null;
  return over === null ? lines.slice(0, 1) : [{ line: over, spot: over }];
}

/** What is printed may be shown to others: the figures of a spot are left out. */
function withoutFigures(spot: string): string {
  return spot.replace(/\d/g, '·');
}

/** What a sheet said of money, storage or a seller is in no file but the ledger, also where it could not be read. */
export const checkAsWritten: Rule = (records, place) =>
  records.pieces.flatMap(({ file, fields }) =>
    Object.keys(fields['as-written'] ?? {})
      .filter((name) => LEDGER_COLUMNS.some((column) => column === name.replace(/^ledger /, '')))
      .map((name) => problem('ledger-in-piece', place(file, ['as-written', name]), name.replace(/^ledger /, ''))),
  );
