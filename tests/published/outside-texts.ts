/*
 * Texts of three kinds of outside source that had not been used before: open data of museums, finds reports, and printed books and
 * catalogues of coins. The two open data sets were drawn by rule, every sixth and every fourth distinct shape of date (figures made
 * equal); the others are from pages that a search gave, copied by hand in the order of each page and not complete, a few with their
 * clause cut short.
 * What a specialist takes each for was written beside it before any was tried. `allowed`: readings, joined by ` or `; `asks` where
 * a question or a refusal is right. None may be read as anything else.
 *
 * The first run, of 346: 168 read as they should be; 145 asked or refused where that is right (74 with what to paste, 71 without; 62 of
 * them could have been read); 29 refused without need; 4 wrong in silence (`R.I.C. 233` and `R.I.C. 38` as a book of their own,
 * `Nr.` kept in the number of a sylloge, `g 1.075` as a gram). Afterwards six expectations were set to rules that stood already:
 * years of three figures without an era ask (three dynasties), so does `C. 147`, and a sylloge's collection is part of the number.
 */
export interface OutsideText {
  readonly write: string;
  readonly allowed: readonly string[];
  readonly source: string;
}

function from(source: string, rows: readonly (readonly [write: string, allowed: string])[]): readonly OutsideText[] {
  return rows.map(([write, allowed]) => ({ write, allowed: allowed.split(' or '), source }));
}

const CARNEGIE = 'Carnegie Museum of Art, open data of its collection, 2017 (CC0)';
const TATE = 'Tate, open data of its collection, 2014 (CC0)';
const FINDS = 'finds records of the Portable Antiquities Scheme and its hoard reports (CC BY)';
const TREASURE = 'Treasure Annual Report 2005/6, pp. 98 to 112';
const BERLIN = 'Münzkabinett, Staatliche Museen zu Berlin, online catalogue (texts CC BY-SA 4.0)';
const AOSTA = 'the report on coins from piazza Roncas and via Carabel, Aosta';
const ITALIAN = 'Italian articles and letters on coins and an encyclopaedia';
const SPANISH = 'records of the Spanish and Chilean national museums';
const FRENCH = 'a French museum record and an encyclopaedia';
const PRINTED =
  'printed books: Evans on a hoard, Assays of Foreign Coins (1827), the American Journal of Numismatics, a sale of 1884';

/** First and last year, counted astronomically: `?` not known, `..` open. */
export const OUTSIDE_YEARS: readonly OutsideText[] = [
  ...from(CARNEGIE, [
    ['1996-1997', '1996/1997'],
    ['not dated', '?/?'],
    ['Qianlong period (1736-1795)', '1736/1795'],
    ['Northern Wei Dynasty, 386-534', 'asks or 386/534'],
    ['12/25/1917', '1917/1917'],
    ['Edo period (1603-1867), 19th century', 'asks or 1801/1867 or 1801/1900'],
    ['January 1926-June 1927', '1926/1927'],
    ['May 1953', '1953/1953'],
    ['c. 1650/after 1661', 'asks'],
    ['c. 1920s-1930s', '1920/1939'],
    ['1936, printed 1970s', 'asks'],
    ['19th-early 20th century', '1801/1934'],
    ['c. 1761 - early 1770s', 'asks or 1761/1773 or 1761/1774'],
    ['c. 50-320', 'asks or 50/320'],
    ['Shang Period (c. 1600-1045 BCE), c. 1100 BCE', 'asks or -1099/-1099'],
    ['607', 'asks or 607/607'],
    ['c, 2002', 'asks or 2002/2002'],
    ['designed 1932, manufactured c. 1978', 'asks'],
    ['Tang Dynasty, 618-907', 'asks or 618/907'],
    ['no earlier than 1906', '1906/?'],
    ['April 2, 1778', '1778/1778'],
    ['August 1, 1799', '1799/1799'],
    ['1975, printed1985', 'asks'],
    ['March 1, 1793', '1793/1793'],
    ['late Qing?', 'asks'],
    ['1879 and 1887', 'asks or 1879/1887'],
    ['April 1860 or 1886', 'asks or 1860/1886'],
    ['Northern and Southern Dynasties, 420-589', 'asks or 420/589'],
    ['1995 (February)', 'asks or 1995/1995'],
    ['c. 1941-1945, printed c. 2000', 'asks'],
    ['December 1, 1792', '1792/1792'],
    ['c. 1885?', '1885/1885'],
    ['June 1941, printed 1982-83', 'asks'],
    ['March 27-29, 1956', '1956/1956'],
    ['26th Dynasty, 664 BCE-525 BCE', '-663/-524'],
    ['1921 or 1924', '1921/1924'],
    ['2nd-5th century', 'asks or 101/500'],
    ['c. 1944, printed c. 2000', 'asks'],
    ['1934 (designed) 1941 (manufactured)', 'asks'],
    ['1983 (manufactured c. 1995)', 'asks'],
    ['1937, produced 1952', 'asks'],
    ["Project:  1902-1907' Drawn November 20, 1904", 'asks'],
    ['mid to late 18th century', '1734/1800'],
    ['February - March 1962', '1962/1962'],
    ['1974, published 1975', 'asks'],
    ['Edo period (1603-1867), c. 1750', 'asks or 1750/1750'],
    ['1602-1605, published after 1635', 'asks'],
    ['1830–1860', '1830/1860'],
    ['1930, cast 1955', 'asks'],
    ['Before 1931', '?/1930'],
    ['1656-c.1680', '1656/1680'],
    ['1968, printed before 1976', 'asks'],
    ['November 1, 1793', '1793/1793'],
    ['early-mid 20th century', '1901/1967'],
    ['Edo period (1603-1867), 18th-19th century', 'asks or 1701/1867 or 1701/1900'],
    ['9 BCE-8 BCE', '-8/-7'],
    ['June 7-9, 1960', '1960/1960'],
    ['July - August 1966', '1966/1966'],
    ['3rd-6th century', 'asks or 201/600'],
    ['1-199  CE', '1/199'],
  ]),
  ...from(TATE, [
    ['1826–7, reprinted 1892', 'asks'],
    ['1794, reprinted 1831 or later', 'asks'],
    ['?c.1779–80', '1779/1780'],
    ['c.1821, printed 1830', 'asks'],
    ['published 1881', 'asks or 1881/1881'],
    ['1990–2005', '1990/2005'],
    ['1976 –7', '1976/1977'],
    ['c.1797–1801', '1797/1801'],
    ['?c.1799–1801', '1799/1801'],
    ['c.1808, 1825', 'asks'],
    ['?c\\.1826–8', 'asks or 1826/1828'],
    ['?1820s', '1820/1829'],
    ['c.1833 or 1840', 'asks or 1833/1840'],
    ['printed 1799–1800, annotated 1826', 'asks'],
    ['engraved 1777', 'asks or 1777/1777'],
    ['?1830–1, exhibited 1831', 'asks or 1830/1831'],
    ['1839, ?exhibited 1840', 'asks or 1839/1839'],
    ['c.1800–10, reworked and exhibited 1847', 'asks'],
    ['1827–?36, exhibited 1837', 'asks or 1827/1836'],
    ['before 1877', '?/1876'],
    ['1891, cast 1925', 'asks'],
    ['1930–8, cast 1937–8', 'asks'],
    ['1943, cast 1944–5', 'asks'],
    ['c.1900, posthumous cast', 'asks'],
    ['c.1880–1, cast 1950', 'asks'],
    ['1972, published 1983', 'asks'],
    ['1983–6, printed 2002', 'asks'],
    ['c.1960–9, printed later', 'asks'],
    ['1932, printed c.1950–70', 'asks'],
    ['1978; printed 2009', 'asks'],
    ['1953, c.1954', 'asks'],
    ['1976–7, enlarged version 2007', 'asks'],
    ['c. 1933–4', '1933/1934'],
    ['c.1909–10, cast 1955–6', 'asks'],
    ['1928, cast 1950s', 'asks'],
    ['1950–1965, cast c.1965–6', 'asks'],
    ['1914, cast c.1964', 'asks'],
    ['c.1780–5, ?c.1780', 'asks'],
    ['c.1785, reprinted 1971', 'asks'],
    ['1936, replica 1968', 'asks'],
    ['1951–2, reworked 1957', 'asks'],
    ['c.1936, cast 1960s', 'asks'],
    ['1926–8, reconstructed 1958', 'asks'],
    ['1982, 1985–6', 'asks or 1982/1986'],
    ['published c.1820–3', 'asks or 1820/1823'],
    ['1776–c.1790', '1776/1790'],
    ['first published 1830, reprinted 1993', 'asks'],
    ['late 1960s–early 1970s', 'asks or 1966/1973 or 1966/1974 or 1967/1973 or 1967/1974'],
    ['1972–6, assembled 1978', 'asks'],
    ['?mid 1830s or later', 'asks or 1833/? or 1834/?'],
  ]),
  ...from(FINDS, [
    ['109 or 108 BC', '-108/-107'],
    ['79 BC', '-78/-78'],
    ['41 BC', '-40/-40'],
    ['AD 69-79', '69/79'],
    ['AD 76', '76/76'],
    ['the AD 250s', '250/259'],
    ['AD 283', '283/283'],
    ['AD 253-60', '253/260'],
    ['AD 268-70', '268/270'],
    ['AD 270-5', '270/275'],
    ['AD 282-3', '282/283'],
    ['(AD 269-71)', '269/271'],
    ['1st - 2nd century AD', '1/200'],
    ['c. 180 ish AD', 'asks or 180/180'],
    ['TR P XVIII (AD 154-5)', 'asks or 154/155'],
    ['Exactly AD 1250', 'asks or 1250/1250'],
    ['(AD 1247-1279)', '1247/1279'],
    ['Circa AD 1601', '1601/1601'],
    ['(AD1558-1603)', '1558/1603'],
    ['Sunday 23rd October 2016', '2016/2016'],
    ['Thursday 12th December 2019', '2019/2019'],
    ['Sunday 1st March 2020', '2020/2020'],
    ['r.1461-70 and 1471-83', 'asks'],
    ['1476-80', '1476/1480'],
    ['c.AD 350-355', '350/355'],
    ['11-3-2022', 'asks'],
    ['2-2-2022', '2022/2022'],
    ['23 August 2019', '2019/2019'],
  ]),
  ...from(TREASURE, [
    ['1465–1466', '1465/1466'],
    ['1460s?', '1460/1469'],
    ['AD 299', '299/299'],
    ['Late 3rd or 4th century AD', '267/400'],
    ['(AD 284–305)', '284/305'],
    ['c. 1696', '1696/1696'],
    ['17th century', '1601/1700'],
    ['the early 1640s', 'asks or 1640/1643 or 1640/1644'],
    ['(1611–1615), dated 1612', 'asks or 1612/1612'],
    ['(AD 41–54)', '41/54'],
    ['(AD 98–117)', '98/117'],
  ]),
  ...from(BERLIN, [
    ['ca. 386/385-348/347 v. Chr.', '-385/-346'],
    ['357-323/320 v. Chr.', 'asks or -356/-319'],
    ['ca. 450-425 v. Chr.', '-449/-424'],
    ['ca. 478-450 v. Chr.', '-477/-449'],
    ['ca. 473/470-449/448 v. Chr.', '-472/-447'],
    ['ca. 510/478-470/460 v. Chr.', 'asks or -509/-459'],
    ['5. Jh. v. Chr.', '-499/-400'],
    ['309 n. Chr.', '309/309'],
    ['Mitte bis Ende 309 n. Chr.', 'asks or 309/309'],
    ['ca. 300 n. Chr.', '300/300'],
    ['um 406/405 v. Chr.', '-405/-404'],
    ['(vor 1700)', '?/1699'],
    ['mindestens seit 1912', 'asks or 1912/..'],
    ['12.-15.9.2001', 'asks or 2001/2001'],
    ['Januar 1851', '1851/1851'],
    ['103/4-111 n.Chr.', 'asks or 103/111'],
    ['103--111 n.Chr.', 'asks or 103/111'],
  ]),
  ...from(AOSTA, [
    ['42-27 a.C.', '-41/-26'],
    ['42-36 a.C.', '-41/-35'],
    ['27 a.C. - 14 d.C.', '-26/14'],
    ['9-14 d.C.', '9/14'],
    ['nell’85-96 d.C.', 'asks or 85/96'],
    ['nell’81-96 d.C.', 'asks or 81/96'],
  ]),
  ...from(ITALIAN, [
    ['tra circa il 275 a.C. e la seconda guerra punica', 'asks'],
    ['145 d. C.', '145/145'],
    ['IV secolo a.C.', '-399/-300'],
    ['III secolo aC', 'asks or -299/-200'],
    ['nel 269 aC', 'asks or -268/-268'],
  ]),
  ...from(SPANISH, [
    ['1900 (Inicios s. XX)', 'asks or 1900/1900'],
    ['1556/1598', 'asks or 1556/1598'],
    ['hacia el siglo VII a.C.', '-699/-600'],
    ['siglo XVIII', '1701/1800'],
  ]),
  ...from(FRENCH, [
    ["Entre L'an 289 et L'an 290", 'asks or 289/290'],
    ['fin du IIIe siècle av. J.‑C.', '-233/-200 or -232/-200'],
    ['105 après J.-C.', '105/105'],
    ['IIIe siècle av. J.‑C.', '-299/-200'],
  ]),
  ...from(PRINTED, [
    ['about A.D. 60', '60/60'],
    ['so late as A.D. 230', 'asks'],
    ['January 17, 1827', '1827/1827'],
    ['the 10th of May last', 'asks'],
    ['December 27, 1826', '1826/1826'],
    ['before 1786', '?/1785'],
    ['Friday, 21 April, 1865', '1865/1865'],
    ['the first half of 1865', '1865/1865'],
    ['1829-30', '1829/1830'],
    ['1792 to 1870', '1792/1870'],
    ['8th century B. C.', '-799/-700'],
    ['the evening of the 16th', 'asks'],
  ]),
];

/** Key, volume, number, then `p` page, `pl` plate, the relation and `?`; ` + ` between books. `nr: x` is one reference of that number. */
export const OUTSIDE_REFERENCES: readonly OutsideText[] = [
  ...from(FINDS, [
    ['RRC 302/1', 'rrc 302/1'],
    ['RRC 382/1b', 'rrc 382/1b'],
    ['RRC 517/2', 'rrc 517/2'],
    ['RIC 849, BMC 276', 'ric 849 + bmc 276'],
    ['RIC 29, BMC 26', 'ric 29 + bmc 26'],
    ['(North 993)', 'north 993'],
    ['Long cross class 5c (N 993)', 'asks or n 993'],
    ['(North 1997)', 'north 1997'],
    ['(N 2015)', 'n 2015'],
    ['(N 1987, 1999, 2016, 2037)', 'asks or n 1987 + n 1999 + n 2016 + n 2037'],
  ]),
  ...from(TREASURE, [['Treasure Annual Report 2004, no. 428', 'asks or nr: 428']]),
  ...from(AOSTA, [
    ['Cohen 7', 'cohen 7'],
    ['R.I.C. 233', 'ric 233'],
    ['R.I.C. 38', 'ric 38'],
    ['R.I.C. - Cohen -', 'asks or ric unlisted + cohen unlisted'],
  ]),
  ...from(ITALIAN, [
    ['RIC III 155, BMC IV 571', 'ric III 155 + bmc IV 571'],
    ['C/II 491', 'asks or c II 491'],
    ['B. 11; Cr. 468/1', 'b 11 + cr 468/1'],
    ['C. 147; RIC 330', 'asks or c 147 + ric 330'],
  ]),
  ...from(BERLIN, [
    ['Beschreibung (1888) 179 Nr. 36 (dieses Stück, 11,15 g)', 'asks or nr: 36'],
    ['Friedländer - von Sallet Nr. 300 (dieses Stück, 10,62 g)', 'asks or nr: 300'],
    ['Beschreibung (1888) 254 Nr. 47 (dieses Stück, Rs.-Symbol als Austermuschel? gedeutet)', 'asks or nr: 47'],
    ['E. Schönert-Geiss, Die Münzprägung von Maroneia (1987) 40. 158 Nr. 454,3', 'asks or nr: 454,3'],
    ['AMNG II-1 55 Nr. 46,1 (dieses Stück, ca. 478-450 v. Chr.)', 'asks or amng II-1 46,1 p55 this coin'],
    ['J. M. F. May, The Coinage of Abdera (540-345 B.C.) (1966) 135 Nr. 168 a Taf. 11', 'asks or nr: 168a'],
    ['SNG ANS VII-1 Nr. 63', 'sng ANS VII-1 63'],
    ['Beschreibung (1889) 104 Nr. 2 (dieses Stück, Olynthus zugeordnet)', 'asks or nr: 2'],
    ['SNG Kopenhagen Nr. 31-40', 'sng Kopenhagen 31-Kopenhagen 40'],
    ['RIC VI S. 403 Nr. 16', 'ric VI 16 p403'],
    ['RIC VI Nr. 20 b (ca. 300 n. Chr.)', 'asks or nr: 20b'],
    ['RIC VI Ticinum: 020b', 'asks or ric VI Ticinum 020b or ric VI Ticinum: 020b'],
    ['RIC II Traian 529', 'ric II Traian 529'],
    ['NMA I: 0324', 'asks or nma I 0324'],
    ['Dannenberg: 0648d', 'dannenberg 0648d'],
    ['DMG: 428', 'dmg 428'],
    [
      'B. Kluge, Deutsche Münzgeschichte von der späten Karolingerzeit bis zum Ende der Salier (1991) Nr. 428.',
      'asks or nr: 428',
    ],
    ['B. Kluge, Numismatik des Mittelalters (2007) Nr. 324.', 'asks or nr: 324'],
    [
      'H. Dannenberg, Die deutschen Münzen der sächsischen und fränkischen Kaiserzeit I (1876) Nr. 648 d.',
      'asks or nr: 648d',
    ],
    ['O. Hoover, The Handbook of Greek Coinage Series III-1 (2016) 219 Nr. 596', 'asks or nr: 596'],
    ['M. J. Price – N. Waggoner, Archaic Greek coinage. The Asyut hoard (1975) 45 Nr. 212', 'asks or nr: 212'],
    ['Vgl. RIC VI S. 94.', 'asks or ric VI p94 cf.'],
    ['Numismatische Zeitschrift 1872, 210 Nr. 5 (dieses Stück)', 'asks or nr: 5'],
    ['Beschreibung (1888) 257 Nr. 80 (dieses Stück, gedeutet als Stierkopf)', 'asks or nr: 80'],
    ['Vgl. C. M. Kraay, Archaic and classical Greek coins (1976) 69 f.', 'asks'],
    ['K. Chryssanthaki-Nagle, L’Histoire monétaire d’Abdère en Thrace (2007) 111-117', 'asks'],
    ['ANS Numismatic Notes and Monographs 40 (1929) 144 Nr. 138 a (dieses Stück)', 'asks or nr: 138a'],
    ['ZfN 3, 1876, 285 Nr. 29 (dieses Stück erwähnt, 10,62 g)', 'asks or nr: 29'],
    ['H. Gaebler, Zur Münzkunde Makedoniens VI, ZfN 35, 1925, 198', 'asks'],
  ]),
  ...from(SPANISH, [['Calicó, 1994, tipo 17, nº 45.', 'asks or nr: 45']]),
  ...from(PRINTED, [
    ['(Marvin CCCXCI.)', 'marvin CCCXCI'],
    ['(Marvin CCCXCII.)', 'marvin CCCXCII'],
    ['(Marvin CCLV.)', 'marvin CCLV'],
    ['(Marvin CCIII.)', 'marvin CCIII'],
    ['(See Plates XII—XIV.)', 'asks'],
    ['vol. xv. of the second series of the Numismatic Chronicle', 'asks'],
  ]),
];

/** Grams. */
export const OUTSIDE_WEIGHTS: readonly OutsideText[] = [
  ...from(FINDS, [
    ['weight: 3.51g', '3.51'],
    ['3.49g', '3.49'],
    ['weight: 3.20g.', '3.2'],
    ['weight: 1.25g.', '1.25'],
    ['Weight: 1.3g', '1.3'],
    ['0.98g in weight', '0.98'],
    ['weight: 2.1g.', '2.1'],
    ['Weight 0.65g', '0.65'],
    ['Weight: 1g', '1'],
  ]),
  ...from(TREASURE, [
    ['Total weight of the concretion: 88.06g.', 'asks or 88.06'],
    ['Weight: 29.55g.', '29.55'],
  ]),
  ...from(BERLIN, [
    ['10,62 g', '10.62'],
    ['14,92 g', '14.92'],
    ['17,40 g', '17.4'],
    ['Gewicht 2.91 g', '2.91'],
    ['Gewicht 1.56 g', '1.56'],
    ['ca. 3,41 g', 'asks'],
    ['11 Gramm', '11'],
  ]),
  ...from(AOSTA, [
    ['17,08 g', '17.08'],
    ['8,93 g', '8.93'],
  ]),
  ...from(ITALIAN, [
    ['Peso: gr. 3,0', 'asks'],
    ['7,2 g.', '7.2'],
    ['(g 1.106,6)', 'asks or 1106.6'],
    ['(g 668,54)', '668.54'],
    ['(g 652.28)', '652.28'],
    ['(g 1.075)', 'asks or 1075'],
    ['3,83g', '3.83'],
  ]),
  ...from(SPANISH, [
    ['Peso = 4,90 gr', 'asks'],
    ['Peso 45.3 Gramos', '45.3'],
    ['359,19 gramos', '359.19'],
  ]),
  ...from(FRENCH, [['pesant 169,2 g', '169.2 or asks']]),
  ...from(PRINTED, [
    ['122.5 and 61.125 grains respectively', 'asks'],
    ['0.2 and 0·15 grain', 'asks'],
  ]),
];

/** The diameter or thickness in millimetres, or height × width. */
export const OUTSIDE_SIZES: readonly OutsideText[] = [
  ...from(FINDS, [
    ['Diameter: 17.99mm', '17.99'],
    ['thickness: 1.67mm', 'asks or 1.67'],
    ['Diameter: 19.39mm;', '19.39'],
    ['17.48mm in diameter', '17.48'],
    ['diameter 14.2mm', '14.2'],
    ['Diameter: 23.7mm;', '23.7'],
    ['Diameter: 19.69 mm', '19.69'],
  ]),
  ...from(BERLIN, [
    ['26 mm', '26'],
    ['Durchmesser 23 mm', '23'],
    ['Durchmesser mit Öse 26 mm, ohne 25 mm', 'asks'],
    ['14.9 mm, 0.51 g', 'asks'],
    ['430 × 600 mm', '430 x 600'],
  ]),
  ...from(AOSTA, [
    ['Ø 33,2 mm', '33.2'],
    ['Ø 24,5 mm', '24.5'],
  ]),
  ...from(ITALIAN, [
    ['Diametro minimo: mm. 16,8', 'asks or 16.8'],
    ['un diametro di 2,2 cm.', 'asks or 22'],
    ['diametro di 28÷32 mm', 'asks or 28-32'],
  ]),
  ...from(SPANISH, [
    ['Diámetro = 23 mm', '23'],
    ['Diámetro 15 Milímetros', '15'],
  ]),
  ...from(FRENCH, [['58 mm de diamètre', '58']]),
  ...from(PRINTED, [
    ['size 32', 'asks'],
    ['Size 24.', 'asks'],
  ]),
];

/** Hours. */
export const OUTSIDE_AXES: readonly OutsideText[] = [
  ...from(FINDS, [
    ['Die axis: 5.', '5'],
    ["Die axis measurement: 8 o'clock", '8'],
    ['Die Axis: uncertain', 'asks'],
  ]),
  ...from(BERLIN, [
    ['3 h', '3'],
    ['12 h', '12'],
    ['9 h', '9'],
  ]),
  ...from(ITALIAN, [['alla francese 180°', 'asks or 6']]),
  ...from(SPANISH, [['Posición de cuños = 6 h', 'asks or 6']]),
  ...from('Jahrbuch des Historischen Vereins für das Fürstentum Liechtenstein 102 (2003)', [
    ['360°', '12'],
    ['30°', '1'],
  ]),
];

export const OUTSIDE_FINENESSES: readonly OutsideText[] = from(FINDS, [
  ['92.5% fine metal', '0.925'],
  ['a silver standard of 83%', 'asks or 0.83'],
  ['over 90% fine metal', 'asks'],
  ['over 10% fine silver', 'asks'],
  ['over 50% silver', 'asks'],
  ['c.1% silver', 'asks'],
]);

/** The short words of the grade. */
export const OUTSIDE_GRADES: readonly OutsideText[] = [
  ...from(FINDS, [
    ['Slightly worn: very fine', 'asks or VF'],
    ['Extremely worn: poor', 'asks or P'],
    ['complete but worn', 'asks'],
    ['extremely worn', 'asks'],
    ['very heavily worn', 'asks'],
    ['horribly worn', 'asks'],
    ['fragmentary and worn', 'asks'],
    ['of variable condition', 'asks'],
    ['in a relatively poor state of preservation', 'asks'],
    ['in poor states of preservation', 'asks'],
    ['exceptional condition', 'asks'],
  ]),
  ...from('Kampmann, Die Münzen der römischen Kaiserzeit, preface', [
    ['schön', 'S'],
    ['sehr schön', 'SS'],
    ['vorzüglich', 'VZ'],
  ]),
  ...from(ITALIAN, [
    ['splendido', 'SPL'],
    ['bellissimo', 'BB'],
    ['molto bello', 'MB'],
    ['qspl/spl', 'asks or qSPL/SPL'],
    ['SPL', 'asks or SPL'],
  ]),
  ...from(SPANISH, [['Estado de conservación Regular', 'asks']]),
  ...from(PRINTED, [
    ['fine', 'F'],
    ['mostly proofs', 'asks'],
    ['in a remarkably fine condition', 'asks'],
  ]),
];
