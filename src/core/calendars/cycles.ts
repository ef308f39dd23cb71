import { modulo } from './civil.ts';

/** The ten heavenly stems and twelve earthly branches, in letters and in characters. */
export const STEMS = ['jia', 'yi', 'bing', 'ding', 'wu', 'ji', 'geng', 'xin', 'ren', 'gui'] as const;
export const BRANCHES = ['zi', 'chou', 'yin', 'mao', 'chen', 'si', 'wu', 'wei', 'shen', 'you', 'xu', 'hai'] as const;
export const STEM_CHARACTERS = '甲乙丙丁戊己庚辛壬癸'.split('');
export const BRANCH_CHARACTERS = '子丑寅卯辰巳午未申酉戌亥'.split('');

/** AD 4 was a *jiazi*, first of its cycle of sixty: so were 1864, 1924 and 1984. */
const A_FIRST_YEAR = 4;

/** Place in the cycle, 0 for *jiazi* to 59 for *guihai*; undefined for a pair that never meets (odd with even). */
export function placeInCycle(stem: number, branch: number): number | undefined {
  if (modulo(stem - branch, 2) !== 0) return undefined;
  return modulo(6 * stem - 5 * branch, 60);
}

/** The place in the cycle of the Chinese year that begins in a year of ours. */
export function cyclePlaceOfYear(year: number): number {
  return modulo(year - A_FIRST_YEAR, 60);
}

/** Every year from `low` to `high` that stands at a place in the cycle. */
export function yearsAtPlace(place: number, low: number, high: number): readonly number[] {
  const years: number[] = [];
  for (let year = low + modulo(place - cyclePlaceOfYear(low), 60); year <= high; year += 60) years.push(year);
  return years;
}

/** Years of an indiction: fifteen, the first from September 312. */
export const LENGTH_OF_INDICTION = 15;
const FIRST_INDICTION = 312;

/**
 * The Byzantine years, September to August, that bear a number of the indiction: for 5, AD 316 to 317, 331 to 332 and
 * so on (V. Grumel, *La chronologie*, 1958: the indiction is (year of the world) modulo 15).
 */
export function yearsOfIndiction(
  number: number,
  low: number,
  high: number,
): readonly (readonly [first: number, last: number])[] {
  const years: (readonly [number, number])[] = [];
  const start = low + modulo(FIRST_INDICTION + number - 1 - low, LENGTH_OF_INDICTION);
  for (let first = start; first < high; first += LENGTH_OF_INDICTION) years.push([first, first + 1]);
  return years;
}
