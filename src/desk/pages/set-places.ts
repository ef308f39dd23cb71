import { html } from 'hono/html';
import type { Records } from '../../catalogue/records.ts';
import { countWords } from '../../site/words/counts.ts';
import { setsWords } from '../../site/words/sets.ts';
import type { Html } from '../frame.ts';
import { setStateOf } from '../linked-cabinet.ts';

/** How many places are drawn; the rest are counted. */
const MOST = 400;

/** The places of a set whose file says this, with the pieces that fill them. */
export function setPlaces(records: Records, id: string, text: string): Html {
  const state = setStateOf(records, id, text);
  if (!state.ok) return html`<p class="says">No places yet: ${state.problem}</p>`;
  const { places, filled, of, excused, spares } = state.value;
  const title = new Map(records.pieces.map((piece) => [piece.id, piece.fields.title]));
  return html`<p>
      Filled: <b>${countWords.filled(filled, of)}</b>${excused === 0 ? '' : `, and ${excused} excused`}.
      ${spares.length === 0 ? '' : `${countWords.pieces(spares.length)} to spare.`}
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
