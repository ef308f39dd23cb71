import { distance } from 'fastest-levenshtein';
import type { Catalogue } from '../catalogue.ts';
import type { ReadExhibit } from './exhibit-texts.ts';
import type { Remark } from './remark.ts';

const SOURCE = 'the names in your own list files';
/** A name of fewer letters is too near to other words for a slip to be told from one. */
const SHORTEST = 5;

/** Words that are nearly the name of a ruler, a mint or a denomination, and not it. */
export function nameRemarks(read: ReadExhibit, catalogue: Catalogue): readonly Remark[] {
  const names = namesIn(catalogue);
  const known = wordsKnown(catalogue);
  const told = new Set<string>();
  return read.texts.flatMap(({ words, path, isOwn }): readonly Remark[] => {
    if (!isOwn) return [];
    return wordsOf(words).flatMap((word): readonly Remark[] => {
      const plain = plainOf(word);
      if (plain.length < SHORTEST || known.has(plain) || told.has(plain)) return [];
      const meant = nearest(plain, word, names);
      if (meant === null) return [];
      told.add(plain);
      return [
        {
          path,
          says: `“${word}” is nearly ${meant.word}, as in ${meant.file}. Write ${meant.word}, or leave it if you mean another.`,
          source: SOURCE,
        },
      ];
    });
  });
}

type Name = { readonly word: string; readonly plain: string; readonly file: string; readonly isProper: boolean };

function namesIn({ rulers, mints, denominations }: Catalogue): readonly Name[] {
  const all = [
    ...Object.values(rulers).flatMap(({ file, fields }) =>
      [fields.name, ...fields['other-names']].map((name) => ({ name, file, isProper: true })),
    ),
    ...Object.values(mints).flatMap(({ file, fields }) =>
      [fields.name, ...fields.names.map(({ name }) => name)].map((name) => ({ name, file, isProper: true })),
    ),
    ...Object.values(denominations).flatMap(({ file, fields }) =>
      [fields.name, fields.plural ?? ''].map((name) => ({ name, file, isProper: false })),
    ),
  ];
  return all.flatMap(({ name, file, isProper }) =>
    wordsOf(name)
      .filter((word) => !isProper || /^\p{Lu}/u.test(word))
      .map((word) => ({ word, plain: plainOf(word), file, isProper }))
      .filter(({ plain }) => plain.length >= SHORTEST),
  );
}

/** Every word that is in the lists, or in more than one piece: what is written twice is no slip. */
function wordsKnown(catalogue: Catalogue): ReadonlySet<string> {
  const known = new Set<string>();
  const lists = [catalogue.rulers, catalogue.mints, catalogue.denominations, catalogue.works];
  for (const word of wordsOf(JSON.stringify(lists))) known.add(plainOf(word));
  const seen = new Map<string, string>();
  for (const { id, fields, story } of catalogue.pieces)
    for (const word of wordsOf(`${JSON.stringify(fields)} ${story}`)) {
      const plain = plainOf(word);
      if ((seen.get(plain) ?? id) !== id) known.add(plain);
      seen.set(plain, id);
    }
  return known;
}

/** The name that a word is one slip away from, or two in a long one. A proper name begins with a capital, and with its own letter. */
function nearest(plain: string, word: string, names: readonly Name[]): Name | null {
  const isProper = /^\p{Lu}/u.test(word);
  const most = plain.length >= 9 ? 2 : 1;
  const near = names.filter(
    (name) =>
      (isProper || (!name.isProper && plain.length > SHORTEST)) &&
      name.plain.charAt(0) === plain.charAt(0) &&
      distance(name.plain, plain) <= most &&
      !isInflected(plain, name.plain),
  );
  return near[0] ?? null;
}

/** A plural, or the like, is no slip. */
function isInflected(word: string, name: string): boolean {
  return [`${name}s`, `${name}es`, name.replace(/y$/, 'ies'), name.replace(/s$/, '')].includes(word);
}

function wordsOf(text: string): readonly string[] {
  return (text.match(/[\p{L}\p{M}]+(?:[’'-][\p{L}\p{M}]+)*/gu) ?? []).map((word) => word.replace(/[’']s?$/, ''));
}

/** Without accents and capitals, and with Æ as AE. */
function plainOf(word: string): string {
  return word.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().replace(/æ/g, 'ae').replace(/[ðþ]/g, 'th');
}
