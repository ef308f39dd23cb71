import { html } from 'hono/html';
import { PIECE_ROWS } from '../../catalogue/fields/piece-fields.ts';
import { postForm } from '../frame.ts';
import type { Html } from '../frame.ts';
import { drawLeaf } from '../form/draw-leaf.ts';
import type { Shown } from '../form/draw-leaf.ts';
import { ledgerRow } from '../form/ledger-rows.ts';
import { nameOf } from '../form/leaves.ts';
import type { Leaf } from '../form/leaves.ts';
import { drawFields, isInUse, problemsNote, shownOf, staleNote } from '../form/form-parts.ts';
import type { FormView } from '../form/form-parts.ts';
import type { PieceOnDesk } from '../save-piece.ts';

/** The groups of the form and their fields, in the order of an evening's work; a field that is in none comes under the last. */
const GROUPS: readonly (readonly [heading: string, fields: readonly string[]])[] = [
  ['What it is', ['title', 'number', 'kind', 'denomination', 'ruler', 'mint', 'date', 'type', 'references']],
  ['Measures and metal', ['metal', 'weight', 'diameter', 'axis', 'fineness', 'thickness', 'made', 'faces', 'shape']],
  ['Condition', ['grade', 'grade-scale', 'problem', 'graded-by', 'treatments', 'peculiarities']],
  ['Legends and designs', ['obverse', 'reverse', 'edge', 'dies']],
  ['Makers, issuer, and the date on it', ['issuer', 'makers', 'struck-for', 'dated']],
  ['How sure', ['sure']],
  ['Provenance, find, alterations', ['provenance', 'found', 'altered']],
]; // prettier-ignore
const LAST = 'Status, tags and the rest';
const OPEN = GROUPS.slice(0, 4).map(([heading]) => heading);
const PRIVATE = Object.entries(PIECE_ROWS).flatMap(([name, row]) => (row.seen === 'no' ? [name] : []));

export type PieceView = FormView & {
  readonly piece: PieceOnDesk;
  readonly token: string;
  readonly preview: Html;
  readonly hasTypes: boolean;
};

/** The form of one piece: what will be published and what stays here, side by side. */
export function pieceForm(view: PieceView): Html {
  const { piece, token, posted } = view;
  const shown = shownOf(view);
  // A cabinet without types is not asked about them.
  const isAsked = ({ path: [top = ''], held }: Leaf): boolean => top !== 'type' || held !== undefined || view.hasTypes;
  const published = piece.leaves.filter((leaf) => !PRIVATE.includes(leaf.path[0] ?? '') && isAsked(leaf));
  const kept = piece.leaves.filter(({ path: [top = ''] }) => PRIVATE.includes(top));
  const listed = new Set(GROUPS.flatMap(([, fields]) => fields));
  const others = [...new Set(published.map(({ path: [top = ''] }) => top))].filter((top) => !listed.has(top));
  const groups = [...GROUPS, [LAST, others] as const];
  const publish = posted?.get('publish') ?? textOf(kept, 'publish');
  return html`${view.isStale ? staleNote(piece.text, `/pieces/${piece.id}`) : ''}
  ${problemsNote(view, `/pieces/${piece.id}/text`, 'pieces')}
  ${piece.unknown.length > 0 ? html`<p class="problem">This form does not know ${piece.unknown.join(', ')}. <a href="/pieces/${piece.id}/text">Edit the text</a></p>` : ''}
  ${view.preview}
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
              fields.flatMap((name) => published.filter(({ path: [top = ''] }) => top === name)),
              shown,
            ),
          )}
          <div class="field">
            <label for="story">Story</label>
            <textarea id="story" name="story" rows="10" aria-describedby="story-says">
${posted?.get('story') ?? piece.story}</textarea>
            <p class="says" id="story-says">
              For visitors. An empty line begins a new paragraph; *stars* around a word make it italic.
            </p>
          </div>
        </section>
        <section class="private" aria-labelledby="private-head">
          <h2 id="private-head">Stays on this machine</h2>
          ${kept.filter((leaf) => leaf.kind !== 'pairs' || isInUse(leaf, shown)).map((leaf) => drawLeaf(leaf, shown))}
          ${piece.ledgerColumns.map((column) => drawLedger(column, view, shown))}
        </section>
      </div>
      <p class="doing saving">
        <button class="main" type="submit">Save</button> <a href="/pieces/${piece.id}">Leave it as it was</a>
      </p>`,
    { draft: `/pieces/${piece.id}`, asks: `/pieces/${piece.id}/preview`, shows: 'preview' },
  )}`;
}

function drawGroup(heading: string, leaves: readonly Leaf[], shown: Shown): Html | '' {
  if (leaves.length === 0) return '';
  const isOpen = OPEN.includes(heading) || leaves.some((leaf) => isInUse(leaf, shown));
  return html`<details class="group" ${isOpen ? 'open' : ''}>
    <summary><h3>${heading}</h3></summary>
    <div class="boxes">${drawFields(leaves, PIECE_ROWS, shown)}</div>
  </details>`;
}

function drawLedger(column: string, { piece, posted }: PieceView, shown: Shown): Html {
  const row = ledgerRow(column);
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
