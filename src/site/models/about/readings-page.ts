import { DATE_EXAMPLES } from '../../../core/dating/date-examples.ts';
import { GRADE_EXAMPLES, GRADE_REFUSALS } from '../../../core/grade/grade-examples.ts';
import { SCALES } from '../../../core/grade/scales.ts';
import type { GradeExample } from '../../../core/grade/grade-examples.ts';
import { LEGEND_EXAMPLES, MASK_EXAMPLES } from '../../../core/legends/legend-examples.ts';
import {
  AXIS_EXAMPLES,
  SIZE_EXAMPLES,
  WEIGHT_EXAMPLES,
  WEIGHT_REFUSALS,
} from '../../../core/measures/measure-examples.ts';
import type { Example } from '../../../core/measures/measure-examples.ts';
import { FINENESS_EXAMPLES, FINENESS_REFUSALS } from '../../../core/metal/fineness-examples.ts';
import { PROVENANCE_EXAMPLES } from '../../../core/provenance/format-chain.ts';
import { REFERENCE_EXAMPLES } from '../../../core/references/parse-reference.ts';
import { urls } from '../../urls.ts';
import { aboutWords, readingsWords } from '../../words/about.ts';
import type { PageHead } from '../shared/head.ts';

/** Examples of one kind. */
export type ReadingTable = {
  readonly title: string | null;
  readonly note: string | null;
  /** What is understood, and then what is asked back. */
  readonly halves: readonly { readonly means: string; readonly rows: readonly Example[] }[];
};

export type ReadingSection = { readonly id: string; readonly title: string; readonly tables: readonly ReadingTable[] };
export type ReadingsPage = { readonly head: PageHead; readonly sections: readonly ReadingSection[] };

type SectionName = keyof typeof readingsWords.sections;

export function readingsPage(): ReadingsPage {
  const { title, description, notes } = readingsWords;
  return {
    head: {
      title,
      description,
      here: urls.readings(),
      trail: [{ name: aboutWords.title, href: urls.about() }],
    },
    sections: [
      sectionOf(
        'dates',
        DATE_EXAMPLES.map(({ title: of, note = null, rows }) => tableOf(rows, [], note, of)),
      ),
      sectionOf('grades', [tableOf(GRADE_EXAMPLES.map(withScale), GRADE_REFUSALS.map(withScale), notes.grades)]),
      sectionOf('weights', [tableOf(WEIGHT_EXAMPLES, WEIGHT_REFUSALS)]),
      sectionOf('sizes', [tableOf(SIZE_EXAMPLES)]),
      sectionOf('axis', [tableOf(AXIS_EXAMPLES)]),
      sectionOf('fineness', [tableOf(FINENESS_EXAMPLES, FINENESS_REFUSALS)]),
      sectionOf('legends', [tableOf(LEGEND_EXAMPLES, [], notes.legends)]),
      sectionOf('masks', [tableOf(MASK_EXAMPLES)]),
      sectionOf('references', [tableOf(REFERENCE_EXAMPLES)]),
      sectionOf('provenance', [tableOf(PROVENANCE_EXAMPLES, [], notes.provenance)]),
    ],
  };
}

function sectionOf(id: SectionName, tables: readonly ReadingTable[]): ReadingSection {
  return { id, title: readingsWords.sections[id], tables };
}

function tableOf(
  rows: readonly Example[],
  asks: readonly Example[] = [],
  note: string | null = null,
  title: string | null = null,
): ReadingTable {
  const halves = [
    { means: readingsWords.means, rows },
    { means: readingsWords.asks, rows: asks },
  ];
  return { title, note, halves: halves.filter((half) => half.rows.length > 0) };
}

function withScale({ write, means, scale }: GradeExample): Example {
  return { write: `${write}${readingsWords.scale(scale === undefined ? undefined : SCALES[scale].title)}`, means };
}
