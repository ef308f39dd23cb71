import type { Character, Shown } from './character.ts';
import type { Key } from './key.ts';

/** How a character separates two types: always, or only in some of their specimens. */
export type Separation = { readonly character: Character; readonly always: boolean };

/** The types of a key in groups that no character separates, by their places; most groups hold one. */
export function inseparable(key: Key): readonly (readonly number[])[] {
  const known = GROUPS.get(key);
  if (known !== undefined) return known;
  const groups = new Map<string, number[]>();
  for (const [at, { shown }] of key.types.entries()) {
    const all = shown.map(sameShown).join('\n');
    groups.set(all, [...(groups.get(all) ?? []), at]);
  }
  const found = [...groups.values()];
  GROUPS.set(key, found);
  return found;
}

const GROUPS = new WeakMap<Key, readonly (readonly number[])[]>();

/** A text that is the same for cells that say the same. */
export function sameShown(shown: Shown): string {
  if (shown.shows === 'states')
    return [[...shown.states].sort(), ...(shown.seldom === undefined ? [] : [[...shown.seldom].sort()])].join('/');
  if (shown.shows === 'legend') return [...shown.legends].sort().join('/');
  return JSON.stringify(shown);
}

/** By which characters two types differ, those that always do first; each in the order of the key. */
export function separations(key: Key, one: string, other: string): readonly Separation[] {
  const [mine, theirs] = [one, other].map((id) => key.types.find((type) => type.id === id)?.shown);
  if (mine === undefined || theirs === undefined) return [];
  const found = key.characters.flatMap((character, at): Separation[] => {
    const always = differ(mine[at], theirs[at]);
    return always === null ? [] : [{ character, always }];
  });
  return [...found.filter(({ always }) => always), ...found.filter(({ always }) => !always)];
}

/** Whether specimens of two types can be alike in this; so they can where of one nothing is known. */
export function mayAgree(one: Shown | undefined, other: Shown | undefined): boolean {
  return differ(one, other) !== true;
}

/** True when no specimen can be alike in this, false when some differ, null when it tells nothing. */
function differ(one: Shown | undefined, other: Shown | undefined): boolean | null {
  if (one === undefined || other === undefined) return null;
  if (one.shows === 'unknown' || other.shows === 'unknown' || sameShown(one) === sameShown(other)) return null;
  if (one.shows === 'states' && other.shows === 'states')
    return !one.states.some((state) => other.states.includes(state));
  if (one.shows === 'legend' && other.shows === 'legend')
    return !one.legends.some((each) => other.legends.includes(each));
  if (one.shows === 'measure' && other.shows === 'measure') return one.high < other.low || other.high < one.low;
  return true;
}
