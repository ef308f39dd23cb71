import type { Example } from '../measures/measure-examples.ts';
import type { ScaleId } from './grade.ts';

/** How a grade is read here, by example: `means` begins with the numbers it may stand for. Each row is tested. */
export type GradeExample = Example & { readonly scale?: ScaleId };

export const GRADE_EXAMPLES: readonly GradeExample[] = [
  { write: 'VF', scale: 'us', means: '20–35' },
  { write: 'VF', scale: 'uk', means: '35–54; two tables disagree, and both are kept' },
  { write: 'VF', means: '20–54; no scale is named, so every scale that has the word is kept' },
  { write: 'good VF', scale: 'uk', means: '40–54; better than VF and short of EF' },
  { write: 'about EF', scale: 'uk', means: '40–55; just short of EF' },
  { write: 'VF/F', scale: 'uk', means: '15–54; the obverse VF, the reverse F' },
  { write: 'VF-EF', scale: 'uk', means: '35–62; between the two' },
  { write: 'ss+', scale: 'de', means: '30–54; better than sehr schön' },
  { write: 'qSPL', scale: 'it', means: '30–55; quasi splendido' },
  { write: 'MS-63 RD', means: '63; copper with its red' },
  { write: 'AU-58+', means: '58–60; at 58 and short of 60' },
  { write: 'EF details, cleaned', scale: 'uk', means: '50–62; wear alone: a details piece, for it was cleaned' },
  { write: 'not graded: cut', means: 'not graded; which is not a poor grade' },
];

export const GRADE_REFUSALS: readonly GradeExample[] = [
  { write: 'AU-57', means: 'The numeric scale has no step 57. Write 55 or 58.' },
  { write: 'VF-40', means: 'VF goes with 20 to 35; this says "VF-40". Write EF-40.' },
  {
    write: 'MS-63',
    scale: 'uk',
    means: '"MS-63" is on the numeric scale and not the British one. Write grade-scale: numeric.',
  },
];
