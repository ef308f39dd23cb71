import type { CabinetFolder } from './files.ts';
import type { Problem } from './problem.ts';
import type { Records } from './records.ts';
import { checkNames } from './rules/names.ts';
import { checkNumbers } from './rules/numbers.ts';
import type { Place } from './rules/place.ts';
import { placesIn } from './rules/place.ts';

/** What a rule is given: every record, and the way to the line a field stands on. */
export type Rule = (records: Records, place: Place) => readonly Problem[];

const RULES: readonly Rule[] = [checkNumbers, checkNames];

/** Finds what is wrong between records that are each well formed. */
export function checkRecords(records: Records, folder: CabinetFolder): readonly Problem[] {
  const place = placesIn(folder);
  return RULES.flatMap((rule) => rule(records, place));
}
