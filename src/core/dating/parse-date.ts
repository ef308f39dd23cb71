import { good, refuse, type Outcome } from '../outcome.ts';
import type { DateContext, Dating, Reading } from './dating.ts';
import { refuseFormerEdtf } from './edtf-former.ts';
import { readEdtf } from './edtf.ts';
import type { WordReader } from './qualifiers.ts';
import { withPlainEras } from './plain-eras.ts';
import { phraseReader } from './read-phrase.ts';
import { readYears } from './reading.ts';
import { askForTwoDates } from './two-dates.ts';
import { askWhichWord } from './two-words.ts';
import { AFTER_CHRIST, BEFORE_CHRIST, UNDATED } from './words.ts';
import { anyOf, plainText } from './written-text.ts';

/** A set of years in EDTF may be long, such as every year at one place in the cycle of sixty; words are not. */
const LONGEST = 300;
const LONGEST_PHRASE = 120;
const UNDATED_WORDS = new RegExp(`^${anyOf(UNDATED)}(?:[,;:]? ?(?<inner>[[(].*[\\])]|(?<=[,;:] ?).*))?$`, 'i');
const UNDATED_AFTER = new RegExp(`^(?<inner>.*\\S) ?\\(${anyOf(UNDATED)}\\)$`, 'i');
/** Figures that stand on coins of the Hijra and of Christ alike, so that the keeper must say which. */
const ARABIC_FIGURES = /[٠-٩۰-۹]/;
const NAMES_ERA = new RegExp(`\\d ?${anyOf([...AFTER_CHRIST, ...BEFORE_CHRIST])}|${anyOf(['AD', 'A.D.'])} ?\\d`, 'i');
const EXAMPLES = '1279, 1279/1281, c. 1280, 44 BC, AH 294 or 12th century';
const TOO_LONG = `The date is too long to be one; write a date such as ${EXAMPLES}, and the rest in the story.`;

/**
 * Reads a date as keepers, books and standards write it: see `readings.ts` for the grammar by example. Refuses with a
 * sentence that says what to write; a word left over or a range that runs backwards is never a value.
 */
export function parseDate(text: string, context: DateContext = {}): Outcome<Dating> {
  // Before a sign of it is read: the way a long text is refused must not grow with the text.
  if (text.length > LONGEST) return refuse(TOO_LONG);
  const plain = withPlainEras(plainText(text));
  if (plain === '') return refuse(`The date is empty; write one such as ${EXAMPLES}, or leave the field out.`);
  if (plain.length > LONGEST_PHRASE) return readLong(text, plain);
  const ambiguous = askWhichWord(plain);
  if (ambiguous !== undefined) return refuse(ambiguous);
  const readPhrase = phraseReader(context.reigns ?? []);
  const outcome = readWhole(plain, readPhrase);
  if (!outcome) return refuse(askForTwoDates(plain, readPhrase) ?? notUnderstood(plain, readPhrase));
  if (!outcome.ok) return outcome;
  if (ARABIC_FIGURES.test(text) && outcome.value.calendar === 'gregorian' && !NAMES_ERA.test(plain)) {
    return refuse(`Arabic figures may count from the Hijra or from Christ; write AH ${plain} or AD ${plain}.`);
  }
  return good({ text: text.trim(), ...outcome.value });
}

/** Only EDTF may be longer than a phrase. */
function readLong(text: string, plain: string): Outcome<Dating> {
  const edtf = plain.length > LONGEST ? undefined : readEdtf(plain);
  return edtf?.ok ? good({ text: text.trim(), ...edtf.value }) : refuse(TOO_LONG);
}

function readWhole(text: string, readPhrase: WordReader): Outcome<Reading> | undefined {
  const undated = (UNDATED_WORDS.exec(text) ?? UNDATED_AFTER.exec(text))?.groups;
  if (undated) {
    const inner = undated['inner']?.replace(/^[[(](.*)[\])]$/, '$1');
    return inner === undefined ? good({ ...readYears(null, null) }) : readWhole(inner, readPhrase);
  }
  const edtf = readEdtf(text);
  if (edtf?.ok) return edtf;
  // Hyphen and two figures that are no month may be years, 1279-81; so may the second of two eras, 1255/1839-40.
  if (edtf && !/^(?:\d{4}\/)?\d{4}-\d\d$/.test(text)) return edtf;
  const former = refuseFormerEdtf(text);
  if (former !== undefined) return refuse(former);
  return readPhrase(text) ?? edtf;
}

/** Names the words that were left over, when what stands before them is a date. */
function notUnderstood(text: string, readPhrase: WordReader): string {
  const list = text.split(/[,;] ?/);
  if (list.length > 1 && list.length < 9 && list.every((date) => readWhole(date, readPhrase)?.ok)) {
    return `"${text}" does not say whether it is one of the dates or all; write ${list.join(' or ')}, or ${list.join(' and ')}.`;
  }
  const words = text.split(' ');
  for (let kept = Math.min(words.length - 1, 6); kept > 0; kept -= 1) {
    const date = words.slice(0, kept).join(' ').replace(/[,;]$/, '');
    if (readWhole(date, readPhrase)?.ok) {
      return `"${date}" is a date, but "${words.slice(kept).join(' ')}" after it is not understood; write ${date} alone.`;
    }
  }
  return `"${text}" is not a date that can be read here; write one such as ${EXAMPLES}.`;
}
