import type { Hono } from 'hono';
import { html } from 'hono/html';
import { GROUPED_BY, tellWithout, TOTALLED, totalsOf } from '../../catalogue/ledger-totals.ts';
import type { TotalGroup } from '../../catalogue/ledger-totals.ts';
import type { Html } from '../frame.ts';
import type { Desk } from '../route-helpers.ts';

/** The ledger's figures added up. */
export function totalsPages(app: Hono, { state, page }: Desk): void {
  app.get('/totals', (c) => {
    const what = TOTALLED.find((one) => one === c.req.query('what')) ?? 'value';
    const by = GROUPED_BY.find((one) => one === c.req.query('by')) ?? 'storage';
    const { all, groups, leftOut } = totalsOf(state.records().pieces, state.ledger(), what, by);
    const row = (group: TotalGroup): Html =>
      html`<tr>
        <th scope="row">${group.name}</th>
        <td>${group.pieces}</td>
        <td>${group.sums.join(' and ') || 'nothing recorded'}</td>
        <td>${tellWithout(group, what)}</td>
      </tr>`;
    return page(
      c,
      'Totals',
      html` <form method="get" action="/totals" class="search">
          <div class="field">
            <label for="what">Add up</label
            ><select id="what" name="what">
              ${TOTALLED.map((one) => html`<option ${one === what ? 'selected' : ''}>${one}</option>`)}
            </select>
          </div>
          <div class="field">
            <label for="by">By</label
            ><select id="by" name="by">
              ${GROUPED_BY.map((one) => html`<option ${one === by ? 'selected' : ''}>${one}</option>`)}
            </select>
          </div>
          <button type="submit">Show</button>
        </form>
        <p>These are your own figures from the ledger, not a valuation. Currencies are never added to one another.</p>
        <div class="wide" tabindex="0" role="region" aria-label="Totals">
          <table>
            <thead>
              <tr>
                <th scope="col">Where</th>
                <th scope="col">Pieces</th>
                <th scope="col">Sum</th>
                <th scope="col">Without</th>
              </tr>
            </thead>
            <tbody>
              ${groups.map(row)}
            </tbody>
            <tfoot>
              ${row(all)}
            </tfoot>
          </table>
        </div>
        ${leftOut.map(({ why, pieces }) => html`<p>Not counted: ${pieces.join(', ')}, which ${why}.</p>`)}`,
    );
  });
}
