import { describe, expect, test } from 'vitest';
import type { ConcordanceRow, TypeRelation } from '../../../src/core/types/concordance.ts';
import { concord, concordanceOf, joined } from '../../../src/core/types/concordance.ts';

function row(
  type: string,
  relation: TypeRelation,
  cited: string,
  sure: ConcordanceRow['sure'] = 'certain',
): ConcordanceRow {
  const [work = '', ...number] = cited.split(' ');
  return { type, relation, work, number: number.join(' '), sure };
}

const asked = (cited: string) => row('', 'equal', cited);

/** What is true of any three classes A (the first number), T (the type) and B (the second), as sets: SKOS and the TDWG taxon concept schema. */
describe('What follows of two relations is what follows of sets', () => {
  const subsets = Array.from({ length: 15 }, (_, at) => at + 1);
  const relationOf = (book: number, type: number): TypeRelation | null => {
    if (book === type) return 'equal';
    if ((book & type) === type) return 'broader';
    if ((book & type) === book) return 'narrower';
    return (book & type) === 0 ? null : 'overlaps';
  };
  const relations: readonly TypeRelation[] = ['equal', 'broader', 'narrower', 'overlaps'];
  test.for(relations.flatMap((first) => relations.map((second) => [first, second] as const)))(
    '%s and %s',
    ([first, second]) => {
      const seen = new Set<TypeRelation | null>();
      for (const type of subsets)
        for (const a of subsets)
          for (const b of subsets)
            if (relationOf(a, type) === first && relationOf(b, type) === second) seen.add(relationOf(b, a));
      // One relation in every case is a conclusion; several are none.
      expect(joined(first, second)).toBe(seen.size === 1 ? [...seen][0] : null);
    },
  );

  test('close never leads on, even to what is close again', () => {
    expect(joined('close', 'close')).toBeNull();
    expect(joined('close', 'broader')).toBeNull();
    expect(joined('equal', 'close')).toBe('close');
  });
});

const books = concordanceOf([
  row('pence/3a', 'equal', 'north 1016'),
  row('pence/3b', 'equal', 'north 1017'),
  row('pence/3b', 'broader', 'spink 1387'),
  row('pence/3b', 'close', 'fox III b'),
  row('pence/3c', 'equal', 'north 1018', 'probable'),
  row('pence/3c', 'broader', 'spink 1387'),
  row('york/7', 'equal', 'north 1017'),
  row('york/7', 'equal', 'stewart 12'),
  row('york/8', 'close', 'stewart 12'),
  row('york/8', 'equal', 'brooke 4'),
]);

describe('A number finds its types', () => {
  test('with their numbers elsewhere, and types of other series that are equals of it', () => {
    const found = concord(asked('North 1017'), books);
    expect(found.map(({ type, relation }) => [type, relation])).toEqual([
      ['pence/3b', 'equal'],
      ['york/7', 'equal'],
    ]);
    expect(found[0]?.numbers.map(({ row: { work, number }, relation }) => [work, number, relation])).toEqual([
      ['spink', '1387', 'broader'],
      ['fox', 'III b', 'close'],
    ]);
  });

  test('but never goes on through what is only close', () => {
    const types = concord(asked('brooke 4'), books).map(({ type }) => type);
    expect(types).toEqual(['york/8']);
    expect(concord(asked('fox III b'), books).map(({ type }) => type)).toEqual(['pence/3b', 'york/7']);
    expect(concord(asked('fox III b'), books)[0]?.numbers.map(({ relation }) => relation)).toEqual(['close', null]);
  });

  test('through one that covers several types to all of them, each being narrower', () => {
    const found = concord(asked('spink 1387'), books);
    expect(found.map(({ type }) => type)).toEqual(['pence/3b', 'pence/3c', 'york/7']);
    expect(found[0]?.numbers.find(({ row: { work } }) => work === 'north')?.relation).toBe('narrower');
    expect(found[1]?.numbers[0]?.sure).toBe('probable');
  });

  test('also as one of a run of numbers that a type covers together', () => {
    const runs = concordanceOf([
      { ...row('pence/10', 'equal', 'north 1038'), to: '1043' },
      row('pence/10', 'equal', 'fox X'),
    ]);
    const [found] = concord(asked('north 1040'), runs);
    expect([found?.type, found?.relation]).toEqual(['pence/10', 'narrower']);
    expect(found?.numbers.map(({ row: { work }, relation }) => [work, relation])).toEqual([
      ['north', 'broader'],
      ['fox', 'broader'],
    ]);
    expect(concord(asked('north 1044'), runs)).toEqual([]);
  });

  test('and nothing where nobody has it', () => {
    expect(concord(asked('north 9999'), books)).toEqual([]);
  });
});

// A type has one number in a book that numbers types: of two that are both called its equal, one is wrong.
test('nothing is concluded from one of two numbers of a book that a type claims as its own', () => {
  const all = concordanceOf([row('one/a', 'equal', 'book 31'), row('one/a', 'equal', 'book 32'), row('two/a', 'equal', 'book 32')]);
  const found = concord(asked('book 31'), all);
  expect(found.map(({ type, disputed, numbers }) => [type, disputed, numbers.map(({ relation }) => relation)])).toEqual([['one/a', true, [null]]]);
}); // prettier-ignore

test('one number of a type in lines that are not equally sure is told', () => {
  const all = concordanceOf([row('one/a', 'equal', 'book 31'), { ...row('one/a', 'equal', 'book 31'), sure: 'probable' }]);
  expect(all.disagreements.map(({ why, rows }) => [why, rows])).toEqual([['two-certainties', [0, 1]]]);
}); // prettier-ignore

test('a number that several types of a series claim as their equal is told, and nothing is concluded through it', () => {
  // Open type corpora hold thousands of rows, and among them numbers claimed twice.
  const rows = Array.from({ length: 4000 }, (_, at) => row(`long/${String(at)}`, 'equal', `book ${String(at)}`));
  rows[1500] = row('long/1500', 'equal', 'book 1499');
  rows.push(
    row('other/1', 'equal', 'book 1499'),
    row('other/1', 'equal', 'paper 1'),
    row('long/7', 'narrower', 'book 7'),
  );
  rows.push(row('long/8', 'equal', 'book 9000'));
  const all = concordanceOf(rows);
  expect(all.disagreements.map(({ why, number, types }) => [why, number, types])).toEqual([
    ['two-relations', '7', ['long/7']],
    ['several-types', '1499', ['long/1499', 'long/1500']],
    ['several-numbers', '8', ['long/8']],
  ]);
  const found = concord(asked('book 1499'), all);
  expect(found.map(({ type, disputed }) => [type, disputed])).toEqual([
    ['long/1499', true],
    ['long/1500', true],
    ['other/1', true],
  ]);
  expect(found[2]?.numbers.map(({ relation }) => relation)).toEqual([null]);
  expect(concord(asked('paper 1'), all).map(({ type }) => type)).toEqual(['other/1']);
});

describe('A number whose letter is of another size', () => {
  const both = concordanceOf([
    row('a/1', 'equal', 'ric 8a'),
    row('a/2', 'equal', 'ric 8A'),
    row('a/3', 'equal', 'ric 9a'),
  ]);
  const found = (number: string, letters?: 'apart' | 'alike') =>
    concord({ work: 'ric', number, letters }, both).map(({ type, sure }) => [type, sure]);

  test('is itself where the book has both, and nobody says that they contradict each other', () => {
    expect(found('8a')).toEqual([['a/1', 'certain']]);
    expect(found('8A')).toEqual([['a/2', 'certain']]);
    expect(both.disagreements).toEqual([]);
  });

  test('is only possible where the book has one of them, unless its file says what it means', () => {
    expect(found('9A')).toEqual([['a/3', 'possible']]);
    expect(found('9A', 'alike')).toEqual([['a/3', 'certain']]);
    expect(found('9A', 'apart')).toEqual([]);
  });
});
