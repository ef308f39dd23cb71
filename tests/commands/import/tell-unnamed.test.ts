import { expect, test } from 'vitest';
import { tellUnnamed } from '../../../src/commands/import/tell-unnamed.ts';
import { EMPTY_MAPPING } from '../../../src/import/columns/mapping.ts';
import { sheetOf } from '../../import/columns/sheet-of.ts';

test.for(['Mintage', 'Auflage (Stück)', 'Tirage', 'Prägezahl'])(
  'a column %s is told to hold what a piece has no field for',
  (heading) => {
    const sheet = sheetOf([heading, 'Wibble'], [['1.200', '12'], ['12 Mio.', '13']]); // prettier-ignore
    const mapping = {
      ...EMPTY_MAPPING,
      columns: [heading, 'Wibble'].map((one) => ({ heading: one, readings: [{ kind: 'ledger' as const }] })),
    };
    const told = tellUnnamed(sheet, mapping).split('\n');
    expect(told.filter((line) => line.includes('how many were struck')).map((line) => line.trim().split(',')[0])).toEqual([heading]); // prettier-ignore
  },
);
