import { isLedgerColumn } from '../../catalogue/fields/ledger-columns.ts';
import { isField } from './targets.ts';

/** What a pattern found in a cell: the name of each part as the pattern writes it, and its text. */
export type Found = readonly { readonly part: string; readonly text: string }[];

const PART = /\{([^{}]*)\}/g;

/** What is wrong with a pattern, in a sentence; null when it can be used. */
export function patternProblem(pattern: string): string | null {
  const left = pattern.replace(PART, '');
  if (/[{}]/.test(left)) return `A brace is not closed in "${pattern}". Write each part like {ruler}.`;
  if (/\}\{/.test(pattern))
    return `Two parts touch in "${pattern}", so nobody knows where one ends. Write what stands between them.`;
  for (const part of partsOf(pattern))
    if (!isPart(part))
      return `"{${part}}" is no part. Write {ruler}, {date}, {weight in g}, {reference to North}, {ledger notes} …`;
  const parts = partsOf(pattern).filter((part) => part !== 'ledger');
  const twice = parts.find((part, at) => parts.indexOf(part) !== at);
  return twice === undefined ? null : `"{${twice}}" stands twice in "${pattern}". Take one of the two out.`;
}

/** The names in braces, in order. */
export function partsOf(pattern: string): readonly string[] {
  return [...pattern.matchAll(PART)].map(([, part = '']) => part.trim());
}

function isPart(part: string): boolean {
  const [, name = ''] = /^(.*?)(?: in .+)?$/.exec(part) ?? [];
  return (
    isField(name) || /^reference to .+/.test(part) || name === 'ledger' || isLedgerColumn(name.replace(/^ledger /, ''))
  );
}

/**
 * The parts of a cell by a pattern such as `{denomination} of {ruler}, {mint}.`; null when the whole cell does not fit.
 * Every part is as short as the words after it and `suits` allow, so that `A.D. 249. 7.` is not parted after `A.D`;
 * capitals and the number of blanks do not matter.
 */
export function matchPattern(pattern: string, cell: string, suits: Suits = () => true): Found | null {
  const names = partsOf(pattern);
  const text = cell.replace(/\s+/g, ' ').trim();
  const plain = text.toLowerCase();
  if (plain.length !== text.length || text.length > LONGEST) return null;
  const between = pattern.split(PART_WHOLE).map((words) => words.replace(/\s+/g, ' ').toLowerCase());
  const [first = '', ...rest] = between;
  if (!plain.startsWith(first)) return null;
  const ends = endsOfParts(
    { text: plain, after: rest, fits: (part, start, end) => suits(names[part] ?? '', text.slice(start, end).trim()) },
    first.length,
    0,
    new Set(),
  );
  if (ends === null) return null;
  const starts = [first.length, ...ends.map((end, at) => end + (rest[at] ?? '').length)];
  const found = names.map((part, at) => ({ part, text: text.slice(starts[at], ends[at]).trim() }));
  return found.every((each) => each.text !== '') ? found : null;
}

/** No title is longer, and trying every way to part a page of text takes its time. */
const LONGEST = 400;

/** Whether a text may be that part: whether a date can be read, say. */
export type Suits = (part: string, text: string) => boolean;

const PART_WHOLE = /\{[^{}]*\}/;

type Parting = {
  readonly text: string;
  /** The words after each part. */
  readonly after: readonly string[];
  readonly fits: (part: number, start: number, end: number) => boolean;
};

/** Where each part ends, from `start` on. A dead end is met once only, so that a long cell costs no more than its square. */
function endsOfParts(whole: Parting, start: number, part: number, dead: Set<string>): readonly number[] | null {
  const { text, after, fits } = whole;
  const words = after[part];
  if (words === undefined) return start === text.length ? [] : null;
  const key = `${part} ${start}`;
  if (dead.has(key)) return null;
  const isLast = part === after.length - 1;
  for (let end = start + 1; end <= text.length; end += 1) {
    const at = isLast ? text.length - words.length : text.indexOf(words, end);
    if (at < end || !text.startsWith(words, at)) break;
    const further = fits(part, start, at) ? endsOfParts(whole, at + words.length, part + 1, dead) : null;
    if (further !== null) return [at, ...further];
    if (isLast) break;
    end = at;
  }
  dead.add(key);
  return null;
}
