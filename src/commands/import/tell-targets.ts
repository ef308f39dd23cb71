import { PIECE_ROWS } from '../../catalogue/fields/piece-fields.ts';
import { LEDGER_NAMES } from '../../catalogue/fields/ledger-columns.ts';
import { UNITS } from '../../import/columns/targets.ts';
import { inColumns } from './tell-columns.ts';

/** What the targets that are no field of a piece's own are for. */
const OTHERS: readonly (readonly [target: string, says: string, example: string])[] = [
  ['id', 'The name of its folder; without one, its number is taken.', 'york-penny'],
  ['realm', 'What the ruler ruled: it tells rulers of one name apart.', 'Scotland'],
  ['mint area', 'The country or region of the mint: it tells places of one name apart.', 'Lydia'],
  ['story', 'What is told below the facts; several columns follow one another.', 'Found in a drawer.'],
  ['reference to NAME', 'Every cell is a number in this book.', 'reference to North'],
  ['{part}, {part}', 'A pattern: one column into several fields.', '"{denomination} of {ruler}, {mint}"'],
  ['[one, other]', 'One column read in several ways.', '[title, story]'],
  ['nothing', 'The column is left out, because it follows from others.', 'nothing'],
  ['ledger', 'Private, under its own heading.', 'ledger'],
];

/** Every target that a column may be read into, a line each: its name, what it is, an example; then the columns of the ledger. */
export function tellTargets(): string {
  const told = new Set(OTHERS.map(([target]) => target));
  const fields = Object.values(PIECE_ROWS).flatMap((row): readonly (readonly string[])[] => {
    const targets: readonly string[] = 'targets' in row ? row.targets : [];
    return targets
      .filter((target) => !told.has(target))
      .map((target, at) => [target, at === 0 ? row.says : 'A part or kind of the same.', at === 0 ? row.example : '']);
  });
  const units = Object.entries(UNITS).map(([field, some]) => [`${field} in …`, some.join(', '), '']);
  const ledger = LEDGER_NAMES.map((column) => [`ledger ${column}`, 'Private, never published.', '']);
  return [
    'What a column may be read into, written behind its heading under columns: in the mapping:',
    inColumns([...fields, ...OTHERS]),
    '\nUnits a heading may lack:',
    inColumns(units),
    '\nThe ledger:',
    inColumns(ledger),
    '\nSeveral columns may be read into references, tags, story, treatments, peculiarities, makers and provenance; each adds its own.',
  ].join('\n');
}
