import { unescaped } from './letters.ts';

/** Degrees with three decimals stand within a hundred metres of a place. */
const DEGREES = String.raw`\d{1,3}[.,]\d{3,}`;
/** A bare pair of such degrees, north first. */
const PAIR = /(-?\d{1,2}\.(\d{3,}))\s*°?\s*[NS]?\s*[,;/ ]\s*(-?\d{1,3}\.\d{3,})/;

/**
 * Places written so that one can go there. Sources: ISO 6709 (degrees, minutes, seconds), RFC 5870 (`geo:`), the guide to the
 * National Grid of the Ordnance Survey and its Irish like (letters and six figures or more), DMA TM 8358.1 (MGRS, UTM), swisstopo LV95,
 * the specification of open location codes. Minutes without a fraction, and a square of a kilometre, are as coarse as a parish.
 */
const SPOTS: readonly RegExp[] = [
  new RegExp(String.raw`\b[NS]\.? ?${DEGREES} ?°?[ ,;/]*[EWO]\.? ?${DEGREES}`, 'i'),
  new RegExp(String.raw`${DEGREES} ?°? ?[NS]\b[ ,;/]*${DEGREES} ?°? ?[EWO]\b`, 'i'),
  new RegExp(String.raw`\bm?lat\w*\W{0,5}-?${DEGREES}[^\d]{1,16}?\bm?(?:lon|lng)\w*\W{0,5}-?${DEGREES}`, 'i'),
  /\d{1,2}\.\d{4,}(?:![0-9][a-z]|&[a-z]+=)-?\d{1,3}\.\d{4,}/i,
  /\d{1,3} ?[°o] ?\d{1,2} ?['′’] ?\d{1,2}(?:[.,]\d+)? ?(?:"|''|′′|”|’’)/,
  /\d{1,3} ?[°o] ?\d{1,2}[.,]\d{2,} ?['′’]/,
  /\b\d{1,2} \d{1,2} \d{1,2}(?:\.\d+)? ?[NS][ ,;/]+\d{1,3} \d{1,2} \d{1,2}(?:\.\d+)? ?[EWO]\b/,
  // Great Britain; small letters too, but for those that are words or "no", "nr".
  /\b(?:H[LMN-PT-Z]|N[A-HJ-OR-UW-Z]|O[V]|S[A-HJ-PR-Z]|T[AFGLMQRV])[\s/.-]?(?:\d{3,5}[\s/.-]\d{3,5}|\d{6}|\d{8}|\d{10})\b/,
  /\b(?:h[pt-z]|n[c-dfghjkmstwxyz]|s[de-hjkm-nru-z]|t[aflmqv])[\s/.-]?(?:\d{3}[\s/.-]\d{3}|\d{4}[\s/.-]\d{4}|\d{5}[\s/.-]\d{5}|\d{6}|\d{8}|\d{10})\b/,
  // Saint and species as often as squares: with their figures run together only.
  /\bs[pst](?:\d{6}|\d{8}|\d{10})\b/,
  // Ireland.
  /\b[A-HJ-Z] \d{5} \d{5}\b/,
  /\b\d{1,2} ?[C-HJ-NP-X] ?[A-HJ-NP-Z]{2} ?(?:\d{3} ?\d{3}|\d{4} ?\d{4}|\d{5} ?\d{5})\b/,
  /\b\d{1,2} ?[C-HJ-NP-X] \d{6}(?: ?m?E)?[ ,]+\d{7}\b/,
  /\bE(?:ast(?:ing)?s?)?\W{0,3}\d{6}\W{1,6}N(?:orth(?:ing)?s?)?\W{0,3}\d{6,7}\b/i,
  /\b\d{6} ?m? ?E\W{1,4}\d{6,7} ?m? ?N\b/,
  /\b\d{6}, ?\d{6,7}\b.{0,20}\b(?:grid|OSGB|BNG|ITM|UTM|EPSG)/i,
  /\bR(?:echts\w*|W)?\W{0,3}\d{7}\W{1,5}H(?:och\w*|W)?\W{0,3}\d{7}\b/,
  /\b2['’ ]?[4-8]\d{2}['’ ]?\d{3} ?[/,] ?1['’ ]?[0-2]\d{2}['’ ]?\d{3}\b/,
  // An open location code; letters alone may be a legend with its cross, and figures alone a sum.
  /\b(?=[A-Z+]*\d)(?=[\d+]*[A-Z])[23456789CFGHJMPQRVWX]{4,8}\+[23456789CFGHJMPQRVWX]{2,3}\b/,
];

/** Words in which a place stands that is too exact to be published; null when there is none. */
export function exactSpotIn(text: string): string | null {
  // A dash before a figure is a minus.
  const plain = unescaped(text)
    .replace(/[\u2212\u2013](?=\d)/g, '-')
    .replace(/\\/g, '');
  const pair = PAIR.exec(plain);
  if (pair !== null && !isMeasures(pair)) return pair[0];
  for (const spot of SPOTS) {
    const match = spot.exec(plain);
    if (match !== null) return match[0];
  }
  return null;
}

/** Whether two figures are rather weights, densities or finenesses, which lie near one another. */
function isMeasures([whole, first = '', decimals = '', second = '']: RegExpExecArray): boolean {
  if (/[-°NS]/.test(whole)) return false;
  const [north, east] = [Number(first), Number(second)];
  const isNear = Math.abs(north - east) <= 0.15 * Math.max(north, east);
  return Math.max(north, east) < 2 || (isNear && decimals.length === 3);
}
