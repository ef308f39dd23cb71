/** Coins on which an abbreviation has this meaning: of Rome, or of the kings of England and Great Britain. */
export type Series = 'roman' | 'english';

export type Abbreviation = {
  readonly write: string;
  readonly means: string;
  readonly series: Series;
  readonly source: string;
};

const STEVENSON = 'S. W. Stevenson, A Dictionary of Roman Coins (1889)';
const SANDYS = 'J. E. Sandys, Latin Epigraphy (2nd ed. 1927)';
const JEWITT = 'L. Jewitt and B. V. Head, English Coins and Tokens (1886)';

function of(series: Series, source: string, rows: Readonly<Record<string, string>>): readonly Abbreviation[] {
  return Object.entries(rows).map(([write, means]) => ({ write, means, series, source }));
}

/**
 * Abbreviations with the words they stand for, in the case usual on coins; a phrase is one row. Few on purpose: only
 * those that mean one thing on the coins of their series.
 */
export const ABBREVIATIONS: readonly Abbreviation[] = [
  ...of('roman', SANDYS, {
    'IMP': 'Imperator', 'CAES': 'Caesar', 'C': 'Caesar', 'AVG': 'Augustus', 'P M': 'pontifex maximus', 'PM': 'pontifex maximus',
    'PONT MAX': 'pontifex maximus', 'TR P': 'tribunicia potestate', 'TRP': 'tribunicia potestate', 'TR POT': 'tribunicia potestate',
    'TRI POT': 'tribunicia potestate', 'P P': 'pater patriae', 'PP': 'pater patriae', 'COS': 'consul', 'CENS': 'censor', 'F': 'filius',
  }),
  ...of('roman', STEVENSON, {
    'S C': 'senatus consulto', 'SC': 'senatus consulto', 'S P Q R': 'senatus populusque Romanus', 'SPQR': 'senatus populusque Romanus',
    'P F': 'pius felix', 'PF': 'pius felix', 'D N': 'dominus noster', 'DN': 'dominus noster', 'NOB C': 'nobilissimus Caesar',
    'AVGG': 'Augusti duo', 'AVGGG': 'Augusti tres', 'GERM': 'Germanicus', 'BRIT': 'Britannicus', 'PARTH': 'Parthicus', 'DAC': 'Dacicus',
    'FL': 'Flavius', 'VAL': 'Valerius', 'AVR': 'Aurelius', 'ANT': 'Antoninus', 'VESP': 'Vespasianus', 'TI': 'Tiberius',
  }),
  ...of('english', JEWITT, {
    'R': 'rex', 'D G': 'Dei gratia', 'DG': 'Dei gratia', 'DEI G': 'Dei gratia', 'DEI GRA': 'Dei gratia', 'DI GRA': 'Dei gratia', 'Z': 'et',
    'ANG': 'Angliae', 'ANGL': 'Angliae', 'ANGLI': 'Angliae', 'ANGLIE': 'Angliae', 'AGL': 'Angliae', 'FR': 'Franciae', 'FRA': 'Franciae',
    'FRAN': 'Franciae', 'FRANC': 'Franciae', 'FRANCI': 'Franciae', 'FRANCIE': 'Franciae', 'DNS': 'dominus', 'HYB': 'Hiberniae',
    'HIB': 'Hiberniae', 'HI': 'Hiberniae', 'IB': 'Hiberniae', 'AQT': 'Aquitaniae', 'ACQ': 'Aquitaniae', 'MAG': 'Magnae', 'BR': 'Britanniae', 'BRIT': 'Britanniae',
    'MEV': 'meum', 'ADIVTORE': 'adiutorem', 'F D': 'fidei defensor', 'FD': 'fidei defensor', 'FID DEF': 'fidei defensor',
    'BRITANNIAR': 'Britanniarum', 'BRITT': 'Britanniarum', 'REG': 'regina', 'EDW': 'Edwardus', 'EDWAR': 'Edwardus',
    'HENRIC': 'Henricus', 'RIC': 'Ricardus',
  }),
]; // prettier-ignore

/** Words that only stand on the coins of a king of England. */
export const ENGLISH_WORDS = /^(?:REX|REGINA|REG|ANGL?|ANGLIE?|AGL|FRANC|DNS|HYB|HIB|GRA|DEI)$/u;

/**
 * Abbreviations that mean one thing only in company. `AVG` is Augustus where the legend styles an emperor; after a virtue
 * (`LIBERTAS AVG`) it is in another case. `ANG` is Angliae in the long style of the later kings; on a penny of
 * Harold II it is Anglorum. Without the company nothing is proposed.
 */
export const IN_COMPANY: Readonly<Record<Series, { readonly words: readonly string[]; readonly company: RegExp }>> = {
  roman: {
    words: ['AVG', 'AVGG', 'AVGGG', 'GERM', 'BRIT', 'PARTH', 'DAC', 'C', 'F'],
    company: /(?:^| )(?:IMP|CAES|CAESAR|D N|DN|P F|PF|P M|PM|PIVS|DIVVS|NOB)(?: |$)/u,
  },
  english: {
    words: ['ANG', 'ANGL'],
    company: /(?:^| )(?:R|DEI|DI|D G|DG|DNS|Z|FRA?|FRANC[IE]*|H[IY]B?)(?: |$)/u,
  },
};
