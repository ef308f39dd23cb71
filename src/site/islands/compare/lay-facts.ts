import type { ComparedPiece, ComparedFact } from '../../compare/record.ts';
import { compareWords as words } from '../../words/compare.ts';

/** Lays the facts of several pieces in a table, a column a piece; what differs is marked and says so. */
export function layFacts(table: Element, pieces: readonly ComparedPiece[], onlyDiffering: boolean): void {
  const facts = element('th', forListeners(words.fact));
  facts.setAttribute('scope', 'col');
  const head = element('thead', element('tr', facts, ...pieces.map(({ title }) => column(title))));
  const rows = factRows(pieces).filter(({ differs }) => differs || !onlyDiffering);
  table.replaceChildren(head, element('tbody', ...rows.map(layRow)));
}

function layRow({ name, cells, differs }: FactRow): HTMLElement {
  const heading = element('th', name);
  heading.setAttribute('scope', 'row');
  if (differs) heading.append(forListeners(words.differs));
  return element('tr', heading, ...cells.map((cell) => layCell(cell, differs)));
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

/** Words that those who look see by the mark. */
function forListeners(text: string): HTMLElement {
  const said = element('span', ` ${text}`);
  said.className = 'for-listeners';
  return said;
}

function element(name: string, ...holds: readonly (Node | string)[]): HTMLElement {
  const made = document.createElement(name);
  made.append(...holds);
  return made;
}

/** A row of the table: one fact and what each piece answers, in the order they lie; null where it is not recorded. */
type FactRow = {
  readonly name: string;
  readonly cells: readonly (FactCell | null)[];
  /** Whether two pieces tell of it and not the same. One that tells nothing may still be alike. */
  readonly differs: boolean;
};
type FactCell = {
  readonly text: string;
  /** How much more than the first piece's; null for the first itself. */ readonly more: More | null;
};
export type More = { readonly by: number; readonly unit: 'g' | 'mm' };

/** The facts of several pieces side by side, in the order in which the first that has a fact tells it. */
export function factRows(pieces: readonly ComparedPiece[]): readonly FactRow[] {
  return namesOf(pieces).map((name) => {
    const told = pieces.map(({ facts }) => facts.find((fact) => fact.name === name) ?? null);
    return {
      name,
      cells: told.map((fact, at) =>
        fact === null ? null : { text: fact.text, more: at === 0 ? null : moreThan(told[0] ?? null, fact) },
      ),
      differs: new Set(told.flatMap((fact) => fact?.text ?? [])).size > 1,
    };
  });
}

/** Every name once. A name that only a later piece has stands behind the one it follows there. */
function namesOf(pieces: readonly ComparedPiece[]): readonly string[] {
  const names: string[] = [];
  for (const { facts } of pieces) {
    let after = -1;
    for (const { name } of facts) {
      const at = names.indexOf(name);
      if (at !== -1) after = at;
      else names.splice((after += 1), 0, name);
    }
  }
  return names;
}

function moreThan(first: ComparedFact | null, other: ComparedFact): More | null {
  if (first?.measure === undefined || other.measure?.unit !== first.measure.unit) return null;
  const by = Math.round((other.measure.value - first.measure.value) * 100) / 100;
  return by === 0 ? null : { by, unit: other.measure.unit };
}
