import { seen } from '../measures/amount.ts';
import { good, refuse } from '../outcome.ts';
import type { Outcome } from '../outcome.ts';
import { letterAlone } from './cited-work.ts';
import { shown } from './ranges.ts';
import { HOW, opensBook, readEntry } from './read-entry.ts';
import type { Books } from './read-entry.ts';
import { AFTER, CLASS, FIGURE, PAGE, PLATE, RARITY, LIKE, oneOf, OF_ITSELF, UNLISTED } from './reference-words.ts';
import { formatReference } from './reference.ts';
import type { CitedWork, Reference } from './reference.ts';

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

const MOST = 500;

/** Reads exactly one reference; see `parseReferences`. */
export function parseReference(text: string, works: readonly CitedWork[]): Outcome<Reference> {
  const all = parseReferences(text, { works });
  if (!all.ok) return all;
  const [first, ...more] = all.value;
  if (first === undefined) return refuse(`A reference is empty. ${HOW}.`);
  if (more.length === 0) return good(first);
  const several = all.value.map((one) => one.text).join(', ');
  return refuse(
    `"${shown(text)}" names ${more.length === 1 ? 'two books' : `${String(more.length + 1)} books`}. Write each by itself: references: [${several}].`,
  );
}

/**
 * Reads `cf. north 176`, `RIC II.1² 123, pl. 5 (this coin)`, or several: `North 1018; Spink 1492`. Each is a relation if
 * there is one, the key or a name of a work, the number as printed there, and what was said beside it. What may be two
 * things, and what is left over, is asked about.
 */
export function parseReferences(
  text: string,
  { works = [], names = 'first word', lettered = false }: Books = {},
): Outcome<readonly Reference[]> {
  const written = withPlainUnlisted(plainly(seen(text).trim()), works);
  if (written === '') return refuse(`A reference is empty. ${HOW}.`);
  if (written.length > MOST)
    return refuse(`A reference is at most ${String(MOST)} characters; this has ${String(written.length)}. ${HOW}.`);
  const books: Required<Books> = { works, names, lettered };
  const inNone = ofNoBook(written);
  if (inNone !== undefined) return readOfNoBook(text, inNone, books);
  const parts = separate(written, books);
  if (!parts.ok) return parts;
  const found: Reference[] = [];
  for (const part of parts.value) {
    const one = readEntry(part, books);
    if (!one.ok) return one;
    found.push(one.value);
  }
  return good(found);
}

/** Brackets round the whole, and the points of initials: `(R.I.C. 233.)` is `RIC 233`. */
function plainly(text: string): string {
  return text
    .replace(/^[([]([^()[\]]+)[)\]][.,;]?$/u, (_, inner: string) => inner.trim().replace(/(?<=[\p{Lu}\d])\.$/u, ''))
    .replace(INITIALS, (initials) => initials.replaceAll('.', ''))
    .replace(/(?<=\s)S\.\s?(?=\d+,? (?:Nr|Kat)\b)/gu, 'p. ');
}

/** Three initials or more with a number behind them are a book; an author's have his name there. */
const INITIALS = /(?<![\p{L}.])(?:\p{Lu}\.){3,}(?=\s*(?:[IVX]+\b|\d|[#–—-]|vol))/gu;

/** A piece that no book has is in the books of what it is like an unlisted one. */
function readOfNoBook(
  text: string,
  { near, doubtful }: { readonly near: string; readonly doubtful: boolean },
  books: Required<Books>,
): Outcome<readonly Reference[]> {
  if (near === '')
    return refuse(
      `"${shown(text)}" does not say in which work. Write the work and unlisted, such as North unlisted, or say it in the story.`,
    );
  const like = parseReferences(near, books);
  if (!like.ok) return like;
  return good(
    like.value.map((one) => {
      const unlisted = { ...one, relation: 'unlisted' as const, ...(doubtful ? { doubtful: true as const } : {}) };
      return { ...unlisted, text: like.value.length === 1 ? text : formatReference(unlisted, one.named) };
    }),
  );
}

/** Marks that may stand between two references, outside brackets. */
const BETWEEN = /\s*[;|\n=]\s*|\s*,\s+|\s+[/+·]\s+|\s+(?:&|and|und|et)\s+/uy;

/** The references of a text, each as written; a plate, a page or a class behind a mark goes with the reference before it. */
function separate(text: string, books: Required<Books>): Outcome<readonly string[]> {
  const parts: string[] = [];
  for (const { part, mark } of chunks(text)) {
    const before = parts.at(-1);
    if (before === undefined) parts.push(part);
    else if (opensBook(part, books) && (isWhole(before, books) || /[;|\n=]/u.test(mark))) parts.push(part);
    else if (/^[,;]?$/u.test(mark.trim()) && (isBeside(part) || !isWhole(before, books) || endsInPlace(before)))
      parts[parts.length - 1] = `${before}, ${part}`;
    else if (/[;|\n,=]/u.test(mark) && /^\D{0,12}\d/u.test(part) && isWhole(before, books))
      return refuse(whichBook(text, before, part, books));
    else parts[parts.length - 1] = `${before}${mark}${part}`;
  }
  return good(parts.filter((part) => part !== '').map((part) => part.replace(/\s+/gu, ' ')));
}

/** A number without a book behind another with one; both are offered with the book where that reads. */
function whichBook(text: string, before: string, part: string, books: Required<Books>): string {
  const letter = letterAlone(part, books.works);
  if (letter !== undefined) return letter;
  const one = readEntry(before, books);
  const { volume = '', number: first = '' } = one.ok ? one.value : {};
  // RIC IV, 3, 123: the third part of the fourth volume.
  const isPart = /^[IVX]+$/u.test(volume) && /^[1-5]$/u.test(first) && /^\d+$/u.test(part);
  const parted = isPart
    ? ` For a part of the volume, write ${before.slice(0, before.lastIndexOf(volume))}${volume}.${first} ${part}.`
    : '';
  const number = one.ok ? one.value.number.split(' ').at(-1) : undefined;
  const at = number === undefined ? -1 : before.lastIndexOf(number);
  const second = at < 1 ? '' : `${before.slice(0, at).trim()} ${part}`;
  // HGC 4, 1597: the volume in plain figures, and a number in it.
  const isVolume = volume === '' && /^\d{1,2}$/u.test(first) && at > 0;
  const inVolume = isVolume ? ` For a volume, write ${before.slice(0, at).trim()} vol. ${first}, ${part}.` : '';
  const ways =
    second !== '' && readEntry(second, books).ok
      ? `Write ${before}; ${second}.${inVolume}`
      : 'Write the name of the book before each number.';
  return `"${shown(part)}" in "${shown(text)}" does not say which book it is in. ${ways}${parted}`;
}

function chunks(text: string): readonly { readonly part: string; readonly mark: string }[] {
  const found: { part: string; mark: string }[] = [];
  let [from, depth, mark] = [0, 0, ''];
  for (let at = 0; at < text.length; at += 1) {
    if ('([{'.includes(text[at] ?? ' ')) depth += 1;
    if (')]}'.includes(text[at] ?? ' ')) depth = Math.max(0, depth - 1);
    if (depth > 0) continue;
    BETWEEN.lastIndex = at;
    const between = BETWEEN.exec(text)?.[0];
    if (between === undefined) continue;
    found.push({ part: text.slice(from, at), mark });
    [mark, from] = [between, at + between.length];
    at = from - 1;
  }
  return [...found, { part: text.slice(from), mark }].filter(({ part }) => part.trim() !== '');
}

function isWhole(text: string, books: Required<Books>): boolean {
  const one = readEntry(text, books);
  return one.ok ? one.value.number !== '' || one.value.relation === 'unlisted' : /\d\/\d/u.test(text);
}

function endsInPlace(text: string): boolean {
  const words = text.split(/[\s,]+/u);
  const tails = words.slice(-3).map((_, at, last) => last.slice(at).join(' '));
  return tails.some((tail) => [PAGE, PLATE].some((pattern) => pattern.exec(tail)?.[0] === tail));
}

/** Whether what stands behind a comma belongs to the reference before it. */
function isBeside(text: string): boolean {
  const clauses = [PAGE, PLATE, FIGURE, CLASS, ...AFTER.map(([pattern]) => pattern)];
  return (
    clauses.some((pattern) => pattern.test(text)) ||
    RARITY.test(text) ||
    /^\(/u.test(text) ||
    /^[-–—?]/u.test(text) ||
    /^(?:cf|cfr|cp|vgl|jfr?|por|zie|voir|see|vedi)\.?\s*\d/iu.test(text)
  );
}

/** How a reference is written here, for a visitor's table. */
export const REFERENCE_EXAMPLES: readonly { readonly write: string; readonly means: string }[] = [
  { write: 'north 1018', means: 'the piece is number 1018 of the work with the key north' },
  { write: 'cf. north 176', means: 'it is like number 176 without being it' },
  { write: 'north 1018 var.', means: 'it is a variety of number 1018' },
  { write: 'north unlisted', means: 'the work does not have it' },
  { write: 'north 1018?', means: 'it may be number 1018' },
  { write: 'north 1018 (this coin)', means: 'it is the very coin that the work describes there' },
  { write: 'RIC II.1² 123', means: 'number 123 of volume II.1 in its second edition' },
  { write: 'north 1018, pl. 5, 3', means: 'what it is, and where it is illustrated' },
  { write: 'ric-3 223-5', means: 'it is one of the numbers 223 to 225' },
  { write: 'ric-6 London 121a', means: 'a number under the heading London' },
];

/** `north 1018` as a list prints it, under the short name of the book, `North 1018`; as it stands where no book is known by it. */
export function numberInWords(text: string, works: readonly CitedWork[] = []): string {
  const read = parseReference(text, works);
  const short = read.ok ? works.find(({ id }) => id === read.value.work)?.names?.[0] : undefined;
  return read.ok && short !== undefined ? formatReference(read.value, short) : text;
}
