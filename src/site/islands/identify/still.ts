import type { Identification } from '../../../core/types/key/identify.ts';
import { element, left } from './open-key.ts';
import type { OpenKey } from './open-key.ts';

/** More types than this are no line of print. */
const MOST = 80;
/** What a type leaves that is no longer likely, as a letter of a legend leaves it. */
const GONE = '·';

/**
 * Every type in a line of print, next to the answers: `3 a b c`, each group under its broader type; of those that are no longer
 * likely only a point remains. Null where there are too many.
 */
export function stillPossible({ file }: OpenKey, found: Identification, answers: number): HTMLElement | null {
  const described = file.types.filter(({ outside }) => outside !== true);
  if (described.length > MOST) return null;
  const possible = new Set(answers === 0 ? described.map(({ id }) => id) : left(found).map(({ id }) => id));
  const [first, second] = found.candidates;
  const isAlone = first !== undefined && first.probability > (second?.probability ?? 0);
  const groups = new Map<string, string[]>();
  const label = new Map(file.broader.map((broader) => [broader.id, broader.label]));
  const common = commonStart([...new Set(described.map(({ under }) => label.get(under ?? '') ?? ''))]);
  const line = element('p', '', 'still');
  line.setAttribute('aria-hidden', 'true');
  for (const { id, under = '' } of described) groups.set(under, [...(groups.get(under) ?? []), id]);
  for (const [under, ids] of groups) {
    const above = label.get(under) ?? '';
    const group = element('span', '', 'group');
    if (above !== '') group.append(element('span', above.slice(common), 'of'));
    for (const id of ids) {
      const isPossible = possible.has(id);
      const name = described.find((type) => type.id === id)?.label ?? id;
      const letter = element('span', isPossible ? shortened(name, above) : GONE, isPossible ? 'may' : 'gone');
      if (answers > 0 && isAlone && id === first.id) letter.dataset['first'] = '';
      group.append(' ', letter);
    }
    line.append(group, ' ');
  }
  return line;
}

/** `Class 3b` under `Class 3` is `b`. */
function shortened(label: string, above: string): string {
  const rest = label.startsWith(above) ? label.slice(above.length).trim() : label;
  return rest === '' ? label : rest;
}

/** How many letters of these labels are the same words: of `Class 1`, `Class 10` six. */
function commonStart(labels: readonly string[]): number {
  const [first = '', ...others] = labels;
  if (others.length === 0) return 0;
  const words = first.split(/(?<= )/);
  let start = 0;
  for (const word of words.slice(0, -1)) {
    const next = first.slice(0, start + word.length);
    if (!others.every((label) => label.startsWith(next))) break;
    start = next.length;
  }
  return start;
}
