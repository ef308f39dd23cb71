import { expect, test } from 'vitest';
import { inspectedWith } from '../../../src/commands/parts/inspected-with.ts';

test('a site that was held against no ledger is not said to be without its secrets', () => {
  expect(inspectedWith('tests/cabinets/marked')).toBe('every byte inspected, nothing private in it');
  expect(inspectedWith('tests/cabinets')).toBe(
    'every byte inspected, but there is no private/ledger.csv to hold it against',
  );
});
