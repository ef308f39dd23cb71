import type { Context, Hono } from 'hono';
import { html } from 'hono/html';
import type { List } from '../../catalogue/fields/row.ts';
import { DELETABLE } from '../delete-record.ts';
import { FORBIDDEN, foundIn, postedOf, text, told } from '../route-helpers.ts';
import type { Desk } from '../route-helpers.ts';
import { draftNote, draftOf, forgetDraft, postedDraft } from '../drafts.ts';
import { drawFields, labelOf, problemsNote, shownOf, staleNote } from '../form/form-parts.ts';
import type { FormView } from '../form/form-parts.ts';
import { aloudIn, datalists } from '../form/read-aloud.ts';
import { postForm } from '../frame.ts';
import type { Html } from '../frame.ts';
import { calledById } from '../new-names.ts';
import { newListFile } from '../new-list-file.ts';
import { editedText, isListFile, readListFile, saveListFile } from '../save-list-file.ts';
import type { ListFileOnDesk } from '../save-list-file.ts';
import type { Records } from '../../catalogue/records.ts';
import { countWords } from '../../site/words/counts.ts';
import { setsWords } from '../../site/words/sets.ts';
import { setStateOf } from '../linked-cabinet.ts';

const LISTS: readonly List[] = ['rulers', 'mints', 'denominations', 'works', 'sets'];

/** The form of a ruler, mint, denomination, book, scheme, set, exhibit, or of the cabinet itself. */
export function listFileRoutes(app: Hono, desk: Desk): void {
  const { state } = desk;
  const named = async (c: Context): Promise<ListFileOnDesk | null> => {
    const kind = c.req.param('kind') ?? '';
    return isListFile(kind) ? readListFile(state, kind, c.req.param('id') ?? '') : null;
  };
  app.get('/lists/:kind/:id', async (c) => {
    const held = await named(c);
    if (held === null) return c.notFound();
    if (held.facts === null) return c.redirect(`${c.req.path}/text`, 303);
    const draft = await draftOf(desk, c.req.path);
    const isShown = draft !== null && c.req.query('draft') === 'yes';
    const form = listFileForm(desk, held, isShown ? { posted: postedDraft(draft) } : {});
    const note = draftNote(desk, c.req.path, draft, isShown);
    return desk.page(c, titleOf(held), html`${note} ${form}`, 200, told(c));
  });
  app.post('/lists/:kind/:id', async (c) => {
    const form = await desk.form(c);
    if (form === null) return c.text(FORBIDDEN, 403);
    const held = await named(c);
    if (held === null) return c.notFound();
    const posted = postedOf(form);
    const saved = saveListFile(state, held, posted);
    const again = (status: 409 | 422, more: Partial<FormView>): Promise<Response> =>
      desk.page(c, titleOf(held), listFileForm(desk, held, { posted, ...more }), status);
    if (saved.kind === 'nothing') return c.redirect(`${c.req.path}?told=nothing`, 303);
    if (saved.kind === 'stale') return again(409, { isStale: true });
    if (saved.kind === 'wrong') return again(422, { problems: saved.problems, unread: saved.unread });
    const done = await desk.write(saved.changes);
    if (!done.ok) return again(409, { unread: { '': done.problem } });
    await forgetDraft(desk, c.req.path);
    return c.redirect(`${c.req.path}?told=saved`, 303);
  });
  // What a rule would yield, while it is being written; nothing is saved.
  app.post('/places', async (c) => {
    const form = await desk.form(c);
    if (form === null) return c.text(FORBIDDEN, 403);
    const [id, posted] = [text(form, 'of') ?? '', postedOf(form)];
    const held = id === '' ? null : await readListFile(state, 'sets', id);
    const titled = { get: (name: string) => posted.get(name) || (name === 'title' ? 'A new set' : null) };
    const after = held === null ? newListFile(state, 'sets', titled) : editedText(state, held, posted);
    if (!after.ok) return c.html(html`<p class="says">No places yet: ${after.problem}</p>`);
    const rule = 'text' in after.value ? after.value.text : (after.value.changes[0]?.text ?? '');
    return c.html(setPlaces(state.records(), id, rule));
  });
}

function titleOf({ facts, id }: ListFileOnDesk): string {
  const title = facts?.['title'] ?? facts?.['name'];
  return typeof title === 'string' ? title : id;
}

/** What is wrong with a file as it is. */
function problemsNow({ state }: Desk, { file, kind }: ListFileOnDesk): Html | '' {
  const found = foundIn(state, file);
  if (found.length === 0) return '';
  return html`<ul class="problem">
    ${found.map(({ field, says }) => html`<li>${field === null ? '' : `${labelOf(field, kind)}: `}${says}</li>`)}
  </ul>`;
}

function listFileForm(desk: Desk, held: ListFileOnDesk, more: Partial<FormView> = {}): Html {
  const { state, token } = desk;
  const here = `/lists/${held.kind}/${held.id}`;
  const view: FormView = {
    posted: null, problems: [], unread: {}, isStale: false,
    called: calledById(state.records()),
    aloud: (row, words) => aloudIn(state.records(), row, words, { scale: null, ruler: null }),
    ...more,
  }; // prettier-ignore
  const shown = shownOf(view);
  const isSet = held.kind === 'sets';
  const form = postForm(
    here,
    token,
    html`<input type="hidden" name="digest" value="${held.digest}" />
      ${isSet ? html`<input type="hidden" name="of" value="${held.id}" />` : ''}
      <div class="boxes">${drawFields(held.leaves, held.rows, shown)}</div>
      ${
        held.story === null
          ? ''
          : html`<div class="field">
              <label for="story">Statement</label>
              <textarea id="story" name="story" rows="8" aria-describedby="story-says">
${view.posted?.get('story') ?? held.story}</textarea>
              <p class="says" id="story-says">
                What the visitor reads first, 20 to 300 words. An empty line begins a new paragraph.
              </p>
            </div>`
      }
      <p class="doing saving">
        <button class="main" type="submit">Save</button> <a href="${here}">Leave it as it was</a>
      </p>`,
    { kind: held.kind, draft: here, ...(isSet ? { asks: '/places', shows: 'set-places' } : {}) },
  );
  return html`${view.isStale ? staleNote(held.text, here) : ''} ${problemsNote(view, `${here}/text`, held.kind)}
    ${view.problems.length > 0 ? '' : problemsNow(desk, held)}
    <p class="doing">
      ${held.kind === 'exhibits' ? html`<a href="/exhibits/${held.id}">Cases and pieces</a>` : ''}
      ${isSet ? html`<a href="#places-head">Its places</a>` : ''} <a href="${here}/text">The file as text</a>
      ${held.kind === 'cabinet' ? '' : html`<a href="/delete/${held.kind}/${held.id}">Delete this ${DELETABLE[held.kind]} …</a>`}
      <a href="/lists">All lists</a>
    </p>
    ${
      isSet
        ? html`<div class="sides">
            <section aria-label="The set">${form}</section>
            <section class="aside" aria-labelledby="places-head">
              <h2 id="places-head" tabindex="-1">Its places</h2>
              <div id="set-places" aria-live="polite">${setPlaces(state.records(), held.id, held.text)}</div>
            </section>
          </div>`
        : form
    }
    ${datalists(state, LISTS)}`;
}

/** How many places are drawn; the rest are counted. */
const MOST = 400;

/** The places of a set whose file says this, with the pieces that fill them. */
export function setPlaces(records: Records, id: string, text: string): Html {
  const state = setStateOf(records, id, text);
  if (!state.ok) return html`<p class="says">No places yet: ${state.problem}</p>`;
  const { places, filled, of, excused, spares } = state.value;
  const title = new Map(records.pieces.map((piece) => [piece.id, piece.fields.title]));
  return html`<p>
      Filled: <b>${countWords.filled(filled, of)}</b>${excused === 0 ? '' : `, and ${excused} that cannot be filled`}.
      ${spares.length === 0 ? '' : `Other pieces that fit: ${spares.length}.`}
    </p>
    <ol class="places">
      ${places
        .slice(0, MOST)
        .map(
          ({ label, state: is, piece, because }) =>
            html`<li class="${is}">
              <b>${label}</b>:
              ${setsWords.state[is]}${
                piece === undefined ? '' : html`, <a href="/pieces/${piece}">${title.get(piece) ?? piece}</a>`
              }${because === undefined ? '' : html` <span class="says">${because}</span>`}
            </li>`,
        )}
    </ol>
    ${places.length > MOST ? html`<p>And ${places.length - MOST} more places.</p>` : ''}`;
}
