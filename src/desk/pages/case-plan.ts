import { html } from 'hono/html';
import type { CaseFromAbove, FaceInCase } from '../../site/models/exhibit/case-from-above.ts';
import { exhibitWords } from '../../site/words/exhibits.ts';
import { drawMarks } from '../draw-marks.ts';
import type { Html } from '../frame.ts';

/** The frame of a case, in its own millimetres. */
const FRAME = 5;

/** A case from above: every piece, heading and label at its place and of its size, in millimetres. */
export function drawCase(figure: CaseFromAbove): Html {
  const { width, height } = figure;
  const cards = [...figure.cards, ...figure.pieces.map(({ label }) => label)];
  return html`<figure class="plan">
    <svg viewBox="${-FRAME} ${-FRAME} ${width + 2 * FRAME} ${height + 2 * FRAME}" role="img" aria-label="${exhibitWords.caseSeen(figure.name)}">
      <rect class="case-frame" x="${-FRAME}" y="${-FRAME}" width="${width + 2 * FRAME}" height="${height + 2 * FRAME}" />
      <rect class="ground" width="${width}" height="${height}" />
      ${cards.map(({ box, marks }) => html`<g class="card"><rect x="${box.left}" y="${box.top}" width="${box.width}" height="${box.height}" />${drawMarks(marks)}</g>`)}
      ${figure.pieces.flatMap(({ faces }) => faces.map(drawFace))}
    </svg>
    <figcaption>${figure.says}
      ${figure.misfits.length === 0 ? exhibitWords.fits : html`<ul class="problem">${figure.misfits.map((says) => html`<li>${says}</li>`)}</ul>`}
      ${figure.key.length === 0 ? '' : html`<details><summary>${exhibitWords.planKey}</summary><ul>${figure.key.map((line) => html`<li>${line}</li>`)}</ul></details>`}
    </figcaption>
  </figure>`; // prettier-ignore
}

function drawFace({ box: { left, top, width, height }, round, metal }: FaceInCase): Html {
  return round
    ? html`<ellipse
        class="${metal}"
        cx="${left + width / 2}"
        cy="${top + height / 2}"
        rx="${width / 2}"
        ry="${height / 2}"
      />`
    : html`<rect class="${metal}" x="${left}" y="${top}" width="${width}" height="${height}" />`;
}
