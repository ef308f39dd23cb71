import { keyWords as words } from '../../words/key.ts';
import type { KeyCharacter, OpenKey } from './open-key.ts';
import { button, element } from './open-key.ts';

/** A photograph keeps a margin of 7 per cent round the piece. */
const MARGIN = 7;

/** Hundredths of the piece as hundredths of its photograph. */
function inPicture(hundredths: number): string {
  return `${String(((hundredths + MARGIN) / (100 + 2 * MARGIN)) * 100)}%`;
}

/** Which mark is asked of now, and which were looked at. */
export type Looked = { readonly asking: string | null; readonly seen: ReadonlySet<string> };

/**
 * The marks of a piece as places on its photograph that are tapped, and by name where they have none or no photograph is
 * there. `ask` is told the character.
 */
export function showPlaces(host: HTMLElement, { file }: OpenKey, { asking, seen }: Looked, ask: (id: string) => void): void {
  const sides = new Map([...host.querySelectorAll<HTMLElement>('[data-side]')].map((side) => [side.dataset['side'], side]));
  for (const side of sides.values()) for (const ring of side.querySelectorAll('.ring')) ring.remove();
  const named: HTMLElement[] = [];
  for (const character of file.characters) {
    const side = character.at === null ? undefined : sides.get(character.face ?? '');
    if (side !== undefined) side.append(ringOf(character, character.id === asking, seen.has(character.id), ask));
    else if (character.id !== asking && !seen.has(character.id)) named.push(button(character.label, () => ask(character.id)));
  }
  const list = host.querySelector<HTMLElement>('[data-elsewhere]');
  list?.replaceChildren(...(named.length === 0 ? [] : [element('span', words.elsewhere, 'quiet'), ...named]));
} // prettier-ignore

function ringOf(character: KeyCharacter, isAsked: boolean, isSeen: boolean, ask: (id: string) => void): HTMLElement {
  const ring = button('', () => ask(character.id), 'ring');
  ring.setAttribute('aria-label', words.look(character.label));
  ring.title = character.label;
  if (isAsked) ring.setAttribute('aria-current', 'true');
  ring.toggleAttribute('data-seen', isSeen);
  const { across, down, wide } = character.at ?? { across: 50, down: 50, wide: 20 };
  ring.style.insetInlineStart = inPicture(across);
  ring.style.insetBlockStart = inPicture(down);
  ring.style.inlineSize = `${String((wide / (100 + 2 * MARGIN)) * 100)}%`;
  return ring;
}
