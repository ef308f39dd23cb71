import process from 'node:process';
import { recoverCabinet } from '../catalogue/keep/change-cabinet.ts';
import { before, runsOf, undoRun } from '../catalogue/keep/undo.ts';
import type { Run, RunFile } from '../catalogue/keep/undo.ts';
import { endWith, readWords } from './parts/command-line.ts';
import { tellUndone } from './parts/undo-last.ts';

const HELP = `npm run undo                      what the last ten commands and thirty days of saves changed, newest first
npm run undo -- 2                 what number 2 of that list changed, and what undoing it would do
npm run undo -- 2 --restore       puts every file back as it was before

  --leave-changed                 with --restore: leaves alone what has been changed since, instead of refusing
  --cabinet DIR                   another cabinet

What was replaced is kept in private/undo/ in the cabinet. An undo is in the list itself and can be undone. A secret that you took out
of a text is still in private/undo/ until ten more commands, or thirty days of saves, have gone over it.
`;

const { values, positionals, cabinet } = readWords(HELP, {
  restore: { type: 'boolean' },
  'leave-changed': { type: 'boolean' },
  cabinet: { type: 'string' },
});
await recoverCabinet(cabinet.at);
const runs = await runsOf(cabinet.at);
const [which, ...more] = positionals;
if (more.length > 0) endWith('Name one number of the list: npm run undo -- 1');
if (which === undefined) {
  if (values.restore === true) endWith('Name what to undo by its number in the list: npm run undo -- 1 --restore');
  process.stdout.write(runs.length === 0 ? `No command has changed ${cabinet.shown} yet.\n` : list());
} else {
  const run = /^\d{1,4}$/.test(which) ? runs[Number(which) - 1] : undefined;
  if (run === undefined)
    endWith(
      runs.length === 0
        ? `No command has changed ${cabinet.shown} yet, so there is nothing to undo.`
        : `The list goes from 1 to ${runs.length}; this says "${which}". See it: npm run undo`,
    );
  if (values.restore === true) await restore(run);
  else await show(run);
}

function list(): string {
  const lines = runs.map(({ command, when, files, isUndone, kind }, index) =>
    [
      String(index + 1).padStart(3),
      moment(when),
      kind === 'save' ? 'a save at the desk' : command,
      `${files.length} ${files.length === 1 ? 'file' : 'files'}${isUndone ? ', undone' : ''}`,
    ].join('  '),
  );
  return `${lines.join('\n')}\n\nLook at one: npm run undo -- 1    Undo it: npm run undo -- 1 --restore\n`;
}

async function show({ command, when, files }: Run): Promise<void> {
  process.stdout.write(`${command}, ${moment(when)}. Undoing it would:\n`);
  for (const file of files) process.stdout.write(`  ${await effectOn(file)}\n`);
}

async function effectOn(changed: RunFile): Promise<string> {
  if (changed.before === null) return `remove     ${changed.file}`;
  const lines =
    new TextDecoder().decode((await before(cabinet.at, changed)) ?? new Uint8Array()).split('\n').length - 1;
  const size = /\.(md|ya?ml|csv|jsonl?)$/.test(changed.file) ? ` (${lines} lines)` : '';
  return changed.after === null ? `bring back ${changed.file}${size}` : `put back   ${changed.file} as it was${size}`;
}

async function restore(run: Run): Promise<void> {
  if (run.isUndone) endWith('This has been undone already.');
  const undone = await undoRun(cabinet.at, run, values['leave-changed'] === true);
  if (!undone.ok) endWith(undone.problem);
  process.stdout.write(tellUndone(undone.value));
}

/** `2026-11-29 18:05`, by the clock of this machine. */
function moment(when: number): string {
  const at = new Date(when);
  const two = (part: number): string => String(part).padStart(2, '0');
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())} ${two(at.getHours())}:${two(at.getMinutes())}`;
}
