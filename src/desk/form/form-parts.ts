import { html } from 'hono/html';
import type { FactsTable, FieldFacts } from '../../catalogue/fields/row.ts';
import type { Problem } from '../../catalogue/problem.ts';
import type { Html } from '../frame.ts';
import { drawLeaf } from './draw-leaf.ts';
import type { Shown } from './draw-leaf.ts';
import { linkTo } from '../links.ts';
import { NOT_IN_LIST } from '../new-names.ts';
import { rowNamed } from './read-aloud.ts';
import { capital, nameOf } from './leaves.ts';
import type { Leaf, Posted } from './leaves.ts';

/** What the form of a file shows beside its fields. */
export type FormView = {
  readonly posted: Posted | null;
  readonly problems: readonly Problem[];
  /** Words that cannot be put into the file, by the name of their box. */
  readonly unread: Readonly<Record<string, string>>;
  readonly aloud: Shown['aloud'];
  readonly called: Shown['called'];
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
    const isOpen = ['obverse', 'reverse'].includes(name) || mine.some((leaf) => isInUse(leaf, shown));
    return html`<details class="group part" ${isOpen ? 'open' : ''}>
      <summary>${row?.label ?? name}</summary>
      <div role="group" aria-label="${row?.label ?? name}">
        <p class="says">${row?.says.replaceAll('`', '') ?? ''}</p>
        <div class="boxes">${drawFields(mine, inner, shown, depth + 1)}</div>
      </div>
    </details>`;
  });
}

/** Whether a leaf has anything to show: in the file, in what was posted, or wrong. */
export function isInUse(leaf: Leaf, { posted, problems }: Shown): boolean {
  const name = nameOf(leaf);
  if (leaf.held !== undefined || problems(name).length > 0) return true;
  if (posted === null) return false;
  const parts = Object.keys(leaf.row.parts ?? {});
  const boxes = leaf.kind === 'rows' ? parts.map((part) => `${name}.${leaf.entries.length}.${part}`) : [name];
  return boxes.some((box) => (posted.get(box) ?? '') !== '' || problems(box).length > 0);
}

/** The choices of a field, each with the parts of it. */
function facesIn({ choices = [], parts = {} }: FieldFacts): FactsTable {
  return Object.fromEntries(
    choices.map((one) => [one, { label: capital(one), says: '', example: '', control: 'parts' as const, parts }]),
  );
}

export function shownOf({ posted, problems, unread, aloud, called, otherwise }: FormView): Shown {
  return {
    posted,
    aloud,
    called,
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

/** What is in the way of a save, each under the name of its box; `text` is where the file can be edited as a text. */
export function problemsNote({ problems, unread }: FormView, text: string, kind: string): Html | '' {
  const told = [
    ...problems.map(({ field, file, says }) => ({
      to: file.startsWith(`${kind}/`) || file.startsWith('private/') ? null : { file, address: linkTo(file) },
      box: field === null ? '' : file.startsWith('private/') ? `ledger.${field}` : field,
      says: field === null ? `${file}: ${says}` : says,
    })),
    ...Object.entries(unread).map(([box, says]) => ({ to: null, box, says })),
  ];
  if (told.length === 0) return '';
  return html`<div class="problem" role="alert">
    <p>
      Nothing was written.
      ${told.length === 1 ? 'One thing must be fixed first:' : `${told.length} things must be fixed first:`}
    </p>
    <ul>
      ${told.map(({ to, box, says }) => html`<li>${to !== null ? html`<a href="${to.address}">${to.file}</a>: ` : box === '' ? '' : html`<a href="#${box.replace(/^([a-z-]+)\.\d+$/, '$1')}">${labelOf(box, kind)}</a>: `}${says}</li>`)}
    </ul>
    ${Object.values(unread).some((says) => says.includes(NOT_IN_LIST)) ? html`<p>A name that is new is added to its list by the tick under its box.</p>` : ''}
    <p><a href="${text}">Edit the text of the file instead</a></p>
  </div>`;
}

/** What a person calls a box: `Weight`, `Obverse: Legend`. */
export function labelOf(box: string, kind: string): string {
  const [top = ''] = box.split('.');
  const [outer, inner] = [rowNamed(top, kind)?.label ?? top, rowNamed(box, kind)?.label ?? box];
  return top === 'ledger' || outer === inner ? inner : `${outer}: ${inner}`;
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
