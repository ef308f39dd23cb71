import { html } from 'hono/html';
import { EXAMPLE } from '../../catalogue/ledger-totals.ts';
import { KINDS } from '../../catalogue/fields/piece-fields.ts';
import type { CabinetState } from '../cabinet-state.ts';
import { datalists, typesList } from '../form/read-aloud.ts';
import { postForm } from '../frame.ts';
import type { Html } from '../frame.ts';
import { seriesList } from './types-page.ts';
import type { Posted } from '../form/leaves.ts';
import type { DeskTools } from '../tools.ts';
import { ASKED, ONE_PER } from '../new-list-file.ts';
import { namesIn } from '../new-names.ts';

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

/** The forms for what is new beside pieces: a set, an exhibit, a name in a list. */
export function newListForms(state: CabinetState, token: string): Html {
  return html`${newSetForm(state, token)} ${newExhibitForm(state, token)} ${newNameForm(token)}`;
}

function newSetForm(state: CabinetState, token: string): Html {
  const named = (fact: keyof typeof ASKED): Html =>
    html`<div class="field">
      <label for="set-${fact}">Only of this ${fact}</label
      ><input id="set-${fact}" name="${fact}" list="set-list-${fact}" autocomplete="off" />
      <datalist id="set-list-${fact}">
        ${namesIn(ASKED[fact], state.records()).map(({ id, names }) => html`<option value="${id}">${names[0] ?? id}</option>`)}
      </datalist>
    </div>`;
  return html`<details class="group">
    <summary><h2>A new set</h2></summary>
    <div class="sides">
      ${postForm(
        '/lists/sets',
        token,
        html`<div class="boxes">
            <div class="field">
              <label for="set-title">What is the set?</label
              ><input id="set-title" name="title" required autocomplete="off" />
            </div>
            <div class="field">
              <label for="set-one-per">One piece for each</label
              ><select id="set-one-per" name="one-per">
                ${ONE_PER.map((one) => html`<option>${one}</option>`)}
              </select>
            </div>
            ${named('denomination')} ${named('ruler')} ${named('mint')}
            <div class="field">
              <label for="set-date">Made within</label
              ><input id="set-date" name="date" placeholder="1066/1553" autocomplete="off" />
            </div>
          </div>
          <p class="says">
            Where the rule yields too many places or too few, name them yourself on the page that follows.
          </p>
          <p class="doing"><button class="main" type="submit">Make the set</button></p>`,
        { kind: 'sets', asks: '/places', shows: 'new-places' },
      )}
      <section class="aside" aria-labelledby="new-places-head">
        <h3 id="new-places-head">Its places</h3>
        <div id="new-places" aria-live="polite"><p class="says">They appear here as you choose the rule.</p></div>
      </section>
    </div>
  </details>`;
}

function newExhibitForm(state: CabinetState, token: string): Html {
  const published = state
    .records()
    .pieces.filter(({ fields }) => fields.publish === 'yes' && ['kept', 'lent'].includes(fields.status))
    .toSorted((a, b) => NUMBERS.compare(a.fields.number, b.fields.number));
  return html`<details class="group">
    <summary><h2>A new exhibit</h2></summary>
    ${postForm(
      '/lists/exhibits',
      token,
      html`<div class="boxes">
          <div class="field">
            <label for="exhibit-title">Its title</label
            ><input id="exhibit-title" name="title" required autocomplete="off" />
          </div>
          <div class="field">
            <label for="exhibit-inside">Inside of each case</label
            ><input id="exhibit-inside" name="inside" value="300 x 200 x 40 mm" autocomplete="off" />
          </div>
        </div>
        ${
          published.length === 0
            ? html`<p>Only published pieces are exhibited, and there is none yet.</p>`
            : html`<fieldset>
                <legend>The pieces of its first case</legend>
                <p class="says">Groups, labels and further cases are made on the page that follows.</p>
                <div class="ticks">
                  ${published.slice(0, 500).map(({ id, fields }) => html`<label class="tick"><input type="checkbox" name="piece" value="${id}" /> ${fields.number}, ${fields.title}</label>`)}
                </div>
              </fieldset>`
        }
        <p class="doing"><button class="main" type="submit">Make the exhibit</button></p>`,
    )}
  </details>`;
}

const NUMBERS = new Intl.Collator('en', { numeric: true });

const NAMES = { rulers: 'ruler', mints: 'mint', denominations: 'denomination', works: 'book' } as const;

function newNameForm(token: string): Html {
  return html`<details class="group">
    <summary><h2>A new ruler, mint, denomination or book</h2></summary>
    ${Object.entries(NAMES).map(([list, name]) =>
      postForm(
        `/lists/${list}`,
        token,
        html`<div class="field">
            <label for="new-${list}">A new ${name} called</label
            ><input id="new-${list}" name="title" required autocomplete="off" />
          </div>
          <p class="doing"><button type="submit">Make the ${name}</button></p>`,
      ),
    )}
  </details>`;
}
