import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { typesWords } from '../../words/types.ts';
import { gather } from '../shared/gather.ts';
import type { Link } from '../sets/place-shown.ts';
import { numberSource } from './numbers-shown.ts';
import type { NumberShown, NumbersShown, NumberSource } from './numbers-shown.ts';

/** Numbers of one book that stand alike to a type. */
export type NumbersAlike = {
  readonly relation: string;
  readonly numbers: readonly { readonly text: string; readonly mark: NumberSource | null }[];
};

/** A concordance with a column for each book. */
export type BookTable = {
  readonly books: readonly (Link & { readonly says: string | null })[];
  readonly rows: readonly { readonly type: Link | null; readonly cells: readonly (readonly NumbersAlike[])[] }[];
  /** The sources of the numbers that have a letter. */
  readonly sources: readonly NumberSource[];
};

/** The numbers in columns. What most of a book's numbers were taken from is said once; only the others have a letter. */
export function bookTable({ lists }: Cabinet, { rows, sources }: NumbersShown): BookTable {
  const all = rows.flatMap(({ numbers }) => numbers);
  const works = [...new Set(all.map(({ work }) => work))];
  const usual = new Map(works.map((work) => [work, usualSource(all.filter((one) => one.work === work))]));
  const isMarked = ({ work, source }: NumberShown): boolean => source !== null && source !== usual.get(work);
  const marked = new Set(all.filter(isMarked).map(({ source }) => source));
  // Lettered from a, though what is said once has no letter.
  const lettered = new Map(
    sources.filter((source) => marked.has(source)).map((source, at) => [source, numberSource(at, source.says)]),
  );
  const markOf = (one: NumberShown): NumberSource | null =>
    isMarked(one) && one.source !== null ? (lettered.get(one.source) ?? null) : null;
  const names = new Map(works.map((work) => [work, lists.works[work]?.fields.short ?? work]));
  const cell = (numbers: readonly NumberShown[]): readonly NumbersAlike[] =>
    gather(numbers, ({ relation }) => relation).map(({ all: alike }) => ({
      relation: alike[0]?.relation ?? '',
      numbers: alike.map((one) => ({
        text: withoutBook(one.text, names.get(one.work) ?? ''),
        mark: markOf(one),
      })),
    }));
  return {
    books: works.map((work) => {
      const source = usual.get(work) ?? null;
      const name = names.get(work) ?? work;
      const others = all.some((one) => one.work === work && isMarked(one));
      return {
        href: urls.work(work),
        name,
        says: source === null ? null : typesWords.usualSource(name, source.says, others),
      };
    }),
    rows: rows.map(({ type, numbers }) => ({
      type,
      cells: works.map((work) => cell(numbers.filter((one) => one.work === work))),
    })),
    sources: [...lettered.values()],
  };
}

/** The source that most of these numbers name, the first of equals. */
function usualSource(numbers: readonly NumberShown[]): NumberSource | null {
  const told = gather(
    numbers.filter(({ source }) => source !== null),
    ({ source }) => source?.says ?? '',
  );
  return told.toSorted((one, other) => other.all.length - one.all.length)[0]?.all[0]?.source ?? null;
}

/** `1017` of `North 1017`: its column says the book. */
function withoutBook(text: string, book: string): string {
  return text.startsWith(book) ? text.slice(book.length).trim() : text;
}
