import type { Context, Hono } from 'hono';
import { html } from 'hono/html';
import { fileId, freeId } from '../../core/file-id.ts';
import { typeIdProblem } from '../../catalogue/schema/series.ts';
import { formatYaml } from '../../catalogue/write/write-yaml.ts';
import { good } from '../../core/outcome.ts';
import { addType, boxesOf, editType, readTypesTable, removeType } from '../change-type.ts';
import type { TypeBox, TypesOnDesk } from '../change-type.ts';
import type { FileChange } from '../cabinet-files.ts';
import type { CabinetState } from '../cabinet-state.ts';
import { FORBIDDEN, foundIn, postedOf, text, told, writeUnlessWrong } from '../route-helpers.ts';
import type { Desk } from '../route-helpers.ts';
import { drawLeaf } from '../form/draw-leaf.ts';
import type { Shown } from '../form/draw-leaf.ts';
import { aloudIn, datalists } from '../form/read-aloud.ts';
import type { Posted } from '../form/leaves.ts';
import { postForm } from '../frame.ts';
import type { Html } from '../frame.ts';
import { linkTo } from '../links.ts';
import { calledById } from '../new-names.ts';
import type { Problem } from '../../catalogue/problem.ts';

/** The types of a series: looked at as a tree, changed in forms, added and removed. */
export function typesPages(app: Hono, desk: Desk): void {
  const { state } = desk;
  app.post('/types', async (c) => {
    const form = await desk.form(c);
    if (form === null) return c.text(FORBIDDEN, 403);
    const title = (text(form, 'title') ?? '').trim();
    const id = freeId(fileId(title), (one) => state.records().named.types.includes(one));
    const change: FileChange = { file: `types/${id}/series.yaml`, text: formatYaml({ title }), from: null };
    const problem = title === '' ? 'Write what the series is called.' : await writeUnlessWrong(desk, [change]);
    if (problem === null) return c.redirect(`/types/${id}?told=new`, 303);
    return desk.page(c, 'A new series of types', seriesForm(desk.token, problem), 422);
  });
  app.get('/types/:series', async (c) => {
    const table = await readTypesTable(state, c.req.param('series'));
    return table === null ? c.notFound() : showSeries(desk, c, table, null, null);
  });
  app.post('/types/:series', async (c) => {
    const form = await desk.form(c);
    if (form === null) return c.text(FORBIDDEN, 403);
    const table = await readTypesTable(state, c.req.param('series'));
    if (table === null) return c.notFound();
    const posted = postedOf(form);
    const cells = Object.fromEntries(['id', 'broader', 'label'].map((one) => [one, (posted.get(one) ?? '').trim()]));
    const { id = '' } = cells;
    const wrong = id === '' ? 'Write the id of the type, in small letters and digits: 3b.' : typeIdProblem(id);
    const added = wrong === null ? addType(table, cells) : null;
    const problem = added === null ? wrong : added.ok ? await writeUnlessWrong(desk, [added.value]) : added.problem;
    if (problem === null) return c.redirect(`/types/${table.series.id}/${id}?told=new`, 303);
    return showSeries(desk, c, table, problem, posted);
  });
  typeRoutes(app, desk);
}

function typeRoutes(app: Hono, desk: Desk): void {
  const { state } = desk;
  app.get('/types/:series/:type', async (c) => {
    const found = await typeAt(state, c);
    return found === null ? c.notFound() : showType(desk, c, found, {});
  });
  app.post('/types/:series/:type', async (c) => {
    const form = await desk.form(c);
    if (form === null) return c.text(FORBIDDEN, 403);
    const found = await typeAt(state, c);
    if (found === null) return c.notFound();
    const { table, id } = found;
    const posted = postedOf(form);
    const isRemoval = posted.get('do') === 'remove';
    if (posted.get('digest') !== table.digest) return showType(desk, c, found, { posted, isStale: true });
    const edited = isRemoval ? removeType(table, id) : editType(state, table, id, boxesOf(state, table, id), posted);
    if (!edited.ok) return showType(desk, c, found, { posted, problem: edited.problem });
    if (edited.value === null) return c.redirect(`${c.req.path}?told=nothing`, 303);
    const problems = state.problemsOf([edited.value]);
    if (problems.length > 0) return showType(desk, c, found, { posted, problems });
    const done = await desk.write([edited.value]);
    if (!done.ok) return showType(desk, c, found, { posted, problem: done.problem });
    return c.redirect(isRemoval ? `/types/${table.series.id}?told=deleted` : `${c.req.path}?told=saved`, 303);
  });
}

type Found = { readonly table: TypesOnDesk; readonly id: string; readonly label: string };

async function typeAt(state: CabinetState, c: Context): Promise<Found | null> {
  const table = await readTypesTable(state, c.req.param('series') ?? '');
  const id = c.req.param('type') ?? '';
  const row = table?.series.tables.types?.rows.find(({ cells }) => cells['id'] === id);
  return table === null || row === undefined ? null : { table, id, label: row.cells['label'] ?? id };
}

/** Every series, and the form for a new one. */
export function seriesList(state: CabinetState, token: string): Html {
  const { series } = state.records();
  return html`<details class="group">
    <summary><h2>Series of types (${series.length})</h2></summary>
    <ul class="names">
      ${series.map(({ id, fields }) => html`<li><a href="/types/${id}">${fields.title}</a></li>`)}
    </ul>
    ${seriesForm(token, null)}
  </details>`;
}

function seriesForm(token: string, problem: string | null): Html {
  return html`${problem === null ? '' : html`<p class="problem" role="alert">${problem}</p>`}
  ${postForm(
    '/types',
    token,
    html`<div class="field">
        <label for="series-title">A new series of types called</label
        ><input id="series-title" name="title" required autocomplete="off" />
      </div>
      <p class="doing"><button type="submit">Make the series</button></p>`,
  )}`;
}

function showSeries(
  desk: Desk,
  c: Context,
  table: TypesOnDesk,
  problem: string | null,
  posted: Posted | null,
): Promise<Response> {
  const { series, file } = table;
  const rows = series.tables.types?.rows ?? [];
  const broader = new Map(rows.map(({ cells }) => [cells['id'] ?? '', cells['broader']]));
  const depth = (id: string, seen = 0): number => {
    const above = broader.get(id);
    return above === undefined || seen > 20 ? 0 : 1 + depth(above, seen + 1);
  };
  const box = (name: string, label: string, says: string): Html =>
    html`<div class="field">
      <label for="new-${name}">${label}</label
      ><input
        id="new-${name}"
        name="${name}"
        value="${posted?.get(name) ?? ''}"
        autocomplete="off"
        aria-describedby="new-${name}-says"
      />
      <p class="says" id="new-${name}-says">${says}</p>
    </div>`;
  const now = foundIn(desk.state, file);
  const body = html`${problem === null ? '' : html`<div class="problem" role="alert"><p>Nothing was written. ${problem}</p></div>`}
    ${now.length === 0 ? '' : html`<ul class="problem">${now.map(({ line, field, says }) => html`<li>Line ${line ?? ''}, ${field ?? ''}: ${says}</li>`)}</ul>`}
    <p class="doing"><a href="/lists/types/${series.id}/text">Its title, levels and characters, as text</a> <a href="/lists">All lists</a></p>
    <h2>Its types (${rows.length})</h2>
    ${rows.length === 0 ? html`<p>None yet.</p>` : ''}
    <ul class="types">
      ${rows.map(({ cells: { id = '', label } }) => html`<li class="below-${Math.min(4, depth(id))}"><a href="/types/${series.id}/${id}">${label ?? id}</a> <span class="says">${id}</span></li>`)}
    </ul>
    <h2>A new type</h2>
    ${postForm(
      `/types/${series.id}`,
      desk.token,
      html`<div class="boxes">
          ${box('id', 'Id', 'In small letters and digits, with points or hyphens: 3b, lc-3b. Pieces name it.')}
          ${box('label', 'Label', 'What it is called: Class 3b.')}
          ${box('broader', 'Broader type', 'The id of the type of which it is a part; may be left empty.')}
        </div>
        <p class="doing"><button class="main" type="submit">Add the type</button></p>`,
    )}`; // prettier-ignore
  return desk.page(c, series.fields.title, body, problem === null ? 200 : 422, told(c));
}

type TypeView = {
  readonly posted?: Posted;
  readonly problems?: readonly Problem[];
  readonly problem?: string;
  readonly isStale?: boolean;
};

function showType(
  { state, token, page }: Desk,
  c: Context,
  { table, id, label }: Found,
  view: TypeView,
): Promise<Response> {
  const { posted = null, problems = [], problem = null, isStale = false } = view;
  const boxes = boxesOf(state, table, id);
  const records = state.records();
  const here = `/types/${table.series.id}/${id}`;
  const known = new Map(boxes.map((one) => [one.column, one]));
  const shown: Shown = {
    posted,
    called: calledById(records),
    aloud: (row, words) => (/^[?-]$/.test(words.trim()) ? good('') : aloudIn(records, row, words, { scale: null, ruler: null })), // prettier-ignore
    problems: (name) => problems.flatMap(({ file, field, says }) => (file === table.file && known.get(field ?? '')?.name === name ? [says] : [])), // prettier-ignore
    otherwise: (name) => boxes.find((one) => one.name === name)?.otherwise ?? null,
    otherwiseFrom: 'Taken over',
  };
  const form = postForm(
    here,
    token,
    html`<input type="hidden" name="digest" value="${table.digest}" />
      <div class="boxes">${boxes.map((one) => drawType(one, shown))}</div>
      <p class="doing saving">
        <button class="main" type="submit">Save</button> <a href="${here}">Leave it as it was</a>
      </p>`,
  );
  const removal = postForm(
    here,
    token,
    html`<input type="hidden" name="digest" value="${table.digest}" /><button name="do" value="remove">
        Remove this type
      </button>
      <p class="says">Only a type that no other type, table or piece names. It can be undone.</p>`,
  );
  const says = [...(problem === null ? [] : [problem]), ...(isStale ? ['The table was changed meanwhile, and nothing was written. Your words are below; save again to write them.'] : [])]; // prettier-ignore
  const isWrong = says.length + problems.length > 0;
  const body = html`${
      isWrong
        ? html`<div class="problem" role="alert">
            <p>Nothing was written.</p>
            <ul>
              ${says.map((one) => html`<li>${one}</li>`)}
              ${problems.map(({ file, field, says: one }) => html`<li>${file === table.file ? `${known.get(field ?? '')?.row.label ?? field ?? ''}: ` : html`<a href="${linkTo(file)}">${file}</a>: `}${one}</li>`)}
            </ul>
          </div>`
        : ''
    }
    <p class="says">
      The id is ${id}. What is left empty is as the broader type says, or the whole series; ? is not known, - does not
      apply.
    </p>
    <p class="doing"><a href="/types/${table.series.id}">All types of ${table.series.fields.title}</a></p>
    ${form} ${removal} ${datalists(state, ['rulers', 'mints', 'denominations'])}`;
  return page(c, label, body, isStale ? 409 : isWrong ? 422 : 200, told(c));
}

function drawType({ name, row, text: held }: TypeBox, shown: Shown): Html {
  return drawLeaf({ kind: 'words', path: name.split('.'), row, held, text: held }, shown);
}
