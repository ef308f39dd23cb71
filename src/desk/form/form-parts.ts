import { html } from 'hono/html';
import type { FactsTable, FieldFacts } from '../../catalogue/fields/row.ts';
import type { Problem } from '../../catalogue/problem.ts';
import type { Html } from '../frame.ts';
import { drawLeaf } from './draw-leaf.ts';
import type { Shown } from './draw-leaf.ts';
import { nameOf } from './leaves.ts';
import type { Leaf, Posted } from './leaves.ts';

/** What the form of a file shows beside its fields. */
export type FormView = {
  readonly posted: Posted | null;
  readonly problems: readonly Problem[];
  /** Words that cannot be put into the file, by the name of their box. */
  readonly unread: Readonly<Record<string, string>>;
  readonly aloud: Shown['aloud'];
  readonly listId: Shown['listId'];
  readonly otherwise?: Shown['otherwise'];
  /** Whether the file was changed while the form lay open. */
  readonly isStale: boolean;
};

/** The leaves of a file in the order of its table; those of a field with parts stand under its name, folded when it is empty. */
export function drawFields(leaves: readonly Leaf[], rows: FactsTable, shown: Shown, depth = 0): readonly Html[] {
  const names = [...new Set(leaves.map(({ path }) => path[depth] ?? ''))];
  return names.map((name) => {
    const mine = leaves.filter(({ path }) => path[depth] === name);
    const row = rows[name];
    const [only] = mine;
    if (mine.length === 1 && only?.path.length === depth + 1) return drawLeaf(only, shown);
    const inner = row?.control === 'each' ? facesIn(row) : (row?.parts ?? {});
    const isOpen = mine.some((leaf) => leaf.held !== undefined || shown.problems(nameOf(leaf)).length > 0);
    return html`<details class="group part" ${isOpen ? 'open' : ''}>
      <summary>${row?.label ?? name}</summary>
      <div role="group" aria-label="${row?.label ?? name}">
        <p class="says">${row?.says.replaceAll('`', '') ?? ''}</p>
        <div class="boxes">${drawFields(mine, inner, shown, depth + 1)}</div>
      </div>
    </details>`;
  });
}

/** The choices of a field, each with the parts of it. */
function facesIn({ choices = [], parts = {} }: FieldFacts): FactsTable {
  return Object.fromEntries(
    choices.map((one) => [one, { label: one, says: '', example: '', control: 'parts' as const, parts }]),
  );
}

export function shownOf({ posted, problems, unread, aloud, listId, otherwise }: FormView): Shown {
  return {
    posted,
    aloud,
    listId,
    ...(otherwise === undefined ? {} : { otherwise }),
    problems: (name) => [
      ...(unread[name] === undefined ? [] : [unread[name]]),
      ...problems.filter((one) => isAt(one, name)).map(({ says }) => says),
    ],
  };
}

/** Whether a problem is that of a box: of its own field, or of an entry in it. */
function isAt({ file, field }: Problem, name: string): boolean {
  const at = file.startsWith('private/') ? `ledger.${field}` : (field ?? '');
  return at === name || (at.startsWith(`${name}.`) && /^\d+$/.test(at.slice(name.length + 1)));
}

/** What stands in the way of a save; `text` is where the file can be edited as a text. */
export function problemsNote({ problems, unread }: FormView, text: string): Html | '' {
  const all = [...Object.values(unread), ...problems.map(({ says }) => says)];
  if (all.length === 0) return '';
  return html`<div class="problem" role="alert">
    <p>
      Nothing was written.
      ${all.length === 1 ? 'One thing must be fixed first:' : `${all.length} things must be fixed first:`}
    </p>
    <ul>
      ${problems.map(({ field, file, says }) => html`<li>${field === null ? file : html`<a href="#${file.startsWith('private/') ? `ledger.${field}` : field}">${field}</a>`}: ${says}</li>`)}
      ${Object.entries(unread).map(([name, says]) => html`<li>${name === '' ? '' : html`<a href="#${name}">${name}</a>: `}${says}</li>`)}
    </ul>
    <p><a href="${text}">Edit the text of the file instead</a></p>
  </div>`;
}

export function staleNote(text: string, again: string): Html {
  return html`<div class="problem" role="alert">
    <p>
      The file was changed while this form was open, by another window or another program. Nothing was written. Your
      words are in the form below; the file says now:
    </p>
    <pre>${text}</pre>
    <p>Save again to write what you changed, field by field, or <a href="${again}">take the file as it is</a>.</p>
  </div>`;
}
