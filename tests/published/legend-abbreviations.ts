/** Legends with the words a published reading gives them. */
export const PUBLISHED_READINGS: readonly {
  readonly legend: string;
  readonly reading: string;
  readonly source: string;
}[] = [
  { legend: 'IMP', reading: 'Imperator', source: 'Sandys, Latin Epigraphy (1927)' },
  { legend: 'CAES', reading: 'Caesar', source: 'Sandys, Latin Epigraphy (1927)' },
  { legend: 'AVG', reading: 'Augustus', source: 'Sandys, Latin Epigraphy (1927)' },
  { legend: 'PONT MAX', reading: 'pontifex maximus', source: 'Sandys, Latin Epigraphy (1927)' },
  { legend: 'P P', reading: 'pater patriae', source: 'Sandys, Latin Epigraphy (1927)' },
  { legend: 'PP', reading: 'pater patriae', source: 'Sandys, Latin Epigraphy (1927)' },
  { legend: 'COS III', reading: 'consul III', source: 'Sandys, Latin Epigraphy (1927)' },
  { legend: 'S C', reading: 'senatus consulto', source: 'Stevenson, Dictionary of Roman Coins (1889)' },
  { legend: 'S P Q R', reading: 'senatus populusque Romanus', source: 'Stevenson, Dictionary of Roman Coins (1889)' },
  { legend: 'D N', reading: 'dominus noster', source: 'Stevenson, Dictionary of Roman Coins (1889)' },
  { legend: 'P F AVG', reading: 'pius felix Augustus', source: 'Stevenson, Dictionary of Roman Coins (1889)' },
  {
    legend: 'DI GRA REX',
    reading: 'Dei gratia rex',
    source: 'Portable Antiquities Scheme, guide to medieval coin inscriptions',
  },
  {
    legend: "+EDW R' ANGL' DNS hYB'",
    reading: 'Edwardus rex Angliae dominus Hiberniae',
    source: 'Portable Antiquities Scheme, guide to medieval coin inscriptions',
  },
  {
    legend: 'hENRIC REX ANGL Z FRANC',
    reading: 'Henricus rex Angliae et Franciae',
    source: 'Portable Antiquities Scheme, guide to medieval coin inscriptions',
  },
  ...[
    ['TI CAESAR DIVI AVG F AVGVSTVS', 'Tiberius Caesar Divi Augusti filius Augustus'],
    [
      'IMP CAES DIVI VESP F DOMITIAN AVG P M',
      'Imperator Caesar Divi Vespasiani filius Domitian Augustus pontifex maximus',
    ],
    ['C CAESAR AVG GERMANICVS TR POT', 'C Caesar Augustus Germanicus tribunicia potestate'],
    ['IMP C. CAESAR AVG', 'Imperator C Caesar Augustus'],
    ['IMP C M AVR PROBVS P F AVG', 'Imperator Caesar M Aurelius Probus pius felix Augustus'],
    ['IMP C AVRELIANVS AVG', 'Imperator C Aurelianus Augustus'],
    ['CONSTANTIVS NOB C', 'Constantius nobilissimus Caesar'],
    ['D N VALENTINI-ANVS P F AVG', 'dominus noster Valentini-anus pius felix Augustus'],
    ['D N THEODO-SIVS P F AVG', 'dominus noster Theodo-sius pius felix Augustus'],
    ['IMP CAES-VESP AVG', 'Imperator Caesar-Vespasianus Augustus'],
    ['IMP OTHO CAESAR AVG TR P', 'Imperator Otho Caesar Augustus tribunicia potestate'],
  ].map(([legend = '', reading = '']) => ({ legend, reading, source: 'common practice' })),
];

/**
 * Legends of which no reading is proposed, with the reason: the case is another than the table's, the letters are not Latin
 * alone, or nothing is abbreviated. Common practice of Latin and Greek epigraphy.
 */
export const NO_READINGS: readonly { readonly legend: string; readonly because: string; readonly source: string }[] = [
  { legend: 'IMP TRAIANO AVG GER DAC P M TR P', because: 'to the emperor, the third case', source: 'common practice' },
  { legend: 'IMP ANTONINO PIO AVG', because: 'to the emperor, the third case', source: 'common practice' },
  { legend: 'DIVO CLAVDIO AVG', because: 'to the deified, the third case', source: 'common practice' },
  { legend: 'DIVA FAVSTINA AVG', because: 'a lady', source: 'common practice' },
  { legend: 'FAVSTINA AVG PII AVG FIL', because: 'daughter of Augustus, the second case', source: 'common practice' },
  { legend: 'SABINA AVGVSTA IMP HADRIANI AVG', because: 'wife of Hadrian, the second case', source: 'common practice' },
  { legend: 'VICTORIA AVGG', because: 'of the Augusti, the second case', source: 'common practice' },
  { legend: 'DIVVS AVGVSTVS PATER', because: 'nothing is abbreviated', source: 'common practice' },
  { legend: 'AVT K M AVR ANTΩNEINOC', because: 'Greek', source: 'common practice' },
  { legend: 'AVT KAICAP TI CEB', because: 'Greek in letters that look Latin', source: 'common practice' },
  { legend: 'BAΣIΛEΩΣ AΛEΞANΔPOY', because: 'Greek', source: 'common practice' },
  { legend: 'VICTORI-A AVG', because: 'the design breaks the word', source: 'common practice' },
];

/** What a legend is written in, though it is typed in mixed letters. Common practice. */
export const MIXED_LETTERS: readonly (readonly [legend: string, script: 'latin' | 'greek', source: string])[] = [
  ['BAΣIΛEΩΣ AΛEΞANΔPOY', 'greek', 'common practice'],
  ['AVT K M AVR ANTΩNEINOC', 'greek', 'common practice'],
  ['ΑΥΤ Κ Μ ΑΥΡ', 'greek', 'common practice'],
  ['AΘE', 'greek', 'common practice'],
  ['ΦIΛIΠΠOY', 'greek', 'common practice'],
  ['BAΣIΛEOΣ', 'greek', 'common practice'],
  ['SALVS DD NN AVG ET CAES, A ω', 'latin', 'common practice'],
  ['+ΛLFRED REX', 'latin', 'common practice'],
  ['+EΛDMVND REX Λ', 'latin', 'common practice'],
  ['VICTORIA ROMANORVM A Ω', 'latin', 'common practice'],
];
