import { yearsOf } from '../../core/dating/interval.ts';
import { parseDate } from '../../core/dating/parse-date.ts';
import { parseLength } from '../../core/measures/parse-length.ts';
import { parseWeight, weightSpan } from '../../core/measures/parse-weight.ts';
import type { ReadMeasure, Way } from './parse-query.ts';

/** What can only be a date: a century, an era, a bound, a year of four figures. A bare figure may be any number. */
const DATE_WORDS = 'century centuries cent bc bce ad ce ah before after early mid late'.split(' ');
const TELLS_DATE = new RegExp(
  String.raw`\b(?:${DATE_WORDS.join('|')})\b|\d{3,4} ?[-–/] ?\d|^c(?:a|irca)?\.? ?\d{3,4}`,
  'i',
);

/**
 * A date, a weight or a size as the interval that the core reads in it. The core's dates are the greater half of all that
 * Find is: a visitor who asks for words alone does not fetch them.
 */
export const readMeasure: ReadMeasure = (text) => measureIn(text) ?? dateIn(text);

/** A bound whose year has no era: in a cabinet it would be asked about, and a visitor means AD. */
const BARE_BOUND = /^(before|after|until|since|from) (\d{1,3})$/i;

function dateIn(text: string): Way | null {
  if (!TELLS_DATE.test(text)) return null;
  const date = parseDate(text.replace(BARE_BOUND, '$1 AD $2'));
  return date.ok ? { by: 'years', span: yearsOf(date.value) } : null;
}

/** `1.4 g`, `1.3-1.4 g`, `20 grains`, `28 mm`, `18-19 mm`. */
const MEASURE = /^(\d+(?:[.,]\d+)?)(?: ?[-–] ?(\d+(?:[.,]\d+)?))? ?(mm|g|gm|gms|gram|grams|grain|grains|dwt|oz t)\.?$/i;

function measureIn(text: string): Way | null {
  const [, from, to = from, unit = ''] = MEASURE.exec(text) ?? [];
  if (from === undefined || to === undefined) return null;
  const by = unit.toLowerCase() === 'mm' ? 'size' : 'weight';
  const [low, high] = [from, to].map((figure) => {
    if (by === 'weight') {
      const weight = parseWeight(`${figure} ${unit}`);
      return weight.ok ? weightSpan(weight.value) : null;
    }
    const length = parseLength(`${figure} ${unit}`);
    // What is measured to a millimetre is meant to half of one.
    const half = 0.5 / 10 ** (/[.,](\d+)$/.exec(figure)?.[1]?.length ?? 0);
    return length.ok ? { low: length.value.low - half, high: length.value.high + half } : null;
  });
  if (low === null || low === undefined || high === null || high === undefined || high.high < low.low) return null;
  return { by, span: { low: low.low, high: high.high } };
}
