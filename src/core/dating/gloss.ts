import { isoYear } from '../calendars/civil.ts';
import { good, refuse, type Outcome } from '../outcome.ts';
import type { Bound, Reading, Reign } from './dating.ts';
import { unmistakableForms } from './read-era.ts';
import { readIndiction, reignsOfTitle } from './read-cycle.ts';
import { reignsCalled } from './read-regnal.ts';
import { qualify, readYears, type PointContext, type WordReader } from './reading.ts';
import { readLetterYear } from './read-year.ts';
import { followingYear, secondYearBefore } from './shortened.ts';

const YEAR = '\\d{1,4}';
const REIGN_YEAR =
  'regnal year|year|yr|r\\. ?y|ry|a\\. ?r|a|anno|anno regni|Jahr|Regierungsjahr|an|année|année de règne';
const FIRST = `(?:AD )?(?<first>${YEAR})(?<firstBc> ?BC)?`;
const YEARS = `${FIRST}(?:(?:/| - |-)(?:AD )?(?<last>${YEAR}))?(?<bc> ?BC)?(?: AD)?`;
const IN_PARENTHESES = new RegExp(`^(?<date>.*\\S) ?\\((?:= ?)?${YEARS}\\)$`);
const AFTER_EQUALS = new RegExp(`^(?<date>.*\\S) ?= ?${YEARS}$`);

/** Islamic coins are listed as `AH 294/906-7`; a stroke alone may also stand between two years, so here only what agrees is read. */
const AFTER_STROKE = new RegExp(`^(?<date>.*\\S) ?/ ?${YEARS}$`);
/** `294/906-7`: the first of a pair that agrees is Hijri, though it does not say so. */
const HIJRI_PAIR = /^\d{1,4} ?\/ ?\d{3,4} ?- ?\d{1,4}(?: AD)?$/;
/** `1200 (AH 596)`, `1948 = AM 5708`: the years of ours first. */
const YEARS_FIRST = new RegExp(`^${YEARS} ?(?:\\((?:= ?)?(?<date>[^()]*\\S)\\)|= ?(?<after>.*\\S))$`);
/** `AM 6095, indiction 5`, `AD 587 (indiction 5)` */
const WITH_INDICTION =
  /^(?<date>.*\d.*?),? \(?(?<indiction>ind(?:\.|iction)? ?(?:\d{1,2}|[IVX]{1,4})|\d{1,2}(?:st|nd|rd|th) indiction)\)?$/i;

/**
 * `AH 1255 (1839/40)`, `AH 1255 = AD 1839`, `AH 294/906-7`, `1200 (AH 596)`: the years of ours next to a year of
 * another era must agree with it; they choose among the years of a cycle and among the eras that a sign may stand
 * for. Undefined when there is no such pair.
 */
export function readGlossed(text: string, read: WordReader): Outcome<Reading> | undefined {
  const several = readSeveral(text, read) ?? readNamelessReign(text, read);
  if (several) return several;
  const groups = (IN_PARENTHESES.exec(text) ?? AFTER_EQUALS.exec(text))?.groups;
  if (!groups)
    return readBothFigures(text) ?? readYearsFirst(text, read) ?? readIndicted(text, read) ?? readStroke(text, read);
  const date = groups['date'] ?? '';
  // Two years of ours after one date agree with nothing.
  if (IN_PARENTHESES.test(date) || AFTER_EQUALS.test(date)) return undefined;
  return readLetterYear(date, NOTHING) ? agreedLetters(text, date, groups) : agreed(text, date, groups, read);
}

/** `13 Hen. VII or 1 Hen. VIII (1497–98 or 1509–10)` */
const SEVERAL = /^(?<date>.*\S) ?\((?<years>[^()]*\d (?:or|and) [^()]*)\)$/;

/** Several dates of another era, and the years of each in parentheses. */
function readSeveral(text: string, read: WordReader): Outcome<Reading> | undefined {
  const { date = '', years = '' } = SEVERAL.exec(text)?.groups ?? {};
  const [said, beside] = date === '' ? [] : [read(date), read(years)];
  if (!said?.ok || !beside?.ok || !said.value.years || isOfChrist(said.value)) return undefined;
  if (said.value.years.join(' ') === beside.value.years?.join(' ')) return said;
  return refuse(`The years of "${text}" do not agree; write ${date} alone to see what it comes to.`);
}

/** `Jahr 3 = 286/7`, `year 13 (539/40)`, `A. III (1981)`: a year of a reign that is not named, and the years of ours. */
const NAMELESS = new RegExp(
  `^(?:${REIGN_YEAR})\\.? ?(?:\\d{1,2}|[IVXL]{1,6}),? ?(?:\\((?:= ?)?(?<inside>[^()]*\\d[^()]*)\\)|= ?(?<after>.*\\d.*))$`,
  'i',
);
/** Years of the French Republic, whose `an 13` must agree with the year of ours. */
const OF_REPUBLIC = /^an/i;
const REPUBLICAN_YEARS: readonly [number, number] = [1792, 1870];

function readNamelessReign(text: string, read: WordReader): Outcome<Reading> | undefined {
  const { inside, after } = NAMELESS.exec(text)?.groups ?? {};
  const years = inside ?? after;
  const reading = years === undefined ? undefined : read(years);
  if (!reading?.ok || !isOfChrist(reading.value)) return reading?.ok === false ? reading : undefined;
  const { earliest, latest } = reading.value;
  if (typeof earliest !== 'number' || typeof latest !== 'number' || latest - earliest > 1) return undefined;
  const [from, to] = REPUBLICAN_YEARS;
  return OF_REPUBLIC.test(text) && earliest <= to && latest >= from ? undefined : reading;
}

const NOTHING: PointContext = { readDate: () => undefined };

function agreedLetters(text: string, letters: string, groups: Record<string, string>): Outcome<Reading> | undefined {
  const reading = readLetterYear(letters, NOTHING);
  const { low, high } = yearsOfGloss(groups);
  if (reading?.ok && agreeing(reading.value, low, high)) return reading;
  return refuse(`The two years of "${text}" do not agree; write ${letters} alone to see what it comes to.`);
}

/** A date of another era with the years of ours that it must agree with. */
function agreed(
  text: string,
  date: string,
  groups: Record<string, string>,
  read: WordReader,
): Outcome<Reading> | undefined {
  const { low, high } = yearsOfGloss(groups);
  const reading = read(date);
  const forms = unmistakableForms(date);
  if (forms.length === 0 && reading?.ok && isOfChrist(reading.value)) return undefined;
  const outcomes = forms.length > 0 ? forms.map((form) => read(form)) : [reading];
  const readings = outcomes.flatMap((outcome) => (outcome?.ok ? [outcome.value] : []));
  if (readings.length === 0) return undefined;
  const fitting = readings.flatMap((one) => (one.years ? chosen(one, low, high) : agreeing(one, low, high)) ?? []);
  const [only] = fitting;
  if (fitting.length === 1 && only) return good(only);
  if (fitting.length > 1) return reading;
  return refuse(
    `The two years of "${text}" do not agree; write ${forms.join(' or ') || date} alone to see what it comes to.`,
  );
}

/** The years of ours first, and the same in another era after them. */
function readYearsFirst(text: string, read: WordReader): Outcome<Reading> | undefined {
  const groups = YEARS_FIRST.exec(text)?.groups;
  const date = groups?.['date'] ?? groups?.['after'] ?? '';
  // A number in parentheses alone is no date of another era.
  if (!groups || !/[^\d\s]/.test(date) || (groups['first'] ?? '').length < 3) return undefined;
  return agreed(text, date, groups, read);
}

/** A date with the indiction, which must be one of its years. */
function readIndicted(text: string, read: WordReader): Outcome<Reading> | undefined {
  const { date = '', indiction = '' } = WITH_INDICTION.exec(text)?.groups ?? {};
  const reading = date === '' ? undefined : read(date);
  const cycle = readIndiction(indiction.replace(/^ind(?:\.|iction)? ?/i, 'indiction '), NOTHING);
  if (!reading?.ok || !cycle) return reading;
  if (!cycle.ok) return cycle;
  const { earliest, latest } = reading.value;
  if (typeof earliest !== 'number' || typeof latest !== 'number') return undefined;
  const [low, high] = byzantineYears(reading.value) ?? [earliest, latest];
  const kept = chosen(cycle.value, low, high);
  if (!kept) return refuse(`"${date}" is no year of the ${indiction}; write one of them alone.`);
  const [span, ...others] = kept.years ?? [];
  if (span === undefined || others.length > 0) return good(kept);
  const [first, last] = [Math.max(earliest, span[0]), Math.min(latest, span[1])];
  return good(first === earliest && last === latest ? reading.value : readYears(first, last, 'indiction'));
}

/** A year that begins in September in the two years that an indiction is named by, drawn in so that its neighbours do not touch. */
function byzantineYears({ calendar, earliest, latest }: Reading): readonly [number, number] | undefined {
  if (calendar !== 'byzantine' || typeof earliest !== 'number' || typeof latest !== 'number') return undefined;
  return [earliest + MOST_OF_YEAR, latest - MOST_OF_YEAR];
}

/** Less than half a year: a span of two years touches no other that begins where it ends. */
const MOST_OF_YEAR = 0.4;

/** `1910 (MCMX)`: figures, and in parentheses the letters on the piece. */
function readBothFigures(text: string): Outcome<Reading> | undefined {
  const { year = '', letters = '' } = /^(?<year>\d{4}) ?\((?<letters>[^()\d]+)\)$/.exec(text)?.groups ?? {};
  const reading = letters === '' ? undefined : readLetterYear(letters, NOTHING);
  if (!reading?.ok) return undefined;
  if (reading.value.earliest === Number(year)) return reading;
  return refuse(`The two years of "${text}" do not agree; write ${letters} alone to see what it comes to.`);
}

function isOfChrist({ calendar }: Reading): boolean {
  return calendar === 'gregorian' || calendar === 'julian';
}

/** Two years that agree, on either side of a stroke. */
function readStroke(text: string, read: WordReader): Outcome<Reading> | undefined {
  const { date = '', ...years } = AFTER_STROKE.exec(text)?.groups ?? {};
  if (date === '' || date.includes('/') || (years['first'] ?? '').length < 3) return undefined;
  const reading = read(HIJRI_PAIR.test(text) ? `AH ${date}` : date);
  if (!reading?.ok || isOfChrist(reading.value)) return undefined;
  const { low, high } = yearsOfGloss(years);
  const agreed = agreeing(reading.value, low, high);
  return agreed && good(agreed);
}

/** First and last year, the figures that the last leaves out taken from the first: 906/7. */
function yearsOfGloss({ first = '', last = first, firstBc, bc }: Record<string, string>): {
  low: number;
  high: number;
} {
  if (bc !== undefined) return { low: 1 - Number(first), high: 1 - followingYear(first, last) };
  if (firstBc !== undefined) return { low: 1 - Number(first), high: last === first ? 1 - Number(first) : Number(last) };
  const isCut = last.length < first.length;
  return { low: Number(first), high: Number(isCut ? first.slice(0, -last.length) + last : last) };
}

function agreeing(reading: Reading, low: number, high: number): Reading | undefined {
  const { earliest, latest } = reading;
  if (typeof earliest !== 'number' || typeof latest !== 'number') return undefined;
  return low <= high && earliest <= low && high <= latest ? reading : undefined;
}

/** The years of a date with several that touch others. */
function chosen(reading: Reading, low: number, high: number): Reading | undefined {
  const years = (reading.years ?? []).filter(([first, last]) => first <= high && last >= low);
  const [only] = years;
  const last = years.at(-1);
  if (only === undefined || last === undefined) return undefined;
  const members = years.map(([from, to]) => (from === to ? isoYear(from) : `${isoYear(from)}..${isoYear(to)}`));
  const edtf = years.length === 1 ? (members[0] ?? '').replace('..', '/') : `[${members.join(',')}]`;
  return { ...reading, years, earliest: only[0], latest: last[1], edtf };
}

/** `Edward I (1272-1307)`, `Philip II, 359-336 BC`, `Edward I (r. 1272-1307)`: a ruler, and years that must lie in the reign. */
const SAID =
  '(?<about>c\\.|ca\\.|circa)? ?(?:AD )?(?<first>\\d{2,4})(?: ?[-/] ?(?:AD )?(?<last>\\d{1,4}))? ?(?<era>BCE?|AD|CE)?';
const WITH_REIGN = new RegExp(
  `^(?:(?:the )?reign of )?(?<name>\\p{Lu}[^\\d(,]*[^\\d(, ])(?:,? \\(|,? )(?:r\\.|reigned|ruled)? ?${SAID}\\)?$`,
  'u',
);
/** Years with the ruler in front of them, when some reign of that name holds them; `read` reads the bounds of reigns. */
export function readWithReign(text: string, reigns: readonly Reign[], read: WordReader): Outcome<Reading> | undefined {
  const { name = '', first = '', last = first, era, about } = WITH_REIGN.exec(text)?.groups ?? {};
  if (name === '' || text.includes('(') !== text.endsWith(')')) return undefined;
  // Vict. 12 is a year of hers.
  if (first.length < 3 && era === undefined && !text.includes('(')) return undefined;
  const known = [...reignsCalled(name, reigns), ...reignsOfTitle(name)];
  if (known.length === 0) return undefined;
  const isBefore = era?.startsWith('B') === true;
  const end = isBefore && last !== first ? secondYearBefore(first, last, 'hyphen') : good(followingYear(first, last));
  if (!end.ok) return end;
  const [low, high] = isBefore ? [1 - Number(first), 1 - end.value] : [Number(first), end.value];
  const holds = known.some(({ from, to }) => {
    const [begun, ended] = [read(from), read(to)];
    return begun?.ok && ended?.ok && isWithin([low, high], begun.value.earliest, ended.value.latest);
  });
  if (holds && low <= high) return good(qualify(readYears(low, high), about !== undefined, false));
  return refuse(
    `No reign of "${name}" that is known here holds the years of "${text}"; write the years alone if they are right.`,
  );
}

function isWithin([low, high]: readonly number[], first: Bound, last: Bound): boolean {
  return typeof first === 'number' && first <= (low ?? first) && (typeof last !== 'number' || (high ?? last) <= last);
}
