import type { Outcome } from '../outcome.ts';
import { good, refuse } from '../outcome.ts';

/**
 * New pence in a farthing. The old pound had 240 pence (until 15 February 1971), 2.4 to a new penny (Decimal Currency Act
 * 1969), and four farthings to the penny.
 */
const NEW_PENCE_IN_FARTHING = { above: 5, below: 48 };
/** A guinea has been 21 shillings since 1717 (proclamation of 22 December), and prices were named in them until 1971. */
const FARTHINGS_IN_A_GUINEA = 21 * 48;
const QUARTERS: Readonly<Record<string, number>> = { '¼': 1, '1/4': 1, '½': 2, '1/2': 2, '¾': 3, '3/4': 3 };

const QUARTER = String.raw`(¼|½|¾|(?<!\d)[13]\/4|(?<!\d)1\/2)`;
const POUNDS = String.raw`£\s*(\d{1,3}(?:,\d{3})+|\d+)`;
const PENCE = String.raw`(\d*)\s*${QUARTER}?\s*d\.?`;
const AFTER = String.raw`(?:[\s,.-]*${PENCE})?`;
/** Pounds, shillings, pence and quarters of a penny, each a group that may be empty. */
const FORMS = [
  new RegExp(String.raw`^${POUNDS}[\s.,-]+(\d+)\s*s\.?${AFTER}$`, 'iu'),
  new RegExp(String.raw`^${POUNDS}[\s.,-]+()${PENCE}$`, 'iu'),
  new RegExp(String.raw`^${POUNDS}\s*[/-]\s*(\d+|-)\s*[/-]\s*(?:(\d+)\s*(¼|½|¾)?|-)$`, 'u'),
  new RegExp(String.raw`^()(\d+)\s*s\.?${AFTER}$`, 'iu'),
  /^()(\d+)\/(?:(\d+)\s*(¼|½|¾)?|-)$/u,
  new RegExp(String.raw`^()()${PENCE}$`, 'iu'),
];
const GUINEAS = new RegExp(String.raw`^(\d+)?\s*${QUARTER}?\s*(?:guineas?|gns?\.?)$`, 'iu');

type Sterling = { readonly minor: number; readonly currency: 'GBP' };

/**
 * Reads `£1 2s 6d`, `£1/2/6`, `12s 6d`, `2/6`, `10/-`, `½d`, `12½ gns` and `50p` into new pence, exactly. Null when the text
 * is not of that form.
 */
export function parseSterling(text: string): Outcome<Sterling> | null {
  const newPence = /^(\d{1,9})\s*p\.?$/iu.exec(text)?.[1];
  if (newPence !== undefined) return good({ minor: Number(newPence), currency: 'GBP' });
  const [guineas, whole, part] = GUINEAS.exec(text) ?? [];
  if (guineas !== undefined && (whole ?? part) !== undefined)
    return ofFarthings(number(whole) * FARTHINGS_IN_A_GUINEA + (quarters(part) * FARTHINGS_IN_A_GUINEA) / 4, text);
  const found = FORMS.map((form) => form.exec(text)).find((match) => match !== null);
  if (found === undefined) return null;
  const [, pounds, shillings, pence, quarter] = found;
  // A "d" with no number before it is no sum.
  if (/^\D*$/u.test(text) && quarter === undefined) return null;
  const [l, s, d] = [number(pounds), number(shillings), number(pence)];
  if (s > 19 && l > 0)
    return refuse(
      `There are twenty shillings in a pound; "${text}" has ${s}. Write £${l + Math.floor(s / 20)} ${s % 20}s ${d}d.`,
    );
  if (d > 11 && (l > 0 || s > 0))
    return refuse(
      `There are twelve pence in a shilling; "${text}" has ${d}. Write ${s + Math.floor(d / 12)}s ${d % 12}d.`,
    );
  return ofFarthings((l * 240 + s * 12 + d) * 4 + quarters(quarter), text);
}

function number(figures = ''): number {
  return figures === '' || figures === '-' ? 0 : Number(figures.replaceAll(',', ''));
}

function quarters(written = ''): number {
  return QUARTERS[written] ?? 0;
}

function ofFarthings(farthings: number, text: string): Outcome<Sterling> {
  const { above, below } = NEW_PENCE_IN_FARTHING;
  if (!Number.isSafeInteger(farthings * above * below))
    return refuse(`"${text}" is more money than there is. Write £1 2s 6d.`);
  return good({ minor: (farthings * above) / below, currency: 'GBP' });
}

/** `£1 2s 6d`, `1s 1½d`, `¾d`. */
export function formatSterling(farthings: number): string {
  const [l, s, d] = [Math.floor(farthings / 960), Math.floor(farthings / 48) % 20, Math.floor(farthings / 4) % 12];
  const quarter = ['', '¼', '½', '¾'][farthings % 4] ?? '';
  const pence = d > 0 || quarter !== '' ? `${d > 0 ? String(d) : ''}${quarter}d` : '';
  return [l > 0 ? `£${String(l)}` : '', s > 0 ? `${String(s)}s` : '', pence].filter((part) => part !== '').join(' ');
}
