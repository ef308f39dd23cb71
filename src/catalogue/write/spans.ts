import { isMap, isNode, isPair, isScalar, isSeq } from 'yaml';
import type { Pair, YAMLMap } from 'yaml';

/** The field of this name; null when there is none. */
export function pairOf(map: YAMLMap, name: string): Pair | null {
  return map.items.find((one) => isPair(one) && keyOf(one) === name) ?? null;
}

/** The name of a field. */
export function keyOf(pair: Pair): string {
  return isScalar(pair.key) ? String(pair.key.value) : '';
}

/** Where a key or a value in brackets begins and ends. */
export function spanOf(node: unknown): readonly [start: number, end: number] {
  const range = isNode(node) ? node.range : null;
  return [range?.[0] ?? 0, range?.[1] ?? 0];
}

/** Where a value begins: its first sign, or the mark `>` or `|` of a text of several lines. */
export function startOf(node: unknown, otherwise: number): number {
  return isNode(node) && node.range ? node.range[0] : otherwise;
}

/** The end of the last sign of a value; what follows on that line is a comment or nothing. */
export function endOf(facts: string, node: unknown): number {
  if (isMap(node) && node.flow !== true) {
    const last = node.items.at(-1);
    return last === undefined ? spanOf(node)[1] : Math.max(spanOf(last.key)[1] + 1, endOf(facts, last.value));
  }
  if (isSeq(node) && node.flow !== true)
    return node.items.length === 0 ? spanOf(node)[1] : endOf(facts, node.items.at(-1));
  const [start, end] = spanOf(node);
  return start + facts.slice(start, end).trimEnd().length;
}

/** Where the line begins that this sign is in. */
export function lineStart(facts: string, at: number): number {
  return facts.lastIndexOf('\n', at - 1) + 1;
}

/** Where that line ends, before its line end. */
export function lineEnd(facts: string, at: number): number {
  const end = facts.indexOf('\n', at);
  return end === -1 ? facts.length : end;
}

/** Where the line after it begins. */
export function nextLine(facts: string, at: number): number {
  return Math.min(facts.length, lineEnd(facts, at) + 1);
}
