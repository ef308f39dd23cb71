import { html, raw } from 'hono/html';
import type { Piece } from '../../catalogue/catalogue.ts';
import { linkRecords } from '../../catalogue/link.ts';
import { editFacts } from '../../catalogue/write/edit-list.ts';
import { editStory } from '../../catalogue/write/edit-fields.ts';
import { PIECE_ORDER } from '../../catalogue/write/write-piece.ts';
import type { Catalogue } from '../../catalogue/catalogue.ts';
import { publicPiece } from '../../publish/public-piece.ts';
import { storyHtml } from '../../site/markdown.ts';
import { ticketOf } from '../../site/models/shared/ticket.ts';
import type { CabinetState } from '../cabinet-state.ts';
import { factInWords } from '../fact-words.ts';
import type { Posted } from '../form/leaves.ts';
import type { Html } from '../frame.ts';
import { changesOf } from '../save-piece.ts';
import type { PieceOnDesk } from '../save-piece.ts';

/** A piece as its page would have it, were it published; `posted` is what was typed and is not saved. Null while it cannot be read. */
type Seen = { readonly piece: Piece; readonly catalogue: Catalogue };

function seenPiece(state: CabinetState, piece: PieceOnDesk, posted: Posted | null): Seen | null {
  const records = state.records();
  const text = posted === null ? piece.text : typedText(state, piece, posted);
  const held = state.pieceAs(piece.id, text);
  if (held === null) return null;
  const catalogue = linkRecords({ ...records, pieces: [{ ...held, fields: { ...held.fields, publish: 'yes' } }] });
  const [linked] = catalogue.pieces;
  return linked === undefined ? null : { piece: linked, catalogue };
}

/** The text with what can be read of the form; a box whose words cannot be read leaves its field out of it. */
function typedText(state: CabinetState, { text, leaves, story }: PieceOnDesk, posted: Posted): string {
  const { named: meant } = changesOf(state, leaves, 'pieces', posted);
  const known = meant.changes.filter(({ path }) => meant.unknown[path.join('.')] === undefined);
  const edited = editFacts(text, known, PIECE_ORDER);
  const told = posted.get('story')?.replace(/\r\n?/g, '\n');
  const after = edited.ok ? edited.value : text;
  return told === undefined || told === story ? after : editStory(after, told);
}

/** What a piece's type says where the piece is silent, in words, by the name of the box. */
export function typeSays(state: CabinetState, piece: PieceOnDesk): (box: string) => string | null {
  if (piece.facts?.['type'] === undefined) return () => null;
  const seen = seenPiece(state, piece, null);
  const fromType = new Set(seen?.piece.fromType);
  return (box) => {
    if (!fromType.has(box)) return null;
    const path = box.split('.');
    const value = path.reduce<unknown>((held, step) => (held as Readonly<Record<string, unknown>> | undefined)?.[step], seen?.piece.fields); // prettier-ignore
    return factInWords(path[0] ?? '', value, state.records()) || null;
  };
}

/** The photographs, the ticket and the story as the page will show them. */
export function piecePreview(state: CabinetState, piece: PieceOnDesk, posted: Posted | null): Html {
  const { pictures = [] } = state.records().pieces.find(({ id }) => id === piece.id) ?? {};
  return html`<section class="preview" aria-labelledby="preview-head">
    <h2 id="preview-head">As the page shows it</h2>
    <div class="laid">
      <div class="faces">
        ${pictures.map(({ face }) => html`<img src="/pieces/${piece.id}/${face}.webp" alt="${face}" height="160" />`)}
        ${pictures.length === 0 ? html`<p><a href="/pieces/${piece.id}/photographs">Add photographs</a></p>` : ''}
      </div>
      <div id="preview" aria-live="off">${previewWords(state, piece, posted)}</div>
    </div>
  </section>`;
}

/** The ticket and the story; also what is asked for while the form is typed. */
export function previewWords(state: CabinetState, piece: PieceOnDesk, posted: Posted | null): Html {
  const seen = seenPiece(state, piece, posted);
  const shown = seen === null ? null : publicPiece(seen.piece, seen.catalogue);
  if (seen === null || shown === null) return html`<p class="says">The ticket is shown when the piece can be read.</p>`;
  const ticket = ticketOf(shown);
  return html`<div class="ticket">
      <p class="number">${ticket.number}</p>
      ${ticket.ruler === null ? '' : html`<p class="ruler">${ticket.ruler}</p>`}
      ${[...ticket.lines, ticket.measures.join(' · '), ...ticket.references].map((line) => html`<p>${line}</p>`)}
    </div>
    <div class="story">${raw(storyHtml(seen.piece.story))}</div>`;
}
