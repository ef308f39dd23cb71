import { isoYear } from '../calendars/reckoning.ts';
import { good } from '../outcome.ts';
import type { PointReader } from './point-reader.ts';
import { readYears } from './reading.ts';
import { SEASONS } from './words.ts';
import { anyOf } from './written-text.ts';

const FORM = new RegExp(`^(?<season>${anyOf(SEASONS.flat())}),? (?:of |de )?(?<year>\\d{4})$`, 'i');

/** `spring 1985`, EDTF's 1985-21. A season does not settle the days, which differ by hemisphere. */
export const readSeason: PointReader = (text) => {
  const groups = FORM.exec(text)?.groups;
  const year = Number(groups?.['year']);
  if (!groups || year === 0) return undefined;
  const season = SEASONS.findIndex((words) => words.includes((groups['season'] ?? '').toLowerCase()));
  return good({ ...readYears(year, year), edtf: `${isoYear(year)}-${String(21 + season)}` });
};
