import process from 'node:process';
import { lastRunOf, undoRun } from '../../catalogue/keep/undo.ts';
import type { Undone } from '../../catalogue/keep/undo.ts';
import type { MeantCabinet } from './command-line.ts';
import { cabinetFlag, endWith } from './command-line.ts';

/** Takes back the newest run of a command, and ends with a sentence; never one before it, or two starts would take back two. */
export async function undoLast(cabinet: MeantCabinet, command: string, leaveChanged = false): Promise<never> {
  const run = await lastRunOf(cabinet.at, command);
  if (run === null) endWith(`There is nothing to undo: no ${command} is in the journal of ${cabinet.shown}.`);
  if (run.undoneBy !== null)
    endWith(`The last ${command} has been undone already. What was before it: npm run undo${dashes(cabinet)}`);
  const undone = await undoRun(cabinet.at, run, leaveChanged);
  if (!undone.ok) endWith(undone.problem);
  process.stdout.write(tellUndone(undone.value));
  process.exit(0);
}

function dashes(cabinet: MeantCabinet): string {
  const flag = cabinetFlag(cabinet);
  return flag === '' ? '' : ` --${flag}`;
}

export function tellUndone({ restored, removed, leftAlone }: Undone): string {
  const count = (files: number): string => `${files} ${files === 1 ? 'file' : 'files'}`;
  const left = leftAlone.map((file) => `${file} has been changed since, and was kept.\n`).join('');
  return `${left}${count(restored)} put back as before, ${count(removed)} taken away again.\n`;
}
