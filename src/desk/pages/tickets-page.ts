import type { Hono } from 'hono';
import { html } from 'hono/html';
import { EXAMPLE } from '../../catalogue/ledger-totals.ts';
import { FORBIDDEN, texts } from '../route-helpers.ts';
import type { Desk } from '../route-helpers.ts';
import type { Html } from '../frame.ts';
import { selectPieces } from '../select-pieces.ts';
import type { Selection } from '../select-pieces.ts';
import { paperStyle, PAPERS, TICKET_CHOICES, ticketsOf } from '../tickets.ts';
import type { PaperName } from '../tickets.ts';
import { paperWords } from '../../site/words/paper.ts';

type Query = Readonly<Record<string, string>>;

/** Tickets for a tray, a tag, a set, an exhibit, the newest, or for the pieces chosen in the list. */
export function ticketRoutes(app: Hono, desk: Desk): void {
  for (const paper of Object.keys(PAPERS) as PaperName[])
    app.get(`/paper-${paper}.css`, (c) =>
      c.body(paperStyle(paper), 200, { 'Content-Type': 'text/css; charset=utf-8' }),
    );
  app.get('/tickets', (c) => {
    const query = new URL(c.req.url).searchParams;
    return desk.page(c, 'Tickets', ticketsPage(desk, Object.fromEntries(query), query.getAll('piece')));
  });
  app.post('/tickets', async (c) => {
    const form = await desk.form(c);
    if (form === null) return c.text(FORBIDDEN, 403);
    const pieces = texts(form, 'piece');
    return desk.page(c, 'Tickets', ticketsPage(desk, { chosen: 'yes' }, pieces));
  });
}

function ticketsPage({ state }: Desk, query: Query, pieces: readonly string[]): Html {
  const said = (name: string): string => query[name]?.trim() ?? '';
  const paper = said('paper') === 'letter' ? 'letter' : 'a4';
  const newest = Number.parseInt(said('newest'), 10);
  const selection: Selection = {
    ...(said('tray') === '' ? {} : { tray: said('tray') }),
    ...(said('tag') === '' ? {} : { tag: said('tag') }),
    ...(said('set') === '' ? {} : { set: said('set') }),
    ...(said('exhibit') === '' ? {} : { exhibit: said('exhibit') }),
    ...(newest > 0 ? { newest } : {}),
    ...(pieces.length === 0 ? {} : { pieces }),
  };
  const isAsked = Object.keys(selection).length > 0 || said('size') !== '';
  const found = isAsked ? selectPieces(state.records(), state.ledger(), selection) : null;
  const tickets = found?.ok === true ? ticketsOf(state.records(), found.value, said('size'), paper) : null;
  return html`<link rel="stylesheet" href="/paper-${paper}.css" />
    <div class="not-printed">
      ${selectionForm(state, said, pieces, paper)}
      ${found === null ? html`<p class="says">Choose which pieces; with nothing chosen, every piece that is with you or lent.</p>` : ''}
      ${found !== null && !found.ok ? html`<p class="problem" role="alert">${found.problem}</p>` : ''}
      ${
        tickets === null
          ? ''
          : html`<p role="status">
                ${tickets.count} ${tickets.count === 1 ? 'ticket' : 'tickets'}. Print this page from the menu of your
                browser; only the sheets are printed.
              </p>
              <p>${paperWords.how(PAPERS[paper].name)[1] ?? ''}</p>
              <p>${paperWords.foldHow}</p>
              ${tickets.reports.map((says) => html`<p class="says">${says}</p>`)}`
      }
    </div>
    ${tickets?.sheets ?? ''}`;
}

function selectionForm(
  state: Desk['state'],
  said: (name: string) => string,
  pieces: readonly string[],
  paper: PaperName,
): Html {
  const { sets, exhibits, pieces: all } = state.records();
  const tags = [...new Set(all.flatMap(({ fields }) => fields.tags))].sort();
  const trays = [
    ...new Set(
      all.filter(({ id }) => id !== EXAMPLE).flatMap(({ id }) => trayOf(state.ledger().get(id)?.['storage'] ?? '')),
    ),
  ].sort();
  const choose = (name: string, label: string, choices: readonly (readonly [string, string])[]): Html =>
    html`<div class="field">
      <label for="t-${name}">${label}</label
      ><select id="t-${name}" name="${name}">
        <option value="">any</option>
        ${choices.map(([value, words]) => html`<option value="${value}" ${value === said(name) ? 'selected' : ''}>${words}</option>`)}
      </select>
    </div>`;
  const named = (one: { readonly id: string; readonly fields: { readonly title: string } }) =>
    [one.id, one.fields.title] as const;
  return html`<form method="get" action="/tickets" class="search">
    ${pieces.map((id) => html`<input type="hidden" name="piece" value="${id}" />`)}
    ${pieces.length > 0 ? html`<p>${pieces.length} ${pieces.length === 1 ? 'piece' : 'pieces'} chosen in the list.</p>` : ''}
    ${choose(
      'tray',
      'Kept in',
      trays.map((one) => [one, one]),
    )}
    ${choose(
      'tag',
      'Tag',
      tags.map((one) => [one, one]),
    )}
    ${choose('set', 'Standing in the set', sets.map(named))} ${choose('exhibit', 'In the exhibit', exhibits.map(named))}
    <div class="field">
      <label for="t-newest">The newest, so many</label
      ><input id="t-newest" name="newest" value="${said('newest')}" inputmode="numeric" autocomplete="off" />
    </div>
    <div class="field">
      <label for="t-size">Cut for</label
      ><select id="t-size" name="size">
        ${TICKET_CHOICES.map(({ id, name }) => html`<option value="${id}" ${id === said('size') ? 'selected' : ''}>${name}</option>`)}
      </select>
    </div>
    <div class="field">
      <label for="t-paper">Paper</label
      ><select id="t-paper" name="paper">
        ${Object.entries(PAPERS).map(([id, { name }]) => html`<option value="${id}" ${id === paper ? 'selected' : ''}>${name}</option>`)}
      </select>
    </div>
    <button type="submit">Show the tickets</button>
  </form>`;
}

/** The tray of a place, and the whole cabinet it is in. */
function trayOf(storage: string): readonly string[] {
  const parts = storage.split(',').map((part) => part.trim());
  if (storage.trim() === '') return [];
  return parts.length < 2 ? parts : [parts[0] ?? '', parts.slice(0, 2).join(', ')];
}
