import { factRows } from '../../compare/fact-rows.ts';
import type { FactCell, FactRow } from '../../compare/fact-rows.ts';
import type { ComparedPiece } from '../../compare/record.ts';
import { compareWords as words } from '../../words/compare.ts';

/** Lays the facts of several pieces in a table, a column a piece; what differs is marked and says so. */
export function layFacts(table: Element, pieces: readonly ComparedPiece[], onlyDiffering: boolean): void {
  const head = element('thead', element('tr', column(words.fact), ...pieces.map(({ title }) => column(title))));
  const rows = factRows(pieces);
  const differing = rows.filter(({ differs }) => differs);
  // Where nearly everything differs a mark on all of it would say nothing.
  const isMarked = 2 * differing.length <= rows.length;
  table.replaceChildren(
    head,
    element('tbody', ...(onlyDiffering ? differing : rows).map((row) => layRow(row, isMarked))),
  );
}

function layRow({ name, cells, differs }: FactRow, isMarked: boolean): HTMLElement {
  const heading = element('th', name);
  heading.setAttribute('scope', 'row');
  if (differs) heading.append(element('span', words.differs));
  const row = element('tr', heading, ...cells.map((cell) => layCell(cell, differs && isMarked)));
  row.classList.toggle('differs', differs);
  return row;
}

function layCell(cell: FactCell | null, isMarked: boolean): HTMLElement {
  if (cell === null) return element('td', element('span', words.nothingTold));
  const laid = element('td', isMarked ? element('mark', cell.text) : cell.text);
  if (cell.more !== null) laid.append(element('span', words.more(cell.more.by, cell.more.unit)));
  return laid;
}

function column(text: string): HTMLElement {
  const heading = element('th', text);
  heading.setAttribute('scope', 'col');
  return heading;
}

function element(name: string, ...holds: readonly (Node | string)[]): HTMLElement {
  const made = document.createElement(name);
  made.append(...holds);
  return made;
}
