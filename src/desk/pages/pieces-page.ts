import { html } from 'hono/html';
import { EXAMPLE } from '../../catalogue/ledger-totals.ts';
import type { CabinetState, Found } from '../cabinet-state.ts';
import { postForm } from '../frame.ts';
import type { Html } from '../frame.ts';
import { chosenRows, factsOf, SHOWN } from '../pieces-rows.ts';
import type { Asked, Fact, Row, Rows } from '../pieces-rows.ts';

const PER_PAGE = 100;

/** The list of pieces as a table, with what is wrong beside each. */
export function listPage(state: CabinetState, held: Rows, asked: Asked, token: string): Html {
  const rows = held.all;
  const chosen = chosenRows(held, asked);
  const pages = Math.max(1, Math.ceil(chosen.length / PER_PAGE));
  const page = Math.min(asked.page, pages);
  const drawn = chosen.slice((page - 1) * PER_PAGE, page * PER_PAGE);
  const found = state.found();
  const others = (found?.problems ?? []).filter(({ file }) => !file.startsWith('pieces/'));
  const facts = factsOf(state.ledger());
  return html` ${searchForm(asked, facts)}
    ${rows.every(({ piece }) => piece.id === EXAMPLE) ? html`<p>There is no piece of your own yet. <a href="/new">Make the first one</a>. The example shows what a piece may have, and is never published; leave it, or <a href="/delete/pieces/${EXAMPLE}">delete it</a>.</p>` : ''}
    <p class="count" role="status" id="count" data-again="${found === null ? 'yes' : 'no'}">
      ${chosen.length === rows.length ? `${rows.length === 1 ? 'One piece' : `${rows.length} pieces`}.` : `${chosen.length} of ${rows.length} pieces.`}
      ${found === null ? 'Checking the cabinet…' : found.problems.length === 0 ? 'No problems.' : `${found.problems.length === 1 ? 'One problem' : `${found.problems.length} problems`}.`}
    </p>
    ${
      others.length === 0
        ? ''
        : html`<details class="problem">
            <summary>
              ${others.length === 1 ? 'One problem in another file' : `${others.length} problems in other files`}
            </summary>
            <ul>
              ${others.map(({ file, field, says }) => html`<li>${file}${field === null ? '' : ` · ${field}`}: ${says}</li>`)}
            </ul>
          </details>`
    }
    ${postForm('/change', token, html`${tableOf(drawn, asked, found, facts)} ${changeBox(facts)}`)}
    <nav class="pages" aria-label="Pages of the list">
      ${page > 1 ? html`<a href="${address({ ...asked, page: page - 1 })}">Previous</a>` : ''}
      <span>Page ${page} of ${pages}</span>
      ${page < pages ? html`<a href="${address({ ...asked, page: page + 1 })}">Next</a>` : ''}
    </nav>`;
}

/** The rows of a page of the list, each with what is wrong with its piece or wanted of it. */
function tableOf(drawn: readonly Row[], asked: Asked, found: Found, facts: readonly Fact[]): Html {
  const problems = new Map<string, string[]>();
  for (const { file, field, says } of found?.problems ?? []) {
    const id = file.split('/')[1] ?? '';
    if (file.startsWith('pieces/'))
      problems.set(id, [...(problems.get(id) ?? []), `${field === null ? '' : `${field}: `}${says}`]);
  }
  const wanted = new Map<string, string[]>();
  for (const { wanted: what, pieces } of found?.improvements ?? [])
    for (const id of pieces) wanted.set(id, [...(wanted.get(id) ?? []), what]);
  return html`<div class="wide" tabindex="0" role="region" aria-label="The pieces">
    <table>
      <thead>
        <tr>
          <th scope="col" data-choose-all="Choose all on this page"><span class="for-listeners">Choose</span></th>
          ${asked.shows.map((name) => heading(name, asked, facts))}
          <th scope="col" class="gaps">Problems and gaps</th>
        </tr>
      </thead>
      <tbody>
        ${drawn.map(
          ({ piece: { id }, says }) =>
            html`<tr>
              <td>
                <input type="checkbox" name="piece" value="${id}" aria-label="Choose ${says['number'] ?? id}" />
              </td>
              ${asked.shows.map((name) => html`<td>${name === 'title' ? html`<a href="/pieces/${id}">${says[name] ?? id}</a>` : (says[name] ?? '')}</td>`)}
              <td>
                ${(problems.get(id) ?? []).map((says) => html`<p class="problem">${says}</p>`)}${(wanted.get(id) ?? []).length === 0 ? '' : html`<p class="says">Missing: ${fewOf(wanted.get(id) ?? [])}</p>`}
              </td>
            </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}

/** The first two of what is missing, and how many more: a row is no higher for a piece of which little is known. */
function fewOf(wanted: readonly string[]): string {
  return wanted.length <= 3 ? wanted.join('; ') : `${wanted.slice(0, 2).join('; ')} and ${wanted.length - 2} more`;
}

function searchForm(asked: Asked, facts: readonly Fact[]): Html {
  return html`<form method="get" action="/" class="search" role="search">
    <div class="field">
      <label for="words">Search for</label><input id="words" name="words" value="${asked.words}" autocomplete="off" />
    </div>
    <div class="field">
      <label for="fact">And where</label
      ><select id="fact" name="fact">
        <option value="">any field</option>
        ${facts.map(({ name, label }) => html`<option value="${name}" ${name === asked.fact ? 'selected' : ''}>${label}</option>`)}
      </select>
    </div>
    <div class="field">
      <label for="is">contains (a hyphen: is empty)</label
      ><input id="is" name="is" value="${asked.is}" autocomplete="off" />
    </div>
    <div class="field">
      <label for="sort">Sort by</label
      ><select id="sort" name="sort">
        ${facts.map(({ name, label }) => html`<option value="${name}" ${name === asked.sort ? 'selected' : ''}>${label}</option>`)}
      </select>
    </div>
    <label class="tick"
      ><input type="checkbox" name="down" value="yes" ${asked.down ? 'checked' : ''} /> Descending</label
    >
    <details>
      <summary>Columns</summary>
      <div class="ticks">
        ${facts.map(({ name, label }) => html`<label class="tick"><input type="checkbox" name="show" value="${name}" ${asked.shows.includes(name) ? 'checked' : ''} /> ${label}</label>`)}
      </div>
    </details>
    <button type="submit">Search</button>
  </form>`;
}

function changeBox(facts: readonly Fact[]): Html {
  const options = (isPrivate: boolean): Html =>
    html`${facts.filter((fact) => fact.isPrivate === isPrivate && fact.name !== 'number').map(({ name, label }) => html`<option value="${name}">${label}</option>`)}`;
  return html`<fieldset class="several change">
    <legend>Change a field of the pieces chosen</legend>
    <div class="boxes">
      <div class="field">
        <label for="change-field">Field</label
        ><select id="change-field" name="field">
          <optgroup label="Published">${options(false)}</optgroup>
          <optgroup label="Stays on this machine">${options(true)}</optgroup>
        </select>
      </div>
      <div class="field">
        <label for="change-to">New words (empty: remove it)</label
        ><input id="change-to" name="to" autocomplete="off" aria-describedby="change-says" />
        <p class="says" id="change-says">Several, where a field takes several, have semicolons between them.</p>
      </div>
    </div>
    <p class="doing">
      <button type="submit">See what would change</button>
      <button type="submit" formaction="/tickets">Tickets for the pieces chosen</button>
    </p>
  </fieldset>`;
}

function heading(name: string, asked: Asked, facts: readonly Fact[]): Html {
  const label = facts.find((fact) => fact.name === name)?.label ?? name;
  const isSorted = asked.sort === name;
  const sorted = isSorted ? (asked.down ? 'descending' : 'ascending') : 'none';
  return html`<th scope="col" aria-sort="${sorted}">
    <a href="${address({ ...asked, sort: name, down: isSorted && !asked.down, page: 1 })}">${label}</a>
  </th>`;
}

function address({ words, fact, is, sort, down, page, shows }: Asked): string {
  const query = new URLSearchParams({ words, fact, is, sort, page: String(page), ...(down ? { down: 'yes' } : {}) });
  if (shows !== SHOWN) for (const name of shows) query.append('show', name);
  return `/?${query.toString()}`;
}
