import { formatYear } from '../dating/format-date.ts';
import type { SetRule, Where } from './set-rule.ts';

/** One position in a set, with everything a piece must be to stand in it beyond what the whole set asks. */
export type SetPlace = {
  readonly id: string;
  readonly label: string;
  readonly where: Where;
  /** Why nothing can stand here. */
  readonly excused?: string;
};

/** The ruler a place asks for: the one named on the piece, or the one it was struck for. */
export function rulerWhere(id: string, rule: SetRule): Where {
  return rule.count === 'struck-for' ? { 'struck-for': [id] } : { ruler: [id] };
}

/** A place for one year: `1887`, `44-bc`. */
export function yearPlace(year: number): SetPlace {
  const id = year > 0 ? String(year) : `${String(1 - year)}-bc`;
  return { id, label: formatYear(year), where: { date: { low: year, high: year } } };
}
