import type { Hono } from 'hono';
import { html } from 'hono/html';
import type { Problem } from '../../catalogue/problem.ts';
import { good } from '../../core/outcome.ts';
import { FORBIDDEN, foundIn, pieceNamed, postedOf, text, told } from '../desk.ts';
import type { Desk } from '../desk.ts';
import { draftNote, draftOf, forgetDraft, postedDraft } from '../drafts.ts';
import type { Html } from '../frame.ts';
import { labelOf } from '../form/form-parts.ts';
import { aloudIn, datalists, rowNamed, typesList } from '../form/reading.ts';
import { calledById } from '../new-names.ts';
import { savePiece } from '../save-piece.ts';
import type { PieceOnDesk } from '../save-piece.ts';
import { pieceForm } from './piece-page.ts';
import type { PieceView } from './piece-page.ts';
import { piecePreview, previewWords, typeSays } from './piece-preview.ts';

export function pieceRoutes(app: Hono, desk: Desk): void {
  const { state, token } = desk;
  const view = (piece: PieceOnDesk, more: Partial<PieceView> = {}): Html => {
    const records = state.records();
    const said = (name: string): string | null => {
      const held = piece.facts?.[name];
      return more.posted?.get(name) ?? (typeof held === 'string' ? held : Array.isArray(held) ? held.join(', ') : null);
    };
    const beside = { scale: said('grade-scale'), ruler: said('ruler') };
    const body = pieceForm({
      piece, token, posted: null, problems: [], unread: {}, isStale: false,
      aloud: (row, words) => aloudIn(records, row, words, beside),
      called: calledById(records),
      hasTypes: records.series.length > 0,
      otherwise: typeSays(state, piece),
      preview: piecePreview(state, piece, more.posted ?? null),
      ...more,
    }); // prettier-ignore
    return html`${body} ${datalists(state, ['rulers', 'mints', 'denominations'])} ${typesList(records)}`;
  };
  const title = (piece: PieceOnDesk): string =>
    typeof piece.facts?.['title'] === 'string' ? piece.facts['title'] : piece.id;
  app.get('/pieces/:id', async (c) => {
    const piece = await pieceNamed(state, c.req.param('id'));
    if (piece === null) return c.notFound();
    if (piece.facts === null) return c.redirect(`/pieces/${piece.id}/text`, 303);
    const now = foundIn(state, piece.file);
    const here = `/pieces/${piece.id}`;
    const draft = await draftOf(desk, here);
    const isShown = draft !== null && c.req.query('draft') === 'yes';
    return desk.page(
      c,
      title(piece),
      html`${pieceHead(piece, now)} ${draftNote(desk, here, draft, isShown)}
      ${view(piece, isShown ? { posted: postedDraft(draft) } : {})}`,
      200,
      told(c),
    );
  });
  app.post('/pieces/:id', async (c) => {
    const form = await desk.form(c);
    if (form === null) return c.text(FORBIDDEN, 403);
    const piece = await pieceNamed(state, c.req.param('id'));
    if (piece === null) return c.notFound();
    const posted = postedOf(form);
    const saved = savePiece(state, piece, posted);
    if (saved.kind === 'nothing') return c.redirect(`/pieces/${piece.id}?told=nothing`, 303);
    if (saved.kind === 'stale') return desk.page(c, title(piece), view(piece, { posted, isStale: true }), 409);
    if (saved.kind === 'wrong')
      return desk.page(c, title(piece), view(piece, { posted, problems: saved.problems, unread: saved.unread }), 422);
    const done = await desk.write(saved.changes);
    if (done.ok) {
      await forgetDraft(desk, `/pieces/${piece.id}`);
      return c.redirect(`/pieces/${piece.id}?told=saved`, 303);
    }
    return desk.page(c, title(piece), view(piece, { posted, unread: { '': done.problem } }), 409);
  });
  typedRoutes(app, desk);
}

/** What is asked while a form is typed; nothing is saved. */
function typedRoutes(app: Hono, desk: Desk): void {
  const { state } = desk;
  app.post('/read', async (c) => {
    const form = await desk.form(c);
    if (form === null) return c.text(FORBIDDEN, 403);
    const row = rowNamed(text(form, 'field') ?? '', text(form, 'kind') ?? '');
    const beside = { scale: text(form, 'scale'), ruler: text(form, 'ruler') };
    const read = row === null ? good('') : aloudIn(state.records(), row, text(form, 'words') ?? '', beside);
    return c.json({ ok: read.ok, says: read.ok ? read.value : read.problem });
  });
  app.post('/pieces/:id/preview', async (c) => {
    const form = await desk.form(c);
    if (form === null) return c.text(FORBIDDEN, 403);
    const piece = await pieceNamed(state, c.req.param('id'));
    return piece === null ? c.notFound() : c.html(previewWords(state, piece, postedOf(form)));
  });
}

/** What is wrong with a piece now, and the ways on from its form. */
function pieceHead(piece: PieceOnDesk, now: readonly Problem[]): Html {
  return html`${
      now.length === 0
        ? ''
        : html`<div class="problem">
            <ul>
              ${now.map(({ field, says }) => html`<li>${field === null ? '' : `${labelOf(field, 'pieces')}: `}${says}</li>`)}
            </ul>
          </div>`
    }
    <p class="doing">
      <a href="/pieces/${piece.id}/photographs">Photographs</a>
      <a href="/pieces/${piece.id}/text">The file as text</a>
      <a href="/new?like=${piece.id}">A new piece like this one</a>
      ${typeof piece.facts?.['type'] === 'string' ? html`<a href="/new?type=${piece.facts['type']}">A new piece of this type</a>` : ''}
      <a href="/life?piece=${piece.id}">Sold, lent, bought …</a>
      <a href="/delete/pieces/${piece.id}">Delete this piece …</a>
    </p>`;
}
