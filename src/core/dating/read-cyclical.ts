import {
  BRANCH_CHARACTERS,
  BRANCHES,
  placeInCycle,
  STEM_CHARACTERS,
  STEMS,
  yearsAtPlace,
} from '../calendars/sexagenary.ts';
import { isoYear } from '../calendars/reckoning.ts';
import { good, refuse } from '../outcome.ts';
import type { Reading } from './dating.ts';
import type { PointReader } from './point-reader.ts';
import { readYears } from './reading.ts';

/** Cyclical years are looked for from the cycle that began in AD 4 to the one that ends in 2043. */
const CYCLES = { first: 4, last: 2043 };

const LETTERS = new RegExp(
  `^(?:cyclical |cyclic |sexagenary )?(?:year |date )?(?<stem>${STEMS.join('|')})[- ']?(?<branch>${BRANCHES.join('|')})$`,
  'i',
);
const CHARACTERS = new RegExp(
  `^(?:cyclical )?(?<stem>[${STEM_CHARACTERS.join('')}])(?<branch>[${BRANCH_CHARACTERS.join('')}])年?$`,
);

/** `jiazi`, `cyclical wuxu`, `甲子`: every year at that place in the cycle of sixty. */
export const readCyclical: PointReader = (text) => {
  const letters = LETTERS.exec(text)?.groups;
  const characters = CHARACTERS.exec(text)?.groups;
  const stem = letters ? indexOf(STEMS, letters['stem']) : indexOf(STEM_CHARACTERS, characters?.['stem']);
  const branch = letters ? indexOf(BRANCHES, letters['branch']) : indexOf(BRANCH_CHARACTERS, characters?.['branch']);
  if (stem < 0 || branch < 0) return undefined;
  const place = placeInCycle(stem, branch);
  if (place === undefined)
    return refuse(`The signs of "${text}" never meet in the cycle of sixty; read the coin again.`);
  return good(oneOfYears(yearsAtPlace(place, CYCLES.first, CYCLES.last)));
};

function indexOf(signs: readonly string[], sign: string | undefined): number {
  return sign === undefined ? -1 : signs.indexOf(sign.toLowerCase());
}

/** One year of several at the same place in the cycle. */
function oneOfYears(years: readonly number[]): Reading {
  return {
    ...readYears(years.at(0) ?? null, years.at(-1) ?? null, 'cyclical'),
    edtf: years.length === 1 ? isoYear(years[0] ?? 0) : `[${years.map(isoYear).join(',')}]`,
    years: years.map((year) => [year, year] as const),
  };
}
