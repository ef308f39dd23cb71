import { html } from 'hono/html';
import type { FieldFacts, List } from '../../catalogue/fields/row.ts';
import { good } from '../../core/outcome.ts';
import type { Outcome } from '../../core/outcome.ts';
import type { Html } from '../frame.ts';
import { LIST_WORDS } from '../new-names.ts';
import { nameOf, textOfPart } from './leaves.ts';
import type { Fields, Leaf, PairsLeaf, Posted, RowsLeaf } from './leaves.ts';

/** What a form shows beside what the file holds. */
export type Shown = {
  /** What was posted and is not written yet; it is shown in the place of what the file holds. */
  readonly posted: Posted | null;
  /** What is wrong with a field, by its name. */
  readonly problems: (name: string) => readonly string[];
  /** How a text is read, in a sentence; empty where there is nothing to say, a problem where it cannot be. */
  readonly aloud: (row: FieldFacts, text: string) => Outcome<string>;
  /** What a thing of a list is called, by its id. */
  readonly called: (list: List, id: string) => string;
  /** What the type says where the piece is silent. */
  readonly otherwise?: (name: string) => string | null;
  /** Who says so, where it is not the type of a piece. */
  readonly otherwiseFrom?: string;
};

/** How many rows are drawn empty for what is new. */
const FRESH = 1;

/** One leaf with its label, its comment, how it is read, and what is wrong with it. */
export function drawLeaf(leaf: Leaf, shown: Shown): Html {
  if (leaf.kind === 'rows') return drawRows(leaf, shown);
  if (leaf.kind === 'pairs') return drawPairs(leaf, shown);
  const name = nameOf(leaf);
  const text = shown.posted?.get(name) ?? calledIn(leaf.row, leaf.text, shown);
  const several =
    leaf.kind === 'lines'
      ? leaf.text.split('\n').length + 1
      : text.includes('\n') || leaf.kind === 'raw'
        ? 4
        : leaf.row.control === 'text'
          ? 3
          : 1;
  return drawBox({ name, row: leaf.row, text, lines: several, kind: leaf.kind }, shown);
}

/** Ids of a list as what they name is called. */
function calledIn({ list, several }: FieldFacts, text: string, { called }: Shown): string {
  if (list === undefined || text === '') return text;
  return several === true
    ? text
        .split(', ')
        .map((id) => called(list, id))
        .join(', ')
    : called(list, text);
}

type Box = {
  readonly name: string;
  readonly row: FieldFacts;
  readonly text: string;
  readonly lines: number;
  readonly kind: Leaf['kind'];
};

function drawBox(box: Box, shown: Shown): Html {
  const { name, row, text } = box;
  const problems = shown.problems(name);
  const read = box.kind === 'raw' ? good('') : shown.aloud(row, text);
  const aloud = read.ok ? read.value : read.problem;
  // A problem that stands there already is not told twice.
  const isTold = !read.ok && problems.length > 0;
  const otherwise = text === '' ? (shown.otherwise?.(name) ?? null) : null;
  const describedBy = `${name}-says ${name}-read${problems.length > 0 ? ` ${name}-wrong` : ''}`;
  return html`<div class="field${problems.length > 0 ? ' wrong' : ''}">
    <label for="${name}">${row.label}</label>
    ${drawInput(box, describedBy, problems.length > 0)}
    <p class="says" id="${name}-says">${row.says.replaceAll('`', '')}</p>
    ${problems.length === 0 ? '' : html`<div id="${name}-wrong">${problems.map((says) => html`<p class="problem">${says}</p>`)}</div>`}
    ${problems.length > 0 || shown.posted?.get(`${name}.make`) === 'yes' ? makeTick(box, shown) : ''}
    <output class="read${read.ok ? '' : ' slip'}" id="${name}-read" for="${name}">${isTold ? '' : aloud}</output>
    ${otherwise === null ? '' : html`<p class="says">${shown.otherwiseFrom ?? 'From its type'}: <b>${otherwise}</b></p>`}
  </div>`;
}

/** Offers to make a name that is in no list yet. */
function makeTick({ name, row }: Box, shown: Shown): Html | '' {
  const list = row.reads === 'reference' ? 'works' : row.list;
  if (list === undefined || list === 'pieces' || list === 'sets') return '';
  const isTicked = shown.posted?.get(`${name}.make`) === 'yes';
  return html`<label class="tick"
    ><input type="checkbox" name="${name}.make" value="yes" ${isTicked ? 'checked' : ''} /> It is new: add it to the
    list of ${LIST_WORDS[list]}</label
  >`;
}

function drawInput({ name, row, text, lines, kind }: Box, describedBy: string, isWrong: boolean): Html {
  const completes = row.list ?? row.completes;
  const reads = row.reads ?? completes ?? '';
  const invalid = isWrong ? 'true' : 'false';
  if (kind === 'choice') {
    const choices = [...new Set([...(row.choices ?? []), ...(text === '' ? [] : [text])])];
    return html`<select id="${name}" name="${name}" aria-describedby="${describedBy}" aria-invalid="${invalid}">
      <option value="">${row.usual === undefined ? 'not recorded' : `${row.usual} (unless you choose)`}</option>
      ${choices.map((one) => html`<option value="${one}" ${one === text ? 'selected' : ''}>${one}</option>`)}
    </select>`;
  }
  if (lines > 1)
    // A line end straight after the tag is not part of the text.
    return html`<textarea
      id="${name}"
      name="${name}"
      rows="${lines}"
      data-reads="${reads}"
      aria-describedby="${describedBy}"
      aria-invalid="${invalid}"
      spellcheck="false"
    >
${text}</textarea>`;
  return html`<input
    id="${name}"
    name="${name}"
    value="${text}"
    data-reads="${reads}"
    ${completes === undefined ? '' : html`list="list-${completes}"`}
    aria-describedby="${describedBy}"
    aria-invalid="${invalid}"
    autocomplete="off"
    spellcheck="false"
  />`;
}

function drawRows(leaf: RowsLeaf, shown: Shown): Html {
  const name = nameOf(leaf);
  const count = Math.max(Number(shown.posted?.get(`${name}.count`) ?? 0), leaf.entries.length + FRESH);
  const rows = Array.from({ length: count }, (_, index) => {
    const entry: Fields = leaf.entries[index] ?? {};
    const isNew = index >= leaf.entries.length;
    const boxes = Object.entries(leaf.row.parts ?? {}).map(([part, row]) => {
      const box = `${name}.${index}.${part}`;
      const text = shown.posted?.get(box) ?? calledIn(row, textOfPart(row, entry[part]), shown);
      return drawBox({ name: box, row, text, lines: 1, kind: row.control === 'choice' ? 'choice' : 'words' }, shown);
    });
    const parts = Object.entries(leaf.row.parts ?? {});
    const isWrong = parts.some(([part]) => shown.problems(`${name}.${index}.${part}`).length > 0);
    const isTyped = parts.some(([part, row]) => {
      const typed = shown.posted?.get(`${name}.${index}.${part}`) ?? null;
      return typed !== null && typed !== calledIn(row, textOfPart(row, entry[part]), shown);
    });
    const told = parts
      .map(([part, row]) => calledIn(row, textOfPart(row, entry[part]), shown))
      .filter((words) => words !== '');
    return html`<details class="entry" ${isWrong || isTyped ? 'open' : ''}>
      <summary>${isNew ? `Add to ${leaf.row.label}` : `${index + 1}. ${told.slice(0, 3).join(', ')}`}</summary>
      <div class="boxes">${boxes}</div>
      ${
        isNew
          ? ''
          : html`<label class="tick"
              ><input type="checkbox" name="${name}.${index}.remove" value="yes" /> Remove number ${index + 1}</label
            >`
      }
    </details>`;
  });
  return html`<fieldset class="several" id="${name}">
    <legend>${leaf.row.label}</legend>
    <p class="says">${leaf.row.says.replaceAll('`', '')}</p>
    ${shown.problems(name).map((says) => html`<p class="problem">${says}</p>`)}
    <input type="hidden" name="${name}.count" value="${count}" />
    ${rows}
  </fieldset>`;
}

function drawPairs(leaf: PairsLeaf, shown: Shown): Html {
  const name = nameOf(leaf);
  const rows = [...leaf.entries, ['', ''] as const].map(([key, words], index) => {
    const said = (part: string, held: string): string => shown.posted?.get(`${name}.${index}.${part}`) ?? held;
    return html`<div class="pair">
      <input
        name="${name}.${index}.name"
        value="${said('name', key)}"
        aria-label="${leaf.row.label} ${index + 1}: the field"
        spellcheck="false"
      />
      <input
        name="${name}.${index}.words"
        value="${said('words', words)}"
        aria-label="${leaf.row.label} ${index + 1}: the words"
        spellcheck="false"
      />
    </div>`;
  });
  return html`<fieldset class="several" id="${name}">
    <legend>${leaf.row.label}</legend>
    <p class="says">${leaf.row.says.replaceAll('`', '')}</p>
    ${shown.problems(name).map((says) => html`<p class="problem">${says}</p>`)} ${rows}
  </fieldset>`;
}
