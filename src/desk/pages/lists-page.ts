import { html } from 'hono/html';
import { KINDS } from '../../catalogue/fields/piece-fields.ts';
import type { CabinetState } from '../cabinet-state.ts';
import { postForm } from '../frame.ts';
import type { Html } from '../frame.ts';
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
    ${newListForms(state, token)}
    ${LISTS.map(
      (list) =>
        html`<details class="group" ${['sets', 'exhibits'].includes(list) ? 'open' : ''}>
          <summary><h2>${WORDS[list]} (${named[list].length})</h2></summary>
          <ul class="names">
            ${named[list].map((id) => html`<li><a href="${list === 'exhibits' ? '/exhibits' : `/lists/${list}`}/${id}">${titles(list).get(id) ?? id}</a></li>`)}
          </ul>
        </details>`,
    )}`;
}

/** The form for a new piece. */
export function newPage(
  state: CabinetState,
  tools: DeskTools,
  token: string,
  posted: Posted | null,
  problem: string | null,
  like: string,
): Html {
  const { pieces } = state.records();
  const number = posted?.get('number') ?? tools.nextNumber(pieces.map(({ fields }) => fields.number));
  const kind = posted?.get('kind') ?? pieces.find(({ id }) => id === like)?.fields.kind ?? 'coin';
  return html`${problem === null ? '' : html`<div class="problem" role="alert"><p>Nothing was written. ${problem}</p></div>`}
  ${postForm(
    '/new',
    token,
    html`<div class="boxes">
        <div class="field">
          <label for="title">Title</label
          ><input
            id="title"
            name="title"
            value="${posted?.get('title') ?? ''}"
            required
            autocomplete="off"
            aria-describedby="title-says"
          />
          <p class="says" id="title-says">What it is, in a line. Its folder is named after it.</p>
        </div>
        <div class="field">
          <label for="number">Number</label
          ><input id="number" name="number" value="${number}" required autocomplete="off" />
        </div>
        <div class="field">
          <label for="kind">Kind</label
          ><select id="kind" name="kind">
            ${KINDS.map((one) => html`<option value="${one}" ${one === kind ? 'selected' : ''}>${one}</option>`)}
          </select>
        </div>
        <div class="field">
          <label for="like">Like another piece</label
          ><input
            id="like"
            name="like"
            value="${posted?.get('like') ?? like}"
            list="list-pieces"
            autocomplete="off"
            aria-describedby="like-says"
          />
          <p class="says" id="like-says">
            Ruler, mint, metal, designs and the like are taken over; never its weight, grade, dies or history.
          </p>
        </div>
      </div>
      <datalist id="list-pieces">
        ${pieces.slice(0, 2000).map(({ id, fields }) => html`<option value="${id}">${fields.number}, ${fields.title}</option>`)}
      </datalist>
      <p class="doing"><button class="main" type="submit">Make the piece</button></p>`,
  )}`;
}
