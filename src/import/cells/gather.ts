import { parseDate } from '../../core/dating/parse-date.ts';
import type { Written } from '../../catalogue/yaml.ts';
import type { Draft, UnreadCell } from '../plan/draft.ts';
import type { Half, Said } from './cell-result.ts';

/** What one cell said, with the heading and the text it was in. */
export type SaidBy = { readonly said: Said; readonly heading: string; readonly text: string };

/** All that the cells of a row say, put together. The first to state a fact is kept, and a second that differs is told of. */
export type Gathered = {
  readonly facts: ReadonlyMap<string, Written>;
  readonly names: Draft['names'];
  readonly halves: ReadonlyMap<Half, SaidBy>;
  readonly ledger: ReadonlyMap<string, string>;
  readonly story: readonly string[];
  readonly id: string | null;
  readonly unread: readonly UnreadCell[];
};

export function gather(row: number, all: readonly SaidBy[]): Gathered {
  const facts = new Map<string, Written>();
  const halves = new Map<Half, SaidBy>();
  const ledger = new Map<string, string>();
  const unread: UnreadCell[] = [];
  const story: string[] = [];
  let names: Draft['names'] = {};
  let id: string | null = null;
  const tell = (by: SaidBy, field: string, because: string, text = by.text) =>
    unread.push({ row, heading: by.heading, text, because, field });
  const clash = (by: SaidBy, field: string, held: string) =>
    tell(
      by,
      field,
      `Another column already says "${held}" for ${field}, and this differs. Keep the one that is right.`,
    );
  for (const by of all) {
    const { said } = by;
    if (said.kind === 'fact') {
      const held = facts.get(said.field) ?? (isName(said.field) ? names[said.field] : undefined);
      if (held === undefined) facts.set(said.field, said.value);
      else if (!isSame(held, said.value, said.field)) clash(by, said.field, shown(held));
    } else if (said.kind === 'more') {
      const held = facts.get(said.field);
      facts.set(said.field, [...(Array.isArray(held) ? (held as readonly Written[]) : []), ...said.values]);
    } else if (said.kind === 'name') {
      const held = namesHeld(names, said.field) ?? facts.get(said.field);
      if (held === undefined) names = { ...names, ...named(said) };
      else if (!isSame(held, said.names, said.field)) clash(by, said.field, shown(held));
    } else if (said.kind === 'reference') {
      names = { ...names, references: [...(names.references ?? []), { name: said.name, cited: said.cited }] };
    } else if (said.kind === 'realm') {
      if (names.realm !== undefined && names.realm !== said.text) clash(by, 'realm', names.realm);
      else names = { ...names, realm: said.text };
    } else if (said.kind === 'mint area') {
      if (names.mintArea !== undefined && names.mintArea !== said.text) clash(by, 'mint area', names.mintArea);
      else names = { ...names, mintArea: said.text };
    } else if (said.kind === 'half') {
      if (halves.has(said.of)) clash(by, said.of, halves.get(said.of)?.text ?? '');
      else halves.set(said.of, by);
    } else if (said.kind === 'ledger') {
      const held = ledger.get(said.column);
      ledger.set(said.column, held === undefined || held === said.text ? said.text : `${held}; ${said.text}`);
    } else if (said.kind === 'story') story.push(said.text);
    else if (said.kind === 'id') id ??= said.text;
    else if (said.kind === 'unread') tell(by, said.field, said.because, said.text ?? by.text);
  }
  return { facts, names, halves, ledger, story, id, unread };
}

type Name = Extract<Said, { kind: 'name' }>;

function isName(field: string): field is Name['field'] {
  return field === 'ruler' || field === 'mint' || field === 'denomination';
}

function namesHeld(names: Draft['names'], field: Name['field']): Name['names'] | undefined {
  const held = names[field];
  return held === undefined ? undefined : 'name' in held ? [held] : held;
}

function named({ field, names }: Name): Draft['names'] {
  const [first] = names;
  if (first === undefined) return {};
  return field === 'ruler' ? { ruler: names } : field === 'mint' ? { mint: first } : { denomination: first };
}

/** Two dates are the same when they come to the same years, however they are written. */
function isSame(held: unknown, said: unknown, field: string): boolean {
  const [one, other] = [shown(held), shown(said)];
  if (one.toLowerCase() === other.toLowerCase()) return true;
  if (field !== 'date') return false;
  const [a, b] = [parseDate(one), parseDate(other)];
  return a.ok && b.ok && a.value.edtf === b.value.edtf;
}

function shown(value: unknown): string {
  if (typeof value === 'string') return value;
  if (Array.isArray(value)) return value.map(shown).join('; ');
  if (typeof value === 'object' && value !== null && 'name' in value) return shown(value.name);
  return JSON.stringify(value);
}
