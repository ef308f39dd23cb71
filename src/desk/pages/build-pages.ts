import type { Hono } from 'hono';
import { html } from 'hono/html';
import { ADDRESSES, withdraw } from '../../catalogue/addresses.ts';
import type { Problem, ProblemKind } from '../../catalogue/problem.ts';
import { good } from '../../core/outcome.ts';
import { text } from '../route-helpers.ts';
import type { Desk } from '../route-helpers.ts';
import { linkTo } from '../links.ts';
import { BUILT } from '../tools.ts';
import type { Built } from '../tools.ts';
import type { Found } from '../cabinet-state.ts';
import { postForm } from '../frame.ts';
import type { Html } from '../frame.ts';

/** Checking, building and looking at the site. */
export function buildPages(app: Hono, { state, token, tools, page, form, write }: Desk): void {
  let lines: string[] = [];
  let isBuilding = false;
  let ended: string | null = null;
  let address: string | null = null;
  let built: Built | null = null;
  app.get('/site', (c) =>
    page(
      c,
      'Check and build',
      buildPage(state.found(), token, {
        said: isBuilding ? (lines.at(-1) ?? '') : null,
        ended,
        address,
        site: tools.into('site'),
        copy: built === null || built === 'site' ? null : tools.into(built),
      }),
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
      [isBuilding, lines, ended, built] = [true, [], null, null];
      void tools
        .build(what, (line) => lines.push(line))
        .then((done) => {
          ended = done.ok ? done.value : done.problem;
          if (done.ok) built = what;
        })
        .catch((error: unknown) => (ended = error instanceof Error ? error.message : String(error)))
        .finally(() => (isBuilding = false));
    }
    return c.redirect('/site', 303);
  });
  app.post('/site/withdraw', async (c) => {
    const asked = await form(c);
    if (asked === null) return c.text('This form is not of this desk.', 403);
    const from = await state.textOf(ADDRESSES);
    if (from === null) return c.notFound();
    const { text: after } = withdraw(from, text(asked, 'address') ?? '', true);
    const done = after === from ? good(null) : await write([{ file: ADDRESSES, text: after, from }]);
    if (!done.ok) ended = done.problem;
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

/** A problem with the way to where it is fixed; a published address that nothing answers any more can be let go here. */
function problemLine({ kind, file, line, field, says }: Problem, token: string): Html {
  if (file !== ADDRESSES || !LOST.has(kind))
    return html`<li>
      <a href="${linkTo(file)}">${file}${line === null ? '' : `:${line}`}</a>${field === null ? '' : ` · ${field}`}:
      ${says}
    </li>`;
  const [address = ''] = says.split(' ');
  return html`<li>
    ${says.replace(/ To let the address go.*$| To let it go.*$/, '')}
    ${postForm('/site/withdraw', token, html`<input type="hidden" name="address" value="${address}" /><button>Let the address go: it then says that it was withdrawn</button>`)}
  </li>`; // prettier-ignore
}

const LOST: ReadonlySet<ProblemKind> = new Set([
  'address-lost-piece',
  'address-lost',
  'address-hidden',
  'address-leads-nowhere',
]);

/**
 * What goes on: what the build said last (null when none goes on), how the last one ended, and where it is served; and the folders
 * of the site and of the copy that was made last.
 */
type Building = {
  readonly said: string | null;
  readonly ended: string | null;
  readonly address: string | null;
  readonly site: string;
  readonly copy: string | null;
};

function buildPage(found: Found, token: string, { said, ended, address, site, copy }: Building): Html {
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
                  ${found.problems.slice(0, 200).map((one) => problemLine(one, token))}
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
      ${copy === null ? '' : html`<p>The offline copy is in the folder <b>${copy}</b>. Give that whole folder away; it is not for uploading.</p>`}
      <h2>Look at it</h2>
      <p>The site is built into the folder <b>${site}</b>. Upload everything in it; nothing is uploaded by itself.</p>
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
