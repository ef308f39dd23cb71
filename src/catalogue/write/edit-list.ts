import { isMap, isNode, isSeq, parseDocument } from 'yaml';
import type { YAMLSeq } from 'yaml';
import type { Outcome } from '../../core/outcome.ts';
import { good, refuse } from '../../core/outcome.ts';
import type { Written } from '../yaml.ts';
import type { FieldChange } from './edit-fields.ts';
import { editFields, factsIn, factsOf, isSame } from './edit-fields.ts';
import { endOf, lineStart, nextLine, pairOf } from './spans.ts';
import { formatEntry } from './write-yaml.ts';

/** Where a list is in a file: `['cases', '0', 'groups']`. */
export type ListPath = readonly string[];

/** An entry put into a list, taken out of it, or moved before another, which may be in another list. Counted from 0. */
export type ListChange =
  | { readonly does: 'insert'; readonly list: ListPath; readonly at: number; readonly value: Written }
  | { readonly does: 'remove'; readonly list: ListPath; readonly at: number }
  | {
      readonly does: 'move';
      readonly list: ListPath;
      readonly at: number;
      readonly to: ListPath;
      readonly before: number;
    };

/**
 * A file with one entry of a list put in, taken out or moved. The lines of an entry go as they are, with what stands behind
 * them; every other line stays. A list in brackets is written anew.
 */
export function editList(text: string, change: ListChange): Outcome<string> {
  const before = factsOf(text);
  const wanted = before === null ? null : changed(before, change);
  if (wanted === null) return refuse('This list has no such entry any more. Open the page again.');
  const byLines = changeLines(text, change);
  if (byLines !== null && isSame(factsOf(byLines), wanted)) return good(byLines);
  const lists =
    change.does === 'move' && !isSamePath(change.list, change.to) ? [change.list, change.to] : [change.list];
  return editFields(
    text,
    lists.map((path) => ({ path, value: listAt(wanted, path) ?? [] })),
    [],
  );
}

/**
 * A file with some of its fields and entries changed: like `editFields`, and an entry of a list may be taken out (null) or put
 * in behind the last one.
 */
export function editFacts(text: string, changes: readonly FieldChange[], order: readonly string[]): Outcome<string> {
  let now = text;
  for (const change of changes) {
    const { path, value } = change;
    const [list, at] = [path.slice(0, -1), Number(path.at(-1))];
    const facts = path.length < 2 ? null : factsOf(now);
    const held = facts === null ? null : listAt(facts, list);
    const done =
      held !== null && value === null
        ? editList(now, { does: 'remove', list, at })
        : held !== null && value !== null && at >= held.length
          ? editList(now, { does: 'insert', list, at: held.length, value })
          : editFields(now, [change], order);
    if (!done.ok) return done;
    now = done.value;
  }
  return good(now);
}

/** The change in the lines of the file; null where a list is not line by line. */
function changeLines(text: string, change: ListChange): string | null {
  const { from, to } = factsIn(text);
  const facts = text.slice(from, to);
  const document = parseDocument(facts, { schema: 'failsafe' });
  const list = seqAt(document.contents, change.list);
  if (list === null) return null;
  const cuts: { readonly at: number; readonly to: number; readonly put: string }[] = [];
  if (change.does === 'insert') {
    const spot = spotBefore(facts, list, change.at);
    if (spot === null) return null;
    cuts.push({ at: spot.at, to: spot.at, put: formatEntry(change.value, ' '.repeat(spot.indent)) });
  } else {
    const lines = linesOf(facts, list, change.at);
    if (lines === null) return null;
    cuts.push({ at: lines.at, to: lines.to, put: '' });
    if (change.does === 'move') {
      const target = seqAt(document.contents, change.to);
      const spot = target === null ? null : spotBefore(facts, target, change.before);
      if (spot === null) return null;
      cuts.push({
        at: spot.at,
        to: spot.at,
        put: shifted(facts.slice(lines.at, lines.to), lines.indent, spot.indent),
      });
    }
  }
  const lineEnd = text.includes('\r\n') ? '\r\n' : '\n';
  const edited = cuts
    .sort((a, b) => b.at - a.at)
    .reduce((now, cut) => now.slice(0, cut.at) + cut.put.replace(/\r?\n/g, lineEnd) + now.slice(cut.to), facts);
  return text.slice(0, from) + edited + text.slice(to);
}

type Lines = { readonly at: number; readonly to: number; readonly indent: number };

/** The whole lines of an entry; null where it shares them with others. */
function linesOf(facts: string, list: YAMLSeq, index: number): Lines | null {
  const item = list.items[index];
  if (list.flow === true || !isNode(item) || item.range == null) return null;
  const hyphen = facts.lastIndexOf('-', item.range[0] - 1);
  const at = lineStart(facts, hyphen);
  const to = nextLine(facts, endOf(facts, item));
  return hyphen < 0 || facts.slice(at, hyphen).trim() !== '' || facts[to - 1] !== '\n'
    ? null
    : { at, to, indent: hyphen - at };
}

/** Where an entry comes that is to stand before this one. */
function spotBefore(
  facts: string,
  list: YAMLSeq,
  index: number,
): { readonly at: number; readonly indent: number } | null {
  const last = list.items.length - 1;
  const lines = linesOf(facts, list, Math.min(index, last));
  return lines === null ? null : { at: index > last ? lines.to : lines.at, indent: lines.indent };
}

function shifted(lines: string, from: number, to: number): string {
  return lines.replace(/^( *)(?=\S)/gm, (blanks) => ' '.repeat(Math.max(0, blanks.length - from + to)));
}

function seqAt(node: unknown, path: ListPath): YAMLSeq | null {
  let now = node;
  for (const step of path) {
    if (isMap(now)) now = pairOf(now, step)?.value;
    else if (isSeq(now)) now = now.items[Number(step)];
    else return null;
  }
  return isSeq(now) ? now : null;
}

/** The facts as they are to be; null where an entry or a list is not there. */
function changed(facts: Written, change: ListChange): Written | null {
  const list = listAt(facts, change.list);
  if (list === null) return null;
  if (change.does === 'insert')
    return withList(facts, change.list, [...list.slice(0, change.at), change.value, ...list.slice(change.at)]);
  const item = list[change.at];
  if (item === undefined) return null;
  const without = list.filter((_, index) => index !== change.at);
  if (change.does === 'remove') return withList(facts, change.list, without);
  if (isSamePath(change.list, change.to)) {
    const at = change.before > change.at ? change.before - 1 : change.before;
    return withList(facts, change.list, [...without.slice(0, at), item, ...without.slice(at)]);
  }
  const target = listAt(facts, change.to);
  if (target === null) return null;
  const put = [...target.slice(0, change.before), item, ...target.slice(change.before)];
  return withList(withList(facts, change.list, without), change.to, put);
}

function listAt(facts: Written, path: ListPath): readonly Written[] | null {
  let now: Written | undefined = facts;
  for (const step of path) {
    if (typeof now !== 'object') return null;
    now = (now as Readonly<Record<string, Written>>)[step];
  }
  return Array.isArray(now) ? (now as readonly Written[]) : null;
}

function withList(facts: Written, path: ListPath, list: readonly Written[]): Written {
  const [step, ...rest] = path;
  if (step === undefined) return list;
  if (Array.isArray(facts))
    return (facts as readonly Written[]).map((one, index) =>
      index === Number(step) ? withList(one, rest, list) : one,
    );
  const fields = facts as Readonly<Record<string, Written>>;
  return Object.fromEntries(
    Object.entries(fields).map(([name, one]) => [name, name === step ? withList(one, rest, list) : one]),
  );
}

function isSamePath(a: ListPath, b: ListPath): boolean {
  return a.join('/') === b.join('/');
}
