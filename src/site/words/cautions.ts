/** The cautions, each where a piece calls for it and again, at length, on the page about the cabinet. They defer to local law and to those licensed to judge. */
export const cautionWords = {
  more: 'More on this',
  finds: {
    name: 'A find',
    short:
      'What must be reported, and what may be kept or leave the country, differs from country to country: ask the local authority before you dig, buy or transport.',
  },
  copies: {
    name: 'A copy',
    short: 'It was made in modern times and is marked as a copy. It must never be sold as what it copies.',
  },
  counterfeits: {
    name: 'A counterfeit',
    short:
      'Made to deceive in its own day and kept as a document of it. Where one may be owned or sold, local law decides.',
  },
  cleaning: {
    name: 'Cleaned in the past',
    short: 'That cannot be undone. Do not clean a piece; a conservator can advise.',
  },
  lead: { name: 'Lead', short: 'Wash your hands after touching it, and keep it from children.' },
  value: {
    name: 'A value of metal',
    short: 'It is dated, and is neither an offer nor an appraisal. For insurance or sale ask a qualified valuer.',
  },
  publishing: {
    name: 'Publishing',
    short: 'A public catalogue tells a thief what there is. Nothing here says where it is kept or what it cost.',
  },
} as const;

export type CautionName = Exclude<keyof typeof cautionWords, 'more'>;
