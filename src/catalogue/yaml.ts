import { FAILSAFE_SCHEMA, load, YAMLException } from 'js-yaml';
import { isMap, isPair, isSeq, LineCounter, parseDocument } from 'yaml';

/** Facts as written: text, lists and fields, nothing turned into a number, a day or a yes. */
export type Written = string | readonly Written[] | { readonly [field: string]: Written };

export type YamlOutcome =
  | { readonly ok: true; readonly value: Written }
  | { readonly ok: false; readonly reason: string; readonly line: number; readonly twice: string | null };

/** Reads YAML with every scalar as text; comments alone are no facts at all. `line` counts from 1. */
export function readYaml(text: string): YamlOutcome {
  if (text.split('\n').every((line) => /^\s*(?:#|$)/.test(line))) return { ok: true, value: {} };
  try {
    return { ok: true, value: (load(text, { schema: FAILSAFE_SCHEMA }) ?? {}) as Written };
  } catch (error) {
    if (!(error instanceof YAMLException)) throw error;
    const line = (error.mark?.line ?? 0) + 1;
    const twice = error.reason.includes('duplicated mapping key')
      ? (text.split('\n')[line - 1]?.match(/([\w-]+)\s*:/)?.[1] ?? 'this')
      : null;
    return { ok: false, ...stumbled(text, error.reason, line), twice };
  }
}

/** The line, counted from 1, on which the field at this path stands; the nearest field above when it is not there. */
export function lineOf(text: string, path: readonly PropertyKey[]): number {
  const counter = new LineCounter();
  const document = parseDocument(text, { lineCounter: counter, schema: 'failsafe' });
  let node: unknown = document.contents;
  let offset = 0;
  for (const step of path) {
    if (isMap(node)) {
      const pair = node.items.find((held) => isPair(held) && String(held.key) === String(step));
      if (pair === undefined) break;
      offset = startOf(pair.key) ?? offset;
      node = pair.value;
    } else if (isSeq(node)) {
      node = node.items[Number(step)];
      offset = startOf(node) ?? offset;
    } else break;
  }
  return counter.linePos(offset).line;
}

function startOf(node: unknown): number | null {
  if (typeof node !== 'object' || node === null || !('range' in node)) return null;
  const range: unknown = node.range;
  return Array.isArray(range) && typeof range[0] === 'number' ? range[0] : null;
}

/** The slip that is likeliest behind a stumble, and its line: often the reader notices it only a line or two later. */
function stumbled(text: string, said: string, line: number): { reason: string; line: number } {
  const lines = text.split('\n').slice(0, line);
  const unclosed = lines.findLastIndex(
    (one) => /^\s*[\w-]+:\s*"(?:[^"\\]|\\.)*$/.test(one) || /^\s*[\w-]+:\s*'[^']*$/.test(one),
  );
  if (unclosed !== -1) return { reason: 'a quotation mark is not closed on this line', line: unclosed + 1 };
  const colon = lines.findLastIndex((one) => /^\s*(?:- )?[\w-]+:\s+[^\s"'[{|>].*:(?:\s|$)/.test(one));
  if (colon !== -1) return { reason: 'the value holds a colon, so it wants quotation marks round it', line: colon + 1 };
  return { reason: reasonOf(said), line };
}

/** What the reader of YAML stumbled over, in words for someone who has never heard of it. */
function reasonOf(said: string): string {
  return STUMBLES.find(([pattern]) => pattern.test(said))?.[1] ?? 'something here is out of place';
}

const STUMBLES: readonly (readonly [RegExp, string])[] = [
  [
    /flow collection|flow sequence|flow mapping|missed comma/,
    'a bracket or a brace is not closed, or a comma is missing',
  ],
  [/tab/, 'a tab stands where spaces should'],
  [/quoted scalar/, 'a quotation mark is not closed'],
  [/implicit key|mapping entry|mapping pair/, 'a colon is missing or one too many, or the line is indented wrongly'],
  [/indent/, 'the line is indented wrongly'],
  [/escape/, 'a backslash stands between double quotation marks: use single ones'],
];
