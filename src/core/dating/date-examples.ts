/** One line of the grammar by example: what may be written, and how it is read. */
export interface DateExample {
  readonly write: string;
  /** The sentence for a visitor. */
  readonly means: string;
  /** What it comes to in EDTF. */
  readonly edtf: string;
}

export interface DateExampleGroup {
  readonly title: string;
  readonly note?: string;
  readonly rows: readonly DateExample[];
}

/** The grammar of dates as a table, in the order a keeper meets it. The regnal rows need Edward I among the rulers. */
export const DATE_EXAMPLES: readonly DateExampleGroup[] = [
  {
    title: 'Years',
    rows: [
      { write: '1279', means: 'the year 1279', edtf: '1279' },
      { write: 'AD 71', means: 'the year 71 of our era; below 1000 the era must be named', edtf: '0071' },
      { write: '44 BC', means: '44 BC, which is the year -43 where years are counted through', edtf: '-0043' },
      { write: '1641/2', means: 'both years', edtf: '1641/1642' },
      { write: '1641/2 OS', means: 'old style: 1 January to 24 March of what we call 1642', edtf: '1642' },
      { write: '398/97 BC', means: 'one Greek year: 398 or 397 BC', edtf: '-0397/-0396' },
      { write: 'early 1588', means: 'the year 1588, shown with its part', edtf: '1588' },
      { write: '[1]794', means: 'figures in brackets are restored: 1794; (15)91 likewise', edtf: '1794' },
      { write: '17--', means: 'two figures lost', edtf: '17XX' },
      { write: 'AD MDLXXXVIII', means: '1588', edtf: '1588' },
      { write: 'MDCCXLVII', means: 'Roman capitals as on the piece: 1747', edtf: '1747' },
      { write: 'A.D. 134-138', means: 'points in the sign of an era make no difference', edtf: '0134/0138' },
      { write: 'MCMX (1910)', means: 'letters and figures, if they agree', edtf: '1910' },
      { write: 'MDCCCCX', means: 'signs repeated as coins repeat them: 1910', edtf: '1910' },
      { write: '҂АѰГІ', means: 'Cyrillic numerals: 1713', edtf: '1713' },
      { write: 'CIƆIƆCCXLVIII', means: 'Roman capitals with the C turned round: 1748', edtf: '1748' },
      { write: '1840er Jahre', means: 'ten years; années 1840 likewise', edtf: '184X' },
      { write: '330s BC', means: '339 to 330 BC', edtf: '-0338/-0329' },
      { write: '1280s', means: 'the ten years from 1280 to 1289', edtf: '128X' },
    ],
  },
  {
    title: 'From one year to another',
    rows: [
      { write: '1279-81', means: 'some time from 1279 to 1281', edtf: '1279/1281' },
      { write: '1413-22', means: 'the same: 13 and more, above the last two figures, are a year', edtf: '1413/1422' },
      {
        write: 'c. 1902-10',
        means: 'after c., struck or n.d., or with a dash, 01 to 12 are a year too; 1902-10 alone asks',
        edtf: '1902~/1910~',
      },
      { write: '1921/24', means: 'from 1921 to 1924', edtf: '1921/1924' },
      {
        write: '211-08 BC',
        means: 'from 211 to 208 BC; 221-19 BC asks whether 219 or 19 is meant',
        edtf: '-0210/-0207',
      },
      { write: '420-400', means: 'years that run down are BC; 193-211 asks for its era', edtf: '-0419/-0399' },
      { write: '1588 ± 5', means: 'from 1583 to 1593', edtf: '1583/1593' },
      { write: '?-1588', means: 'until 1588, from when is not known', edtf: '/1588' },
      { write: '1279/1281', means: 'the same in EDTF; the whole year on both sides', edtf: '1279/1281' },
      { write: 'between 1279 and 1281', means: 'the same', edtf: '1279/1281' },
      { write: '27 BC - AD 14', means: 'from 27 BC to AD 14', edtf: '-0026/0014' },
      { write: '27 BC/AD 14', means: 'the same; an era without a year, as in 27 BC-AD, asks', edtf: '-0026/0014' },
      { write: 'struck 1279-81', means: 'the years it was struck in', edtf: '1279/1281' },
      { write: '57-50 BC', means: 'both years are BC', edtf: '-0056/-0049' },
      { write: 'before 1351', means: '1350 or earlier; how much earlier is not known', edtf: '/1350' },
      { write: 'ante 1351', means: 'the same', edtf: '/1350' },
      { write: 'after 1351', means: '1352 or later', edtf: '1352/' },
      { write: 'not before 1351', means: '1351 or later', edtf: '1351/' },
      { write: 'by 1351', means: '1351 or earlier', edtf: '/1351' },
      { write: '1351 or later', means: 'the same; or earlier likewise', edtf: '1351/' },
      { write: 'terminus post quem 1351', means: 'the same; tpq and taq likewise', edtf: '1351/' },
      { write: 'before 14 October 1066', means: '13 October 1066 or earlier', edtf: '/1066-10-13' },
      { write: '1985 onwards', means: 'from 1985, and it goes on', edtf: '1985/..' },
      { write: '1279 or 1280', means: 'one of the two', edtf: '[1279,1280]' },
      { write: '1279 and 1280', means: 'both of the two', edtf: '{1279,1280}' },
    ],
  },
  {
    title: 'About, perhaps and undated',
    note: 'About does not widen the years: how far it reaches is for the keeper to say, as a range.',
    rows: [
      { write: 'c. 1280', means: 'about 1280', edtf: '1280~' },
      { write: 'c. 1279-81', means: 'about 1279 to 1281', edtf: '1279~/1281~' },
      { write: 'um 1280', means: 'about 1280', edtf: '1280~' },
      { write: 'vers 1280', means: 'about 1280', edtf: '1280~' },
      { write: 'omstreeks 1280', means: 'about 1280; intorno al, hacia, około likewise', edtf: '1280~' },
      { write: '1280?', means: 'perhaps 1280', edtf: '1280?' },
      { write: 'probably c. 1280', means: 'perhaps about 1280', edtf: '1280%' },
      { write: 'n.d.', means: 'undated, and nothing known of when', edtf: '/' },
      { write: 'n.d. (1489-95)', means: 'no date on the piece; made from 1489 to 1495', edtf: '1489/1495' },
      { write: 's.d.', means: 'undated; o. J., sans date and s. a. likewise', edtf: '/' },
    ],
  },
  {
    title: 'Centuries',
    note: 'The 12th century runs from 1101 to 1200. Early, mid and late are its thirds, rounded outwards as PeriodO rounds them.',
    rows: [
      { write: '12th century', means: '1101 to 1200', edtf: '1101/1200' },
      { write: 'early 12th century', means: 'its first third', edtf: '1101/1134' },
      { write: 'mid-12th century', means: 'its second third', edtf: '1134/1167' },
      { write: 'late 12th century', means: 'its last third', edtf: '1167/1200' },
      { write: 'first third of the 12th century', means: 'the same as early', edtf: '1101/1134' },
      { write: 'first half of the 12th century', means: '1101 to 1150', edtf: '1101/1150' },
      { write: 'third quarter of the 12th century', means: '1151 to 1175', edtf: '1151/1175' },
      { write: '1st c. BC', means: '100 BC to 1 BC', edtf: '-0099/0000' },
      { write: '12th-13th century', means: '1101 to 1300', edtf: '1101/1300' },
      { write: '12. Jh.', means: '12th century', edtf: '1101/1200' },
      { write: '2. Hälfte 12. Jh.', means: 'second half of the 12th century', edtf: '1151/1200' },
      { write: 'fin du XIIe siècle', means: 'late 12th century', edtf: '1167/1200' },
      { write: 'eind 13e eeuw', means: 'late 13th century; begin and midden likewise', edtf: '1267/1300' },
      { write: 'prima metà del sec. XIII', means: 'first half of the 13th century', edtf: '1201/1250' },
      { write: 'mediados del siglo XIII', means: 'mid-13th century', edtf: '1234/1267' },
      {
        write: '1. halvdel af 1500-tallet',
        means: 'the years that begin with 15, their first half',
        edtf: '1500/1549',
      },
      { write: 'prima metà del Trecento', means: 'the years that begin with 13, likewise', edtf: '1300/1349' },
      {
        write: 'I poł. XVI w.',
        means: 'first half of the 16th century; połowa XVI w. is its middle',
        edtf: '1501/1550',
      },
      { write: 's. XIII', means: '13th century', edtf: '1201/1300' },
      { write: 's. XIII ex.', means: 'late 13th century; in. and med. likewise', edtf: '1267/1300' },
      { write: 's. XIII 2/4', means: 'second quarter of the 13th century', edtf: '1226/1250' },
    ],
  },
  {
    title: 'Days, months and seasons',
    note: 'Before 15 October 1582 a day is Julian, from then on Gregorian, unless it says old style (OS).',
    rows: [
      { write: '14 October 1066', means: 'a Julian day', edtf: '1066-10-14' },
      { write: '30 January 1648/9', means: 'old style: 9 February 1649 new style', edtf: '1649-02-09' },
      { write: '5/15 November 1605', means: 'one day in both styles, if they agree', edtf: '1605-11-15' },
      { write: '5 November 1605 OS', means: 'old style: 15 November 1605 new style', edtf: '1605-11-15' },
      { write: 'March 1649', means: 'the month', edtf: '1649-03' },
      { write: 'spring 1985', means: 'the season; its days are left open', edtf: '1985-21' },
      { write: '20 November 1278 - 19 November 1279', means: 'from day to day', edtf: '1278-11-20/1279-11-19' },
    ],
  },
  {
    title: 'Other eras',
    note: 'Hijri years are those of the tabular civil calendar, which may differ from the moon by a day or two.',
    rows: [
      { write: 'AH 294', means: '22 October 906 to 11 October 907, Julian', edtf: '0906/0907' },
      { write: 'AH 29X', means: 'a figure lost: AH 290 to 299', edtf: '0902/0912' },
      { write: 'AH 294 (906/7)', means: 'both years, if they agree', edtf: '0906/0907' },
      { write: 'AH 294/906-7', means: 'the same', edtf: '0906/0907' },
      { write: '1200 (AH 596)', means: 'the same, ours first', edtf: '1199/1200' },
      { write: '12 Rabi I 294', means: 'a day of the Hijra: 31 December 906', edtf: '0906-12-31' },
      {
        write: 'AH 1255, year 15',
        means:
          'year of accession and year of reign: struck in AH 1269; AH 1255//15 goes by the realm of the ruler, or asks',
        edtf: '1852/1853',
      },
      {
        write: 'Seleucid 182',
        means: 'as the court counted: autumn 131 to autumn 130 BC; SE 182 alone may be Saka too and asks',
        edtf: '-0130/-0129',
      },
      { write: 'SE 1738 (1816)', means: 'the year of ours settles which era it is: Saka', edtf: '1816/1817' },
      {
        write: 'SEB 182',
        means: 'Seleucid, as Babylon counted: spring 130 to spring 129 BC',
        edtf: '-0129/-0128',
      },
      {
        write: 'AM 7117',
        means: 'year of the world, Byzantium and Russia: September 1608 to August 1609',
        edtf: '1608/1609',
      },
      { write: '҂ЗСИ', means: 'the same in Cyrillic letters: 7208', edtf: '1699/1700' },
      { write: 'An XIII', means: 'French Republic: 23 September 1804 to 22 September 1805', edtf: '1804/1805' },
      { write: '18 Brumaire an VIII', means: 'a day of it', edtf: '1799-11-09' },
      { write: 'BE 2505', means: 'Buddhist era, as Siam counts', edtf: '1962' },
      {
        write: 'indiction 5 (586/7)',
        means: 'the year of the cycle of fifteen that was 586/7; indiction 5 alone is one of many',
        edtf: '0586/0587',
      },
      {
        write: 'Ol. 95, 2',
        means: 'second year of the 95th Olympiad: summer 399 to summer 398 BC',
        edtf: '-0398/-0397',
      },
      { write: 'AM 5708', means: 'Hebrew: 15 September 1947 to 3 October 1948', edtf: '1947/1948' },
      { write: 'תש״ח', means: 'the same in letters, the thousands left out', edtf: '1947/1948' },
      { write: 'Saka 1894', means: 'spring 1972 to spring 1973', edtf: '1972/1973' },
      {
        write: 'VS 1943',
        means: 'Vikrama: 1886 to 1887; samvat alone asks whether Vikrama or Saka',
        edtf: '1886/1887',
      },
      { write: 'SH 1354', means: 'solar Hijri of Iran: March 1975 to March 1976', edtf: '1975/1976' },
      { write: 'Meiji 3', means: 'Japanese era: 1870', edtf: '1870' },
      { write: '明治三年', means: 'the same in characters', edtf: '1870' },
      { write: '民國三年', means: 'third year of the Chinese Republic: 1914', edtf: '1914' },
      { write: 'Minguo 3', means: 'the same', edtf: '1914' },
      {
        write: 'wuxu (1898)',
        means: 'the cyclical year wuxu that was 1898; wuxu alone is one of many years',
        edtf: '1898',
      },
      { write: 'Edward I, year 7', means: 'regnal: 20 November 1278 to 19 November 1279', edtf: '1278/1279' },
      { write: '7 Edward I', means: 'the same', edtf: '1278/1279' },
      { write: '33 Hen. VIII', means: 'English regnal years are known of themselves', edtf: '1541/1542' },
      { write: '1 & 2 Philip and Mary', means: 'his year and hers: 25 July 1554 to 5 July 1555', edtf: '1554/1555' },
      {
        write: '慶應二年',
        means: 'old characters: 1866; Tenpo alone may be the title of a coin and asks',
        edtf: '1866',
      },
      { write: 'Guangxu 34', means: 'a Chinese reign: 1908', edtf: '1908' },
      { write: 'Edward I (1279-81)', means: 'years that must lie in a reign of that name', edtf: '1279/1281' },
      { write: 'reign of Edward I', means: '1272 to 1307', edtf: '1272/1307' },
    ],
  },
  {
    title: 'Three dates of one piece',
    note: 'The field “date” is for when it was made. What stands on it goes into the field “dated”, letter by letter; what was done to it later into the field “altered”, with its own date. A date that dies kept from earlier years is no date of making.',
    rows: [
      { write: '1936/1961', means: 'a taler made in London in those years, beside dated: "1780"', edtf: '1936/1961' },
      { write: 'AH 1327, year 4', means: 'made in AH 1330, beside dated: "١٣٢٧, ٤"', edtf: '1911/1912' },
      { write: '1810~', means: 'about when a coin of 1797 was engraved, under altered:', edtf: '1810~' },
    ],
  },
  {
    title: 'EDTF',
    note: 'The Extended Date/Time Format of the Library of Congress (2019; ISO 8601-2): levels 0 and 1, sets, X and S.',
    rows: [
      { write: '-0043', means: '44 BC: the year 0000 is 1 BC', edtf: '-0043' },
      {
        write: 'edtf:1985-04',
        means: 'strict EDTF: April 1985; in a date of an event 1985-04 will do',
        edtf: '1985-04',
      },
      { write: '1280~/1290?', means: 'about 1280 to perhaps 1290', edtf: '1280~/1290?' },
      { write: '198X', means: 'a year of the 1980s', edtf: '198X' },
      { write: '1279/..', means: 'from 1279 with no end', edtf: '1279/..' },
      { write: '1279/', means: 'from 1279 to an end that is not known', edtf: '1279/' },
      { write: '[1667,1670..1672]', means: 'one of these years', edtf: '[1667,1670..1672]' },
      { write: '1950S2', means: 'about 1950, of which two figures count: 1900 to 1999', edtf: '1950S2' },
    ],
  },
];
