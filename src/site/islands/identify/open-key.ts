import { together } from '../../../core/types/key/identify.ts';
import type { Identification, Together } from '../../../core/types/key/identify.ts';
import { parseShown } from '../../../core/types/key/character.ts';
import type { Character, Shown } from '../../../core/types/key/character.ts';
import { keyOf } from '../../../core/types/key/key.ts';
import type { Key } from '../../../core/types/key/key.ts';
import { keyWords } from '../../words/key.ts';
import type { KeyFile } from '../../models/types/key-page.ts';

/** A key that was loaded: the file, what it is weighed by, and the address that addresses in the file are meant from. */
export type OpenKey = { readonly file: KeyFile; readonly key: Key; readonly from: string };

/** A key from its file: what the types show is read from the cells, as the catalogue has read and checked them. */
export function openKey(file: KeyFile, from: string): OpenKey {
  const read = (text: string, character: Character | undefined): Shown => {
    const shown = character === undefined ? null : parseShown(text, character);
    return shown?.ok === true ? shown.value : { shows: 'unknown' };
  };
  const types = file.types.map(({ id, shown }) => ({
    id,
    shown: shown.map((text, at) => read(text, file.characters[at])),
  }));
  return { file, key: keyOf(file.characters, types), from };
}
export type KeyCharacter = KeyFile['characters'][number];

/** What nobody could tell, as an answer. */
export const CANNOT_TELL = '?';
/** Candidates shown. */
const MOST = 8;
/** What nothing speaks against may still be it, unless it is less likely than this; what something does, from this on. */
const LEAST_AGREEING = 0.001;
const LEAST_OTHER = 0.05;

export function labelOf({ file }: OpenKey, type: string): string {
  return file.types.find(({ id }) => id === type)?.label ?? type;
}

/** The broader types that the candidates together are likely of; none before anything is answered. */
export function likelyBroader(
  { file }: OpenKey,
  { candidates }: Identification,
  answers: number,
): readonly (Together & KeyFile['broader'][number])[] {
  const all = [...file.broader, ...file.types];
  const under = new Map(all.map((type) => [type.id, type.under ?? null]));
  const byId = new Map(file.broader.map((type) => [type.id, type]));
  return (answers === 0 ? [] : together(candidates, (id) => under.get(id) ?? null)).flatMap((found) => {
    const type = byId.get(found.id);
    return type === undefined ? [] : [{ ...type, ...found }];
  });
}

/** The candidates worth showing: the likeliest, and those that have a chance to speak of. */
export function likely(found: Identification): Identification['candidates'] {
  return left(found).slice(0, MOST);
}

/** The types that it may still be, the likeliest first. */
export function left({ candidates }: Identification): Identification['candidates'] {
  return candidates.filter(
    ({ probability, against }, at) => at === 0 || probability >= (against.length === 0 ? LEAST_AGREEING : LEAST_OTHER),
  );
}

/** How many types of those that the list describes it may still be. */
export function countLeft({ file }: OpenKey, found: Identification): number {
  const outside = new Set(file.types.flatMap(({ id, outside: isOutside }) => (isOutside === true ? [id] : [])));
  return left(found).filter(({ id }) => !outside.has(id)).length;
}

/** A link to the page of each of these types. */
export function typeLinks(open: OpenKey, ids: readonly string[]): readonly HTMLElement[] {
  return ids.map((id) => {
    const link = element('a', keyWords.see(labelOf(open, id)), 'see');
    link.href = new URL(open.file.types.find((type) => type.id === id)?.href ?? '', open.from).href;
    return link;
  });
}

/** A drawing of the page, which stands next to its words. */
export function drawn(id: string): SVGElement {
  const svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
  svg.setAttribute('class', 'drawn');
  svg.setAttribute('aria-hidden', 'true');
  const use = document.createElementNS('http://www.w3.org/2000/svg', 'use');
  use.setAttribute('href', `#${id}`);
  svg.append(use);
  return svg;
}

/** An element with its words, and a class. */
export function element<K extends keyof HTMLElementTagNameMap>(
  name: K,
  text = '',
  kind = '',
): HTMLElementTagNameMap[K] {
  const made = document.createElement(name);
  made.textContent = text;
  if (kind !== '') made.className = kind;
  return made;
}

/** A button that does something on the page; `kind` is the class of its look. */
export function button(text: string, act: () => void, kind = 'worded'): HTMLButtonElement {
  const made = element('button', text, kind);
  made.type = 'button';
  made.addEventListener('click', act);
  return made;
}
