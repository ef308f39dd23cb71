/** Days that two calendars name differently, with a source for each pair. Years are astronomical. */
export const SAME_DAYS: readonly {
  readonly what: string;
  readonly julian: readonly [number, number, number];
  readonly gregorian: readonly [number, number, number];
  readonly source: string;
}[] = [
  {
    what: 'the day after which the Gregorian calendar began',
    julian: [1582, 10, 5],
    gregorian: [1582, 10, 15],
    source: 'Inter gravissimas (1582): 4 October was followed by 15 October',
  },
  {
    what: 'the first day of the Gregorian calendar in Great Britain',
    julian: [1752, 9, 3],
    gregorian: [1752, 9, 14],
    source: 'Calendar (New Style) Act 1750: 2 September was followed by 14 September',
  },
  {
    what: 'the execution of Charles I',
    julian: [1649, 1, 30],
    gregorian: [1649, 2, 9],
    source: 'dated 30 January 1648/9 in the warrant; C. R. Cheney, A Handbook of Dates',
  },
  {
    what: 'the birth of Newton',
    julian: [1642, 12, 25],
    gregorian: [1643, 1, 4],
    source: 'Royal Society, biographical record: 25 December 1642 (old style), 4 January 1643',
  },
  {
    what: 'the day after which Russia changed its calendar',
    julian: [1918, 2, 1],
    gregorian: [1918, 2, 14],
    source: 'Decree of the Sovnarkom, January 1918: 31 January was followed by 14 February',
  },
  {
    what: 'the taking of the Winter Palace',
    julian: [1917, 10, 25],
    gregorian: [1917, 11, 7],
    source: 'the October Revolution, kept on 7 November; from memory',
  },
  {
    what: '1 Muharram AH 1',
    julian: [622, 7, 16],
    gregorian: [622, 7, 19],
    source: 'Reingold and Dershowitz, Calendrical Calculations',
  },
];

/** Years of the sixty-year cycle that carry an event's name, so that no table is needed: common knowledge of Chinese history. */
export const CYCLICAL_YEARS: readonly {
  readonly pair: string;
  readonly characters: string;
  readonly year: number;
  readonly event: string;
}[] = [
  { pair: 'renchen', characters: '壬辰', year: 1592, event: 'the Imjin (renchen) war in Korea' },
  { pair: 'jiashen', characters: '甲申', year: 1644, event: 'the fall of the Ming, the change of jiashen' },
  { pair: 'xinyou', characters: '辛酉', year: 1861, event: 'the Xinyou coup' },
  { pair: 'jiashen', characters: '甲申', year: 1884, event: 'the Gapsin (jiashen) coup in Korea' },
  { pair: 'jiawu', characters: '甲午', year: 1894, event: 'the Jiawu war with Japan' },
  { pair: 'wuxu', characters: '戊戌', year: 1898, event: 'the Wuxu reform of a hundred days' },
  { pair: 'gengzi', characters: '庚子', year: 1900, event: 'the Gengzi indemnity for the events of 1900' },
  { pair: 'xinchou', characters: '辛丑', year: 1901, event: 'the Xinchou treaty' },
  { pair: 'xinhai', characters: '辛亥', year: 1911, event: 'the Xinhai revolution' },
];

/** Years of other eras and the years of ours that books give for them. */
export const ERA_YEARS: readonly {
  readonly write: string;
  readonly earliest: number;
  readonly latest: number;
  readonly source: string;
}[] = [
  {
    write: 'Seleucid 1',
    earliest: -311,
    latest: -310,
    source: 'Bickerman, Chronology of the Ancient World: autumn 312 BC',
  },
  { write: 'SEB 1', earliest: -310, latest: -309, source: 'Bickerman, Chronology of the Ancient World: spring 311 BC' },
  {
    write: 'Saka 1',
    earliest: 79,
    latest: 80,
    source: 'Indian Calendar Reform Committee, 1957: Saka 1879 began on 22 March 1957',
  },
  { write: 'Saka 1879', earliest: 1957, latest: 1958, source: 'Indian Calendar Reform Committee, 1957' },
  { write: 'Minguo 1', earliest: 1912, latest: 1912, source: 'proclamation of the Republic, 1 January 1912' },
  { write: '民國三年', earliest: 1914, latest: 1914, source: 'dollar of 1914, year 3; common practice' },
  { write: 'Meiji 1', earliest: 1868, latest: 1868, source: 'edict of 23 October 1868' },
  { write: 'Taisho 1', earliest: 1912, latest: 1912, source: 'accession, 30 July 1912' },
  { write: 'Showa 64', earliest: 1989, latest: 1989, source: 'the last yen coins of Showa, 1989; common practice' },
  { write: 'Heisei 31', earliest: 2019, latest: 2019, source: 'abdication, 30 April 2019' },
  {
    write: 'Wado 1',
    earliest: 708,
    latest: 708,
    source: 'the first Japanese coin, Wadō kaichin, 708; common practice',
  },
  {
    write: 'AM 5708',
    earliest: 1947,
    latest: 1948,
    source: 'first coins of Israel bear 5708 and 1948; common practice',
  },
  { write: 'AM 5709', earliest: 1948, latest: 1949, source: '25 mils of 5709, struck 1949; common practice' },
  {
    write: 'AH 857',
    earliest: 1453,
    latest: 1453,
    source: 'Freeman-Grenville, The Muslim and Christian Calendars: 12 January 1453 (Julian)',
  },
  { write: 'AH 1255', earliest: 1839, latest: 1840, source: 'accession of Abdülmecid, 1839; common practice' },
  { write: 'AH 1255, year 15', earliest: 1852, latest: 1853, source: 'AH 1269; common practice' },
  { write: 'AH 1327, year 4', earliest: 1911, latest: 1912, source: 'AH 1330; common practice' },
  { write: 'AH 77', earliest: 696, latest: 697, source: 'the reform dinar of Abd al-Malik, 696/7; common practice' },
];
