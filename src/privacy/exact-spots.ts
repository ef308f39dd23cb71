import { unescaped } from './letters.ts';

/** Degrees with three decimals stand within a hundred metres of a place. */
const DEGREES = String.raw`\d{1,3}[.,]\d{3,}`;
/** A bare pair of such degrees, north first. */
const PAIR = /(-?\d{1,2}\.(\d{3,}))\s*°?\s*[NS]?\s*[,;/ ]\s*(-?\d{1,3}\.\d{3,})/;

/** Grids by their names, as far as lists of finds use them; two runs of figures behind one are a spot. Source: the EPSG registry. */
const GRIDS =
  'grid|NGR|OSGR|OSGB|BNG|ITM|TM65|TM75|Irish|UTM|EPSG|RD|Rijksdriehoek|Lambert|SWEREF|Gauss|Gauß-Krüger|GK|LV03|LV95|CH1903|MGRS';
/** What a parcel of land is called in a register: in Germany, France, Italy, Spain and the Netherlands. */
const PARCELS =
  'Flurst(?:ücks?|\\.)|Flst|Parz(?:elle|\\.)|parcelle(?: cadastrale)?|particella|mappale|parcela|pol[íi]gono \\d+,? parc|perceel';
/** An open location code in full. */
const CODE = String.raw`(?=[a-z+]*\d)(?=[\d+]*[a-z])[23456789cfghjmpqrvwx]{8}\+[23456789cfghjmpqrvwx]{2,3}`;
/** Streets of towns whose language names the kind of street first, and those that name the number before it. */
const FIRST = 'Via|Viale|Piazza|Corso|Calle|Avenida|Rua|Rue|Avenue|Boulevard|ul\\.|ulica';

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
  // The same without their signs, with letters for them, and run together (ISO 6709, annex H).
  /\b[NSEWO] ?\d{1,3} ?° ?\d{1,2}[.,]\d{2,}/,
  /\b\d{1,3}d ?\d{1,2}m ?\d{1,2}(?:\.\d+)?s ?[NSEWO]\b/i,
  /\b\d{1,2}:\d{2}:\d{2}(?:\.\d+)? ?[NS]\b/,
  /\b\d{6}(?:\.\d+)? ?[NS][ ,/]{0,2}\d{6,7}(?:\.\d+)? ?[EWO]\b/,
  /[+-]\d{2}(?:\.\d{3,}|\d{4}(?:\.\d+)?)[+-]\d{3}(?:\.\d{3,}|\d{4}(?:\.\d+)?)/,
  /(?<![\d,])-?\d{1,2},\d{4,} ?[;/] ?-?\d{1,3},\d{4,}(?!\d)/,
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
  /\b\d{1,2} ?[C-HJ-NP-X] 0?\d{6}(?: ?m?E)?[ ,/]+\d{7}\b/,
  /\b[XY] ?[=:]? ?\d{6,7}\W{1,4}[XY] ?[=:]? ?\d{6,7}\b/i,
  new RegExp(
    String.raw`\b(?:${GRIDS})\d{0,4}\b[^.\d]{0,12}(?:\d{2}[^.\d]{1,3})?(?:[A-HJ-Z] ?)?0?\d{5,7}[ ,/;]{1,3}\d{6,7}\b`,
    'i',
  ),
  /\b(?:Irish|TM65|TM75)\b.{0,12}\b[A-HJ-Z] ?\d{3} ?\d{3}\b/i,
  /\bE(?:ast(?:ing)?s?)?\W{0,3}\d{6,7}\W{1,6}N(?:orth(?:ing)?s?)?\W{0,3}\d{6,7}\b/i,
  /\b\d{6} ?m? ?E\W{1,4}\d{6,7} ?m? ?N\b/,
  /\b\d{6}, ?\d{6,7}\b.{0,20}\b(?:grid|OSGB|BNG|ITM|UTM|EPSG)/i,
  /\bR(?:echts\w*|W)?\W{0,3}\d{7}\W{1,5}H(?:och\w*|W)?\W{0,3}\d{7}\b/,
  /\b2['’ ]?[4-8]\d{2}['’ ]?\d{3} ?[/,] ?1['’ ]?[0-2]\d{2}['’ ]?\d{3}\b/,
  // Three words for three metres, by their three strokes.
  /(?<![:/\w])\/{3}\p{L}+[.・。]\p{L}+[.・。]\p{L}+/u,
  // Or behind the name of their maker, which ends in a 3 and a word or a w: in a link too.
  /\b\p{L}*3\p{L}*(?:\.\p{L}+\/|\W{1,3})\p{L}{2,}[.・。]\p{L}{2,}[.・。]\p{L}{2,}(?![\p{L}.])/u,
  // A parcel of land, by its number.
  new RegExp(String.raw`\b(?:${PARCELS})(?:nummer|-Nr)?[.,:]? ?(?:n[°ºro]{1,2}\.? ?)?(?:[A-Z]{1,2} ?)?\d`, 'i'),
  // A grid square with stops or blanks: S.E. 603 523.
  /\b[HNST](?:\. ?| )[A-Z](?:\. ?| )\d{3,5}[\s/.-]?\d{3,5}\b/,
  // Squares by their letters, of eighty metres and less, where they are said to be that. Source: IARU, locators; geohash.
  /\b(?:locator|maidenhead|QTH)\W{1,3}(?:is )?[A-R]{2}\d{2}[A-X]{2}\d{2}/i,
  /\bgeohash\W{1,3}(?:is )?[0-9b-hjkmnp-z]{7,12}\b/i,
  new RegExp(String.raw`\b${CODE}\b`, 'i'),
  // An open location code; letters alone may be a legend with its cross, and figures alone a sum.
  /\b(?=[A-Z+]*\d)(?=[\d+]*[A-Z])[23456789CFGHJMPQRVWX]{4,8}\+[23456789CFGHJMPQRVWX]{2,3}\b/,
];

/** The areas of British postcodes, from memory; a postcode is about fifteen houses. */
const AREAS =
  'AB|AL|B|BA|BB|BD|BH|BL|BN|BR|BS|BT|CA|CB|CF|CH|CM|CO|CR|CT|CV|CW|DA|DD|DE|DG|DH|DL|DN|DT|DY|E|EC|EH|EN|EX|FK|FY|G|GL|GU|GY|' +
  'HA|HD|HG|HP|HR|HS|HU|HX|IG|IM|IP|IV|JE|KA|KT|KW|KY|L|LA|LD|LE|LL|LN|LS|LU|M|ME|MK|ML|N|NE|NG|NN|NP|NR|NW|OL|OX|PA|PE|PH|PL|PO|PR|' +
  'RG|RH|RM|S|SA|SE|SG|SK|SL|SM|SN|SO|SP|SR|SS|ST|SW|SY|TA|TD|TF|TN|TQ|TR|TS|TW|UB|W|WA|WC|WD|WF|WN|WR|WS|WV|YO|ZE';
const POSTCODE = new RegExp(String.raw`\b(?:${AREAS})\d[A-Z\d]? ?\d[ABD-HJLNP-UW-Z]{2}\b`);
/** The same in small letters, where what ends it is no ordinal, page or measure: `e1 2nd`, `pe1 4pp`. */
const SMALL_POSTCODE = new RegExp(
  String.raw`\b(?:${AREAS.toLowerCase()})\d[a-z\d]? ?\d(?!st|nd|rd|th|pp|ff|dr|gr|gn|lb|dw|ss|ds)[abd-hjlnp-uw-z]{2}\b`,
);
const STREETS =
  'Street|Road|Lane|Avenue|Close|Drive|Crescent|Terrace|Gardens|Court|Way|Mews|Grove|St|Rd|Ln|Ave|Cres|Terr|Gdns|Ct';
/** Endings of names of streets where the number comes last. */
const ENDING = 'straße|strasse|str\\.|gasse|weg|platz|straat|laan|plein|gatan|vägen|gade|gata|veien|katu';
/** A house by its number and street, as somebody who lives there writes it. */
const HOUSES = [
  // No name behind it: "50 Pence St Helena".
  new RegExp(String.raw`\b\d{1,4}[a-z]?,? (?:\p{Lu}[\p{L}’']+ ){1,3}(?:${STREETS})\b(?! \p{Lu}\p{Ll})`, 'u'),
  new RegExp(String.raw`\b\p{Lu}\p{Ll}+(?:${ENDING}) \d{1,4}[a-z]?\b`, 'u'),
  new RegExp(String.raw`\b(?:${FIRST}) (?:\p{L}+ ){0,3}\p{Lu}\p{L}+,? (?:n[.o]{0,2} ?)?\d{1,4}[a-z]?\b`, 'u'),
  new RegExp(
    String.raw`\b\d{1,4}(?: ?(?:bis|ter))?,? (?:rue|avenue|boulevard|place|chemin|impasse|allée|quai) (?:\p{Ll}+ |d[’']){0,3}\p{Lu}`,
    'u',
  ),
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

/** A street in an address, without the number of its house; and a town with its postcode. */
const SMALL = 'rue|via|viale|calle|avenida|chemin|impasse|allée|quai';
const STREET_NAMES = [
  new RegExp(String.raw`(?<=\b\d{1,4}[a-z]?,? )(?:\p{Lu}[\p{L}’']+ ){1,3}(?:${STREETS})\b`, 'gu'),
  new RegExp(String.raw`\b\p{Lu}\p{Ll}+(?:${ENDING})(?= \d)`, 'gu'),
  new RegExp(
    String.raw`(?<!\p{L})(?:${FIRST}|${SMALL}) (?:\p{Ll}+ |[dl][’']){0,3}\p{Lu}[\p{L}’'-]+(?: \p{Lu}\p{L}+)*`,
    'gu',
  ),
];
const POSTAL_TOWN = /(?<!\d)\d{4}(?:\d| ?[A-Z]{2})? \p{Lu}[\p{L}-]{2,}/gu;

/** What of the addresses in a private text gives a house away by itself: its street, and its town with the postcode. */
export function streetsIn(text: string): readonly string[] {
  if (!/\d/.test(text)) return [];
  const streets = STREET_NAMES.flatMap((street) => text.match(street) ?? []);
  return streets.length === 0 ? [] : [...new Set([...streets, ...(text.match(POSTAL_TOWN) ?? [])])];
}

/** A figure, a stroke, or what either may be written as: most texts have none. */
const MAY_HOLD = /[\p{N}/&%\\]/u;

/** Words in which a place stands that is too exact to be published; null when there is none. */
export function exactSpotIn(text: string): string | null {
  if (!MAY_HOLD.test(text)) return null;
  const plain = withSigns(unescaped(text).replace(/\\/g, ''));
  const pair = PAIR.exec(plain);
  if (pair !== null && !isMeasures(pair)) return pair[0];
  for (const spot of [...SPOTS, POSTCODE, SMALL_POSTCODE]) {
    const match = spot.exec(plain);
    if (match !== null) return match[0];
  }
  return null;
}

/** The words of a direction behind a figure, and of latitude and longitude behind those. */
const DIRECTIONS: readonly (readonly [sign: string, words: string])[] = [
  ['N', 'north(?:ern)?|nördl(?:iche[rn]?|\\.)|nord|norte'],
  ['S', 'south(?:ern)?|südl(?:iche[rn]?|\\.)|sud|sur'],
  ['E', 'east(?:ern)?|östl(?:iche[rn]?|\\.)|est|este'],
  ['W', 'west(?:ern|l(?:iche[rn]?|\\.))?|ouest|oeste|ovest'],
];
const OF_THE_GLOBE = String.raw`(?: (?:lat|long)(?:itude)?\b| (?:Br|L)(?:eite\b|änge\b|\.))?`;
/** Words of angles in English, German, French, Spanish and Italian, each with its sign. */
const SIGNS: readonly (readonly [words: RegExp, sign: string])[] = [
  [/(?<=\d) ?(?:deg(?:rees?|s)?\b\.?|Grad\b|degr[ée]s\b|grados\b|gradi\b)/gi, '°'],
  [/(?<=° ?\d{1,2}(?:[.,]\d+)?) ?(?:min(?:utes?|uten|utos|uti|s)?\b\.?)/gi, "'"],
  [/(?<=' ?\d{1,2}(?:[.,]\d+)?) ?(?:sec(?:onde?s|ondi|s)?|Sekunden|seg(?:undos)?)\b\.?/gi, '"'],
  ...DIRECTIONS.map(
    ([sign, words]) =>
      [new RegExp(String.raw`(?<=\d ?[°'"]?,? ?)(?:${words})(?!\p{L})${OF_THE_GLOBE}`, 'giu'), sign] as const,
  ),
];

/** What every such word stands behind; a quick look saves seven slow ones. */
const ANGLED = /\d ?(?:[°'"]|deg|gra|,? ?(?:n[oö]r|s[ouü]|east|östl|est|west|o[ue]|ov))/i;

/** An angle in words as it is written in signs. */
function withSigns(text: string): string {
  if (!ANGLED.test(text)) return text;
  return SIGNS.reduce((plain, [words, sign]) => plain.replace(words, sign), text);
}

/** Whether two figures are rather weights, densities or finenesses, which lie near one another. */
function isMeasures([whole, first = '', decimals = '', second = '']: RegExpExecArray): boolean {
  if (/[-°NS]/.test(whole)) return false;
  const [north, east] = [Number(first), Number(second)];
  const isNear = Math.abs(north - east) <= 0.15 * Math.max(north, east);
  return Math.max(north, east) < 2 || (isNear && decimals.length === 3);
}
