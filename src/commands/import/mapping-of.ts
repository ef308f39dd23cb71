import { formatMapping } from '../../import/columns/format-mapping.ts';
import type { Mapping } from '../../import/columns/mapping.ts';
import { parseMapping } from '../../import/columns/parse-mapping.ts';
import { openQuestions, suggestMapping } from '../../import/columns/suggest-mapping.ts';
import { answer } from '../../import/columns/question.ts';
import type { Question, Change } from '../../import/columns/question.ts';
import type { Records } from '../../catalogue/records.ts';
import { good, refuse } from '../../core/outcome.ts';
import type { Outcome } from '../../core/outcome.ts';
import type { Sheet } from '../../import/sheets/sheet.ts';
import { canAsk, askWhich } from '../parts/ask.ts';
import { PRIVATE_FILE, readIfThere, writeWhole } from '../../catalogue/keep/flush.ts';
import { formatReading } from '../../import/columns/parse-column-rule.ts';
import { formatInLine } from '../../catalogue/write/write-yaml.ts';
import type { Written } from '../../catalogue/yaml.ts';
import { shorten } from './tell-columns.ts';

type WantedMapping = {
  readonly sheet: Sheet;
  readonly records: Records;
  /** Where the mapping lies or will lie. */
  readonly at: string;
  readonly shown: string;
  /** Whether the keeper has named the file. */
  readonly isGiven: boolean;
};

type FoundMapping = {
  readonly mapping: Mapping;
  /** Whether nobody has looked at it yet. */
  readonly isNew: boolean;
  /** What the sheet does not tell, in words, for a keeper to answer in the file. */
  readonly asked: readonly string[];
};

/** The mapping that is there, or one suggested for the sheet, asked about where somebody can be asked, and written where the keeper finds it. */
export async function mappingOf({ sheet, records, at, shown, isGiven }: WantedMapping): Promise<Outcome<FoundMapping>> {
  const text = await readIfThere(at);
  // The cabinet says in which money its ledger is kept.
  const money = records.cabinet?.fields.currency;
  const isOther = isOtherMoney(sheet, money ?? '');
  if (text !== null) {
    const read = parseMapping(text);
    if (!read.ok) return refuse(`${shown} · ${read.problem}`);
    const { mapping, found, questions } = openQuestions(sheet, read.value);
    const told = Object.entries(found).map(
      ([name, value]) => `Found in the cells and used: ${name}: ${value}. Write another under read: if it is not so.`,
    );
    return good({
      mapping,
      isNew: false,
      asked: [...told, ...questionsInWords(notAnswered(questions, records, isOther))],
    });
  }
  if (isGiven) return refuse(`There is no mapping ${shown}. Leave --mapping out, and one is suggested.`);
  const { mapping, questions } = suggestMapping(sheet, {
    rulers: records.rulers.flatMap(({ fields }) => [fields.name, ...fields['other-names']]),
    mints: records.mints.flatMap(({ fields }) => [fields.name, ...fields.names.map(({ name }) => name)]),
    denominations: records.denominations.map(({ fields }) => fields.name),
    works: records.works.flatMap(({ fields }) => [fields.title, ...(fields.short === undefined ? [] : [fields.short])]),
  });
  const known =
    money === undefined || isOther ? mapping : { ...mapping, settings: { currency: money, ...mapping.settings } };
  const open = notAnswered(questions, records, isOther);
  const settled = canAsk() ? await askMapping(known, open) : known;
  const asked = canAsk() ? [] : questionsInWords(open);
  const notes =
    asked.length === 0 ? '' : ['# What the sheet does not tell:', ...asked.map((line) => `# ${line}`), ''].join('\n');
  await writeWhole(at, `${formatMapping(settled)}${notes}`, PRIVATE_FILE);
  return good({ mapping: settled, isNew: true, asked });
}

/** Signs of money, by what they can only be. */
const SIGNS: Readonly<Record<string, RegExp>> = { GBP: /£/, EUR: /€|\bEUR\b/ };

/** Whether a sheet has the sign of another money than the cabinet's, and not of that: a new cabinet names one that nobody has chosen. */
function isOtherMoney({ rows, columns }: Sheet, money: string): boolean {
  const holds = (sign: RegExp): boolean =>
    columns.some(({ heading }) => sign.test(heading)) ||
    rows.some(({ cells }) =>
      cells.some(({ text, value }) => sign.test(text) || (value?.kind === 'money' && sign.test(value.currency))),
    );
  return (
    money in SIGNS &&
    Object.entries(SIGNS).some(([code, sign]) => code !== money && holds(sign)) &&
    !holds(SIGNS[money] ?? /$^/)
  );
}

/** The questions that the cabinet does not answer for every sheet: its currency, and the scale of its grades. */
function notAnswered(questions: readonly Question[], { cabinet }: Records, hasOtherMoney = false): readonly Question[] {
  return questions.filter(
    ({ id }) =>
      !(id === 'currency' && cabinet?.fields.currency !== undefined && !hasOtherMoney) &&
      !(id.startsWith('grade ') && cabinet?.fields['grade-scale'] !== undefined),
  );
}

/** Asks each question and puts the answers in the mapping; what nobody can say stays as it was suggested. */
async function askMapping(mapping: Mapping, questions: readonly Question[]): Promise<Mapping> {
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
function questionsInWords(questions: readonly Question[]): readonly string[] {
  return questions.flatMap(({ asks, choices, example, otherwise }) => [
    `${asks}${example === '' ? '' : ` (${shorten(example, 40)})`} Not answered: ${otherwise}`,
    ...choices.map((choice) => `   ${choice.answer}: write ${changeInWords(choice.change)}`),
  ]);
}

/** `Date: date under columns:`; what is to be written where. */
function changeInWords({
  columns = [],
  settings = {},
  always = {},
  sections,
  asAbove = [],
  dittos = [],
  words = {},
}: Change): string {
  const line = (name: string, value: Written, part: string): string =>
    `${formatInLine({ [name]: value }).slice(2, -2)} under ${part}:`;
  return [
    ...columns.map(({ heading, readings }) => {
      const written = readings.map(formatReading);
      return line(heading, written.length === 1 ? (written[0] ?? '') : written, 'columns');
    }),
    ...Object.entries(settings).map(([name, value]) => line(name, value, 'read')),
    ...Object.entries(always).map(([name, value]) => line(name, value, 'always')),
    ...(sections === undefined ? [] : [`sections: ${sections} on a line of its own, at the margin`]),
    ...[['as-above', asAbove] as const, ['dittos', dittos] as const].flatMap(([name, headings]) =>
      headings.length === 0
        ? []
        : [`${name}: [${headings.map((one) => formatInLine(one)).join(', ')}] on a line of its own, at the margin`],
    ),
    ...Object.entries(words).map(([field, table]) => line(field, table, 'words')),
  ].join(' and ');
}
