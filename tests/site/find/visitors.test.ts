import { describe, expect, test } from 'vitest';
import { NO_ADDRESSES } from '../../../src/catalogue/addresses.ts';
import { handOver } from '../../../src/catalogue/handed-over.ts';
import { readFolder } from '../../../src/catalogue/files.ts';
import { readCabinet } from '../../../src/catalogue/read-cabinet.ts';
import { parseState } from '../../../src/site/find/state.ts';
import { findRecords } from '../../../src/site/models/find/record-of.ts';
import { wholeCabinet } from '../whole-cabinet.ts';
import { FIGURES_ASKED, WORDS_ASKED } from './visitors-queries.ts';
import { finderAsSent } from './sent.ts';

const folder = (await readFolder('content')) ?? { at: 'content', files: [] };
handOver({ records: readCabinet(folder).records, photographs: '', hasAddress: true, addresses: NO_ADDRESSES });
const records = await findRecords(await wholeCabinet('content'));
const find = finderAsSent(records);

type Asked = { readonly asked: string; readonly right: readonly string[] };

const rowsOf = (table: string): readonly Asked[] =>
  table
    .trim()
    .split('\n')
    .map((line) => {
      const [asked = '', right = ''] = line.split(/: (?=[a-z])/);
      return { asked, right: right.split(' | ') };
    });

function firstOf(words: string): readonly string[] {
  const { first } = find(parseState(`?words=${encodeURIComponent(words)}`));
  return first(3).map(({ record }) => record.id);
}

/** Those of which none of the right ones is among the first so many. */
const missed = (rows: readonly Asked[], first: number): readonly string[] =>
  rows.flatMap(({ asked, right }) => {
    const came = firstOf(asked);
    return came.slice(0, first).some((id) => right.includes(id)) ? [] : [`${asked} → ${came.join(', ')}`];
  });

/** A slip of the finger in the longest word: two letters in the wrong order, one left out, one doubled, or one struck beside it. */
function slipped({ asked, right }: Asked, at: number): readonly Asked[] {
  const longest = asked.split(' ').toSorted((a, b) => b.length - a.length)[0] ?? '';
  if (longest.length < 5 || !/^[a-z]+$/.test(longest)) return [];
  const where = 1 + (at % (longest.length - 2));
  const letters = longest.split('');
  const here = letters[where] ?? '';
  const slips = [
    [...letters.slice(0, where), letters[where + 1] ?? '', here, ...letters.slice(where + 2)],
    [...letters.slice(0, where), ...letters.slice(where + 1)],
    [...letters.slice(0, where), here, ...letters.slice(where)],
    [...letters.slice(0, where), here === 'e' ? 'r' : 'e', ...letters.slice(where + 1)],
  ];
  const wrong = slips[at % slips.length]?.join('') ?? longest;
  return wrong === longest ? [] : [{ asked: asked.replace(longest, wrong), right }];
}

describe('what visitors type, written down before the search was tried', () => {
  const words = rowsOf(WORDS_ASKED);
  const figures = rowsOf(FIGURES_ASKED);

  test(`of ${words.length} queries the first result is right in 95 %, one of the first three in 99 %`, () => {
    expect(words.length).toBeGreaterThan(199);
    expect(missed(words, 3).length, missed(words, 3).join('\n')).toBeLessThanOrEqual(words.length * 0.01);
    expect(missed(words, 1).length, missed(words, 1).join('\n')).toBeLessThanOrEqual(words.length * 0.05);
  });

  test('with a slip of the finger, one of the first three is right in 90 %', () => {
    const wrong = words.flatMap(slipped);
    expect(wrong.length).toBeGreaterThan(100);
    expect(missed(wrong, 3).length, `${wrong.length}: ${missed(wrong, 3).join('\n')}`).toBeLessThanOrEqual(
      wrong.length * 0.1,
    );
  });

  test('dates, weights, sizes and references are all right', () => {
    expect(figures.length).toBeGreaterThan(59);
    expect(missed(figures, 1)).toEqual([]);
  });
});
