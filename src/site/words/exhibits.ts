import type { CaseKind } from '../../core/cases/furniture.ts';
import { ended } from './ended.ts';

const KINDS: Readonly<Record<CaseKind, string>> = {
  flat: 'A flat case',
  sloped: 'A sloped case',
  'wall-frame': 'A wall frame',
};

/** What is said of exhibits online. */
export const exhibitWords = {
  title: 'Exhibits',
  description: 'Exhibits laid out in cases, to read online or to print and set up.',
  lead: 'Pieces chosen and laid out in cases, to read here or to see at the club.',
  none: 'There is no exhibit yet.',
  shownBy: (keeper: string) => ended(`Shown by ${keeper}`),
  extent: (pieces: number, cases: number) =>
    `${pieces} ${pieces === 1 ? 'piece' : 'pieces'} in ${cases === 1 ? 'one case' : `${cases} cases`}.`,
  pieces: (count: number) => (count === 1 ? 'One piece' : `${count} pieces`),
  previous: 'Previous',
  next: 'Next',
  backToCases: 'Back to the cases',
  caseAlone: 'This case on a page of its own',
  wholeExhibit: 'The whole exhibit',
  end: 'Bibliography, acknowledgements and printing',
  chapters: 'The cases',
  statement: 'What it shows, and how to read the labels',
  caseName: (number: number, title: string | null) => (title === null ? `Case ${number}` : `Case ${number}: ${title}`),
  boardName: (group: string) => `The pieces of “${group}”`,
  caseSays: (kind: CaseKind, size: string) => `${KINDS[kind]}, inside ${size}; everything is to scale.`,
  labelsOnKey: 'The labels are on a key; their numbers are next to the pieces.',
  caseSeen: (name: string) => `${name}, seen from above`,
  whereInCase: (at: number, of: number) => `Where this is in the case: group ${String(at)} of ${String(of)}`,
  enlarge: 'Enlarge the case',
  larger: 'What the labels say stands below in larger letters.',
  planKey: 'The key',
  fits: 'Everything fits.',
  bibliography: 'Bibliography',
  furtherReading: 'Further reading',
  abbreviations: 'Abbreviations',
  research: 'Our own research',
  acknowledgements: 'Acknowledgements',
  toCite: 'Cite this exhibit',
  pictureSays: (titles: readonly string[]) => `On a board, at one scale: ${titles.join('; ')}.`,
  print: 'To print and set up',
  printSays:
    'Title card, plan of the cases, labels, tickets, set-up list, a reader in large print and a code for each case, in millimetres. Everything is black on white.',
  printNamed: 'With the keeper’s name',
  printAnonymous: 'Without a name, for judging',
  printPlain: 'Forms to print',
} as const;
