import { yearsOf } from '../../core/dating/interval.ts';
import type { EraScheme } from '../../core/eras/era-scheme.ts';
import { folded } from '../../core/sets/facts.ts';
import type { Filed } from '../records.ts';
import type { RulerFields } from '../schema/lists.ts';
import type { EraFields } from '../schema/sets-and-eras.ts';

/** A scheme's file as the core wants it: years instead of dates, and every ruler of a realm or dynasty by name. */
export function eraSchemeOf(era: Filed<EraFields>, rulers: readonly Filed<RulerFields>[]): EraScheme {
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
      ...rulersOf(period, rulers),
    })),
  };
}

/** Those a period names, and those of its realms and dynasties; nothing where it goes by years alone. */
function rulersOf(
  { rulers: named, realms, dynasties }: EraFields['periods'][number],
  rulers: readonly Filed<RulerFields>[],
): { readonly rulers?: readonly string[] } {
  if (named === undefined && realms === undefined && dynasties === undefined) return {};
  const isOne = (asked: readonly string[] | undefined, value: string | undefined): boolean =>
    value !== undefined && (asked ?? []).some((one) => folded(one) === folded(value));
  const gathered = rulers.filter(({ fields }) => isOne(realms, fields.realm) || isOne(dynasties, fields.dynasty));
  return { rulers: [...new Set([...(named ?? []), ...gathered.map(({ id }) => id)])] };
}
