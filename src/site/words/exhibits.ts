import { ended } from './ended.ts';

/** What is said of exhibits on line. */
export const exhibitWords = {
  title: 'Exhibits',
  description: 'Exhibits laid out in cases, to read on line or to print and set up.',
  lead: 'Pieces chosen and laid out in cases, to read here or to see at the club.',
  none: 'There is no exhibit yet.',
  shownBy: (keeper: string) => ended(`Shown by ${keeper}`),
  extent: (pieces: number, cases: number) =>
    `${pieces} ${pieces === 1 ? 'piece' : 'pieces'} in ${cases === 1 ? 'one case' : `${cases} cases`}.`,
  pieces: (count: number) => (count === 1 ? 'One piece' : `${count} pieces`),
  previous: 'Previous',
  next: 'Next',
  backToCases: 'Back to the cases',
  end: 'Bibliography, acknowledgements and forms to print',
  chapters: 'The cases',
  caseName: (number: number, title: string | null) => (title === null ? `Case ${number}` : `Case ${number}: ${title}`),
  boardName: (group: string) => `The pieces of “${group}”`,
  planTitle: (number: number) => `Plan of case ${number}`,
  planSays: (width: number, height: number, depth: number | null) =>
    `Inside, the case is ${width} × ${height} mm${depth === null ? '' : ` and ${depth} mm deep`}, and everything in it is drawn to one scale.`,
  labelsStand: {
    below: 'Labels are under their pieces; the numbers are those of the list.',
    beside: 'Labels are next to their pieces; the numbers are those of the list.',
    key: 'The labels are on a key; their numbers are next to the pieces.',
  },
  planKey: 'The key',
  planList: 'Pieces in this case',
  planName: (number: number) => `Plan of case ${number}`,
  fits: 'Everything fits.',
  misfits: 'What does not fit',
  bibliography: 'Bibliography',
  furtherReading: 'Further reading',
  abbreviations: 'Abbreviations',
  acknowledgements: 'Acknowledgements',
  toCite: 'Cite this exhibit',
  cite: (keeper: string | null, title: string, cabinet: string) =>
    `${keeper === null || keeper === '' ? '' : `${keeper}, `}“${title}”, an exhibit in ${cabinet}`,
  pictureSays: (titles: readonly string[]) => `On a board, at one scale: ${titles.join('; ')}.`,
  print: 'To print and set up',
  printSays: 'Title card, plan of the cases, labels, tickets and set-up list, in millimetres.',
  printNamed: 'With the keeper’s name',
  printAnonymous: 'Without a name, for judging',
  printPlain: 'Forms to print',
  side: { obverse: 'obverse', reverse: 'reverse', both: 'both faces' },
} as const;
