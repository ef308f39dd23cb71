import type { Candidate, Identification } from '../../../core/types/key/identify.ts';
import { separations } from '../../../core/types/key/separations.ts';
import { keyWords as words } from '../../words/key.ts';
import { typesWords } from '../../words/types.ts';
import { button, drawn, element, labelOf, likely, likelyBroader } from './open-key.ts';
import type { OpenKey } from './open-key.ts';

/** The likeliest types in their order, each with how well it agrees: for a series of too many types for a board. */
export function candidateList(open: OpenKey, found: Identification, answers: number): readonly HTMLElement[] {
  if (answers === 0) return [element('p', words.allAlike)];
  const shown = likely(found);
  const list = element('ol', '', 'candidates');
  list.append(...shown.map((candidate) => candidateLine(open, candidate)));
  const others = found.candidates.length - shown.length;
  return [
    ...broaderLine(open, found, answers),
    list,
    ...(others > 0 ? [element('p', words.more(others), 'plain quiet')] : []),
  ];
}

/** Broader types named, the likeliest first. */
const MOST_BROADER = 6;

/** How likely each broader type is, all of its types taken together. */
function broaderLine(open: OpenKey, found: Identification, answers: number): readonly HTMLElement[] {
  const broader = likelyBroader(open, found, answers).slice(0, MOST_BROADER);
  if (broader.length === 0) return [];
  const line = element('p', `${words.takenTogether} `, 'plain');
  for (const [at, { label, href, probability }] of broader.entries()) {
    const link = element('a', label);
    link.href = new URL(href, open.from).href;
    line.append(at === 0 ? '' : ', ', link, ` ${words.chance(probability)}`);
  }
  line.append('.');
  return [line];
}

function candidateLine(open: OpenKey, { id, probability, against }: Candidate): HTMLElement {
  const type = open.file.types.find((one) => one.id === id);
  const line = document.createElement('li');
  const link = element('a', type?.label ?? id);
  link.href = new URL(type?.href ?? '', open.from).href;
  const labels = against.map((each) => open.file.characters.find((one) => one.id === each)?.label ?? each);
  line.append(link, ' ', element('span', words.chance(probability), 'plain'), ' ', element('span', words.fit(labels), 'plain quiet')); // prettier-ignore
  return line;
}

/**
 * How the likeliest type differs from another, in sentences: at first the next, or whichever is chosen. Null before
 * anything is answered and while there is one alone.
 */
export function differenceView(
  open: OpenKey,
  found: Identification,
  chosen: string | null,
  choose: (other: string) => void,
  ask: (character: string) => void,
): HTMLElement | null {
  const [one, ...others] = likely(found).map(({ id }) => id);
  const other = others.find((id) => id === chosen) ?? others[0];
  if (one === undefined || other === undefined) return null;
  const view = document.createElement('section');
  const heading = element('h3', words.differ(labelOf(open, one), labelOf(open, other)));
  heading.tabIndex = -1;
  view.append(heading, ...differences(open, [one, other], found, ask));
  const rest = others.filter((id) => id !== other);
  if (rest.length === 0) return view;
  const line = element('p', words.differOthers(labelOf(open, one)), 'choices plain');
  line.append(...rest.map((id) => button(labelOf(open, id), () => choose(id))));
  view.append(line);
  return view;
}

function differences(
  open: OpenKey,
  [one, other]: readonly [string, string],
  found: Identification,
  ask: (character: string) => void,
): readonly HTMLElement[] {
  const differing = separations(open.key, one, other);
  if (differing.length === 0) return [element('p', words.differNot)];
  const list = element('ul', '', 'differences');
  for (const { character, always } of differing) {
    const line = element('li');
    line.append(element('h4', always ? character.label : words.sometimes(character.label)));
    const sides = element('div', '', 'sides');
    sides.append(...[one, other].map((id) => side(open, id, character.id)));
    line.append(sides);
    // What was not yet answered may be asked from here.
    if (found.questions.some((question) => question.character === character.id))
      line.append(button(words.lookAtIt, () => ask(character.id)));
    list.append(line);
  }
  return [list];
}

/** What one type shows of a character, in drawings and in words. */
function side(open: OpenKey, id: string, characterId: string): HTMLElement {
  const at = open.file.characters.findIndex((one) => one.id === characterId);
  const character = open.file.characters[at];
  const shown = open.key.types.find((type) => type.id === id)?.shown[at] ?? { shows: 'unknown' };
  const made = element('p');
  if (character === undefined) return made;
  const drawings = shown.shows === 'states' ? shown.states.flatMap((state) => character.drawn[state] ?? []) : [];
  made.append(...drawings.map(drawn), element('span', `${labelOf(open, id)}: `, 'plain quiet'), typesWords.shown(shown, character)); // prettier-ignore
  return made;
}
