import { DATE_EXAMPLES } from '../../../core/dating/date-examples.ts';
import { GRADE_READINGS, GRADE_REFUSALS } from '../../../core/grade/readings.ts';
import { SCALES } from '../../../core/grade/scales.ts';
import type { GradeReading } from '../../../core/grade/readings.ts';
import { LEGEND_READINGS, MASK_READINGS } from '../../../core/legends/readings.ts';
import { AXIS_READINGS, SIZE_READINGS, WEIGHT_READINGS, WEIGHT_REFUSALS } from '../../../core/measures/readings.ts';
import type { Reading } from '../../../core/measures/readings.ts';
import { FINENESS_READINGS, FINENESS_REFUSALS } from '../../../core/metal/readings.ts';
import { PROVENANCE_READINGS } from '../../../core/provenance/readings.ts';
import { REFERENCE_READINGS } from '../../../core/references/parse-reference.ts';
import { urls } from '../../urls.ts';
import { aboutWords, readingsWords } from '../../words/about.ts';
import type { PageHead } from '../shared/head.ts';

/** Examples of one kind. */
export type ReadingTable = {
  readonly title: string | null;
  readonly note: string | null;
  /** What is understood, and then what is asked back. */
  readonly halves: readonly { readonly means: string; readonly rows: readonly Reading[] }[];
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
      sectionOf('grades', [tableOf(GRADE_READINGS.map(withScale), GRADE_REFUSALS.map(withScale), notes.grades)]),
      sectionOf('weights', [tableOf(WEIGHT_READINGS, WEIGHT_REFUSALS)]),
      sectionOf('sizes', [tableOf(SIZE_READINGS)]),
      sectionOf('axis', [tableOf(AXIS_READINGS)]),
      sectionOf('fineness', [tableOf(FINENESS_READINGS, FINENESS_REFUSALS)]),
      sectionOf('legends', [tableOf(LEGEND_READINGS, [], notes.legends)]),
      sectionOf('masks', [tableOf(MASK_READINGS)]),
      sectionOf('references', [tableOf(REFERENCE_READINGS)]),
      sectionOf('provenance', [tableOf(PROVENANCE_READINGS, [], notes.provenance)]),
    ],
  };
}

function sectionOf(id: SectionName, tables: readonly ReadingTable[]): ReadingSection {
  return { id, title: readingsWords.sections[id], tables };
}

function tableOf(
  rows: readonly Reading[],
  asks: readonly Reading[] = [],
  note: string | null = null,
  title: string | null = null,
): ReadingTable {
  const halves = [
    { means: readingsWords.means, rows },
    { means: readingsWords.asks, rows: asks },
  ];
  return { title, note, halves: halves.filter((half) => half.rows.length > 0) };
}

function withScale({ write, means, scale }: GradeReading): Reading {
  return { write: `${write}${readingsWords.scale(scale === undefined ? undefined : SCALES[scale].title)}`, means };
}
