import { expect, test } from 'vitest';
import type { Bound } from '../../../src/core/dating/dating.ts';
import { parseDate } from '../../../src/core/dating/parse-date.ts';
import { CATALOGUE_DATES, FIELD_RECORDS, LIBRARY_DATES } from '../../published/outside-dates.ts';

const written = (bound: Bound): string => (bound === null ? '?' : bound === 'open' ? '..' : String(bound));

test.for([...FIELD_RECORDS, ...LIBRARY_DATES, ...CATALOGUE_DATES])(
  '$write is $allowed and nothing else ($source)',
  ({ write, allowed }) => {
    const outcome = parseDate(write);
    const read = outcome.ok ? `${written(outcome.value.earliest)}/${written(outcome.value.latest)}` : 'asks';
    expect(allowed).toContain(read);
  },
);
