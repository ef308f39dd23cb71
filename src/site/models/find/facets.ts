import type { Cabinet } from '../../cabinet.ts';
import type { FacetName } from '../../find/record.ts';
import { FACETS } from '../../find/record.ts';
import type { Named, PublicPiece } from '../../../publish/public-piece.ts';
import { onceFor } from '../../once-for.ts';
import { slug } from '../../urls.ts';
import { capital, kindInWords, tagInWords } from '../../words/capital.ts';
import { findWords } from '../../words/find.ts';

/** A value of a facet, as it is in an address and on a page. */
export type FacetValue = {
  readonly facet: FacetName;
  readonly value: string;
  readonly label: string;
  /** What it belongs under: an era under its scheme. */
  readonly group: string | null;
};

/** A value and the pieces that answer to it. */
export type FacetList = FacetValue & { readonly pieces: readonly PublicPiece[] };

// Bands of the numeric scale, cut where a French table of terms cuts it: B, TB, TTB, SUP, SPL and FDC.
const BANDS = [
  { low: 1, high: 14 },
  { low: 15, high: 39 },
  { low: 40, high: 54 },
  { low: 55, high: 62 },
  { low: 63, high: 70 },
] as const;

/** Every value a piece answers to. A doubtful one answers to all that it may be. */
export function facetsOf(piece: PublicPiece, { lists }: Cabinet): readonly FacetValue[] {
  return [
    ...named('ruler', piece.rulers),
    ...named('mint', piece.mint),
    ...named('denomination', piece.denomination),
    ...(piece.metal === null || piece.metal === 'none' ? [] : [plain('metal', piece.metal)]),
    ...lists.eras.flatMap(({ id, fields }) =>
      (piece.eras[id]?.periods ?? []).map((period) => ({
        facet: 'era' as const,
        value: `${id}-${period.id}`,
        label: period.name,
        group: fields.title,
      })),
    ),
    ...bandsOf(piece),
    { ...plain('kind', piece.kind), label: kindInWords(piece.kind) },
    ...piece.tags.map((tag) => ({ ...plain('tag', tag), label: tagInWords(tag) })),
  ];
}

/** Every value of every facet with its pieces, facets in their order, values by name; eras and grades in their own order. */
export const facetLists = onceFor((cabinet: Cabinet): readonly FacetList[] => {
  const held = new Map<string, FacetValue & { pieces: PublicPiece[] }>();
  for (const piece of cabinet.listed) {
    for (const one of facetsOf(piece, cabinet)) {
      const key = `${one.facet} ${one.value}`;
      const known = held.get(key) ?? { ...one, pieces: [] };
      // One piece after another: a value it answers to twice it has just answered to.
      if (known.pieces.at(-1) !== piece) known.pieces.push(piece);
      held.set(key, known);
    }
  }
  const periods = cabinet.lists.eras.flatMap(({ id, scheme }) => scheme.periods.map((period) => `${id}-${period.id}`));
  const bands = BANDS.map(({ low }) => bandId(low));
  const rank = ({ facet, value }: FacetValue): number =>
    facet === 'era' ? periods.indexOf(value) : facet === 'grade' ? (bands.indexOf(value) + 99) % 99 : 0;
  return [...held.values()].sort(
    (one, other) =>
      FACETS.indexOf(one.facet) - FACETS.indexOf(other.facet) ||
      rank(one) - rank(other) ||
      one.label.localeCompare(other.label, 'en', { numeric: true }),
  );
});

function named(facet: FacetName, held: readonly Named[] | Named | string | null): readonly FacetValue[] {
  if (held === null || held === 'none') return [];
  if (typeof held === 'string') return [{ facet, value: 'unknown', label: findWords.unknown(facet), group: null }];
  const all = 'id' in held ? [held] : held;
  return all.map(({ id, name }) => ({ facet, value: id, label: capital(name), group: null }));
}

function plain(facet: FacetName, text: string): FacetValue {
  return { facet, value: slug(text), label: capital(text.replaceAll('-', ' ')), group: null };
}

function bandId(low: number): string {
  return `from-${low}`;
}

function bandsOf({ grade }: PublicPiece): readonly FacetValue[] {
  const as = (value: string, label: string): FacetValue => ({ facet: 'grade', value, label, group: null });
  if (grade === null) return [as('none', findWords.noGrade)];
  const { low, high } = grade;
  if (low === null || high === null) return [as('not-graded', findWords.notGraded)];
  return BANDS.filter((band) => band.low <= high && band.high >= low).map((band) =>
    as(bandId(band.low), findWords.band(band.low, band.high)),
  );
}
