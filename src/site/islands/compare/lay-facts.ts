import type { ComparedPiece, ComparedFact } from '../../compare/record.ts';
import { compareWords as words } from '../../words/compare.ts';
import { tied } from '../../words/no-break.ts';

/** Where facts go: a table each for what differs and for what only some tell, and a list for what is alike. */
export type FactParts = Readonly<Record<FactRow['how'], Element>>;

/** Lays the facts of several pieces: what differs in a column under each piece, what is alike once for all. */
export function layFacts(parts: FactParts, pieces: readonly ComparedPiece[]): void {
  const rows = factRows(pieces);
  const of = (how: FactRow['how']): readonly FactRow[] => rows.filter((row) => row.how === how);
  for (const how of ['differs', 'partly'] as const) {
    const head = withRole('tr', 'row', ...pieces.map(({ title }) => withRole('th', 'columnheader', tied(title))));
    parts[how].replaceChildren(element('thead', head), element('tbody', ...of(how).map(layRow)));
  }
  parts.alike.replaceChildren(
    ...of('alike').map(({ name, cells }) => {
      const [cell = null] = cells;
      return element('div', element('dt', name), ' ', element('dd', tied(cell?.text ?? '')));
    }),
  );
  for (const [how, part] of Object.entries(parts))
    part.closest('section')?.toggleAttribute('hidden', !rows.some((row) => row.how === how));
}

function layRow({ name, cells }: FactRow): HTMLElement {
  return withRole('tr', 'row', withRole('th', 'rowheader', name), ...cells.map(layCell));
}

function layCell(cell: FactCell | null): HTMLElement {
  if (cell === null) return withRole('td', 'cell', element('span', words.nothingTold));
  const laid = withRole('td', 'cell', tied(cell.text));
  if (cell.more !== null) laid.append(element('span', tied(words.more(cell.more.by, cell.more.unit))));
  return laid;
}

/** A part of a table, which is one for those who listen however it is laid. */
function withRole(name: string, role: string, ...holds: readonly (Node | string)[]): HTMLElement {
  const made = element(name, ...holds);
  made.role = role;
  return made;
}

function element(name: string, ...holds: readonly (Node | string)[]): HTMLElement {
  const made = document.createElement(name);
  made.append(...holds);
  return made;
}

/** A row of the table: one fact and what each piece answers, in the order they lie; null where it is not recorded. */
export type FactRow = {
  readonly name: string;
  readonly cells: readonly (FactCell | null)[];
  /** Whether two tell of it and not the same; whether one tells nothing of it, and may still be alike; or all tell the same. */
  readonly how: 'differs' | 'partly' | 'alike';
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
      how:
        new Set(told.flatMap((fact) => fact?.text ?? [])).size > 1
          ? 'differs'
          : told.includes(null)
            ? 'partly'
            : 'alike',
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
