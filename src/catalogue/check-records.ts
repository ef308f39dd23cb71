import { checkAddresses } from './addresses.ts';
import { NOT_EARLIER } from './kept-answers.ts';
import type { Earlier } from './kept-answers.ts';
import type { CabinetFolder } from './files.ts';
import type { Problem } from './problem.ts';
import type { Records } from './records.ts';
import { checkDatesToCome, checkStruckFor } from './rules/dates.ts';
import { checkExhibits } from './rules/exhibits.ts';
import { checkEras, checkSets } from './rules/sets-and-eras.ts';
import { checkDoubts, checkFaces, checkGrades, checkReferences } from './rules/facts.ts';
import { checkFormerly, checkImages, checkLinks, checkLists, checkNumbers } from './rules/numbers-and-links.ts';
import { checkPrivate } from './ledger-and-guide.ts';
import { checkLife } from './life-file.ts';
import { checkNames } from './rules/names.ts';
import type { Place, Rule } from './rules/rule.ts';
import { placesIn } from './rules/rule.ts';
import { checkDrawings } from './rules/drawings.ts';
import { checkTypes } from './rules/types.ts';

/**
 * The rules against exposure, which `src/privacy` has and the catalogue is handed: it reads and links, and does not know what
 * is private.
 */
export type PrivacyRules = {
  readonly rules: readonly Rule[];
  /** Private values in the texts and names of files. */
  readonly inTexts: (records: Records, folder: CabinetFolder, earlier: Earlier) => readonly Problem[];
  /** Private files that git has, or would take. */
  readonly inGit: (at: string) => Promise<readonly Problem[]>;
};

const RULES: readonly Rule[] = [
  checkNumbers,
  checkNames,
  checkStruckFor,
  checkDatesToCome,
  checkFaces,
  checkDoubts,
  checkGrades,
  checkReferences,
  checkFormerly,
  checkLinks,
  checkImages,
  checkLists,
  checkEras,
  checkTypes,
  checkDrawings,
  checkSets,
  checkExhibits,
];

/** Finds what is wrong between records that are each well formed; `day` is the day it is, `2026-11-30`. */
export function checkRecords(
  records: Records,
  folder: CabinetFolder,
  privacy: PrivacyRules,
  day: string,
  place: Place = placesIn(folder),
  earlier: Earlier = NOT_EARLIER,
): readonly Problem[] {
  return [...RULES, ...privacy.rules].flatMap((rule) => rule(records, place, day, earlier));
}

/** Finds everything wrong with records that were read: between them, in the ledger and the guide, and what is private in them. */
export function checkAll(
  records: Records,
  folder: CabinetFolder,
  privacy: PrivacyRules,
  day: string,
  earlier: Earlier = NOT_EARLIER,
): readonly Problem[] {
  return [
    ...checkRecords(records, folder, privacy, day, placesIn(folder), earlier),
    ...checkPrivate(records, folder, day),
    ...checkLife(records, folder, day),
    ...checkAddresses(records, folder),
    ...privacy.inTexts(records, folder, earlier),
  ];
}
