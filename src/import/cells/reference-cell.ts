import { readOpenDataId } from '../../core/references/open-data-id.ts';
import { parseReferences } from '../../core/references/parse-reference.ts';
import type { Said } from './cell-result.ts';

/** Between references, where one that cannot be read must not take the others with it. */
const BETWEEN = /\s*[;\n|]\s*/;

/** `N. 1018; S. 1380`: each book as the sheet names it, read as the core reads references; its name is joined to the list later. */
export function readReferences(text: string): readonly Said[] {
  return partsOf(text).flatMap(
    (part) => readId(part) ?? readByCounty(part) ?? readWith(part, parseReferences(part, { names: 'every word' })),
  );
}

function readByCounty(part: string): readonly Said[] | null {
  const book = BY_COUNTY.exec(part)?.groups?.['book'];
  if (book === undefined) return null;
  const read = parseReferences(part, { works: [{ id: 'work', names: [book] }] });
  return read.ok ? readWith(part, read, book) : null;
}

/** A cell of a column that cites one book. A stroke says that the book has no such piece. */
export function readReferenceTo(work: string, text: string): readonly Said[] {
  const works = [{ id: 'work', names: [work] }];
  return partsOf(text).flatMap((part) => {
    const id = readId(part);
    if (id !== null) return id;
    const bare = part.replace(/^(?:cf|vgl|compare)\.?\s*/iu, '');
    const isNamed = bare.toLowerCase().startsWith(work.toLowerCase());
    const relation = part.slice(0, part.length - bare.length);
    return readWith(part, parseReferences(isNamed ? part : `${relation}${work} ${bare}`, { works }), work);
  });
}

/** An id of open data says its book itself, whatever its column is called. */
function readId(part: string): readonly Said[] | null {
  const read = readOpenDataId(part);
  if (read === null) return null;
  if (!read.ok) return [{ kind: 'unread', field: 'references', because: read.problem, text: part }];
  return [{ kind: 'reference', name: read.value.named, cited: { ...read.value, text: part } }];
}

function partsOf(text: string): readonly string[] {
  return text.split(BETWEEN).filter((part) => part.trim() !== '');
}

/** Books of tokens that count afresh in each county, by which their numbers are called: `D&H Anglesey 290`. Common practice. */
const BY_COUNTY =
  /^(?<book>D\.?\s?(?:&|and)?\s?H\.?|Dalton (?:&|and) Hamer|Williamson|Boyne|BW)\s+(?=\p{Lu}\p{L}+.*\d)/u;

/** What each single letter stands for in lists, by the authors; common practice. */
const LETTER_BOOKS: Readonly<Record<string, string>> = {
  A: 'Album or Allen', B: 'Babelon, Brooke or Burns', C: 'Cohen or Crawford', D: 'Davenport or Duplessy', G: 'Göbl or Gadoury',
  H: 'Head or Hill', J: 'Jaeger', K: 'Kahnt, Kellner or Kienast', M: 'Mattingly, Metcalf or Mitchiner', N: 'North', P: 'Peck, Pere or Price',
  R: 'Robertson or Robinson', S: 'Sear, Sydenham or the Standard Catalogue of British Coins', T: 'Thompson or Tolstoi', V: 'Van Arsdell',
  W: 'Williamson or Withers',
}; // prettier-ignore

/** A name as it is written in a list of YAML. */
function inList(name: string): string {
  return /^[YN]$/.test(name) ? `"${name}"` : name;
}

/** Why a book cited by a letter is asked about; undefined for a name. */
export function whichBook(name: string): string | undefined {
  // `J. N 12` may be two books, or one by its initials.
  const letters = /^(\p{Lu})\.?(?: (\p{Lu})\.?)?$/u.exec(name);
  if (letters === null) return undefined;
  const [, letter = '', second] = letters;
  const known = second === undefined ? LETTER_BOOKS[letter] : undefined;
  const meant = known === undefined ? '' : `, and lists mean ${known} by it`;
  return `${name} is cited as a book by ${second === undefined ? 'a letter' : 'letters'} alone${meant}. Say which under works: in the names file, like the-book: [${inList(name)}].`;
}

/** `NC 1921 p. 75`: the year of a yearly book before a page is no number in it. */
const YEAR_AND_PAGE = /\D(?:1[789]|20)\d\d,? (?:pp?|pages?|s|seite|pag)\b\.? ?\d/i;

/** `Pag. 494`, `S. 12`: words for a page, and what books are cut down to. */
const BEGINS_WITH_PAGE = /^(?:pp?|pag|pages?|seite|s)\.? ?\d/i;

function readWith(part: string, read: ReturnType<typeof parseReferences>, work?: string): readonly Said[] {
  if (work === undefined && YEAR_AND_PAGE.test(part)) {
    const because = `"${part}" may give the year of a volume, or a number, before the page. Write the number in the book, or cite the year with the book as one name under works: in the names file.`;
    return [{ kind: 'unread', field: 'references', because, text: part }];
  }
  if (!read.ok) {
    const because = BEGINS_WITH_PAGE.test(part)
      ? `"${part}" begins with the word for a page. If that is short for a book, write the book in full, or give it a column of its own and write reference to its name.`
      : read.problem;
    return [{ kind: 'unread', field: 'references', because, text: part }];
  }
  return read.value.map((cited) => ({ kind: 'reference', name: work ?? cited.named, cited }));
}
