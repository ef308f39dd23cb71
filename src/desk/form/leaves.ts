import type { FactsTable, FieldFacts } from '../../catalogue/fields/row.ts';
import { formatInLine, formatYaml } from '../../catalogue/write/write-yaml.ts';
import type { FieldChange } from '../../catalogue/write/edit-fields.ts';
import type { Written } from '../../catalogue/yaml.ts';
import { readYaml } from '../../catalogue/yaml.ts';
import type { Outcome } from '../../core/outcome.ts';
import { good, refuse } from '../../core/outcome.ts';

export type Fields = Readonly<Record<string, Written>>;

/** One thing that is edited, with what the file says of it now as the form shows it. */
export type Leaf = TextLeaf | RawLeaf | RowsLeaf | PairsLeaf;

type Place = {
  /** Where it is in the file. */
  readonly path: readonly string[];
  readonly row: FieldFacts;
  /** What the file holds; undefined for nothing. */
  readonly held: Written | undefined;
};
type TextLeaf = Place & { readonly kind: 'words' | 'lines' | 'choice' | 'names'; readonly text: string };
type RawLeaf = Place & { readonly kind: 'raw'; readonly text: string };
export type RowsLeaf = Place & { readonly kind: 'rows'; readonly entries: readonly Fields[] };
export type PairsLeaf = Place & { readonly kind: 'pairs'; readonly entries: readonly (readonly [string, string])[] };

/** What a form says: the words under a name. */
export type Posted = { readonly get: (name: string) => string | null };

/** The name of a leaf in its form, which is also the field of a problem: `obverse.legend`. */
export function nameOf({ path }: Pick<Leaf, 'path'>): string {
  return path.join('.');
}

/** Everything in a table of fields that can be edited, one leaf for each box, with what the file holds. */
export function leavesOf(rows: FactsTable, fields: Fields, before: readonly string[] = []): readonly Leaf[] {
  return Object.entries(rows).flatMap(([name, row]) => leavesOfField(row, fields[name], [...before, name]));
}

function leavesOfField(row: FieldFacts, held: Written | undefined, path: readonly string[]): readonly Leaf[] {
  const inner = held ?? {};
  const [parts, choices] = [row.parts ?? {}, row.choices ?? []];
  switch (row.control) {
    case 'parts':
      return isFields(inner) && knows(Object.keys(parts), inner)
        ? leavesOf(parts, inner, path)
        : [raw(row, held, path)];
    case 'each':
      return isFields(inner) && knows(choices, inner)
        ? choices.flatMap((one) =>
            leavesOfField({ ...row, label: capital(one), control: 'parts' }, inner[one], [...path, one]),
          )
        : [raw(row, held, path)];
    case 'table':
      return isFields(inner) && knows(row.of ?? [], inner)
        ? (row.of ?? []).map((one) =>
            leafOfWords(
              { ...row, label: `${capital(one)}: ${row.label.toLowerCase()}`, says: '', control: 'choice' },
              inner[one],
              [...path, one],
            ),
          )
        : [raw(row, held, path)];
    case 'rows': {
      const listed = held ?? [];
      const entries = isList(listed) ? listed.map((one) => entryOf(one, row)) : [null];
      return entries.every((one) => one !== null)
        ? [{ kind: 'rows', path, row, held, entries }]
        : [raw(row, held, path)];
    }
    case 'pairs':
      return isFields(inner) && Object.values(inner).every((one) => typeof one === 'string')
        ? [{ kind: 'pairs', path, row, held, entries: Object.entries(inner) as [string, string][] }]
        : [raw(row, held, path)];
    default:
      return [leafOfWords(row, held, path)];
  }
}

/** An entry of a list as fields; one word stands for the part that its row names. Null for what is neither. */
function entryOf(one: Written, { head }: FieldFacts): Fields | null {
  if (typeof one === 'string') return head === undefined ? null : { [head]: one };
  return isFields(one) ? one : null;
}

/** A part of an entry as its box shows it: words, several with commas between them, or as a file has it on one line. */
export function textOfPart({ several }: FieldFacts, held: Written | undefined): string {
  if (held === undefined || isLine(held)) return held ?? '';
  const plain = isList(held) ? held.flatMap((one) => (isLine(one) && !/[,;]/.test(one) ? [one] : [])) : [];
  return several === true && plain.length === held.length ? plain.join(', ') : formatInLine(held);
}

function leafOfWords(row: FieldFacts, held: Written | undefined, path: readonly string[]): Leaf {
  const isSeveral = row.control === 'lines' || row.several === true;
  const listed = held === undefined ? [] : isList(held) ? held : [held];
  const kind =
    row.control === 'choice' ? 'choice' : row.control === 'lines' ? 'lines' : row.several === true ? 'names' : 'words';
  if (isSeveral && listed.every(isLine) && !(isList(held ?? '') && listed.length === 0)) {
    const isJoined = kind === 'names' && listed.every((one) => !/[,;]/.test(one));
    if (kind === 'lines' || isJoined)
      return { kind, path, row, held, text: listed.join(kind === 'lines' ? '\n' : ', ') };
  }
  if (!isSeveral && (held === undefined || typeof held === 'string'))
    return { kind, path, row, held, text: held ?? '' };
  return raw(row, held, path);
}

/** What the form cannot draw is edited as it is in a file. */
function raw(row: FieldFacts, held: Written | undefined, path: readonly string[]): Leaf {
  return {
    kind: 'raw',
    path,
    row,
    held,
    text: held === undefined ? '' : formatYaml({ [path.at(-1) ?? '']: held }).trimEnd(),
  };
}

/**
 * What a form changes. A leaf whose words are as they were shown changes nothing; one that the form does not have, neither.
 * Words that cannot be put into the file are told under the name of their leaf.
 */
export function changesIn(
  leaves: readonly Leaf[],
  posted: Posted,
): { readonly changes: readonly FieldChange[]; readonly unread: Readonly<Record<string, string>> } {
  const unread: Record<string, string> = {};
  const changes = leaves.flatMap((leaf): readonly FieldChange[] => {
    if (leaf.kind === 'rows') return rowChanges(leaf, posted, unread);
    const value = leaf.kind === 'raw' ? rawIn(leaf, posted) : good(valueIn(leaf, posted));
    if (!value.ok) unread[nameOf(leaf)] = value.problem;
    return !value.ok || value.value === undefined ? [] : [{ path: leaf.path, value: value.value }];
  });
  return { changes, unread };
}

/** The value a leaf is to hold; null for nothing, undefined where nothing changes. */
function valueIn(leaf: TextLeaf | PairsLeaf, posted: Posted): Written | null | undefined {
  const name = nameOf(leaf);
  if (leaf.kind === 'pairs') return pairsIn(leaf, posted, name);
  const words = said(posted, name);
  if (words === null || words === leaf.text) return undefined;
  if (words.trim() === '') return leaf.held === undefined ? undefined : null;
  if (leaf.kind === 'lines' || leaf.kind === 'names') {
    // Looked for, and there is none.
    if (words.trim() === '[]') return [];
    const several = words
      .split(leaf.kind === 'lines' ? '\n' : /[,;]/)
      .flatMap((one) => (one.trim() === '' ? [] : [one.trim()]));
    const isAlone = several.length === 1 && !isList(leaf.held ?? '') && !leaf.row.example.startsWith('[');
    return isAlone ? several[0] : several;
  }
  return words.trim();
}

/** A field in the words of its file, with its name or without. */
function rawIn(leaf: RawLeaf, posted: Posted): Outcome<Written | null | undefined> {
  const words = said(posted, nameOf(leaf));
  if (words === null || words === leaf.text) return good(undefined);
  if (words.trim() === '') return good(leaf.held === undefined ? undefined : null);
  return writtenIn(words, leaf.path.at(-1) ?? '');
}

/** The value in the words of a file, with the name of its field or without. */
function writtenIn(words: string, field: string): Outcome<Written> {
  const read = readYaml(words.startsWith(`${field}:`) ? words : `${field}: ${words}`);
  if (!read.ok) return refuse(`This cannot be read: ${read.reason}.`);
  const value = isFields(read.value) ? read.value[field] : undefined;
  return value === undefined ? refuse(`This begins with ${field}: and then its value.`) : good(value);
}

/**
 * What a form changes in a list of entries: fields of those that stay, in their own lines; then those taken out, the last
 * first; then those that are new.
 */
function rowChanges(leaf: RowsLeaf, posted: Posted, unread: Record<string, string>): readonly FieldChange[] {
  const name = nameOf(leaf);
  const count = Number(posted.get(`${name}.count`) ?? Number.NaN);
  if (!Number.isInteger(count) || count < leaf.entries.length || count > 500) return [];
  const edits: FieldChange[] = [];
  const removed: FieldChange[] = [];
  for (const [index, before] of leaf.entries.entries()) {
    const path = [...leaf.path, String(index)];
    const after = posted.get(`${name}.${index}.remove`) === 'yes' ? {} : entryIn(leaf, index, before, posted, unread);
    if (Object.keys(after).length === 0) removed.unshift({ path, value: null });
    else edits.push(...entryChanges(leaf, path, before, after));
  }
  const left = leaf.entries.length - removed.length;
  const fresh = Array.from({ length: count - leaf.entries.length }, (_, at) =>
    entryIn(leaf, leaf.entries.length + at, {}, posted, unread),
  ).filter((entry) => Object.keys(entry).length > 0);
  const written = fresh.map((entry) => asWritten(leaf, entry));
  if (leaf.entries.length === 0) return written.length === 0 ? [] : [{ path: leaf.path, value: written }];
  if (left === 0) return [{ path: leaf.path, value: written.length === 0 ? null : written }];
  return [...edits, ...removed, ...written.map((value, at) => ({ path: [...leaf.path, String(left + at)], value }))];
}

/** An entry as the form has it, its parts in the order they were in; those that are new in the order of the table. */
function entryIn(
  leaf: RowsLeaf,
  index: number,
  before: Fields,
  posted: Posted,
  unread: Record<string, string>,
): Fields {
  const after: Record<string, Written> = { ...before };
  for (const [part, row] of Object.entries(leaf.row.parts ?? {})) {
    const box = `${nameOf(leaf)}.${index}.${part}`;
    const words = said(posted, box);
    if (words === null || words === textOfPart(row, before[part])) continue;
    const value = partIn(row, part, before[part], words.trim());
    if (!value.ok) unread[box] = value.problem;
    else if (value.value === null) Reflect.deleteProperty(after, part);
    else after[part] = value.value;
  }
  return after;
}

function partIn(row: FieldFacts, part: string, before: Written | undefined, words: string): Outcome<Written | null> {
  if (words === '') return good(null);
  if (row.several === true) {
    const listed = words.split(/[,;]/).flatMap((one) => (one.trim() === '' ? [] : [one.trim()]));
    return good(listed.length === 1 && !isList(before ?? '') ? (listed[0] ?? words) : listed);
  }
  return row.control === 'parts' || (before !== undefined && typeof before !== 'string')
    ? writtenIn(words, part)
    : good(words);
}

/** The fields of an entry that are others now; an entry of one word is written anew as a whole. */
function entryChanges(leaf: RowsLeaf, path: readonly string[], before: Fields, after: Fields): readonly FieldChange[] {
  const names = [...new Set([...Object.keys(before), ...Object.keys(after)])];
  const changed = names.filter((name) => before[name] !== after[name]);
  if (changed.length === 0) return [];
  const held = isList(leaf.held ?? []) ? (leaf.held as readonly Written[])[Number(path.at(-1))] : undefined;
  if (typeof held === 'string') return [{ path, value: asWritten(leaf, after) }];
  return changed.map((name) => ({ path: [...path, name], value: after[name] ?? null }));
}

/** An entry of nothing but its first part is one word. */
function asWritten({ row: { head } }: RowsLeaf, entry: Fields): Written {
  const [only, ...others] = Object.entries(entry);
  return others.length === 0 && only?.[0] === head && head !== undefined ? (only?.[1] ?? entry) : entry;
}

function pairsIn(leaf: PairsLeaf, posted: Posted, name: string): Written | null | undefined {
  const count = leaf.entries.length + 1;
  const after = Array.from({ length: count }, (_, index): readonly [string, string] => {
    const [key = '', words = ''] = leaf.entries[index] ?? [];
    return [said(posted, `${name}.${index}.name`) ?? key, said(posted, `${name}.${index}.words`) ?? words];
  }).filter(([key, words]) => key.trim() !== '' && words.trim() !== '');
  if (JSON.stringify(after) === JSON.stringify(leaf.entries)) return undefined;
  return after.length === 0 ? null : Object.fromEntries(after.map(([key, words]) => [key.trim(), words.trim()]));
}

/** The words under a name, their lines ending as the file's are read; null where the form has no such box. */
function said(posted: Posted, name: string): string | null {
  return posted.get(name)?.replace(/\r\n?/g, '\n') ?? null;
}

/** A name of a field or of one of its choices, as a label. */
export function capital(name: string): string {
  return `${name.slice(0, 1).toUpperCase()}${name.slice(1)}`.replaceAll('-', ' ');
}

function knows(names: readonly string[], fields: Fields): boolean {
  return Object.keys(fields).every((name) => names.includes(name));
}

function isLine(written: Written): written is string {
  return typeof written === 'string' && written !== '' && !written.includes('\n') && written.trim() === written;
}

export function isFields(written: Written): written is Fields {
  return typeof written === 'object' && !Array.isArray(written);
}

function isList(written: Written): written is readonly Written[] {
  return Array.isArray(written);
}
