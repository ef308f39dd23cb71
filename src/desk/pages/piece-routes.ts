import type { Hono } from 'hono';
import { html } from 'hono/html';
import type { Problem } from '../../catalogue/problem.ts';
import { good } from '../../core/outcome.ts';
import { FORBIDDEN, foundIn, pieceNamed, postedOf, text, told } from '../route-helpers.ts';
import type { Desk } from '../route-helpers.ts';
import { draftNote, draftOf, forgetDraft, postedDraft } from '../drafts.ts';
import type { Html } from '../frame.ts';
import { labelOf, drawFields, isInUse, problemsNote, shownOf, staleNote } from '../form/form-parts.ts';
import { aloudIn, datalists, rowNamed, typesList } from '../form/read-aloud.ts';
import { calledById } from '../new-names.ts';
import { savePiece } from '../save-piece.ts';
import type { PieceOnDesk } from '../save-piece.ts';
import { piecePreview, previewWords, typeSays } from './piece-preview.ts';
import { PIECE_ROWS } from '../../catalogue/fields/piece-fields.ts';
import { postForm } from '../frame.ts';
import { drawLeaf } from '../form/draw-leaf.ts';
import type { Shown } from '../form/draw-leaf.ts';
import { ledgerRow } from '../form/ledger-rows.ts';
import { nameOf } from '../form/leaves.ts';
import type { Leaf } from '../form/leaves.ts';
import type { FormView } from '../form/form-parts.ts';

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

/** The groups of the form and their fields, in the order of an evening's work; a field that is in none comes under the last. */
const GROUPS: readonly (readonly [heading: string, fields: readonly string[]])[] = [
  ['What it is', ['title', 'number', 'kind', 'denomination', 'ruler', 'mint', 'date', 'type', 'references']],
  ['Measures and metal', ['metal', 'weight', 'diameter', 'axis', 'fineness', 'thickness', 'made', 'faces', 'shape']],
  ['Condition', ['grade', 'grade-scale', 'problem', 'graded-by', 'treatments', 'peculiarities']],
  ['Legends and designs', ['obverse', 'reverse', 'edge', 'dies']],
  ['Makers, issuer, and the date on it', ['issuer', 'makers', 'struck-for', 'dated']],
  ['How sure', ['sure']],
  ['Provenance, find, alterations', ['provenance', 'found', 'altered']],
]; // prettier-ignore
const LAST = 'Status, tags and the rest';
const OPEN = GROUPS.slice(0, 4).map(([heading]) => heading);
const PRIVATE = Object.entries(PIECE_ROWS).flatMap(([name, row]) => (row.seen === 'no' ? [name] : []));

export type PieceView = FormView & {
  readonly piece: PieceOnDesk;
  readonly token: string;
  readonly preview: Html;
  readonly hasTypes: boolean;
};

/** The form of one piece: what will be published and what stays here, side by side. */
export function pieceForm(view: PieceView): Html {
  const { piece, token, posted } = view;
  const shown = shownOf(view);
  // A cabinet without types is not asked about them.
  const isAsked = ({ path: [top = ''], held }: Leaf): boolean => top !== 'type' || held !== undefined || view.hasTypes;
  const published = piece.leaves.filter((leaf) => !PRIVATE.includes(leaf.path[0] ?? '') && isAsked(leaf));
  const kept = piece.leaves.filter(({ path: [top = ''] }) => PRIVATE.includes(top));
  const listed = new Set(GROUPS.flatMap(([, fields]) => fields));
  const others = [...new Set(published.map(({ path: [top = ''] }) => top))].filter((top) => !listed.has(top));
  const groups = [...GROUPS, [LAST, others] as const];
  const publish = posted?.get('publish') ?? textOf(kept, 'publish');
  return html`${view.isStale ? staleNote(piece.text, `/pieces/${piece.id}`) : ''}
  ${problemsNote(view, `/pieces/${piece.id}/text`, 'pieces')}
  ${piece.unknown.length > 0 ? html`<p class="problem">This form does not know ${piece.unknown.join(', ')}. <a href="/pieces/${piece.id}/text">Edit the text</a></p>` : ''}
  ${view.preview}
  ${postForm(
    `/pieces/${piece.id}`,
    token,
    html`<input type="hidden" name="digest" value="${piece.digest}" />
      <div class="sides">
        <section class="public" aria-labelledby="public-head">
          <h2 id="public-head">${publish === 'no' ? 'Would be published, if this piece were' : 'Will be published'}</h2>
          ${groups.map(([heading, fields]) =>
            drawGroup(
              heading,
              fields.flatMap((name) => published.filter(({ path: [top = ''] }) => top === name)),
              shown,
            ),
          )}
          <div class="field">
            <label for="story">Story</label>
            <textarea id="story" name="story" rows="10" aria-describedby="story-says">
${posted?.get('story') ?? piece.story}</textarea>
            <p class="says" id="story-says">
              For visitors. An empty line begins a new paragraph; *stars* around a word make it italic.
            </p>
          </div>
        </section>
        <section class="private" aria-labelledby="private-head">
          <h2 id="private-head">Stays on this machine</h2>
          ${kept.filter((leaf) => leaf.kind !== 'pairs' || isInUse(leaf, shown)).map((leaf) => drawLeaf(leaf, shown))}
          ${piece.ledgerColumns.map((column) => drawLedger(column, view, shown))}
        </section>
      </div>
      <p class="doing saving">
        <button class="main" type="submit">Save</button> <a href="/pieces/${piece.id}">Leave it as it was</a>
      </p>`,
    { draft: `/pieces/${piece.id}`, asks: `/pieces/${piece.id}/preview`, shows: 'preview' },
  )}`;
}

function drawGroup(heading: string, leaves: readonly Leaf[], shown: Shown): Html | '' {
  if (leaves.length === 0) return '';
  const isOpen = OPEN.includes(heading) || leaves.some((leaf) => isInUse(leaf, shown));
  return html`<details class="group" ${isOpen ? 'open' : ''}>
    <summary><h3>${heading}</h3></summary>
    <div class="boxes">${drawFields(leaves, PIECE_ROWS, shown)}</div>
  </details>`;
}

function drawLedger(column: string, { piece, posted }: PieceView, shown: Shown): Html {
  const row = ledgerRow(column);
  const text = posted?.get(`ledger.${column}`) ?? piece.ledger[column] ?? '';
  return drawLeaf(
    { kind: text.includes('\n') ? 'lines' : 'words', path: ['ledger', column], row, held: text, text },
    shown,
  );
}

function textOf(leaves: readonly Leaf[], name: string): string {
  const leaf = leaves.find((one) => nameOf(one) === name);
  return leaf !== undefined && 'text' in leaf ? leaf.text : '';
}
