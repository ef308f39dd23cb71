import { yearsOf } from '../../../core/dating/interval.ts';
import { summariseGrades } from '../../../core/grade/compare-grades.ts';
import type { Cabinet } from '../../cabinet.ts';
import type { FacetName } from '../../find/record.ts';
import { FACETS } from '../../find/record.ts';
import type { Named, PublicPiece } from '../../../publish/public-piece.ts';
import { onceFor } from '../../once-for.ts';
import { slug } from '../../urls.ts';
import { capital, gradeInWords, kindInWords, tagInWords } from '../../words/capital.ts';
import { findWords } from '../../words/find.ts';
import { spanInWords } from '../charts/years.ts';

/** The value of pieces without a ruler, a mint, a denomination or a period, so that the lines of a facet come to all pieces. */
const NONE = 'none';

/** A value of a facet, as it is in an address and on a page. */
export type FacetValue = {
  readonly facet: FacetName;
  readonly value: string;
  readonly label: string;
  /** What it belongs under: an era under its scheme, a grade under its scale. */
  readonly group: string | null;
  /** Its place among the values of its facet, where that is not by name. */
  readonly rank?: number;
  /** A grade that speaks of wear alone, beside a problem. */
  readonly isDetails?: true;
};

/** A value and the pieces that answer to it. */
export type FacetList = FacetValue & { readonly pieces: readonly PublicPiece[] };

/** Every value a piece answers to. A doubtful one answers to all that it may be. */
export function facetsOf(piece: PublicPiece, { lists }: Cabinet): readonly FacetValue[] {
  return [
    // In one name and struck for another: it is found under both.
    ...named('ruler', piece.rulers),
    ...(piece.struckFor.length === 0 ? [] : named('ruler', piece.struckFor)),
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
    ...(lists.eras.length > 0 && Object.values(piece.eras).every(({ periods }) => periods.length === 0)
      ? [{ facet: 'era' as const, value: NONE, label: findWords.noPeriod, group: null }]
      : []),
    gradeOf(piece),
    { ...plain('kind', piece.kind), label: kindInWords(piece.kind) },
    ...piece.tags.map((tag) => ({ ...plain('tag', tag), label: tagInWords(tag) })),
  ];
}

/** Every value of every facet with its pieces, facets in their order, values by name; eras and grades in their own order, and no two alike. */
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
  const rankOf = ({ facet, value, rank = 99 }: FacetValue): number =>
    value === NONE ? Infinity : facet === 'era' ? periods.indexOf(value) : facet === 'grade' ? rank : 0;
  const ordered = [...held.values()].sort(
    (one, other) =>
      FACETS.indexOf(one.facet) - FACETS.indexOf(other.facet) ||
      (one.group ?? '').localeCompare(other.group ?? '', 'en') * Number(one.facet === 'grade') ||
      rankOf(one) - rankOf(other) ||
      one.label.localeCompare(other.label, 'en', { numeric: true }),
  );
  return distinguished(ordered, cabinet);
});

function named(facet: FacetName, held: readonly Named[] | Named | string | null): readonly FacetValue[] {
  if (held === null || typeof held === 'string') return [{ facet, value: NONE, label: findWords.without, group: null }];
  const all = 'id' in held ? [held] : held;
  // Names of people and places are written as they are.
  const written = (name: string): string => (facet === 'denomination' ? capital(name) : name);
  return all.map(({ id, name }) => ({ facet, value: id, label: written(name), group: null }));
}

function plain(facet: FacetName, text: string): FacetValue {
  return { facet, value: slug(text), label: capital(text.replaceAll('-', ' ')), group: null };
}

/** A grade by its words on its own scale: no table of words puts two scales in one order. */
function gradeOf({ grade }: PublicPiece): FacetValue {
  const as = (value: string, label: string): FacetValue => ({ facet: 'grade', value, label, group: null });
  if (grade === null) return as('none', findWords.noGrade);
  const { scales, details } = summariseGrades([grade]);
  const [summary] = [...scales, ...details];
  const row = summary?.rows[0];
  if (summary === undefined || row === undefined) return as('not-graded', findWords.notGraded);
  const label = details.length > 0 ? findWords.details(row.words) : row.words;
  const value = slug(`${summary.scale ?? 'grade'} ${label.replaceAll('+', ' plus')}`);
  return {
    facet: 'grade',
    value,
    label: gradeInWords(label),
    group: summary.title,
    rank: row.low + row.high / 100,
    ...(details.length > 0 ? { isDetails: true as const } : {}),
  };
}

/** Lists of one facet that bear the same name, each with what distinguishes it. */
function distinguished(lists: readonly FacetList[], { lists: all }: Cabinet): readonly FacetList[] {
  const nameOf = ({ facet, group, label }: FacetValue): string => JSON.stringify([facet, group, label]);
  const counts = new Map<string, number>();
  for (const list of lists) counts.set(nameOf(list), (counts.get(nameOf(list)) ?? 0) + 1);
  return lists.map((list) => {
    if ((counts.get(nameOf(list)) ?? 0) < 2) return list;
    const { facet, value } = list;
    const reigns = facet === 'ruler' ? (all.rulers[value]?.fields.reigns ?? []) : [];
    const years = reigns.map(({ from, to }) => spanInWords({ low: yearsOf(from).low, high: yearsOf(to).high }));
    const area = facet === 'mint' ? all.mints[value]?.fields.area : undefined;
    return { ...list, label: `${list.label} (${years.length > 0 ? years.join(', ') : (area ?? value)})` };
  });
}
