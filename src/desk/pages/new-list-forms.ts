import { html } from 'hono/html';
import type { CabinetState } from '../cabinet-state.ts';
import { postForm } from '../frame.ts';
import type { Html } from '../frame.ts';
import { ASKED, ONE_PER } from '../new-list-file.ts';
import { namesIn } from '../new-names.ts';

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
