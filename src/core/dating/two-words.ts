const ONE_LETTER = /^(?<letter>[hv])\.? ?(?<date>\d{2,4}(?: ?- ?\d{1,4})?)$/;
/** Coins of the last centuries bear a mint's letter beside the year: 1937H, 1921-D. */
const MINT_LETTER = /^(?<struck>1[6-9]\d\d|20\d\d) ?-? ?(?<mint>[A-WYZ]|CC|KN|SM)$/;
const SAMVAT = /^(?:samvat|s(?:am)?v\.?) ?(?<year>\d{1,4})$|^(?<before>\d{1,4}) ?samvat$/i;

/** A tenth of the last Hijri year: ten times as much would be no date yet. */
const LAST_TENTH = 150;
const LOST_FIGURE = /^(?:AH ?)?(?<lost>\d{1,3})\?(?: ?AH)?$/i;

/**
 * The sentence for a word that means one thing in one list and another in the next, each of which would give a date.
 * Undefined for any other text.
 */
export function askWhichWord(text: string): string | undefined {
  const { letter, date = '' } = ONE_LETTER.exec(text)?.groups ?? {};
  if (letter === 'h') return `"${text}" may be hacia, about, or the Hijra; write c. ${date} or AH ${date}.`;
  if (letter === 'v') return `"${text}" may be vers, about, or vor, before; write c. ${date} or before ${date}.`;
  const { struck = '', mint = '' } = MINT_LETTER.exec(text)?.groups ?? {};
  // `1850S` is a decade as often as a year of San Francisco, and the decade is what is written so.
  if (mint !== '' && !/^\d{3}0S$/.test(text))
    return `"${text}" is a year and a mint letter; write ${struck} here, and ${mint} in the legend.`;
  const { lost = '' } = LOST_FIGURE.exec(text)?.groups ?? {};
  if (/AH/i.test(text) && lost !== '' && Number(lost) <= LAST_TENTH)
    return `"${text}" may be a doubtful year or a figure lost; write AH ${lost} (?) or AH ${lost}X.`;
  const { year, before = year } = SAMVAT.exec(text)?.groups ?? {};
  if (before === undefined) return undefined;
  return `Samvat is counted from Vikrama or from Saka; write VS ${before} or Saka ${before}.`;
}
