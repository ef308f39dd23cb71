import type { Outcome } from '../outcome.ts';
import { good, refuse } from '../outcome.ts';
import { splitRange } from './number-range.ts';
import type { CitedWork, Reference, Relation } from './reference.ts';

const BEFORE: readonly (readonly [RegExp, Relation])[] = [
  [/^(?:cf|cp|conf|vgl|compare|near|as)(?:\.|\s)\s*/iu, 'cf.'],
  [/^(?:var|variant|variety)(?:\.|\s)\s*(?:of\s+)?/iu, 'var.'],
  [/^(?:unlisted|not|missing|lacking)\s+(?:in\s+)?/iu, 'unlisted'],
];
const AFTER: readonly (readonly [RegExp, Relation])[] = [
  [/[\s,(]+(?:var|variant|variety|var\. leg)\.?\)?$/iu, 'var.'],
  [/[\s,(]+(?:unlisted|not listed|[-–—])\.?\)?$/iu, 'unlisted'],
];

const HOW =
  'Write the work, then the number as printed there: north 1018, cf. north 176, north 1018 var., north unlisted';

/** The key and the rest, for the longest key or name the text begins with. */
function namedWork(text: string, works: readonly CitedWork[]): { readonly work: string; readonly rest: string } | null {
  let found: { readonly work: string; readonly rest: string; readonly length: number } | null = null;
  const plain = text.toLowerCase();
  for (const { id, names = [] } of works) {
    for (const name of [id, ...names]) {
      const fits = plain.startsWith(name.toLowerCase()) && !/^[\p{L}\p{M}\p{N}-]/u.test(text.slice(name.length));
      if (fits && name.length > (found?.length ?? 0))
        found = { work: id, rest: text.slice(name.length), length: name.length };
    }
  }
  return found;
}

/** With no list of works to go by, the first word is the key. */
function firstWord(text: string): { readonly work: string; readonly rest: string } | null {
  const [, word, rest] = /^(\p{L}[\p{L}\p{M}\p{N}.&'-]*)(.*)$/su.exec(text) ?? [];
  return word === undefined ? null : { work: word.toLowerCase().replace(/\.$/u, ''), rest: rest ?? '' };
}

/**
 * Reads `cf. north 176`: a relation if there is one, the key or a name of a work, the number as printed there. Without
 * a list of works (none given) the first word is taken for the key.
 */
export function parseReference(text: string, works: readonly CitedWork[]): Outcome<Reference> {
  const written = text.trim().replace(/\s+/gu, ' ');
  if (written === '') return refuse(`A reference is empty. ${HOW}.`);
  if (written.length > 200) return refuse(`A reference is at most 200 characters; this has ${written.length}. ${HOW}.`);
  const before = BEFORE.find(([pattern]) => pattern.test(written));
  const body = before === undefined ? written : written.replace(before[0], '');
  const after = AFTER.find(([pattern]) => pattern.test(body));
  const plain = after === undefined ? body : body.replace(after[0], '');
  if (before !== undefined && after !== undefined && before[1] !== after[1] && after[1] !== 'unlisted')
    return refuse(`"${written}" says both ${before[1]} and ${after[1]}. Write one of them.`);
  const named = works.length === 0 ? firstWord(plain) : namedWork(plain, works);
  if (named === null) {
    const known = works
      .slice(0, 6)
      .map((work) => work.id)
      .join(', ');
    return refuse(
      works.length === 0
        ? `"${written}" does not begin with a work. ${HOW}.`
        : `"${written}" begins with no work in the list. Write one of ${known}${works.length > 6 ? ' …' : ''}, then the number.`,
    );
  }
  const relation = after?.[1] ?? before?.[1] ?? 'is';
  const printed = named.rest.replace(/^[\s,:.]+/u, '').trim();
  if (printed === '' && relation !== 'unlisted') return refuse(`"${written}" names a work without a number. ${HOW}.`);
  if (printed !== '' && !/[\p{L}\p{N}]/u.test(printed))
    return refuse(`"${printed}" is not a number in a book. ${HOW}.`);
  return good({ text: written, work: named.work, relation, ...splitRange(printed) });
}
