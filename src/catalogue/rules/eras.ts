import { periodYears } from '../../core/eras/era-scheme.ts';
import type { Rule } from './place.ts';
import { eraSchemeOf } from '../era-scheme.ts';
import type { Problem } from '../problem.ts';
import { problem } from '../problem.ts';

/** The periods of a scheme follow one another as the scheme says they do. */
export const checkEras: Rule = (records, place) =>
  records.eras.flatMap((era): readonly Problem[] => {
    const { periods, ends } = eraSchemeOf(era);
    const at = (index: number, field: string) => place(era.file, ['periods', index, field]);
    const step = ends === 'inclusive' ? 1 : 0;
    return periods.flatMap((period, index): readonly Problem[] => {
      const found: Problem[] = [];
      const { low: from, high: to } = periodYears(period);
      if (from > to) found.push(problem('period-reversed', at(index, 'to'), period.name));
      const before = periods[index - 1];
      if (before === undefined || era.fields.gaps === 'yes') return found;
      const wanted = periodYears(before).high + step;
      if (from < wanted) found.push(problem('periods-overlap', at(index, 'from'), before.name, period.name, wanted));
      if (from > wanted) found.push(problem('periods-gap', at(index, 'from'), before.name, period.name, wanted));
      return found;
    });
  });
