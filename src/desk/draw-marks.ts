import { html } from 'hono/html';
import type { Mark } from '../site/models/paper/marks.ts';
import type { Html } from './frame.ts';

/** What is drawn on paper or in the plan of a case, as the inside of an SVG in millimetres. */
export function drawMarks(marks: readonly Mark[]): readonly Html[] {
  return marks.map(drawMark);
}

function drawMark(mark: Mark): Html {
  switch (mark.kind) {
    case 'text':
      return html`<text x="${mark.x}" y="${mark.y}" font-size="${mark.size}" text-anchor="${mark.anchor}" class="${mark.face}" ${mark.isLeftward ? html`direction="rtl"` : ''}>${mark.line.map((run) => (run.italic === true ? html`<tspan class="italic">${run.text}</tspan>` : run.text))}</text>`; // prettier-ignore
    case 'line':
      return html`<line class="${classOf(mark)}" x1="${mark.x1}" y1="${mark.y1}" x2="${mark.x2}" y2="${mark.y2}" stroke-width="${mark.weight}" />`; // prettier-ignore
    case 'frame':
      return html`<rect class="outline ${classOf(mark)}" x="${mark.box.left}" y="${mark.box.top}" width="${mark.box.width}" height="${mark.box.height}" stroke-width="${mark.weight}" />`; // prettier-ignore
    case 'oval': {
      const { left, top, width, height } = mark.box;
      return html`<ellipse class="outline ${classOf(mark)}" cx="${left + width / 2}" cy="${top + height / 2}" rx="${width / 2}" ry="${height / 2}" stroke-width="${mark.weight}" />`; // prettier-ignore
    }
    case 'shape':
      return html`<g role="img" aria-label="${mark.says}" transform="translate(${mark.x} ${mark.y}) scale(${mark.scale})"><path d="${mark.path}" shape-rendering="crispEdges" /></g>`; // prettier-ignore
    case 'window': {
      const { left, top, width, height } = mark.box;
      return html`<svg x="${left}" y="${top}" width="${width}" height="${height}" viewBox="${mark.left} ${mark.top} ${width} ${height}">${drawMarks(mark.marks)}</svg>`; // prettier-ignore
    }
  }
}

function classOf({ dashed, name }: { readonly dashed?: boolean; readonly name?: string }): string {
  return [...(dashed === true ? ['dashed'] : []), ...(name === undefined ? [] : [name])].join(' ');
}
