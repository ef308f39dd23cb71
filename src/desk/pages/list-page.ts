import { html } from 'hono/html';
import { PIECE_ROWS } from '../../catalogue/fields/piece-fields.ts';
import { EXAMPLE } from '../../catalogue/totals.ts';
import type { FiledPiece } from '../../catalogue/records.ts';
import { isBlank } from '../../catalogue/schema/fields.ts';
import { yearsOf } from '../../core/dating/interval.ts';
import type { CabinetState, Found } from '../cabinet-state.ts';
import { factInWords } from '../fact-words.ts';
import { ledgerRow, LEDGER_NAMES } from '../form/ledger-rows.ts';
import { postForm } from '../frame.ts';
import type { Html } from '../frame.ts';

/** A fact that the list can show, sort and filter by: a field of a piece, or a column of the ledger. */
export type Fact = { readonly name: string; readonly label: string; readonly isPrivate: boolean };

/** What the list shows now, as the address says it. */
export type Asked = {
  readonly words: string;
  readonly fact: string;
  readonly is: string;
  readonly sort: string;
  readonly down: boolean;
  readonly page: number;
  readonly shows: readonly string[];
};

const PUBLIC_FACTS: readonly Fact[] = Object.entries(PIECE_ROWS)
  .filter(([, { control }]) => !['parts', 'rows', 'each', 'table', 'pairs'].includes(control))
  .map(([name, { label, seen }]) => ({ name, label, isPrivate: seen === 'no' }));

/** Every fact of a cabinet, with the columns of the ledger, also those of the keeper's own. */
export function factsOf(ledger: ReturnType<CabinetState['ledger']>): readonly Fact[] {
  const [row = {}] = ledger.values();
  const own = Object.keys(row).filter((column) => !['', 'piece', ...LEDGER_NAMES].includes(column));
  const columns = [...LEDGER_NAMES, ...own].map((column) => ({
    name: `ledger.${column}`,
    label: `${ledgerRow(column).label} (private)`,
    isPrivate: true,
  }));
  return [...PUBLIC_FACTS, ...columns];
}

const SHOWN = ['number', 'title', 'ruler', 'mint', 'date', 'metal', 'grade', 'publish', 'ledger.storage'];
const PER_PAGE = 100;
const NATURAL = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

export function askedOf(
  query: {
    get: (name: string) => string | null;
    getAll: (name: string) => readonly string[];
  },
  facts: readonly Fact[],
): Asked {
  const known = (name: string): boolean => facts.some((fact) => fact.name === name);
  const shows = query.getAll('show').filter(known);
  const sort = query.get('sort') ?? '';
  return {
    words: (query.get('words') ?? '').slice(0, 200),
    fact: query.get('fact') ?? '',
    is: (query.get('is') ?? '').slice(0, 200),
    sort: known(sort) ? sort : 'number',
    down: query.get('down') === 'yes',
    page: Math.max(1, Number.parseInt(query.get('page') ?? '1', 10) || 1),
    shows: shows.length === 0 ? SHOWN : shows,
  };
}

export type Row = {
  readonly piece: FiledPiece;
  readonly says: Readonly<Record<string, string>>;
  readonly folded: string;
};

/** What the list knows of every piece, in words. Worked out once for a piece as it is. */
export function rowsOf(state: CabinetState, kept: WeakMap<FiledPiece, Row>): readonly Row[] {
  const ledger = state.ledger();
  const records = state.records();
  const facts = factsOf(ledger);
  return records.pieces.map((piece) => {
    const row = kept.get(piece);
    const cells = ledger.get(piece.id) ?? {};
    if (row !== undefined && row.says['ledger'] === JSON.stringify(cells)) return row;
    const says: Record<string, string> = { ledger: JSON.stringify(cells) };
    for (const { name } of facts)
      says[name] = name.startsWith('ledger.')
        ? (cells[name.slice(7)] ?? '')
        : factInWords(name, piece.fields[name as keyof typeof piece.fields], records);
    const fresh = { piece, says, folded: folded(`${piece.id} ${Object.values(says).join(' ')}`) };
    kept.set(piece, fresh);
    return fresh;
  });
}

/** The rows that answer to what is asked, in its order. */
export function chosenRows(rows: readonly Row[], asked: Asked): readonly Row[] {
  const words = folded(asked.words)
    .split(' ')
    .filter((word) => word !== '');
  const is = folded(asked.is);
  const fits = rows.filter(
    ({ folded: all, says }) =>
      words.every((word) => all.includes(word)) &&
      (asked.fact === '' ||
        (is === '-' ? (says[asked.fact] ?? '') === '' : folded(says[asked.fact] ?? '').includes(is))),
  );
  const by = sortKey(asked.sort);
  const sign = asked.down ? -1 : 1;
  const keyed = fits.map((row) => ({ row, key: by(row) }));
  keyed.sort((a, b) => {
    if (a.key === null || b.key === null) return a.key === b.key ? 0 : a.key === null ? 1 : -1;
    const order =
      typeof a.key === 'number' && typeof b.key === 'number'
        ? a.key - b.key
        : NATURAL.compare(String(a.key), String(b.key));
    return sign * order;
  });
  return keyed.map(({ row }) => row);
}

/** What a fact is sorted by: years and measures as figures, the rest as words; null where nothing is recorded, which comes last. */
function sortKey(name: string): (row: Row) => string | number | null {
  return ({ piece, says }) => {
    const value: unknown = piece.fields[name as keyof typeof piece.fields];
    if (name === 'date') {
      const { date } = piece.fields;
      return date === undefined || isBlank(date) ? null : yearsOf(date).low;
    }
    for (const figure of ['grams', 'low', 'hours'])
      if (
        typeof value === 'object' &&
        value !== null &&
        typeof (value as Readonly<Record<string, unknown>>)[figure] === 'number'
      )
        return (value as Readonly<Record<string, number>>)[figure] ?? null;
    const words = says[name] ?? '';
    const sum = /^(\d[\d,]*(?:\.\d+)?) [A-Z]{3}$/.exec(words)?.[1];
    return words === '' ? null : sum === undefined ? words : Number(sum.replaceAll(',', ''));
  };
}

function folded(text: string): string {
  return text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
}

/** The list of pieces as a table, with what is wrong beside each. */
export function listPage(state: CabinetState, rows: readonly Row[], asked: Asked, token: string): Html {
  const chosen = chosenRows(rows, asked);
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
