import type { ComparedPiece } from '../../compare/record.ts';
import type { CompareState } from '../../compare/state.ts';
import { compareWords as words } from '../../words/compare.ts';
import { tied } from '../../words/no-break.ts';
import { layFace } from './lay-face.ts';

/** What a visitor may do with a piece that lies there. */
export type PieceActions = { readonly move: (step: number) => void; readonly takeAway: () => void };

export type PieceForms = { readonly piece: HTMLTemplateElement; readonly face: HTMLTemplateElement };

/** Lays a piece: its faces, its name, and buttons to move it or take it away. */
export function layPiece(
  piece: ComparedPiece,
  from: string,
  { faces, turned }: CompareState,
  forms: PieceForms,
  actions: PieceActions,
): Element | null {
  const line = forms.piece.content.querySelector('li')?.cloneNode(true);
  if (!(line instanceof HTMLElement)) return null;
  line.dataset['piece'] = piece.id;
  for (const face of ['obverse', 'reverse'] as const) {
    const place = line.querySelector<HTMLElement>(`[data-face="${face}"]`);
    if (place === null) continue;
    place.hidden = faces !== 'both' && faces !== face;
    const laid = place.hidden ? null : layFace(piece.faces[face], forms.face, from);
    if (laid === null) continue;
    if (face === 'reverse' && turned && piece.turn !== null && 'pictures' in piece.faces.reverse)
      laid.style.setProperty('rotate', `${piece.turn}deg`);
    place.append(laid);
  }
  const title = line.querySelector<HTMLAnchorElement>('.title');
  if (title !== null) {
    title.textContent = tied(piece.title);
    title.href = new URL(piece.to, from).href;
  }
  const said = line.querySelector('.line');
  if (said !== null) said.textContent = tied(piece.line);
  for (const button of line.querySelectorAll<HTMLButtonElement>('[data-move]')) {
    const step = Number(button.dataset['move']);
    button.ariaLabel = step < 0 ? words.earlier(piece.title) : words.later(piece.title);
    button.addEventListener('click', () => actions.move(step));
  }
  const away = line.querySelector<HTMLButtonElement>('[data-away]');
  if (away !== null) away.ariaLabel = words.remove(piece.title);
  away?.addEventListener('click', () => actions.takeAway());
  return line;
}
