import { today } from '../../catalogue/check-cabinet.ts';
import type { Context, Hono } from 'hono';
import { html } from 'hono/html';
import { cutRowAt } from '../../catalogue/write/edit-table.ts';
import { boughtByLedger, LIFE, LIFE_COLUMNS, readLife } from '../../catalogue/life-file.ts';
import { EXAMPLE } from '../../catalogue/ledger-totals.ts';
import { dueBack, moneyByYear, piecesByYear } from '../../core/life/money-by-year.ts';
import { courseOf, LIFE_EVENTS } from '../../core/life/life.ts';
import type { Course, LifeEvent } from '../../core/life/life.ts';
import type { FiledPiece } from '../../catalogue/records.ts';
import { formatMoney } from '../../core/money/money.ts';
import { digestOf, LEDGER } from '../cabinet-state.ts';
import { exhibitsWithout, onlyPieceOf } from '../change-exhibit.ts';
import { FORBIDDEN, text, writeUnlessWrong } from '../route-helpers.ts';
import type { Desk } from '../route-helpers.ts';
import { withCurrency } from '../form/ledger-rows.ts';
import { datalists } from '../form/read-aloud.ts';
import { postForm } from '../frame.ts';
import type { Html } from '../frame.ts';
import { calledById, idOf } from '../new-names.ts';
import { changesOfEvent } from '../write-event.ts';
import { writtenDown } from './life-table.ts';

type Column = (typeof LIFE_COLUMNS)[number];

/** The columns of the table as the form shows them: their labels, and what belongs in them. */
const WORDS: Readonly<Record<Column, readonly [label: string, says: string]>> = {
  piece: ['Piece', 'Its title or its number. Empty for the whole price of a job lot.'],
  date: ['When', 'A day, a month or a year: 2026-11-01, 2026-11, 2026.'],
  event: ['What happened', ''],
  amount: ['For how much', '60 GBP, or 60 alone in the currency of this cabinet. May be left empty.'],
  costs: ['Costs', 'What it cost beside that: postage, fees.'],
  with: ['From or to whom', 'Never published.'],
  due: ['Due back', 'Of what is lent: when it is to return.'],
  deal: ['Deal', 'The same words for all pieces of one job lot or exchange.'],
  note: ['Note', 'Never published.'],
};

/** What became of pieces, and what the cabinet comes to. */
export function lifePages(app: Hono, desk: Desk): void {
  const { state, page } = desk;
  const show = async (c: Context, form: Shown, status: 200 | 409 | 422): Promise<Response> =>
    page(c, 'Came and left', await lifePage(desk, form), status, c.req.query('told') === 'saved' ? 'Saved.' : null);
  app.get('/life', async (c) => {
    const piece = calledById(state.records())('pieces', c.req.query('piece') ?? '');
    return show(c, { cells: new Map([['piece', piece]]), problems: [], laid: null }, 200);
  });
  app.post('/life', async (c) => {
    const form = await desk.form(c);
    if (form === null) return c.text(FORBIDDEN, 403);
    const currency = state.records().cabinet?.fields.currency;
    const cells = new Map<string, string>(
      LIFE_COLUMNS.map((column) => {
        const words = (text(form, column) ?? '').trim();
        return [column, ['amount', 'costs'].includes(column) ? withCurrency(words, currency) : words];
      }),
    );
    const now = await state.textOf(LIFE);
    if (text(form, 'digest') !== digestOf(now ?? ''))
      return show(
        c,
        { cells, problems: ['The table has been changed meanwhile. Look at it below, and save again.'], laid: null },
        409,
      );
    const also = {
      takeOut: text(form, 'take-out') === 'yes',
      deleteEmptied: text(form, 'delete-emptied') === 'yes',
      publishYear: text(form, 'publish-year') === 'yes',
    };
    const change = await changesOfEvent(state, cells, now, also);
    const problems = change.ok ? state.problemsOf(change.value) : [];
    const isLaid = problems.some(({ file }) => file.startsWith('exhibits/'));
    const others = problems.filter(({ file }) => !file.startsWith('exhibits/'));
    const told = [
      ...(change.ok ? others.map(({ field, says }) => `${field ?? ''}: ${says}`) : [change.problem]),
      ...(isLaid ? ['It lies in an exhibit. Say below what becomes of that, and save again.'] : []),
    ];
    const laid = isLaid || also.takeOut ? also : null;
    if (!change.ok || problems.length > 0) return show(c, { cells, problems: told, laid }, 422);
    const done = await desk.write(change.value);
    return done.ok
      ? c.redirect('/life?told=saved', 303)
      : show(c, { cells, problems: [done.problem], laid: null }, 422);
  });
  app.post('/life/remove', async (c) => {
    const form = await desk.form(c);
    if (form === null) return c.text(FORBIDDEN, 403);
    const from = (await state.textOf(LIFE)) ?? '';
    const isNow = text(form, 'digest') === digestOf(from);
    const after = cutRowAt(from, Number(text(form, 'line') ?? '0'));
    const problem =
      !isNow || after === from
        ? 'The table has been changed meanwhile. Look at it below, and remove the line then.'
        : await writeUnlessWrong(desk, [{ file: LIFE, text: after, from }]);
    if (problem === null) return c.redirect('/life?told=saved', 303);
    return show(c, { cells: new Map(), problems: [problem], laid: null }, isNow ? 422 : 409);
  });
}

/** What the form of an event shows beside its boxes; `laid` says of which exhibits a piece that leaves must be taken out. */
type Shown = {
  readonly cells: ReadonlyMap<string, string>;
  readonly problems: readonly string[];
  readonly laid: { readonly takeOut: boolean; readonly deleteEmptied: boolean } | null;
};

async function lifePage({ state: held, token }: Desk, form: Shown): Promise<Html> {
  const text = (await held.textOf(LIFE)) ?? '';
  const ledgerText = (await held.textOf(LEDGER)) ?? '';
  const { named, pieces } = held.records();
  const own = pieces.filter(({ id }) => id !== EXAMPLE);
  const files = [{ file: LIFE, text }, { file: LEDGER, text: ledgerText }]; // prettier-ignore
  const life = readLife({ files }, named.pieces);
  const all = [...boughtByLedger({ files }, life), ...life.events];
  const events = all.filter(({ piece }) => piece !== EXAMPLE);
  const byPiece = new Map<string, LifeEvent[]>();
  for (const event of events) byPiece.set(event.piece, [...(byPiece.get(event.piece) ?? []), event]);
  const courses = [...byPiece.values()].map(courseOf);
  const there = own.filter(({ fields }) => ['kept', 'lent'].includes(fields.status)).length;
  return html`${problemList(form.problems)} ${eventForm(held, token, digestOf(text), form)}
    ${lentSection(courses, pieces)} ${writtenDown(held.records(), text, token)}
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

function eventForm(state: Desk['state'], token: string, digest: string, { cells, laid }: Shown): Html {
  return html`<section>
    <h2>Write down what became of a piece</h2>
    ${postForm(
      '/life',
      token,
      html`<input type="hidden" name="digest" value="${digest}" />
        <div class="boxes">${LIFE_COLUMNS.map((column) => box(column, cells.get(column) ?? ''))}</div>
        <label class="tick"
          ><input type="checkbox" name="publish-year" value="yes" /> Of a piece that came: publish the year on its page,
          and neither from whom nor for how much</label
        >
        ${datalists(state, ['pieces'])} ${laid === null ? '' : takeOut(state, cells.get('piece') ?? '', laid)}
        <p class="says">
          A job lot or an exchange: give its pieces the same words under Deal. Its whole price goes into a line of its
          own, without a piece. No value is worked out for what was exchanged. What was saved by mistake is taken back
          under <a href="/undo">Undo</a>.
        </p>
        <p class="doing"><button class="main" type="submit">Save</button></p>`,
    )}
  </section>`;
}

/** What is to be done with the exhibits in which a piece lies that leaves. */
function takeOut(state: Desk['state'], said: string, laid: NonNullable<Shown['laid']>): Html {
  const exhibits = exhibitsWithout(state, idOf('pieces', said, state.records()) ?? said);
  const only = exhibits.filter(({ left }) => left === null);
  const tick = (name: string, isTicked: boolean, words: string): Html =>
    html`<label class="tick"
      ><input type="checkbox" name="${name}" value="yes" ${isTicked ? 'checked' : ''} /> ${words}</label
    >`;
  return html`<div class="problem" role="alert">
    <ul>
      ${exhibits.map(({ title }) => html`<li>It lies in the exhibit “${title}”, and what is no longer with you is not exhibited.</li>`)}
      ${only.length === 0 ? '' : html`<li>${onlyPieceOf(only)}</li>`}
    </ul>
    ${exhibits.length === only.length ? '' : tick('take-out', laid.takeOut, 'Take it out of the exhibit as well')}
    ${
      only.length === 0
        ? ''
        : tick(
            'delete-emptied',
            laid.deleteEmptied,
            `Delete ${only.map(({ title }) => `the exhibit “${title}”`).join(' and ')} as well`,
          )
    }
  </div>`;
}

function lentSection(courses: readonly Course[], pieces: readonly FiledPiece[]): Html {
  const titles = new Map(pieces.map(({ id, fields }) => [id, fields.title]));
  const due = dueBack(courses, today());
  return html`<section>
    <h2>Lent</h2>
    ${
      due.length === 0
        ? html`<p>Nothing is lent.</p>`
        : html`<ul>
            ${due.map(({ event, isLate }) => html`<li><a href="/pieces/${event.piece}">${titles.get(event.piece) ?? event.piece}</a>, lent ${event.date.text}${event.due === null ? ', no day to return it' : `, due back ${event.due.text}`}${isLate ? html` <b>(late)</b>` : ''}</li>`)}
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

function box(column: Column, words: string): Html {
  const [label, says] = WORDS[column];
  if (column === 'event')
    return html`<div class="field">
      <label for="event">${label}</label
      ><select id="event" name="event">
        ${Object.keys(LIFE_EVENTS).map((one) => html`<option ${one === words ? 'selected' : ''}>${one}</option>`)}
      </select>
    </div>`;
  return html`<div class="field">
    <label for="${column}">${label}</label
    ><input
      id="${column}"
      name="${column}"
      value="${words}"
      ${column === 'piece' ? html`list="list-pieces"` : ''}
      autocomplete="off"
      aria-describedby="${column}-says"
    />
    <p class="says" id="${column}-says">${says}</p>
  </div>`;
}
