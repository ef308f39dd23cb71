import { formatReading } from '../../import/columns/parse-column-rule.ts';
import type { Mapping } from '../../import/columns/mapping.ts';
import type { Change, Question } from '../../import/columns/question.ts';
import { answer } from '../../import/columns/question.ts';
import { formatInLine } from '../../catalogue/write/write-yaml.ts';
import type { Written } from '../../catalogue/yaml.ts';
import { askWhich } from '../parts/ask.ts';
import { shorten } from './tell-columns.ts';

/** Asks each question and puts the answers in the mapping; what nobody can say stays as it was suggested. */
export async function askMapping(mapping: Mapping, questions: readonly Question[]): Promise<Mapping> {
  let settled = mapping;
  for (const { asks, choices, example, otherwise } of questions) {
    const answers = choices.map((choice, at) => ({ value: String(at), label: choice.answer }));
    const shown = example === '' ? asks : `${asks}  (${shorten(example, 40)})`;
    const said = await askWhich(shown, [...answers, { value: 'later', label: 'not now', hint: otherwise }]);
    const choice = choices[Number(said)];
    if (choice !== undefined) settled = answer(settled, choice);
  }
  return settled;
}

/** The questions in words, with what to write in the mapping for each answer. */
export function questionsInWords(questions: readonly Question[]): readonly string[] {
  return questions.flatMap(({ asks, choices, example, otherwise }) => [
    `${asks}${example === '' ? '' : ` (${shorten(example, 40)})`} Not answered: ${otherwise}`,
    ...choices.map((choice) => `   ${choice.answer}: write ${changeInWords(choice.change)}`),
  ]);
}

/** `Date: date under columns:`; what is to be written where. */
function changeInWords({ columns = [], settings = {}, always = {}, sections }: Change): string {
  const line = (name: string, value: Written, part: string): string =>
    `${formatInLine({ [name]: value }).slice(2, -2)} under ${part}:`;
  return [
    ...columns.map(({ heading, readings }) => {
      const written = readings.map(formatReading);
      return line(heading, written.length === 1 ? (written[0] ?? '') : written, 'columns');
    }),
    ...Object.entries(settings).map(([name, value]) => line(name, value, 'read')),
    ...Object.entries(always).map(([name, value]) => line(name, value, 'always')),
    ...(sections === undefined ? [] : [`sections: ${sections} on a line of its own`]),
  ].join(' and ');
}
