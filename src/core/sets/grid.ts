import { answerWhere, askedOf } from './answer-where.ts';
import { factsOf, folded } from './facts.ts';
import { placesOf } from './places.ts';
import type { SetPiece } from './set-piece.ts';
import type { Lists, SetRule, Where } from './set-rule.ts';

/** What a grid may have along its sides. */
export const GRID_FACTS = [
  'ruler', 'dynasty', 'mint', 'area', 'issuer', 'denomination', 'metal', 'type', 'kind', 'realm',
] as const; // prettier-ignore
export type GridFact = (typeof GRID_FACTS)[number];

/** One row or column; its value is null for the pieces that do not record the fact. */
export type GridLine = { readonly value: string | null; readonly label: string };
/** A piece in a cell; unsure when it may belong elsewhere. */
export type GridPiece = { readonly piece: string; readonly sure: boolean };
/** `cells[row][column]`; a piece that may be of several rows or columns lies in each of them. */
export type SetGrid = {
  readonly rows: readonly GridLine[];
  readonly columns: readonly GridLine[];
  readonly cells: readonly (readonly (readonly GridPiece[])[])[];
};

type Line = GridLine & { readonly where: Where | null };
type Sides = { readonly rows: GridFact; readonly columns: GridFact };

/**
 * A second view of a set: the pieces that fit it, by two facts. A side that is what the set is one per has a line for every
 * place, empty ones too; any other has one for every value that occurs. `nameOf` gives a value its name.
 */
export function gridOf(
  rule: SetRule,
  sides: Sides,
  pieces: readonly SetPiece[],
  lists: Lists,
  nameOf: (fact: GridFact, value: string) => string,
): SetGrid {
  const known = pieces.map((piece) => ({ piece, facts: factsOf(piece, lists) }));
  const states = (fact: GridFact, at: number): boolean => {
    const stated = known[at]?.facts.stated[fact];
    return stated !== undefined && stated.values.size + (stated.maybe?.size ?? 0) > 0;
  };
  const side = (fact: GridFact): readonly { readonly line: Line; readonly holds: readonly (boolean | null)[] }[] => {
    const blank = pieces.some((_, at) => !states(fact, at));
    const lines = linesOf(fact, rule, pieces, lists, nameOf);
    return [...lines, ...(blank ? [{ value: null, label: '', where: null }] : [])].flatMap((line) => {
      const asked = line.where === null ? null : askedOf(line.where, rule, lists);
      const holds = known.map(({ piece, facts }, at) => {
        if (asked === null) return states(fact, at) ? null : true;
        if (!states(fact, at)) return null;
        const { verdict } = answerWhere(piece, facts, asked);
        return verdict === 'yes' ? true : verdict === 'maybe' ? false : null;
      });
      const isPlace = fact === rule['one-per'] && line.where !== null;
      return isPlace || holds.some((one) => one !== null) ? [{ line, holds }] : [];
    });
  };
  const [rows, columns] = [side(sides.rows), side(sides.columns)];
  const named = ({ line: { value, label } }: { readonly line: Line }): GridLine => ({ value, label });
  return {
    rows: rows.map(named),
    columns: columns.map(named),
    cells: rows.map((row) =>
      columns.map((column) =>
        pieces.flatMap(({ id }, at): readonly GridPiece[] => {
          const [down, across] = [row.holds[at], column.holds[at]];
          return down == null || across == null ? [] : [{ piece: id, sure: down && across }];
        }),
      ),
    ),
  };
}

function linesOf(
  fact: GridFact,
  rule: SetRule,
  pieces: readonly SetPiece[],
  lists: Lists,
  nameOf: (fact: GridFact, value: string) => string,
): readonly Line[] {
  if (fact === rule['one-per']) {
    const places = placesOf(rule, lists);
    // Nothing can be in an excused place, and its rule asks for nothing.
    const open = places.ok ? places.value.filter(({ excused }) => excused === undefined) : [];
    return open.map(({ id, label, where }) => ({ value: id, label, where }));
  }
  if (fact === 'type')
    return (lists.types ?? [])
      .filter(({ series }) => rule.series === undefined || series === rule.series)
      .filter(({ leaf, level }) => (rule.level === undefined ? leaf : level === rule.level))
      .map(({ id, series, label }) => ({ value: id, label, where: { type: [`${series}/${id}`] } }));
  const values = new Map(
    pieces.flatMap((piece) => valuesOf(fact, piece, lists)).map((value) => [folded(value), value]),
  );
  // Rulers and dynasties stand by their first year; what has none, by name.
  const first = (value: string): number =>
    Math.min(
      ...lists.rulers
        .filter(({ id, dynasty }) => (fact === 'ruler' && id === value) || (fact === 'dynasty' && dynasty === value))
        .flatMap(({ reigns }) => reigns.map(({ low }) => low)),
      Number.MAX_SAFE_INTEGER,
    );
  return [...values.values()]
    .map((value) => ({ value, label: nameOf(fact, value), where: { [fact]: [value] } }))
    .sort((a, b) => first(a.value) - first(b.value) || a.label.localeCompare(b.label, 'en', { numeric: true }));
}

/** What a piece says of a fact, as written. */
function valuesOf(fact: Exclude<GridFact, 'type'>, piece: SetPiece, lists: Lists): readonly string[] {
  const rulers = lists.rulers.filter(({ id }) => piece.rulers.includes(id));
  const said = {
    ruler: piece.rulers,
    dynasty: rulers.map(({ dynasty }) => dynasty),
    realm: rulers.map(({ realm }) => realm),
    mint: [piece.mint],
    area: [piece.area ?? lists.mints.find(({ id }) => id === piece.mint)?.area],
    issuer: [piece.issuer],
    denomination: [piece.denomination],
    metal: [piece.metal],
    kind: [piece.kind],
  }[fact];
  return said.filter((value) => value !== undefined);
}
