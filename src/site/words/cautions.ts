/** The cautions, each where a piece calls for it and again, at length, on the page about the cabinet. */
export const cautionWords = {
  more: 'More on this.',
  finds: {
    name: 'Finds',
    short: 'This piece was found in the ground. What must be reported, and whether it may leave the country, differs by country: ask the local authority.',
  },
  copies: {
    name: 'Copies',
    short: 'This is a copy, and is marked as one. It must never be sold as what it copies.',
  },
  cleaning: {
    name: 'Cleaning',
    short: 'This piece was cleaned in the past, which cannot be undone. Do not clean a piece; a conservator can advise.',
  },
  lead: { name: 'Lead', short: 'This piece is of lead or holds much of it. Wash your hands after touching it, and keep it from children.' },
  value: {
    name: 'Value of metal',
    short: 'A value of metal is dated, and is neither an offer nor an appraisal. For insurance or sale ask a licensed valuer.',
  },
  publishing: {
    name: 'Publishing',
    short: 'A public catalogue tells a thief what there is. Nothing here says where it is kept or what it cost.',
  },
} as const;

export type CautionName = Exclude<keyof typeof cautionWords, 'more'>;
