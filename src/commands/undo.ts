import process from 'node:process';
import { recoverCabinet } from '../catalogue/keep/change-cabinet.ts';
import { before, countedRuns, runsOf, undoRun } from '../catalogue/keep/undo.ts';
import type { Run, RunFile } from '../catalogue/keep/undo.ts';
import { cabinetFlag, endWith, readWords } from './parts/command-line.ts';
import { tellUndone } from './parts/undo-last.ts';

const HELP = `npm run undo                      what the last ten commands and thirty days of saves changed, newest first
npm run undo -- 2                 what number 2 of that list changed, and what undoing it would do
npm run undo -- 2 --restore       puts every file back as it was before
npm run undo -- 2 --redo          takes that undo back

  --leave-changed                 with either: leaves alone what has been changed since, instead of refusing
  --cabinet DIR                   another cabinet

What was replaced is kept in private/undo/ in the cabinet. A secret that you took out of a text is still there until ten more
commands, or thirty days of saves, have gone over it.
`;

const { values, positionals, cabinet } = readWords(HELP, {
  restore: { type: 'boolean' },
  redo: { type: 'boolean' },
  'leave-changed': { type: 'boolean' },
  cabinet: { type: 'string' },
});
await recoverCabinet(cabinet.at);
const all = await runsOf(cabinet.at);
const runs = countedRuns(all);
const [which, ...more] = positionals;
if (more.length > 0) endWith('Name one number of the list: npm run undo -- 1');
if (which === undefined) {
  for (const way of ['restore', 'redo'] as const)
    if (values[way] === true) endWith(`Name what to undo by its number in the list: npm run undo -- 1 --${way}`);
  process.stdout.write(runs.length === 0 ? `No command has changed ${cabinet.shown} yet.\n` : list());
} else {
  const run = /^\d{1,4}$/.test(which) ? runs[Number(which) - 1] : undefined;
  if (run === undefined)
    endWith(
      runs.length === 0
        ? `No command has changed ${cabinet.shown} yet, so there is nothing to undo.`
        : `The list goes from 1 to ${runs.length}; this says "${which}". See it: npm run undo${cabinetFlag(cabinet).replace(/^(?=.)/, ' --')}`,
    );
  if (values.restore === true && values.redo === true) endWith('Say either --restore or --redo.');
  if (values.restore === true) await restore(run, which);
  else if (values.redo === true) await redo(run, which);
  else await show(run);
}

function list(): string {
  const lines = runs.map((run, index) =>
    [
      String(index + 1).padStart(3),
      moment(run.when),
      nameOf(run),
      `${run.files.length} ${run.files.length === 1 ? 'file' : 'files'}${run.undoneBy === null ? '' : ', undone'}`,
    ].join('  '),
  );
  return `${lines.join('\n')}\n\nLook at one: npm run undo -- 1${cabinetFlag(cabinet)}\nUndo it: npm run undo -- 1 --restore${cabinetFlag(cabinet)}\n`;
}

function nameOf({ kind, command }: Run): string {
  return kind === 'save' ? 'a save at the desk' : command;
}

/** What undoing a run would do or, where it is undone, what doing it again would. */
async function show(run: Run): Promise<void> {
  const undo = all.find((one) => one.run === run.undoneBy);
  const wouldDo = undo === undefined ? 'Undoing it would' : 'It is undone. Doing it again would';
  process.stdout.write(`${nameOf(run)}, ${moment(run.when)}. ${wouldDo}:\n`);
  for (const file of (undo ?? run).files) process.stdout.write(`  ${await effectOn(file)}\n`);
}

async function effectOn(changed: RunFile): Promise<string> {
  if (changed.before === null) return `remove     ${changed.file}`;
  const lines =
    new TextDecoder().decode((await before(cabinet.at, changed)) ?? new Uint8Array()).split('\n').length - 1;
  const size = /\.(md|ya?ml|csv|jsonl?)$/.test(changed.file) ? ` (${lines} lines)` : '';
  return changed.after === null ? `bring back ${changed.file}${size}` : `put back   ${changed.file} as it was${size}`;
}

async function restore(run: Run, number: string): Promise<void> {
  const bringBack = `Bring it back: npm run undo -- ${number} --redo${cabinetFlag(cabinet)}`;
  if (run.undoneBy !== null) endWith(`This has been undone already. ${bringBack}`);
  await takeBack(run, `${nameOf(run)} of ${moment(run.when)} is undone`, bringBack);
}

async function redo(run: Run, number: string): Promise<void> {
  const undo = all.find((one) => one.run === run.undoneBy);
  if (undo === undefined) endWith(`Number ${number} is not undone, so there is nothing to do again.`);
  await takeBack(undo, `${nameOf(run)} of ${moment(run.when)} is done again`, `Undo it: npm run undo -- ${number} --restore${cabinetFlag(cabinet)}`); // prettier-ignore
}

async function takeBack(run: Run, said: string, next: string): Promise<void> {
  const undone = await undoRun(cabinet.at, run, values['leave-changed'] === true);
  if (!undone.ok) endWith(undone.problem);
  process.stdout.write(`${tellUndone(undone.value)}${said}. ${next}\n`);
}

/** `2026-11-29 18:05`, by the clock of this machine. */
function moment(when: number): string {
  const at = new Date(when);
  const two = (part: number): string => String(part).padStart(2, '0');
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())} ${two(at.getHours())}:${two(at.getMinutes())}`;
}
