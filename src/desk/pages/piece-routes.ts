import type { Hono } from 'hono';
import { html } from 'hono/html';
import { PIECE_ROWS } from '../../catalogue/fields/piece-fields.ts';
import type { FieldFacts, List } from '../../catalogue/fields/row.ts';
import type { CabinetState } from '../cabinet-state.ts';
import { FORBIDDEN, foundIn, pieceNamed, postedOf, text, told } from '../desk.ts';
import type { Desk } from '../desk.ts';
import type { Html } from '../frame.ts';
import { namesIn } from '../new-names.ts';
import { savePiece } from '../save-piece.ts';
import type { PieceOnDesk } from '../save-piece.ts';
import { pieceForm } from './piece-page.ts';
import type { PieceView } from './piece-page.ts';

export function pieceRoutes(app: Hono, desk: Desk): void {
  const { state, token, tools } = desk;
  const aloud = (row: FieldFacts, words: string, scale?: string): string => {
    if (row.reads === undefined || words.trim() === '') return '';
    const lines = row.control === 'lines' ? words.split('\n').filter((one) => one.trim() !== '') : [words];
    return lines
      .map((line) => {
        if (row.blanks === true && ['unknown', 'none'].includes(line.trim())) return '';
        const read = tools.readAloud(row.reads ?? 'date', line, state.records(), scale === undefined ? {} : { scale });
        return read.ok ? read.value : read.problem;
      })
      .filter((one) => one !== '')
      .join(' ');
  };
  const view = (piece: PieceOnDesk, more: Partial<PieceView> = {}): Html => {
    const scale =
      more.posted?.get('grade-scale') ??
      (typeof piece.facts?.['grade-scale'] === 'string' ? piece.facts['grade-scale'] : undefined);
    const records = state.records();
    const body = pieceForm({
      piece, records, token, posted: null, problems: [], unread: {}, isStale: false,
      aloud: (row, words) => aloud(row, words, scale === '' ? undefined : scale),
      listId: (list) => `list-${list}`,
      ...more,
    }); // prettier-ignore
    return html`${body} ${(['rulers', 'mints', 'denominations'] as const).map((list) => datalist(list, state))}`;
  };
  const title = (piece: PieceOnDesk): string =>
    typeof piece.facts?.['title'] === 'string' ? piece.facts['title'] : piece.id;
  app.get('/pieces/:id', async (c) => {
    const piece = await pieceNamed(state, c.req.param('id'));
    if (piece === null) return c.notFound();
    if (piece.facts === null) return c.redirect(`/pieces/${piece.id}/text`, 303);
    const now = foundIn(state, piece.file);
    return desk.page(
      c,
      title(piece),
      html`${
          now.length === 0
            ? ''
            : html`<div class="problem">
                <ul>
                  ${now.map(({ field, says }) => html`<li>${field ?? ''}: ${says}</li>`)}
                </ul>
              </div>`
        }
        <p class="doing">
          <a href="/pieces/${piece.id}/photographs">Photographs</a>
          <a href="/pieces/${piece.id}/text">The file as text</a>
          <a href="/new?like=${piece.id}">A new piece like this one</a>
        </p>
        ${view(piece)}`,
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
    if (done.ok) return c.redirect(`/pieces/${piece.id}?told=saved`, 303);
    return desk.page(c, title(piece), view(piece, { posted, unread: { '': done.problem } }), 409);
  });
  app.post('/read', async (c) => {
    const form = await desk.form(c);
    if (form === null) return c.text(FORBIDDEN, 403);
    const row = rowNamed(text(form, 'field') ?? '');
    const scale = text(form, 'scale');
    return c.json({
      says:
        row === null ? '' : aloud(row, text(form, 'words') ?? '', scale === null || scale === '' ? undefined : scale),
    });
  });
}

/** The row of a box by its name: `obverse.legend`, `provenance.0.when`, `ledger.cost`. */
function rowNamed(name: string): FieldFacts | null {
  const path = name.split('.').filter((step) => !/^\d+$/.test(step));
  if (path[0] === 'ledger') {
    const reads = ['cost', 'value', 'insured'].includes(path[1] ?? '')
      ? 'money'
      : path[1] === 'acquired'
        ? 'date'
        : null;
    return reads === null ? null : { label: '', says: '', example: '', control: 'line', reads };
  }
  let rows: Readonly<Record<string, FieldFacts>> = PIECE_ROWS;
  let row: FieldFacts | null = null;
  for (const step of path) {
    const next: FieldFacts | undefined = Object.hasOwn(rows, step) ? rows[step] : undefined;
    // A face of `photographs` is a choice of its field and no row.
    if (next === undefined) continue;
    row = next;
    rows = next.parts ?? {};
  }
  return row;
}

function datalist(list: List, state: CabinetState): Html {
  return html`<datalist id="list-${list}">
    ${namesIn(list, state.records()).map(({ id, names }) => html`<option value="${id}">${names[0] ?? id}</option>`)}
  </datalist>`;
}
