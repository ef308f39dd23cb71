import fc from 'fast-check';
import { expect, test } from 'vitest';
import { formatMapping } from '../../../src/import/columns/format-mapping.ts';
import type { Mapping, Reading } from '../../../src/import/columns/mapping.ts';
import { CALENDARS, EMPTY_MAPPING, LANGUAGES, MEANINGS, SETTINGS } from '../../../src/import/columns/mapping.ts';
import { parseMapping } from '../../../src/import/columns/parse-mapping.ts';
import { LEDGER_NAMES } from '../../../src/catalogue/fields/ledger-columns.ts';
import { FIELDS } from '../../../src/import/columns/targets.ts';
import { tries } from '../../tries.ts';

const word = fc
  .string({ unit: 'grapheme', minLength: 1, maxLength: 12 })
  .filter((text) => text.trim() !== '' && text !== '__proto__' && !/^\d+$/.test(text));
const reading: fc.Arbitrary<Reading> = fc.oneof(
  fc.constantFrom(...FIELDS).map((field) => ({ kind: 'field', field }) as const),
  fc.constantFrom<Reading>({ kind: 'field', field: 'weight', unit: 'oz t' }, { kind: 'field', field: 'axis', unit: '°' }, { kind: 'nothing' }, { kind: 'ledger' }),
  fc.constantFrom(...LEDGER_NAMES).map((column) => ({ kind: 'ledger', column }) as const),
  fc.constantFrom('GBP', 'EUR').map((currency) => ({ kind: 'ledger', column: 'cost', currency }) as const),
  fc.constantFrom('North', 'RIC II', 'Withers: Vol. 1').map((work) => ({ kind: 'reference', work }) as const),
  word.filter((text) => !/[{}]/.test(text)).map((text) => ({ kind: 'pattern', pattern: `{denomination}${text}{ruler}` }) as const),
); // prettier-ignore
const mapping: fc.Arbitrary<Mapping> = fc.record({
  language: fc.constantFrom(...LANGUAGES),
  title: fc.constantFrom(EMPTY_MAPPING.title, '{ruler}: {denomination}'),
  settings: fc.record(
    { decimal: fc.constantFrom(...SETTINGS.decimal), short: fc.constantFrom(...SETTINGS.short), days: fc.constantFrom(...SETTINGS.days), gr: fc.constantFrom(...SETTINGS.gr), currency: fc.constantFrom('GBP', 'JPY') },
    { requiredKeys: [] },
  ),
  always: fc.dictionary(fc.constantFrom(...FIELDS), word),
  skip: fc.array(fc.record({ column: word, is: fc.string() }), { maxLength: 2 }),
  calendars: fc.array(fc.record({ column: word, is: fc.string(), years: fc.constantFrom(...CALENDARS) }), { maxLength: 2 }),
  words: fc.dictionary(fc.constantFrom('kind', 'metal'), fc.dictionary(word, word, { minKeys: 1, maxKeys: 3 }), { maxKeys: 2 }),
  sections: fc.constantFrom(null, 'kind', 'ruler'),
  asAbove: fc.uniqueArray(word, { maxLength: 2 }),
  dittos: fc.uniqueArray(word, { maxLength: 2 }),
  blanks: fc.dictionary(word, fc.constantFrom(...MEANINGS), { maxKeys: 3 }),
  columns: fc.uniqueArray(fc.record({ heading: word, readings: fc.array(reading, { minLength: 1, maxLength: 3 }) }), { selector: ({ heading }) => heading, maxLength: 6 }),
}); // prettier-ignore

test('a mapping goes to its file and back', () => {
  fc.assert(
    fc.property(mapping, (one) => {
      expect(parseMapping(formatMapping(one))).toEqual({ ok: true, value: { ...one, always: { ...one.always }, blanks: { ...one.blanks } } });
    }),
    { numRuns: tries(300) },
  );
}); // prettier-ignore

test('every slip of a mapping is told in one run, with its line and what to write', () => {
  const read = parseMapping('columns:\n  A: wieght\n  B: ledger price\n  C: weight in stone\n  D: "{ruler"\nread: { decimal: dot }\nfoo: 1\n');
  expect(read.ok).toBe(false);
  const lines = read.ok ? [] : read.problem.split('\n');
  expect(lines.map((line) => /^line (\d+) · ([\w.]+)/.exec(line)?.slice(1))).toEqual([
    ['2', 'columns.A'], ['3', 'columns.B'], ['4', 'columns.C'], ['5', 'columns.D'], ['6', 'read.decimal'], ['7', 'foo'],
  ]);
  expect(lines[0]).toContain('Write weight.');
}); // prettier-ignore
