import type { Hono } from 'hono';
import { html } from 'hono/html';
import { text } from '../desk.ts';
import type { Desk } from '../desk.ts';
import { BUILT } from '../tools.ts';
import type { Found } from '../cabinet-state.ts';
import { postForm } from '../frame.ts';
import type { Html } from '../frame.ts';

/** Checking, building and looking at the site. */
export function buildPages(app: Hono, { state, token, tools, page, form }: Desk): void {
  let lines: string[] = [];
  let isBuilding = false;
  let ended: string | null = null;
  let address: string | null = null;
  app.get('/site', (c) =>
    page(
      c,
      'Check and build',
      buildPage(state.found(), token, tools.out, { said: isBuilding ? (lines.at(-1) ?? '') : null, ended, address }),
    ),
  );
  app.post('/site/read', async (c) => {
    if ((await form(c)) === null) return c.text('This form is not of this desk.', 403);
    await state.readAgain();
    return c.redirect('/site', 303);
  });
  app.post('/site/build', async (c) => {
    const asked = await form(c);
    if (asked === null) return c.text('This form is not of this desk.', 403);
    const what = BUILT.find((one) => one === text(asked, 'what')) ?? 'site';
    if (!isBuilding) {
      [isBuilding, lines, ended] = [true, [], null];
      void tools
        .build(what, (line) => lines.push(line))
        .then((built) => (ended = built.ok ? built.value : built.problem))
        .catch((error: unknown) => (ended = error instanceof Error ? error.message : String(error)))
        .finally(() => (isBuilding = false));
    }
    return c.redirect('/site', 303);
  });
  app.post('/site/preview', async (c) => {
    if ((await form(c)) === null) return c.text('This form is not of this desk.', 403);
    const served = await tools.preview();
    if (served.ok) address = served.value;
    else ended = served.problem;
    return c.redirect('/site', 303);
  });
}

/** What goes on: what the build said last (null when none goes on), how the last one ended, and where it is served. */
type Building = { readonly said: string | null; readonly ended: string | null; readonly address: string | null };

function buildPage(found: Found, token: string, out: string, { said, ended, address }: Building): Html {
  return html`<div id="progress" data-again="${found === null || said !== null ? 'yes' : 'no'}">
    <section>
      <h2>Check</h2>
      ${
        found === null
          ? html`<p>Checking the cabinet… <a href="/site">Look again</a></p>`
          : found.problems.length === 0
            ? html`<p>No problems.</p>`
            : html`<p>
                  ${found.problems.length === 1 ? 'One problem' : `${found.problems.length} problems`}: the site cannot
                  be built before that is fixed.
                </p>
                <ul class="problem">
                  ${found.problems.slice(0, 200).map(({ file, line, field, says }) => html`<li><a href="${linkTo(file)}">${file}${line === null ? '' : `:${line}`}</a>${field === null ? '' : ` · ${field}`}: ${says}</li>`)}
                </ul>`
      }
      ${postForm('/site/read', token, html`<button type="submit">Read everything again</button>`)}
    </section>
    <section>
      <h2>Build</h2>
      ${said !== null ? html`<p role="status">Building… ${said} <a href="/site">Look again</a></p>` : postForm('/site/build', token, BUILD_BUTTONS)}
      ${ended === null ? '' : html`<pre>${ended}</pre>`}
    </section>
    <section>
      <h2>Look at it</h2>
      <p>What was built last is in the folder <b>${out}</b>. Upload everything in it; nothing has been uploaded yet.</p>
      ${address === null ? postForm('/site/preview', token, html`<button type="submit">Open the built site on this machine</button>`) : html`<p><a href="${address}" target="_blank" rel="noopener noreferrer">${address}</a></p>`}
    </section>
  </div>`;
}

const BUILD_BUTTONS = html`<p class="doing">
    <button class="main" name="what" value="site">Build the site</button>
    <button name="what" value="copy">Make an offline copy for a friend</button>
    <button name="what" value="copy with unlisted">The same, with the unlisted pieces</button>
  </p>
  <p class="says">
    An offline copy is a folder that opens with a double click, without a network. The one with the unlisted pieces is
    for one person; nothing that is hidden or private is in either.
  </p>`;

function linkTo(file: string): string {
  const [kind = '', id = ''] = file.split('/');
  if (kind === 'pieces') return `/pieces/${id}`;
  if (kind === 'cabinet.yaml') return '/lists/cabinet/cabinet';
  if (kind === 'exhibits') return `/exhibits/${id}`;
  return kind === 'private' ? '/' : `/lists/${kind}/${id.replace(/\.yaml$/, '')}`;
}
