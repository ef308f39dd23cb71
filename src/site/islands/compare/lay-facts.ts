import { factRows } from '../../compare/fact-rows.ts';
import type { FactCell, FactRow } from '../../compare/fact-rows.ts';
import type { ComparedPiece } from '../../compare/record.ts';
import { compareWords as words } from '../../words/compare.ts';

/** Lays the facts of several pieces in a table, a column a piece; what differs is marked and says so. */
export function layFacts(table: Element, pieces: readonly ComparedPiece[], onlyDiffering: boolean): void {
  const head = element('thead', element('tr', column(words.fact), ...pieces.map(({ title }) => column(title))));
  const rows = factRows(pieces).filter(({ differs }) => differs || !onlyDiffering);
  table.replaceChildren(head, element('tbody', ...rows.map((row) => layRow(row, pieces.length > 1))));
}

function layRow({ name, cells, differs }: FactRow, isTold: boolean): HTMLElement {
  const heading = element('th', name);
  heading.setAttribute('scope', 'row');
  if (differs && isTold) heading.append(element('span', words.differs));
  const row = element('tr', heading, ...cells.map((cell) => layCell(cell, differs && isTold)));
  row.classList.toggle('differs', differs && isTold);
  return row;
}

function layCell(cell: FactCell | null, differs: boolean): HTMLElement {
  if (cell === null) return element('td', element('span', words.notRecorded));
  const laid = element('td', differs ? element('mark', cell.text) : cell.text);
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
