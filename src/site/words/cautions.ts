/** What is said beside the piece that calls for it. It defers to local law and to those licensed to judge. */
export const cautionWords = {
  more: 'More on this',
  find: {
    title: 'A find.',
    says: 'What must be reported, and what may be kept or leave the country, differs from country to country: ask the local authority before you dig, buy or carry.',
  },
  copy: { title: 'A copy.', says: 'It was made in modern times and is shown as one. Many countries require a copy to be marked.' },
  counterfeit: {
    title: 'A counterfeit.',
    says: 'Made to deceive in its own day and kept as a document of it. Where such a piece may be owned or sold, local law decides.',
  },
  cleaned: { title: 'Cleaned in the past.', says: 'The surface will not come back. Do not clean a piece: ask a conservator.' },
  lead: { title: 'Lead.', says: 'Wash your hands after handling it, and keep it from children.' },
  value: {
    title: 'A value of metal only,',
    says: 'as of the day and source given. Not an offer, not an appraisal: a licensed valuer gives those.',
  },
} as const;
