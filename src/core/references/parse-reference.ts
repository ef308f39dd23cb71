import { seen } from '../measures/amount.ts';
import type { Outcome } from '../outcome.ts';
import { good, refuse } from '../outcome.ts';
import { splitRange } from './number-range.ts';
import type { CitedWork, Reference, Relation } from './reference.ts';

const BEFORE: readonly (readonly [RegExp, Relation])[] = [
  [/^(?:cf|cp|conf|vgl|compare|near|like|similar to|see|as|wie)(?:\.|\s)\s*/iu, 'cf.'],
  [/^(?:var|variant|variety)(?:\.|\s)\s*(?:of\s+)?/iu, 'var.'],
  [/^(?:unlisted|not|missing|lacking)\s+(?:in\s+)?/iu, 'unlisted'],
];
const AFTER: readonly (readonly [RegExp, Relation])[] = [
  [/[\s,(]+(?:var|variant|variety|var\. leg)\.?\)?$/iu, 'var.'],
  [/[\s,(]+(?:unlisted|not listed|[-–—])\.?\)?$/iu, 'unlisted'],
];

/** `North 1018; Spink 1380`: a semicolon or an equals sign before a second book. */
const BOTH = /^(.*\d.*?)\s*[;=]\s*(.*\p{L}.*\d.*)$/su;
const DOUBT = /^(probably|possibly|perhaps|prob\.|poss\.|wohl|vermutlich|peut-être)(?=\s)/iu;
/** The word before a number that says no more than that it is one: `no. 1018`, `KM# 12.1`. */
const NUMBER_SIGN = /^(?:no|nr|num)?[.#°º№]?\s*(?=\d)/iu;
/** `North – (cf. 1018)`: the book has not this piece, and the number is the nearest it has. */
const NEAR = /^[-–—][\s,]*\(?(?:cf|vgl)\.?\s*([^()]*\d[^()]*)\)?$/iu;

const HOW =
  'Write the work, then the number as printed there: north 1018, cf. north 176, north 1018 var., north unlisted';

/** The key and the rest, for the longest key or name the text begins with. */
function namedWork(text: string, works: readonly CitedWork[]): { readonly work: string; readonly rest: string } | null {
  let found: { readonly work: string; readonly rest: string; readonly length: number } | null = null;
  const plain = text.toLowerCase();
  for (const { id, names = [] } of works) {
    for (const name of [id, ...names, ...names.map((each) => each.replace(' & ', ' and '))]) {
      const rest = plain.startsWith(name.toLowerCase()) ? text.slice(name.length) : null;
      if (rest !== null && !runsOn(name, rest) && name.length > (found?.length ?? 0))
        found = { work: id, rest, length: name.length };
    }
  }
  return found;
}

/** A name ends where no letter or figure follows; that of a volume not before `.1` or `/1`, which is a part of it. */
function runsOn(name: string, rest: string): boolean {
  if (/^[\p{L}\p{M}-]/u.test(rest)) return true;
  return /^\p{N}/u.test(rest) ? !name.endsWith('.') : /(?:\d|\b[IVX]+)$/u.test(name) && /^[./]\s?\d/u.test(rest);
}

/** A word of relation that something unreadable follows is no key of a work. */
const RELATION = /^(?:cf|cp|vgl|var|variant|not|unlisted)\.?$/iu;

/** With no list of works to go by, the first word is the key; two names joined by "&" make one: `dalton-hamer`. */
function firstWord(text: string): { readonly work: string; readonly rest: string } | null {
  const joined = text.replace(/^(\p{L}+) (?:&|and) (?=\p{Lu})/u, '$1-');
  const [, word, rest = ''] = /^(\p{L}(?:[\p{L}\p{M}\p{N}&'-]|\.(?!\d))*)(.*)$/su.exec(joined) ?? [];
  if (word === undefined || RELATION.test(word) || (/\d$/u.test(word) && /^[./]\d/u.test(rest))) return null;
  return { work: word.toLowerCase().replace(/\.$/u, ''), rest };
}

/** Whether what stands behind a semicolon is another book, and no plate or die: `North 1018 (pl. 5; die A2)`. */
function isBook(text: string, works: readonly CitedWork[]): boolean {
  return works.length === 0 ? /^\p{Lu}/u.test(text) : namedWork(text, works) !== null;
}

/**
 * Reads `cf. north 176`: a relation if there is one, the key or a name of a work, the number as printed there. Without
 * a list of works (none given) the first word is taken for the key.
 */
export function parseReference(text: string, works: readonly CitedWork[]): Outcome<Reference> {
  const written = seen(text).trim().replace(/\s+/gu, ' ');
  if (written === '') return refuse(`A reference is empty. ${HOW}.`);
  if (written.length > 200) return refuse(`A reference is at most 200 characters; this has ${written.length}. ${HOW}.`);
  const several = BOTH.exec(written)?.slice(1);
  if (several !== undefined && isBook(several[1] ?? '', works))
    return refuse(`"${written}" names two books. Write each by itself: references: [${several.join(', ')}].`);
  const doubt = DOUBT.exec(written)?.[1];
  if (doubt !== undefined)
    return refuse(
      `A reference is the number or near it; "${doubt}" is neither. Write cf. ${written.slice(doubt.length).trim()}.`,
    );
  const before = BEFORE.find(([pattern]) => pattern.test(written));
  const body = before === undefined ? written : written.replace(before[0], '');
  const after = AFTER.find(([pattern]) => pattern.test(body));
  const plain = after === undefined ? body : body.replace(after[0], '');
  if (before !== undefined && after !== undefined && before[1] !== after[1] && after[1] !== 'unlisted')
    return refuse(
      `"${written}" says both ${before[1].replace('.', '')} and ${after[1].replace('.', '')}. Write ${plain} var., or cf. ${plain}.`,
    );
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
  const printed = named.rest
    .replace(/^[\s,:.]+/u, '')
    .replace(NUMBER_SIGN, '')
    .trim();
  const near = NEAR.exec(printed)?.[1];
  if (near !== undefined)
    return good({
      text: written,
      work: named.work,
      relation: 'unlisted',
      ...splitRange(near.replace(NUMBER_SIGN, '')),
    });
  if (printed === '' && relation !== 'unlisted') return refuse(`"${written}" names a work without a number. ${HOW}.`);
  if (printed !== '' && !/[\p{L}\p{N}]/u.test(printed))
    return refuse(`"${printed}" is not a number in a book. ${HOW}.`);
  return good({ text: written, work: named.work, relation, ...splitRange(printed) });
}
