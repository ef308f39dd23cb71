import { editFacts, editList } from '../catalogue/write/edit-list.ts';
import type { ListChange } from '../catalogue/write/edit-list.ts';
import type { Written } from '../catalogue/yaml.ts';
import type { Outcome } from '../core/outcome.ts';
import { good, refuse } from '../core/outcome.ts';
import type { CabinetState } from './cabinet-state.ts';
import { isFields } from './form/leaves.ts';
import type { Fields, Posted } from './form/leaves.ts';
import type { Records } from '../catalogue/records.ts';
import { idOf, unknownName } from './new-names.ts';
import { listFileOf } from './save-list-file.ts';

/** Where something is in an exhibit, counted from 0: a case, a group in it, a piece in that. */
export type Spot = readonly [c: number, g: number, p: number];

export type CaseHeld = { readonly fields: Fields; readonly groups: readonly GroupHeld[] };
export type GroupHeld = { readonly fields: Fields; readonly pieces: readonly PieceHeld[] };
export type PieceHeld = { readonly piece: string; readonly side: string; readonly label: string };

/** What came of a change: the new text, where the thing is now, and what is to be said of it. */
export type Changed = { readonly text: string; readonly spot: Spot; readonly also: 'group-gone' | 'case-gone' | null };

/** The cases of an exhibit as its file has them. */
export function casesOf(facts: Fields | null): readonly CaseHeld[] {
  return listOf(facts?.['cases']).map((one) => ({
    fields: one,
    groups: listOf(one['groups']).map((group) => ({
      fields: group,
      pieces: list(group['pieces']).map((entry) => ({
        piece: typeof entry === 'string' ? entry : wordsIn(entry, 'piece'),
        side: wordsIn(entry, 'side'),
        label: wordsIn(entry, 'label'),
      })),
    })),
  }));
}

/** `0.1.2` as a spot; what is left out is 0. */
export function spotOf(words: string): Spot {
  const [c = 0, g = 0, p = 0] = words.split('.').map((one) => Math.max(0, Number.parseInt(one, 10) || 0));
  return [c, g, p];
}

/** What one button of the page does to the text of an exhibit. */
export function changeExhibit(
  state: CabinetState,
  text: string,
  facts: Fields | null,
  posted: Posted,
): Outcome<Changed> {
  const words = (name: string): string => posted.get(name)?.replace(/\r\n?/g, '\n').trim() ?? '';
  const cases = casesOf(facts);
  const at = spotOf(words('at'));
  const edit = { state, text, cases, at, words };
  const work = WORK[words('do')];
  return work === undefined ? refuse('The desk knows no such change.') : work(edit);
}

/** An exhibit that shows a piece, and its text without that piece; null where nothing would be left in it. */
export type Without = {
  readonly id: string;
  readonly title: string;
  readonly file: string;
  readonly from: string;
  readonly left: string | null;
};

/** The exhibits that show a piece, each as it would be without it. */
export function exhibitsWithout(state: CabinetState, piece: string): readonly Without[] {
  return state.records().exhibits.flatMap(({ id, file, fields }) => {
    const from = state.heldText(file) ?? '';
    const left = withoutPiece(state, from, piece);
    return left === from ? [] : [{ id, title: fields.title, file, from, left }];
  });
}

/** Says that exhibits would be without a piece, and what can be done. */
export function onlyPieceOf(exhibits: readonly Pick<Without, 'title'>[]): string {
  return exhibits.map(({ title }) => `It is the only piece of the exhibit “${title}”, and an exhibit cannot be without one. Lay another piece in it first, or have that exhibit deleted as well.`).join(' '); // prettier-ignore
}

/** The text of an exhibit without a piece, wherever it lies in it; null where nothing would be left. */
function withoutPiece(state: CabinetState, text: string, piece: string): string | null {
  const facts = listFileOf('exhibits', '', '', text).facts;
  const at = casesOf(facts)
    .flatMap(({ groups }, c) => groups.flatMap(({ pieces }, g) => pieces.map((one, p) => ({ one, at: [c, g, p] }))))
    .find(({ one }) => one.piece === piece)?.at;
  if (at === undefined) return text;
  const said = new Map([['do', 'take-out-piece'], ['at', at.join('.')]]); // prettier-ignore
  const left = changeExhibit(state, text, facts, { get: (name) => said.get(name) ?? null });
  return left.ok ? withoutPiece(state, left.value.text, piece) : null;
}

type Edit = {
  readonly state: CabinetState;
  readonly text: string;
  readonly cases: readonly CaseHeld[];
  readonly at: Spot;
  readonly words: (name: string) => string;
};

const WORK: Readonly<Record<string, (edit: Edit) => Outcome<Changed>>> = {
  earlier: (edit) => movePiece(edit, stepped(edit, -1)),
  later: (edit) => movePiece(edit, stepped(edit, 1)),
  move: (edit) => movePiece(edit, spotOf(edit.words('to'))),
  'add-piece': addPiece,
  'take-out-piece': takeOutPiece,
  'save-piece': (edit) => {
    const { cases, at, words } = edit;
    const held = cases[at[0]]?.groups[at[1]]?.pieces[at[2]];
    if (held === undefined) return refuse(GONE);
    const path = [...piecesAt(at), String(at[2])];
    const [side, label] = [words('side'), words('label')];
    if (side === held.side && label === held.label) return good({ text: edit.text, spot: at, also: null });
    if (held.side === '' && held.label === '')
      return setFields(edit, path.slice(0, -1), { [String(at[2])]: entryOf(held.piece, side, label) });
    return setFields(edit, path, { side, label });
  },
  'save-group': (edit) => setFields(edit, groupAt(edit.at), { title: edit.words('title'), text: edit.words('text') }),
  'save-case': (edit) => setFields(edit, caseAt(edit.at), { title: edit.words('title'), inside: edit.words('inside') }),
  'add-group': (edit) => {
    const id = idOf('pieces', edit.words('piece'), edit.state.records());
    if (id === null) return refuse(noPiece(edit.state.records(), edit.words('piece')));
    const [c] = edit.at;
    const at = edit.cases[c]?.groups.length ?? 0;
    const title = edit.words('title') === '' ? 'A group' : edit.words('title');
    const put = editList(edit.text, { does: 'insert', list: [...caseAt(edit.at), 'groups'], at, value: { title, pieces: [id] } }); // prettier-ignore
    return put.ok ? good({ text: put.value, spot: [c, at, 0], also: null }) : put;
  },
  'add-case': (edit) => {
    const id = idOf('pieces', edit.words('piece'), edit.state.records());
    if (id === null) return refuse(noPiece(edit.state.records(), edit.words('piece')));
    const at = edit.cases.length;
    const value = { inside: edit.words('inside'), groups: [{ title: `Case ${at + 1}`, pieces: [id] }] };
    const put = editList(edit.text, { does: 'insert', list: ['cases'], at, value });
    return put.ok ? good({ text: put.value, spot: [at, 0, 0], also: null }) : put;
  },
  'take-out-group': (edit) => takeOut(edit, true),
  'take-out-case': (edit) => takeOut(edit, false),
};

const GONE = 'That is not in the exhibit any more. Open the page again.';

const ONLY =
  'This is the only piece of the exhibit, and an exhibit cannot be without one. Add another piece first, or delete the whole exhibit.';
const ONLY_CASE =
  'This is the only case of the exhibit, and an exhibit cannot be without one. Add another case first, or delete the whole exhibit.';

function noPiece(records: Records, said: string): string {
  return said === ''
    ? 'Choose a piece for it first: nothing in an exhibit may be empty.'
    : `${unknownName(records, 'pieces', said)} Write its title or its number.`;
}

/** The spot after a step: past the end of a group comes the beginning of the next, also in the next case. */
function stepped({ cases, at: [c, g, p] }: Edit, by: -1 | 1): Spot | null {
  const groups = cases.flatMap(({ groups: own }, one) =>
    own.map(({ pieces }, two) => [one, two, pieces.length] as const),
  );
  const here = groups.findIndex(([one, two]) => one === c && two === g);
  const size = groups[here]?.[2] ?? 0;
  if (by === -1 && p > 0) return [c, g, p - 1];
  // An entry that comes before the one after next.
  if (by === 1 && p < size - 1) return [c, g, p + 2];
  const next = groups[here + by];
  return next === undefined ? null : [next[0], next[1], by === 1 ? 0 : next[2]];
}

/** Moves a piece before that spot. A group that is empty then goes, and so does its case. */
function movePiece({ text, cases, at }: Edit, to: Spot | null): Outcome<Changed> {
  if (cases[at[0]]?.groups[at[1]]?.pieces[at[2]] === undefined) return refuse(GONE);
  if (to === null) return good({ text, spot: at, also: null });
  const target = cases[to[0]]?.groups[to[1]];
  if (target === undefined) return refuse(GONE);
  const before = Math.min(to[2], target.pieces.length);
  const isSame = at[0] === to[0] && at[1] === to[1];
  const move: ListChange = { does: 'move', list: piecesAt(at), at: at[2], to: piecesAt(to), before };
  const moved = editList(text, move);
  if (!moved.ok) return moved;
  if (isSame)
    return good({ text: moved.value, spot: [to[0], to[1], before > at[2] ? before - 1 : before], also: null });
  const left = cases[at[0]]?.groups[at[1]]?.pieces.length ?? 0;
  if (left > 1) return good({ text: moved.value, spot: [to[0], to[1], before], also: null });
  const isCaseEmpty = cases[at[0]]?.groups.length === 1;
  const without = removed(moved.value, at, !isCaseEmpty);
  const spot: Spot = isCaseEmpty
    ? [to[0] - (to[0] > at[0] ? 1 : 0), to[1], before]
    : [to[0], to[1] - (to[0] === at[0] && to[1] > at[1] ? 1 : 0), before];
  const also = isCaseEmpty ? 'case-gone' : 'group-gone';
  return without.ok ? good({ text: without.value, spot, also }) : without;
}

function addPiece({ state, text, cases, at: [c, g], words }: Edit): Outcome<Changed> {
  const id = idOf('pieces', words('piece'), state.records());
  const group = cases[c]?.groups[g];
  if (group === undefined) return refuse(GONE);
  if (id === null) return refuse(noPiece(state.records(), words('piece')));
  const at = group.pieces.length;
  const put = editList(text, { does: 'insert', list: piecesAt([c, g, 0]), at, value: id });
  return put.ok ? good({ text: put.value, spot: [c, g, at], also: null }) : put;
}

function takeOutPiece(edit: Edit): Outcome<Changed> {
  const { text, cases, at } = edit;
  const group = cases[at[0]]?.groups[at[1]];
  if (group?.pieces[at[2]] === undefined) return refuse(GONE);
  const isOnly = cases.every(({ groups }) => groups.every((one) => one === group)) && group.pieces.length === 1;
  if (isOnly) return refuse(ONLY);
  if (group.pieces.length === 1) return takeOut(edit, (cases[at[0]]?.groups.length ?? 0) > 1);
  const left = editList(text, { does: 'remove', list: piecesAt(at), at: at[2] });
  return left.ok ? good({ text: left.value, spot: [at[0], at[1], Math.max(0, at[2] - 1)], also: null }) : left;
}

function takeOut({ text, cases, at }: Edit, isGroup: boolean): Outcome<Changed> {
  const isLast = isGroup ? cases[at[0]]?.groups.length === 1 : cases.length === 1;
  if (isLast) return refuse(isGroup ? 'A case holds at least one group. Take out the case.' : ONLY_CASE); // prettier-ignore
  const left = removed(text, at, isGroup);
  return left.ok ? good({ text: left.value, spot: isGroup ? [at[0], 0, 0] : [0, 0, 0], also: null }) : left;
}

function removed(text: string, at: Spot, isGroup: boolean): Outcome<string> {
  return isGroup
    ? editList(text, { does: 'remove', list: [...caseAt(at), 'groups'], at: at[1] })
    : editList(text, { does: 'remove', list: ['cases'], at: at[0] });
}

/** Sets fields of what is at a path; an empty text takes a field out. */
function setFields(edit: Edit, path: readonly string[], fields: Readonly<Record<string, Written>>): Outcome<Changed> {
  const changes = Object.entries(fields).map(([name, value]) => ({ path: [...path, name], value: value === '' ? null : value })); // prettier-ignore
  const edited = editFacts(edit.text, changes, []);
  return edited.ok ? good({ text: edited.value, spot: edit.at, also: null }) : edited;
}

function entryOf(piece: string, side: string, label: string): Written {
  return { piece, ...(side === '' ? {} : { side }), ...(label === '' ? {} : { label }) };
}

function caseAt([c]: Spot): readonly string[] {
  return ['cases', String(c)];
}

function groupAt(at: Spot): readonly string[] {
  return [...caseAt(at), 'groups', String(at[1])];
}

function piecesAt(at: Spot): readonly string[] {
  return [...groupAt(at), 'pieces'];
}

function list(held: Written | undefined): readonly Written[] {
  return Array.isArray(held) ? (held as readonly Written[]) : [];
}

function listOf(held: Written | undefined): readonly Fields[] {
  return list(held).filter(isFields);
}

function wordsIn(held: Written, name: string): string {
  const inner = isFields(held) ? held[name] : undefined;
  return typeof inner === 'string' ? inner : '';
}
