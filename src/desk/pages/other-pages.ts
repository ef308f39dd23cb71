import { html } from 'hono/html';
import { countedRuns } from '../../catalogue/keep/undo.ts';
import type { Run } from '../../catalogue/keep/undo.ts';
import type { FileChange } from '../cabinet-files.ts';
import { postForm } from '../frame.ts';
import type { Html } from '../frame.ts';

/** A file of the cabinet as text: everything it may hold, with the checks of `check`. */
export function textPage(
  to: string,
  token: string,
  text: string,
  digest: string,
  problems: readonly string[],
  stale: string | null,
): Html {
  return html`${
    stale === null
      ? ''
      : html`<div class="problem" role="alert">
          <p>The file has been changed meanwhile. Nothing was written; your text is below. The file says now:</p>
          <pre>${stale}</pre>
        </div>`
  }
  ${
    problems.length === 0
      ? ''
      : html`<div class="problem" role="alert">
          <p>Nothing was written:</p>
          <ul>
            ${problems.map((says) => html`<li>${says}</li>`)}
          </ul>
        </div>`
  }
  ${postForm(
    to,
    token,
    html`<input type="hidden" name="digest" value="${digest}" />
      <label for="text">The whole file</label>
      <textarea
        id="text"
        name="text"
        rows="${Math.min(40, text.split('\n').length + 4)}"
        spellcheck="false"
        class="whole"
      >
${text}</textarea>
      <p class="doing"><button class="main" type="submit">Save</button></p>`,
  )}`;
}

/** What a change of several pieces would write, before it is written. */
export function seenChange(
  changes: readonly FileChange[],
  token: string,
  asked: { readonly ids: readonly string[]; readonly field: string; readonly to: string },
  problems: readonly string[],
): Html {
  const lines = changes.map(({ file, text, from }) => {
    const [before, after] = [(from ?? '').split('\n'), (text ?? '').split('\n')];
    return {
      file,
      minus: before.filter((line) => !after.includes(line)),
      plus: after.filter((line) => !before.includes(line)),
    };
  });
  return html`${
      problems.length === 0
        ? ''
        : html`<div class="problem" role="alert">
            <p>This cannot be written:</p>
            <ul>
              ${problems.map((says) => html`<li>${says}</li>`)}
            </ul>
          </div>`
    }
    <p>
      ${changes.length === 0 ? 'Nothing would change.' : `${changes.length} ${changes.length === 1 ? 'file' : 'files'} would change:`}
    </p>
    <ul class="changes">
      ${lines.map(({ file, minus, plus }) => html`<li><b>${file}</b>${minus.map((line) => html`<pre class="minus">− ${line}</pre>`)}${plus.map((line) => html`<pre class="plus">+ ${line}</pre>`)}</li>`)}
    </ul>
    ${
      problems.length > 0 || changes.length === 0
        ? ''
        : postForm(
            '/change',
            token,
            html` <input type="hidden" name="sure" value="yes" /><input
                type="hidden"
                name="field"
                value="${asked.field}"
              /><input type="hidden" name="to" value="${asked.to}" />
              ${asked.ids.map((id) => html`<input type="hidden" name="piece" value="${id}" />`)}
              <p class="doing">
                <button class="main" type="submit">Write it</button> <a href="/">Leave everything as it was</a>
              </p>`,
          )
    }`;
}

/** What can be undone, newest first. */
export function undoPage(all: readonly Run[], token: string, problem: string | null): Html {
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
