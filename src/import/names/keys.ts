import { distance } from 'fastest-levenshtein';
import type { ListKind } from '../../catalogue/write/write-piece.ts';
import type { KnownName } from './join-names.ts';
import type { Label } from './labels.ts';
import { rulerKey, spelledAlike } from './ruler-key.ts';

/**
 * What names are told apart by: a ruler's in any spelling, any other in plain letters. A name of six letters and more that is one
 * letter from a more usual one counts as that one, and is asked about.
 */
export function keysOf(
  kind: ListKind,
  labels: readonly Label[],
  known: readonly KnownName[],
): (name: string) => string {
  if (kind === 'rulers') return rulerKey;
  const usual: string[] = known.flatMap(({ id, names }) => [id, ...names].map(spelledAlike));
  const keys = new Map<string, string>();
  for (const { name } of labels) {
    const plain = spelledAlike(name);
    const isWord = plain.length >= 6 && !/\d/.test(plain);
    const near =
      isWord && !usual.includes(plain) ? usual.find((one) => one.length >= 6 && distance(one, plain) === 1) : plain;
    keys.set(plain, near ?? plain);
    if (near === undefined || near === plain) usual.push(plain);
  }
  return (name) => keys.get(spelledAlike(name)) ?? spelledAlike(name);
}
