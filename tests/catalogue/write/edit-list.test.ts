import { describe, expect, test } from 'vitest';
import { editFields } from '../../../src/catalogue/write/edit-fields.ts';
import { editList } from '../../../src/catalogue/write/edit-list.ts';

const EXHIBIT = `---
title: Two cases   # as entered
cases:
  # the first case
  - inside: 300 x 200 mm
    groups:
      - title: One
        text: >-
          A text that is folded
          over two lines.
        pieces:
          - piece: a # lies first
            side: reverse
          - b
          # loved by all
          - c
  - inside: 200 x 100 mm
    groups:
    - title: Two
      pieces: [d, e]
    - title: Three
      pieces:
      - f
---

The statement.
`;
const FIRST = ['cases', '0', 'groups', '0', 'pieces'];
const FLOW = ['cases', '1', 'groups', '0', 'pieces'];
const LAST = ['cases', '1', 'groups', '1', 'pieces'];

/** The text after a change, or its refusal. */
function after(change: Parameters<typeof editList>[1], text = EXHIBIT): string {
  const done = editList(text, change);
  return done.ok ? done.value : done.problem;
}

describe('an entry of a list', () => {
  test('is moved within its list with its own lines and comments, and no other byte changes', () => {
    const lines = '          - piece: a # lies first\n            side: reverse\n';
    const without = EXHIBIT.replace(lines, '');
    expect(after({ does: 'move', list: FIRST, at: 0, to: FIRST, before: 3 })).toBe(
      without.replace('          - c\n', `          - c\n${lines}`),
    );
    expect(after({ does: 'move', list: FIRST, at: 1, to: FIRST, before: 0 })).toBe(
      EXHIBIT.replace('          - b\n', '').replace(lines, `          - b\n${lines}`),
    );
  });

  test('is moved to another list, indented as that one is', () => {
    const moved = after({ does: 'move', list: FIRST, at: 0, to: LAST, before: 1 });
    expect(moved).toContain('      - f\n      - piece: a # lies first\n        side: reverse\n---\n');
    expect(moved).toContain('          - b\n          # loved by all\n          - c\n');
  });

  test('is moved into a list in brackets, which is written anew', () => {
    expect(after({ does: 'move', list: FIRST, at: 1, to: FLOW, before: 1 })).toContain('pieces: [d, b, e]');
  });

  test('is put in and taken out, and taking it out again leaves every byte', () => {
    const put = after({ does: 'insert', list: FIRST, at: 1, value: 'x' });
    expect(put).toBe(EXHIBIT.replace('          - b\n', '          - x\n          - b\n'));
    expect(after({ does: 'remove', list: FIRST, at: 1 }, put)).toBe(EXHIBIT);
    const group = { title: 'Four', pieces: ['g'] };
    const more = after({ does: 'insert', list: ['cases', '0', 'groups'], at: 1, value: group });
    expect(more).toContain('          - c\n      - title: Four\n        pieces: [g]\n  - inside: 200');
    expect(after({ does: 'remove', list: ['cases', '0', 'groups'], at: 1 }, more)).toBe(EXHIBIT);
  });

  test('is found in files that end their lines otherwise', () => {
    const windows = EXHIBIT.replaceAll('\n', '\r\n');
    const moved = after({ does: 'move', list: FIRST, at: 0, to: LAST, before: 0 }, windows);
    expect(moved.replaceAll('\r\n', '')).not.toContain('\n');
    expect(moved).toContain('      - piece: a # lies first\r\n        side: reverse\r\n      - f\r\n');
  });

  test('that is not there is refused', () => {
    expect(after({ does: 'remove', list: FIRST, at: 9 })).toMatch(/no such entry/);
    expect(after({ does: 'insert', list: ['cases', '7', 'groups'], at: 0, value: 'x' })).toMatch(/no such entry/);
  });
});

describe('a field of an entry', () => {
  const edit = (path: readonly string[], value: string | null): string => {
    const done = editFields(EXHIBIT, [{ path, value }], []);
    return done.ok ? done.value : done.problem;
  };
  test.for([
    [['cases', '0', 'groups', '0', 'title'], 'Another', 'title: One\n', 'title: Another\n'],
    [['cases', '0', 'title'], 'Case one', '          - c\n', '          - c\n    title: Case one\n'],
    [[...FIRST, '0', 'side'], null, '            side: reverse\n', ''],
    [[...FIRST, '1'], 'bb', '- b\n', '- bb\n'],
    [[...FLOW, '0'], 'dd', '[d, e]', '[dd, e]'],
  ] as const)('%s changes in its own line', ([path, value, was, is]) => {
    expect(edit(path, value)).toBe(EXHIBIT.replace(was, is));
  });
});
