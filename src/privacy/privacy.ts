/**
 * What Underglass promises a keeper, and where each promise is kept.
 *
 * - Nothing of `private/` is published: its values and sums (`private-values.ts`, `sums.ts`) are looked for in every text of the
 *   cabinet before a build (`private-in-text.ts`) and in every published byte after it (`inspect-built.ts`).
 *   A column of a sheet that was read as private notes and as a public fact is asked about (`private-notes.ts`).
 * - A piece with `publish: no` leaves no trace, an unlisted one appears on its own page alone (`hidden-pieces.ts`,
 *   `hidden-in-text.ts`).
 * - No public text names a place so exactly that one can go there (`exact-spots.ts`, `exact-in-text.ts`), nor a folder of the
 *   keeper's machine (`machine-paths.ts`).
 * - A published picture carries pixels and nothing else (`picture-segments.ts`).
 * - What was asked once is answered in `private/not-secret.csv` (`not-secret.ts`); a table of another name is told of
 *   (`private-files.ts`).
 * - A page loads nothing from elsewhere, and its policy says so (`page-policy.ts`).
 * - Git has no file of `private/`, now or in its history (`git.ts`).
 *
 * `letters.ts` undoes disguises before anything is looked for, `find-values.ts` looks for many values at once, and `guard.ts` joins
 * the two. What is found is told by its place and never repeated: what a command prints ends in forums and logs.
 */
import type { PrivacyRules } from '../catalogue/check-records.ts';
import { checkAsWritten, checkExactLocations } from './exact-in-text.ts';
import { checkTracked } from './git.ts';
import { checkHidden, checkPaths } from './hidden-in-text.ts';
import { checkPrivateFiles } from './private-files.ts';
import { checkPrivateInText } from './private-in-text.ts';
import { checkToldTwice } from './private-notes.ts';

/** The rules against exposure, as the catalogue takes them. */
export const PRIVACY: PrivacyRules = {
  rules: [checkAsWritten, checkHidden, checkPaths],
  inTexts: (records, folder, earlier) => [
    ...checkPrivateInText(records, folder, earlier),
    ...checkToldTwice(records, folder),
    ...checkExactLocations(records, folder, earlier),
    ...checkPrivateFiles(folder),
  ],
  inGit: checkTracked,
};
