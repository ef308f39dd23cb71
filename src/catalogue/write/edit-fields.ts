import { isMap, isNode, isPair, isSeq, parseDocument } from 'yaml';
import type { Pair, YAMLMap } from 'yaml';
import type { Outcome } from '../../core/outcome.ts';
import { good, refuse } from '../../core/outcome.ts';
import { splitFrontMatter } from '../front-matter.ts';
import type { Written } from '../yaml.ts';
import { readYaml } from '../yaml.ts';
import { endOf, keyOf, lineEnd, lineStart, nextLine, pairOf, spanOf, startOf } from './spans.ts';
import { formatField, formatInLine } from './write-yaml.ts';

/** A field by its path (`['obverse', 'legend']`, `['reigns', '0', 'from']`) and what it is to hold; null takes it out. */
export type FieldChange = { readonly path: readonly string[]; readonly value: Written | null };

/**
 * A file (`piece.md` or a list file) with some of its fields changed, put in or taken out. Only the lines of those
 * fields are touched: every other byte, comment and order stays. A new field comes where `order`, its form's, has it.
 */
export function editFields(text: string, changes: readonly FieldChange[], order: readonly string[]): Outcome<string> {
  let now = text;
  for (const asked of changes) {
    const change = asked.value === null ? emptied(factsOf(now), asked.path) : asked;
    const wanted = changed(factsOf(now), change.path, change.value);
    const next = wanted === null ? null : editOne(now, change, order);
    if (next === null || !isSame(factsOf(next), wanted))
      return refuse(
        `The field ${change.path.join('.')} is in this file in a way that only a person can change. Change it there.`,
      );
    now = next;
  }
  return good(now);
}

/** The text below the facts of a `piece.md` set anew; the facts stay as they are. */
export function editStory(text: string, story: string): string {
  const top = /^\uFEFF?---[ \t]*\r?\n(?:[\s\S]*?\r?\n)??---[ \t]*(?:\r?\n|$)/.exec(text)?.[0] ?? text;
  const end = lineEndOf(text);
  const below = story.replace(/\r\n?/g, '\n').trim().replaceAll('\n', end);
  return `${top}${top.endsWith('\n') ? '' : end}${below === '' ? '' : `${end}${below}${end}`}`;
}

/** Taking out the last of several fields takes out the field that holds them. */
function emptied(facts: Written | null, path: readonly string[]): FieldChange {
  const outer = path.slice(0, -1);
  const held = outer.reduce<Written | null>((one, step) => fieldsOf(one)[step] ?? null, facts);
  const isLast = outer.length > 0 && Object.keys(fieldsOf(held)).join() === path.at(-1);
  return isLast ? emptied(facts, outer) : { path, value: null };
}

function isList(written: Written): written is readonly Written[] {
  return Array.isArray(written);
}

function fieldsOf(written: Written | null): Readonly<Record<string, Written>> {
  const isFields = typeof written === 'object' && written !== null && !Array.isArray(written);
  return isFields ? (written as Readonly<Record<string, Written>>) : {};
}

function editOne(text: string, { path, value }: FieldChange, order: readonly string[]): string | null {
  const { from, to } = factsIn(text);
  const facts = text.slice(from, to);
  const document = parseDocument(facts, { schema: 'failsafe' });
  const put = (cut: Cut): string =>
    `${text.slice(0, from)}${facts.slice(0, cut.from)}${cut.put.replace(/\r?\n/g, lineEndOf(text))}${facts.slice(cut.to)}${text.slice(to)}`;
  const [first = '', ...inner] = path;
  if (document.contents === null && value !== null) {
    const begun = formatField(first, within(inner, value));
    return put({ from: facts.length, to: facts.length, put: `${/[^\n]$/.test(facts) ? '\n' : ''}${begun}\n` });
  }
  let map: unknown = document.contents;
  for (const [depth, name] of path.entries()) {
    const rest = path.slice(depth + 1);
    if (isSeq(map)) {
      const item = map.items[Number(name)];
      if (!isNode(item) || (rest.length === 0 && value === null)) return null;
      if (rest.length === 0 && value !== null)
        return put({ from: spanOf(item)[0], to: endOf(facts, item), put: inItem(value) });
      map = item;
      continue;
    }
    if (!isMap(map)) return null;
    const pair = pairOf(map, name);
    if (pair === null) {
      if (value === null) return text;
      return put(insertion(facts, map, name, within(rest, value), depth === 0 ? order : []));
    }
    if (rest.length === 0)
      return put(value === null ? removal(facts, map, pair) : replacement(facts, map, pair, value));
    map = pair.value;
  }
  return null;
}

/** A value inside the fields of a path. */
function within(path: readonly string[], value: Written): Written {
  return path.reduceRight<Written>((held, step) => ({ [step]: held }), value);
}

/** What is cut out of the facts, and what is put there. */
type Cut = { readonly from: number; readonly to: number; readonly put: string };

function replacement(facts: string, map: YAMLMap, pair: Pair, value: Written): Cut {
  const [keyStart, keyEnd] = spanOf(pair.key);
  const name = keyOf(pair);
  const colon = facts.indexOf(':', keyEnd) + 1;
  const end = Math.max(colon, endOf(facts, pair.value));
  const start = isNode(pair.value) && end > colon ? Math.max(colon, startOf(pair.value, colon)) : colon;
  const tail = facts.slice(end, lineEnd(facts, end));
  // Beside a comment, or in braces, a value keeps to its line; else it may be folded as a new one would be.
  if (map.flow === true || tail.trim() !== '' || facts.slice(colon, start).trim() !== '')
    return {
      from: start,
      to: end,
      put: `${start === colon ? ' ' : ''}${map.flow === true ? inBraces(name, value) : formatInLine(value, name)}`,
    };
  const indent = ' '.repeat(keyStart - lineStart(facts, keyStart));
  const written = formatField(name, value, indent);
  return {
    from: colon,
    to: end,
    put: written.slice(written.indexOf(':', indent.length + keyLength(written, indent)) + 1),
  };
}

/** The length of the key that a written field begins with, quotation marks and all. */
function keyLength(written: string, indent: string): number {
  const key = written.slice(indent.length);
  return key.startsWith('"') ? (/^"(?:[^"\\]|\\.)*"/.exec(key)?.[0].length ?? 0) : key.indexOf(':');
}

function removal(facts: string, map: YAMLMap, pair: Pair): Cut {
  const [start] = spanOf(pair.key);
  const end = Math.max(facts.indexOf(':', spanOf(pair.key)[1]) + 1, endOf(facts, pair.value));
  if (map.flow !== true) return { from: lineStart(facts, start), to: nextLine(facts, end), put: '' };
  const after = /^\s*,\s*/.exec(facts.slice(end))?.[0] ?? '';
  if (after !== '') return { from: start, to: end + after.length, put: '' };
  const before = /\s*,\s*$/.exec(facts.slice(0, start))?.[0] ?? '';
  return { from: start - before.length, to: end, put: '' };
}

function insertion(facts: string, map: YAMLMap, name: string, value: Written, order: readonly string[]): Cut {
  const pairs = map.items.filter((one) => isPair(one));
  if (map.flow === true) {
    const last = pairs.at(-1);
    const open = spanOf(map)[0] + 1;
    const at = last === undefined ? open : Math.max(spanOf(last.key)[1] + 1, endOf(facts, last.value));
    const field = inBraces(name, value, true);
    return { from: at, to: at, put: last === undefined ? ` ${field} ` : `, ${field}` };
  }
  const rank = (one: Pair): number => order.indexOf(keyOf(one));
  const mine = order.includes(name) ? order.indexOf(name) : order.length;
  const before = order.length === 0 ? pairs.at(-1) : pairs.findLast((one) => rank(one) !== -1 && rank(one) < mine);
  const first = pairs[0];
  const column = first === undefined ? 0 : spanOf(first.key)[0] - lineStart(facts, spanOf(first.key)[0]);
  const written = formatField(name, value, ' '.repeat(column));
  if (before === undefined) {
    const at = first === undefined ? 0 : lineStart(facts, spanOf(first.key)[0]);
    return { from: at, to: at, put: `${written}\n` };
  }
  const at = nextLine(facts, Math.max(spanOf(before.key)[1], endOf(facts, before.value)));
  return {
    from: at,
    to: at,
    put: `${at > 0 && facts[at - 1] !== '\n' ? '\n' : ''}${written}${at < facts.length || facts.endsWith('\n') ? '\n' : ''}`,
  };
}

/** An entry of a list on one line. */
function inItem(value: Written): string {
  const written = formatInLine([value]);
  return written.slice(1, -1);
}

function inBraces(name: string, value: Written, withKey = false): string {
  const written = formatInLine({ [name]: value }).slice(2, -2);
  return withKey ? written : written.slice(keyLength(written, '') + 2);
}

/** Where the facts of a file begin and end: between the lines `---` of a `piece.md`, else the whole. */
export function factsIn(text: string): { from: number; to: number } {
  const match = /^(\uFEFF?---[ \t]*\r?\n)((?:[\s\S]*?\r?\n)??)---[ \t]*(?:\r?\n|$)/.exec(text);
  const from = match?.[1]?.length ?? (text.startsWith('\uFEFF') ? 1 : 0);
  return { from, to: match === null ? text.length : from + (match[2]?.length ?? 0) };
}

export function factsOf(text: string): Written | null {
  const facts = text.startsWith('---') || text.startsWith('\uFEFF---') ? splitFrontMatter(text)?.facts : text;
  const read = readYaml((facts ?? '').replace(/^\uFEFF/, ''));
  return read.ok ? read.value : null;
}

/** The facts as they are to be after a change; null where that cannot be. */
function changed(facts: Written | null, path: readonly string[], value: Written | null): Written | null {
  const [name, ...rest] = path;
  if (facts === null || typeof facts === 'string' || name === undefined) return null;
  if (isList(facts)) {
    const held = facts[Number(name)];
    const inner = held === undefined ? null : rest.length === 0 ? value : changed(held, rest, value);
    return inner === null ? null : facts.map((one, index) => (index === Number(name) ? inner : one));
  }
  const fields = fieldsOf(facts);
  const held = fields[name];
  if (rest.length > 0 && held === undefined && value === null) return facts;
  const inner = rest.length === 0 ? value : changed(held ?? {}, rest, value);
  if (inner === null && rest.length > 0) return null;
  const others = Object.entries(fields).filter(([field]) => field !== name);
  return Object.fromEntries(inner === null ? others : [...others, [name, inner]]);
}

/** Whether two facts say the same, whatever the order of their fields. */
export function isSame(a: Written | null | undefined, b: Written | null | undefined): boolean {
  const isPlain = typeof a === 'string' || a === undefined || typeof b === 'string' || b === undefined;
  return isPlain ? a === b : canonical(a) === canonical(b);
}

function canonical(value: Written | null | undefined): string {
  return JSON.stringify(value, (_, held: unknown) =>
    typeof held === 'object' && held !== null && !Array.isArray(held)
      ? Object.fromEntries(Object.entries(held).sort(([a], [b]) => (a < b ? -1 : 1)))
      : held,
  );
}

function lineEndOf(text: string): string {
  return /\r\n/.test(text) ? '\r\n' : '\n';
}
