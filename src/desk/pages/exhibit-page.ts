import type { Context, Hono } from 'hono';
import { html } from 'hono/html';
import { exhibitRemarks } from '../../catalogue/exhibits/exhibit-remarks.ts';
import type { Records } from '../../catalogue/records.ts';
import { caseFromAbove } from '../../site/models/exhibit/case-from-above.ts';
import { shownExhibit } from '../../site/models/exhibit/shown-exhibit.ts';
import { setCase } from '../../site/models/exhibit/planned-case.ts';
import { casesOf, changeExhibit } from '../change-exhibit.ts';
import type { CaseHeld, GroupHeld, PieceHeld, Spot } from '../change-exhibit.ts';
import { FORBIDDEN, foundIn, postedOf, text, told, writeUnlessWrong } from '../route-helpers.ts';
import type { Desk } from '../route-helpers.ts';
import { datalists } from '../form/read-aloud.ts';
import type { Html } from '../frame.ts';
import { linkedCabinet } from '../linked-cabinet.ts';
import { readListFile } from '../save-list-file.ts';
import type { ListFileOnDesk } from '../save-list-file.ts';
import type { CaseFromAbove, FaceInCase } from '../../site/models/exhibit/case-from-above.ts';
import { exhibitWords } from '../../site/words/exhibits.ts';
import { drawMarks } from '../draw-marks.ts';

/** The cases of an exhibit: pieces laid and moved, with the plan of each case and its remarks beside it. */
export function exhibitRoutes(app: Hono, desk: Desk): void {
  const { state } = desk;
  const show = (c: Context, held: ListFileOnDesk, problem: string | null, status: 200 | 409 | 422 = 200) =>
    desk.page(
      c,
      `Cases of ${typeof held.facts?.['title'] === 'string' ? held.facts['title'] : held.id}`,
      exhibitPage(desk, held, problem, { at: c.req.query('at') ?? '', did: c.req.query('did') ?? '' }),
      status,
      told(c),
    );
  app.get('/exhibits/:id', async (c) => {
    const held = await readListFile(state, 'exhibits', c.req.param('id'));
    if (held === null) return c.notFound();
    return held.facts === null ? c.redirect(`/lists/exhibits/${held.id}/text`, 303) : show(c, held, null);
  });
  app.post('/exhibits/:id', async (c) => {
    const form = await desk.form(c);
    if (form === null) return c.text(FORBIDDEN, 403);
    const held = await readListFile(state, 'exhibits', c.req.param('id'));
    if (held === null) return c.notFound();
    if (text(form, 'digest') !== held.digest)
      return show(c, held, 'The exhibit was changed meanwhile. It is shown as it is now; do it again.', 409);
    const changed = changeExhibit(state, held.text, held.facts, postedOf(form));
    if (!changed.ok) return show(c, held, changed.problem, 422);
    const { text: after, spot, also } = changed.value;
    const problem = after === held.text ? null : await writeUnlessWrong(desk, [{ file: held.file, text: after, from: held.text }]); // prettier-ignore
    if (problem !== null) return show(c, held, problem, 422);
    const query = new URLSearchParams({
      at: spot.join('.'),
      did: text(form, 'do') ?? '',
      told: also ?? (after === held.text ? 'nothing' : 'saved'),
    });
    // A browser gives the keyboard back to the same button only where the address names no other place.
    const place = BACK_TO_BUTTON.has(text(form, 'do') ?? '') ? '' : `#g-${spot[0]}-${spot[1]}`;
    return c.redirect(`/exhibits/${held.id}?${query.toString()}${place}`, 303);
  });
}

/** After these the same button has the keyboard again. */
const BACK_TO_BUTTON = new Set(['earlier', 'later', 'take-out-piece', 'add-piece']);

/** What was done last and where, so that the same button has the keyboard again. */
type Last = { readonly at: string; readonly did: string };
type Laid = {
  readonly desk: Desk;
  readonly held: ListFileOnDesk;
  readonly last: Last;
  readonly titles: ReadonlyMap<string, string>;
  /** The pieces whose obverse has a photograph. */
  readonly pictured: ReadonlySet<string>;
};

function exhibitPage(desk: Desk, held: ListFileOnDesk, problem: string | null, last: Last): Html {
  const { state } = desk;
  const records = state.records();
  const titles = new Map(records.pieces.map(({ id, fields }) => [id, fields.title]));
  const pictured = new Set(records.pieces.flatMap(({ id, pictures }) => (pictures.some(({ face }) => face === 'obverse') ? [id] : []))); // prettier-ignore
  const laid: Laid = { desk, held, last, titles, pictured };
  const cases = casesOf(held.facts);
  const now = foundIn(state, held.file);
  return html`${problem === null ? '' : html`<p class="problem" role="alert">${problem}</p>`}
    ${now.length === 0 ? '' : html`<ul class="problem">${now.map(({ field, says }) => html`<li>${field ?? ''}: ${says}</li>`)}</ul>`}
    <p class="doing">
      <a href="/lists/exhibits/${held.id}">Its title, statement, labels and books</a>
      <a href="/tickets?exhibit=${held.id}">Tickets for its pieces</a>
      <a href="/lists/exhibits/${held.id}/text">The file as text</a>
      <a href="/delete/exhibits/${held.id}">Delete this exhibit …</a>
    </p>
    <p class="says">
      Drag a piece to where it is to lie, or use Earlier and Later; past the end of a group comes the next group. Each
      change is saved at once and can be undone.
    </p>
    <div class="laying" data-exhibit="/exhibits/${held.id}">
      ${cases.map((one, c) => drawCaseForms(one, c, laid, plansOf(records, held.id)[c] ?? null))}
    </div>
    ${doForm(laid, [cases.length, 0, 0], html`<h2>One more case</h2>
      <div class="boxes">
        ${pieceBox('new-case', 'Its first piece')}
        <div class="field"><label for="new-inside">Inside it</label><input id="new-inside" name="inside" value="${wordsOf(cases.at(-1)?.fields['inside']) || '300 x 200 x 40 mm'}" autocomplete="off" /></div>
      </div>
      <p class="doing"><button name="do" value="add-case">Add the case</button></p>`)}
    ${remarksOf(records, held.id)}
    ${datalists(state, ['pieces'])}`; // prettier-ignore
}

function drawCaseForms(one: CaseHeld, c: number, laid: Laid, plan: Html | null): Html {
  return html`<section class="case" aria-labelledby="case-${c}">
    <h2 id="case-${c}">Case ${c + 1}${wordsOf(one.fields['title']) === '' ? '' : `: ${wordsOf(one.fields['title'])}`}</h2>
    <div class="beside-plan">
      <div>
        ${one.groups.map((group, g) => drawGroup(group, [c, g, 0], laid))}
        <details><summary>Add a group, or change the case</summary>
          ${doForm(laid, [c, 0, 0], html`<div class="boxes">
            <div class="field"><label for="group-title-${c}">Heading of the new group</label><input id="group-title-${c}" name="title" autocomplete="off" /></div>
            ${pieceBox(`group-${c}`, 'Its first piece')}
          </div>
          <p class="doing"><button name="do" value="add-group">Add the group</button></p>`)}
          ${doForm(laid, [c, 0, 0], html`<div class="boxes">
            <div class="field"><label for="case-title-${c}">Title of the case</label><input id="case-title-${c}" name="title" value="${wordsOf(one.fields['title'])}" autocomplete="off" /></div>
            <div class="field"><label for="inside-${c}">Inside it: width, height, depth</label><input id="inside-${c}" name="inside" value="${wordsOf(one.fields['inside'])}" autocomplete="off" /></div>
          </div>
          <p class="doing"><button name="do" value="save-case">Save the case</button> <button name="do" value="take-out-case">Take out the whole case</button></p>`)}
        </details>
      </div>
      ${plan ?? html`<p class="says">The plan is drawn when the exhibit can be read.</p>`}
    </div>
  </section>`; // prettier-ignore
}

function drawGroup({ fields, pieces }: GroupHeld, at: Spot, laid: Laid): Html {
  const name = `${at[0]}-${at[1]}`;
  const title = wordsOf(fields['title']);
  return html`<section class="laid-group" id="g-${name}" aria-labelledby="group-${name}-head">
    <h3 id="group-${name}-head">${title}</h3>
    <ol class="laid-pieces" data-group="${at[0]}.${at[1]}">
      ${pieces.map((piece, p) => drawPiece(piece, [at[0], at[1], p], laid))}
    </ol>
    ${doForm(laid, at, html`${pieceBox(`add-${name}`, 'One more piece')} <button name="do" value="add-piece" ${focus(laid, at, 'add-piece')}>Add it</button>`, 'adding')}
    <details><summary>Heading and text of this group</summary>
      ${doForm(laid, at, html`<div class="field"><label for="title-${name}">Heading</label><input id="title-${name}" name="title" value="${title}" autocomplete="off" /></div>
        <div class="field"><label for="text-${name}">What the visitor is to see in these pieces</label><textarea id="text-${name}" name="text" rows="3">
${wordsOf(fields['text'])}</textarea></div>
        <p class="doing"><button name="do" value="save-group">Save the group</button> <button name="do" value="take-out-group">Take out the group with its pieces</button></p>`)}
    </details>
  </section>`; // prettier-ignore
}

function drawPiece({ piece, side, label }: PieceHeld, at: Spot, laid: Laid): Html {
  const title = laid.titles.get(piece) ?? piece;
  const name = at.join('-');
  const button = (does: string, words: string): Html =>
    html`<button name="do" value="${does}" aria-label="${words}: ${title}" ${focus(laid, at, does)}>${words}</button>`;
  return html`<li draggable="true" data-at="${at.join('.')}">
    ${laid.pictured.has(piece) ? html`<img src="/pieces/${piece}/obverse.webp?wide=96" alt="" width="48" height="48" loading="lazy" />` : html`<span class="no-picture"></span>`}
    <div>
      <a href="/pieces/${piece}">${title}</a>
      ${doForm(laid, at, html`${button('earlier', 'Earlier')} ${button('later', 'Later')} ${button('take-out-piece', 'Take out')}`, 'steps')}
      <details><summary>Side and label</summary>
        ${doForm(laid, at, html`<div class="field"><label for="side-${name}">Side that lies upward</label><select id="side-${name}" name="side">
          ${['', 'obverse', 'reverse', 'both'].map((one) => html`<option value="${one}" ${one === side ? 'selected' : ''}>${one === '' ? 'obverse, where nothing is said' : one}</option>`)}</select></div>
          <div class="field"><label for="label-${name}">Your own label; empty: made from the piece</label><textarea id="label-${name}" name="label" rows="3">
${label}</textarea></div>
          <p class="doing"><button name="do" value="save-piece">Save side and label</button></p>`)}
      </details>
    </div>
  </li>`; // prettier-ignore
}

function focus({ last }: Laid, at: Spot, does: string): string {
  return last.at.startsWith(at.slice(0, does === 'add-piece' ? 2 : 3).join('.')) && last.did === does
    ? 'autofocus'
    : '';
}

/** A small form about one spot of the exhibit. */
function doForm({ desk, held }: Laid, at: Spot, body: Html, className = ''): Html {
  return html`<form method="post" action="/exhibits/${held.id}" class="${className}">
    <input type="hidden" name="form-token" value="${desk.token}" />
    <input type="hidden" name="digest" value="${held.digest}" />
    <input type="hidden" name="at" value="${at.join('.')}" />
    ${body}
  </form>`;
}

function pieceBox(id: string, label: string): Html {
  return html`<div class="field">
    <label for="${id}">${label}</label><input id="${id}" name="piece" list="list-pieces" autocomplete="off" />
  </div>`;
}

function wordsOf(held: unknown): string {
  return typeof held === 'string' ? held : '';
}

/** The exhibit beside nothing but its own pieces. */
function alone(records: Records, id: string): Records {
  const exhibits = records.exhibits.filter((one) => one.id === id);
  const shown = new Set(exhibits.flatMap(({ fields }) => fields.cases.flatMap(({ groups }) => groups.flatMap(({ pieces }) => pieces.map(({ piece }) => piece))))); // prettier-ignore
  return { ...records, exhibits, pieces: records.pieces.filter((piece) => shown.has(piece.id)) };
}

/** The plan of each case, seen from above. */
function plansOf(records: Records, id: string): readonly Html[] {
  const cabinet = linkedCabinet(alone(records, id));
  const [exhibit] = cabinet.lists.exhibits;
  if (exhibit === undefined) return [];
  const shown = shownExhibit(cabinet, exhibit);
  return shown.cases.map((one) => drawCase(caseFromAbove(setCase(one, shown.label), {})));
}

function remarksOf(records: Records, id: string): Html {
  const remarks = exhibitRemarks(alone(records, id), null);
  return html`<section aria-labelledby="remarks-head">
    <h2 id="remarks-head">Remarks</h2>
    ${remarks.length === 0 ? html`<p>None.</p>` : html`<p class="says">A line that is wanted in the exhibit is a box under <a href="/lists/exhibits/${id}">Its title, statement, labels and books</a>; one that is wanted of a piece is on its own page.</p><ul class="remarks">${remarks.map(({ says, source }) => html`<li>${says} <span class="says">(${source})</span></li>`)}</ul>`}
  </section>`; // prettier-ignore
}

/** The frame of a case, in its own millimetres. */
const FRAME = 5;

/** A case from above: every piece, heading and label at its place and of its size, in millimetres. */
export function drawCase(figure: CaseFromAbove): Html {
  const { width, height } = figure;
  const cards = [...figure.headings, ...figure.texts, ...figure.pieces.map(({ label }) => label)];
  return html`<figure class="plan">
    <svg viewBox="${-FRAME} ${-FRAME} ${width + 2 * FRAME} ${height + 2 * FRAME}" role="img" aria-label="${exhibitWords.caseSeen(figure.name)}">
      <rect class="case-frame" x="${-FRAME}" y="${-FRAME}" width="${width + 2 * FRAME}" height="${height + 2 * FRAME}" />
      <rect class="ground" width="${width}" height="${height}" />
      ${cards.map(({ box, marks }) => html`<g class="card"><rect x="${box.left}" y="${box.top}" width="${box.width}" height="${box.height}" />${drawMarks(marks)}</g>`)}
      ${figure.pieces.flatMap(({ faces }) => faces.map(drawFace))}
    </svg>
    <figcaption>${figure.says}
      ${figure.misfits.length === 0 ? exhibitWords.fits : html`<ul class="problem">${figure.misfits.map((says) => html`<li>${says}</li>`)}</ul>`}
      ${figure.key.length === 0 ? '' : html`<details><summary>${exhibitWords.planKey}</summary><ul>${figure.key.map((line) => html`<li>${line}</li>`)}</ul></details>`}
    </figcaption>
  </figure>`; // prettier-ignore
}

function drawFace({ box: { left, top, width, height }, round, metal }: FaceInCase): Html {
  return round
    ? html`<ellipse
        class="${metal}"
        cx="${left + width / 2}"
        cy="${top + height / 2}"
        rx="${width / 2}"
        ry="${height / 2}"
      />`
    : html`<rect class="${metal}" x="${left}" y="${top}" width="${width}" height="${height}" />`;
}
