import { fold, mayMeasure, partsOf } from './fold.ts';

export type Span = { readonly low: number; readonly high: number };

/** One way in which something asked for may be answered. */
export type Way =
  /** By a word: as it is, or as a word that begins with it or is nearly it. */
  | { readonly by: 'word'; readonly word: string; readonly exactly: boolean }
  /** By words that are all in the piece, as they are. */
  | { readonly by: 'words'; readonly words: readonly string[] }
  | { readonly by: 'years' | 'weight' | 'size'; readonly span: Span };

/** One thing that is asked for; any of its ways answers it. */
export type Term = readonly Way[];

/** What reads a text that is a date, a weight or a size, as `readMeasure` does; null where it is none. */
export type ReadMeasure = (text: string) => Way | null;

/** Words that a date, a weight or a size may take. */
const MOST_WORDS = 5;
const HAS_FIGURE = /\d/;
const YEAR = /^\d{4}$/;
const ROMAN = 'i ii iii iv v vi vii viii ix x xi xii xiii xiv xv xvi xvii xviii xix xx'.split(' ');

/**
 * What a visitor asks for, thing by thing, each of which a piece must answer. Words in quotation marks are meant as they are;
 * dates, weights and sizes as the intervals that the core reads; a figure as itself and never as one like it.
 */
export function parseQuery(text: string, read: ReadMeasure): readonly Term[] {
  return text
    .split(/(["“”„][^"“”„]*["“”„]?)/)
    .flatMap((part) => (/^["“”„]/.test(part) ? quoted(part) : unquoted(part, read)));
}

function quoted(part: string): readonly Term[] {
  return partsOf(fold(part)).map((word) => [{ by: 'word', word, exactly: true }]);
}

function unquoted(part: string, read: ReadMeasure): readonly Term[] {
  const words = part.trim().split(/\s+/).filter(Boolean);
  const terms: Term[] = [];
  for (let at = 0; at < words.length;) {
    const longest = readLongest(words, at, read);
    if (longest !== null) terms.push(longest.term);
    else terms.push(...wordTerms(words, at));
    at += longest?.taken ?? 1;
  }
  return terms;
}

/** The longest date, weight or size that begins at a word. */
function readLongest(
  words: readonly string[],
  at: number,
  read: ReadMeasure,
): { readonly term: Term; readonly taken: number } | null {
  for (let taken = Math.min(MOST_WORDS, words.length - at); taken > 0; taken -= 1) {
    const text = words.slice(at, at + taken).join(' ');
    if (!mayMeasure(text)) continue;
    const way = read(text);
    if (way !== null) return { term: [way], taken };
  }
  return null;
}

/** A written word as what is asked for: its parts, each with every way in which it may be meant. */
function wordTerms(words: readonly string[], at: number): readonly Term[] {
  const parts = partsOf(fold(words[at] ?? ''));
  const before = partsOf(fold(words[at - 1] ?? '')).at(-1) ?? '';
  return parts.map((word, index): Term => {
    const prior = index === 0 ? before : (parts[index - 1] ?? '');
    const ways: Way[] = [{ by: 'word', word, exactly: HAS_FIGURE.test(word) }];
    // `Edward 1` is Edward I.
    const roman = /^\p{L}+$/u.test(prior) ? ROMAN[Number(word) - 1] : undefined;
    if (/^\d{1,2}$/.test(word) && roman !== undefined) ways.push({ by: 'word', word: roman, exactly: true });
    if (YEAR.test(word)) ways.push({ by: 'years', span: { low: Number(word), high: Number(word) } });
    // `N1018` is written `North 1018`, `RIC112` `RIC 112`.
    const [, book, number] = /^(\p{L}+)(\d[\d.]*\p{L}?)$/u.exec(word) ?? [];
    if (book !== undefined && number !== undefined) ways.push({ by: 'words', words: [book, number] });
    return ways;
  });
}
