import type { CabinetFolder } from './files.ts';
import type { Problem } from './problem.ts';
import type { Records } from './records.ts';
import { checkDates, checkStruckFor } from './rules/dates.ts';
import { checkEras } from './rules/eras.ts';
import { checkExhibits } from './rules/exhibits.ts';
import { checkDoubts, checkFaces } from './rules/faces.ts';
import { checkFormerly } from './rules/formerly.ts';
import { checkHidden, checkPaths } from './rules/hidden.ts';
import { checkLinks } from './rules/links.ts';
import { checkLists } from './rules/lists.ts';
import { checkNames } from './rules/names.ts';
import { checkNumbers } from './rules/numbers.ts';
import type { Place } from './rules/place.ts';
import { placesIn } from './rules/place.ts';
import { checkSets } from './rules/sets.ts';
import { checkAsWritten, checkThief } from './rules/thief.ts';
import { checkGrades, checkReferences } from './rules/words.ts';

/** What a rule is given: every record, and the way to the line a field stands on. */
export type Rule = (records: Records, place: Place) => readonly Problem[];

const RULES: readonly Rule[] = [
  checkNumbers,
  checkNames,
  checkDates,
  checkStruckFor,
  checkFaces,
  checkDoubts,
  checkGrades,
  checkReferences,
  checkFormerly,
  checkThief,
  checkAsWritten,
  checkHidden,
  checkPaths,
  checkLinks,
  checkLists,
  checkEras,
  checkSets,
  checkExhibits,
];

/** Finds what is wrong between records that are each well formed. */
export function checkRecords(
  records: Records,
  folder: CabinetFolder,
  place: Place = placesIn(folder),
): readonly Problem[] {
  return RULES.flatMap((rule) => rule(records, place));
}
