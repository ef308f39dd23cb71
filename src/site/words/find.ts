import { capital } from './capital.ts';
import { countWords } from './counts.ts';
import type { Reason } from '../find/reason.ts';
import type { FacetName, Part, ShownRecord } from '../find/record.ts';
import type { Sort } from '../find/state.ts';

const FACET: Readonly<Record<FacetName, string>> = {
  ruler: 'Ruler',
  mint: 'Mint',
  denomination: 'Denomination',
  metal: 'Metal',
  era: 'Period',
  grade: 'Grade',
  kind: 'Kind',
  tag: 'Tag',
};

const PART: Readonly<Record<Part, string>> = {
  title: 'the title',
  number: 'the number',
  ruler: 'ruler and issuer',
  mint: 'the mint',
  denomination: 'the denomination',
  maker: 'the makers',
  reference: 'the books',
  legend: 'legends and designs',
  fact: 'the facts',
  story: 'the story',
};

const SORT: Readonly<Record<Sort, string>> = {
  number: 'inventory number',
  date: 'date',
  title: 'title',
  weight: 'weight',
  size: 'size',
  grade: 'grade',
};

/** Which end comes first, where the name of the order does not say it. */
const FIRST: Readonly<Partial<Record<Sort, string>>> = {
  date: ', the oldest first',
  weight: ', the heaviest first',
  size: ', the largest first',
  grade: ', the best first',
};

/** Words of a running text are no names, and are given as they were sought. */
function told(words: readonly string[]): string {
  return `its story has ${words.map((word) => `“${word}”`).join(' and ')}`;
}

/** The page on which pieces are found. */
export const findWords = {
  title: 'Pieces',
  titleOfPage: (page: number) => `Pieces, page ${page}`,
  byDescription: (title: string, count: number) =>
    `${title}. ${count === 1 ? 'One piece' : `${count} pieces`} of the cabinet, at one scale.`,
  description:
    'Every piece of the cabinet on one board, searchable by word, legend, ruler, mint, metal, period and grade.',
  facet: FACET,
  sort: SORT,
  /** `Mint: York`. */
  by: (facet: FacetName, label: string) => `${FACET[facet]}: ${label}`,
  tells: (label: string) => `About ${label}`,
  page: (page: number, of: number) => `page ${page} of ${of}`,
  nextPage: 'Next page',
  /** Of all pieces: `In all: 73 kept, 1 lent, 1 sold`. */
  inAll: (statuses: string) => `In all: ${statuses}`,
  pages: 'Pages',
  words: 'Words',
  wordsHint: 'A ruler, a town, a word of the legend',
  legend: 'Worn inscription',
  legendHint: 'for example EB?RA*',
  legendHelp: 'Write what can be read: ? for one letter, * for any run. It may begin anywhere round the rim.',
  results: 'Results',
  sortBy: 'Lay out by',
  bestFirst: 'how well they answer',
  narrow: 'Only pieces of one',
  narrowAndOrder: 'Ruler, mint, metal and more; another order',
  better: 'or better',
  betterThan: (grade: string) => `${grade} or better`,
  browse: 'Browse by',
  toLists: 'Browse by ruler, mint, metal and more',
  go: 'Search',
  clear: 'Back to all pieces',
  remove: (label: string) => `Remove ${label}`,
  found: (found: number, all: number) =>
    found === all && all > 1
      ? `All ${all} pieces`
      : all === 1
        ? countWords.pieces(found)
        : found === 1
          ? `1 piece of ${all}`
          : `${found} pieces of ${all}`,
  /** Of a list with doubtful pieces, copies or what is gone in it: `All 4 pieces. Counted: 1 to 2 pieces`. */
  counted: (listed: string, counted: string): string => `${listed}. Counted: ${counted}`,
  /** Those that match, and those that only a word spelled nearly so finds. */
  foundWith: (found: number, similar: number, all: number): string =>
    similar === 0
      ? findWords.found(found, all)
      : found === 0
        ? `No exact match; ${similar} with a similar spelling`
        : `${findWords.found(found, all)}, then ${similar} with a similar spelling`,
  /** What is announced when the order changes. */
  sorted: (said: string, sort: Sort | null): string =>
    sort === null ? said : `${said}, by ${SORT[sort]}${FIRST[sort] ?? ''}`,
  /** What lies under a piece, its number last, with what the list is in the order of: `1280–81, 1.38 g, 18.6 mm, 0101`. */
  inOrder: ({ number, line, grade, by }: Pick<ShownRecord, 'number' | 'line' | 'grade' | 'by'>, sort: Sort | null) => {
    const size = by.size === null ? [] : [`${String(Math.round(by.size * 10) / 10)} mm`];
    const more = sort === 'size' ? size : sort === 'grade' ? [grade ?? findWords.notGraded] : [];
    return findWords.numbered(number, [line, ...more].join(', '));
  },
  numbered: (number: string, line: string) => `${line}, ${number}`,
  /** Why a piece was found that does not say so in its title: `In the mint: York`. */
  reason: (reasons: readonly Reason[]): string | null => findWords.noted(null, reasons),
  /** What a list has to add of a piece, and why it was found: `sold; in the story: York`. */
  noted: (note: string | null, reasons: readonly Reason[]): string | null => {
    const why = reasons.map(({ part, words }) =>
      part === 'story' ? told(words) : `in ${PART[part]}: ${words.map(capital).join(', ')}`,
    );
    if (note !== null) return [note, ...why].join('; ');
    return why.length === 0 ? null : capital(why.join('; '));
  },
  similarTo: (word: string) => `similar spelling: ${word}`,
  none: 'No results. Use fewer words or filters, or go back to all pieces.',
  more: 'Show more',
  failed: 'The search could not be loaded. The whole list is below.',
  noScript:
    'Searching needs JavaScript. Without it, the whole list is below, and these pages list the pieces by ruler, mint and more.',
  notGraded: 'not graded',
  noGrade: 'no grade recorded',
  without: 'not known or none',
  noPeriod: 'under no period',
  details: (grade: string) => `${grade}, with a problem`,
} as const;
