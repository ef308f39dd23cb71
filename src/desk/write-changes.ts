import { changeCabinet } from '../catalogue/keep/change-cabinet.ts';
import type { Changes } from '../catalogue/keep/change-cabinet.ts';
import { good, refuse } from '../core/outcome.ts';
import type { Outcome } from '../core/outcome.ts';
import type { FileChange } from './cabinet-files.ts';
import type { CabinetState } from './cabinet-state.ts';

/** Writes files as one stroke of the journal, after another look at what other commands have written meanwhile. */
export async function writeChanges(state: CabinetState, changes: readonly FileChange[]): Promise<Outcome<null>> {
  const done = await changeCabinet(
    state.at,
    { command: 'the desk', kind: 'save', wait: 5000, tell: () => undefined },
    async (stroke) => {
      // What another command has written since this was checked: a number, for one, may have been given meanwhile.
      const wrong = (await state.catchUp()) ? state.problemsOf(changes) : [];
      if (wrong.length > 0) return refuse(wrong.map(({ field, says }) => `${field ?? ''}: ${says}`).join(' '));
      for (const change of changes) await stage(stroke, change);
      return good(null);
    },
  );
  if (done.ok) state.take(changes);
  return done;
}

/** Puts one change into a stroke; it refuses when the file is not as it was. */
export async function stage(stroke: Changes, { file, text, from }: FileChange): Promise<void> {
  if (text === null) await stroke.remove(file, from ?? undefined);
  else if (from === null) await stroke.create(file, text);
  else await stroke.put(file, text, from);
}
