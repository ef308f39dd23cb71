import { hijriYear } from '../calendars/hijri.ts';
import type { DateContext } from './dating.ts';
import { isRealmOf } from './eras.ts';
import { readDays, type WordReader } from './reading.ts';
import { ABOUT, TWO_MONTHS } from './words.ts';
import { anyOf } from './written-text.ts';

const ONE_LETTER = /^(?<letter>[hnv])\.? ?(?<date>\d{2,4}(?: ?- ?\d{1,4})?)$/;
/** Coins of the last centuries bear a mint's letter beside the year: 1937H, 1921-D. */
const MINT_LETTER = /^(?<struck>1[6-9]\d\d|20\d\d) ?-? ?(?<mint>[A-WYZ](?:(?: ?[-,/+&] ?| )[A-WYZ])*|CC|KN|SM)$/;
/** A tenth of the last Hijri year: ten times as much would be no date yet. */
const LAST_TENTH = 150;
const LOST_FIGURE = /^(?:AH ?)?(?<lost>\d{1,3})\?(?: ?AH)?$/i;
/** `157?` is a coin of the 1570s with a figure off the flan as often as a doubtful year 157. */
const LOST_OR_DOUBTFUL = new RegExp(`^(?:${anyOf(ABOUT)} ?)?(?<known>\\d{3})\\?$`, 'i');
/** Tens of years that are yet to come were not lost from a coin. */
const LAST_TEN = 202;
const OF_ROME = ['rome', 'roman', 'byzantin', 'parthia', 'kushan'];
/** Marks of doubt that stand for figures: `1???` is no year 1. */
const FIGURES_LOST = /^(?<first>[1-9])(?<marks>\?{2,3})$/;
const NO_LAST_FIGURE = /^(?<known>\d{3})-\??$/;

const APRIL = /^apr(?:\. ?| )(?<date>\d{4})$/;
/** `A.C. 1655` on medals is anno Christi. */
const OF_CHRIST = /^(?:AC|A\. ?C\.) ?(?<date>\d{1,4})$/i;
const CHRIST_AFTER = /^(?<date>\d{1,4}) ?(?:AC|A\. ?C\.)$/;

/**
 * The sentence for a word or mark that means one thing in one list and another in the next, each of which would give
 * a date. Undefined for any other text.
 */
export function askWhichWord(text: string, context: DateContext = {}): string | undefined {
  const { dateOf } = context;
  const { letter, date = '' } = ONE_LETTER.exec(text)?.groups ?? {};
  if (letter === 'h') return `"${text}" may be hacia, about, or the Hijra; write c. ${date} or AH ${date}.`;
  if (letter === 'n') return `"${text}" may be nach, after, or a sign of the era; write after ${date} or AD ${date}.`;
  if (letter === 'v') return `"${text}" may be vers, about, or vor, before; write c. ${date} or before ${date}.`;
  const april = dateOf === 'event' ? undefined : APRIL.exec(text)?.groups?.['date'];
  if (april !== undefined)
    return `"${text}" may be April, approximately, or après, after; write April ${april}, c. ${april} or after ${april}.`;
  const christ = (OF_CHRIST.exec(text) ?? CHRIST_AFTER.exec(text))?.groups?.['date'];
  if (christ !== undefined)
    return `"${text}" may be ante Christum, before, or anno Christi, after; write ${christ} BC or AD ${christ}.`;
  const month = askWhichMonth(text);
  if (month !== undefined) return month;
  const early = askOfEarlyYear(text);
  if (early !== undefined) return early;
  const doubtful = askOfLostFigure(text, context);
  if (doubtful !== undefined) return doubtful;
  const { first = '', marks = '' } = FIGURES_LOST.exec(text)?.groups ?? {};
  if (first !== '') {
    return `"${text}" may have lost figures; write ${first}${marks.replaceAll('?', 'X')}, or AD ${first} (?).`;
  }
  const known = NO_LAST_FIGURE.exec(text)?.groups?.['known'];
  if (known !== undefined) {
    return `"${text}" may have lost a figure or its second year; write ${known}X, or from AD ${known}.`;
  }
  const { struck = '', mint = '' } = MINT_LETTER.exec(text)?.groups ?? {};
  // `1850S` is a decade as often as a year of San Francisco, and the decade is what is written so.
  if (mint !== '' && !/^\d{3}0S$/.test(text)) {
    const letters = mint.length > 2 ? 'several mint letters, so perhaps several pieces' : 'a mint letter';
    return `"${text}" is a year and ${letters}; write ${struck} here, and ${mint} in the legend.`;
  }
  const { lost = '' } = LOST_FIGURE.exec(text)?.groups ?? {};
  if (/AH/i.test(text) && lost !== '' && Number(lost) <= LAST_TENTH) {
    return `"${text}" may be a doubtful year or a figure lost; write AH ${lost} (?) or AH ${lost}X.`;
  }
  return askWhichPair(text);
}

/** Undefined where what stands beside says that years of so few figures are meant. */
function askOfLostFigure(text: string, { era, realm }: DateContext): string | undefined {
  const { known = '' } = LOST_OR_DOUBTFUL.exec(text)?.groups ?? {};
  if (known === '' || Number(known) > LAST_TEN || era === 'BC' || isRealmOf(OF_ROME, realm)) return undefined;
  const eras = era === undefined ? ['AD', 'BC', 'AH'] : [era];
  const ways = eras.map((sign) => (sign === 'BC' ? `${known} BC (?)` : `${sign} ${known} (?)`));
  return `"${text}" may have lost its last figure or be a doubtful year; write ${known}X for ${known}0-${known}9, or ${ways.join(', ')}.`;
}

const MONTH_OF_TWO = TWO_MONTHS.map(({ names, means }) => ({
  means,
  form: new RegExp(`(?<!\\p{L})${anyOf(names)}(?!\\p{L})`, 'iu'),
}));

/** `listopad 1920`: a month of two languages. */
function askWhichMonth(text: string): string | undefined {
  for (const { form, means } of MONTH_OF_TWO) {
    const name = form.exec(text)?.[0];
    if (name === undefined) continue;
    const places = means.map(([month, where]) => `${month} (${where})`).join(' or ');
    return `"${name}" is ${places}; write ${means.map(([month]) => text.replace(name, month)).join(' or ')}.`;
  }
  return undefined;
}

/** The first coins with a year of Christ are of Roskilde, 1234 (common practice). */
const FIRST_WITH_YEAR = 1234;
const DATED = /^(?:dated (?<before>\d{3,4})|(?<after>\d{3,4}) \(dated\))$/i;

/** `dated 1106`: no coin of ours bears so early a year. */
function askOfEarlyYear(text: string): string | undefined {
  const { before, after } = DATED.exec(text)?.groups ?? {};
  const year = Number(before ?? after);
  if (!(year < FIRST_WITH_YEAR)) return undefined;
  return `"${text}" cannot stand on a piece as a year of Christ, which begin on coins in 1234; write AH ${String(year)}, or AD ${String(year)} for when it was made.`;
}

const TWO_YEARS = /^(?<first>\d{1,4}) ?[/-] ?(?<last>\d{4})$/;
const LAST_HIJRI = 1500;

/** `1255/1839` may be a range of years, or one year of the Hijra and of Christ when the two agree. */
function askWhichPair(text: string): string | undefined {
  const { first = '', last = '' } = TWO_YEARS.exec(text)?.groups ?? {};
  const year = Number(first);
  if (first === '' || !isHijriPair(year, Number(last))) return undefined;
  const ways = `AH ${String(year)} (${last}) or AD ${String(year)} - ${last}`;
  return `"${text}" may be one year of two eras or a long range; write ${ways}.`;
}

/** Whether two years may be one: the first of the Hijra, the second of Christ. */
export function isHijriPair(first: number, last: number): boolean {
  if (first < 1 || first > LAST_HIJRI) return false;
  const days = hijriYear(first);
  const { earliest, latest } = readDays(days.first, days.last, 'hijri');
  return last >= Number(earliest) && last <= Number(latest);
}

/** When sultans came to the throne, AH, and how many years they counted (common practice, from memory). */
const OTTOMAN: readonly (readonly [accession: number, years: number])[] = [
  [1058, 39], [1099, 4], [1102, 4], [1106, 9], [1115, 29], [1143, 25], [1168, 3], [1171, 16], [1187, 16], [1203, 19], [1222, 2], [1223, 32],
  [1255, 23], [1277, 16], [1293, 34], [1327, 10], [1336, 6],
]; // prettier-ignore

/** Whether a pair with a stroke may be a sultan's accession and a year of his reign: `1327/9`. */
export function isOttomanPair(accession: number, year: number): boolean {
  return OTTOMAN.some(([first, years]) => first === accession && year >= 1 && year <= years);
}

/** Figures of scripts that count from eras of their own as well as from Christ, so that the keeper must say which. */
const FIGURES_OF_TWO_ERAS: readonly (readonly [RegExp, string, string])[] = [
  [/[٠-٩۰-۹]/, 'Arabic figures may count from the Hijra', 'AH'],
  [/[๐-๙]/, 'Thai figures may count from the Buddhist era', 'Buddhist'],
  [/[०-९]/, 'Indian figures may count from Vikrama', 'VS'],
];

/** The sentence for a year in figures of such a script that was read as one of ours without saying so. */
export function askWhichFigures(text: string, plain: string): string | undefined {
  const found = FIGURES_OF_TWO_ERAS.find(([figures]) => figures.test(text));
  return found && `${found[1]} or from Christ; write ${found[2]} ${plain} or AD ${plain}.`;
}

const LATER = '(?:re-?struck|re-?strike|struck|minted|made|geprägt|nachgeprägt|frappée?)(?: in| of| from)?:?';
const STRUCK_LATER = new RegExp(
  `^(?:dated )?(?<dated>[^()]*\\d[^()]*?),? \\(?${LATER} (?<made>[^()]*\\d[^()]*)\\)?$`,
  'i',
);

/** `1804 [1805]`, `1804 [i.e. 1805]`: librarians put what is true behind what is printed. */
const CORRECTED = /^(?<dated>\d{4}) \((?:i\. ?e\. |recte |really |= ?)?(?<made>\d{4})\)$/;

/**
 * The sentence for a text that gives both the date on the piece and the date it was made, as a taler dated 1780 and
 * struck ever since: each has its own field. Undefined for any other text.
 */
export function askForTwoDates(text: string, read: WordReader): string | undefined {
  const { dated: printed = '', made: meant = '' } = CORRECTED.exec(text)?.groups ?? {};
  if (printed !== meant)
    return `"${text}" may give the year on the piece and the year it was made; write date: ${meant} and, on a line of its own, dated: "${printed}", or ${printed} or ${meant}.`;
  const { dated, made } = STRUCK_LATER.exec(text)?.groups ?? {};
  if (dated === undefined || made === undefined || !read(made)?.ok) return undefined;
  return `"${text}" gives the date on the piece and the date it was made; write date: ${made} and, on a line of its own, dated: "${dated}".`;
}
