import { yearsOf } from '../../core/dating/interval.ts';
import type { EraScheme } from '../../core/eras/era-scheme.ts';
import type { Filed } from '../records.ts';
import type { EraFields } from '../schema/sets-and-eras.ts';

/** A scheme's file as the core wants it: years instead of dates. */
export function eraSchemeOf(era: Filed<EraFields>): EraScheme {
  const { title, source, region, ends, periods, 'applies-to': appliesTo } = era.fields;
  return {
    id: era.id,
    title,
    source,
    ...(region === undefined ? {} : { region }),
    ...(appliesTo === undefined ? {} : { appliesTo }),
    ends,
    periods: periods.map((period) => ({
      id: period.id,
      name: period.name,
      from: yearsOf(period.from).low,
      to: yearsOf(period.to).high,
      ...(period.rulers === undefined ? {} : { rulers: period.rulers }),
    })),
  };
}
