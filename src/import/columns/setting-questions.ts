import type { SheetCell } from '../sheets/sheet.ts';
import type { Reading, Settings } from './mapping.ts';
import type { Change, Choice, Question } from './question.ts';
import {
  bareSumIn,
  daysIn,
  decimalIn,
  erasIn,
  filled,
  grIn,
  hyphensIn,
  numbersEachRow,
  shortDayIn,
  smallYears,
} from './detect-conventions.ts';
import { GRAINS, matchHeading } from './match-heading.ts';
import { isAsAbove } from '../cells/blank.ts';
import { formatInLine } from '../../catalogue/write/write-yaml.ts';
import type { Field } from './targets.ts';

export type ReadColumn = {
  readonly heading: string;
  readonly readings: readonly Reading[];
  readonly cells: readonly SheetCell[];
};
type Told = { readonly settings: Settings; readonly questions: readonly Question[] };

/** What the cells settle of how figures, days and eras are written here, and what they leave to ask. */
export function settle(columns: readonly ReadColumn[]): Told {
  const measured = cellsOf(columns, (reading) => isMeasure(reading) || isSum(reading));
  const days = cellsOf(columns, (reading) => isDate(reading));
  const [decimal, order] = [decimalIn(measured), daysIn(days)];
  const short = shortDayIn(days);
  const struck = cellsOf(columns, (reading) => reading.kind === 'field' && reading.field.startsWith('date'));
  const years = smallYears(struck);
  const signed = years.minus !== null;
  const hyphens = hyphensIn(struck);
  const gr = grIn(cellsOf(columns, (reading) => reading.kind === 'field' && (reading.field === 'weight' || reading.field === 'measures'))) ?? headingInGr(columns);
  const sum = bareSumIn(cellsOf(columns, (reading) => reading.kind === 'ledger' && isSum(reading) && reading.currency === undefined));
  const alone = halfDate(columns);
  return {
    settings: {
      ...(decimal === 'point' || decimal === 'comma' ? { decimal } : {}),
      ...(order === 'day first' || order === 'month first' ? { days: order } : {}),
      // Where years before Christ have a minus, those without one are ours.
      ...(signed && years.bare !== null ? { years: 'AD' } : {}),
      ...(hyphens === 'range' || hyphens === 'month' ? { hyphen: hyphens } : {}),
    },
    questions: [
      ...asking(decimal === 'two ways' || decimal === 'both', 'decimal', 'What parts the whole from the fraction in figures such as this?', [['a point: 1.38', { decimal: 'point' }], ['a comma: 1,38', { decimal: 'comma' }]], exampleOf(measured, /\d,\d{3}(?!\d)/), 'Figures that can be read two ways are not read.'),
      ...asking(order === 'two ways', 'days', 'What comes first in days such as this?', [['the day', { days: 'day first' }], ['the month', { days: 'month first' }]], exampleOf(days, /^\d{1,2}[./-]\d{1,2}[./-]\d{4}$/), 'Such days are not read.'),
      ...asking(short !== null, 'short', 'Which years do two figures mean, in days such as this?', [['1930 to 2029', { short: '1930-2029' }], ['1900 to 1999', { short: '1900-1999' }]], short ?? '', 'Such days are not read.'),
      ...asking(hyphens === 'two ways', 'hyphen', 'What does a hyphen mean in dates such as this?', [['years, from and to', { hyphen: 'range' }], ['a year and a month', { hyphen: 'month' }]], exampleOf(struck, /^\d{4}-(?:0\d|1[0-2])$/), 'Such dates are not read.'),
      ...asking(years.bare !== null && !signed && !hasEras(columns), 'years', 'Which era are years such as this counted in?', [['AD', { years: 'AD' }], ['BC', { years: 'BC' }], ['of the Hijra', { years: 'AH' }]], years.bare ?? '', `Years below 1000 that name no era are not read.${rowByRow(columns)}`),
      ...asking(signed, 'minus', 'What does a year with a minus mean?', [['-44 is 44 BC', { minus: 'BC' }], ['-44 is 45 BC, as astronomers count', { minus: 'astronomical' }]], years.minus ?? '', 'Years with a minus are not read.'),
      ...asking(alone !== null, 'alone', 'What does a first year without a last one mean?', [['that year', { alone: 'that year' }], ['from that year on', { alone: 'from then' }]], alone ?? '', 'It is read as: from that year, to an end not known.'),
      ...asking(gr !== null, 'gr', 'Is "gr" grams or grains?', [['grams', { gr: 'grams' }], ['grains', { gr: 'grains' }]], gr ?? '', 'Weights in "gr" are not read.'),
      ...asking(sum !== null, 'currency', 'In which currency are sums that name none?', ['GBP', 'EUR', 'USD', 'CHF'].map((code) => [code, { currency: code }] as const), sum ?? '', 'Such sums stay in the ledger as they stand, under their own heading.'),
    ],
  };
} // prettier-ignore

/** Whether a column says the era of each row. */
function hasEras(columns: readonly ReadColumn[]): boolean {
  return columns.some(({ cells }) => erasIn(cells) !== null);
}

/** How to say the era row by row, with a column of this sheet and what it says beside such a year. */
function rowByRow(columns: readonly ReadColumn[]): string {
  const dated = columns.find(({ readings }) =>
    readings.some((reading) => reading.kind === 'field' && reading.field.startsWith('date')),
  );
  const at = dated?.cells.findIndex(({ text }) => /^\d{1,3}$/.test(text)) ?? -1;
  const by = columns.find(({ heading, readings, cells }) => {
    const isRealm = readings.some(
      (reading) => reading.kind === 'field' && ['realm', 'issuer', 'ruler', 'mint'].includes(reading.field),
    );
    const matched = matchHeading(heading);
    return (cells[at]?.text ?? '') !== '' && (isRealm || (matched.kind === 'doubtful' && matched.doubt === 'country'));
  });
  if (by === undefined) return '';
  const rule = formatInLine({ column: by.heading, is: by.cells[at]?.text ?? '', years: 'AH' });
  return ` Where rows differ, write a line of its own, with a rule for each: calendars: [${rule}]`;
}

/** Fields in which a list leaves out what it said in the row above. */
const LEFT_OUT: ReadonlySet<string> = new Set(['ruler', 'realm', 'issuer', 'mint', 'denomination', 'date']);
const FEWEST_BLANKS = 3;

/** Asks of each column of names with blanks, or dittos, below what it says whether they mean the same as above. */
export function aboveQuestions(columns: readonly ReadColumn[]): readonly Question[] {
  return columns.flatMap(({ heading, readings, cells }) => {
    const isNamed = readings.some((one) => one.kind === 'pattern' || (one.kind === 'field' && LEFT_OUT.has(one.field)));
    const isKept = readings.some((one) => one.kind === 'ledger' && one.column !== undefined);
    if (!isNamed && !isKept) return [];
    const isDitto = new Set([...new Set(cells.map(({ text }) => text))].filter(isAsAbove));
    const saysNothing = ({ text }: SheetCell): boolean => text === '' || isDitto.has(text);
    const dittos = cells.filter(({ text }) => isDitto.has(text)).length;
    const blanks = cells.filter(saysNothing).length;
    const first = cells.findIndex((cell, at) => at > 0 && saysNothing(cell) && (cells[at - 1]?.text ?? '') !== '');
    const above = cells[first - 1]?.text ?? '';
    if ((isNamed ? blanks : dittos) < FEWEST_BLANKS || blanks === cells.length || first < 1) return [];
    return [
      {
        id: `above ${heading}`,
        asks: `"${heading}" is empty in ${blanks - dittos} rows and a ditto in ${dittos}, the first of them below this. Does each mean the same as above?`,
        choices: [
          ...(dittos === 0 ? [] : [{ answer: 'a ditto does, and an empty cell says nothing', change: { dittos: [heading] } }]),
          { answer: 'yes, the same as the row above', change: { asAbove: [heading] } },
        ],
        example: above,
        otherwise: 'An empty cell says nothing, and a ditto is not read. If yes, a piece that has none is given the one above it too.',
      },
    ];
  });
} // prettier-ignore

/** Questions about rows as a whole: a number for each, and what sort of object they are. */
export function wholeQuestions(columns: readonly ReadColumn[], rows: number): readonly Question[] {
  const has = (field: Field) =>
    columns.some(({ readings }) =>
      readings.some(
        (reading) =>
          (reading.kind === 'field' && reading.field === field) ||
          (reading.kind === 'pattern' && reading.pattern.includes(`{${field}}`)),
      ),
    );
  const numbers = columns.find(({ readings }) =>
    readings.some((reading) => reading.kind === 'field' && reading.field === 'number'),
  );
  const inPattern = numbers === undefined && has('number');
  const missing = inPattern ? 0 : numbers === undefined ? rows : numbers.cells.filter(({ text }) => text === '').length;
  // A column that numbers each row may be what numbers the pieces.
  const candidate =
    numbers === undefined
      ? columns.find(({ readings, cells }) => readings.every(isUnnamed) && numbersEachRow(cells))
      : undefined;
  const kinds = ['coin', 'token', 'medal', 'jeton', 'paper'].map((kind) => ({
    answer: kind === 'paper' ? 'paper money' : `${kind}s`,
    change: { always: { kind } },
  }));
  return [
    ...(missing === 0
      ? []
      : [
          {
            id: 'unnumbered',
            asks: `${missing} ${missing === 1 ? 'row has' : 'rows have'} no inventory number. What numbers ${missing === 1 ? 'it' : 'them'}?`,
            choices: [
              ...(candidate === undefined ? [] : [numberedBy(candidate.heading)]),
              { answer: 'the row they are in: row-17', change: { settings: { unnumbered: 'row' as const } } },
            ],
            example: '',
            otherwise: 'Such rows are skipped.',
          },
        ]),
    ...(has('kind')
      ? []
      : [
          {
            id: 'kind',
            asks: 'What sort of objects are in this sheet?',
            choices: kinds,
            example: '',
            otherwise: 'The page of each says that its kind is not known, until you say.',
          },
        ]),
  ];
}

function isUnnamed(reading: Reading): boolean {
  return reading.kind === 'ledger' && reading.column === undefined;
}

function numberedBy(heading: string): Choice {
  const readings = [{ kind: 'field' as const, field: 'number' as const }];
  return { answer: `the column "${heading}"`, change: { columns: [{ heading, readings }] } };
}

function asking(
  isAsked: boolean,
  id: string,
  asks: string,
  choices: readonly (readonly [string, Settings])[],
  example: string,
  otherwise: string,
): readonly Question[] {
  const change = (settings: Settings): Change => ({ settings });
  return isAsked
    ? [
        {
          id,
          asks,
          choices: choices.map(([answer, settings]) => ({ answer, change: change(settings) })),
          example,
          otherwise,
        },
      ]
    : [];
}

const MEASURED: ReadonlySet<string> = new Set(['weight', 'diameter', 'height', 'width', 'thickness', 'measures']);
const isMeasure = (reading: Reading) => reading.kind === 'field' && MEASURED.has(reading.field);
const isSum = (reading: Reading) =>
  reading.kind === 'ledger' &&
  (reading.column === 'cost' || reading.column === 'value' || reading.column === 'insured');
const isDate = (reading: Reading) =>
  (reading.kind === 'ledger' && reading.column === 'acquired') ||
  (reading.kind === 'field' && reading.field.startsWith('date'));

function cellsOf(columns: readonly ReadColumn[], fits: (reading: Reading) => boolean): readonly SheetCell[] {
  return columns.filter(({ readings }) => readings.some(fits)).flatMap(({ cells }) => filled(cells));
}

function exampleOf(cells: readonly SheetCell[], form: RegExp): string {
  return (cells.find(({ text }) => form.test(text)) ?? cells[0])?.text ?? '';
}

/** The heading of a weight in `gr`. */
function headingInGr(columns: readonly ReadColumn[]): string | null {
  const found = columns.find(
    ({ readings, heading }) =>
      readings.some((reading) => reading.kind === 'field' && reading.unit === 'gr') &&
      ![...GRAINS].some((word) => heading.toLowerCase().includes(word)),
  );
  return found?.heading ?? null;
}

/** A first year beside which no last one stands. */
function halfDate(columns: readonly ReadColumn[]): string | null {
  const of = (field: Field) =>
    columns.find(({ readings }) => readings.some((reading) => reading.kind === 'field' && reading.field === field));
  const [from, to] = [of('date from'), of('date to')];
  return from?.cells.find(({ text }, at) => text !== '' && (to?.cells[at]?.text ?? '') === '')?.text ?? null;
}
