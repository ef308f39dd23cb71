import type { Found } from '../find/choose.ts';
import { cutAtWords } from '../find/reason.ts';
import type { FoundFace } from '../find/record.ts';
import type { Sort } from '../find/state.ts';
import { findWords } from '../words/find.ts';
import { tied } from '../words/no-break.ts';

/**
 * Lays a found piece in the form of the board's own pieces; null when the forms are not in the page. Its addresses are
 * meant from `records`, the file that named them. What is among the `soon` ones has its picture fetched at once; `sort` is the order.
 */
export function layFound(
  { record, legend, similar, by, reasons }: Found,
  patterns: HTMLTemplateElement,
  records: string,
  { soon, sort }: { readonly soon: boolean; readonly sort: Sort | null },
): Element | null {
  const isPictured = 'src' in record.face;
  const pattern = patterns.content.querySelectorAll('li')[isPictured ? 0 : 1];
  if (pattern === undefined) return null;
  const line = pattern.cloneNode(true);
  if (!(line instanceof Element)) return null;
  line.setAttribute('data-piece', record.id);
  for (const link of line.querySelectorAll('a')) link.href = new URL(record.to, records).href;
  const title = line.querySelector('.title');
  title?.replaceChildren(
    ...cutAtWords(tied(record.title), by).map(({ text, isMeant }) => (isMeant ? marked(text) : text)),
  );
  const [said, note] = line.querySelectorAll('.line');
  if (said !== undefined) said.textContent = tied(findWords.inOrder(record, sort));
  const noted = similar !== null ? findWords.similarTo(similar) : (legend ?? findWords.noted(record.note, reasons));
  if (note !== undefined && noted !== null) note.textContent = tied(noted);
  else note?.remove();
  const face = line.querySelector('.face');
  if (soon && face instanceof HTMLImageElement) {
    face.loading = 'eager';
    face.fetchPriority = 'high';
  }
  if (face !== null) layFace(face, record.face, records);
  return line;
}

function marked(text: string): HTMLElement {
  const mark = document.createElement('mark');
  mark.textContent = text;
  return mark;
}

/** Gives an empty face of the page's own, a picture or a disc, what a record says of it. */
export function layFace(shown: Element, face: FoundFace, records: string): void {
  shown.classList.add(...face.wide.split(' '));
  if ('src' in face && shown instanceof HTMLImageElement) {
    shown.removeAttribute('srcset');
    shown.width = face.width;
    shown.height = face.height;
    shown.src = new URL(face.src, records).href;
  }
  if ('look' in face) {
    shown.classList.remove('disc', 'round', 'stuff');
    shown.classList.add(...face.tall.split(' '), ...face.look.split(' ').filter((name) => name !== ''));
  }
}
