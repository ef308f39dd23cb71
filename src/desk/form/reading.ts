import { html } from 'hono/html';
import { contextOf } from '../../catalogue/date-contexts.ts';
import { LIST_ROWS } from '../../catalogue/fields/list-fields.ts';
import { PIECE_ROWS } from '../../catalogue/fields/piece-fields.ts';
import type { FactsTable, FieldFacts, List } from '../../catalogue/fields/row.ts';
import type { Records } from '../../catalogue/records.ts';
import { reignsOf } from '../../catalogue/reigns.ts';
import { isBlank } from '../../catalogue/schema/fields.ts';
import { citedWorks } from '../../catalogue/types/cited-works.ts';
import { readTypes, seriesNamed, typeNamed } from '../../catalogue/types/types-of.ts';
import type { Outcome } from '../../core/outcome.ts';
import { good, refuse } from '../../core/outcome.ts';
import { onceFor } from '../../site/once-for.ts';
import type { CabinetState } from '../cabinet-state.ts';
import type { Html } from '../frame.ts';
import { idOf, namesIn, unknownName } from '../new-names.ts';
import { ledgerRow } from './ledger-rows.ts';
import { sayReading } from './say-reading.ts';
import type { Beside } from './say-reading.ts';

/** What else a form says that settles how one of its boxes is read: the scale of a grade, the rulers of a date. */
export type SaidBeside = { readonly scale: string | null; readonly ruler: string | null };

/** How the words of a box are read, in a sentence; empty where there is nothing to say, a problem where they cannot be. */
export function aloudIn(records: Records, row: FieldFacts, words: string, said: SaidBeside): Outcome<string> {
  if (words.trim() === '') return good('');
  if (row.list !== undefined)
    return namesAloud(records, row.list, row.several === true ? partsOf(words) : [words.trim()]);
  if (row.completes === 'types') return typeAloud(records, words);
  const as = row.reads;
  if (as === undefined) return good('');
  const beside = besideOf(records, said);
  const lines = row.control === 'lines' ? words.split('\n').filter((one) => one.trim() !== '') : [words];
  const read = lines.flatMap((line) =>
    row.blanks === true && isBlank(line.trim()) ? [] : [sayReading(as, line, beside)],
  );
  const slip = read.find(({ ok }) => !ok);
  return slip ?? good(read.flatMap((one) => (one.ok ? [one.value] : [])).join(' '));
}

/** What the cabinet knows that helps to read a text; that of its rulers and books is gathered once for the records as they are. */
function besideOf(records: Records, { scale, ruler }: SaidBeside): Beside {
  const named = partsOf(ruler ?? '').flatMap((said) => idOf('rulers', said, records) ?? []);
  const { reigns, works } = consulted(records);
  const { gr, currency } = records.cabinet?.fields ?? {};
  const rulers = records.rulers.filter(({ id }) => named.includes(id));
  return { dates: { ...contextOf(rulers, true), reigns }, works, gr, currency, scale: scale ?? '' };
}

const consulted = onceFor((records: Records) => ({
  reigns: records.rulers.flatMap(reignsOf),
  works: citedWorks(records.works).map((work, at) => ({ ...work, title: records.works[at]?.fields.title ?? work.id })),
}));

/** What is meant by names of a list; those it does not have are told, with the one that may be meant. */
function namesAloud(records: Records, list: List, said: readonly string[]): Outcome<string> {
  const told: string[] = [];
  for (const words of said) {
    const id = idOf(list, words, records);
    if (id === null) return refuse(unknownName(records, list, words));
    const name = namesIn(list, records).find((one) => one.id === id)?.names[0] ?? id;
    const reigns = list === 'rulers' ? (records.rulers.find((one) => one.id === id)?.fields.reigns ?? []) : [];
    const years = reigns.map(({ from, to }) => `${from.text} to ${to.text}`).join(', ');
    if (years !== '' || name !== words) told.push(`${name}${years === '' ? '' : `, ${years}`}.`);
  }
  return good(told.join(' '));
}

/** Which type is meant: `Class 3b, Pence of Edward I`. */
function typeAloud(records: Records, words: string): Outcome<string> {
  const { types } = readTypes(records);
  const named = typeNamed(types, words.trim());
  if (!named.ok) return named;
  const series = seriesNamed(types, named.value.series);
  return good(
    `${series?.types.get(named.value.id)?.label ?? named.value.id}, ${series?.fields.title ?? named.value.series}.`,
  );
}

/** The types that boxes complete. */
export function typesList(records: Records): Html {
  const { types } = readTypes(records);
  const all = types.series.flatMap((series) =>
    [...series.types.values()].map(({ id, label }) => ({
      id: types.holders.get(id)?.length === 1 ? id : `${series.id}/${id}`,
      label,
    })),
  );
  return html`<datalist id="list-types">
    ${all.slice(0, 2000).map(({ id, label }) => html`<option value="${id}">${label}</option>`)}
  </datalist>`;
}

/** Names with commas or semicolons between them. */
export function partsOf(words: string): readonly string[] {
  return words.split(/[,;]/).flatMap((one) => (one.trim() === '' ? [] : [one.trim()]));
}

/** The row of a box by its name: `obverse.legend`, `provenance.0.when`, `ledger.cost`; `kind` is the folder of its file. */
export function rowNamed(name: string, kind: string): FieldFacts | null {
  const path = name.split('.').filter((step) => !/^\d+$/.test(step));
  if (path[0] === 'ledger') return ledgerRow(path[1] ?? '');
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

/** The names of lists that boxes complete: what a thing is called, or its id where several are called the same. */
export function datalists(state: CabinetState, lists: readonly List[]): Html {
  const most = 2000;
  return html`${lists.map((list) => {
    const named = namesIn(list, state.records()).slice(0, most);
    const times = new Map<string, number>();
    for (const { names } of named) times.set(names[0] ?? '', (times.get(names[0] ?? '') ?? 0) + 1);
    return html`<datalist id="list-${list}">
      ${named.map(({ id, names: [name = id, other = id] }) => (times.get(name) === 1 ? html`<option value="${name}">${list === 'pieces' ? other : ''}</option>` : html`<option value="${id}">${name}</option>`))}
    </datalist>`;
  })}`;
}
