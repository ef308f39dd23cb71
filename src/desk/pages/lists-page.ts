import { html } from 'hono/html';
import { EXAMPLE } from '../../catalogue/totals.ts';
import { KINDS } from '../../catalogue/fields/piece-fields.ts';
import type { CabinetState } from '../cabinet-state.ts';
import { datalists, typesList } from '../form/reading.ts';
import { postForm } from '../frame.ts';
import type { Html } from '../frame.ts';
import { seriesList } from './types-page.ts';
import { newListForms } from './new-list-forms.ts';
import type { Posted } from '../form/leaves.ts';
import type { DeskTools } from '../tools.ts';

const LISTS = ['rulers', 'mints', 'denominations', 'works', 'eras', 'sets', 'exhibits'] as const;
const WORDS: Readonly<Record<(typeof LISTS)[number], string>> = {
  rulers: 'Rulers', mints: 'Mints', denominations: 'Denominations', works: 'Books', eras: 'Era schemes', sets: 'Sets',
  exhibits: 'Exhibits',
}; // prettier-ignore

/** Every file that pieces share, to be edited. */
export function listsPage(state: CabinetState, token: string, problem: string | null): Html {
  const { named, ...records } = state.records();
  const titles = (list: (typeof LISTS)[number]): ReadonlyMap<string, string> =>
    new Map(records[list].map(({ id, fields }) => [id, 'title' in fields ? fields.title : fields.name]));
  return html`${problem === null ? '' : html`<p class="problem">${problem}</p>`}
    <p><a href="/lists/cabinet/cabinet">The cabinet itself: its title, its keeper, its address</a></p>
    ${newListForms(state, token)} ${seriesList(state, token)}
    ${LISTS.map(
      (list) =>
        html`<details class="group" ${['sets', 'exhibits'].includes(list) ? 'open' : ''}>
          <summary><h2>${WORDS[list]} (${named[list].length})</h2></summary>
          ${named[list].length === 0 ? html`<p class="says">None yet.</p>` : ''}
          <ul class="names">
            ${named[list].map((id) => html`<li><a href="${list === 'exhibits' ? '/exhibits' : `/lists/${list}`}/${id}">${titles(list).get(id) ?? id}</a></li>`)}
          </ul>
        </details>`,
    )}`;
}

/** The form for a new piece; `asked` is what the address says it is to be like. */
export function newPage(
  state: CabinetState,
  { nextNumber }: DeskTools,
  token: string,
  posted: Posted,
  problem: string | null,
): Html {
  const records = state.records();
  const said = (name: string): string => posted.get(name) ?? '';
  const like = records.pieces.find(({ id }) => id === said('like'));
  const numbers = records.pieces.flatMap(({ id, fields }) => (id === EXAMPLE ? [] : [fields.number]));
  const number = posted.get('number') ?? (numbers.length === 0 ? '1' : nextNumber(numbers));
  const kind = posted.get('kind') ?? like?.fields.kind ?? 'coin';
  const hasTypes = records.series.length > 0;
  const box = (name: string, label: string, says: string, value: string, more: Html | '' = ''): Html =>
    html`<div class="field">
      <label for="${name}">${label}</label
      ><input id="${name}" name="${name}" value="${value}" autocomplete="off" aria-describedby="${name}-says" ${more} />
      <p class="says" id="${name}-says">${says}</p>
    </div>`;
  return html`${problem === null ? '' : html`<div class="problem" role="alert"><p>Nothing was written. ${problem}</p></div>`}
  ${postForm(
    '/new',
    token,
    html`<div class="boxes">
        ${box('title', 'Title', 'What it is, in a line: Penny of Edward I, London.', said('title'), hasTypes ? '' : html`required`)}
        ${box('number', 'Number', 'Your own inventory number; the next one is proposed.', number, html`required`)}
        <div class="field">
          <label for="kind">Kind</label
          ><select id="kind" name="kind">
            ${KINDS.map((one) => html`<option value="${one}" ${one === kind ? 'selected' : ''}>${one}</option>`)}
          </select>
        </div>
        ${box('like', 'Like another piece', 'May be left empty. Ruler, mint, metal, designs and the like are taken over; never its weight, grade, dies or history.', like?.fields.title ?? said('like'), html`list="list-pieces"`)}
        ${hasTypes ? box('type', 'Of a type', 'May be left empty. What the piece leaves out is then the type’s.', said('type'), html`list="list-types"`) : ''}
      </div>
      ${datalists(state, ['pieces'])} ${hasTypes ? typesList(records) : ''}
      <p class="doing"><button class="main" type="submit">Make the piece</button></p>
      <p class="says">
        Everything else is filled in on the page that follows, and nothing is on the web before you upload it.
      </p>`,
  )}`;
}
