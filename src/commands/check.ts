import process from 'node:process';
import { readFolder } from '../catalogue/files.ts';
import { exhibitRemarks } from '../catalogue/exhibits/exhibit-remarks.ts';
import { formatImprovement, improvementsOf } from '../catalogue/improvements.ts';
import { linkRecords } from '../catalogue/link.ts';
import { titleRemarks } from '../catalogue/rules/names.ts';
import { setRemarks } from '../catalogue/rules/set-words.ts';
import { citationRemarks } from '../catalogue/text-citations.ts';
import { commitWithPrivate, trackedPieces } from '../privacy/git.ts';
import { namedByHiddenOnly } from '../privacy/hidden-pieces.ts';
import { findRecordRemarks, saleRemarks } from '../privacy/exact-in-text.ts';
import { privateNoteRemarks } from '../privacy/private-notes.ts';
import { unreadSheets } from '../privacy/private-files.ts';
import { inheritFacts } from '../catalogue/types/inherit-facts.ts';
import { typeRemarks } from '../catalogue/types/remarks.ts';
import { readTypes } from '../catalogue/types/types-of.ts';
import { formatProblem } from '../catalogue/problem.ts';
import { readManifest } from '../photographs/cache/manifest.ts';
import { formatRemarks, photographRemarks } from '../photographs/verify/remarks.ts';
import { publicPieces } from '../publish/public-piece.ts';
import { setStates } from '../publish/set-states.ts';
import { cacheFolder } from './parts/cache-folder.ts';
import { checkWhole } from './parts/check-whole.ts';
import { cabinetFlag, readWords } from './parts/command-line.ts';

const HELP = `npm run check                 every problem of the cabinet in content/, in one run
npm run check -- --cabinet DIR    another cabinet

  --every                         everything that could be bettered, and not only what matters most

Each problem names the file, the line and the field, says what is wrong, and what to write instead.
When there is none, it also says what a judge would remark on in your exhibits, which photographs could be better, and what
would most improve the catalogue. Nothing of that has to be done.
Ends with 1 when there are problems, with 0 when there are none.
`;

/** Ways to improve that are told unasked. */
const TOLD = 3;

const { values, cabinet } = readWords(HELP, { cabinet: { type: 'string' }, every: { type: 'boolean' } });
const isEvery = values.every === true;
const { records, problems, folder } = await checkWhole(cabinet.at);
for (const found of problems) process.stdout.write(`${formatProblem(found, cabinet.shown)}\n\n`);
const pieces = `${records.pieces.length} ${records.pieces.length === 1 ? 'piece' : 'pieces'}`;
process.stdout.write(
  problems.length === 0
    ? `${pieces} in ${cabinet.shown}, no problems.\n`
    : `${problems.length} ${problems.length === 1 ? 'problem' : 'problems'} in ${cabinet.shown}.\n`,
);
if (records.cabinet?.fields.demo !== 'yes') process.stdout.write(`${await remembered()}${await toldOfHidden()}`);
process.stdout.write(await unread());
if (problems.length === 0) {
  process.stdout.write(await judged());
  process.stdout.write(contradictions());
  const manifest = await readManifest(cacheFolder('photographs', cabinet.at));
  process.stdout.write(
    formatRemarks(photographRemarks(records.pieces, manifest), cabinet.shown, isEvery ? null : cabinetFlag(cabinet)),
  );
}
for (const remark of [
  ...findRecordRemarks(records, folder),
  ...saleRemarks(records, folder),
  ...privateNoteRemarks(records, folder),
  ...titleRemarks(records),
  ...setRemarks(records),
  ...citationRemarks(records),
])
  process.stdout.write(`\n${cabinet.shown}/${remark}\n`);
if (problems.length === 0 || isEvery) process.stdout.write(improvements());
process.exitCode = problems.length === 0 ? 0 : 1;

/** That a repository still holds what it no longer tracks. */
async function remembered(): Promise<string> {
  const commit = await commitWithPrivate(cabinet.at);
  if (commit === null) return '';
  return `
git holds private/ in its history, last in the commit ${commit}, and whoever gets the repository can read it there.
  Push it nowhere that others can see. Where it has been pushed already, take what is in it as known. To be rid of it,
  begin a new repository with the files as they are now, or have the history rewritten without private/ (git filter-branch).
`;
}

/** What a site or a repository lets be guessed of pieces that are not published. */
async function toldOfHidden(): Promise<string> {
  const hidden = records.pieces.filter(({ fields }) => fields.publish === 'no').map(({ id }) => id);
  const tracked = await trackedPieces(cabinet.at, hidden);
  const lone = namedByHiddenOnly(records);
  return [
    tracked.length === 0
      ? ''
      : `\ngit holds ${some(tracked)}, which the site does not show: whoever gets the repository sees them.\n`,
    lone.length === 0
      ? ''
      : `\nOnly pieces that are not published name ${some(lone)}. The site shows the name with nothing beside it, which lets the rest be guessed; remove the file if that tells too much.\n`,
  ].join('');
}

/** Sheets in `private/` that no command reads. */
async function unread(): Promise<string> {
  const sheets = unreadSheets((await readFolder(cabinet.at)) ?? { files: [] });
  return sheets.length === 0
    ? ''
    : `\nNothing reads ${some(sheets)}: what stands there is not looked for in your texts. Import it, or keep it elsewhere.\n`;
}

function some(names: readonly string[]): string {
  return `${names.slice(0, 3).join(', ')}${names.length > 3 ? ` and ${names.length - 3} more` : ''}`;
}

/** What a judge would remark on, exhibit by exhibit. */
async function judged(): Promise<string> {
  const catalogue = linkRecords(records);
  const remarks = exhibitRemarks(records, await readFolder(cabinet.at), setStates(catalogue, publicPieces(catalogue)));
  if (remarks.length === 0) return '';
  const each = remarks.map(
    ({ file, line, says, source }) =>
      `${cabinet.shown}/${file}${line === null ? '' : `:${line}`}\n  ${says} (${source})`,
  );
  return `\nWhat a judge would remark on:\n\n${each.join('\n\n')}\n`;
}

/** Where pieces, types and books contradict each other. */
function contradictions(): string {
  const remarks = typeRemarks(records);
  const each = remarks.map(
    ({ file, line, says }) => `${cabinet.shown}/${file}${line === null ? '' : `:${line}`}\n  ${says}`,
  );
  return each.length === 0 ? '' : `\nWhat contradicts itself among pieces and types:\n\n${each.join('\n\n')}\n`;
}

function improvements(): string {
  // What follows from its type is not wanting in a piece.
  const { types } = readTypes(records);
  const all = improvementsOf({ ...records, pieces: records.pieces.map((piece) => inheritFacts(piece, types)) });
  if (all.length === 0) return '';
  const told = all.slice(0, isEvery ? undefined : TOLD);
  return `${[
    '\nWhat would improve the catalogue most, when you have an evening:',
    ...told.map((improvement) => formatImprovement(improvement, isEvery ? Infinity : undefined)),
    ...(isEvery ? [] : [`All of it: npm run check -- --every${cabinetFlag(cabinet)}`]),
  ].join('\n\n')}\n`;
}
