import { normalLegend } from './normal-legend.ts';
import { isGreekInPart } from './parse-legend.ts';
import type { Legend } from './parse-legend.ts';

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

/** Words of legends that are seldom shortened, from the same books; a reading is known for Latin by them. */
const LATIN_WORDS = new Set(
  [
    ...ABBREVIATIONS.map(({ means }) => means),
    'civitas villa moneta monetarius archiepiscopus episcopus deum deus adiutorem nostrum posui posuimus sancti tertius',
    'quartus quintus anglorum regina urbs roma soli invicto comiti libertas augusti augusta gloria victoria victoriae pax',
    'fecit nomine domini benedictum crucis tuum per medium illorum autem scutum fides concordia',
  ]
    .join(' ')
    .toLowerCase()
    .split(' '),
);

/**
 * Whether a legend written out is Latin: half of its words at least are words of Latin legends. An English sentence and Old
 * English (`Thorr on Eoforwic`) are not; a name alone is not known for Latin.
 */
export function isLatinReading(reading: string): boolean {
  const words = reading.toLowerCase().match(/\p{L}{2,}/gu) ?? [];
  return words.filter((word) => LATIN_WORDS.has(word)).length * 2 >= Math.max(1, words.length);
}

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

/** A reading proposed from the table of abbreviations, with the books it rests on. It is a proposal: the keeper decides. */
export type SuggestedReading = { readonly text: string; readonly series: Series; readonly sources: readonly string[] };

/** As many words as the longest phrase of the table has. */
const LONGEST_PHRASE = 4;

/** A word of a legend; `joint` is what parts it from the word before: a space or a stop, the design, or a loss or another line. */
interface Word {
  readonly text: string;
  readonly normal: string;
  readonly joint: 'space' | 'design' | 'line';
}

/** The words of a legend as they stand, letters restored and supplied included; a loss is a word of its own. */
function wordsOf(legend: Legend): readonly Word[] {
  const marked = legend.parts.map((part) => {
    if (part.kind === 'lost') return ' \n … \n ';
    if (part.kind === 'break') return /[,،;/|‖]/u.test(part.text) ? ' \n ' : ' ';
    if (part.kind === 'stop') return part.text === '-' ? '-' : ' ';
    return part.kind === 'mark' ? ' ' : part.text;
  });
  const words: Word[] = [];
  let joint: Word['joint'] = 'line';
  // A hyphen with a letter on either side is where the design breaks the legend: VALENTINI-ANVS.
  for (const [token] of marked.join('').matchAll(/\n|(?<=\S)-(?=\S)|[^\s-]+/gu)) {
    if (token === '\n') joint = 'line';
    else if (token === '-') joint = 'design';
    else {
      words.push({ text: token, normal: normalLegend(token), joint });
      joint = 'space';
    }
  }
  return words;
}

const NUMERAL = /^M{0,4}(?:CM|CD|D?C{0,4})(?:XC|XL|L?X{0,4})(?:IX|IV|V?I{0,4})$/u;

/** A word as it is printed inside a sentence: small letters after the first, and V as u where it is no consonant. */
function plainWord(word: string): string {
  if (NUMERAL.test(word) || word === '…') return word;
  const small = word.toLowerCase().replace(/v(?![aeio])|(?<=q)v/gu, 'u');
  if (/^(?:rex|regina|et|in|de|on)$/u.test(small)) return small;
  return small.charAt(0).toUpperCase() + small.slice(1);
}

/** The rows that hold for a legend, by their words in the normal form. A word by itself needs no company. */
function rowsFor(series: Series, phrase: string): ReadonlyMap<string, Abbreviation> {
  const { words, company } = IN_COMPANY[series];
  const sure = company.test(phrase) || !phrase.includes(' ');
  const rows = ABBREVIATIONS.filter((row) => row.series === series && (sure || !words.includes(row.write)));
  return new Map(rows.map((row) => [row.write.split(' ').map(normalLegend).join(' '), row]));
}

/**
 * Words of a Roman legend in another case than the one who struck it: `IMP TRAIANO AVG` is "to the emperor", `DIVA
 * FAVSTINA` and `FAVSTINA AVG PII AVG FIL` are a lady's. The table knows the first case only.
 */
const OTHER_CASE =
  /^(?:DIV(?:O|A|AE|AM|IS)|PI[IO]|AVGVSTA|(?!LEO|ZENO|OTHO|NERO|CATO).*(?:[AEI]NO|[IVR]O)|.*(?:AN|IN)I)$/u;

/** `DIVI AVG F` is "son of the deified Augustus": from DIVI to F the words are in the second case. */
const OF_THE_DEIFIED: Readonly<Record<string, string>> = {
  AVG: 'Augusti',
  VESP: 'Vespasiani',
  IVL: 'Iulii',
  F: 'filius',
};

/** A first name after C says that C is Caesar: IMP C M AVR PROBVS AVG. Else it may as well be Gaius. */
const FIRST_NAME = /^(?:M|L|P|T|Q|A|C|CN|SEX|TI)$/u;

/** For each word, what it is called in the second case, for those that stand between DIVI and the F after it. */
function deified(words: readonly Word[]): ReadonlyMap<number, string | null> {
  const called = new Map<number, string | null>();
  for (const [start, { normal }] of words.entries()) {
    if (normal !== 'DIVI') continue;
    for (let at = start + 1; at < words.length; at += 1) {
      const word = words[at]?.normal ?? '';
      called.set(at, OF_THE_DEIFIED[word] ?? null);
      if (/^(?:F|FIL|FILIVS|N|NEP)$/u.test(word)) break;
    }
  }
  return called;
}

/** The longest row that begins at a word and runs over spaces and stops alone. */
function rowAt(
  words: readonly Word[],
  at: number,
  rows: ReadonlyMap<string, Abbreviation>,
): { readonly row: Abbreviation; readonly length: number } | undefined {
  for (let length = Math.min(LONGEST_PHRASE, words.length - at); length > 0; length -= 1) {
    const phrase = words.slice(at, at + length);
    const row = rows.get(phrase.map(({ normal }) => normal).join(' '));
    if (row !== undefined && phrase.slice(1).every(({ joint }) => joint === 'space')) return { row, length };
  }
  return undefined;
}

/** C before CAESAR, or before a name, may be Gaius; it is Caesar where a first name follows, or at the end of NOB C. */
function isOpenC(words: readonly Word[], at: number): boolean {
  return words[at]?.normal === 'C' && words.length > 1 && !FIRST_NAME.test(words[at + 1]?.normal ?? '');
}

/** Half of a word that the design breaks: a row is taken on neither side unless both sides are words of the table. */
function isHalf(words: readonly Word[], at: number, length: number, rows: ReadonlyMap<string, Abbreviation>): boolean {
  const isBroken = (index: number, other: number): boolean =>
    words[index]?.joint === 'design' && !rows.has(words[other]?.normal ?? '');
  return isBroken(at, at - 1) || isBroken(at + length, at + length);
}

/**
 * Writes out the Latin abbreviations of a legend: `EDW R' ANGL' DNS hYB'` as `Edwardus rex Angliae dominus Hiberniae`.
 * Null when the table has none of its words, when the legend is not in Latin letters alone, or when its words are in
 * another case than those of the table. Nothing is joined across a break of the design, a line or a loss.
 */
export function suggestReading(legend: Legend): SuggestedReading | null {
  if (legend.script !== 'latin' || isGreekInPart(legend.text)) return null;
  const words = wordsOf(legend);
  const series: Series = words.some(({ text }) => ENGLISH_WORDS.test(text.toUpperCase())) ? 'english' : 'roman';
  const rows = rowsFor(series, words.map(({ normal }) => normal).join(' '));
  const sons = series === 'roman' ? deified(words) : new Map<number, string | null>();
  const isWhole = (at: number): boolean => words[at]?.joint !== 'design' && words[at + 1]?.joint !== 'design';
  if (series === 'roman' && words.some(({ normal }, at) => isWhole(at) && !sons.has(at) && OTHER_CASE.test(normal)))
    return null;
  let text = '';
  const sources = new Set<string>();
  for (let at = 0; at < words.length;) {
    const word = words[at]?.text ?? '';
    const son = sons.get(at);
    const found = sons.has(at) || isOpenC(words, at) ? undefined : rowAt(words, at, rows);
    const taken = found !== undefined && !isHalf(words, at, found.length, rows) ? found : undefined;
    const means = son ?? taken?.row.means ?? (isOpenC(words, at) ? word : plainWord(word));
    const isSecondHalf = words[at]?.joint === 'design';
    text += isSecondHalf ? `-${taken === undefined ? means.toLowerCase() : means}` : ` ${means}`;
    if (taken !== undefined) sources.add(taken.row.source);
    else if (son != null && sources.size === 0) sources.add(rows.get(words[at]?.normal ?? '')?.source ?? '');
    at += taken?.length ?? 1;
  }
  sources.delete('');
  return sources.size === 0 ? null : { text: text.trim(), series, sources: [...sources] };
}
