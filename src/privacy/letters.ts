import { decodeHTML } from 'entities';
import type { CabinetFile } from '../catalogue/files.ts';

/** What is not seen: soft hyphens, joiners, marks of direction. Source: Unicode 16, general category Cf. */
const UNSEEN = /\p{Cf}|\u034f|[\ufe00-\ufe0f]/gu;

/** Everything beyond ASCII. */
const FOREIGN = /[^\0-\u007f]+/g;

/** A text with the escapes of HTML, JSON, YAML and addresses undone, and without what is not seen. */
export function unescaped(text: string): string {
  return withoutEscapes(text).replace(FOREIGN, seenRun);
}

function withoutEscapes(text: string): string {
  // Each in its turn, and only where its first letter is at all: most texts have one kind of escape or none.
  let plain = text;
  for (const [first, undo] of UNDOINGS) if (plain.includes(first)) plain = undo(plain);
  return plain;
}

const seenRun = remembered((run) =>
  run
    .replace(UNSEEN, '')
    // Typed for an apostrophe; the compatibility form of an accent by itself is a blank.
    .replace(/´/g, "'")
    .normalize('NFKC')
    .replace(/[\p{Pd}\u2212]/gu, '-'),
);

/** The same work on a run of letters, done once: a site has few of them, thousands of times each. */
function remembered(work: (run: string) => string): (run: string) => string {
  const done = new Map<string, string>();
  return (run) => {
    let made = done.get(run);
    if (made === undefined) {
      made = work(run);
      done.set(run, made);
    }
    return made;
  };
}

const UNDOINGS: readonly (readonly [first: string, undo: (text: string) => string])[] = [
  ['\\', (text) => text.replace(/\\u([0-9a-f]{4})|\\x([0-9a-f]{2})/gi, (_, four?: string, two?: string) => String.fromCharCode(Number.parseInt(four ?? two ?? '', 16)))],
  ['\\', (text) => text.replace(/\\(?=["'/\\])/g, '')],
  ['&', decodeHTML],
  ['%', (text) => text.replace(/(?:%[0-9a-f]{2})+/gi, decoded)],
]; // prettier-ignore

function decoded(escaped: string): string {
  try {
    return decodeURIComponent(escaped);
  } catch {
    return escaped;
  }
}

/**
 * The form in which texts are compared: escapes undone, small letters without accents, every kind of blank, hyphen and dash one
 * blank, quotation marks straight. So a value is found however it was written.
 */
export function lettersOf(text: string): string {
  const plain = withoutEscapes(text).toLowerCase().replaceAll('`', "'").replace(FOREIGN, plainRun);
  // "385,-" is a sum of money by its dash; what is no blank or stop behind it is of a script or a drawing.
  return (plain.includes(',-') ? plain.replace(/(?<=\d,)--?(?=[\s,;:!?)€£"'<]|\.?(?:\s|$))/g, '¤') : plain).replace(
    /[\t-\r_+-][\s_+-]*| [\s_+-]+/g,
    ' ',
  );
}

/** The text of a file in the form in which texts are compared: as it is, and as a reader will see it. */
export type FileLetters = { readonly asIs: string; readonly seen: string };

const LETTERS = new WeakMap<CabinetFile, FileLetters>();

/** Made once for a file: an import looks through thousands of them round after round. */
export function lettersOfFile(file: CabinetFile): FileLetters {
  const known = LETTERS.get(file);
  if (known !== undefined) return known;
  const letters = lettersOfText(file.text ?? '');
  LETTERS.set(file, letters);
  return letters;
}

export function lettersOfText(text: string): FileLetters {
  const asIs = lettersOf(text);
  const seen = lettersOf(readMarkdown(text));
  return { asIs, seen: seen === asIs ? asIs : seen };
}

/** Signs beyond ASCII as those within it, as far as they are the same to a reader. */
const plainRun = remembered((run) =>
  seenRun(run)
    .toLowerCase()
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/[ßæœøł]/g, (letter) => PLAIN[letter] ?? letter)
    .replace(/[‘’‚‛′]/g, "'")
    .replace(/[“”„‟«»]/g, '"')
    .replace(/\s/g, ' '),
);

const PLAIN: Readonly<Record<string, string>> = { ß: 'ss', æ: 'ae', œ: 'oe', ø: 'o', ł: 'l' };

/** Elements that stand within a word or a sentence, and part nothing. */
const WITHIN = new Set('a abbr b bdi bdo cite code del dfn em i ins mark q s small span strong sub sup time u wbr'.split(' ')); // prettier-ignore

/** What a reader of a page sees, or has read aloud; no addresses. */
export function spokenText(html: string): string {
  const aloud = [...html.matchAll(/\s(?:alt|title|aria-label)="([^"]*)"/g)].map(([, words = '']) => words);
  return `${pageParts(html).seen}\n${aloud.join('\n')}`;
}

/** What of a style sheet may be words: what is in quotation marks, remarks, and addresses. */
const STYLE_WORDS = /"[^"]*"|'[^']*'|\/\*[^]*?\*\/|url\([^)]*\)/g;

/** The words in a style sheet, whose own would be taken for those of a ledger: *family*, *2/-1*. */
export function styleWords(style: string): string {
  return (style.match(STYLE_WORDS) ?? []).join('\n');
}

/** What is in a page, in its order. */
export type PageParts = {
  /** What it says: its text without its elements, on which it may be parted; of styles the words. */
  readonly seen: string;
  /** The elements that are more than a name, remarks among them. */
  readonly elements: readonly string[];
  /** What stands between elements, as it is written; and what its style elements hold. */
  readonly texts: readonly string[];
  readonly styles: readonly string[];
};

/** A page, taken apart. */
export function pageParts(html: string): PageParts {
  const [elements, texts, styles]: [string[], string[], string[]] = [[], [], []];
  const seen = new SeenText();
  let from = 0;
  for (let at = html.indexOf('<'); at !== -1;) {
    const [next, end] = [html.indexOf('<', at + 1), html.indexOf('>', at + 1)];
    if (end === -1) break;
    // What another element begins in is no element.
    if (next === -1 || end < next) {
      const isEnd = html.charAt(at + 1) === '/';
      const name = nameAt(html, at + (isEnd ? 2 : 1));
      const text = html.slice(from, at);
      const isStyle = name === 'style' && isEnd;
      if (text !== '') (isStyle ? styles : texts).push(text);
      seen.add(isStyle ? styleWords(text) : text, name);
      if (end - at > name.length + (isEnd ? 2 : 1)) elements.push(html.slice(at, end + 1));
      from = end + 1;
    }
    at = next;
  }
  texts.push(html.slice(from));
  seen.add(html.slice(from), null);
  return { seen: seen.parts.join(''), elements, texts, styles };
}

/** The name of an element, in small letters. */
function nameAt(html: string, from: number): string {
  let end = from;
  while (OF_NAME[html.charCodeAt(end)] === 1) end += 1;
  return html.slice(from, end).toLowerCase();
}

const OF_NAME = Uint8Array.from({ length: 128 }, (_, code) => (/\w/.test(String.fromCharCode(code)) ? 1 : 0));

/** The text between elements. Figures with an element between that parts more than lines are no number together. */
class SeenText {
  readonly parts: string[] = [];
  private endsInFigure = false;
  private isParted = false;

  /** Adds a text, and the name of the element behind it; null behind the last. */
  add(text: string, element: string | null): void {
    const first = text === '' ? -1 : text.search(/\S/);
    if (first > -1) {
      if (this.endsInFigure && this.isParted && FIGURE.test(text.charAt(first))) this.parts.push('| ');
      this.endsInFigure = FIGURE.test(text.trimEnd().slice(-1));
      this.isParted = false;
      this.parts.push(text);
    }
    const parts = element !== null && !WITHIN.has(element);
    this.isParted ||= parts && element !== 'br';
    // One blank is as good as several.
    if ((parts || (first === -1 && text !== '')) && this.parts.at(-1) !== ' ') this.parts.push(' ');
  }
}

const FIGURE = /\d/;

/** What a reader sees of a text in Markdown: without its signs of emphasis and elements, and of a link its words. */
export function readMarkdown(text: string): string {
  return text
    .replace(/<(?:!--[^]*?--|\/?[a-z][^<>]*)>/gi, '')
    .replace(/\]\([^()]*\)/g, '')
    .replace(/\\(?=[!-/:-@[-`{-~])/g, '')
    .replace(/[*`~[\]]|(?<![\p{L}\p{N}])_|_(?![\p{L}\p{N}])/gu, '');
}
