import { good, refuse, type Outcome } from '../outcome.ts';
import type { DateContext } from './dating.ts';
import { ambiguousYear } from './ambiguous-eras.ts';
import { LAST_BARE_YEAR } from './format-years.ts';

const YEAR = '-?\\d{1,4}';
const JOINT = '(?<joint> ?(?:-|/| to | bis | à ) ?)';
const BARE = new RegExp(`^(?<first>${YEAR})(?:${JOINT}(?<last>${YEAR}))?$`);
/** `625/600-522`: a pair or a range at one end of a range. */
const THREE = /^(\d{1,3})[/-](\d{1,3}) ?[/-] ?(\d{1,3})$/;
/** `162/1-150/49`, `162/1-150`: ends of a range that are pairs, in a column of years BC. */
const PAIRS = /^\d{1,3}(?:\/\d{1,3})? ?- ?\d{1,3}(?:\/\d{1,3})?$/;
/** Schemes of eras end their last period later than any coin. */
const LAST_EVENT = 2200;
/** EDTF writes a negative year in four figures: -0043. */
const PADDED = /^-0\d{3}$/;

/**
 * Years without the sign of an era, written with one, when a column's convention or the numbers themselves say which:
 * `420-400` runs backwards in every era but BC. Refused when they do not; undefined when the words are of another kind.
 */
export function namedEra(words: string, context: DateContext): Outcome<string> | undefined {
  const groups = BARE.exec(words)?.groups;
  if (!groups) return context.era === 'BC' && PAIRS.test(words) ? good(`${words} BC`) : descending(words);
  const years = [groups['first'] ?? '', groups['last'] ?? ''].filter((year) => year !== '');
  if (years.some((year) => year.startsWith('-'))) return negative(words, years, context);
  if (years.every((year) => year.length < 4)) return small(words, groups, context);
  const [only] = years;
  if (years.length > 1 || only === undefined) return undefined;
  return ambiguousYear(only, Number(only) > (context.dateOf === 'event' ? LAST_EVENT : LAST_BARE_YEAR), context);
}

function descending(words: string): Outcome<string> | undefined {
  const years = THREE.exec(words)?.slice(1).map(Number);
  if (!years?.every((year, index) => index === 0 || year < (years[index - 1] ?? 0))) return undefined;
  return good(`${words} BC`);
}

/** Negative years, whose conventions differ by one: -57 is 57 BC in most lists and 58 BC where there is a year 0. */
function negative(words: string, years: readonly string[], context: DateContext): Outcome<string> | undefined {
  if (context.negative === undefined) {
    if (years.every((year) => PADDED.test(year) || /^\d{4}$/.test(year))) return undefined;
    const counted = years.find((year) => year.startsWith('-') && !PADDED.test(year)) ?? '';
    const number = Number(counted.slice(1));
    const ways = `write ${String(number)} BC, or ${String(number + 1)} BC if the source has a year 0`;
    return refuse(`"${words}" has a bare negative year, whose conventions differ by one; for ${counted} ${ways}.`);
  }
  const step = context.negative === 'astronomical' ? 1 : 0;
  const named = years.map((year) => {
    const number = Number(year);
    if (number === 0 && step === 1) return '1 BC';
    return number < 0 ? `${String(step - number)} BC` : `AD ${String(number)}`;
  });
  return good(named.join(' - '));
}

function small(words: string, groups: Record<string, string>, { era }: DateContext): Outcome<string> {
  const { first = '', last } = groups;
  if (era !== undefined) return good(era === 'BC' ? `${words} BC` : `${era} ${words}`);
  if (last === undefined) return refuse(askForEra(words, [`AD ${words}`, `${words} BC`, `AH ${words}`]));
  // What a shortened second year stands for: 193-7 is 193 to 197, unless it is 193 to 7 BC.
  const completed = Number(first.slice(0, Math.max(0, first.length - last.length)) + last);
  const falls = Number(last) < Number(first);
  const isWhole = last.length === first.length || last.startsWith('0');
  if (isWhole && falls && completed <= Number(first) && Number(last) > 0) return good(`${words} BC`);
  return refuse(askForEra(words, [`AD ${words}`, ...(falls ? [`${words} BC`] : []), `AH ${words}`]));
}

function askForEra(words: string, ways: readonly string[]): string {
  return `A bare ${words} could be counted from any era; write ${ways.slice(0, -1).join(', ')} or ${ways.at(-1) ?? ''}.`;
}
