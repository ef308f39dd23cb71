import { html } from 'hono/html';
import { readCsv } from '../../catalogue/csv.ts';
import type { Records } from '../../catalogue/records.ts';
import { digestOf } from '../cabinet-state.ts';
import type { Html } from '../frame.ts';
import { postForm } from '../frame.ts';

/** How many lines of the table are shown. */
const MOST = 200;

/** What has been written down of pieces, the newest line first; each may be removed, to be written anew. */
export function writtenDown(records: Records, text: string, token: string): Html {
  const { rows, lines } = readCsv(text);
  const titles = new Map(records.pieces.map(({ id, fields }) => [id, fields.title]));
  const shown = rows.map((row, at) => ({ row, line: lines[at] ?? 0 })).toReversed();
  const said = (row: Readonly<Record<string, string>>, name: string): string => (row[name] ?? '').trim();
  const words = (row: Readonly<Record<string, string>>): string => {
    const piece = said(row, 'piece');
    const title = piece === '' ? 'the whole deal' : (titles.get(piece) ?? piece);
    const others = ['amount', 'costs', 'with', 'due', 'deal', 'note'].flatMap((name) => said(row, name) || []);
    return [`${title}, ${said(row, 'event')} ${said(row, 'date')}`.trim(), ...others].join(', ');
  };
  return html`<section>
    <h2>Written down</h2>
    ${shown.length === 0 ? html`<p>Nothing yet.</p>` : ''}
    <ul>
      ${shown
        .slice(0, MOST)
        .map(
          ({ row, line }) =>
            html`<li>
              ${words(row)}
              ${postForm(
                '/life/remove',
                token,
                html`<input type="hidden" name="digest" value="${digestOf(text)}" /><input
                    type="hidden"
                    name="line"
                    value="${line}"
                  /><button type="submit" aria-label="Remove this line: ${words(row)}">Remove this line</button>`,
              )}
            </li>`,
        )}
    </ul>
    ${shown.length > MOST ? html`<p class="says">And ${shown.length - MOST} older lines, in private/life.csv.</p>` : ''}
    <p class="says">A line that is wrong is removed here and written anew above. Removing can be undone.</p>
  </section>`;
}
