import { PIECE_ROWS } from '../catalogue/fields/piece-fields.ts';
import type { FieldFacts } from '../catalogue/fields/row.ts';
import { editFacts } from '../catalogue/write/edit-list.ts';
import { formatPieceFile, PIECE_ORDER } from '../catalogue/write/write-piece.ts';
import type { Outcome } from '../core/outcome.ts';
import { good, refuse } from '../core/outcome.ts';
import { fileId, freeId } from '../core/file-id.ts';
import type { CabinetState, FileChange } from './cabinet-state.ts';
import { changesIn, nameOf } from './form/leaves.ts';
import type { Fields, Posted } from './form/leaves.ts';
import { namesMeant } from './new-names.ts';
import { readPiece } from './save-piece.ts';

/** One field of several pieces set to the same words; what would be written. */
export async function changeSeveral(
  state: CabinetState,
  asked: { readonly ids: readonly string[]; readonly field: string; readonly to: string },
): Promise<Outcome<readonly FileChange[]>> {
  const row = Object.hasOwn(PIECE_ROWS, asked.field) ? PIECE_ROWS[asked.field as keyof typeof PIECE_ROWS] : null;
  if (row === null) return refuse('Choose a field to change.');
  if (asked.ids.length === 0) return refuse('Choose at least one piece in the list.');
  const changes: FileChange[] = [];
  for (const id of new Set(asked.ids)) {
    const piece = state.records().named.pieces.includes(id) ? await readPiece(state, id) : null;
    if (piece?.facts == null) return refuse(`The piece ${id} cannot be read. Look at it first.`);
    const posted: Posted = { get: (name) => (name === asked.field ? asked.to.replaceAll(';', '\n') : null) };
    const leaves = piece.leaves.filter((leaf) => nameOf(leaf) === asked.field);
    const { changes: wanted, unread } = changesIn(leaves, posted);
    const [slip] = Object.values(unread);
    if (slip !== undefined) return refuse(slip);
    const edited = editFacts(piece.text, namesMeant(wanted, leaves, posted, state.records()).changes, PIECE_ORDER);
    if (!edited.ok) return edited;
    if (edited.value !== piece.text) changes.push({ file: piece.file, text: edited.value, from: piece.text });
  }
  return good(changes);
}

/** The file of a new piece, from nothing or like another: what a type could give it is taken over, the rest is the piece's own. */
export async function newPiece(
  state: CabinetState,
  posted: Posted,
): Promise<Outcome<{ readonly id: string; readonly changes: readonly FileChange[] }>> {
  const [number, title, kind] = ['number', 'title', 'kind'].map((name) => posted.get(name)?.trim() ?? '');
  if (title === undefined || title === '') return refuse('A piece wants a title.');
  if (number === undefined || number === '') return refuse('A piece wants a number.');
  const like = posted.get('like')?.trim() ?? '';
  const { named } = state.records();
  if (like !== '' && !named.pieces.includes(like)) return refuse(`There is no piece ${like} to take from.`);
  const from = like === '' ? null : await readPiece(state, like);
  const rows = Object.entries(PIECE_ROWS) as readonly (readonly [string, FieldFacts & { readonly inherited?: true }])[];
  const taken = rows.flatMap(([name, { inherited }]) => {
    const held = from?.facts?.[name];
    return inherited !== true || held === undefined ? [] : [[name, withoutLegend(name, held as Fields)] as const];
  });
  const id = freeId(fileId(title), (one) => named.pieces.includes(one));
  const fields = { ...Object.fromEntries(taken), number, title, kind: kind === '' ? 'coin' : (kind ?? 'coin') };
  return good({ id, changes: [{ file: `pieces/${id}/piece.md`, text: formatPieceFile(fields, ''), from: null }] });
}

/** A legend is read on the piece itself and never taken from another. */
function withoutLegend(name: string, held: Fields): Fields {
  if (!['obverse', 'reverse', 'edge'].includes(name) || typeof held !== 'object') return held;
  return Object.fromEntries(Object.entries(held).filter(([part]) => part !== 'legend'));
}
