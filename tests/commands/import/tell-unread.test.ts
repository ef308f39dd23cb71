import { describe, expect, test } from 'vitest';
import type { UnreadCell } from '../../../src/import/plan/draft.ts';
import { tellUnread, unreadGroups } from '../../../src/commands/import/tell-plan.ts';

const cell = (row: number, heading: string, text: string, because: string): UnreadCell => ({
  row,
  heading,
  text,
  because,
  field: 'date',
});
const bare = (row: number, year: string): UnreadCell =>
  cell(row, 'Year', year, `A bare ${year} could be counted from any era; write AD ${year}.`);

describe('cells that could not be read', () => {
  const unread = [
    cell(2, 'Year', 'late reign', '"late reign" is not a date that can be read here.'),
    cell(3, 'Weight', 'heavy', '"heavy" is not a weight.'),
    cell(4, 'Weight', 'light', '"light" is not a weight.'),
    ...['103-111', '276', '307', '150'].map((year, at) => bare(10 + at, year)),
    cell(20, 'Diam', 'heavy', '"heavy" is not a weight.'),
  ];

  test('are told by column and reason, those of most rows first, with three examples', () => {
    expect(tellUnread(unread, 'unread.csv').split('\n')).toEqual([
      'Cells that could not be read; each is kept word for word, under as-written in its piece or in the ledger (8):',
      '  Year, 4 cells: row 10 "103-111", row 11 "276", row 12 "307" and 1 more',
      '    A bare 103-111 could be counted from any era; write AD 103-111.',
      '  Weight, 2 cells: row 3 "heavy", row 4 "light"',
      '    "heavy" is not a weight.',
      '  row 2, Year: "late reign". "late reign" is not a date that can be read here.',
      '  row 20, Diam: "heavy". "heavy" is not a weight.',
      'All of them: unread.csv',
    ]);
  });

  test('are all in a group, and in one alone', () => {
    expect(unreadGroups(unread).flatMap(({ cells }) => cells)).toHaveLength(unread.length);
    expect(new Set(unreadGroups(unread).flatMap(({ cells }) => cells)).size).toBe(unread.length);
  });

  test('that are all shown need no list, and none are nothing', () => {
    expect(tellUnread(unread.slice(0, 2), 'unread.csv')).not.toContain('All of them');
    expect(tellUnread([], 'unread.csv')).toBe('');
  });
});
