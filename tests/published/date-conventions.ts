/*
 * Dates with the conventions of lists, statutes, calendars and standards, and the years they come to, written down from
 * the sources named before any was tried. A row that asks names what must be offered instead.
 */
type Marks = '' | 'about' | 'doubtful' | 'about doubtful';
type Read = readonly [write: string, earliest: number | 'open' | null, latest: number | 'open' | null, marks?: Marks];

function by(source: string, rows: readonly Read[]) {
  return rows.map(([write, earliest, latest, marks = '']) => ({ write, earliest, latest, marks, source }));
}

// prettier-ignore
export const DATE_CONVENTIONS = [
  ...by('common practice: before or after the beginning, middle or end of a century, which are moments of it', [
    ['before the end of the 13th century', null, 1299, 'about'], ['vor Ende 13. Jh.', null, 1299, 'about'],
    ['avant la fin du XIIIe siècle', null, 1299, 'about'], ['after the beginning of the 13th century', 1202, null, 'about'],
    ['nach Anfang 13. Jh.', 1202, null, 'about'], ['before the middle of the 13th century', null, 1249, 'about'],
    ['not before the middle of the 12th century', 1150, null, 'about'], ['by the end of the 13th century', null, 1300, 'about'],
    ['before the end of the 3rd century BC', null, -201, 'about'], ['after the beginning of the 3rd century BC', -298, null, 'about'],
    ['before early 13th century', null, 1200], ['1699-700', 1699, 1700], ['1699/700', 1699, 1700], ['1795-805', 1795, 1805],
    ['AH 1255 year 15', 1852, 1853], ['AH 1277 yr 3', 1862, 1863], ['années 1640-50', 1640, 1659],
  ]),
  ...by('common practice: ranges in auction catalogues, the second year shortened', [
    ['1413-22', 1413, 1422], ['1399-1413', 1399, 1413], ['1422-61', 1422, 1461], ['1461-70', 1461, 1470],
    ['1327-77', 1327, 1377], ['1921-24', 1921, 1924], ['1821-24', 1821, 1824], ['1714-27', 1714, 1727],
    ['1603-25', 1603, 1625], ['1625-49', 1625, 1649], ['1816-20', 1816, 1820], ['1837-87', 1837, 1887],
    ['1413–22', 1413, 1422], ['1902–10', 1902, 1910], ['1604–05', 1604, 1605], ['1901–02', 1901, 1902],
    ['c. 1902-10', 1902, 1910, 'about'], ['circa 1604-05', 1604, 1605, 'about'], ['struck 1902-10', 1902, 1910],
    ['ND (1902-10)', 1902, 1910], ['n.d. (1604-05)', 1604, 1605], ['1604-5', 1604, 1605], ['1902-3', 1902, 1903],
    ['o.J. (1519/56)', 1519, 1556], ['o.J. 1519-1556', 1519, 1556], ['o. J. um 1520', 1520, 1520, 'about'],
    ['um 1500/10', 1500, 1510, 'about'], ['1455/60', 1455, 1460], ['1921/24', 1921, 1924], ['1618/48', 1618, 1648],
    ['AD 268/70', 268, 270], ['268/70 AD', 268, 270], ['n. Chr. 268/70', 268, 270], ['zw. 1400 und 1410', 1400, 1410],
    ['1413-22?', 1413, 1422, 'doubtful'], ['1902 to 1910', 1902, 1910], ['AD 1902-10', 1902, 1910],
  ]),
  ...by('ISO 8601-2 and the Library of Congress EDTF text (2019): whole days, intervals and marked months', [
    ['1985-04-12', 1985, 1985], ['2004-06/2006-08', 2004, 2006], ['2004-06~', 2004, 2004, 'about'],
    ['2004-06?', 2004, 2004, 'doubtful'], ['2004-06%', 2004, 2004, 'about doubtful'], ['1984-11-12/1985-02', 1984, 1985],
    ['edtf:1413-22', 1413, 1413], ['edtf:1902-10', 1902, 1902], ['edtf:2001-21', 2001, 2001], ['edtf:-1985', -1985, -1985],
    ['edtf:5708', 5708, 5708], ['edtf:1985-04/1985-06', 1985, 1985], ['edtf:156X-12-25', 1560, 1569],
    ['-0043', -43, -43], ['-0043/0014', -43, 14], ['0000', 0, 0], ['198X', 1980, 1989], ['../1985', 'open', 1985],
  ]),
  ...by('common practice: Greek years run from summer to summer and are printed with a stroke', [
    ['398/97 BC', -397, -396], ['398/7 BC', -397, -396], ['367/6 BC', -366, -365], ['134/3 BC', -133, -132],
    ['134/133 BC', -133, -132], ['400/399 BC', -399, -398], ['110/09 BC', -109, -108], ['101/0 BC', -100, -99],
    ['100/99 BC', -99, -98], ['10/9 BC', -9, -8], ['c. 367/6 BC', -366, -365, 'about'], ['398/97 v. Chr.', -397, -396],
    ['134/3 av. J.-C.', -133, -132], ['BC 398/97', -397, -396], ['300/275 BC', -299, -274],
  ]),
  ...by('common practice: ranges before Christ, the second year whole or shortened with a nought', [
    ['211-08 BC', -210, -207], ['211-208 BC', -210, -207], ['211–208 BC', -210, -207], ['480-400 BC', -479, -399],
    ['57-50 BC', -56, -49], ['105-98 BC', -104, -97], ['12-9 BC', -11, -8], ['100-99 BC', -99, -98],
    ['27 BC - 8 BC', -26, -7], ['from 43 to 2 BC', -42, -1], ['between 221 and 19 BC', -220, -18],
    ['221 BC - 19 BC', -220, -18], ['420-400', -419, -399], ['420-400?', -419, -399, 'doubtful'],
    ['625/600-522', -624, -521], ['625/600-522 BC', -624, -521], ['c. 420-400', -419, -399, 'about'],
  ]),
  ...by('Cheney, A Handbook of Dates, from memory: two years of the old style, and days in it', [
    ['1641/2', 1641, 1642], ['1699/1700', 1699, 1700], ['1699/700', 1699, 1700], ['1641/2 OS', 1642, 1642],
    ['1641/2 (old style)', 1642, 1642], ['30 January 1648/9', 1649, 1649], ['5 November 1605 OS', 1605, 1605],
    ['13 February 1688/9', 1689, 1689], ['24 March 1602/3', 1603, 1603], ['2 September 1752 OS', 1752, 1752],
  ]),
  ...by('Cheney, A Handbook of Dates, from memory: regnal years of England', [
    ['33 Hen. VIII', 1541, 1542], ['14 Eliz. I', 1571, 1572], ['RY 12 of Edward III', 1338, 1339],
    ['25 Edw. III', 1351, 1352], ['35 Edward I', 1306, 1307], ['7 Edw. I', 1278, 1279], ['1 & 2 Philip and Mary', 1554, 1555],
    ['1 & 2 Ph. & M.', 1554, 1555], ['4 & 5 Philip and Mary', 1557, 1558], ['12 Car. II', 1660, 1661], ['1 Jac. I', 1603, 1604],
    ['8 Anne', 1709, 1710], ['56 Geo. III', 1815, 1816], ['year 20 of Edward II', 1326, 1327], ['Edward III, year 25', 1351, 1352],
    ['18 Hen. VIII', 1526, 1527], ['10 Vict.', 1846, 1847],
  ]),
  ...by('Freeman-Grenville, The Muslim and Christian Calendars, from memory', [
    ['AH 596', 1199, 1200], ['AH 857', 1453, 1453], ['AH 1255', 1839, 1840], ['AH (12)55', 1839, 1840],
    ['1200 (AH 596)', 1199, 1200], ['1199/1200 (AH 596)', 1199, 1200], ['AH 596 (1199/1200)', 1199, 1200],
    ['1839/40 (AH 1255)', 1839, 1840], ['1839 = AH 1255', 1839, 1840], ['AH 1202, year 30', 1815, 1816],
    ['AH 1202//30 (1815/16)', 1815, 1816], ['AH 1202//30 (1787/88)', 1787, 1788], ['AH 1221 RY 46 (1806/7)', 1806, 1807],
    ['Rajab AH 1255', 1839, 1839], ['1 Muharram AH 1', 622, 622], ['29 Ramadan AH 1255', 1839, 1839],
  ]),
  ...by('decrees of the French Republic; 18 Brumaire, 9 Thermidor and the franc law by their days in ours', [
    ['An I', 1792, 1793], ['An II', 1793, 1794], ['An 4', 1795, 1796], ['An 5', 1796, 1797], ['L\'An 8', 1799, 1800],
    ['L\'An XII', 1803, 1804], ['An 13', 1804, 1805], ['An 14', 1805, 1805], ['an XIII (1804/05)', 1804, 1805],
    ['18 Brumaire an VIII', 1799, 1799], ['9 Thermidor an II', 1794, 1794], ['7 Germinal an XI', 1803, 1803],
    ['13 Vendémiaire an IV', 1795, 1795], ['28 Thermidor an III', 1795, 1795], ['An 12 de la République', 1803, 1804],
  ]),
  ...by('Grumel, La chronologie (1958), from memory: the year of the world begins on 1 September 5509 BC', [
    ['AM 7117', 1608, 1609], ['AM 7208', 1699, 1700], ['҂ЗСИ', 1699, 1700], ['ЗРНЗ', 1648, 1649], ['AM 6095', 586, 587],
    ['AM 6961', 1452, 1453], ['indiction 5 (586/7)', 586, 587], ['AM 6095, indiction 5', 586, 587], ['AD 587, indiction 5', 587, 587],
    ['indiction 1 (312/13)', 312, 313],
  ]),
  ...by('common practice: eras on coins of Asia and Africa, the years as books print them beside each', [
    ['BE 2505', 1962, 1962], ['Buddhist 2484', 1941, 1941], ['BE 2459', 1916, 1917], ['VS 1943', 1886, 1887], ['Saka 1738', 1816, 1817],
    ['SE 1738 (1816)', 1816, 1817], ['SE 182 (131/0 BC)', -130, -129], ['Seleucid 182', -130, -129], ['Nepal Samvat 802', 1681, 1682],
    ['CS 1214', 1852, 1853], ['RS 127', 1908, 1909], ['EE 1889', 1896, 1897], ['KE 4292', 1959, 1959],
    ['MS 2535', 1976, 1977], ['AM 1215', 1786, 1787], ['BE 588', 291, 292], ['Bosporan 500', 203, 204],
    ['Era 1222', 1184, 1184], ['SH 1354', 1975, 1976], ['SEB 182', -129, -128], ['AM 5708', 1947, 1948], ['14 Iyar 5708', 1948, 1948],
    ['Minguo 7', 1918, 1918], ['Year of Haiti 27', 1830, 1830],
  ]),
  ...by('common practice: reign titles of Japan, China, Korea and Vietnam', [
    ['慶應二年', 1866, 1866], ['慶応二年', 1866, 1866], ['寶永五年', 1708, 1708], ['元祿八年', 1695, 1695], ['萬延元年', 1860, 1860],
    ['寬永十三年', 1636, 1636], ['明治三年', 1870, 1870], ['Kan\'ei 13', 1636, 1636], ['Tempo 6', 1835, 1835], ['Guangxu 34', 1908, 1908],
    ['Kuang Hsu year 34', 1908, 1908], ['光緒二十九年', 1903, 1903], ['宣統三年', 1911, 1911], ['開國五百三年', 1894, 1894],
    ['光武 2', 1898, 1898], ['隆熙三年', 1909, 1909], ['Minh Mang 15', 1834, 1834], ['Kangde 7', 1940, 1940], ['乾隆元年', 1736, 1736],
  ]),
  ...by('AACR2, rule 1.4F7, from memory: probable, lost and missing figures of a date', [
    ['17--', 1700, 1799], ['[17--]', 1700, 1799], ['[18--?]', 1800, 1899, 'doubtful'], ['[197-]', 1970, 1979], ['[197-?]', 1970, 1979, 'doubtful'],
    ['[1971?]', 1971, 1971, 'doubtful'], ['[ca. 1960]', 1960, 1960, 'about'], ['[1971 or 1972]', 1971, 1972],
    ['[between 1906 and 1912]', 1906, 1912],
  ]),
  ...by('common practice: figures restored, left out or doubtful', [
    ['(15)91', 1591, 1591], ['[1]794', 1794, 1794], ['17[94]', 1794, 1794], ['(1)650', 1650, 1650], ['1279(?)', 1279, 1279, 'doubtful'],
    ['1279 (?)', 1279, 1279, 'doubtful'], ['18??', 1800, 1899], ['17..', 1700, 1799], ['[1279]', 1279, 1279], ['1279.0', 1279, 1279],
    ['1588 ± 5', 1583, 1593], ['AD 150 ± 20', 130, 170], ['150 BC ± 10', -159, -139], ['1588 +/- 5', 1583, 1593],
    ['?-1588', null, 1588], ['?–1588', null, 1588], ['? to 1588', null, 1588], ['1588-?', 1588, null], ['44 BC - ?', -43, null],
    ['1279 - c. 1281', 1279, 1281, 'about'], ['c. 1279 - c. 1281', 1279, 1281, 'about'], ['c. 1279 - 1281?', 1279, 1281, 'about doubtful'],
  ]),
  ...by('common practice: parts of years, decades and centuries', [
    ['early 1588', 1588, 1588], ['late AD 69', 69, 69], ['mid-1588', 1588, 1588], ['late 44 BC', -43, -43], ['Anfang 1588', 1588, 1588],
    ['fin 1588', 1588, 1588], ['début 1588', 1588, 1588], ['AD 260s', 260, 269], ['260s AD', 260, 269], ['BC 330s', -338, -329],
    ['18th century (late)', 1767, 1800], ['18th century (first half)', 1701, 1750], ['18th century, late', 1767, 1800],
    ['12. Jh. (2. Hälfte)', 1151, 1200], ['18. Jh., Anfang', 1701, 1734],
  ]),
  ...by('common practice: letters, days and undated pieces in lists of six languages', [
    ['AD MDLXXXVIII', 1588, 1588], ['A° MDCLV', 1655, 1655], ['anno MDLXXXVIII', 1588, 1588], ['A° 1655', 1655, 1655], ['Ao 1655', 1655, 1655],
    ['25.XII.1588', 1588, 1588], ['25. XII. 1588', 1588, 1588], ['25-XII-1588', 1588, 1588], ['25/12/1588', 1588, 1588],
    ['14.10.1066', 1066, 1066], ['31.12.1999', 1999, 1999], ['12/25/1588', 1588, 1588], ['1/1/1800', 1800, 1800],
    ['s/f', null, null], ['s.f.', null, null], ['S/D', null, null], ['s/f (1542-55)', 1542, 1555], ['o.J.', null, null],
    ['n/d', null, null], ['sin fecha', null, null], ['cca 1400', 1400, 1400, 'about'], ['aux environs de 1400', 1400, 1400, 'about'],
  ]),
].flat();

/** What has two readings or none, with what must be offered; an empty offer where only the piece can tell. */
// prettier-ignore
export const DATE_QUESTIONS: readonly (readonly [write: string, ...offered: string[]])[] = [
  // A hyphen and two figures: years to a collector, a month to ISO 8601.
  ['1902-10', '1902/1910', 'October 1902'], ['1604-05', '1604/1605', 'May 1604'], ['1889-01', '1889/1901', 'January 1889'],
  ['1985-04', '1985/2004', 'April 1985'], ['1924-21', 'spring 1924'], ['1901-12', '1901/1912', 'December 1901'],
  ['1801-05', '1801/1805', 'May 1801'], ['1281-79', '1279 - 1281'], ['1898-13', '1898/1913'], ['1600-00', '1600'],
  ['before 1902-10', 'October 1902'], ['perhaps 1902-10', '1902/1910'], ['1899–01', '1899/1901'], ['1899/00', '1899/1900'],
  ['1806/05', '1806'], ['1787/6', '1787'],
  // A shortened second year before Christ.
  ['221-19 BC', '221-219 BC', '221 BC - 19 BC'], ['280-75 BC', '280-275 BC', '280 BC - 75 BC'], ['43-2 BC', '43-42 BC', '43 BC - 2 BC'],
  ['221/19 BC', '221-219 BC', '221 BC - 19 BC'], ['190-89 BC', '190-189 BC', '190 BC - 89 BC'], ['336–23 BC', '336-323 BC', '336 BC - 23 BC'],
  ['310-12 BC', '310 BC - 12 BC'], ['BC 221-19', '221-219 BC', '221 BC - 19 BC'], ['221-19 v. Chr.', '221-219 BC', '221 BC - 19 BC'],
  // Falling to three figures: before Christ, and hardly nine hundred years.
  ['1000-900', '1000 BC - 900 BC', '1000 - 1900'], ['c. 1000-800', '1000 BC - 800 BC'], ['1100-900', '1100 BC - 900 BC'], ['1050/950', '1050 BC - 950 BC'],
  ['AD 1000-900', '1000 BC - 900 BC', '1000 - 1900'], ['1200-850', '1200 BC - 850 BC'],
  // Year by word: an Ottoman accession, or the one year that Mughal emperors counted both ways.
  ['AH 1097 year 30', 'AH 1126', 'AH 1097'], ['AH1215 yr 43', 'AH 1257', 'AH 1215'], ['AH 1115 Jahr 48', 'AH 1162', 'AH 1115'],
  ['AH 1218 year 46', 'AH 1263', 'AH 1218'], ['AH 1180 yr. 8', 'AH 1187', 'AH 1180'], ['AH 1255 year 99', 'AH 1255'],
  // Years of ten, joined.
  ['années 1640-1650', '1640-1650', '1640-1659'], ['jaren 1640 en 1650', '1640-1650', '1640-1659'],
  // Bare years below 1000, and negative ones.
  ['44', 'AD 44', '44 BC', 'AH 44'], ['193-211', 'AD 193-211', 'AH 193-211'], ['498 to 507', 'AD 498 to 507'], ['post 400', 'AD 400'],
  ['105-98', 'AD 105-98', '105-98 BC'], ['-57', '57 BC', '58 BC'], ['-57 to -38', '57 BC', '58 BC'], ['-530.0', '530 BC', '531 BC'],
  ['-1200', '1200 BC', '1201 BC'], ['-27-14', '27 BC', '28 BC'],
  // The year of accession and the year of reign.
  ['AH 1202//30', 'AH 1202, year 30', 'AH 1202'], ['AH 1114/46', 'AH 1114, year 46', 'AH 1114'], ['AH 1221 RY 46', 'AH 1221, year 46', 'AH 1221'],
  ['AH 1255//15', 'AH 1255, year 15', 'AH 1255'], ['1255//15', 'AH 1255, year 15', 'AH 1255'], ['AH 1293/4', 'AH 1293-1294', 'AH 1293, year 4'],
  ['1255/1839', 'AH 1255 (1839)'], ['1255-1839', 'AH 1255 (1839)'],
  // Signs of more than one era, and numbers without one.
  ['SE 1738', 'Seleucid 1738', 'Saka 1738'], ['SE 182', 'Seleucid 182', 'Saka 182'], ['Samvat 1943', 'VS 1943', 'Saka 1943'],
  ['5708', 'Hebrew 5708'], ['2505', 'Buddhist 2505'], ['7208', 'Byzantine 7208'], ['4292', 'Dangi 4292'], ['2074', 'VS 2074'],
  ['Republic year 7', 'Minguo 7', 'An 7'], ['year 7 of the Republic', 'Minguo 7', 'An 7'], ['AM 708', 'AM 5708'], ['١٢٥٥', 'AH 1255', 'AD 1255'],
  ['๒๕๐๕', 'Buddhist 2505'], ['An 27', 'Year of Haiti 27'], ['indiction 16'], ['AM 6096, indiction 5'], ['AH 294 (1906)'],
  // Names that may be the title of a coin, and two reigns of one name.
  ['Tenpo', '1830/1844', 'Tenpo 1'], ['寛永', '1624/1644', 'Kanei 1'], ['Qianlong', '1736/1795', 'Qianlong 1'], ['正德三年'], ['Meiji 46'], ['14 Eliz.'],
  // Days and lost figures.
  ['3/4/1649', '1649-04-03', '1649-03-04'], ['45/13/1649'], ['179-', '179X', 'from AD 179'], ['AH 29?', 'AH 29X'], ['31 Rabi I 294'],
  ['12 Vendémiaire an XV'],
];
