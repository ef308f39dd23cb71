import { yearsOf } from '../../core/dating/interval.ts';
import { parseDate } from '../../core/dating/parse-date.ts';
import type { Dating } from '../../core/dating/dating.ts';
import type { Span } from './spans.ts';

/** The two ends of a reign in words the form of a ruler takes, and the years between them. */
export type SheetReign = { readonly from: string; readonly to: string; readonly span: Span };

const BEFORE_CHRIST = /\s*\b(?:BC|B\.C\.|BCE|B\.C\.E\.|v\.\s?Chr\.?|av\.\s?J\.-C\.|a\.\s?C\.|v\.\s?C\.)$/iu;

/**
 * A reign as sheets write it beside a ruler: `1272-1307`, `978–1016`, `1413-22`, `r. 841-849`, `27 BC - AD 14`, `58-44 BC`. Null when it has no
 * two ends that can be read, or runs backwards.
 */
export function reignIn(text: string): SheetReign | null {
  const plain = text.trim().replace(/^(?:r\.|reg\.|reigned|ruled|reg\.\s)\s*/iu, '');
  const [, first, last] = /^(.+?)\s*(?:\/|–|—|-|\bto\b|\bbis\b|\bà\b)\s*(.+)$/u.exec(plain) ?? [];
  if (first === undefined || last === undefined) return null;
  const era = BEFORE_CHRIST.exec(last)?.[0] ?? '';
  const from = `${first}${/^[\d\s.~c]+$/u.test(first) ? era : ''}`;
  const isShort = era === '' && /^\d{3,4}$/.test(first) && /^\d{1,2}$/.test(last);
  const to = isShort ? `${first.slice(0, -last.length)}${last}` : last;
  const [begun, ended] = [end(from), end(to)];
  if (begun === null || ended === null) return null;
  const span = { low: yearsOf(begun.date).low, high: yearsOf(ended.date).high };
  return span.low <= span.high ? { from: begun.text, to: ended.text, span } : null;
}

/** One end, a bare year in four figures. */
function end(text: string): { readonly text: string; readonly date: Dating } | null {
  const plain = text.trim();
  const written = /^\d{1,3}$/.test(plain) ? plain.padStart(4, '0') : plain;
  const read = parseDate(written, { dateOf: 'event' });
  return read.ok ? { text: written, date: read.value } : null;
}
