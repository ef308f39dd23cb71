import { calendarOf, dayFromCivil, isoDay, isoDays } from '../calendars/civil.ts';
import { good, refuse, type Outcome } from '../outcome.ts';
import type { Bound, Reading } from './dating.ts';
import { parseComponent, type Component } from './edtf-component.ts';

/** One end of an EDTF interval: a date, `..` (open) or nothing (not known). */
type End = Component | 'open' | null;

/**
 * Reads the Extended Date/Time Format (Library of Congress, 2019; ISO 8601-2): levels 0 and 1, and of level 2 sets,
 * X and marks at any place, S and long years. Undefined when the text is not EDTF at all.
 */
export function readEdtf(text: string): Outcome<Reading> | undefined {
  const set = /^(?:\[(?<one>[^[\]{}]*)\]|\{(?<all>[^[\]{}]*)\})$/.exec(text)?.groups;
  if (set) return readSet(text, set['one'] ?? set['all'] ?? '');
  const ends = text.split('/');
  if (ends.length === 2) return readInterval(text, ends[0] ?? '', ends[1] ?? '');
  const component = parseComponent(text);
  if (!component?.ok) return component;
  return good(readingOf(text, component.value, component.value));
}

function readInterval(text: string, start: string, end: string): Outcome<Reading> | undefined {
  const first = parseEnd(start);
  const last = parseEnd(end);
  if (first === undefined || last === undefined) return undefined;
  if (!first.ok) return first;
  if (!last.ok) return last;
  if (isComponent(first.value) && isComponent(last.value) && startsAfter(first.value, last.value)) {
    return refuse(`The range runs backwards: ${start} is later than ${end}. Write ${end}/${start}.`);
  }
  return good(readingOf(text, first.value, last.value));
}

function parseEnd(text: string): Outcome<End> | undefined {
  if (text === '') return good(null);
  if (text === '..') return good('open');
  // The standard gives an interval no time of day.
  return text.includes('T') ? undefined : parseComponent(text);
}

function readSet(text: string, inside: string): Outcome<Reading> | undefined {
  const members: { first: End; last: End }[] = [];
  const parts = inside.split(',');
  for (const [index, part] of parts.entries()) {
    const [start, end, more] = part.trim().split('..');
    if (start === undefined || more !== undefined) return undefined;
    // Two full stops may be left open only before the first date and after the last.
    if ((start === '' && index > 0) || (end === '' && index < parts.length - 1)) return undefined;
    const first = start === '' && end !== undefined ? good('open' as const) : parseComponent(start);
    const last = end === undefined ? first : end === '' ? good('open' as const) : parseComponent(end);
    if (first === undefined || last === undefined) return undefined;
    if (!first.ok) return first;
    if (!last.ok) return last;
    if (first.value === 'open' && last.value === 'open') return undefined;
    if (isComponent(first.value) && isComponent(last.value) && startsAfter(first.value, last.value)) {
      return refuse(`"${part.trim()}" runs backwards; write ${end ?? ''}..${start}.`);
    }
    members.push({ first: first.value, last: last.value });
  }
  return good(readingOfSet(text, members));
}

function readingOfSet(text: string, members: readonly { first: End; last: End }[]): Reading {
  const lows = members.map(({ first }) => lowOf(first));
  const highs = members.map(({ last }) => highOf(last));
  const spans = lows.flatMap((low, index) => {
    const high = highs[index];
    return typeof low === 'number' && typeof high === 'number' ? [[low, high] as const] : [];
  });
  return {
    earliest: extreme(lows, Math.min),
    latest: extreme(highs, Math.max),
    edtf: text.replace(/\s/g, ''),
    calendar: 'gregorian',
    about: members.some(({ first, last }) => isMarked('about', first, last)),
    doubtful: members.some(({ first, last }) => isMarked('doubtful', first, last)),
    ...(spans.length === members.length && { years: spans }),
  };
}

function extreme(bounds: readonly Bound[], choose: (...years: number[]) => number): Bound {
  if (bounds.includes('open')) return 'open';
  const years = bounds.filter((bound) => typeof bound === 'number');
  return years.length === bounds.length ? choose(...years) : null;
}

function readingOf(text: string, first: End, last: End): Reading {
  const days = daysOf(first, last);
  return {
    earliest: lowOf(first),
    latest: highOf(last),
    edtf: text.replace(/T[\d:.Z+-]*$/, ''),
    calendar: days.dayCalendar === 'julian' ? 'julian' : 'gregorian',
    about: isMarked('about', first, last),
    doubtful: isMarked('doubtful', first, last),
    ...days,
  };
}

/** First and last day, as far as the two ends settle them. */
function daysOf(first: End, last: End): Partial<Pick<Reading, 'from' | 'to' | 'dayCalendar'>> {
  const start = isComponent(first) && first.daysKnown ? civil(first.low, first.first) : undefined;
  const end = isComponent(last) && last.daysKnown ? civil(last.high, last.last) : undefined;
  if (start && end) return isoDays(dayFromCivil(start), dayFromCivil(end));
  if (start) return { from: isoDay(start), dayCalendar: calendarOf(start) };
  return end ? { to: isoDay(end), dayCalendar: calendarOf(end) } : {};
}

function civil(year: number | null, [month, day]: readonly [number, number]) {
  return year === null ? undefined : { year, month, day };
}

function isComponent(end: End): end is Component {
  return typeof end === 'object' && end !== null;
}

function lowOf(end: End): Bound {
  return isComponent(end) ? end.low : end;
}

function highOf(end: End): Bound {
  return isComponent(end) ? end.high : end;
}

function isMarked(mark: 'about' | 'doubtful', ...ends: readonly End[]): boolean {
  return ends.some((end) => isComponent(end) && end[mark]);
}

/** Whether the first date cannot come before the last, however their missing digits are filled in. */
function startsAfter(first: Component, last: Component): boolean {
  if (first.low === null || last.high === null) return false;
  if (first.low !== last.high) return first.low > last.high;
  return first.first[0] * 100 + first.first[1] > last.last[0] * 100 + last.last[1];
}

/**
 * Forms of the draft of 2012 that the standard of 2019 took out, each with its form of today. They are refused by
 * name and not read, because software still in use writes them.
 */
interface FormerForm {
  readonly found: RegExp;
  readonly now: (text: string) => string;
  readonly because: string;
}

const FORMER_FORMS: readonly FormerForm[] = [
  {
    found: /(?:^|\/)unknown(?:\/|$)/i,
    now: (text) => text.replace(/unknown/gi, ''),
    because: 'An unknown end is now left empty',
  },
  {
    found: /\/open$|^open\//i,
    now: (text) => text.replace(/open/gi, '..'),
    because: 'An open end is now two full stops',
  },
  {
    found: /(?:^|[-/?~%])-?\d{0,3}u+(?:$|[-/?~%])/i,
    now: (text) => text.replace(/u/gi, 'X'),
    because: 'The u of 2012 is now X',
  },
  {
    found: /^-?\d{1,3}x+(?:$|[-/?~%])/,
    now: (text) => text.replaceAll('x', 'X'),
    because: 'An open digit is now a capital X',
  },
  {
    found: /^[?~%]?y-?\d/,
    now: (text) => text.replace('y', 'Y').replaceAll('e', 'E').replace('p', 'S'),
    because: 'The y of 2012 is now a capital Y',
  },
  { found: /\d(?:\?~|~\?)/, now: (text) => text.replace(/\?~|~\?/g, '%'), because: 'The pair ?~ is now %' },
  {
    found: /^(?!\(\d+\)$)(?![^()]*\(\?\)$)(?=[^)]*\))\(?-?\d[\d\-?~%()/]*$/,
    now: (text) => text.replace(/[()]/g, ''),
    because: 'Parentheses no longer group',
  },
  { found: /^-?\d{4}-2\d\^/, now: (text) => text.replace(/\^.*$/, ''), because: 'The ^ of 2012 is gone' },
];

/** The sentence that refuses a form of 2012, or undefined when the text is none. */
export function refuseFormerEdtf(text: string): string | undefined {
  const found = FORMER_FORMS.filter((form) => form.found.test(text));
  const [former] = found;
  if (!former) return undefined;
  const now = found.reduce((written, form) => form.now(written), text);
  if (!readEdtf(now)?.ok) return undefined;
  return `"${text}" is EDTF as it was in 2012. ${former.because}: write ${now} instead.`;
}
