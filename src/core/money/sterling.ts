import type { Outcome } from '../outcome.ts';
import { good, refuse } from '../outcome.ts';

const FORMS = [
  /^£\s*(\d+)[\s.,-]+(\d+)\s*s\.?(?:[\s,]*(\d+)\s*d\.?)?$/iu,
  /^£\s*(\d+)\s*[/-]\s*(\d+)\s*[/-]\s*(\d+|-)$/u,
  /^()(\d+)\s*s\.?(?:[\s,]*(\d+)\s*d\.?)?$/iu,
  /^()(\d+)\/(\d+|-)$/u,
  /^()()(\d+)\s*d\.?$/iu,
];

/** A guinea has been 21 shillings since 1717 (proclamation of 22 December), and prices were named in them until 1971. */
const GUINEAS = /^(\d+)?\s*(½|1\/2)?\s*(?:guineas?|gns?\.?)$/iu;
const PENCE_IN_A_GUINEA = 105;
/** Farthings of a penny are never a whole number of new pence. */
const FARTHINGS = /^(.*?)(\d*)\s*(?:[¼½¾]|\b[13]\/[24])\s*d\.?$/iu;

/** Pence of the old pound (240 to the pound, before 15 February 1971) that make five new ones twelve. */
const OLD_PENCE = 12;
const NEW_PENCE = 5;

/**
 * Reads `£1 2s 6d`, `£1/2/6`, `12s 6d`, `5/6`, `10/-`, `5 guineas` and `50p` into new pence: 2.4 old ones to one (Decimal Currency Act 1969).
 * Null when the text is not of that form; a sum that is not a whole number of new pence is refused, not rounded.
 */
export function parseSterling(text: string): Outcome<{ readonly minor: number; readonly currency: 'GBP' }> | null {
  const newPence = /^(\d{1,9})\s*p\.?$/iu.exec(text)?.[1];
  if (newPence !== undefined) return good({ minor: Number(newPence), currency: 'GBP' });
  const guineas = GUINEAS.exec(text);
  if (guineas !== null && (guineas[1] ?? guineas[2]) !== undefined)
    return inGuineas(Number(guineas[1] ?? 0) + (guineas[2] === undefined ? 0 : 0.5), text);
  if (FARTHINGS.test(text))
    return refuse(
      `"${text}" has a part of an old penny, which is not a whole number of new pence. Write the nearest, such as £0.01, as you keep your books.`,
    );
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

function inGuineas(guineas: number, text: string): Outcome<{ readonly minor: number; readonly currency: 'GBP' }> {
  const minor = guineas * PENCE_IN_A_GUINEA;
  if (Number.isSafeInteger(2 * minor) && !Number.isInteger(minor))
    return refuse(
      `"${text}" is £${(minor / 100).toFixed(3)} in decimal money, not a whole number of pence. Write £${(Math.floor(minor) / 100).toFixed(2)}, or the next penny, as you keep your books.`,
    );
  if (!Number.isSafeInteger(minor)) return refuse(`"${text}" is more money than there is. Write £1 2s 6d.`);
  return good({ minor, currency: 'GBP' });
}
