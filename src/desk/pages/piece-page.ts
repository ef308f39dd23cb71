import { html } from 'hono/html';
import { raw } from 'hono/html';
import { PIECE_ROWS } from '../../catalogue/fields/piece-fields.ts';
import type { FieldFacts } from '../../catalogue/fields/row.ts';
import { linkRecords } from '../../catalogue/link.ts';
import type { Records } from '../../catalogue/records.ts';
import { publicPiece } from '../../publish/public-piece.ts';
import { storyHtml } from '../../site/markdown.ts';
import { ticketOf } from '../../site/models/shared/ticket.ts';
import { postForm } from '../frame.ts';
import type { Html } from '../frame.ts';
import { drawLeaf } from '../form/draw-leaf.ts';
import type { Shown } from '../form/draw-leaf.ts';
import { nameOf } from '../form/leaves.ts';
import type { Leaf } from '../form/leaves.ts';
import { drawFields, problemsNote, shownOf, staleNote } from '../form/form-parts.ts';
import type { FormView } from '../form/form-parts.ts';
import type { PieceOnDesk } from '../save-piece.ts';

/** In which group a field is drawn; one that is in none comes under the last. */
const GROUPS: readonly (readonly [heading: string, fields: readonly string[]])[] = [
  ['What it is', ['number', 'title', 'kind', 'ruler', 'struck-for', 'issuer', 'mint', 'makers', 'denomination', 'date', 'dated', 'references', 'status']],
  ['Measures and metal', ['metal', 'fineness', 'weight', 'diameter', 'thickness', 'axis', 'made', 'faces', 'shape']],
  ['Condition', ['grade', 'grade-scale', 'graded-by', 'problem', 'treatments', 'peculiarities']],
  ['Legends and designs', ['obverse', 'reverse', 'edge', 'dies']],
  ['How sure', ['sure']],
  ['Provenance', ['provenance', 'found', 'altered']],
]; // prettier-ignore
const PRIVATE = Object.entries(PIECE_ROWS).flatMap(([name, row]) => (row.seen === 'no' ? [name] : []));
const LEDGER_WORDS: Readonly<Record<string, FieldFacts>> = {
  cost: words('Cost', 'What it cost, with its currency.', '45 GBP', 'money'),
  value: words('Value', 'What it is worth to you, with its currency.', '60 GBP', 'money'),
  insured: words('Insured for', 'What it is insured for.', '70 GBP', 'money'),
  storage: words('Kept', 'Where it is kept.', 'tray 3'),
  seller: words('Seller', 'From whom you have it.', 'a stall at the fair'),
  'find-spot': words('Find spot', 'Exactly where it was found.', 'the field behind the barn'),
  certificate: words('Certificate', 'The number of its certificate.', 'A-1'),
  acquired: words('Acquired', 'When you got it.', '2011-05-14', 'date'),
  notes: words('Notes', 'Anything else that nobody else is to read.', 'weigh again'),
};

function words(label: string, says: string, example: string, reads?: FieldFacts['reads']): FieldFacts {
  return { label, says, example, control: 'line', ...(reads === undefined ? {} : { reads }) };
}

export type PieceView = FormView & { readonly piece: PieceOnDesk; readonly records: Records; readonly token: string };

/** The form of one piece: what will be published and what stays here, side by side. */
export function pieceForm(view: PieceView): Html {
  const { piece, token, posted } = view;
  const shown = shownOf(view);
  const published = piece.leaves.filter(({ path: [top = ''] }) => !PRIVATE.includes(top));
  const kept = piece.leaves.filter(({ path: [top = ''] }) => PRIVATE.includes(top));
  const listed = new Set(GROUPS.flatMap(([, fields]) => fields));
  const groups = [
    ...GROUPS,
    ['More', [...new Set(published.map(({ path: [top = ''] }) => top))].filter((top) => !listed.has(top))] as const,
  ];
  const publish = posted?.get('publish') ?? textOf(kept, 'publish');
  return html`${view.isStale ? staleNote(piece.text, `/pieces/${piece.id}`) : ''}
  ${problemsNote(view, `/pieces/${piece.id}/text`)}
  ${piece.unknown.length > 0 ? html`<p class="problem">This form does not know ${piece.unknown.join(', ')}. <a href="/pieces/${piece.id}/text">Edit the text</a></p>` : ''}
  ${postForm(
    `/pieces/${piece.id}`,
    token,
    html`<input type="hidden" name="digest" value="${piece.digest}" />
      <div class="sides">
        <section class="public" aria-labelledby="public-head">
          <h2 id="public-head">${publish === 'no' ? 'Would be published, if this piece were' : 'Will be published'}</h2>
          ${groups.map(([heading, fields]) =>
            drawGroup(
              heading,
              published.filter(({ path: [top = ''] }) => fields.includes(top)),
              shown,
            ),
          )}
          <div class="field">
            <label for="story">Story</label>
            <textarea id="story" name="story" rows="10" aria-describedby="story-says">
${posted?.get('story') ?? piece.story}</textarea>
            <p class="says" id="story-says">In Markdown: a blank line begins a paragraph, *stars* lean a word.</p>
          </div>
        </section>
        <section class="private" aria-labelledby="private-head">
          <h2 id="private-head">Stays on this machine</h2>
          ${kept.map((leaf) => drawLeaf(leaf, shown))}
          ${piece.ledgerColumns.map((column) => drawLedger(column, view, shown))}
        </section>
      </div>
      <p class="doing saving">
        <button class="main" type="submit">Save</button> <a href="/pieces/${piece.id}">Leave it as it was</a>
      </p>`,
    { draft: `/pieces/${piece.id}` },
  )}
  ${preview(view)}`;
}

function drawGroup(heading: string, leaves: readonly Leaf[], shown: Shown): Html | '' {
  if (leaves.length === 0) return '';
  const isOpen =
    ['What it is', 'Measures and metal', 'Condition', 'Legends and designs'].includes(heading) ||
    leaves.some((leaf) => leaf.held !== undefined || shown.problems(nameOf(leaf)).length > 0);
  return html`<details class="group" ${isOpen ? 'open' : ''}>
    <summary><h3>${heading}</h3></summary>
    <div class="boxes">${drawFields(leaves, PIECE_ROWS, shown)}</div>
  </details>`;
}

function drawLedger(column: string, { piece, posted }: PieceView, shown: Shown): Html {
  const row = LEDGER_WORDS[column] ?? words(column, 'A column of your own.', '');
  const text = posted?.get(`ledger.${column}`) ?? piece.ledger[column] ?? '';
  return drawLeaf(
    { kind: text.includes('\n') ? 'lines' : 'words', path: ['ledger', column], row, held: text, text },
    shown,
  );
}

function textOf(leaves: readonly Leaf[], name: string): string {
  const leaf = leaves.find((one) => nameOf(one) === name);
  return leaf !== undefined && 'text' in leaf ? leaf.text : '';
}

/** The ticket and the story as the page will show them. */
function preview({ piece, records }: PieceView): Html {
  const held = records.pieces.find(({ id }) => id === piece.id);
  if (held === undefined) return html``;
  const catalogue = linkRecords({ ...records, pieces: [{ ...held, fields: { ...held.fields, publish: 'yes' } }] });
  const [linked] = catalogue.pieces;
  const shown = linked === undefined ? null : publicPiece(linked, catalogue);
  if (shown === null) return html``;
  const ticket = ticketOf(shown);
  return html`<section class="preview" aria-labelledby="preview-head">
    <h2 id="preview-head">As the page shows it</h2>
    <div class="laid">
      <div class="faces">
        ${held.pictures.map(({ face }) => html`<img src="/pieces/${piece.id}/${face}.webp" alt="${face}" width="260" loading="lazy" />`)}
      </div>
      <div class="ticket">
        <p class="number">${ticket.number}</p>
        ${ticket.ruler === null ? '' : html`<p class="ruler">${ticket.ruler}</p>`}
        ${[...ticket.lines, ticket.measures.join(' · '), ...ticket.references].map((line) => html`<p>${line}</p>`)}
      </div>
      <div class="story">${raw(storyHtml(held.story))}</div>
    </div>
  </section>`;
}
