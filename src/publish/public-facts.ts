import type { Bound } from '../core/dating/dating.ts';
import { known } from '../catalogue/schema/fields.ts';
import type { PublicPiece } from './public-piece.ts';

/** A piece as `pieces.json` gives it: its public facts, and what was computed from them. */
export type PublicFacts = {
  readonly id: string;
  readonly [field: string]: unknown;
  /** Left out when the piece has no date. */
  readonly dating?: { readonly earliest: Bound; readonly latest: Bound };
};

/**
 * The public facts of a piece in the words the keeper wrote, with what was computed: `dating` in astronomical years,
 * `eras` by scheme, `grade` and `fine` (grams) as intervals. Facts not recorded are left out.
 */
export function publicFacts(piece: PublicPiece, address: string): PublicFacts {
  const dated = known(piece.date);
  return withoutBlanks({
    id: piece.id,
    address,
    number: piece.number,
    title: piece.title,
    kind: piece.kind,
    status: piece.status,
    ruler: namesOf(piece.rulers),
    struckFor: piece.struckFor.length === 0 ? null : piece.struckFor.map(({ id }) => id),
    issuer: piece.issuer,
    mint: nameOf(piece.mint),
    makers: piece.makers.length === 0 ? null : piece.makers,
    denomination: nameOf(piece.denomination),
    date: textOf(piece.date),
    edtf: dated?.edtf ?? null,
    dated: piece.dated,
    references: piece.references.length === 0 ? null : piece.references.map(({ text }) => text),
    metal: piece.metal,
    fineness: textOf(piece.fineness),
    weight: textOf(piece.weight),
    diameter: textOf(piece.size),
    thickness: textOf(piece.thickness),
    axis:
      piece.axis === null || piece.axis === undefined
        ? null
        : piece.axis.hours === null
          ? 'none'
          : `${piece.axis.hours}h`,
    made: piece.made,
    faces: piece.faces,
    shape: piece.shape,
    treatments: piece.treatments.length === 0 ? null : piece.treatments,
    peculiarities: piece.peculiarities.length === 0 ? null : piece.peculiarities,
    gradeAsGiven: piece.grade?.text ?? null,
    gradeScale: piece.grade?.scale ?? null,
    gradedBy: piece.gradedBy,
    problem: piece.problem,
    obverse: sideOf(piece.obverse),
    reverse: sideOf(piece.reverse),
    edge: sideOf(piece.edge),
    sure: Object.keys(piece.sure).length === 0 ? null : piece.sure,
    tags: piece.tags.length === 0 ? null : piece.tags,
    dating: dated === null ? null : { earliest: dated.earliest, latest: dated.latest },
    eras: piece.eras,
    grade: piece.grade === null || piece.grade.low === null ? null : { low: piece.grade.low, high: piece.grade.high },
    fine: piece.fineGrams,
  }) as PublicFacts;
}

type Named = { readonly id: string };

function namesOf(named: readonly Named[] | string | null): readonly string[] | string | null {
  return named === null || typeof named === 'string' ? named : named.map(({ id }) => id);
}

function nameOf(named: Named | string | null): string | null {
  return named === null || typeof named === 'string' ? named : named.id;
}

/** A measure or date in the keeper's words. */
function textOf(value: { readonly text: string } | string | null | undefined): string | null {
  return value === null || value === undefined || typeof value === 'string' ? (value ?? null) : value.text;
}

function sideOf(side: PublicPiece['obverse']): object | null {
  if (side === null || side === undefined) return null;
  return withoutBlanks({
    legend: side.legend?.text ?? null,
    reading: side.reading ?? null,
    design: side.design ?? null,
  });
}

function withoutBlanks(facts: Readonly<Record<string, unknown>>): object {
  return Object.fromEntries(Object.entries(facts).filter(([, value]) => value !== null && value !== undefined));
}
