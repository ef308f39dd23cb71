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
];
