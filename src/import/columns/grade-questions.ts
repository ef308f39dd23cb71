import type { ScaleId } from '../../core/grade/grade.ts';
import { parseGrade } from '../../core/grade/parse-grade.ts';
import { ASKED_FIRST, ASKED_LAST, SCALES } from '../../core/grade/scales.ts';
import { filled } from './detect-conventions.ts';
import type { Question } from './question.ts';
import type { ReadColumn } from './setting-questions.ts';

/** The words of a column that several scales have, and how many of all its graded cells each of these scales reads. */
type Undecided = {
  readonly words: readonly string[];
  readonly graded: number;
  readonly fits: readonly { readonly scale: ScaleId; readonly cells: number }[];
};

const WORDS_SHOWN = 6;
const WITHOUT_NUMBERS: readonly ScaleId[] = [...ASKED_FIRST, ...ASKED_LAST, 'nordic'];

/**
 * On whose scale the grades of a column are, asked once for each column whose words are at home on more than one. Not asked where
 * the column, another column or the mapping names the scale, nor where one foreign scale alone has every word of the column.
 */
export function gradeQuestions(columns: readonly ReadColumn[]): readonly Question[] {
  const isScaled = columns.some(({ readings }) =>
    readings.some((reading) => reading.kind === 'field' && reading.field === 'grade-scale'),
  );
  if (isScaled) return [];
  return columns.flatMap((column) => {
    const isOpen = column.readings.some(
      (reading) => reading.kind === 'field' && reading.field === 'grade' && reading.unit === undefined,
    );
    const undecided = isOpen ? undecidedIn(column) : null;
    return undecided === null || scaleOfAll(undecided) !== null ? [] : [questionOf(column.heading, undecided)];
  });
}

/** The one scale that reads every grade of a column, where it is not one of several that share their English words. */
export function scaleOfColumn(column: ReadColumn): ScaleId | null {
  const undecided = undecidedIn(column);
  return undecided === null ? null : scaleOfAll(undecided);
}

function scaleOfAll({ graded, fits }: Undecided): ScaleId | null {
  const all = fits.filter(({ cells }) => cells === graded).map(({ scale }) => scale);
  const [only, ...others] = all;
  return only === undefined || others.length > 0 || ['uk', 'us', 'ancient'].includes(only) ? null : only;
}

function undecidedIn({ cells }: ReadColumn): Undecided | null {
  const texts = filled(cells).map(({ text }) => text.trim());
  const scalesOf = new Map([...new Set(texts)].map((text) => [text, scalesThatRead(text)]));
  const words = [...scalesOf].filter(([, scales]) => scales.length > 1).map(([text]) => text);
  if (words.length === 0) return null;
  const could = new Set(words.flatMap((text) => scalesOf.get(text) ?? []));
  const known = texts.map((text) => scalesOf.get(text) ?? []).filter((scales) => scales.length > 0);
  const fits = [...could].map((scale) => ({ scale, cells: known.filter((scales) => scales.includes(scale)).length }));
  return { words, graded: known.length, fits: fits.toSorted((a, b) => b.cells - a.cells) };
}

/** The scales that have the words of a grade; none for a number, which names its own, and for what is no grade. */
function scalesThatRead(text: string): readonly ScaleId[] {
  return WITHOUT_NUMBERS.filter((scale) => {
    const read = parseGrade(text, { scale });
    return read.ok && read.value.notGraded === undefined && read.value.scale === scale;
  });
}

function questionOf(heading: string, { words, graded, fits }: Undecided): Question {
  const shown = words.slice(0, WORDS_SHOWN).map((word) => `"${word}"`);
  const more = words.length > WORDS_SHOWN ? ' and more' : '';
  const titles = fits.map(({ scale, cells }) => `the ${SCALES[scale].title} scale has ${cells}`);
  return {
    id: `grade ${heading}`,
    asks: `On whose scale are the grades under "${heading}"? It says ${shown.join(', ')}${more}, which more than one scale has. Of ${graded} ${graded === 1 ? 'grade' : 'grades'} ${titles.join(', ')}.`,
    choices: fits.map(({ scale }) => ({
      answer: SCALES[scale].title,
      change: { columns: [{ heading, readings: [{ kind: 'field', field: 'grade', unit: scale }] }] },
    })),
    example: '',
    otherwise: 'They are imported without a scale, and each may be on any that has its words.',
  };
}
