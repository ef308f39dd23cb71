import { buddhistYear, byzantineYear, yearsOfEra, type CountedCalendar } from '../calendars/counted-years.ts';
import { dayFromJulian } from '../calendars/civil.ts';
import { hebrewYear } from '../calendars/hebrew.ts';
import { hijriYear } from '../calendars/hijri.ts';
import { BRITAIN } from '../calendars/reforms.ts';
import { LAST_REPUBLICAN_YEAR, republicanYear } from '../calendars/republican.ts';
import type { CalendarName, DateContext, Reading } from './dating.ts';
import { readDays, readYears } from './reading.ts';
import { foldedText } from './written-text.ts';

/** An era that is named next to a number: `AH 294`, `294 AH`. */
export interface Era {
  readonly calendar: CalendarName;
  /** What is written for it so that nothing else can be meant. */
  readonly sign: string;
  /** All its unmistakable words, in any spelling; points, accents and capitals make no difference. */
  readonly words: readonly string[];
  /** The last year that was counted, where the era came to an end. */
  readonly ended?: number;
  /** What the years from one number to another span in years of ours. */
  readonly read: (first: number, last: number, context: DateContext) => Reading;
}

function counted(calendar: CountedCalendar, sign: string, words: string): Era {
  const name = calendar === 'babylonian' ? 'seleucid' : calendar;
  return {
    calendar: name,
    sign,
    words: [sign, ...words.split(', ')],
    read: (first, last) => readYears(yearsOfEra(calendar, first).low, yearsOfEra(calendar, last).high, name),
  };
}

export const HIJRI: Era = {
  calendar: 'hijri',
  sign: 'AH',
  words: 'AH, H, Hijri, Hijra, Hegira, anno hegirae, année de l’Hégire, هـ, ه, هجري, هجرية, هجریه'.split(', '),
  read: (first, last) => readDays(hijriYear(first).first, hijriYear(last).last, 'hijri'),
};

export const HEBREW: Era = {
  calendar: 'hebrew',
  sign: 'Hebrew',
  words: ['Hebrew', 'Hebrew year', 'Jewish year', 'AM (Hebrew)', 'Jewish era'],
  read: (first, last) => readDays(hebrewYear(first).first, hebrewYear(last).last, 'hebrew'),
};

export const BYZANTINE: Era = {
  calendar: 'byzantine',
  sign: 'Byzantine',
  words: ['Byzantine', 'Byzantine year', 'AM (Byzantine)', 'Byzantine AM', 'year of the world', 'от сотворения мира'],
  read: (first, last) => {
    const from = dayFromJulian({ year: byzantineYear(first).low, month: 9, day: 1 });
    const to = dayFromJulian({ year: byzantineYear(last).high, month: 8, day: 31 });
    return readDays(from, to, 'byzantine');
  },
};

/** Buddhist years begin in May, one year ahead of the Siamese count, in these realms. */
const COUNTS_FROM_MAY = ['ceylon', 'sri lanka', 'kandy', 'burma', 'myanmar', 'cambodia', 'khmer'];

const BUDDHIST: Era = {
  calendar: 'buddhist',
  sign: 'Buddhist',
  words: ['Buddhist', 'Buddhist era', 'Buddhist year', 'พ.ศ.', 'พุทธศักราช'],
  read: (first, last, { realm }) => {
    const way = isRealmOf(COUNTS_FROM_MAY, realm) ? 'from May' : 'siamese';
    return readYears(buddhistYear(first, way).low, buddhistYear(last, way).high, 'buddhist');
  },
};

export const REPUBLICAN: Era = {
  calendar: 'republican',
  sign: 'An',
  words: ['French Republican year', 'French Republic year', 'French Republican'],
  ended: LAST_REPUBLICAN_YEAR,
  read: (first, last) => readDays(republicanYear(first).first, republicanYear(last).last, 'republican'),
};

export const ERAS: readonly Era[] = [
  HIJRI,
  HEBREW,
  BYZANTINE,
  BUDDHIST,
  REPUBLICAN,
  counted('seleucid', 'Seleucid', 'Seleucid era, Seleucid year, SEM, SE Macedonian, anno Graecorum'),
  counted('babylonian', 'SEB', 'SE Babylonian, SE Bab, Seleucid Babylonian'),
  counted('bosporan', 'Bosporan', 'Bosporan era, Bosporan year, Pontic era'),
  counted('saka', 'Saka', 'Shaka, Saka era, Saka samvat, Shalivahana Saka'),
  counted('vikrama', 'VS', 'Vikrama, Vikram, Vikrama samvat, Vikram samvat, Vikrama era'),
  counted('nepal', 'Nepal Samvat', 'Nepali Samvat, Newar era, Nepal era'),
  counted('kollam', 'Kollam', 'Kollam era, Malabar era'),
  counted('mauludi', 'Mauludi', 'Mauludi era, Muludi'),
  counted('persian', 'Solar Hijri', 'Hijri Shamsi, Shamsi, هـ ش, ه‍.ش, هش'),
  counted('shahanshahi', 'Shahanshahi', 'Imperial Iranian'),
  counted('ethiopian', 'Ethiopian', 'Ethiopian era, Ethiopian year'),
  counted('chula', 'Chula Sakarat', 'Chula Sakaraj, Burmese era, จ.ศ.'),
  counted('rattanakosin', 'Rattanakosin', 'Rattanakosin Sok, Ratanakosind Sok, ร.ศ.'),
  counted('spanish', 'Spanish era', 'Hispanic era, era hispanica, era of Safar'),
  counted('minguo', 'Minguo', 'Min-kuo, ROC, 民國, 民国, 中華民國'),
  counted('dangun', 'Dangi', 'Dangun, Tangun, Korean era, 檀紀, 단기'),
  counted('haitian', 'Year of Haiti', 'An Haiti, year of independence of Haiti'),
];

/** A word for an era without what printers and typists vary. */
function foldedSign(word: string): string {
  return foldedText(word).replace(/[()]/g, '');
}

const BY_WORD = new Map(ERAS.flatMap((era) => era.words.map((word) => [foldedSign(word), era] as const)));

export function eraNamed(word: string): Era | undefined {
  return BY_WORD.get(foldedSign(word));
}

/** Whether a realm is one of some, by a word of its name. */
export function isRealmOf(words: readonly string[], realm: string | undefined): boolean {
  const name = ` ${realm?.toLowerCase().replace(/[^\p{L}]+/gu, ' ') ?? ''}`;
  // Whole words or their beginnings: Prussia is not Russia.
  return words.some((word) => name.includes(` ${word}`));
}

/** Where coins keep the year of accession and count the years of reign beside it. */
export const KEEPS_ACCESSION = 'ottoman, turkey, turkish, egypt, tunis, tripoli, algier, algeria, hejaz, sudan'.split(
  ', ',
);

/** Whether a realm kept the calendar and the regnal years of England. */
export function isBritish(realm: string | undefined): boolean {
  return isRealmOf(BRITAIN, realm);
}

/** One of the eras that a sign may stand for: where it does, and which of its years stand on coins. */
export interface Meaning {
  readonly sign: string;
  readonly realms: readonly string[];
  readonly numbers: readonly [first: number, last: number];
}

function meaning(sign: string, first: number, last: number, realms = ''): Meaning {
  return { sign, numbers: [first, last], realms: realms === '' ? [] : realms.split(', ') };
}

const ISRAEL = 'israel, jewish, palestine';
const RUSSIA = 'russia, moscow, muscov, novgorod, pskov, tver, ryazan, byzant, moldavia, wallachia, bulgar, georgia';
const SIAM = 'siam, thai, laos, lao, cambodia, khmer, burma, myanmar, ceylon, sri lanka';
const SELEUCIDS =
  'seleuc, syria, parthia, arsacid, characene, elymai, phoenic, commagene, edessa, babylon, judaea, hasmon';
const SAKA = 'india, java, mataram, indonesia, assam, ahom, kshatrapa, satrap, gorkha, nepal, manipur, jaintia, champa';
const VIKRAMA = 'nepal, gwalior, indore, jaipur, kutch, baroda, jodhpur, mewar, sikh, punjab, rajasthan';

/** Signs of more than one thing. The number decides, then the realm; what both leave open is asked. */
const SHARED: readonly { readonly words: readonly string[]; readonly means: readonly Meaning[] }[] = [
  { words: ['SE'], means: [meaning('Seleucid', 1, 9999, SELEUCIDS), meaning('Saka', 1, 9999, SAKA)] },
  {
    words: ['Samvat', 'Samv', 'Sv'],
    means: [meaning('VS', 1, 9999, VIKRAMA), meaning('Saka', 1, 9999, 'assam, ahom, java, mataram, gorkha')],
  },
  {
    words: ['Republic year', 'Year of the Republic', 'Republican year'],
    means: [meaning('Minguo', 1, 9999, 'china, chinese, taiwan'), meaning('An', 1, 9999, 'france, french')],
  },
  {
    words: ['AM', 'anno mundi'],
    means: [meaning('Mauludi', 1200, 1235), meaning('Hebrew', 3761, 5999), meaning('Byzantine', 6000, 7600)],
  },
  {
    words: ['BE'],
    means: [
      meaning('Bosporan', 1, 700),
      meaning('Chula Sakarat', 1000, 1400, 'burma, myanmar, arakan, mon'),
      meaning('Buddhist', 1000, 3000),
    ],
  },
  // Short signs that mean something else next to any other number: RS 10, MS 65.
  {
    words: ['ME'],
    means: [
      meaning('Kollam', 800, 1200, 'travancore, cochin, kerala, malabar, venad'),
      meaning('Chula Sakarat', 800, 1400, 'burma, myanmar, arakan, mon'),
    ],
  },
  { words: ['MS'], means: [meaning('Shahanshahi', 2530, 2540)] },
  { words: ['SH', 'AP'], means: [meaning('Solar Hijri', 1200, 1450)] },
  { words: ['CS'], means: [meaning('Chula Sakarat', 900, 1400)] },
  { words: ['RS'], means: [meaning('Rattanakosin', 90, 160)] },
  { words: ['EE'], means: [meaning('Ethiopian', 1800, 2100)] },
  { words: ['KE'], means: [meaning('Dangi', 4280, 4300)] },
  { words: ['Era'], means: [meaning('Spanish era', 900, 1450)] },
];

const SHARED_BY_WORD = new Map(SHARED.flatMap(({ words, means }) => words.map((word) => [foldedSign(word), means])));

/** The eras that a sign of several may stand for with a number; undefined for any other word. */
export function meaningsOf(word: string, number: number): readonly Meaning[] | undefined {
  return SHARED_BY_WORD.get(foldedSign(word))?.filter((one) => isNumberOf(one, number));
}

/** What a bare year may be that is far in the future as one of ours. */
const BARE: readonly Meaning[] = [
  meaning('VS', 1880, 2200, 'nepal'),
  meaning('Buddhist', 2400, 2700, SIAM),
  meaning('Shahanshahi', 2535, 2537, 'iran, persia'),
  meaning('Dangi', 4280, 4300, 'korea'),
  meaning('Hebrew', 5000, 6000, ISRAEL),
  meaning('Byzantine', 6400, 7300, RUSSIA),
];

export function meaningsOfBare(number: number): readonly Meaning[] {
  return BARE.filter((one) => isNumberOf(one, number));
}

function isNumberOf({ numbers: [first, last] }: Meaning, number: number): boolean {
  return first <= number && number <= last;
}

/** The only era that a sign stands for in a realm, if it is only one. */
export function meaningIn(realm: string | undefined, means: readonly Meaning[]): Meaning | undefined {
  const here = means.filter(({ realms }) => isRealmOf(realms, realm));
  return here.length === 1 ? here[0] : undefined;
}
