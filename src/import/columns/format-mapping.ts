import type { Mapping } from './mapping.ts';
import { SETTINGS } from './mapping.ts';
import { formatReading } from './parse-column-rule.ts';

const HEAD = [
  '# How the columns of a sheet become pieces. Change what you like and use it again.',
  '# A column may be: a field (number, title, ruler, date, weight in g …), ledger cost (private), ledger alone',
  '# (private, under its own heading), reference to NAME OF THE BOOK, nothing, or a pattern: "{ruler}, {mint}, {date}".',
  '# A column may be several at once: [title, "{denomination} of {ruler}"]. Every one of them is read from each cell; of patterns',
  '# the first that fits, and a field that is in it only where none fits. A column that is not here goes to the ledger.',
  '# A part that is missing below, like words: or as-above:, is a line of its own at the margin.',
];

/** A file a keeper can edit, with what may be written beside it. `parseMapping` reads it back. */
export function formatMapping(mapping: Mapping): string {
  const settings = Object.entries(mapping.settings).map(([name, answer]) => {
    const others = Object.entries(SETTINGS).find(([known]) => known === name)?.[1] ?? [];
    const either = others.length > 1 ? ` # ${others.join(' or ')}` : '';
    return `  ${name}: ${scalar(answer)}${either}`;
  });
  const always = Object.entries(mapping.always).map(([field, text]) => `  ${field}: ${scalar(text)}`);
  const skip = mapping.skip.map(({ column, is }) => `  - { column: ${inBraces(column)}, is: ${inBraces(is)} }`);
  const calendars = mapping.calendars.map(
    ({ column, is, years }) => `  - { column: ${inBraces(column)}, is: ${inBraces(is)}, years: ${years} }`,
  );
  const words = Object.entries(mapping.words).flatMap(([field, table]) => [
    `  ${scalar(field)}:`,
    ...Object.entries(table).map(([word, meant]) => `    ${scalar(word)}: ${scalar(meant)}`),
  ]);
  const blanks = Object.entries(mapping.blanks).map(([word, meaning]) => `  ${scalar(word)}: ${meaning}`);
  const columns = mapping.columns.map(({ heading, readings }) => {
    const written = readings.map(formatReading);
    const [only = 'ledger'] = written;
    return `  ${scalar(heading)}: ${written.length > 1 ? `[${written.map(inBraces).join(', ')}]` : scalar(only)}`;
  });
  return [
    ...HEAD,
    `language: ${mapping.language}`,
    `title: ${scalar(mapping.title)} # where no column gives one`,
    ...section('read', settings),
    ...section('always', always),
    ...section('words', words),
    ...(mapping.sections === null
      ? []
      : [`sections: ${scalar(mapping.sections)} # what the headings between the rows state`]),
    ...(mapping.asAbove.length === 0
      ? []
      : [`as-above: [${mapping.asAbove.map(inBraces).join(', ')}] # where an empty cell says what the one above says`]),
    ...(mapping.dittos.length === 0
      ? []
      : [`dittos: [${mapping.dittos.map(inBraces).join(', ')}] # where a ditto does, and an empty cell says nothing`]),
    ...section('skip', skip),
    ...section('calendars', calendars),
    ...section('blanks', blanks),
    ...section('columns', columns),
    '',
  ].join('\n');
}

function section(name: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : [`${name}:`, ...lines];
}

const PLAIN = /^[\p{L}\p{N}](?:[\p{L}\p{N}.()/° _-]*[\p{L}\p{N}.()°])?$/u;
/** Words that some readers of YAML take for something else than text. */
const TAKEN = /^(?:true|false|yes|no|on|off|null)$/i;

function scalar(text: string): string {
  if (PLAIN.test(text) && !TAKEN.test(text)) return text;
  // JSON's quotation marks are YAML's too, but for the signs that YAML will not have bare.
  return JSON.stringify(text).replace(
    /[\u007f-\u009f\u2028\u2029\ufeff\ufffe\uffff]|[\ud800-\udfff]/g,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
}

function inBraces(text: string): string {
  return scalar(text);
}
