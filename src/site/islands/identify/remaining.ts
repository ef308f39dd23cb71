import type { Candidate, Identification } from '../../../core/types/key/identify.ts';
import { separations } from '../../../core/types/key/separations.ts';
import type { KeyFile } from '../../models/types/key-page.ts';
import { typesWords } from '../../words/types.ts';
import { layFace } from '../lay-found.ts';
import { button, element, labelOf, likely, likelyBroader } from './open-key.ts';
import type { OpenKey } from './open-key.ts';

const words = typesWords.ask;

/** The likeliest types in their order, each with how well it agrees and the cabinet's own pieces of it. */
export function candidateList(
  open: OpenKey,
  found: Identification,
  answers: number,
  faces: HTMLTemplateElement | null,
): readonly HTMLElement[] {
  const shown = likely(found);
  const [first] = found.candidates;
  const last = found.candidates.at(-1);
  if (answers === 0 && first !== undefined && first.probability === last?.probability)
    return [element('p', words.allAlike)];
  const list = element('ol', '', 'candidates');
  const classes = broaderLine(open, found, answers);
  list.append(...shown.map((candidate) => candidateLine(open, candidate, answers, faces)));
  const others = found.candidates.length - shown.length;
  return [...classes, list, ...(others > 0 ? [element('p', words.more(others), 'plain quiet')] : [])];
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
    line.append(at === 0 ? '' : ', ', link, ` ${words.share(probability)}`);
  }
  line.append('.');
  return [line];
}

function candidateLine(
  open: OpenKey,
  { id, probability, against }: Candidate,
  answers: number,
  faces: HTMLTemplateElement | null,
): HTMLElement {
  const type = open.file.types.find((one) => one.id === id);
  const line = document.createElement('li');
  const said = element('p');
  const link = element('a', type?.label ?? id);
  link.href = new URL(type?.href ?? '', open.from).href;
  const share = element('span', words.share(probability), 'plain share');
  said.append(link, ' ', share);
  const bar = element('span', '', 'bar');
  bar.style.setProperty('inline-size', `${String(Math.max(1, Math.round(probability * 100)))}%`);
  line.append(said, bar);
  if (answers > 0) {
    const labels = against.map((each) => open.file.characters.find((one) => one.id === each)?.label ?? each);
    line.append(element('p', words.fit(labels, answers), 'plain quiet'));
  }
  const laid = (type?.pieces ?? []).flatMap((piece) => pieceFace(piece, open.from, faces) ?? []);
  if (laid.length > 0) {
    const place = element('p', '', 'own');
    place.append(...laid);
    line.append(place);
  }
  return line;
}

function pieceFace(
  piece: NonNullable<KeyFile['types'][number]['pieces']>[number],
  from: string,
  faces: HTMLTemplateElement | null,
): HTMLElement | null {
  const face = faces?.content.querySelectorAll('.face')['src' in piece.face ? 0 : 1]?.cloneNode(true);
  if (!(face instanceof HTMLElement)) return null;
  layFace(face, piece.face, from);
  if (face instanceof HTMLImageElement) face.alt = piece.title;
  else {
    face.role = 'img';
    face.ariaLabel = piece.title;
  }
  const link = element('a');
  link.href = new URL(piece.href, from).href;
  link.title = piece.title;
  link.append(face);
  return link;
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
    const at = open.file.characters.findIndex(({ id }) => id === character.id);
    const shown = (id: string): string =>
      typesWords.shown(open.key.types.find((type) => type.id === id)?.shown[at] ?? { shows: 'unknown' }, character);
    const line = element('li', `${always ? character.label : words.sometimes(character.label)}: `);
    line.append(
      element('span', words.differBy(labelOf(open, one), shown(one), labelOf(open, other), shown(other)), 'said'),
    );
    // What was not yet answered may be asked from here.
    if (found.questions.some((question) => question.character === character.id))
      line.append(
        ' ',
        button(words.look, () => ask(character.id)),
      );
    list.append(line);
  }
  return [list];
}
