import { expect, test } from 'vitest';
import { formatNames, parseNames } from '../../../src/import/names/names-file.ts';

test('Every spelling of one name that is there is put on its line at once, behind what the keeper has written', () => {
  const asked = ['Edw. I', 'Edward the First'].map(
    (spelled) =>
      ({
        kind: 'rulers',
        id: 'edward-i',
        isKnown: true,
        isParted: false,
        spelled: [spelled],
        uses: 1,
        like: [],
      }) as const,
  );
  const fresh = parseNames(formatNames(null, asked) ?? '');
  expect(fresh.ok && fresh.value.rulers).toEqual({ 'edward-i': ['Edw. I', 'Edward the First'] });
  const more = parseNames(formatNames('rulers:\n  edward-i: [Edward 1st]\n', asked) ?? '');
  expect(more.ok && more.value.rulers).toEqual({ 'edward-i': ['Edward 1st', 'Edw. I', 'Edward the First'] });
});
