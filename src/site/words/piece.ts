import { placesOf } from '../../core/money/currencies.ts';
import type { PlaceState } from '../../core/sets/set-state.ts';
import type { Interval } from '../../core/measures/units.ts';
import type { Evidence } from '../../core/provenance/provenance.ts';
import type { Certainty } from '../../catalogue/schema/fields.ts';
import type { PublicPiece } from '../../publish/public-piece.ts';

const DOUBT: Readonly<Record<Certainty, string>> = { certain: '', probable: 'probably', possible: 'possibly' };

const EVIDENCE: Readonly<Record<Evidence, string>> = {
  'plate-match': 'matched to a plate',
  'museum-number': 'museum number',
  document: 'document',
  ticket: 'old ticket',
  published: 'published',
  statement: 'an owner’s statement',
  inference: 'inferred',
};

const STATUS: Readonly<Record<PublicPiece['status'], string>> = {
  kept: '',
  lent: 'On loan',
  sold: 'Sold; its page stays',
  given: 'Given away; its page stays',
  exchanged: 'Exchanged; its page stays',
  lost: 'Lost',
};

/** Phrases of a piece's page. */
type Hand = readonly ['from' | 'to', string];

const HANDED: readonly [Hand, Hand] = [['from', 'from'], ['to', 'to']]; // prettier-ignore
const BY_GIVER: readonly [Hand, Hand] = [['from', 'by'], ['to', 'to']]; // prettier-ignore
const BY_TAKER: readonly [Hand, Hand] = [['to', 'by'], ['from', 'from']]; // prettier-ignore

/** What was done with a piece, and who is named first and with what word; ` to` where only the one who had it then is known. */
const PASSAGES = new Map<string, readonly [string, Hand, Hand]>([
  ['purchase', ['bought', ...BY_TAKER]],
  ['sale', ['sold', ...BY_GIVER]],
  ['auction', ['sold at auction', ...BY_GIVER]],
  ['auction to', ['bought at auction', ...BY_TAKER]],
  ['gift', ['given', ...BY_GIVER]],
  ['bequest', ['left by will', ...BY_GIVER]],
  ['inheritance', ['inherited', ...BY_TAKER]],
  ['descent', ['passed on in the family', ...HANDED]],
  ['exchange', ['got by exchange', ...BY_TAKER]],
  ['transfer', ['passed on', ...HANDED]],
  ['loan', ['lent', ...BY_GIVER]],
  ['find', ['found', ...BY_TAKER]],
]);

/** Licences by what they allow; another is given by its name. Source: the deeds of creativecommons.org. */
const FREE: ReadonlyMap<string, string> = new Map([
  ['CC0-1.0', 'free for any use'],
  ['CC-BY-4.0', 'free to use with this name'],
  ['CC-BY-SA-4.0', 'free to use with this name, and to pass on under the same terms'],
]);

export const pieceWords = {
  heading: {
    attribution: 'What it is',
    legends: 'Legends and designs',
    condition: 'Condition',
    measures: 'Measures and metal',
    provenance: 'Provenance',
    eras: 'Date and period',
    sets: 'In these sets',
    others: 'Details',
    cautions: 'Cautions',
    cite: 'Cite this page',
    neighbours: 'Next to it in the cabinet',
  },
  field: {
    kind: 'Kind',
    status: 'Status',
    ruler: 'In the name of',
    noRuler: 'Ruler',
    struckFor: 'Struck for',
    issuer: 'Issued by',
    mint: 'Mint',
    denomination: 'Denomination',
    date: 'Made',
    dated: 'Dated',
    references: 'In the books',
    type: 'Type',
    model: 'Imitates the type',
    elsewhere: 'In other books',
    made: 'How made',
    shape: 'Shape',
    treatments: 'Use and treatment',
    peculiarities: 'Mint errors and marks',
    dies: 'Dies',
    found: 'Found',
    tags: 'Tags',
    altered: 'Made from',
    weight: 'Weight',
    size: 'Size',
    thickness: 'Thickness',
    axis: 'Die axis',
    metal: 'Metal',
    fineness: 'Fineness',
    fine: 'Fine metal',
    value: 'Metal value',
    standard: 'Compared with the standard',
  },
  /** A sum in minor units to so many figures, as it is written in the land of its currency: `£20`; pence where all of them are meant. */
  money: (minor: number, currency: string, figures: number) => {
    const places = placesOf(currency);
    const sum = minor / 10 ** places;
    const worth = figures - 1 - Math.floor(Math.log10(Math.max(sum, 10 ** -places)));
    const digits = worth >= places || sum < 1 ? places : 0;
    return new Intl.NumberFormat('en-GB', {
      style: 'currency',
      currency,
      minimumFractionDigits: digits,
      maximumFractionDigits: digits,
    }).format(worth < 0 ? Math.round(sum * 10 ** worth) / 10 ** worth : sum);
  },
  unnamed: 'none is named on it',
  makerOf: (role: string, side: 'obverse' | 'reverse' | undefined) => (side === undefined ? role : `${role}, ${side}`),
  tools: 'Look at it',
  look: (face: string) => `Enlarge the ${face}`,
  closer: 'enlarge',
  doubt: DOUBT,
  afterType: 'inferred from the type',
  typeBy: { said: undefined, reference: 'by its reference', equal: 'the same type in another series' },
  disputed: 'disputed',
  elsewhereNote: 'the numbers of its type there',
  status: STATUS,
  recordedAs: (text: string) => `recorded as “${text}”`,
  unlisted: 'This page is not in any list of the cabinet. Someone gave you its address.',
  pictureSays: (title: string, faces: readonly string[]) =>
    `${title}: ${faces.length === 2 ? 'both faces at one scale' : `the ${faces[0] ?? 'piece'}`}.`,
  turn: 'Turn it over',
  turnBack: 'Turn it back',
  turned: (hours: number | null) =>
    hours === null
      ? 'Turned over, with the reverse upright: no die axis is recorded.'
      : `Turned over, as in the hand: the top of the reverse comes up at ${hours} o’clock.`,
  axisSays: (hours: number) =>
    hours === 6
      ? 'Die axis 6h: turned about its width, the reverse stands upright.'
      : hours === 12
        ? 'Die axis 12h: turned about its height, the reverse stands upright.'
        : `Die axis ${hours}h: turned about its height, the top of the reverse points to ${hours} o’clock.`,
  /** `all` is where every table together puts it, when its own country's is shown first. */
  barSays: (given: string, { low, high }: Interval, all: Interval | null, tables: number) => {
    const is = `${given} is ${low === high ? `${low}` : `somewhere from ${low} to ${high}`} on the numeric scale of 1 to 70`;
    if (all !== null)
      return `${is} by the table of its own country; with those of other countries, from ${all.low} to ${all.high}.`;
    return tables > 1 ? `${is}; ${tables} published tables differ, and all are shown.` : `${is}.`;
  },
  bar: { fold: 'On the numeric grade scale', table: 'Table', from: 'From', to: 'To', union: 'All tables together' },
  wear: (grade: string) => `Wear: ${grade}`,
  problem: (problem: string) => `Problem: ${problem}.`,
  notGraded: (reason: string) => `Not graded: ${reason}. That says nothing about its quality.`,
  gradeMeans: (full: string, scale: string) =>
    full === '' ? `On the ${scale} scale.` : `${full}, on the ${scale} scale.`,
  noGrade: 'No grade is recorded.',
  gradedBy: {
    keeper: 'graded by the keeper',
    dealer: 'as graded by the seller',
    'third party': 'graded by a third party',
  },
  timeFold: 'On a timeline',
  oldMetal: 'A piece as old as this is more than its metal, and once melted it is lost.',
  ofHost: 'The piece it was made from',
  outline: (usual: { readonly name: string; readonly millimetres: number } | null) =>
    usual === null
      ? 'Its outline'
      : `Its outline; dashed, how large ${/^[aeiou]/u.test(usual.name) ? 'an' : 'a'} ${usual.name} usually is here: ${Math.round(usual.millimetres)} mm`,
  inOneLine: 'As one line, the way museums write it',
  noChain: 'The provenance is not recorded.',
  documented: (year: string) => `The earliest document with a certain date is of ${year}.`,
  undocumented: 'No step of it is documented.',
  before1970: {
    yes: 'That is before 14 November 1970, the day of the UNESCO Convention on illicit trade in cultural property.',
    no: 'No record of it from before 14 November 1970 is known, the day of the UNESCO Convention on illicit trade in cultural property.',
    'not known':
      'Not known whether it was documented before 14 November 1970, the day of the UNESCO Convention on illicit trade in cultural property.',
  },
  gap: 'A gap: nothing is recorded for this time.',
  evidence: EVIDENCE,
  possibly: 'possibly',
  inTrade: 'in the trade',
  /** How a piece went from hand to hand: `sold at auction by A to B`. A way that is not known here is said as it was given. */
  passage: (
    how: string | undefined,
    names: { readonly from?: string | undefined; readonly to?: string | undefined },
  ) => {
    const [done, ...hands] = PASSAGES.get(`${how ?? ''}${names.from === undefined ? ' to' : ''}`) ??
      PASSAGES.get(how ?? '') ?? [how ?? '', ...HANDED];
    // A title within a sentence: `purchase by the Reverend A. Holm`.
    const said = hands.map(([whose, word]) => {
      const name = names[whose];
      return name === undefined ? '' : `${word} ${name.replace(/^The (?=\p{Lu})/u, 'the ')}`;
    });
    return [done, ...said].filter((part) => part !== '').join(' ');
  },
  eraState: {
    within: 'within',
    straddles: 'overlaps',
    outside: 'outside this scheme',
    unknown: 'not dated',
    'not applicable': 'does not apply: made elsewhere',
  },
  share: (name: string, share: number) =>
    `${name} (${share < 0.005 ? 'under 1' : Math.round(share * 100)} % of its years)`,
  timeSays: (years: string, schemes: number) =>
    schemes === 1
      ? `The years of this piece, ${years}, under the periods of one scheme.`
      : `The years of this piece, ${years}, under the periods of ${schemes} schemes.`,
  timeTable: { scheme: 'Scheme', says: 'This piece' },
  grains: (grains: string) => `${grains} grains`,
  fineNote: (ounces: string, unsure: readonly string[]) =>
    `${ounces} troy ounces; weight times fineness${unsure.length === 0 ? '' : `, with the uncertainty of ${unsure.length > 1 ? 'both' : `the ${unsure.join('')}`}`}`,
  standardFineness: 'the fineness of the standard, not a measurement',
  grams: (grams: string) => `${grams} g`,
  standardNote: (grams: string, source: string) => `the standard is ${grams} g: ${source}`,
  percent: (low: string, high: string) =>
    low === high ? `${low} % of the standard weight` : `${low} to ${high} % of the standard weight`,
  range: (low: string, high: string) => (low === high ? low : `${low} to ${high}`),
  /** What it does for a set, which is named next. */
  stands: (state: PlaceState['state'], place: string) =>
    `${{ filled: 'Fills', possible: 'May fill', filler: 'Is a filler for', wanted: '', excused: '' }[state]} “${place}” in`,
  spareFor: (place: string) => `Also fits “${place}” in`,
  leftOut: 'Is left out of',
  thisPiece: 'this piece',
  linked: 'Its facts as a file, for programs',
  iiif: 'Its pictures, for viewers on other sites',
  photographs: (by: string, licence: string | null, what?: 'drawing') =>
    `${what === 'drawing' ? 'Drawings' : 'Photographs'}: ${by}${licence === null ? '' : `; ${FREE.get(licence) ?? licence}`}.`,
  lost: 'letters lost',
  trueSize: {
    show: 'Show at true size',
    shown: 'At true size on this screen',
    back: 'Show larger',
    adjust: 'Measure the screen',
    says: 'Hold the long side of a bank card (85.6 mm) against the bar and drag the bar to its length.',
    saysShort: 'Hold the short side of a bank card (54 mm) against the bar and drag the bar to its length.',
    ruler: 'With a ruler: the marks on the bar are a centimetre apart.',
    kept: 'Remembered on this device only.',
    slider: 'Length of the bar',
    shorter: 'A little shorter',
    longer: 'A little longer',
    done: 'Done',
    leave: 'Cancel',
    forget: 'Forget the measurement',
  },
} as const;
