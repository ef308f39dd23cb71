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
  statement: 'what an owner said',
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
export const pieceWords = {
  heading: {
    attribution: 'What it is',
    legends: 'Legends and designs',
    condition: 'Condition',
    measures: 'Measures and metal',
    provenance: 'How it came down',
    eras: 'Its time',
    sets: 'In these sets',
    others: 'Seen closer',
    cautions: 'With care',
    cite: 'To cite this page',
    neighbours: 'Its neighbours in the cabinet',
  },
  field: {
    kind: 'Kind',
    status: 'Now',
    ruler: 'In the name of',
    struckFor: 'Struck for',
    issuer: 'Responsible',
    mint: 'Mint',
    denomination: 'Denomination',
    date: 'Made',
    dated: 'Dated',
    references: 'References',
    made: 'How made',
    shape: 'Shape',
    treatments: 'Done to it later',
    peculiarities: 'From the mint',
    dies: 'Dies',
    found: 'Found',
    tags: 'Gathered under',
    altered: 'Made from',
    weight: 'Weight',
    size: 'Size',
    thickness: 'Thickness',
    axis: 'Die axis',
    metal: 'Metal',
    fineness: 'Fineness',
    fine: 'Fine metal',
    value: 'Value of its metal',
    standard: 'Beside the standard',
  },
  faceName: { obverse: 'Obverse', reverse: 'Reverse', edge: 'Edge' },
  look: (face: string) => `Look closer at the ${face}`,
  closer: 'look closer',
  doubt: DOUBT,
  status: STATUS,
  recordedAs: (text: string) => `recorded as “${text}”`,
  unlisted: 'This page stands in no list of the cabinet. Its address was given to you.',
  moved: 'This piece has another address now.',
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
  barSays: (given: string, low: number, high: number, tables: number) =>
    `${given} lies ${low === high ? `at ${low}` : `somewhere from ${low} to ${high}`} on the numeric scale of 1 to 70${
      tables > 1 ? `; ${tables} published tables differ, and all are drawn` : ''
    }.`,
  bar: { table: 'Table', from: 'From', to: 'To', union: 'All together' },
  details: (problem: string) => `A details piece: ${problem}. Its grade speaks of wear alone.`,
  notGraded: (reason: string) => `Not graded: ${reason}. That says nothing about its quality.`,
  noGrade: 'No grade is recorded.',
  gradedBy: {
    keeper: 'graded by the keeper',
    dealer: 'as graded by the seller',
    'third party': 'graded by a third party',
  },
  noChain: 'How it came down is not recorded.',
  documented: (year: string) => `Documented since ${year} at the latest.`,
  undocumented: 'No link is documented.',
  before1970: {
    yes: 'Documented before 14 November 1970.',
    no: 'Not documented before 14 November 1970.',
    'not known': 'Whether it was already above ground or abroad on 14 November 1970 is not known.',
  },
  gap: 'A gap: how it passed on is not recorded.',
  evidence: EVIDENCE,
  possibly: 'possibly',
  inTrade: 'in the trade',
  from: (name: string) => `from ${name}`,
  to: (name: string) => `to ${name}`,
  eraState: { within: 'within', straddles: 'across', outside: 'outside this scheme', unknown: 'not dated' },
  share: (name: string, share: number) =>
    `${name} (${share < 0.005 ? 'under 1' : Math.round(share * 100)} % of its years)`,
  timeSays: (years: string, schemes: number) =>
    schemes === 1
      ? `The years of this piece, ${years}, beneath the periods of one scheme.`
      : `The years of this piece, ${years}, beneath the periods of ${schemes} schemes; it is placed in none by majority.`,
  timeTable: { scheme: 'Scheme', says: 'This piece' },
  grains: (grains: string) => `${grains} grains`,
  fineNote: (ounces: string) => `${ounces} troy ounces; weight times fineness, with the doubt of both`,
  standardNote: (grams: string, source: string) => `standard of ${grams} g: ${source}`,
  percent: (low: number, high: number) =>
    low === high ? `${low} % of its weight` : `${low} to ${high} % of its weight`,
  range: (low: string, high: string) => (low === high ? low : `${low} to ${high}`),
  stands: { filled: 'stands in', possible: 'may stand in', filler: 'fills in for now at', wanted: '', excused: '' },
  spare: 'fits and is not needed',
  leftOut: 'is left out',
  displaced: (title: string) => `It took the place of ${title}.`,
  cite: (keeper: string, title: string, number: string, cabinet: string) =>
    `${keeper === '' ? '' : `${keeper}, `}“${title}”, no. ${number}, in ${cabinet}`,
  previous: 'before it',
  next: 'after it',
  linked: 'This record as linked data',
  iiif: 'Its pictures as a IIIF manifest',
  photographs: (by: string, licence: string | null) =>
    licence === null ? `Photographs: ${by}.` : `Photographs: ${by}, ${licence}.`,
  lost: 'letters lost',
  trueSize: {
    show: 'Show at true size',
    shown: 'At true size on this screen',
    back: 'Show it larger',
    adjust: 'Measure the screen',
    says: 'Lay the long side of a bank card (85.6 mm) on the bar and draw the bar to its length.',
    saysShort: 'Lay the short side of a bank card (54 mm) on the bar and draw the bar to its length.',
    ruler: 'With a ruler: the marks on the bar are a centimetre apart.',
    kept: 'It is remembered on this device only.',
    slider: 'Length of the bar',
    shorter: 'A little shorter',
    longer: 'A little longer',
    done: 'It fits',
    leave: 'Leave it as it was',
    forget: 'Forget the measure',
  },
} as const;
