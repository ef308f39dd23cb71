import { readdir, stat } from 'node:fs/promises';
import { join, relative, resolve, sep } from 'node:path';
import process from 'node:process';
import { readFolder } from '../catalogue/files.ts';
import { changeCabinet } from '../catalogue/keep/change-cabinet.ts';
import { PRIVATE_FILE, writeWhole } from '../catalogue/keep/flush.ts';
import { newEntryId } from '../catalogue/keep/journal.ts';
import { readCabinet } from '../catalogue/read-cabinet.ts';
import { good } from '../core/outcome.ts';
import { openAny, PICTURES } from '../photographs/bring/open-any.ts';
import { planBringing } from '../photographs/bring/plan-bringing.ts';
import type { Bringing, LeftOut } from '../photographs/bring/plan-bringing.ts';
import { tidyCopy } from '../photographs/bring/tidy-copy.ts';
import { twoFaces } from '../photographs/bring/two-faces.ts';
import { reviewPage } from '../photographs/verify/review-page.ts';
import { askYesOrNo, canAsk } from './parts/ask.ts';
import { cabinetFlag, endWith, readWords } from './parts/command-line.ts';
import { progressLine } from './parts/progress-line.ts';
import { undoLast } from './parts/undo-last.ts';

const HELP = `npm run photos -- FOLDER         photographs in a folder, matched to the pieces of the cabinet in content/

  --yes                         copy without asking; without it, and with nobody to ask, only says what would be done
  --review                      writes a page for you alone: every photograph with its rim drawn, the least sure first
  --undo                        takes away what the last run copied, but for what you have changed since
  --cabinet DIR                 another cabinet

A name tells the piece by its number or the name of its folder, and the face by o/r, obv/rev, a/b, 1/2 or in full:
0123-obv.jpg, 0123o.jpg, york-penny-2.heic, or a folder 0123 with 1.jpg and 2.jpg. A picture that names no face and shows two
things of one size is split: obverse on the left or above. JPEG, PNG, TIFF, WebP, AVIF and, with the package heic-decode, HEIC.
Copies are upright JPEGs with nothing in them but the pixels. Your own files are left as they are, and nothing is written over.
`;

const REVIEW = join('private', 'photographs.html');

const { values, positionals, cabinet } = readWords(HELP, {
  yes: { type: 'boolean' },
  undo: { type: 'boolean' },
  review: { type: 'boolean' },
  cabinet: { type: 'string' },
});
const folder = await readFolder(cabinet.at);
if (folder === null) endWith(`There is no cabinet at ${cabinet.shown}. Begin one: npm run begin -- ${cabinet.shown}`);

if (values.undo === true) await undoLast(cabinet, 'npm run photos', true);

if (values.review === true) {
  const html = await reviewPage(readCabinet(folder).records.pieces, cabinet.at, progressLine('Photographs'));
  await writeWhole(join(cabinet.at, REVIEW), html, PRIVATE_FILE);
  process.stdout.write(
    `Open ${join(cabinet.shown, REVIEW)} in a browser. It lies in private/, and is never published.\n`,
  );
  process.exit(0);
}

const [from, ...more] = positionals;
if (from === undefined || more.length > 0)
  endWith('Name the one folder the photographs are in: npm run photos -- ../pictures');
const source = resolve(from);
if (!(await stat(source).catch(() => null))?.isDirectory())
  endWith(`There is no folder ${from}. Name the one the photographs are in.`);
const paths = (await readdir(source, { recursive: true, withFileTypes: true }))
  .filter((entry) => entry.isFile() && PICTURES.test(entry.name) && !entry.name.startsWith('.'))
  .map((entry) => relative(source, join(entry.parentPath, entry.name)))
  .sort();
if (paths.length === 0) endWith(`There is no photograph in ${from}.`);

const { records } = readCabinet(folder);
const plan = planBringing(
  paths.map((path) => path.split(sep).join('/')),
  records.pieces,
);
const say = (line: string): boolean => process.stdout.write(`${line}\n`);
for (const { from: path, piece, face } of plan.brought)
  say(
    `${path}  →  pieces/${piece}/${face === null ? 'obverse.jpg, and reverse.jpg if it shows both faces' : `${face}.jpg`}`,
  );
for (const left of plan.leftOut) say(`${left.from}  stays where it is.\n  ${left.because}`);
say(`\n${counted(paths.length)}: ${plan.brought.length} to copy, ${plan.leftOut.length} that stay.`);
if (plan.brought.length === 0) process.exit(plan.leftOut.length === 0 ? 0 : 1);
const consents = values.yes === true || (canAsk() && (await askYesOrNo('Copy them into the cabinet?', true)));
if (!consents) {
  say('Nothing was copied. Write --yes to copy them.');
  process.exit(0);
}

// Each photograph is a stroke of its own, so that a run that is stopped keeps what it has copied; they are undone together.
const run = newEntryId(Date.now(), 'npm run photos');
const written: string[] = [];
const placed: string[] = [];
const failed: LeftOut[] = [];
const progress = progressLine('Photographs');
for (const [index, bringing] of plan.brought.entries()) {
  await bring(bringing);
  progress(index + 1, plan.brought.length);
}
for (const path of placed) say(`${path} said where it was taken. The copy does not.`);
for (const left of failed) say(`${left.from} was not copied.\n  ${left.because}`);
if (written.length === 0) say('Nothing was copied.');
else
  say(
    `${counted(written.length)} copied into ${cabinet.shown}, upright, with nothing in them but the pixels. Take them away again: npm run photos -- --undo${cabinetFlag(cabinet)}`,
  );
process.exitCode = failed.length === 0 ? 0 : 1;

async function bring({ from: path, piece, face }: Bringing): Promise<void> {
  const opened = await openAny(join(source, path));
  if (!opened.ok) {
    failed.push({ from: path, because: opened.problem });
    return;
  }
  const { pixels, hadPlace } = opened.value;
  if (hadPlace) placed.push(path);
  const two = face === null ? twoFaces(pixels) : null;
  const copies =
    two === null
      ? [{ face: face ?? 'obverse', part: null }]
      : [{ face: 'obverse', part: two[0] }, { face: 'reverse', part: two[1] }]; // prettier-ignore
  for (const copy of copies) {
    const file = `pieces/${piece}/${copy.face}.jpg`;
    const bytes = await tidyCopy(pixels, copy.part);
    const outcome = await changeCabinet(cabinet.at, { command: 'npm run photos', run }, async (changes) => {
      await changes.create(file, bytes);
      return good(null);
    });
    if (outcome.ok) written.push(file);
    else failed.push({ from: path, because: outcome.problem });
  }
}

function counted(count: number): string {
  return `${count} ${count === 1 ? 'photograph' : 'photographs'}`;
}
