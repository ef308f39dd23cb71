import { LIKE, oneOf, OF_ITSELF, UNLISTED } from './reference-words.ts';
import type { CitedWork } from './reference.ts';

/*
 * The many ways of saying that a book lacks a piece, or has one like it, brought to those that the reader of entries knows:
 * `RIC –`, `RIC – (cf. 45)`, `cf. RIC 45`.
 */

const NEAR = `${oneOf(LIKE)}\\s*`;
const IN = '(?:(?:in|to|by|from|bei|im|dans|i|w|en|di|u)\\s+(?:the\\s+)?)?';
const AND = '(?:or|nor|and|oder|noch|und|ou|ni|et|eller|och)';
const BUT = 'but|aber|jedoch|mais|ma|pero|men|maar|ale|except';

type Rewriting = readonly [form: RegExp, plain: string];

const REWRITINGS: readonly Rewriting[] = [
  // RIC --, RIC –/–
  [/(?<=\s)[-–—]+(?:\/[-–—]+)?(?=$|[\s,;(])/gu, '–'],
  // unlisted in RIC II, cf. 45
  [
    new RegExp(`^${oneOf(UNLISTED)}\\s+${IN}(?<book>\\p{L}[^\\d,;()]*?)\\s*[,;]?\\s*\\(?${NEAR}(?<number>\\d[^()]*?)\\)?$`, 'iu'),
    '$<book> – (cf. $<number>)',
  ],
  // RIC vgl. 45
  [new RegExp(`^(?<book>\\p{Lu}[^\\d(),;–—]*?)\\s+(?:cf|cfr|vgl|jfr|zie|por)\\.?\\s*(?<number>\\d\\S*)$`, 'u'), 'cf. $<book> $<number>'],
  // cf. RIC 45, but bust left
  [
    new RegExp(`^(?<entry>${NEAR}\\S.*?\\d[^\\s,;()]*),?\\s+(?<note>(?:${BUT})\\s+[^()]+)$`, 'iu'),
    '$<entry> ($<note>)',
  ],
]; // prettier-ignore

/** `not in RIC or BMC`: two books without a number. */
const IN_TWO = new RegExp(
  `^${oneOf(UNLISTED)}\\s+${IN}(?<one>\\p{L}[^\\d,;()]*?)\\s+${AND}\\s+${IN}(?<other>\\p{L}[^\\d,;()]*)$`,
  'iu',
);

/** A text of references with what it says of a book that lacks the piece in the plain form. */
export function withPlainUnlisted(text: string, works: readonly CitedWork[]): string {
  const plain = REWRITINGS.reduce((words, [form, to]) => words.replace(form, to), text);
  const { one, other } = IN_TWO.exec(plain)?.groups ?? {};
  const isOne = works.some(({ names = [] }) =>
    names.some((name) => plain.toLowerCase().includes(name.toLowerCase()) && name.includes(' ')),
  );
  return one === undefined || other === undefined || isOne ? plain : `${one} –; ${other} –`;
}

const STANDARD = '(?:\\s+in\\s+the\\s+(?:standard|usual)\\s+(?:references?|works?|literature|catalogues?))?';
const OF_NO_BOOK = new RegExp(
  `^(?<doubt>(?:apparently|possibly|probably|perhaps|wohl|vermutlich|anscheinend)\\s+)?${oneOf(OF_ITSELF)}${STANDARD}\\s*(?<mark>\\?)?\\s*(?:[,;:.(]\\s*)?(?:but\\s+)?(?<near>${NEAR}\\S.*?)?\\)?$`,
  'iu',
);

/** `Unpublished; cf. RIC 45`: what the piece is like, and whether it is doubted that it is in no book; undefined for any other text. */
export function ofNoBook(text: string): { readonly near: string; readonly doubtful: boolean } | undefined {
  const groups = OF_NO_BOOK.exec(text)?.groups;
  if (groups === undefined) return undefined;
  return { near: groups['near'] ?? '', doubtful: (groups['doubt'] ?? groups['mark']) !== undefined };
}
