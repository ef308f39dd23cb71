import { typeOfKey } from '../../../catalogue/types/types-of.ts';
import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { typesWords } from '../../words/types.ts';
import type { PageHead } from '../shared/head.ts';
import type { Link } from '../sets/place-shown.ts';
import { numbersShown } from './type-page.ts';
import type { NumberShown } from './type-page.ts';
import { foundSeries, seriesTrail } from './types-page.ts';

export type ConcordancePage = {
  readonly head: PageHead;
  readonly rows: readonly { readonly type: Link; readonly numbers: readonly NumberShown[] }[];
  readonly disagreements: readonly string[];
};

export function concordancePage(cabinet: Cabinet, id: string): ConcordancePage {
  const series = foundSeries(cabinet, id);
  return {
    head: {
      title: `${typesWords.concordance} · ${series.fields.title}`,
      here: urls.concordance(id),
      trail: seriesTrail(series, true) ?? [],
    },
    rows: [...series.types.values()].flatMap((type) => {
      const numbers = numbersShown(cabinet, id, type.id);
      return numbers.length === 0 ? [] : [{ type: { href: urls.type(id, type.id), name: type.label }, numbers }];
    }),
    disagreements: cabinet.lists.types.concordance.disagreements
      .filter(({ why, types }) => why === 'several-types' && types.some((type) => typeOfKey(type).series === id))
      .map(({ work, number, types }) => {
        const book = cabinet.lists.works[work]?.fields.short ?? work;
        const labels = types.map((type) => series.types.get(typeOfKey(type).id)?.label ?? type);
        return typesWords.disputed(`${book} ${number}`, labels.join(' and '));
      }),
  };
}
