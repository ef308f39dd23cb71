import { cp, mkdtemp, readdir, readFile, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeEach, describe, expect, test } from 'vitest';
import { checkCabinet } from '../../src/catalogue/check-cabinet.ts';
import { newId, nextNumber } from '../../src/commands/add/new-piece.ts';
import { runHere } from './run-here.ts';
import type { Ran } from './run-here.ts';
import { PRIVACY } from '../../src/privacy/privacy.ts';

let cabinet = '';
beforeEach(async () => {
  cabinet = join(await mkdtemp(join(tmpdir(), 'add-')), 'cabinet');
  await cp('tests/cabinets/marked', cabinet, { recursive: true });
});

const add = (...words: readonly string[]): Promise<Ran> => runHere('add', '--cabinet', cabinet, ...words);
const held = async (file: string): Promise<string> => readFile(join(cabinet, file), 'utf8');

const DIRHAM = [
  '--title', 'Dirham of al-Muktafi', '--ruler', 'al-Muktafi', '--realm', 'The Abbasid Caliphate', '--reign', 'AD 902/AD 908',
  '--mint', 'Baghdad', '--new-mint', '--area', 'Iraq', '--denomination', 'dirham', '--new-denomination', '--date', 'AH 294',
  '--metal', 'silver', '--weight', '2.97 g', '--diameter', '26-27 mm', '--axis', '6h', '--grade', 'VF', '--grade-scale', 'uk',
  '--tag', 'hoard', '--tag', 'Jorvik', '--cost', '£40', '--storage', 'drawer, "second", left', '--story', 'Bought in the rain.',
]; // prettier-ignore

test('a piece from flags is a file a person would have written, and has no problems', async () => {
  const ledger = await held('private/ledger.csv');
  const { status, stdout, stderr } = await add(...DIRHAM);
  expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
  // AH 294: 22 October 906 to 11 October 907, Julian (tabular civil calendar; Dershowitz and Reingold, Calendrical Calculations).
  expect(stdout).toContain('0906-10-22 to 0907-10-11 julian');
  expect(await held('pieces/dirham-of-al-muktafi/piece.md')).toBe(`---
number: "0005"
title: Dirham of al-Muktafi
kind: coin
ruler: al-muktafi
mint: baghdad
denomination: dirham
date: AH 294
metal: silver
weight: 2.97 g
diameter: 26-27 mm
axis: 6h
grade: VF
grade-scale: uk
tags: [hoard, Jorvik]
---

Bought in the rain.
`);
  expect(await held('rulers/al-muktafi.yaml')).toContain('realm: The Abbasid Caliphate');
  expect((await held('private/ledger.csv')).startsWith(ledger)).toBe(true);
  expect(await held('private/ledger.csv')).toContain('dirham-of-al-muktafi,£40,,,"drawer, ""second"", left"');
  expect((await checkCabinet(cabinet, PRIVACY)).problems).toEqual([]);
});

test('what is private is read as a sheet is: a day of either order, a sum in the money of the cabinet', async () => {
  await writeFile(join(cabinet, 'cabinet.yaml'), `${await held('cabinet.yaml')}\ncurrency: GBP\n`);
  const { stderr, status } = await add('--title', 'A token', '--acquired', '28/11/2026', '--cost', '240');
  expect({ stderr, status }).toEqual({ stderr: '', status: 0 });
  expect(await held('private/ledger.csv')).toMatch(/a-token.*240 GBP.*2026-11-28|a-token.*2026-11-28.*240 GBP/);
  const asked = await add('--title', 'Another token', '--acquired', '03/04/2026');
  expect(asked.stderr).toContain('may be 2026-04-03 or 2026-03-04. Write the year first.');
});

test('the same piece twice gets another number and another folder', async () => {
  await add('--title', 'Penny');
  await add('--title', 'Penny');
  expect(await held('pieces/penny-2/piece.md')).toContain('number: "0006"');
});

test.for([
  [
    ['--title', 'Penny', '--axis', '13h', '--weight', '1.38'],
    ['--axis: A die axis is a clock hour', '--weight: '],
  ],
  [
    ['--title', 'Penny', '--ruler', 'plain-kin'],
    ['There is no ruler "plain-kin"', 'Write --ruler plain-king'],
  ],
  [['--title', 'Penny', '--mint', 'Exeter'], ['add --new-mint']],
  [['--title', 'Penny', '--number', '0001'], ['--number: ']],
  [['--title', 'Penny', '--id', 'plain-penny'], ['There is a piece plain-penny already.']],
  [['--kind', 'coin'], ['A piece wants a title.']],
  [
    ['--title', 'Penny', '--ruler', 'X', '--realm', 'Y', '--reign', '1216'],
    ['--reign: A reign has a beginning and an end'],
  ],
  [['--title', 'Penny', 'of', 'Edward'], ['"of" belongs to no flag']],
] as const)('%j is told, and nothing is written', async ([words, says]) => {
  const before = [await readdir(join(cabinet, 'pieces')), await held('private/ledger.csv')];
  const { status, stderr } = await add(...words);
  expect(status).toBe(1);
  for (const sentence of says) expect(stderr).toContain(sentence);
  expect([await readdir(join(cabinet, 'pieces')), await held('private/ledger.csv')]).toEqual(before);
});

describe('names and numbers', () => {
  test.for([
    ['Penny of Æthelred II, 3½ d.', 'penny-of-aethelred-ii-3-1-2-d'],
    ['Łódź ‘Groß’', 'lodz-gross'],
    ['Ступня', 'stupnya'],
    ['Edward’s penny', 'edwards-penny'],
  ] as const)('%s is kept in %s', ([words, id]) => {
    expect(newId(words, [])).toBe(id);
  });

  test('a number goes on from the highest in its own width', () => {
    expect(nextNumber(['0009', '12', 'A7'])).toBe('13');
    expect(nextNumber(['0009'])).toBe('0010');
    expect(nextNumber([])).toBe('1');
    expect(nextNumber(['B-09', 'B-12', 'A7', '3'])).toBe('B-13');
  });
});
