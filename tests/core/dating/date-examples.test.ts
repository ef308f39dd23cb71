import { describe, expect, test } from 'vitest';
import { formatDate } from '../../../src/core/dating/format-date.ts';
import { DATE_EXAMPLES } from '../../../src/core/dating/date-examples.ts';
import { UNDER_EDWARD_I, readAs } from './read-as.ts';

describe.for(DATE_EXAMPLES)('dates by example: $title', ({ rows }) => {
  test.for(rows)('$write is read as $edtf', ({ write, edtf }) => {
    expect(readAs(write, UNDER_EDWARD_I).edtf).toBe(edtf);
  });

  test.for(rows)('what a visitor sees of $write reads back to the same', ({ write }) => {
    const dating = readAs(write, UNDER_EDWARD_I);
    const { earliest, latest, about, doubtful } = readAs(formatDate(dating), UNDER_EDWARD_I);
    expect({ earliest, latest, about, doubtful }).toEqual({
      earliest: dating.earliest,
      latest: dating.latest,
      about: dating.about,
      doubtful: dating.doubtful,
    });
  });
});

test('"in" before a century is the English word, after a Latin one the beginning of it (saeculo ineunte)', () => {
  expect(readAs('in the ninth century').edtf).toBe('0801/0900');
  expect(readAs('in ninth-century').edtf).toBe('0801/0900');
  expect(readAs('s. IX in').edtf).toBe('0801/0834');
});
