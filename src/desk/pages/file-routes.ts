import type { Context, Hono } from 'hono';
import { html } from 'hono/html';
import type { Records } from '../../catalogue/records.ts';
import { digestOf } from '../cabinet-state.ts';
import { postForm } from '../frame.ts';
import type { Html } from '../frame.ts';
import { FORBIDDEN, foundIn, postedOf, text, texts, told, writeUnlessWrong } from '../route-helpers.ts';
import type { Desk } from '../route-helpers.ts';
import { NEW_KINDS, newListFile } from '../new-list-file.ts';
import { listsPage } from './lists-page.ts';

/** A file of the cabinet as text: pieces, list files, sets, exhibits, and the cabinet's own. */
export function fileRoutes(app: Hono, desk: Desk): void {
  const { state, token } = desk;
  app.get('/lists', (c) => desk.page(c, 'Lists, sets and exhibits', listsPage(state, token, null), 200, told(c)));
  app.post('/lists/:kind', async (c) => {
    const form = await desk.form(c);
    if (form === null) return c.text(FORBIDDEN, 403);
    const kind = NEW_KINDS.find((one) => one === c.req.param('kind'));
    if (kind === undefined) return c.notFound();
    const posted = postedOf(form);
    const pieces = text(form, 'pieces') ?? texts(form, 'piece').join('\n');
    const fresh = newListFile(state, kind, { get: (name) => (name === 'pieces' ? pieces : posted.get(name)) });
    const problem = fresh.ok ? await writeUnlessWrong(desk, fresh.value.changes) : fresh.problem;
    if (!fresh.ok || problem !== null)
      return desk.page(c, 'Lists, sets and exhibits', listsPage(state, token, problem), 422);
    const to = kind === 'exhibits' ? `/exhibits/${fresh.value.id}` : `/lists/${kind}/${fresh.value.id}`;
    return c.redirect(`${to}?told=new`, 303);
  });
  const show = async (c: Context, file: string | null): Promise<Response> => {
    const now = file === null ? null : await state.textOf(file);
    if (file === null || now === null) return c.notFound();
    const problems = foundIn(state, file).map(({ field, says }) => `${field ?? ''}: ${says}`);
    return desk.page(
      c,
      file,
      html`${
        problems.length === 0
          ? ''
          : html`<ul class="problem">
              ${problems.map((one) => html`<li>${one}</li>`)}
            </ul>`
      }${textPage(c.req.path, token, now, digestOf(now), [], null)}`,
      200,
      told(c),
    );
  };
  const save = async (c: Context, file: string | null): Promise<Response> => {
    const form = await desk.form(c);
    if (form === null) return c.text(FORBIDDEN, 403);
    const now = file === null ? null : await state.textOf(file);
    if (file === null || now === null) return c.notFound();
    const words = (text(form, 'text') ?? now)
      .replace(/\r\n?/g, '\n')
      .replaceAll('\n', now.includes('\r\n') ? '\r\n' : '\n');
    if (text(form, 'digest') !== digestOf(now))
      return desk.page(c, file, textPage(c.req.path, token, words, digestOf(now), [], now), 409);
    if (words === now) return c.redirect(`${c.req.path}?told=nothing`, 303);
    const changes = [{ file, text: words, from: now }];
    const problem = await writeUnlessWrong(desk, changes);
    if (problem !== null)
      return desk.page(c, file, textPage(c.req.path, token, words, digestOf(now), [problem], null), 422);
    return c.redirect(`${c.req.path}?told=saved`, 303);
  };
  const fileOf = (kind: string, id: string): string | null => fileNamed(state.records(), kind, id);
  app.get('/pieces/:id/text', (c) => show(c, fileOf('pieces', c.req.param('id'))));
  app.post('/pieces/:id/text', (c) => save(c, fileOf('pieces', c.req.param('id'))));
  app.get('/lists/:kind/:id/text', (c) => show(c, fileOf(c.req.param('kind'), c.req.param('id'))));
  app.post('/lists/:kind/:id/text', (c) => save(c, fileOf(c.req.param('kind'), c.req.param('id'))));
}

/** The file of something by its kind and name; null for what the read cabinet does not have. */
function fileNamed({ named }: Records, kind: string, id: string): string | null {
  if (kind === 'cabinet' && id === 'cabinet') return 'cabinet.yaml';
  if (!Object.hasOwn(named, kind) || !named[kind as keyof typeof named].includes(id)) return null;
  const inFolder = {
    pieces: `pieces/${id}/piece.md`,
    exhibits: `exhibits/${id}/exhibit.md`,
    types: `types/${id}/series.yaml`,
  };
  return Object.hasOwn(inFolder, kind) ? inFolder[kind as keyof typeof inFolder] : `${kind}/${id}.yaml`;
}

/** A file of the cabinet as text: everything it may hold, with the checks of `check`. */
function textPage(
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
