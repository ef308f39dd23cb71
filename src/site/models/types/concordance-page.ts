import type { ConcordanceLine } from '../../../catalogue/types/read-lines.ts';
import { typeOfKey } from '../../../catalogue/types/types-of.ts';
import { formatReference } from '../../../core/references/reference.ts';
import type { Disagreement } from '../../../core/types/concordance.ts';
import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { typesWords } from '../../words/types.ts';
import type { SeriesType } from '../../../core/types/series.ts';
import { cited } from '../../../publish/public-piece.ts';
import type { TypeSeries } from '../../../catalogue/types/series.ts';
import type { PageHead } from '../shared/head.ts';
import { mostShown } from '../shared/most-shown.ts';
import { cutPage } from '../shared/pager.ts';
import type { Pager } from '../shared/pager.ts';
import { bookTable } from './book-table.ts';
import type { BookTable } from './book-table.ts';
import { numbersShown } from './numbers-shown.ts';

import { foundSeries, pagedPaths, seriesTrail, seriesWithNumbers, titleOfPage } from './types-page.ts';

export type ConcordancePage = {
  readonly head: PageHead;
  readonly title: string;
  readonly series: string;
  readonly table: BookTable;
  readonly disagreements: readonly string[];
  /** Disagreements that are not shown. */
  readonly more: number;
  readonly pager: Pager | null;
};

/** Types on a page: a sheet or two of paper. */
const ON_A_PAGE = 150;

export function concordancePaths(cabinet: Cabinet) {
  return pagedPaths(seriesWithNumbers(cabinet), (id) => numbered(cabinet, id).length, ON_A_PAGE);
}

/** The types of a series that have a number in any book. */
function numbered(cabinet: Cabinet, id: string): readonly SeriesType[] {
  const { types, numbers } = foundSeries(cabinet, id);
  const has = new Set(numbers.map(({ type }) => typeOfKey(type).id));
  return [...types.values()].filter((type) => has.has(type.id));
}

export function concordancePage(cabinet: Cabinet, id: string, page: number): ConcordancePage {
  const series = foundSeries(cabinet, id);
  const { shown, pager } = cutPage(numbered(cabinet, id), page, ON_A_PAGE, (at) => urls.concordance(id, at));
  const disagreements = mostShown(page === 1 ? disagreementsIn(cabinet, series) : []);
  return {
    head: {
      title: titleOfPage(`${typesWords.concordance} · ${series.fields.title}`, page),
      here: urls.concordance(id, page),
      trail: seriesTrail(series, true) ?? [],
    },
    title: titleOfPage(typesWords.concordance, page),
    series: series.fields.title,
    table: bookTable(
      cabinet,
      numbersShown(
        cabinet,
        id,
        shown.map((type) => ({ id: type.id, type: { href: urls.type(id, type.id), name: type.label } })),
      ),
    ),
    disagreements: disagreements.shown,
    more: disagreements.more,
    pager,
  };
}

function disagreementsIn(cabinet: Cabinet, series: TypeSeries): readonly string[] {
  return cabinet.lists.types.concordance.disagreements
    .filter(({ types }) => types.some((type) => typeOfKey(type).series === series.id))
    .map((found) => disagreementShown(cabinet, series, found));
}

/** What contradicts itself, in a sentence: a number of several types, or a type that is told in several ways of its numbers. */
function disagreementShown({ lists }: Cabinet, { types: own }: TypeSeries, { why, types, rows }: Disagreement): string {
  const lines = rows.flatMap((row) => (lists.types.concordance.rows[row] as ConcordanceLine | undefined) ?? []);
  const numbers = [...new Set(lines.map(({ reference }) => formatReference(reference, cited(reference, lists).cited)))];
  const [type = '', ...others] = types.map((key) => own.get(typeOfKey(key).id)?.label ?? key);
  const [number = ''] = numbers;
  switch (why) {
    case 'several-types':
      return typesWords.disputed(number, [type, ...others].join(' and '));
    case 'several-numbers':
      return typesWords.severalNumbers(type, numbers.join(' and '));
    case 'two-relations':
      return typesWords.severalRelations(
        type,
        number,
        [...new Set(lines.map(({ relation }) => typesWords.relation[relation]))].join('; '),
      );
    case 'two-certainties':
      return typesWords.severalDoubts(type, number);
  }
}
