import { PIECE_ROWS } from '../catalogue/fields/piece-fields.ts';
import type { FieldFacts } from '../catalogue/fields/row.ts';
import type { Records } from '../catalogue/records.ts';
import { readTypes, seriesNamed, typeNamed } from '../catalogue/types/types-of.ts';
import type { TypeName } from '../catalogue/types/types-of.ts';
import { editFacts } from '../catalogue/write/edit-list.ts';
import { editRow } from '../catalogue/write/edit-table.ts';
import { LEDGER_COLUMNS } from '../catalogue/fields/ledger-columns.ts';
import { formatPieceFile, PIECE_ORDER } from '../catalogue/write/write-piece.ts';
import type { Outcome } from '../core/outcome.ts';
import { good, refuse } from '../core/outcome.ts';
import { fileId, freeId } from '../core/file-id.ts';
import { LEDGER } from './cabinet-state.ts';
import type { CabinetState } from './cabinet-state.ts';
import type { FileChange } from './cabinet-files.ts';
import { factsOf } from './pieces-rows.ts';
import { changesIn, nameOf } from './form/leaves.ts';
import type { Fields, Posted } from './form/leaves.ts';
import { idOf, namesMeant } from './new-names.ts';
import { readPiece } from './save-piece.ts';

/** One field of several pieces set to the same words; what would be written. */
export async function changeSeveral(
  state: CabinetState,
  asked: { readonly ids: readonly string[]; readonly field: string; readonly to: string },
): Promise<Outcome<readonly FileChange[]>> {
  if (asked.ids.length === 0) return refuse('Choose at least one piece in the list.');
  const ids = [...new Set(asked.ids)];
  const strange = ids.find((id) => !state.records().named.pieces.includes(id));
  if (strange !== undefined) return refuse(`There is no piece ${strange}. Open the list again.`);
  if (asked.field.startsWith('ledger.')) return changeColumn(state, ids, asked.field.slice(7), asked.to.trim());
  const row = Object.hasOwn(PIECE_ROWS, asked.field) ? PIECE_ROWS[asked.field as keyof typeof PIECE_ROWS] : null;
  if (row === null || asked.field === 'number') return refuse('Choose a field to change.');
  const changes: FileChange[] = [];
  for (const id of ids) {
    const piece = await readPiece(state, id);
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

/** One column of the ledger set to the same words in the rows of several pieces. */
async function changeColumn(
  state: CabinetState,
  ids: readonly string[],
  column: string,
  to: string,
): Promise<Outcome<readonly FileChange[]>> {
  const from = await state.textOf(LEDGER);
  if (!factsOf(state.ledger()).some(({ name }) => name === `ledger.${column}`))
    return refuse('Choose a field to change.');
  const before = (from ?? '').trim() === '' ? `${LEDGER_COLUMNS.join(',')}\n` : (from ?? '');
  const text = ids
    .filter((id) => to !== (state.ledger().get(id)?.[column] ?? '').trim())
    .reduce((table, id) => editRow(table, { column: 'piece', value: id }, { [column]: to }), before);
  return good(text === before ? [] : [{ file: LEDGER, text, from }]);
}

/**
 * The file of a new piece: from nothing, of a type, which then says what the file leaves out, or like another, from which what a
 * type could give is taken over and the rest is the piece's own.
 */
export async function newPiece(
  state: CabinetState,
  posted: Posted,
): Promise<Outcome<{ readonly id: string; readonly changes: readonly FileChange[] }>> {
  const [number = '', said = '', kind = '', likeSaid = '', typeSaid = ''] = [
    'number',
    'title',
    'kind',
    'like',
    'type',
  ].map((name) => posted.get(name)?.trim() ?? '');
  if (likeSaid !== '' && typeSaid !== '') return refuse('Choose a type or another piece, not both.');
  const records = state.records();
  const like = likeSaid === '' ? '' : idOf('pieces', likeSaid, records);
  if (like === null) return refuse(`There is no piece “${likeSaid}” to take from. Write its title or its number.`);
  const type = typeSaid === '' ? null : typeNamed(readTypes(records).types, typeSaid);
  if (type?.ok === false) return type;
  const title = said === '' && type !== null ? labelOfType(records, type.value) : said;
  if (title === '') return refuse('Write a title: what the piece is, in a line.');
  if (number === '') return refuse('Write a number for the piece.');
  const from = like === '' ? null : await readPiece(state, like);
  const rows = Object.entries(PIECE_ROWS) as readonly (readonly [string, FieldFacts & { readonly inherited?: true }])[];
  const taken = rows.flatMap(([name, { inherited }]) => {
    const held = from?.facts?.[name];
    return inherited !== true || held === undefined ? [] : [[name, withoutLegend(name, held as Fields)] as const];
  });
  const id = freeId(fileId(title), (one) => records.named.pieces.includes(one));
  const fields = {
    ...Object.fromEntries(taken), number, title, kind: kind === '' ? 'coin' : kind,
    ...(type === null ? {} : { type: typeSaid }),
  }; // prettier-ignore
  return good({ id, changes: [{ file: `pieces/${id}/piece.md`, text: formatPieceFile(fields, ''), from: null }] });
}

function labelOfType(records: Records, { series, id }: TypeName): string {
  const held = seriesNamed(readTypes(records).types, series);
  return [held?.types.get(id)?.label ?? id, held?.fields.title ?? series].join(', ');
}

/** A legend is read on the piece itself and never taken from another. */
function withoutLegend(name: string, held: Fields): Fields {
  if (!['obverse', 'reverse', 'edge'].includes(name) || typeof held !== 'object') return held;
  return Object.fromEntries(Object.entries(held).filter(([part]) => part !== 'legend'));
}
