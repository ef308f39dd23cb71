import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { checkCabinet } from '../../src/catalogue/check-cabinet.ts';
import { PRIVACY } from '../../src/privacy/privacy.ts';
import { runHere } from './run-here.ts';

const made: string[] = [];
afterAll(() => made.forEach((folder) => rmSync(folder, { recursive: true })));

/** A copy of the cabinet with prices, so that a plan may be written into it. */
function cabinet(): string {
  const folder = mkdtempSync(join(tmpdir(), 'plan-'));
  made.push(folder);
  cpSync('tests/cabinets/buying/content', folder, { recursive: true });
  return folder;
}

async function plan(at: string, ...words: string[]) {
  const run = await runHere('plan', '--cabinet', at, ...words);
  const file = join(at, 'private', 'plan.md');
  return { ...run, written: existsSync(file) ? readFileSync(file, 'utf8') : null };
}

const MINTS = ['--set', 'mints', '--budget', '120 GBP', '--purchases', '2', '--years', '2'];

/*
 * Worked by hand. Four places can be had: York in 30 for at most 60, Durham for 45, Bristol for 30, and a better London for 80. Of
 * two purchases a year within 120, York with Durham (105) and Bristol with London (110) take all four; every other pairing puts
 * London with York (140) or with Durham (125). York in 12 would be cheaper and improves less.
 */
describe('a plan for two years', async () => {
  const at = cabinet();
  const { stdout, status, written } = await plan(at, ...MINTS);
  test('says what to buy in which year, at what price, and what for', () => {
    expect(status).toBe(0);
    expect(stdout).toContain(
      [
        'Year 1',
        '',
        'At most GBP 105.00; GBP 15.00 left.',
        '',
        '- Durham in 30: GBP 40.00 to GBP 45.00. Makes sure of a place that is only possibly filled. (An invented list, 2015)',
        '- York in 30: GBP 50.00 to GBP 60.00. Fills an empty place. (An invented list, 2025)',
        '',
        'Year 2',
        '',
        'At most GBP 110.00; GBP 10.00 left.',
        '',
        '- Bristol in 20: GBP 25.00 to GBP 30.00. Takes the place of a problem piece. (An invented list, 2025)',
        '- London in 40: GBP 60.00 to GBP 80.00. Betters what stands there by at least 20 steps of the numeric scale. (An invented list, 2025)',
      ].join('\n'),
    );
    expect(stdout).toContain('The plan fills 3 places and betters 1 piece for GBP 175.00 to GBP 215.00.');
  });
  test('says what was left out, which prices are missing, which are old, and which row is not used', () => {
    expect(stdout).toContain('- Exeter: Even its cheapest grade may cost more than a year’s budget.');
    expect(stdout).toContain('- Lincoln: The guide has no price for it.');
    expect(stdout).toContain('- The price of Durham in 30 is of 2015.');
    expect(stdout).toMatch(/- private\/guide\.csv:8 is not used\. It has no low price\. For a single price write/);
  });
  test('counts a piece that is hidden from the public, so that it is not bought twice', () => {
    expect(stdout).toContain('- Mints of Edward I: 2 of 7 filled for certain, 5 with this plan.');
    expect(stdout).not.toContain('Kingston upon Hull');
  });
  test('is written to private/plan.md, says that it is private, and upsets no check', async () => {
    expect(written?.replace(/^#+ /gm, '')).toBe(stdout.slice(0, stdout.lastIndexOf('\nWritten to ')));
    expect(written).toMatch(/^# Buying plan of \d{4}-\d\d-\d\d\n\nPrivate: /);
    expect((await checkCabinet(at, PRIVACY)).problems).toEqual([]);
  });
  test('is written over by the next', async () => {
    const next = await plan(at, '--set', 'mints', '--budget', '60 GBP');
    expect(next.written).toContain('1 year with GBP 60.00 and as many purchases as it pays for each year.');
    expect(next.written).not.toContain('Year 2');
  });
});

test('fewer and better leaves out every grade below the aim', async () => {
  const { stdout } = await plan(cabinet(), ...MINTS, '--fewer-and-better');
  expect(stdout).toContain('fewer and better: nothing below the aim');
  expect(stdout).toContain('- Bristol: The guide has no price for a grade good enough.');
  expect(stdout).not.toMatch(/in (12|20):/);
});

describe('what cannot be planned is answered with a sentence and 1, and nothing is written', () => {
  const both = 'mints,exeter,30,300,400,';
  test.for([
    ['a guide in another currency than the budget', {}, ['--budget', '600 GBP'], /budget is in GBP and the guide prices “A coin of the king” in EUR, and no rate between them is given\. Write the budget in EUR\./],
    ['a guide in two currencies', { [`${both}GBP`]: `${both}USD` }, MINTS, /prices “Mints of Edward I” in GBP and USD, and no rate between them is given\. Write every price in one currency\./],
    ['fewer and better without an aim', {}, ['--set', 'king', '--budget', '90 EUR', '--fewer-and-better'], /“A coin of the king” has no aim, .* Write aim: VF in sets\/king\.yaml\./],
    ['a price of a place that is none', { 'mints,york,30': 'mints,yrok,30' }, MINTS, /guide\.csv:3 · place\n {2}The set mints has no place "yrok"\. Write york\.\n\nNothing was planned: fix the problem above first\./],
    ['no budget', {}, [], /A plan needs to know what a year may cost\. Write npm run plan -- --budget "600 GBP"/],
    ['a flag that is none', {}, ['--bugdet', '600 GBP'], /Write --help/],
  ] as const)('%s', async ([, change, words, says]) => {
    const at = cabinet();
    const guide = join(at, 'private', 'guide.csv');
    for (const [from, to] of Object.entries(change)) {
      const text = readFileSync(guide, 'utf8');
      expect(text).toContain(from);
      writeFileSync(guide, text.replace(from, to));
    }
    const { stdout, stderr, status, written } = await plan(at, ...words);
    expect({ stdout, status, written }).toEqual({ stdout: '', status: 1, written: null });
    expect(stderr).toMatch(says);
    expect(stderr).not.toMatch(/invalid|unexpected|null|schema|\n\s+at /i);
  });
  test('a plan that cannot be written', async () => {
    const at = cabinet();
    mkdirSync(join(at, 'private', 'plan.md'));
    const { stderr, status } = await runHere('plan', '--cabinet', at, ...MINTS);
    expect(status).toBe(1);
    expect(stderr).toMatch(/plan\.md is a folder, and a file is wanted there\. Move the folder away, and try again\.\n$/);
  });
  test('a cabinet without a guide, and no cabinet', async () => {
    const at = cabinet();
    rmSync(join(at, 'private', 'guide.csv'));
    expect((await plan(at, ...MINTS)).stderr).toMatch(/There is no private\/guide\.csv in .*, and a plan needs prices\. Write one/);
    expect((await plan(join(at, 'nowhere'), ...MINTS)).stderr).toMatch(/There is no cabinet at/);
  });
}); // prettier-ignore

test('--help shows every flag', async () => {
  const { stdout, status } = await plan('tests/cabinets/buying/content', '--help');
  expect(status).toBe(0);
  for (const flag of ['budget', 'purchases', 'years', 'set', 'fewer-and-better', 'cabinet'])
    expect(stdout).toContain(`--${flag}`);
});
