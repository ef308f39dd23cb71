import { ended } from './ended.ts';
import type { CautionName } from './cautions.ts';

/** The page about the cabinet: its rules, its cautions, how it was made. */
export const aboutWords = {
  title: 'About this cabinet',
  description: 'Whose cabinet this is, by which rules it is published, the cautions, and how it was made.',
  keptBy: (keeper: string): string => ended(`Kept by ${keeper}`),
  demo: {
    title: 'Everything here is invented',
    paragraphs: [
      'The Circle, its keeper, the collectors of former days, the sales, tickets and letters, and every single piece in this cabinet are made up, to show what such a catalogue can be. The weights, sizes, grades and dies of the pieces are made up with them. The kings, mints and moneyers were real, and so are the books and the weight standards; where a fact was not checked against its book, the page marks it as probable or says so.',
      'The photographs are drawings. A program made them from the description of each piece, and the coins they show do not exist. They are dedicated to the public domain (CC0 1.0).',
    ],
  },
  contents: (pieces: string, statuses: string | null): string =>
    `${pieces} in the catalogue${statuses === null ? '' : `: ${statuses}`}.`,
  contactTitle: 'Contact',
  contactSays:
    'For questions and corrections, and to ask whether you may use a text or a picture. Nothing is bought or sold here, and nothing is appraised.',
  onThisPage: 'On this page',
  rulesTitle: 'The rules',
  rules: [
    'A piece is what can be seen and weighed. What is concluded from that is shown as a conclusion, with how sure it is: certain, probable or possible. “Unknown” was looked for and not found; “none” does not apply; what is not recorded yet is left out. The three are kept apart.',
    'The ruler is the one named on the piece. Where it was struck for somebody else, the page says so, and the piece is listed under both; it is counted for the one it was struck for, and one that may be of several as “1 to 2”. Copies, counterfeits and what is no longer here are counted apart.',
    'A count keeps apart what is sure and what is not: “1 to 2 pieces” are one for certain, and two if the doubtful one is what it may be; of the places of a set so many have their piece, and so many a piece that is not certain. A piece with a problem (a filler) lies in a place until a better one comes, and does not count.',
    'A date is the years within which a piece was made, from the earliest to the latest. No middle is taken. A piece whose years overlap two periods belongs to neither for certain, and the page says so.',
    'Where a piece was found, the page tells whether it was documented before 14 November 1970, the day of the UNESCO Convention on illicit trade in cultural property. Of another old piece it says so only when a document proves it.',
    'A grade is kept in the words and on the scale in which it was given. On another scale it is a range, from all published tables that include it. There are no averages.',
    'A piece that was sold, given away or lost keeps its page and its address.',
    'A keeper may leave pieces out. They then have no page, no picture and no count here. A page may also be left out of every list and found only by those who were given its address.',
  ],
  readings: 'How dates, grades, weights and legends are read here',
  privateTitle: 'What is not here',
  private:
    'What a piece cost, what it may be worth, for how much it is insured, where it is kept, and where exactly it was found; nor from whom it was bought, unless the keeper tells it in the history of the piece. These facts are in a folder of their own. The program that makes this site reads it only to make sure that none of it is published. Where the value of the fine metal is shown, it is computed at a dated price; that is not what a piece is worth.',
  cautionsTitle: 'Cautions',
  cautionsLead:
    'These are short and are not legal advice. Law differs from country to country and changes: ask the local authority, a museum, a conservator or a qualified valuer.',
  cautions: {
    finds:
      'Most countries have a law of finds. Some require that every find be reported, some only certain ones, some forbid looking without leave; in England and Wales, in Scotland, in Ireland and on the Continent the rules are not the same. Ask the local authority or museum before you dig, and again before you buy what was dug. Old objects may also need a licence to leave one country or enter another: ask before you send or carry a piece over a border.',
    copies:
      'A copy is shown here as a copy. In many countries a copy of a coin must be marked, and selling one as what it copies is fraud. Do not take the mark off, and tell the next owner.',
    counterfeits:
      'A counterfeit of its own day is a document, and is shown as one. Whether one may be owned, shown, sent or sold depends on local law, above all when it imitates money that still passes. If you are not sure, ask before you act.',
    cleaning:
      'No advice is given here on cleaning, because the only safe advice is not to. Dirt can be taken off later; metal cannot be put back. A conservator can say what a piece needs.',
    lead: 'Lead and its corrosion are poisonous when swallowed or breathed. Wash your hands after handling a leaden piece, do not eat or drink beside it, keep the dust off, and keep it from children.',
    value:
      'A figure for fine metal is weight times fineness times a dated price, and nothing more. It is not an offer, not an appraisal and not what a piece would sell for. For insurance, sale, tax or inheritance ask a qualified valuer where you live.',
    publishing:
      'A public catalogue tells anybody what there is to steal. Publish no address, no find spot, no price and no photograph with its place in it; think before you publish gold at all; and tell your insurer that you publish.',
  } satisfies Record<CautionName, string>,
  madeTitle: 'How it was made',
  made: [
    'The cabinet is a folder of text files, one for each piece, and a photograph or two beside each. A program named Underglass checks every file, works out what can be worked out, and writes these pages. They contain no tracking and load nothing from other sites; they work without scripts, and can be kept as they are.',
    'Coastlines are those of Natural Earth, which is in the public domain. The typefaces are EB Garamond and Source Sans, under the SIL Open Font Licence. Every era scheme, standard and set names its own source.',
  ],
  data: 'Everything here is also available as data.',
} as const;

export const readingsWords = {
  title: 'How dates, grades and weights are read',
  description:
    'How dates, grades, weights, legends, references and provenances are written and understood in this cabinet.',
  lead: 'Examples of how dates, grades, weights and legends are read, and what is asked when they can be read in two ways.',
  write: 'Written',
  means: 'Read as',
  asks: 'Question asked',
  scale: (scale: string | undefined): string => (scale === undefined ? '' : ` (${scale})`),
  sections: {
    dates: 'Dates',
    grades: 'Grades',
    weights: 'Weights',
    sizes: 'Sizes',
    axis: 'The die axis',
    fineness: 'Fineness',
    legends: 'Legends',
    masks: 'Finding a worn legend',
    references: 'References',
    provenance: 'Provenance',
  },
  notes: {
    grades:
      'The figures are the range of a grade on the numeric scale from 1 to 70, by every published table that has it.',
    provenance: 'After the American Alliance of Museums, Guide to Provenance Research (2001).',
    legends: 'Letters are kept as they were cut. When legends are compared, U equals V, I equals J and W equals VV.',
  },
} as const;
