import { html } from 'hono/html';
import { LIST_ROWS } from '../../catalogue/fields/list-fields.ts';
import { PIECE_ROWS } from '../../catalogue/fields/piece-fields.ts';
import type { FactsTable, FieldFacts, List } from '../../catalogue/fields/row.ts';
import type { Records } from '../../catalogue/records.ts';
import type { CabinetState } from '../cabinet-state.ts';
import type { Html } from '../frame.ts';
import { namesIn } from '../new-names.ts';
import type { DeskTools } from '../tools.ts';

/** How the words of a box are read, in a sentence; empty where there is nothing to say. */
export function aloudIn(
  { readAloud }: DeskTools,
  records: Records,
  row: FieldFacts,
  words: string,
  scale: string | null,
): string {
  if (row.reads === undefined || words.trim() === '') return '';
  const lines = row.control === 'lines' ? words.split('\n').filter((one) => one.trim() !== '') : [words];
  return lines
    .map((line) => {
      if (row.blanks === true && ['unknown', 'none'].includes(line.trim())) return '';
      const read = readAloud(row.reads ?? 'date', line, records, scale === null || scale === '' ? {} : { scale });
      return read.ok ? read.value : read.problem;
    })
    .filter((one) => one !== '')
    .join(' ');
}

/** The row of a box by its name: `obverse.legend`, `provenance.0.when`, `ledger.cost`; `kind` is the folder of its file. */
export function rowNamed(name: string, kind: string): FieldFacts | null {
  const path = name.split('.').filter((step) => !/^\d+$/.test(step));
  if (path[0] === 'ledger') {
    const of = path[1] ?? '';
    const reads = ['cost', 'value', 'insured'].includes(of) ? 'money' : of === 'acquired' ? 'date' : null;
    return reads === null ? null : { label: '', says: '', example: '', control: 'line', reads };
  }
  let rows: FactsTable = Object.hasOwn(LIST_ROWS, kind) ? LIST_ROWS[kind as keyof typeof LIST_ROWS] : PIECE_ROWS;
  let row: FieldFacts | null = null;
  for (const step of path) {
    const next: FieldFacts | undefined = Object.hasOwn(rows, step) ? rows[step] : undefined;
    // A face of `photographs` is a choice of its field and no row.
    if (next === undefined) continue;
    row = next;
    rows = next.parts ?? {};
  }
  return row;
}

/** The names of lists that boxes complete. */
export function datalists(state: CabinetState, lists: readonly List[]): Html {
  const most = 2000;
  return html`${lists.map(
    (list) =>
      html`<datalist id="list-${list}">
        ${namesIn(list, state.records())
          .slice(0, most)
          .map(({ id, names }) => html`<option value="${id}">${names[0] ?? id}</option>`)}
      </datalist>`,
  )}`;
}
