import { known } from '../catalogue/schema/fields.ts';
import { PIECE_ROWS } from '../catalogue/fields/piece-fields.ts';
import type { PieceRows } from '../catalogue/fields/piece-fields.ts';
import { sizeSpan } from '../core/measures/parse-size.ts';
import type { Bound } from '../core/dating/dating.ts';
import type { PublicPiece } from './public-piece.ts';

/** A piece as `pieces.json` gives it: its public facts, and what was computed from them. */
export type PublicFacts = {
  readonly id: string;
  readonly [field: string]: unknown;
  /** Left out when the piece has no date. */
  readonly dating?: { readonly earliest: Bound; readonly latest: Bound };
};

/** The fields of a piece that its data tells, and where the public projection has them. */
type DataRows = { [Name in keyof PieceRows as PieceRows[Name]['seen'] extends 'data' ? Name : never]: PieceRows[Name] };
type Shown = {
  [Name in keyof DataRows]: DataRows[Name] extends { readonly shown: infer Where } ? Where : Name;
}[keyof DataRows];
/** A field told in the data that the projection does not have is an error of types here. */
type Told = Pick<PublicPiece, Shown>;
type DataRow = {
  readonly name: string;
  /** Its name in `pieces.json`. */
  readonly fact: string;
  /** Its columns in `pieces.csv`. */
  readonly columns: readonly string[];
  readonly shown: keyof Told;
  readonly within: string | undefined;
  readonly print: ((value: never) => string) | undefined;
};

/** The fields of the table that are told in `pieces.json` and `pieces.csv`, in its order. */
export const DATA_ROWS: readonly DataRow[] = Object.entries(PIECE_ROWS).flatMap(([name, row]): readonly DataRow[] => {
  if (row.seen !== 'data') return [];
  const fact = 'fact' in row ? row.fact : name;
  return [
    {
      name,
      fact,
      columns: 'columns' in row ? row.columns : [fact],
      shown: ('shown' in row ? row.shown : name) as DataRow['shown'],
      within: 'within' in row ? row.within : undefined,
      print: row.print,
    },
  ];
});

/**
 * The public facts of a piece in the words the keeper wrote, with what was computed: `dating` in astronomical years,
 * `afterType` (the fields that are not its own word but its type's), `eras` by scheme, `grade` and `fine` (grams) as intervals,
 * `grams` and `millimetres` as numbers. Facts not recorded are left out.
 */
export function publicFacts(piece: PublicPiece, address: string): PublicFacts {
  const dated = known(piece.date);
  const size = known(piece.size);
  const extent = size === null ? null : sizeSpan(size);
  const told = DATA_ROWS.map(({ fact, shown, within, print }) => {
    const held: unknown = piece[shown];
    return [fact, written(within === undefined ? held : partOf(held, within), print)] as const;
  });
  return withoutBlanks({
    id: piece.id,
    address,
    ...Object.fromEntries(told),
    afterType: piece.fromType.length === 0 ? null : piece.fromType,
    edtf: dated?.edtf ?? null,
    dating: dated === null ? null : { earliest: dated.earliest, latest: dated.latest },
    eras: piece.eras,
    grade: piece.grade === null || piece.grade.low === null ? null : { low: piece.grade.low, high: piece.grade.high },
    fine: piece.fineGrams,
    grams: known(piece.weight)?.grams ?? null,
    millimetres: extent === null ? null : { width: extent.width, height: extent.height },
  }) as PublicFacts;
}

/** What a field holds as data: a name as its id, a measure or date in the keeper's words; null for nothing. */
function written(held: unknown, print?: (value: never) => string): unknown {
  if (held === null || held === undefined || typeof held !== 'object') return held ?? null;
  if (Array.isArray(held)) return held.length === 0 ? null : held.map((one: unknown) => written(one));
  for (const name of ['text', 'id']) {
    const said = partOf(held, name);
    if (typeof said === 'string') return said;
  }
  if (print !== undefined) return print(held as never);
  const parts = withoutBlanks(Object.fromEntries(Object.entries(held).map(([name, one]) => [name, written(one)])));
  return Object.keys(parts).length === 0 ? null : parts;
}

function partOf(held: unknown, name: string): unknown {
  return typeof held === 'object' && held !== null ? (held as Readonly<Record<string, unknown>>)[name] : undefined;
}

function withoutBlanks(facts: Readonly<Record<string, unknown>>): object {
  return Object.fromEntries(Object.entries(facts).filter(([, value]) => value !== null && value !== undefined));
}
