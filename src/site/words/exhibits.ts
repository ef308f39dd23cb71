/** What is said of exhibits on line. */
export const exhibitWords = {
  title: 'Exhibits',
  description: 'Exhibits laid out in cases, to read on line or to print and set up.',
  lead: 'Pieces chosen and laid out in cases, to read here or to see at the club.',
  none: 'No exhibit has been laid out yet.',
  shownBy: (keeper: string) => `Shown by ${keeper}.`,
  extent: (pieces: number, cases: number) =>
    `${pieces} ${pieces === 1 ? 'piece' : 'pieces'} in ${cases === 1 ? 'one case' : `${cases} cases`}.`,
  chapters: 'The cases',
  caseName: (number: number, title: string | null) => (title === null ? `Case ${number}` : `Case ${number}: ${title}`),
  boardName: (group: string) => `The pieces of “${group}”`,
  planTitle: (number: number) => `How case ${number} is laid`,
  planSays: (width: number, height: number, scale: number) =>
    `The case is ${width} × ${height} mm inside and is drawn here at 1 : ${scale}. The numbers are those of the list; the frames are labels.`,
  planList: 'What lies where',
  planName: (number: number) => `Plan of case ${number}`,
  fits: 'Everything fits.',
  misfits: 'What does not fit',
  depth: (millimetres: number) => `It is ${millimetres} mm deep.`,
  bibliography: 'Books',
  furtherReading: 'To read further',
  acknowledgements: 'Thanks',
  print: 'To print and set up',
  printSays: 'Title card, plan of the cases, labels, tickets and set-up list, in millimetres.',
  printNamed: 'With the keeper’s name',
  printAnonymous: 'Without a name, for judging',
  printPlain: 'Forms to print',
  side: { obverse: 'obverse', reverse: 'reverse', both: 'both faces' },
  tooWide: (title: string, by: string) =>
    `“${title}” and its label are wider than the case by ${by}. Show one face, make the label narrower, or take a wider case.`,
  copy: 'A modern copy.',
} as const;
