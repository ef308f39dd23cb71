import type { Context, Hono } from 'hono';
import { html } from 'hono/html';
import { DELETABLE, planDeletion } from '../delete-record.ts';
import type { Deletable, Deletion } from '../delete-record.ts';
import { FORBIDDEN, text } from '../route-helpers.ts';
import type { Desk } from '../route-helpers.ts';
import { forgetDraft } from '../drafts.ts';
import { postForm } from '../frame.ts';
import type { Html } from '../frame.ts';
import { linkTo } from '../links.ts';

/** Deleting a piece, a set, an exhibit or a file of a list: what goes with it is told first, and all of it can be undone. */
export function deletePages(app: Hono, desk: Desk): void {
  app.get('/delete/:kind/:id', async (c) => {
    const found = await asked(desk, c, { keepsPrivate: true, withExhibits: false });
    return found === null ? c.notFound() : show(desk, c, found, null);
  });
  app.post('/delete/:kind/:id', async (c) => {
    const form = await desk.form(c);
    if (form === null) return c.text(FORBIDDEN, 403);
    const said = { keepsPrivate: text(form, 'keeps-private') === 'yes', withExhibits: text(form, 'with-exhibits') === 'yes' }; // prettier-ignore
    // What was shown is what is agreed to: everything as it was, with the private lines kept and no exhibit deleted.
    const shown = await asked(desk, c, { keepsPrivate: true, withExhibits: false });
    const found = said.keepsPrivate && !said.withExhibits ? shown : await asked(desk, c, said);
    if (shown === null || found === null) return c.notFound();
    const { kind, id, deletion } = found;
    if (text(form, 'digest') !== shown.deletion.digest)
      return show(
        desk,
        c,
        shown,
        'Something has been changed meanwhile. Read once more what goes, and delete it then.',
      );
    if (deletion.emptied !== null && !said.withExhibits)
      return show(desk, c, shown, `Nothing was deleted. ${deletion.emptied.says}`);
    if (deletion.problems.length > 0) return show(desk, c, found, null);
    const done = await desk.write(deletion.changes);
    if (!done.ok) return show(desk, c, shown, done.problem);
    await forgetDraft(desk, pageOf(kind, id));
    return c.redirect(kind === 'pieces' ? '/?told=deleted' : '/lists?told=deleted', 303);
  });
}

type Found = { readonly kind: Deletable; readonly id: string; readonly deletion: Deletion };

async function asked(
  { state }: Desk,
  c: Context,
  said: { readonly keepsPrivate: boolean; readonly withExhibits: boolean },
): Promise<Found | null> {
  const [kind, id] = [c.req.param('kind') ?? '', c.req.param('id') ?? ''];
  if (!isDeletable(kind)) return null;
  const deletion = await planDeletion(state, kind, id, said);
  return deletion === null ? null : { kind, id, deletion };
}

function isDeletable(kind: string): kind is Deletable {
  return Object.hasOwn(DELETABLE, kind);
}

function pageOf(kind: Deletable, id: string): string {
  return kind === 'pieces' || kind === 'exhibits' ? `/${kind}/${id}` : `/lists/${kind}/${id}`;
}

async function show({ page, token }: Desk, c: Context, found: Found, problem: string | null): Promise<Response> {
  const { kind, deletion } = found;
  // That an exhibit would be without a piece is told by itself, with what can be done about it.
  const inWay = deletion.problems.filter(({ file }) => deletion.emptied === null || !file.startsWith('exhibits/'));
  const status = problem === null ? 200 : 422;
  return page(c, `Delete ${deletion.title}?`, deleteForm(found, token, inWay, problem), inWay.length > 0 && kind !== 'pieces' ? 422 : status); // prettier-ignore
}

function deleteForm(
  { kind, id, deletion }: Found,
  token: string,
  inWay: Deletion['problems'],
  problem: string | null,
): Html {
  const here = pageOf(kind, id);
  return html`${problem === null ? '' : html`<div class="problem" role="alert"><p>${problem}</p></div>`}
    <ul>
      ${deletion.goes.map((says) => html`<li>${says}</li>`)}
    </ul>
    ${
      inWay.length === 0
        ? ''
        : html`<div class="problem" role="alert">
            <p>It cannot be deleted yet, because other files name it:</p>
            <ul>
              ${inWay.map(({ file, says }) => html`<li><a href="${linkTo(file)}">${file}</a>: ${says}</li>`)}
            </ul>
          </div>`
    }
    ${
      kind === 'pieces'
        ? html`<p>
            A piece that you no longer have is better written down under
            <a href="/life?piece=${id}">Sold, given, lost …</a>: its page and its history stay. One that nobody is to
            see is better hidden: <a href="${here}#publish">Publish: no</a>.
          </p>`
        : ''
    }
    ${
      inWay.length > 0
        ? html`<p><a href="${here}">Back, and delete nothing</a></p>`
        : agreeForm(kind, id, deletion, token)
    }`;
}

/** What is to be said yes to, and the button. */
function agreeForm(kind: Deletable, id: string, deletion: Deletion, token: string): Html {
  const { saidInPrivate, emptied, digest } = deletion;
  const said = html`<p>What stays on this machine says of it:</p>
    <ul>
      ${saidInPrivate.map((says) => html`<li>${says}</li>`)}
    </ul>
    ${kind === 'pieces' ? KEEPS : html`<p>These lines go as well.</p>`}`;
  const exhibits = (only: NonNullable<Deletion['emptied']>): Html =>
    html`<div class="problem">
      <p>${only.says}</p>
      <label class="tick"
        ><input type="checkbox" name="with-exhibits" value="yes" /> Delete
        ${only.titles.map((one) => `the exhibit “${one}”`).join(' and ')} as well</label
      >
    </div>`;
  return postForm(
    `/delete/${kind}/${id}`,
    token,
    html`<input type="hidden" name="digest" value="${digest}" />
      ${saidInPrivate.length === 0 ? '' : said} ${emptied === null ? '' : exhibits(emptied)}
      <p class="doing">
        <button class="main" type="submit">Delete this ${DELETABLE[kind]}</button>
        <a href="${pageOf(kind, id)}">Back, and delete nothing</a>
      </p>
      <p class="says">It can be taken back under Undo for thirty days, photographs and all.</p>`,
  );
}

const KEEPS = html`<label class="tick"
  ><input type="checkbox" name="keeps-private" value="yes" checked /> Keep these lines in private/deleted.csv, where
  they are guarded like the ledger and counted nowhere</label
>`;
