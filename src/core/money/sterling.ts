import type { Outcome } from '../outcome.ts';
import { good, refuse } from '../outcome.ts';

const FORMS = [
  /^£\s*(\d+)[\s.,-]+(\d+)\s*s\.?(?:[\s,]*(\d+)\s*d\.?)?$/iu,
  /^£\s*(\d+)\s*[/-]\s*(\d+)\s*[/-]\s*(\d+|-)$/u,
  /^()(\d+)\s*s\.?(?:[\s,]*(\d+)\s*d\.?)?$/iu,
  /^()(\d+)\/(\d+|-)$/u,
];

/** Pence of the old pound (240 to the pound, before 15 February 1971) that make five new ones twelve. */
const OLD_PENCE = 12;
const NEW_PENCE = 5;

/**
 * Reads `£1 2s 6d`, `£1/2/6`, `12s 6d`, `5/6`, `10/-` into new pence: 2.4 old ones to one (Decimal Currency Act 1969).
 * Null when the text is not of that form; a sum that is not a whole number of new pence is refused, not rounded.
 */
export function parseSterling(text: string): Outcome<{ readonly minor: number; readonly currency: 'GBP' }> | null {
  const found = FORMS.map((form) => form.exec(text)).find((match) => match !== null);
  if (found === undefined) return null;
  const [, pounds, shillings, pence] = found;
  const [l, s, d] = [pounds, shillings, pence].map((figures) =>
    figures === undefined || figures === '' || figures === '-' ? 0 : Number(figures),
  );
  if (l === undefined || s === undefined || d === undefined) return null;
  if (s > 19 && l > 0)
    return refuse(
      `There are twenty shillings in a pound; "${text}" has ${s}. Write £${l + Math.floor(s / 20)} ${s % 20}s ${d}d.`,
    );
  if (d > 11)
    return refuse(
      `There are twelve pence in a shilling; "${text}" has ${d}. Write ${s + Math.floor(d / 12)}s ${d % 12}d.`,
    );
  const old = l * 240 + s * 12 + d;
  if (!Number.isSafeInteger(old * NEW_PENCE)) return refuse(`"${text}" is more money than there is. Write £1 2s 6d.`);
  const exact = (old * NEW_PENCE) / OLD_PENCE;
  if (Number.isInteger(exact)) return good({ minor: exact, currency: 'GBP' });
  const below = (Math.floor(exact) / 100).toFixed(2);
  return refuse(
    `"${text}" is £${(exact / 100).toFixed(5).replace(/0+$/u, '')} in decimal money, not a whole number of pence. Write £${below}, or the next penny, as you keep your books.`,
  );
}
