import { checkAll } from './check-records.ts';
import type { PrivacyRules } from './check-records.ts';
import { NOT_EARLIER } from './kept-answers.ts';
import type { Earlier } from './kept-answers.ts';
import { linksIn } from './files.ts';
import type { CabinetFolder } from './files.ts';
import { readBetweenStrokes } from './keep/journal.ts';
import type { Problem } from './problem.ts';
import { gatherProblems, orderProblems, problem } from './problem.ts';
import { readCabinet } from './read-cabinet.ts';
import type { Records } from './records.ts';

/** A cabinet as it was read, and everything that is wrong with it. */
export type CheckedCabinet = {
  readonly records: Records;
  readonly problems: readonly Problem[];
  readonly folder: CabinetFolder;
};

const NOTHING: Records = {
  named: { pieces: [], rulers: [], mints: [], denominations: [], eras: [], sets: [], exhibits: [], works: [], types: [] },
  cabinet: null, pieces: [], rulers: [], mints: [], denominations: [], eras: [], sets: [], exhibits: [], works: [],
  series: [],
}; // prettier-ignore

/** The day on this machine, `2026-11-30`. */
export function today(): string {
  const now = new Date();
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, '0')).join('-');
}

/** Reads a cabinet and finds every problem its texts have on a day, in file order; what is known of them from `earlier` is not worked out again. */
export async function checkCabinet(
  at: string,
  privacy: PrivacyRules,
  day = today(),
  earlier: Earlier = NOT_EARLIER,
): Promise<CheckedCabinet> {
  const folder = await readBetweenStrokes(at);
  if (folder === null)
    return { records: NOTHING, problems: [problem('cabinet-missing', { file: '' }, at)], folder: { at, files: [] } };
  const { records, problems } = readCabinet(folder, earlier);
  // The demo's private figures are invented and are kept in the repository on purpose.
  const tracked = records.cabinet?.fields.demo === 'yes' ? [] : await privacy.inGit(at);
  const links = (await linksIn(at)).flatMap(({ file, isFolder }) =>
    file !== 'private' ? [problem('file-linked', { file })] : isFolder ? [] : [problem('private-away', { file })],
  );
  const all = [...tracked, ...links, ...problems, ...checkAll(records, folder, privacy, day, earlier)];
  return { records, problems: gatherProblems(orderProblems(all)), folder };
}
