/*
 * Pairs and ranges that share figures or words, days beside a change of calendar, and words that are two things. What each
 * comes to was written down from the sources named before any was tried.
 */
type Read = readonly [write: string, earliest: number | null, latest: number | null];

function by(source: string, rows: readonly Read[]) {
  return rows.map(([write, earliest, latest]) => ({ write, earliest, latest, marks: '' as const, source }));
}

// prettier-ignore
export const DATE_PAIRS = [
  ...by('C. R. Cheney, Handbook of Dates (1945), regnal years from memory: ranges from one ruler to the next', [
    ['37 Hen. III - 1 Edw. I', 1252, 1273], ['12 Edw. III - 3 Ric. II', 1338, 1380], ['12 Car. I - 1 Car. II', 1636, 1650],
    ['1 Edw. IV - 49 Hen. VI', 1461, 1471], ['35 Edw. I - 2 Edw. II', 1306, 1309], ['22 Edw. IV - 1 Ric. III', 1482, 1484],
    ['20 Hen. VIII - 1 Edw. VI', 1528, 1548], ['44 Eliz. I - 1 Jac. I', 1601, 1604], ['56 Geo. III - 1 Geo. IV', 1815, 1821],
    ['18 Edw. III to 24 Edw. III', 1344, 1351], ['20 Edward I-1 Edward II', 1291, 1308], ['33-5 Edw. I', 1304, 1307],
    ['13 Hen. VII or 1 Hen. VIII', 1497, 1510], ['15 & 16 Geo. VI & 1 Eliz. II', 1950, 1953], ['RY 12 of Edward III - RY 3 of Richard II', 1338, 1380],
  ]),
  ...by('Cheney, as above: the sessions that statutes are cited by, in two years of one reign', [
    ['39 & 40 Geo. III', 1798, 1800], ['39 and 40 Geo. 3', 1798, 1800], ['5 & 6 Edw. VI', 1551, 1553], ['13 & 14 Car. II', 1661, 1663],
    ['12 & 13 Will. III', 1700, 1702], ['1 & 2 Will. & Mary', 1689, 1691], ['22 & 23 Vict.', 1858, 1860], ['56 & 57 Vict.', 1892, 1894],
    ['1 & 2 Geo. V', 1910, 1912], ['10 & 11 Geo. V', 1919, 1921],
    // Philip's year and Mary's ran together: 25 July 1554 to 5 July 1555.
    ['1 & 2 Philip and Mary', 1554, 1555], ['2 & 3 Ph. & M.', 1555, 1556],
  ]),
  ...by('common practice: Greek years in pairs at the ends of a range', [
    ['145-138/7 BC', -144, -136], ['145 BC - 38/7 BC', -144, -36], ['162/1-150 BC', -161, -149], ['162/1 BC - 50 BC', -161, -49],
    ['162/1-150/49 BC', -161, -148], ['222/1-205/4 BC', -221, -203], ['205/4-03/2 BC', -204, -201], ['99/8-80/79 BC', -98, -78],
    ['101/0-98/7 BC', -100, -96], ['112/11-111/0 BC', -111, -109], ['49/8-48/7 BC', -48, -46], ['119/8-80/79 BC', -118, -78], ['280/79-275 BC', -279, -274], ['220/19 to 200/199 BC', -219, -198],
  ]),
  ...by('AACR2, rule 1.4F7: a century or another', [
    ['17-- or 18--', 1700, 1899], ['[17-- or 18--]', 1700, 1899], ['17--/18--', 1700, 1899], ['17-- to 18--', 1700, 1899],
  ]),
  ...by('Inter gravissimas (1582): 4 October was followed by the 15th', [
    ['4-15 October 1582', 1582, 1582], ['1-20 October 1582', 1582, 1582], ['5-14 October 1582 OS', 1582, 1582],
    ['25 December 1799 - 6 January 1800', 1799, 1800],
  ]),
];

/** What has two readings, and what must be offered. */
// prettier-ignore
export const PAIR_QUESTIONS: readonly (readonly [write: string, ...offered: string[]])[] = [
  ['145-38/7 BC', '145-138/7 BC', '145 BC - 38/7 BC'], ['246-25/4 BC', '246-225/4 BC', '246 BC - 25/4 BC'],
  ['162/1-50 BC', '162/1-150 BC', '162/1 BC - 50 BC'], ['150/49-48/7 BC', '150/49-148/7 BC', '150/49 BC - 48/7 BC'],
  ['120/19-18 BC', '120/19-118 BC'], ['129/8-26/5 BC', '129/8-126/5 BC'], ['c. 145-38/7 BC', '145-138/7 BC'], ['BC 145-38/7', '145-138/7 BC'],
  ['145 - 38/7 v. Chr.', '145-138/7 BC'], ['c. 145-c. 38 BC', '145-138 BC', '145 BC - 38 BC'],
  // A ruler without a year beside one with it.
  ['12 Ed. II-Ed. III'], ['37 Hen. III - Edw. I'],
  // A month of a year, and a number.
  ['July 1902-03', 'July 1902 - July 1903', 'July 1902 or July 1903'], ['Jul. 1902-3', 'Jul. 1902 - Jul. 1903'], ['May 1604-05', 'May 1604'],
  ['Rajab 1255-56', 'Rajab 1255 - Rajab 1256'],
  // Letters that are a month or the sign of an era in one list and a word in the next.
  ['apr. 1588', 'April 1588', 'c. 1588', 'after 1588'], ['ap. 1300', 'AP 1300', 'after 1300'], ['ap 1300', 'AP 1300'], ['1300 ap.', 'AP 1300'], ['1300-1310 ap.'], ['sh 1300', 'SH 1300'],
  ['ms. 2535', 'MS 2535'], ['Rs. 100', 'RS 100'], ['be 1200', 'Chula Sakarat 1200', 'AD 1200'], ['me 1200', 'AD 1200'], ['A.C. 1655', '1655 BC', 'AD 1655'], ['300 AC', '300 BC', 'AD 300'],
  ['ME 1200', 'Kollam 1200', 'Chula Sakarat 1200'], ['M.E. 1000', 'Kollam 1000', 'Chula Sakarat 1000'],
  // A sultan's accession with a year of his reign, or two years of ours; the realm decides.
  ['1327/9', 'AH 1327, year 9', '1327 - 1329'], ['1327/8', 'AH 1327, year 8', '1327 - 1328'], ['1255/15', 'AH 1255, year 15'], ['1223/19', 'AH 1223, year 19'],
  ['1203/4', 'AH 1203, year 4', '1203 - 1204'], ['1293/33', 'AH 1293, year 33'],
  ['BE 1248', 'Chula Sakarat 1248', 'Buddhist 1248'],
  // Kings of more lands than one.
  ['George I, year 10', '10 George I'], ['Charles II, year 5', '5 Charles II'], ['year 3 of William I', '3 William I'],
  // Days that one calendar left out.
  ['10 October 1582'], ['5-15 October 1582'], ['5 October 1582'],
];
