import type { z } from 'zod';

/** How a field is edited at the desk. */
export type Control =
  /** One line of words. */
  | 'line'
  /** Several lines of words. */
  | 'text'
  /** Several entries, a line each. */
  | 'lines'
  /** One of the row's `choices`. */
  | 'choice'
  /** The name of a file in the row's `list`; several where `several` says so. */
  | 'name'
  /** The row's `parts`, once. */
  | 'parts'
  /** The row's `parts`, as often as wanted. */
  | 'rows'
  /** The row's `parts` for each of its `choices`. */
  | 'each'
  /** One of `choices` for each of the names in `of`. */
  | 'table'
  /** A name and words, as often as wanted. */
  | 'pairs';

/** The lists a field may name things in, by their folders. */
export type List = 'rulers' | 'mints' | 'denominations' | 'works' | 'pieces' | 'sets';

/** How a text is read as it is typed. `date` is when something was made, `event` when something happened: there `1902-10` is a month. */
export type ReadAs =
  'date' | 'event' | 'weight' | 'length' | 'size' | 'fineness' | 'axis' | 'legend' | 'grade' | 'reference' | 'money';

/** Everything about a field but its schema. A field of a part (`legend` in `obverse`) has the same. */
export type FieldFacts = {
  /** What a person calls it. */
  readonly label: string;
  /** What belongs in it, in the collector's words. */
  readonly says: string;
  /** What one writes, as it is in the file after the colon. */
  readonly example: string;
  readonly control: Control;
  readonly choices?: readonly string[];
  /** The choice that holds where nothing is written. */
  readonly usual?: string;
  readonly of?: readonly string[];
  readonly list?: List;
  /** What completes it as it is typed, where it is no list of files. */
  readonly completes?: 'types';
  readonly several?: true;
  readonly parts?: FactsTable;
  /** Of `rows`: the part that an entry written as one word stands for. */
  readonly head?: string;
  readonly reads?: ReadAs;
  /** Takes `unknown` and `none` beside its values. */
  readonly blanks?: true;
};

/** What a field of a piece has beside that. */
export type PieceFacts = FieldFacts & {
  /** Who may see it: `data` on pages and in `pieces.json` and `pieces.csv`; `page` on pages alone; `no` nobody. */
  readonly seen: 'data' | 'page' | 'no';
  /** Where the public projection has it; its own name where this is left out. */
  readonly shown?: string;
  /** Which part of that, where it is only a part. */
  readonly within?: string;
  /** Its name in `pieces.json`, and its column in `pieces.csv`; its own where this is left out. */
  readonly fact?: string;
  /** The parts of it that have a column each: `obverse legend`. */
  readonly columns?: readonly string[];
  /** What a column of a spreadsheet can be read into for it. */
  readonly targets?: readonly string[];
  /** Whether `sure` may doubt it. */
  readonly doubted?: true;
  /** The names under which a set's `where` asks for it. */
  readonly asked?: readonly string[];
  /** Whether a piece that is silent takes it from its type. */
  readonly inherited?: true;
};

/** A table of fields without their schemas. */
export type FactsTable = Readonly<Record<string, FieldFacts>>;

export type Rows = Readonly<Record<string, FieldFacts & { readonly schema: z.ZodType }>>;

/** One row: the schema of the field, and everything else about it. `print` writes a value so that the schema reads it again. */
export function row<S extends z.ZodType, const F extends FieldFacts>(
  schema: S,
  facts: F & { readonly print?: (value: never) => string },
): F & { readonly schema: S; readonly print?: (value: never) => string } {
  return { ...facts, schema };
}

/** A row of a field of a piece. */
export function pieceRow<S extends z.ZodType, const F extends PieceFacts>(
  schema: S,
  facts: F & { readonly print?: (value: never) => string },
): F & { readonly schema: S; readonly print?: (value: never) => string } {
  return { ...facts, schema };
}

/** The schemas of a table of fields, as zod wants them for an object. */
export function shapeOf<R extends Readonly<Record<string, { readonly schema: z.ZodType }>>>(
  rows: R,
): { [Name in keyof R]: R[Name]['schema'] } {
  return Object.fromEntries(Object.entries(rows).map(([name, { schema }]) => [name, schema])) as never;
}
