import type { Sheet } from '../sheets/sheet.ts';
import { columnKeys, readingsOf } from './column-key.ts';
import { kindsIn } from '../cells/word-cell.ts';
import { erasIn, saysKinds } from './detect-conventions.ts';
import type { Language, Mapping, Settings } from './mapping.ts';
import { DEFAULT_TITLE, EMPTY_MAPPING, LANGUAGES, PLAIN_TITLE } from './mapping.ts';
import { isOwnTable, ownReading } from './own-table.ts';
import type { Question } from './question.ts';
import { aboveQuestions, settle, wholeQuestions } from './setting-questions.ts';
import type { ReadColumn } from './setting-questions.ts';
import type { ListNames, Suggested } from './suggest-column.ts';
import { gradeQuestions, scaleOfColumn } from './grade-questions.ts';
import { unitQuestions } from './unit-questions.ts';
import { suggestColumn } from './suggest-column.ts';

/**
 * How a sheet may become pieces, by its headings and its cells, and what is to be asked. What is not answered is already
 * in the mapping, and always on the private side. A table that this program wrote leaves nothing to ask.
 */
export function suggestMapping(
  sheet: Sheet,
  lists: ListNames,
): { readonly mapping: Mapping; readonly questions: readonly Question[] } {
  const keys = columnKeys(sheet);
  if (isOwnTable(keys)) {
    const columns = keys.map((heading) => ({ heading, readings: [ownReading(heading)] }));
    return { mapping: { ...EMPTY_MAPPING, settings: { gr: 'grains', stroke: 'range' }, columns }, questions: [] };
  }
  const cellsAt = (at: number) => sheet.rows.map(({ cells }) => cells[at] ?? { text: '' });
  const suggested = onlyOnce(
    keys.map((key, at) => suggestColumn(sheet.columns[at]?.heading ?? '', key, cellsAt(at), lists)),
  );
  const columns = suggested.map(({ heading, readings }, at) => withScale({ heading, readings, cells: cellsAt(at) }));
  const { settings, questions } = settle(columns);
  const language = languageOf(suggested);
  return {
    mapping: {
      ...EMPTY_MAPPING,
      language,
      title: language === 'en' ? DEFAULT_TITLE : PLAIN_TITLE,
      settings,
      calendars: columns.flatMap(({ heading, cells }) =>
        (erasIn(cells) ?? []).map((one) => ({ column: heading, ...one })),
      ),
      columns: columns.map(({ heading, readings, cells }) => ({
        heading,
        readings: erasIn(cells) === null ? readings : [{ kind: 'nothing' as const }],
      })),
    },
    questions: [
      ...suggested.flatMap((column) => column.questions),
      ...unitQuestions(columns),
      ...gradeQuestions(columns),
      ...questions,
      ...aboveQuestions(columns),
      ...wholeQuestions(columns, sheet.rows.length).filter(
        ({ id }) => id !== 'unnumbered' || !suggested.some(mayNumber),
      ),
      ...sectionQuestion(sheet),
    ],
  };
}

/** Whether a column is asked about that may be the one of the numbers: which rows have none is asked when that is answered. */
function mayNumber({ questions }: Suggested): boolean {
  return questions.some(({ choices }) =>
    choices.some(({ change }) =>
      change.columns?.some(({ readings: [one] }) => one?.kind === 'field' && one.field === 'number'),
    ),
  );
}

/** A heading is short; a longer text between or below the rows is a note of the keeper's, and may be private. */
const LONGEST_HEADING = 40;

/** Headings between the rows, of which one at least names a kind: `TOKENS`, `Tokens & medals`. Each gets its word, to be looked at. */
function sectionQuestion({ setAside, rows }: Sheet): readonly Question[] {
  const last = rows.at(-1)?.row ?? 0;
  const headings = setAside
    .filter(({ isHeading, row, text }) => isHeading === true && row < last && text.length <= LONGEST_HEADING)
    .map(({ text }) => text);
  if (headings.every((text) => kindsIn(text).length === 0)) return [];
  const others = headings.filter((text) => !saysKinds([{ text }]));
  const words = Object.fromEntries(others.map((text) => [text, kindOfHeading(text)]));
  return [
    {
      id: 'sections',
      asks: 'Do the headings between the rows say what sort of objects are below them?',
      choices: [
        {
          answer: 'yes, of every row that does not say it itself',
          change: { sections: 'kind', ...(others.length === 0 ? {} : { words: { kind: words } }) },
        },
      ],
      example: headings.join(', '),
      otherwise: 'Such headings say nothing of the rows.',
    },
  ];
}

/** The one kind a heading names; one that names none is over coins, as `ROMAN` is, and one of several is not known. */
function kindOfHeading(text: string): string {
  const [only = 'coin', ...more] = kindsIn(text);
  return more.length > 0 ? 'unknown' : only;
}

/** A column of grades with the scale that its words settle: `TTB` makes French of `SPL`, which is Italian too. */
function withScale(column: ReadColumn): ReadColumn {
  const [reading] = column.readings;
  if (reading?.kind !== 'field' || reading.field !== 'grade' || reading.unit !== undefined) return column;
  const scale = scaleOfColumn(column);
  return scale === null ? column : { ...column, readings: [{ ...reading, unit: scale }] };
}

/**
 * What a mapping that is there still leaves to ask, and it with what the cells settle where it is silent: a column that was named
 * since may hold days or years that nobody has asked of yet.
 */
export function openQuestions(
  sheet: Sheet,
  mapping: Mapping,
): { readonly mapping: Mapping; readonly found: Settings; readonly questions: readonly Question[] } {
  const readings = readingsOf(sheet, mapping);
  const columns = columnKeys(sheet).map((heading, at) => ({
    heading,
    readings: readings[at] ?? [],
    cells: sheet.rows.map(({ cells }) => cells[at] ?? { text: '' }),
  }));
  const isScaled = mapping.always['grade-scale'] !== undefined;
  const settled = settle(columns);
  const isSaid = (name: string): boolean => Object.hasOwn(mapping.settings, name);
  const found = Object.fromEntries(Object.entries(settled.settings).filter(([name]) => !isSaid(name)));
  const isOpen = ({ id }: Question): boolean =>
    id === 'kind' ? mapping.always.kind === undefined && mapping.sections !== 'kind' : !isSaid(id);
  return {
    mapping: { ...mapping, settings: { ...found, ...mapping.settings } },
    found,
    questions: [
      ...unitQuestions(columns),
      ...(isScaled ? [] : gradeQuestions(columns)),
      ...settled.questions.filter(isOpen),
      ...aboveQuestions(
        columns.filter(({ heading }) => !mapping.asAbove.includes(heading) && !mapping.dittos.includes(heading)),
      ),
      ...wholeQuestions(columns, sheet.rows.length).filter(isOpen),
      ...(mapping.sections === null ? sectionQuestion(sheet) : []),
    ],
  };
}

/** Fields that several columns may fill together. */
const SEVERAL: ReadonlySet<string> = new Set([
  'references',
  'tags',
  'story',
  'treatments',
  'peculiarities',
  'makers',
  'moneyer',
  'engraver',
  'artist',
  'medallist',
]);

/** A field has one column: the first that claims it. A second one stays private. */
function onlyOnce(columns: readonly Suggested[]): readonly Suggested[] {
  const taken = new Set<string>();
  return columns.map((column) => {
    const [reading] = column.readings;
    if (reading?.kind !== 'field' || SEVERAL.has(reading.field)) return column;
    if (taken.has(reading.field)) return { ...column, readings: [{ kind: 'ledger' }] };
    taken.add(reading.field);
    return column;
  });
}

/** The language most headings are in; English where none is ahead. */
function languageOf(columns: readonly Suggested[]): Language {
  const votes = (language: Language) => columns.filter(({ languages }) => languages.includes(language)).length;
  return LANGUAGES.reduce((best, language) => (votes(language) > votes(best) ? language : best), 'en');
}
