import { good, type Outcome } from '../outcome.ts';
import { namedEra } from './bare-years.ts';
import type { DateContext, Reading } from './dating.ts';
import { readEdtf } from './edtf.ts';
import { readGlossed, readWithReign } from './gloss.ts';
import { readHyphened } from './shortened.ts';
import { readBothBounds, readBound } from './read-bound.ts';
import { readCentury, readDecade } from './read-century.ts';
import { readCyclical, readIndiction, readOlympiad, readReignTitle } from './read-cycle.ts';
import { readDay } from './read-day.ts';
import { readCountedEra, readFrozenYear } from './read-era.ts';
import { readMonth } from './read-month.ts';
import { readChoice, readRange } from './read-range.ts';
import { qualify, type PointContext, type PointReader, type WordReader } from './reading.ts';
import { readTurn } from './read-turn.ts';
import { regnalReader } from './read-regnal.ts';
import { readGiveOrTake, readLetterYear, readPartOfYear, readSeason, readYear } from './read-year.ts';
import { ABOUT, ASIDE, PERHAPS, STRUCK } from './words.ts';
import { anyOf, wordBefore } from './written-text.ts';

const PLAIN: readonly PointReader[] = [
  readYear,
  readDay,
  readSeason,
  readCentury,
  readDecade,
  readPartOfYear,
  readGiveOrTake,
  readFrozenYear,
  readIndiction,
  readOlympiad,
  readCountedEra,
  readMonth,
  readReignTitle,
  readCyclical,
  readLetterYear,
];

const ASIDES = new RegExp(`^(?:${anyOf(ASIDE)} )+`, 'i');
/** No single point in time takes more letters, the longest name of a ruler with his year included. */
const LONGEST_POINT = 72;
/** What joins two points is part of neither; "and" is left out, for William and Mary. */
const JOINED = / (?:-|to|or|bis|à) /i;

/** Reads one point in time, whatever it is counted by. */
function pointReader(context: PointContext): WordReader {
  const readers = [...PLAIN, regnalReader(context.reigns ?? [])];
  const readBare: WordReader = (text) => {
    for (const reader of readers) {
      const outcome = reader(text, context);
      if (outcome) return outcome;
    }
    return undefined;
  };
  return (text) => {
    if (text.length > LONGEST_POINT || JOINED.test(text)) return undefined;
    const words = text.replace(ASIDES, '');
    return readBare(text) ?? (words === text ? undefined : readBare(words));
  };
}

const MARKS = [
  { mark: 'doubtful', found: wordBefore(PERHAPS), leave: '' },
  { mark: 'about', found: wordBefore(ABOUT), leave: '' },
  // "AD c. 270" is "c. AD 270".
  { mark: 'about', found: /^(?<era>AD|A\.D\.|AH|A\.H\.) (?:c\.|ca\.|circa|about) /i, leave: '$<era> ' },
  { mark: 'doubtful', found: / ?(?:\?|\(\?\)|\(probably\)|\(perhaps\))$/i, leave: '' },
  { mark: 'doubtful', found: /(?<=^\d{1,5}) ?\?(?= [A-Z])/, leave: '' },
  { mark: 'about', found: / (?:or so|or thereabouts|ca\.|circa|\((?:circa|c\.|ca\.|about)\))$/i, leave: '' },
] as const;

/** Marks may be in any order, and each once on either side; who doubts more often than that writes no date. */
const MOST_ROUNDS = 4;

/** Takes "about" and "perhaps" off both ends of some words and puts them on what the rest is read as. */
function readQualified(
  text: string,
  read: (words: string, isAbout: boolean) => ReturnType<WordReader>,
): Outcome<Reading> | undefined {
  const marks = new Set<string>();
  let words = withoutParentheses(text);
  for (let before = '', round = 0; before !== words && round < MOST_ROUNDS; round += 1) {
    before = words;
    for (const { mark, found, leave } of MARKS) {
      const rest = words.replace(found, leave).trim();
      if (rest === words || rest === '') continue;
      words = withoutParentheses(rest);
      marks.add(mark);
    }
  }
  const outcome = read(words, marks.has('about'));
  return outcome?.ok ? good(qualify(outcome.value, marks.has('about'), marks.has('doubtful'))) : outcome;
}

function withoutParentheses(text: string): string {
  return /^(?:\((?<round>[^()]+)\)|\[(?<square>[^[\]]+)\])$/.exec(text)?.slice(1).find(Boolean)?.trim() ?? text;
}

const STRUCK_WORD = wordBefore(STRUCK);
/** `1816-1820 (issued)`, as museums say which date it is. */
const STRUCK_AFTER = new RegExp(` \\((?:${anyOf(STRUCK)}|dated)\\)$`, 'i');

/**
 * Reads a date in free words: a point in time, or several joined, or the time before or after one, with "about" and
 * "perhaps" round any of them. Undefined when any word is not understood.
 */
export function phraseReader(context: DateContext): WordReader {
  const point = remembering(pointReader({ ...context, readDate: readBoundOfReign }));
  const inEra = (words: string, read: WordReader) => {
    const era = namedEra(words, context);
    if (!era) return read(words);
    return era.ok ? read(era.value) : era;
  };
  const readPoint = remembering((words) => readQualified(words, (bare) => inEra(bare, point)));
  const readLimit: WordReader = (words) =>
    inEra(words, (named) => readPoint(named) ?? edtfDate(named, context) ?? readRange(named, readPoint));
  // About, struck and undated say that a hyphen stands between years: c. 1902-10.
  const inYears: DateContext = { ...context, hyphen: context.hyphen ?? 'range' };
  return function readPhrase(said) {
    const text = said.replace(STRUCK_WORD, '').replace(STRUCK_AFTER, '');
    // A sign that is a word elsewhere may be part of the date: C12, C.E. 325.
    const whole = point(text);
    if (whole?.ok) return whole;
    return readQualified(text, (bare, isAbout) => {
      const hyphened = readHyphened(bare, isAbout || text !== said ? inYears : context);
      if (hyphened) return hyphened;
      return inEra(bare, (words) => {
        const plain =
          readWithReign(words, context.reigns ?? [], readBoundOfReign) ??
          readGlossed(words, readPhrase) ??
          readTurn(words) ??
          point(words);
        if (plain?.ok) return plain;
        const joined =
          readChoice(words, readPoint) ??
          readRange(words, readPoint) ??
          readBothBounds(words, readLimit) ??
          readBound(words, readLimit);
        return joined ?? plain ?? edtfDate(words, context);
      });
    });
  };
}

/** A reign's file states its bounds by themselves, not by another reign; they are dates of events. */
const readBoundOfReign: WordReader = (text) => readEdtf(text) ?? phraseReader({ dateOf: 'event' })(text);

/** A date of EDTF with hyphens may stand wherever a year may, when it is no range of years. */
function edtfDate(text: string, context: DateContext): Outcome<Reading> | undefined {
  return text.includes('/') ? undefined : (readHyphened(text, context) ?? readEdtf(text));
}

/** The same words turn up in many cuttings of one phrase, and are read once. */
function remembering(read: WordReader): WordReader {
  const known = new Map<string, ReturnType<WordReader>>();
  return (words) => {
    if (!known.has(words)) known.set(words, read(words));
    return known.get(words);
  };
}
