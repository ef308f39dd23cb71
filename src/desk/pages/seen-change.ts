import { html } from 'hono/html';
import type { FileChange } from '../cabinet-files.ts';
import { postForm } from '../frame.ts';
import type { Html } from '../frame.ts';

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
