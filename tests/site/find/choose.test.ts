import { describe, expect, test } from 'vitest';
import { wordsOf } from '../../../src/site/find/fold.ts';
import type { FindRecord } from '../../../src/site/find/record.ts';
import { parseState } from '../../../src/site/find/state.ts';
import { findWords } from '../../../src/site/words/find.ts';
import { finderAsSent } from './sent.ts';

type Sketch = Pick<FindRecord, 'id' | 'title' | 'facets'> & {
  readonly says?: string;
  readonly legends?: readonly string[];
  readonly by?: Partial<FindRecord['by']>;
};

const SKETCHES: readonly Sketch[] = [
  { id: 'athelstan', title: 'Penny of Æthelstan, York', says: 'Jorvik Regnald', facets: { mint: ['york'], ruler: ['aethelstan'] }, legends: ['+ÆÐELSTAN REX TO BRIT'], by: { date: 927, weight: 1.5 } },
  { id: 'henry-viii', title: 'Groat of Henry VIII, York', facets: { mint: ['york'], ruler: ['henry-viii'] }, legends: ['CIVITAS EBORACI'], by: { date: 1526, weight: 2.6, grade: 35 } },
  { id: 'henry-iii', title: 'Penny of Henry III, London', says: 'struck while York was shut', facets: { mint: ['london'], ruler: ['henry-iii'] }, legends: ['NICOLE ON LVND'], by: { weight: 1.4, grade: 20 } },
  { id: 'ingot', title: 'Silver ingot', facets: {}, by: { weight: 26.3 } },
]; // prettier-ignore

const RECORDS: readonly FindRecord[] = SKETCHES.map(({ says = '', legends = [], by = {}, ...rest }) => ({
  to: `/pieces/${rest.id}/`,
  number: rest.id,
  line: '1279, 1.4 g',
  grade: null,
  note: null,
  room: 'usual',
  face: { wide: 'mm-180', tall: 'tall-180', look: 'disc round silver' },
  words: { title: wordsOf(rest.title), story: wordsOf(says).filter((word) => !wordsOf(rest.title).includes(word)) },
  years: null,
  legends,
  by: { date: null, weight: null, size: null, grade: null, ...by },
  ...rest,
}));

const find = finderAsSent(RECORDS);
const found = (query: string): readonly string[] =>
  find(parseState(query))
    .first(RECORDS.length)
    .map(({ record }) => record.id);

describe('pieces are found by word', () => {
  test.for([
    { asked: 'aethelstan', ids: ['athelstan'], why: 'Æ is typed as ae' },
    { asked: 'ÆTHELSTAN', ids: ['athelstan'], why: 'or as it is' },
    { asked: 'jorv', ids: ['athelstan'], why: 'the beginning of a word is enough' },
    { asked: 'athelstn', ids: ['athelstan'], why: 'letters may be lost' },
    {
      asked: 'henry york',
      ids: ['henry-viii', 'henry-iii'],
      why: 'every word must be answered; the title counts for more',
    },
    { asked: 'plugh', ids: [], why: 'what is like nothing finds nothing' },
  ])('$asked: $why', ({ asked, ids }) => {
    expect(found(`?words=${encodeURIComponent(asked)}`)).toEqual(ids);
  });
});

describe('pieces are found by a worn legend', () => {
  test('begun anywhere round the rim, with the legend that answered', () => {
    const { first } = find(parseState('?legend=RACICIV'));
    expect(first(9).map(({ record, legend }) => [record.id, legend])).toEqual([['henry-viii', 'CIVITAS EBORACI']]);
  });

  test('together with words', () => {
    expect(found('?legend=ON*LV&words=henry')).toEqual(['henry-iii']);
    expect(found('?legend=ON*LV&words=ingot')).toEqual([]);
  });
});

describe('facets', () => {
  test('values of one widen, two narrow', () => {
    expect(found('?mint=york&mint=london')).toEqual(['athelstan', 'henry-viii', 'henry-iii']);
    expect(found('?mint=york&ruler=henry-iii')).toEqual([]);
  });

  test('each value says how many it would leave, whatever is chosen of its own facet', () => {
    const { counts } = find(parseState('?mint=york'));
    expect(Object.fromEntries(counts.mint)).toEqual({ york: 2, london: 1 });
    expect(counts.ruler.get('henry-iii')).toBeUndefined();
  });
});

describe('order', () => {
  test.for([
    { sort: 'number', ids: ['athelstan', 'henry-viii', 'henry-iii', 'ingot'] },
    { sort: 'date', ids: ['athelstan', 'henry-viii', 'henry-iii', 'ingot'] },
    { sort: 'weight', ids: ['ingot', 'henry-viii', 'athelstan', 'henry-iii'] },
    { sort: 'grade', ids: ['henry-viii', 'henry-iii', 'athelstan', 'ingot'] },
    { sort: 'title', ids: ['henry-viii', 'athelstan', 'henry-iii', 'ingot'] },
  ])('by $sort; what is not recorded comes last', ({ sort, ids }) => {
    expect(found(`?sort=${sort}`)).toEqual(ids);
  });
});

test('a word as it is comes before a longer one that begins with it, wherever either stands', () => {
  const base = RECORDS[0] ?? expect.fail('no record');
  const record = (id: string, title: string, says: string): FindRecord => ({
    ...base,
    id,
    to: `/pieces/${id}/`,
    title,
    words: { title: wordsOf(title), story: wordsOf(says) },
  });
  const records = [record('weight', 'Pennyweight', 'york'), record('groat', 'Groat of York', 'worth four of a penny')];
  const { first } = finderAsSent(records)(parseState('?words=york+penny'));
  expect(first(9).map((one) => one.record.id)).toEqual(['groat', 'weight']);
});

test.for([
  ['number', '1279, 1.4 g, a1'],
  ['size', '1279, 1.4 g, 18.6 mm, a1'],
  ['grade', '1279, 1.4 g, VF, a1'],
  ['date', '1279, 1.4 g, a1'],
  [null, '1279, 1.4 g, a1'],
] as const)('in the order of %s there is to be read what it goes by', ([sort, says]) => {
  const by = { date: 1279, weight: 1.4, size: 18.62, grade: 30 };
  expect(findWords.inOrder({ number: 'a1', line: '1279, 1.4 g', grade: 'VF', by }, sort)).toBe(says);
});
