import { yearsOf } from '../../core/dating/interval.ts';
import { parseDate } from '../../core/dating/parse-date.ts';
import { parseLength } from '../../core/measures/parse-length.ts';
import { parseWeight, weightSpan } from '../../core/measures/parse-weight.ts';
import { fold, partsOf } from './fold.ts';

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

/** Words that a date, a weight or a size may take. */
const MOST_WORDS = 5;
const HAS_FIGURE = /\d/;
/** What can only be a date: a century, an era, a bound, a year of four figures. A bare figure may be any number. */
const DATE_WORDS = 'century centuries cent bc bce ad ce ah before after early mid late'.split(' ');
const TELLS_DATE = new RegExp(
  String.raw`\b(?:${DATE_WORDS.join('|')})\b|\d{3,4} ?[-–/] ?\d|^c(?:a|irca)?\.? ?\d{3,4}`,
  'i',
);
const YEAR = /^\d{4}$/;
const ROMAN = 'i ii iii iv v vi vii viii ix x xi xii xiii xiv xv xvi xvii xviii xix xx'.split(' ');

/**
 * What a visitor asks for, thing by thing, each of which a piece must answer. Words in quotation marks are meant as they are;
 * dates, weights and sizes as the intervals that the core reads; a figure as itself and never as one like it.
 */
export function parseQuery(text: string): readonly Term[] {
  return text
    .split(/(["“”„][^"“”„]*["“”„]?)/)
    .flatMap((part) => (/^["“”„]/.test(part) ? quoted(part) : unquoted(part)));
}

function quoted(part: string): readonly Term[] {
  return partsOf(fold(part)).map((word) => [{ by: 'word', word, exactly: true }]);
}

function unquoted(part: string): readonly Term[] {
  const words = part.trim().split(/\s+/).filter(Boolean);
  const terms: Term[] = [];
  for (let at = 0; at < words.length;) {
    const read = readLongest(words, at);
    if (read !== null) terms.push(read.term);
    else terms.push(...wordTerms(words, at));
    at += read?.taken ?? 1;
  }
  return terms;
}

/** The longest date, weight or size that begins at a word. */
function readLongest(words: readonly string[], at: number): { readonly term: Term; readonly taken: number } | null {
  for (let taken = Math.min(MOST_WORDS, words.length - at); taken > 0; taken -= 1) {
    const text = words.slice(at, at + taken).join(' ');
    if (!HAS_FIGURE.test(text) && !/century|centuries/i.test(text)) continue;
    const way = measureIn(text) ?? dateIn(text);
    if (way !== null) return { term: [way], taken };
  }
  return null;
}

/** A bound whose year has no era: in a cabinet it would be asked about, and a visitor means AD. */
const BARE_BOUND = /^(before|after|until|since|from) (\d{1,3})$/i;

function dateIn(text: string): Way | null {
  if (!TELLS_DATE.test(text)) return null;
  const date = parseDate(text.replace(BARE_BOUND, '$1 AD $2'));
  return date.ok ? { by: 'years', span: yearsOf(date.value) } : null;
}

/** `1.4 g`, `1.3-1.4 g`, `20 grains`, `28 mm`, `18-19 mm`. */
const MEASURE = /^(\d+(?:[.,]\d+)?)(?: ?[-–] ?(\d+(?:[.,]\d+)?))? ?(mm|g|gm|gms|gram|grams|grain|grains|dwt|oz t)\.?$/i;

function measureIn(text: string): Way | null {
  const [, from, to = from, unit = ''] = MEASURE.exec(text) ?? [];
  if (from === undefined || to === undefined) return null;
  const by = unit.toLowerCase() === 'mm' ? 'size' : 'weight';
  const [low, high] = [from, to].map((figure) => {
    if (by === 'weight') {
      const weight = parseWeight(`${figure} ${unit}`);
      return weight.ok ? weightSpan(weight.value) : null;
    }
    const length = parseLength(`${figure} ${unit}`);
    // What is measured to a millimetre is meant to half of one.
    const half = 0.5 / 10 ** (/[.,](\d+)$/.exec(figure)?.[1]?.length ?? 0);
    return length.ok ? { low: length.value.low - half, high: length.value.high + half } : null;
  });
  if (low === null || low === undefined || high === null || high === undefined || high.high < low.low) return null;
  return { by, span: { low: low.low, high: high.high } };
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
