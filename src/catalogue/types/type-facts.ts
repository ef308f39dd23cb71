import type { z } from 'zod';
import type { Reign } from '../../core/dating/dating.ts';
import { NOT_APPLICABLE, NOT_KNOWN } from '../../core/types/series.ts';
import type { SeriesType } from '../../core/types/series.ts';
import { PIECE_ROWS } from '../fields/piece-fields.ts';
import type { PieceFacts } from '../fields/row.ts';
import type { PieceFields } from '../schema/piece.ts';
import { pieceSchema } from '../schema/piece.ts';

/** What a type says of the pieces that are specimens of it, in the fields of a piece. */
export type TypeFacts = Readonly<Partial<PieceFields>>;
/** A cell that could not be read: the type that says it (null: the whole series), the column, and why. */
export type UnreadCell = { readonly type: string | null; readonly column: string; readonly says: string };

/** A field that holds fields of its own and has no column for each of them; a cell cannot. */
const TOO_DEEP = ['makers'];
const LISTS = ['ruler', 'struck-for'];
const NAMES = [...LISTS, 'mint', 'denomination'];

/** The columns in which a type may state what is true of its pieces: every field that is inherited. */
export const FACT_COLUMNS: readonly string[] = Object.entries(PIECE_ROWS).flatMap(
  ([name, row]: [string, PieceFacts]) =>
    row.inherited !== true || TOO_DEEP.includes(name) ? [] : (row.columns ?? [name]),
);

/** The column of a fact as a keeper may write it: `struck for` is `struck-for`. */
export function factColumn(column: string): string | null {
  if (FACT_COLUMNS.includes(column)) return column;
  const joined = column.replaceAll(' ', '-');
  return FACT_COLUMNS.includes(joined) ? joined : null;
}

type Reader = (
  text: string,
) => { readonly ok: true; readonly value: unknown } | { readonly ok: false; readonly says: string };

/** One reader for all the types of a cabinet: the same words in the same column are read once. */
export function factReader(reigns: readonly Reign[]): (column: string, text: string) => ReturnType<Reader> {
  const { shape } = pieceSchema({ reigns });
  const known = new Map<string, ReturnType<Reader>>();
  return (column, text) => {
    const key = `${column}\n${text}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const read = readCell(shape, column, text);
    known.set(key, read);
    return read;
  };
}

function readCell(shape: ReturnType<typeof pieceSchema>['shape'], column: string, text: string): ReturnType<Reader> {
  const [side = '', part = ''] = column.split(' ');
  const form = part === '' ? shape[column as keyof typeof shape] : shape[side as 'obverse'];
  // Names may be blank in the words of a piece's file too: shared: { ruler: none }.
  const isWord = NAMES.includes(column);
  const isUnknown = text === NOT_KNOWN || (isWord && text === 'unknown');
  const isNone = text === NOT_APPLICABLE || (isWord && text === 'none');
  const blank = isUnknown ? 'unknown' : isNone ? 'none' : null;
  const words = blank ?? (LISTS.includes(column) ? text.split(';').map((each) => each.trim()) : text);
  const read = form.safeParse(part === '' ? words : { [part]: words });
  // A field that knows no blanks is left empty by one, which stops the inheritance and says nothing else.
  if (
    blank !== null &&
    (part !== '' || !read.success || column === 'issuer' || column === 'made' || column === 'shape')
  )
    return { ok: true, value: undefined };
  if (!read.success) return { ok: false, says: sentenceOf(read.error.issues[0], text) };
  return { ok: true, value: part === '' ? read.data : (read.data as Readonly<Record<string, unknown>>)[part] };
}

/** What is wrong with a cell; of a choice between forms, what is wrong with the last, which is the fullest. */
function sentenceOf(issue: z.core.$ZodIssue | undefined, text: string): string {
  if (issue?.code === 'invalid_union') return sentenceOf(issue.errors.at(-1)?.[0], text);
  if (issue?.code === 'invalid_value')
    return `"${text}" is not one of the words this takes. Write one of ${issue.values.map(String).join(', ')}.`;
  return issue?.message ?? '';
}

/** What holds for a type, read; with the cells that could not be. */
export function factsOf(
  type: Pick<SeriesType, 'says'>,
  characters: ReadonlySet<string>,
  read: ReturnType<typeof factReader>,
): { readonly facts: TypeFacts; readonly unread: readonly UnreadCell[] } {
  const facts: Record<string, unknown> = {};
  const unread: UnreadCell[] = [];
  for (const [column, { text, by }] of type.says) {
    const field = factColumn(column);
    if (field === null || (characters.has(column) && !column.endsWith(' legend'))) continue;
    const outcome = read(field, text);
    if (!outcome.ok) unread.push({ type: by, column, says: outcome.says });
    else if (outcome.value !== undefined) {
      const [side = '', part = ''] = field.split(' ');
      if (part === '') facts[field] = outcome.value;
      else facts[side] = { ...(facts[side] as object | undefined), [part]: outcome.value };
    }
  }
  return { facts, unread };
}
