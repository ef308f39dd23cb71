import { isoYear, modulo } from '../calendars/civil.ts';
import { lengthOfTitle, plainCharacters, REIGN_TITLES, type ReignTitle } from '../calendars/reign-titles.ts';
import { good, refuse, type Outcome } from '../outcome.ts';
import type { CalendarName, DateContext, Reading, Reign } from './dating.ts';
import { isRealmOf } from './eras.ts';
import { readHanNumber, readRoman } from './numerals.ts';
import { readYears, type PointReader } from './reading.ts';
import { foldedText } from './written-text.ts';

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

/** Cyclical years are looked for from the cycle that began in AD 4 to the one that ends in 2043. */
const CYCLES = { first: 4, last: 2043 };

const STEM = `(?<stem>${STEMS.join('|')})`;
const BRANCH = `(?<branch>${BRANCHES.join('|')})`;
const LETTERS = new RegExp(`^(?:cyclical |cyclic |sexagenary )?(?:year |date )?${STEM}[- ']?${BRANCH}$`, 'i');
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
  const years = yearsAtPlace(place, CYCLES.first, CYCLES.last).map((year) => [year, year] as const);
  return good(oneOf(years, 'cyclical'));
};

function indexOf(signs: readonly string[], sign: string | undefined): number {
  return sign === undefined ? -1 : signs.indexOf(sign.toLowerCase());
}

/** One span of several. */
function oneOf(years: readonly (readonly [number, number])[], calendar: CalendarName): Reading {
  const members = years.map(([low, high]) => (low === high ? isoYear(low) : `${isoYear(low)}..${isoYear(high)}`));
  return {
    ...readYears(years.at(0)?.[0] ?? null, years.at(-1)?.[1] ?? null, calendar),
    edtf: `[${members.join(',')}]`,
    years,
  };
}

/** Coins dated by the indiction are looked for from its beginning to the fall of Constantinople. */
const INDICTIONS = { first: 312, last: 1453 };
const INDICTION =
  /^(?:indictione|indictio|indiction|ind\.?) ?(?<number>\d{1,3}|[IVX]{1,5})$|^(?<ordinal>\d{1,3})(?:st|nd|rd|th) indiction$/i;

/** `indiction 5`, `Ind. V`: every Byzantine year, September to August, of that number in the cycle of fifteen. */
export const readIndiction: PointReader = (text) => {
  const { number: written, ordinal = written } = INDICTION.exec(text)?.groups ?? {};
  if (ordinal === undefined) return undefined;
  const number = /^\d/.test(ordinal) ? Number(ordinal) : readRoman(ordinal.toUpperCase());
  if (number === undefined || number < 1 || number > LENGTH_OF_INDICTION) {
    return refuse(
      `An indiction is a year from 1 to 15, and "${text}" names none; read the coin again, or write the year AD.`,
    );
  }
  return good(oneOf(yearsOfIndiction(number, INDICTIONS.first, INDICTIONS.last), 'indiction'));
};

const ORDINAL = '(?:st|nd|rd|th)';
const WHICH_YEAR = 'first, 1st, second, 2nd, third, 3rd, fourth, 4th'.split(', ');
const OLYMPIADS = [
  /^(?:Ol\.?|Olympiade?|Olympias|Olimpiade) ?(?<number>\d{1,3}|[IVXLC]+)(?:(?: ?[,./:] ?|,? (?:year )?)(?<year>\d))?$/i,
  new RegExp(
    `^(?:(?<which>${WHICH_YEAR.join('|')}) year of (?:the )?)?(?<number>\\d{1,3})${ORDINAL} Olympiad(?:, (?:year )?(?<year>\\d))?$`,
    'i',
  ),
];
/** The games were held in the summer of 776 BC and every four years until Theodosius; Bickerman, *Chronology of the Ancient World* (1968). */
const FIRST_OLYMPIAD = -775;
const LAST_OLYMPIAD = 293;

/** `Ol. 95, 2`, `Ol. XCV`, `95th Olympiad`: years from summer to summer, four to an Olympiad. */
export const readOlympiad: PointReader = (text) => {
  const groups = OLYMPIADS.map((form) => form.exec(text)?.groups).find((found) => found !== undefined);
  const written = groups?.['number'] ?? '';
  const number = /^\d/.test(written) ? Number(written) : readRoman(written.toUpperCase());
  if (number === undefined || !groups) return undefined;
  const which = WHICH_YEAR.indexOf(groups['which']?.toLowerCase() ?? '');
  const year = which < 0 ? Number(groups['year'] ?? 1) : Math.floor(which / 2) + 1;
  if (number < 1 || number > LAST_OLYMPIAD || year < 1 || year > 4) {
    return refuse(`Olympiads run from 1 to 293, of four years each, and "${text}" is none; write one as Ol. 95, 2.`);
  }
  const first = FIRST_OLYMPIAD + 4 * (number - 1) + (year - 1);
  const isWhole = which < 0 && groups['year'] === undefined;
  return good(readYears(first, first + (isWhole ? 4 : 1), 'olympiad'));
};

const TITLE_IN_LETTERS = /^(?<name>[A-Za-zĀ-ž' -]+?)(?:,? (?:year )?(?<number>\d{1,3})(?: ?nen)?)?$/i;
const HAN_YEAR = '(?<number>\\d{1,3}|[元〇一二三四五六七八九十百廿卅]+)年?';
const TITLE_IN_CHARACTERS = new RegExp(`^(?<name>\\p{Script=Han}{2}) ?(?:${HAN_YEAR})?$`, 'u');

/** `Meiji 3`, `Kan'ei 13`, `明治三年`, `寶永五年`, `Guangxu 34`, `光武 2`; a name alone may be the title of a coin. */
export const readReignTitle: PointReader = (text, context) => {
  const { name = '', number } = (TITLE_IN_LETTERS.exec(text) ?? TITLE_IN_CHARACTERS.exec(text))?.groups ?? {};
  const known = TITLES.get(plainCharacters(name)) ?? TITLES.get(foldedName(name));
  if (!known) return undefined;
  const year = number === undefined || /^\d/.test(number) ? Number(number ?? 1) : readHanNumber(number);
  if (year === undefined) return undefined;
  const titles = titlesIn(known, context);
  if (titles.length > 1) return refuse(askWhichTitle(text, titles));
  const [title] = titles;
  if (!title) return undefined;
  if (number === undefined) return refuse(askForYear(text, title));
  return yearOfTitle(title, year);
};

function yearOfTitle(title: ReignTitle, year: number): Outcome<Reading> {
  const years = lengthOfTitle(title);
  if (year < 1 || year > years) {
    const name = title.names[0] ?? title.characters;
    return refuse(`${name} has the years 1 to ${String(years)}; write one of them, or the western year.`);
  }
  return good(readYears(title.first + year - 1, title.first + year - 1, title.calendar));
}

function spanOf({ first, last }: ReignTitle): string {
  return last === 'open' ? `${String(first)}/..` : `${String(first)}/${String(last)}`;
}

function askForYear(text: string, title: ReignTitle): string {
  return `"${text}" may be the title of a coin made later too; write ${spanOf(title)} if it was made in that time, or a year such as ${title.names[0] ?? ''} 1.`;
}

function askWhichTitle(text: string, titles: readonly ReignTitle[]): string {
  const all = titles.map((title) => `${title.calendar} (${spanOf(title)})`);
  return `"${text}" may be more than one: ${all.join(' or ')}; write the western year.`;
}

const REALMS = {
  japanese: ['japan'],
  chinese: ['chin', 'manchu'],
  korean: ['korea'],
  vietnamese: ['vietnam', 'annam'],
};

function titlesIn(titles: readonly ReignTitle[], { realm }: DateContext): readonly ReignTitle[] {
  const here = titles.filter(({ calendar }) => isRealmOf(REALMS[calendar], realm));
  return here.length > 0 ? here : titles;
}

/** Names without marks of length, however these were typed: Tenpō, Tempo and Tenpou are one era. */
function foldedName(name: string): string {
  return foldedText(name).replaceAll('mp', 'np').replaceAll('mb', 'nb').replaceAll('mm', 'nm').replace(/ou/g, 'o');
}

const TITLES = new Map<string, ReignTitle[]>();
for (const title of REIGN_TITLES) {
  for (const name of [plainCharacters(title.characters), ...title.names.map(foldedName)]) {
    TITLES.set(name, [...(TITLES.get(name) ?? []), title]);
  }
}

/** The reigns of a title, for `Daoguang (1821-50)`. */
export function reignsOfTitle(name: string): readonly Reign[] {
  const known = TITLES.get(plainCharacters(name)) ?? TITLES.get(foldedName(name)) ?? [];
  return known.map(({ names, characters, first, last }) => ({
    ruler: names[0] ?? characters,
    names,
    from: String(first),
    to: last === 'open' ? '..' : String(last),
  }));
}
