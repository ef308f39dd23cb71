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

/** Two types set against each other: what each shows of every character in which they differ. */
export type Pair = readonly [string, string];

/** The choice of two among the likely, and what distinguishes them; null while there is one alone. */
export function pairView(
  open: OpenKey,
  found: Identification,
  chosen: Pair | null,
  choose: (pair: Pair) => void,
  ask: (character: string) => void,
): HTMLElement | null {
  const ids = likely(found).map(({ id }) => id);
  const [first, second] = ids;
  if (first === undefined || second === undefined) return null;
  const keep = chosen?.every((id) => ids.includes(id)) === true;
  let pair: Pair = keep ? chosen : [first, second];
  const view = document.createElement('section');
  const table = document.createElement('div');
  const show = (): void => table.replaceChildren(...difference(open, pair, found, ask));
  const select = (at: 0 | 1): HTMLElement => {
    const control = document.createElement('select');
    control.append(...ids.map((id) => new Option(labelOf(open, id), id, false, id === pair[at])));
    control.addEventListener('change', () => {
      pair = at === 0 ? [control.value, pair[1]] : [pair[0], control.value];
      choose(pair);
      show();
    });
    const label = element('label', at === 0 ? words.differFrom : words.differTo, 'plain');
    label.append(control);
    return label;
  };
  const chooser = element('p', '', 'choices');
  chooser.append(select(0), select(1));
  show();
  view.append(element('h3', words.differ), chooser, table);
  return view;
}

function difference(
  open: OpenKey,
  [one, other]: Pair,
  found: Identification,
  ask: (character: string) => void,
): readonly HTMLElement[] {
  const differing = separations(open.key, one, other);
  if (differing.length === 0) return [element('p', one === other ? words.differSame : words.differNot)];
  const table = element('table', '', 'plain');
  const head = table.createTHead().insertRow();
  for (const name of [typesWords.column.character, labelOf(open, one), labelOf(open, other)]) {
    const cell = element('th', name);
    cell.scope = 'col';
    head.append(cell);
  }
  const body = table.createTBody();
  const shownBy = (id: string) => open.key.types.find((type) => type.id === id)?.shown ?? [];
  for (const { character, always } of differing) {
    const at = open.file.characters.findIndex(({ id }) => id === character.id);
    const row = body.insertRow();
    const name = element('th', always ? character.label : words.sometimes(character.label));
    name.scope = 'row';
    // What was not yet answered may be asked from here.
    if (found.questions.some((question) => question.character === character.id))
      name.append(
        ' ',
        button(words.look, () => ask(character.id)),
      );
    row.append(name);
    for (const id of [one, other])
      row.insertCell().textContent = typesWords.shown(shownBy(id)[at] ?? { shows: 'unknown' }, character);
  }
  return [table];
}
