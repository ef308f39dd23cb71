import { Hono } from 'hono';
import { html } from 'hono/html';
import { faultSentence, tellFault } from '../catalogue/keep/fault-sentence.ts';
import { asset } from './assets.ts';
import type { CabinetState } from './cabinet-state.ts';
import { changeSeveral, newPiece } from './change-several.ts';
import { deletePages } from './pages/delete-page.ts';
import { FORBIDDEN, postedOf, text, texts, told, writeUnlessWrong } from './route-helpers.ts';
import type { Desk } from './route-helpers.ts';
import { draftRoutes } from './drafts.ts';
import { frame } from './frame.ts';
import { buildPages } from './pages/build-pages.ts';
import { exhibitRoutes } from './pages/exhibit-page.ts';
import { fileRoutes } from './pages/file-routes.ts';
import { undoRoutes } from './pages/undo-page.ts';
import { listFileRoutes } from './pages/list-file-page.ts';
import { lifePages } from './pages/life-pages.ts';
import { askedOf, factsOf, rowsKeeper } from './pieces-rows.ts';
import { listPage } from './pages/pieces-page.ts';
import { newPage } from './pages/lists-page.ts';
import { seenChange } from './pages/seen-change.ts';
import { picturePages } from './pages/picture-pages.ts';
import { pieceRoutes } from './pages/piece-routes.ts';
import { hasToken } from './serve-desk.ts';
import { ticketRoutes } from './pages/tickets-page.ts';
import { totalsPages } from './pages/totals-page.ts';
import { typesPages } from './pages/types-page.ts';
import type { DeskTools } from './tools.ts';
import { writeChanges } from './write-changes.ts';

/** The pages of the desk over one cabinet. */
export function deskPages(state: CabinetState, token: string, tools: DeskTools): Hono {
  const app = new Hono();
  const desk: Desk = {
    state,
    token,
    tools,
    page: async (c, title, body, status = 200, told = null) =>
      c.html(await frame({ title, cabinet: state.records().cabinet?.fields.title ?? 'a cabinet', told, body }), status),
    form: async (c) => {
      const form = await c.req.formData();
      return hasToken(form, token) ? form : null;
    },
    write: (changes) => writeChanges(state, changes),
  };
  assetRoutes(app);
  app.use(async (_, next) => {
    await state.catchUp();
    await next();
  });
  listRoutes(app, desk);
  deletePages(app, desk);
  pieceRoutes(app, desk);
  draftRoutes(app, desk);
  fileRoutes(app, desk);
  listFileRoutes(app, desk);
  exhibitRoutes(app, desk);
  typesPages(app, desk);
  ticketRoutes(app, desk);
  undoRoutes(app, desk);
  picturePages(app, desk);
  buildPages(app, desk);
  lifePages(app, desk);
  totalsPages(app, desk);
  app.notFound((c) => desk.page(c, 'There is no page here', html`<p><a href="/">To the pieces</a></p>`, 404));
  app.onError((error, c) => {
    const sentence = faultSentence(error);
    if (sentence !== null) return c.text(`${sentence}\n`, 500);
    process.stderr.write(`${tellFault(error)}\n`);
    return c.text(
      'Something went wrong in the desk itself, and nothing was written. What happened is told where the desk was opened.\n',
      500,
    );
  });
  return app;
}

/** The styles, the script and the fonts. */
function assetRoutes(app: Hono): void {
  app.get('/desk.css', async (c) =>
    c.body(await asset('desk.css'), 200, { 'Content-Type': 'text/css; charset=utf-8' }),
  );
  app.get('/desk.js', async (c) =>
    c.body(await asset('desk.js'), 200, { 'Content-Type': 'text/javascript; charset=utf-8' }),
  );
  app.get('/fonts/:name{[a-z0-9-]+\\.woff2}', async (c) => {
    const font = await asset(`fonts/${c.req.param('name')}`).catch(() => null);
    return font === null ? c.notFound() : c.body(font, 200, { 'Content-Type': 'font/woff2' });
  });
}

function listRoutes(app: Hono, desk: Desk): void {
  const { state, token } = desk;
  const rows = rowsKeeper(state);
  // Worked out while nobody waits for it.
  rows().inOrder('number', false);
  app.get('/', async (c) => {
    const asked = askedOf(new URL(c.req.url).searchParams, factsOf(state.ledger()));
    return desk.page(c, 'Pieces', listPage(state, rows(), asked, token), 200, told(c));
  });
  app.post('/change', async (c) => {
    const form = await desk.form(c);
    if (form === null) return c.text(FORBIDDEN, 403);
    const asked = { ids: texts(form, 'piece'), field: text(form, 'field') ?? '', to: text(form, 'to') ?? '' };
    const changes = await changeSeveral(state, asked);
    if (!changes.ok) return desk.page(c, 'Change several pieces', seenChange([], token, asked, [changes.problem]), 422);
    const problems = state
      .problemsOf(changes.value)
      .map(({ file, field, says }) => `${file} · ${field ?? ''}: ${says}`);
    if (text(form, 'sure') !== 'yes' || problems.length > 0)
      return desk.page(
        c,
        'Change several pieces',
        seenChange(changes.value, token, asked, problems),
        problems.length > 0 ? 422 : 200,
      );
    const done = await desk.write(changes.value);
    return done.ok
      ? c.redirect('/?told=saved', 303)
      : desk.page(c, 'Change several pieces', seenChange([], token, asked, [done.problem]), 422);
  });
  app.get('/new', (c) => {
    const query = new URL(c.req.url).searchParams;
    return desk.page(c, 'New piece', newPage(state, desk.tools, token, query, null));
  });
  app.post('/new', async (c) => {
    const form = await desk.form(c);
    if (form === null) return c.text(FORBIDDEN, 403);
    const posted = postedOf(form);
    const fresh = await newPiece(state, posted);
    const problem = fresh.ok ? await writeUnlessWrong(desk, fresh.value.changes) : fresh.problem;
    if (!fresh.ok || problem !== null)
      return desk.page(c, 'New piece', newPage(state, desk.tools, token, posted, problem), 422);
    return c.redirect(`/pieces/${fresh.value.id}?told=made`, 303);
  });
}
