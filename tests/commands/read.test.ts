import { describe, expect, test } from 'vitest';
import { kinds } from '../../src/commands/read/all-kinds.ts';
import { runHere } from './run-here.ts';
import type { Ran } from './run-here.ts';

const run = (...words: readonly string[]): Promise<Ran> => runHere('read', ...words);

/** A number as good as the source gives it, to so many places. */
const near = (value: number, places: number): unknown => expect.closeTo(value, places);
const saying = (words: string): unknown => expect.stringContaining(words);

/** What a kind answers, without starting a process. */
function fields(name: string, words: readonly string[], beside = {}) {
  const outcome = kinds()
    .find((kind) => kind.name === name)
    ?.read(words, beside);
  return outcome?.ok === true ? outcome.value.fields : outcome?.problem;
}

describe('The fields of the JSON contract', () => {
  test.for([
    [
      'date',
      ['AH 1255, year 15'],
      {
        earliest: 1852,
        latest: 1853,
        calendar: 'hijri',
        from: '1852-10-15',
        to: '1853-10-03',
        dayCalendar: 'gregorian',
      },
      'reference README: AH 1269 = 15 Oct 1852 to 3 Oct 1853',
    ],
    [
      'date',
      ['44 BC'],
      { earliest: -43, latest: -43, edtf: '-0043', about: false, doubtful: false },
      'ISO 8601: 44 BC = -0043',
    ],
    ['date', ['MDCCCCX'], { earliest: 1910, latest: 1910 }, 'reference README: MDCCCCX and MCMX both 1910'],
    [
      'grade',
      ['TTB'],
      { low: 40, high: 54, scale: 'fr', problem: null, notGraded: null },
      'French glossary table: TTB 40–54',
    ],
    ['weight', ['1 dwt'], { grams: 24 * 0.06479891, plusMinus: null }, 'international yard and pound agreement 1959'],
    ['length', ['1 in'], { millimetres: 25.4 }, 'international yard and pound agreement 1959'],
    ['length', ['18.2-19.4 mm'], { millimetres: [18.2, 19.4] }, 'as written'],
    ['fineness', ['11 oz 2 dwt'], { low: 0.925, high: 0.925 }, 'sterling, common practice'],
    ['axis', ['6h'], { hours: 6 }, 'as written'],
    ['axis', ['none'], { hours: null }, 'as written'],
    ['legend', ['CIVI TAS EBO RACI'], { normal: 'CIVITASEBORACI' }, 'Jewitt and Head (1886): CIVITAS EBORACI'],
    ['mask', ['RACI*CIV', 'CIVI TAS EBO RACI'], { matches: true, at: 10 }, 'counted by hand'],
    ['mask', ['LON', 'CIVI TAS EBO RACI'], { matches: false, at: null }, 'counted by hand'],
    ['reference', ['cf.', 'north', '176'], { work: 'north', number: '176', relation: 'cf.' }, 'as written'],
    ['reference', ['ric-3 223-5'], { work: 'ric-3', number: '223', to: '225', relation: 'is' }, 'as written'],
    ['rarity', ['american', '5'], { scale: 'american', class: 'R-7' }, 'American 1949: R-7 is 4 to 12'],
    ['rarity', ['RIC', 'I', '1'], { scale: 'ric-1', class: 'R5' }, 'RIC I (1984): R5 is unique'],
    ['money', ['£5.00'], { minor: 500, currency: 'GBP' }, 'ISO 4217'],
  ] as const)('%s %j', ([name, words, expected]) => {
    expect(fields(name, words)).toMatchObject(expected);
  });

  test('metal: a dollar of 412.5 gr, 900/1000, holds 0.7734375 oz t (Act of 18 January 1837)', () => {
    const found = fields('metal', ['412.5 grains', '900/1000']);
    expect(found).toMatchObject({
      fineTroyOunces: { low: near(0.7734375, 9), high: near(0.7734375, 9) },
    });
  });

  test.for([
    '7.98805 g 22 ct',
    '22 ct, 7.98805 g',
    'Wt: 7.98805g; 22ct',
    'AV, 7.98805 g, .9167',
    'Weight 7.98805 g, 22 carat gold',
  ])('metal: a sovereign in one text, %s, holds 0.2354 oz t (Coinage Act 1870, First Schedule)', (text) => {
    const held = near(0.23542, 4);
    expect(fields('metal', [text])).toMatchObject({ fineTroyOunces: { low: held, high: held } });
  });

  test('gravity: 26.922 g in air and 24.283 g in water is 10.20 (published discussion of an eight-reales)', () => {
    expect(fields('gravity', ['26.922 g', '24.283 g', 'silver and copper'])).toMatchObject({
      specificGravity: { low: near(10.2, 1), high: near(10.2, 1) },
      fineness: { low: near(0.834, 2), high: near(0.834, 2) },
    });
  });

  test('dies: 318 coins, 69 dies, 12 single (a published hoard study: coverage 96.2 %, 72 dies)', () => {
    expect(fields('dies', ['318', '69', '12'])).toMatchObject({
      coverage: near(0.962, 3),
      good: near(71.7, 1),
    });
  });
});

describe('The command line', () => {
  test('a sentence for people, and the exit code 0', async () => {
    expect(await run('axis', '6h')).toMatchObject({
      status: 0,
      stdout: '6h: the reverse is turned 180 degrees.\n',
      stderr: '',
    });
  });

  test('JSON for a program, with a year that begins with a hyphen', async () => {
    const { stdout, status } = await run('date', '-0043', '--json');
    expect(JSON.parse(stdout)).toMatchObject({ ok: true, earliest: -43 });
    expect(status).toBe(0);
  });

  test('what cannot be read is ok: false, a problem, and the exit code 1', async () => {
    const { stdout, status } = await run('axis', '13h', '--json');
    expect(JSON.parse(stdout)).toEqual({ ok: false, problem: saying('Write 1h') });
    expect(status).toBe(1);
  });

  test.for([
    [['axis', '13h'], 'Write 1h.'],
    [['weigth', '1 g'], 'Write one of date, grade, weight'],
    [['metal', '1 g'], '"1 g" gives no fineness. Write it after the weight'],
    [['metal', '925 sterling'], '"925 sterling" gives no weight. Write it before the fineness'],
    [['metal', 'approx. 1.4 g 925'], 'Write it like 1.4 g ± 0.1'],
    [['mask', 'A', 'B', 'C'], 'nothing more'],
    [['mask', '**', 'REX'], 'at least one letter'],
    [['dies', '318', 'many', '12'], 'whole numbers'],
    [['dies', '5', '3', '1'], 'too few'],
    [['rarity', 'R5'], 'Write the scale first'],
    [['grade', 'VF', '--scale', 'moon'], 'Write one of numeric'],
    [['axis', '6h', '--loud'], 'Write --help'],
  ] as const)('%j is answered with what to write, and 1', async ([words, says]) => {
    const { stdout, stderr, status } = await run(...words);
    expect({ stdout, status }).toEqual({ stdout: '', status: 1 });
    expect(stderr).toContain(says);
    expect(stderr).not.toMatch(/invalid|unexpected|null|schema|\n\s+at /i);
  });

  test('--help teaches every kind by example, each with the answer it gives', async () => {
    const { stdout, status } = await run('--help');
    expect(status).toBe(0);
    for (const { name } of kinds()) expect(stdout).toMatch(new RegExp(`^  ${name} .+\\n {6}\\S.+`, 'm'));
  });

  test('a date in a king’s reign is read with the rulers of a cabinet: the seventh year of Edward I began on 20 November 1278', async () => {
    const { stdout } = await run('date', 'Edward I, year 7', '--json');
    expect(JSON.parse(stdout)).toMatchObject({ ok: true, from: '1278-11-20', to: '1279-11-19', dayCalendar: 'julian' });
  });
});
