import { describe, expect, test } from 'vitest';
import { formatDate } from '../../../src/core/dating/format-date.ts';
import { DATE_WORDINGS } from '../../published/date-wordings.ts';
import { readAs, readStrictly } from './read-as.ts';

describe('dates in the words of lists, labels and coins', () => {
  test.for(DATE_WORDINGS)('$write is $earliest to $latest $marks ($source)', ({ write, earliest, latest, marks }) => {
    const about = marks.includes('about');
    const doubtful = marks.includes('doubtful');
    const dating = readAs(write);
    expect(dating).toMatchObject({ earliest, latest, about, doubtful });
    expect(readAs(formatDate(dating))).toMatchObject({ earliest, latest, about, doubtful });
    expect(readStrictly(dating.edtf)).toMatchObject({ earliest, latest, about, doubtful });
  });
});
