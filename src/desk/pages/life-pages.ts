import { today } from '../../catalogue/check-cabinet.ts';
import type { Hono } from 'hono';
import { html } from 'hono/html';
import { boughtByLedger, LIFE, LIFE_COLUMNS, readLife } from '../../catalogue/life.ts';
import { addRow } from '../../catalogue/write/edit-table.ts';
import { GROUPED_BY, tellWithout, TOTALLED, totalsOf } from '../../catalogue/totals.ts';
import type { TotalGroup } from '../../catalogue/totals.ts';
import { dueBack, moneyByYear, piecesByYear } from '../../core/life/accounts.ts';
import { courseOf, LIFE_EVENTS } from '../../core/life/life.ts';
import type { Course, LifeEvent } from '../../core/life/life.ts';
import type { FiledPiece } from '../../catalogue/records.ts';
import { formatMoney } from '../../core/money/money.ts';
import { digestOf, LEDGER } from '../cabinet-state.ts';
import type { Desk } from '../desk.ts';
import { postForm } from '../frame.ts';
import type { Html } from '../frame.ts';

const WORDS: Readonly<Record<string, string>> = {
  piece: 'Piece', date: 'When', event: 'What became of it', amount: 'For how much', costs: 'Costs beside it', with: 'From or to whom',
  due: 'Due back', deal: 'Deal', note: 'Note',
}; // prettier-ignore

/** What became of pieces, and what the cabinet comes to. */
export function lifePages(app: Hono, desk: Desk): void {
  const { state, page } = desk;
  app.get('/life', async (c) =>
    page(
      c,
      'Came and left',
      await lifePage(desk, c.req.query('piece') ?? '', new Map(), []),
      200,
      c.req.query('told') === 'saved' ? 'Saved.' : null,
    ),
  );
  app.post('/life', async (c) => {
    const form = await desk.form(c);
    if (form === null) return c.text('This form is not of this desk.', 403);
    const cells = new Map(LIFE_COLUMNS.map((column) => [column as string, textIn(form, column)]));
    const now = await state.textOf(LIFE);
    const isStale = textIn(form, 'digest') !== digestOf(now ?? '');
    const before = now === null || now.trim() === '' ? `${LIFE_COLUMNS.join(',')}\n` : now;
    const text = addRow(before, Object.fromEntries(cells));
    const change = { file: LIFE, text, from: now };
    const problems = isStale
      ? ['The table has been changed meanwhile. Look at it below, and save again.']
      : state.problemsOf([change]).map(({ field, says }) => `${field ?? ''}: ${says}`);
    const done = problems.length > 0 ? null : await desk.write([change]);
    if (done !== null && done.ok) return c.redirect('/life?told=saved', 303);
    const told = done === null ? problems : [done.problem];
    return page(c, 'Came and left', await lifePage(desk, '', cells, told), isStale ? 409 : 422);
  });
}

/** The ledger's figures added up. */
export function totalsPages(app: Hono, { state, page }: Desk): void {
  app.get('/totals', (c) => {
    const what = TOTALLED.find((one) => one === c.req.query('what')) ?? 'value';
    const by = GROUPED_BY.find((one) => one === c.req.query('by')) ?? 'storage';
    const { all, groups, leftOut } = totalsOf(state.records().pieces, state.ledger(), what, by);
    const row = (group: TotalGroup): Html =>
      html`<tr>
        <th scope="row">${group.name}</th>
        <td>${group.pieces}</td>
        <td>${group.sums.join(' and ') || 'nothing recorded'}</td>
        <td>${tellWithout(group, what)}</td>
      </tr>`;
    return page(
      c,
      'Totals',
      html` <form method="get" action="/totals" class="search">
          <div class="field">
            <label for="what">Add up</label
            ><select id="what" name="what">
              ${TOTALLED.map((one) => html`<option ${one === what ? 'selected' : ''}>${one}</option>`)}
            </select>
          </div>
          <div class="field">
            <label for="by">By</label
            ><select id="by" name="by">
              ${GROUPED_BY.map((one) => html`<option ${one === by ? 'selected' : ''}>${one}</option>`)}
            </select>
          </div>
          <button type="submit">Show</button>
        </form>
        <p>These are your own figures from the ledger, not a valuation. Currencies are never added to one another.</p>
        <div class="wide" tabindex="0" role="region" aria-label="Totals">
          <table>
            <thead>
              <tr>
                <th scope="col">Where</th>
                <th scope="col">Pieces</th>
                <th scope="col">Sum</th>
                <th scope="col">Without</th>
              </tr>
            </thead>
            <tbody>
              ${groups.map(row)}
            </tbody>
            <tfoot>
              ${row(all)}
            </tfoot>
          </table>
        </div>
        ${leftOut.map(({ why, pieces }) => html`<p>Not counted: ${pieces.join(', ')}, which ${why}.</p>`)}`,
    );
  });
}

async function lifePage(
  { state: held, token }: Desk,
  piece: string,
  cells: ReadonlyMap<string, string>,
  problems: readonly string[],
): Promise<Html> {
  const text = (await held.textOf(LIFE)) ?? '';
  const ledgerText = (await held.textOf(LEDGER)) ?? '';
  const { named, pieces } = held.records();
  const files = [{ file: LIFE, text }, { file: LEDGER, text: ledgerText }]; // prettier-ignore
  const life = readLife({ files }, named.pieces);
  const events = [...boughtByLedger({ files }, life), ...life.events];
  const byPiece = new Map<string, LifeEvent[]>();
  for (const event of events) byPiece.set(event.piece, [...(byPiece.get(event.piece) ?? []), event]);
  const courses = [...byPiece.values()].map(courseOf);
  const there = pieces.filter(({ fields }) => ['kept', 'lent'].includes(fields.status)).length;
  return html`${problemList(problems)} ${eventForm(token, digestOf(text), piece, cells, pieces)} ${lentSection(courses)}
    <section>
      <h2>Year by year</h2>
      ${yearTable(
        'Pieces by year',
        ['Year', 'Opening', 'Came', 'Left', 'Closing'],
        piecesByYear(courses, there).map((one) => [one.year, one.opening, one.came, one.left, one.closing]),
      )}
      ${yearTable(
        'Money by year',
        ['Year', 'Currency', 'Paid, with costs', 'Got, less costs'],
        moneyByYear(events, life.deals).map(({ year, currency, cost, proceeds }) => [
          year,
          currency,
          money(cost, currency),
          money(proceeds, currency),
        ]),
      )}
      <p class="says">
        Where no line tells how a piece came, what the ledger says under acquired and cost counts as bought. Opening is
        counted back from the ${there} pieces that are with you now.
      </p>
    </section>`;
}

function money(minor: number, currency: string): string {
  return minor < 0 ? `−${formatMoney({ minor: -minor, currency })}` : formatMoney({ minor, currency });
}

function problemList(problems: readonly string[]): Html | '' {
  if (problems.length === 0) return '';
  return html`<div class="problem" role="alert">
    <p>Nothing was written:</p>
    <ul>
      ${problems.map((says) => html`<li>${says}</li>`)}
    </ul>
  </div>`;
}

function eventForm(
  token: string,
  digest: string,
  piece: string,
  cells: ReadonlyMap<string, string>,
  pieces: readonly FiledPiece[],
): Html {
  return html`<section>
    <h2>Write down what became of a piece</h2>
    ${postForm(
      '/life',
      token,
      html`<input type="hidden" name="digest" value="${digest}" />
        <div class="boxes">
          ${LIFE_COLUMNS.map((column) => box(column, cells.get(column) ?? (column === 'piece' ? piece : '')))}
        </div>
        <datalist id="list-pieces">
          ${pieces.slice(0, 2000).map(({ id, fields }) => html`<option value="${id}">${fields.number}, ${fields.title}</option>`)}
        </datalist>
        <p class="says">
          A job lot or an exchange: give its pieces the same words under Deal. Its whole price goes into a line of its
          own, without a piece. No value is worked out for what was exchanged.
        </p>
        <p class="doing"><button class="main" type="submit">Save</button></p>`,
    )}
  </section>`;
}

function lentSection(courses: readonly Course[]): Html {
  const due = dueBack(courses, today());
  return html`<section>
    <h2>Lent</h2>
    ${
      due.length === 0
        ? html`<p>Nothing is lent.</p>`
        : html`<ul>
            ${due.map(({ event, isLate }) => html`<li><a href="/pieces/${event.piece}">${event.piece}</a>, lent ${event.date.text}${event.due === null ? ', no day to return it' : `, due back ${event.due.text}`}${isLate ? html` <b>(late)</b>` : ''}</li>`)}
          </ul>`
    }
  </section>`;
}

/** A table whose first column heads its rows. */
function yearTable(name: string, heads: readonly string[], rows: readonly (readonly (string | number)[])[]): Html {
  return html`<div class="wide" tabindex="0" role="region" aria-label="${name}">
    <table>
      <thead>
        <tr>
          ${heads.map((head) => html`<th scope="col">${head}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${rows.map(
          ([first, ...others]) =>
            html`<tr>
              <th scope="row">${first}</th>
              ${others.map((one) => html`<td>${one}</td>`)}
            </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}

function box(column: string, text: string): Html {
  const label = WORDS[column] ?? column;
  if (column === 'event')
    return html`<div class="field">
      <label for="event">${label}</label
      ><select id="event" name="event">
        ${Object.keys(LIFE_EVENTS).map((one) => html`<option ${one === text ? 'selected' : ''}>${one}</option>`)}
      </select>
    </div>`;
  return html`<div class="field">
    <label for="${column}">${label}</label
    ><input
      id="${column}"
      name="${column}"
      value="${text}"
      ${column === 'piece' ? html`list="list-pieces"` : ''}
      autocomplete="off"
    />
  </div>`;
}

function textIn(form: FormData, name: string): string {
  const held = form.get(name);
  return typeof held === 'string' ? held.trim() : '';
}
