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
  new RegExp(
    String.raw`\b(?:h[pt-z]|n[c-dfghjkmstwxyz]|s[de-hjkm-nru-z]|t[aflmqv])[\s/.-]?` +
      String.raw`(?:\d{3}[\s/.-]\d{3}|\d{4}[\s/.-]\d{4}|\d{5}[\s/.-]\d{5}|\d{6}|\d{8}|\d{10})\b`,
  ),
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
  // Three words for three metres, by their three strokes.
  /(?<![:/\w])\/{3}\p{L}+[.・。]\p{L}+[.・。]\p{L}+/u,
  // A grid square with stops: S.E. 603 523.
  /\b[HNST]\. ?[A-Z]\. ?\d{3,5}[\s/.-]?\d{3,5}\b/,
  // An open location code; letters alone may be a legend with its cross, and figures alone a sum.
  /\b(?=[A-Z+]*\d)(?=[\d+]*[A-Z])[23456789CFGHJMPQRVWX]{4,8}\+[23456789CFGHJMPQRVWX]{2,3}\b/,
];

/** The areas of British postcodes, from memory; a postcode is about fifteen houses. */
const AREAS =
  'AB|AL|B|BA|BB|BD|BH|BL|BN|BR|BS|BT|CA|CB|CF|CH|CM|CO|CR|CT|CV|CW|DA|DD|DE|DG|DH|DL|DN|DT|DY|E|EC|EH|EN|EX|FK|FY|G|GL|GU|GY|' +
  'HA|HD|HG|HP|HR|HS|HU|HX|IG|IM|IP|IV|JE|KA|KT|KW|KY|L|LA|LD|LE|LL|LN|LS|LU|M|ME|MK|ML|N|NE|NG|NN|NP|NR|NW|OL|OX|PA|PE|PH|PL|PO|PR|' +
  'RG|RH|RM|S|SA|SE|SG|SK|SL|SM|SN|SO|SP|SR|SS|ST|SW|SY|TA|TD|TF|TN|TQ|TR|TS|TW|UB|W|WA|WC|WD|WF|WN|WR|WS|WV|YO|ZE';
const POSTCODE = new RegExp(String.raw`\b(?:${AREAS})\d[A-Z\d]? ?\d[ABD-HJLNP-UW-Z]{2}\b`);
const STREETS = 'Street|Road|Lane|Avenue|Close|Drive|Crescent|Terrace|Gardens|Court|Way|Mews|Grove|Rue|Via|Calle';
/** A house by its number and street, as somebody who lives there writes it. */
const HOUSES = [
  new RegExp(String.raw`\b\d{1,4}[a-z]?,? (?:\p{Lu}[\p{L}’']+ ){1,3}(?:${STREETS})\b`, 'u'),
  /\b\p{Lu}\p{Ll}+(?:straße|strasse|gasse|weg|platz|straat|laan|plein) \d{1,4}\b/u,
];

/** The address of a house in a text; null when there is none. A token may bear its issuer's, so facts are not looked through. */
export function houseIn(text: string): string | null {
  const plain = unescaped(text);
  for (const house of HOUSES) {
    const match = house.exec(plain);
    if (match !== null) return match[0];
  }
  return null;
}

/** Words in which a place stands that is too exact to be published; null when there is none. */
export function exactSpotIn(text: string): string | null {
  // A dash before a figure is a minus.
  const plain = unescaped(text)
    .replace(/[\u2212\u2013](?=\d)/g, '-')
    .replace(/\\/g, '');
  const pair = PAIR.exec(plain);
  if (pair !== null && !isMeasures(pair)) return pair[0];
  for (const spot of [...SPOTS, POSTCODE]) {
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
