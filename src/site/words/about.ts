import { ended } from './ended.ts';
import type { CautionName } from './cautions.ts';

/** The page about the cabinet: its rules, its cautions, how it was made. */
export const aboutWords = {
  title: 'About this cabinet',
  description: 'Whose cabinet this is, by which rules it is published, what to beware of, and how it was made.',
  keptBy: (keeper: string): string => ended(`Kept by ${keeper}`),
  demo: {
    title: 'Everything here is invented',
    paragraphs: [
      'The Circle, its keeper, the collectors of former days, the sales, tickets and letters, and every single piece in this cabinet are made up, to show what such a catalogue can be. Kings, mints, moneyers, weights, dates and books are not made up: they are facts, and where a figure is taken from a book the book is named.',
      'The photographs are drawings. A program made them from the description of each piece, and the coins they show do not exist. They are dedicated to the public domain (CC0 1.0).',
    ],
  },
  contents: (pieces: string): string => `${pieces} in the catalogue.`,
  rulesTitle: 'The rules',
  rules: [
    'A piece is what can be seen and weighed. What is concluded from that stands as a conclusion, with how sure it is: certain, probable or possible. What was looked for and not found is “unknown”; what does not apply is “none”; what nobody has written down yet is left out. The three are never one.',
    'The ruler is the one in whose name a piece stands. Where it was struck for somebody else, that stands beside it.',
    'A count is a range where there is doubt: “27 to 30 of 42” means that twenty-seven places are filled for certain, and thirty if every doubtful piece is what it may be. A piece with a problem holds a place until a better one comes, and counts in neither.',
    'A date is the years within which a piece was made, from the earliest to the latest. No middle is taken. A piece whose years run over the boundary of two periods belongs to neither for certain, and the page says so.',
    'A grade stays in the words and on the scale in which it was given. Where it may stand on another scale is a range, from all the published tables that speak of it. There are no averages.',
    'A piece that was sold, given away or lost keeps its page and its address.',
    'A keeper may leave pieces out, and then nothing here tells of them: no page, no picture, no count.',
  ],
  readings: 'How dates, grades, weights and legends are read here',
  privateTitle: 'What is not here',
  private:
    'What a piece cost, what it may be worth, for how much it is insured, where it is kept, from whom it was bought, and where exactly it was found. These facts live in a folder of their own, which the program that makes this site reads only to make sure that none of it has got out.',
  cautionsTitle: 'Cautions',
  cautionsLead:
    'Short, and no advice in law. Law differs from country to country and changes; the local authority, a museum, a conservator and a licensed valuer know more than any page.',
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
      'A figure for fine metal is weight times fineness times a dated price, and nothing more. It is not an offer, not an appraisal and not what a piece would sell for. For insurance, sale, tax or inheritance ask a licensed valuer where you live.',
    publishing:
      'A public catalogue tells anybody what there is to steal. Publish no address, no find spot, no price and no photograph with its place in it; think before you publish gold at all; and tell your insurer that you publish.',
  } satisfies Record<CautionName, string>,
  madeTitle: 'How it was made',
  made: [
    'The cabinet is a folder of text files, one for each piece, and a photograph or two beside each. A program named Underglass checks every file, works out what can be worked out, and writes these pages. They hold no tracking and ask nothing of any other site; they work without scripts, and can be kept for ever as they are.',
    'Coastlines are those of Natural Earth, which is in the public domain. The letters are EB Garamond and Source Sans, under the SIL Open Font Licence. Every era scheme, standard and set names its own source.',
  ],
  data: 'All that stands here is also there as data.',
} as const;

export const readingsWords = {
  title: 'How things are read here',
  description:
    'How dates, grades, weights, legends, references and provenances are written and understood in this cabinet.',
  lead: 'A keeper writes as people write. This is how the words are understood, by example; and what is asked back when they can be read in two ways.',
  write: 'Written',
  means: 'Understood as',
  asks: 'Asked back',
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
      'The figures are where a word may stand on the numeric scale from 1 to 70, by every published table that has it.',
    provenance: 'After the American Alliance of Museums, Guide to Provenance Research (2001).',
    legends: 'Letters stand as they were cut. U and V, I and J, W and VV are one when legends are compared.',
  },
} as const;
