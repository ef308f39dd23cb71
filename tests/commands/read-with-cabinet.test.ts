import { describe, expect, test } from 'vitest';
import { consult } from '../../src/commands/read/consulted.ts';
import { runHere } from './run-here.ts';
import { kinds } from '../../src/commands/read/all-kinds.ts';

const MARKED = 'tests/cabinets/marked';

/** What `read` answers with a cabinet at hand, without starting a process. */
async function informed(name: string, text: string, cabinet = 'content') {
  const consulted = await consult(cabinet);
  const outcome = kinds(consulted ?? undefined)
    .find((kind) => kind.name === name)
    ?.read([text], {});
  return outcome?.ok === true ? outcome.value : (outcome?.problem ?? '');
}

describe('References, with the works of the cabinet', () => {
  test.for([
    ['North 1018', { work: 'north', number: '1018', relation: 'is' }, 'English Hammered Coinage'],
    ['cf. withers 23a', { work: 'withers', number: '23a', relation: 'cf.' }, 'The Pennies of Edward I and II'],
    ['north 1018-20', { work: 'north', number: '1018', to: '1020', relation: 'is' }, 'English Hammered Coinage'],
  ] as const)('%s is found by key or by short name, and the work named', async ([text, fields, title]) => {
    expect(await informed('reference', text)).toMatchObject({
      fields,
      sentence: expect.stringContaining(title) as unknown,
    });
  });

  test('a work without a file is read all the same, by its first word, and said to have no file', async () => {
    expect(await informed('reference', 'elsewhere 12')).toMatchObject({
      fields: { work: 'elsewhere', number: '12' },
      sentence: expect.stringContaining('which has no file here') as unknown,
    });
  });

  test('what names no work is refused with works to write', async () => {
    expect(await informed('reference', '12', MARKED)).toBe(
      '"12" begins with no work in the list. Write one of plain-book, then the number.',
    );
  });
});

test('a cabinet that is not there is said to be missing, not passed over', async () => {
  const words = ['reference', 'north 1018', '--cabinet', 'no-such-folder'];
  const { stderr, status } = await runHere('read', ...words);
  expect(stderr).toBe('There is no cabinet in no-such-folder. Write the folder that holds cabinet.yaml.\n');
  expect(status).toBe(1);
});

/** One text a kind refuses for each reason a keeper is likely to give it. */
const REFUSED: Readonly<Record<string, readonly (readonly string[])[]>> = {
  date: [['the other day'], [''], ['44'], ['-44'], ['0 BC'], ['1281-1279'], ['1279, 1280'], ['1780 (restruck 1953)'], ['199u']],
  grade: [['lovely'], [''], ['MS-71'], ['VF/EF/F']],
  weight: [['heavy'], [''], ['1 oz'], ['1.38'], ['1,234 g'], ['-3 g']],
  length: [['wide'], [''], ['18.6'], ['0 mm']],
  fineness: [['pure'], [''], ['1001'], ['25 ct'], ['0 %']],
  metal: [['heavy', '900/1000'], ['1 g', 'pure']],
  gravity: [['1 g', '2 g'], ['heavy', '1 g'], ['2 g', '1 g', 'cheese']],
  axis: [['13h'], ['0h'], ['200°'], ['up']],
  legend: [[''], ['ANGLO[RX']],
  mask: [['**', 'REX'], ['A', '']],
  reference: [[''], ['12'], ['north']],
  concord: [['north 1017']],
  rarity: [['R5'], ['american', '0'], ['american', 'R-99'], ['moon', '3']],
  dies: [['318', 'many', '12'], ['5', '3', '1'], ['10', '20', '1']],
  money: [['5.00'], [''], ['£5.001'], ['lots']],
}; // prettier-ignore

test('every kind has its refusals here', () => {
  expect(Object.keys(REFUSED)).toEqual(kinds().map(({ name }) => name));
});

test.for(Object.entries(REFUSED).flatMap(([name, all]) => all.map((words) => [name, words] as const)))(
  '%s %j is refused with what to do instead',
  ([name, words]) => {
    const outcome = kinds()
      .find((kind) => kind.name === name)
      ?.read(words, {});
    if (outcome?.ok !== false) return expect.fail(`${name} ${words.join(' ')} was read`);
    expect(outcome.problem).toMatch(/\b(?:write|leave|weigh|put|bring together|read the coin)\b/i);
    expect(outcome.problem).toMatch(/^\S.*\.$/);
    expect(outcome.problem).not.toMatch(/invalid|unexpected|null|undefined|schema|NaN/i);
  },
);
