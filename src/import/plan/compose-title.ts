import type { Written } from '../../catalogue/yaml.ts';
import { formatDate } from '../../core/dating/format-date.ts';
import { parseDate } from '../../core/dating/parse-date.ts';
import type { Draft } from './draft.ts';
import { partsOf } from '../columns/pattern.ts';

/**
 * A title by a pattern such as `{denomination} of {ruler}, {mint}, {date}`. A part with nothing in it, or *unknown* or
 * *none*, falls out with the words before it: `Penny, York, 1279`. Null when no part has anything.
 */
export function composeTitle(
  pattern: string,
  facts: ReadonlyMap<string, Written>,
  names: Draft['names'],
): string | null {
  const between = pattern.split(/\{[^{}]*\}/);
  const title = partsOf(pattern).reduce<string | null>((before, part, at) => {
    const text = textOf(part, facts, names);
    if (text === null) return before;
    return before === null && at > 0 ? text : `${before ?? ''}${between[at] ?? ''}${text}`;
  }, null);
  if (title === null) return null;
  const whole = `${title}${between.at(-1) ?? ''}`.trim();
  return whole.charAt(0).toUpperCase() + whole.slice(1);
}

function textOf(part: string, facts: ReadonlyMap<string, Written>, names: Draft['names']): string | null {
  if (part === 'ruler') return doubted('ruler', names.ruler?.map(({ name }) => name).join(' and ') ?? null, facts);
  if (part === 'mint') return doubted('mint', names.mint?.name ?? null, facts);
  if (part === 'denomination') return names.denomination?.name ?? null;
  if (part === 'date') return dateInWords(facts.get('date'), facts.get('dated'));
  const value = facts.get(part.replace(/^(obverse|reverse|edge) /, '$1.'));
  return typeof value === 'string' && value !== 'unknown' && value !== 'none' ? value : null;
}

/** A name with its doubt, as `check` wants it said: *possibly Oxford*. */
function doubted(field: string, name: string | null, facts: ReadonlyMap<string, Written>): string | null {
  const sure = facts.get(`sure.${field}`);
  if (name === null || name === 'unknown' || name === 'none') return name;
  return sure === 'possible' ? `possibly ${name}` : sure === 'probable' ? `probably ${name}` : name;
}

/** A date as a ticket words it; what cannot be read there is in no title. */
function dateInWords(date: Written | undefined, dated: Written | undefined): string | null {
  if (typeof date !== 'string') return null;
  // `1931 D` says more than 1931, and is how such a piece is called.
  if (typeof dated === 'string' && dated.startsWith(date)) return dated;
  const read = parseDate(date);
  return read.ok ? formatDate(read.value) : null;
}

/** `Coin weight 12`; what is of no known kind is a piece. */
export function plainTitle(kind: string, number: string): string {
  const text = kind === '' || kind === 'other' || kind === 'unknown' ? 'piece' : kind.replaceAll('-', ' ');
  return `${text.charAt(0).toUpperCase()}${text.slice(1)} ${number}`;
}
