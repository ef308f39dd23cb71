import type { Hono } from 'hono';
import { html } from 'hono/html';
import { countedRuns, runsOf, undoRun } from '../../catalogue/keep/undo.ts';
import type { Run } from '../../catalogue/keep/undo.ts';
import { postForm } from '../frame.ts';
import type { Html } from '../frame.ts';
import { FORBIDDEN, text, told } from '../route-helpers.ts';
import type { Desk } from '../route-helpers.ts';

export function undoRoutes(app: Hono, desk: Desk): void {
  const { state, token } = desk;
  app.get('/undo', async (c) => desk.page(c, 'Undo', undoPage(await runsOf(state.at), token, null), 200, told(c)));
  app.post('/undo', async (c) => {
    const form = await desk.form(c);
    if (form === null) return c.text(FORBIDDEN, 403);
    const runs = await runsOf(state.at);
    const run = runs.find((one) => one.run === text(form, 'run'));
    const done = run === undefined ? null : await undoRun(state.at, run);
    if (done === null) return c.notFound();
    await state.readAgain();
    return done.ok
      ? c.redirect('/undo?told=undone', 303)
      : desk.page(c, 'Undo', undoPage(runs, token, done.problem), 409);
  });
}

/** What can be undone, newest first. */
function undoPage(all: readonly Run[], token: string, problem: string | null): Html {
  const runs = countedRuns(all);
  return html`${problem === null ? '' : html`<p class="problem" role="alert">${problem}</p>`}
    ${runs.length === 0 ? html`<p>Nothing has been changed yet.</p>` : ''}
    <ol class="runs">
      ${runs.slice(0, 200).map(
        (run) =>
          html`<li>
            <p>
              ${new Date(run.when).toLocaleString('en-GB')}:
              ${run.kind === 'save' ? 'a save at the desk' : run.command}${run.undoneBy === null ? '' : ', undone'}.
              ${run.files
                .map(
                  ({ file, before, after }) =>
                    `${file}${after === null ? ' (deleted)' : before === null ? ' (new)' : ''}`,
                )
                .slice(0, 4)
                .join(', ')}${run.files.length > 4 ? ` and ${run.files.length - 4} more` : ''}
            </p>
            ${postForm('/undo', token, html`<input type="hidden" name="run" value="${run.undoneBy ?? run.run}" /><button type="submit">${run.undoneBy === null ? 'Undo' : 'Redo'}</button>`)}
          </li>`,
      )}
    </ol>`;
}
