import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { checkCabinet } from '../../src/catalogue/check-cabinet.ts';
import type { CheckedCabinet } from '../../src/catalogue/check-cabinet.ts';
import { earlierIn } from '../../src/catalogue/kept-answers.ts';
import { PRIVACY } from '../../src/privacy/privacy.ts';

const DAY = '2026-11-30';

/** A cabinet that can be edited, and what is kept of it. */
function copied(name: string) {
  const at = mkdtempSync(join(tmpdir(), 'earlier-'));
  const [cabinet, store] = [join(at, 'cabinet'), join(at, 'store')];
  cpSync(name, cabinet, { recursive: true });
  const edit = (file: string, change: (text: string) => string): void =>
    writeFileSync(join(cabinet, file), change(readFileSync(join(cabinet, file), 'utf8')));
  return { cabinet, store, edit };
}

/** Checks with what is kept, and says how many questions were answered by that. */
async function checked(
  cabinet: string,
  store: string,
  program = 'this program',
): Promise<CheckedCabinet & { readonly asked: number; readonly worked: number }> {
  const earlier = earlierIn(store, program);
  let [asked, worked] = [0, 0];
  const counting: typeof earlier = {
    keep: earlier.keep,
    once: (dependsOn, work, isKept) => {
      asked += 1;
      const counted = (): ReturnType<typeof work> => {
        worked += 1;
        return work();
      };
      return earlier.once(dependsOn, counted, isKept);
    },
  };
  const found = await checkCabinet(cabinet, PRIVACY, DAY, counting);
  await earlier.keep();
  return { ...found, asked, worked };
}

/** Each changes a copy of the marked cabinet in another way, some of them so that a problem arises in a text that is as it was. */
const CHANGES: readonly (readonly [what: string, file: string, change: (text: string) => string, found?: string])[] = [
  ['nothing', 'pieces/plain-penny/piece.md', (text) => text],
  ['a story', 'pieces/plain-penny/piece.md', (text) => `${text}\nMore of it.\n`],
  ['a slip', 'pieces/plain-penny/piece.md', (text) => text.replace('metal:', 'mettal:'), 'field-misspelt'],
  ['the reign of a ruler', 'rulers/plain-king.yaml', (text) => text.replace(/from: \d+/, 'from: 1200')],
  ['a private value that an old story has', 'private/ledger.csv', (text) => text.replace('MARK-STORAGE bank box', 'ampersand & a ""quote""').replace(',ampersand', ',"ampersand').replace('quote""', 'quote"""'), 'private-in-text'],
  ['a piece that is now hidden', 'pieces/old-medal/piece.md', (text) => text.replace(/^---\n/, '---\npublish: no\n')],
  ['a hidden piece that is now named', 'pieces/plain-penny/piece.md', (text) => `${text}\nBeside hidden-noble.\n`, 'hidden-in-text'],
  ['a place that is named exactly', 'pieces/plain-penny/piece.md', (text) => `${text}\nFound at SE 60321 51945.\n`, 'spot-too-exact'],
  ['what gr means', 'cabinet.yaml', (text) => `${text}\ngr: grains\n`],
]; // prettier-ignore

test.for(CHANGES)('a check that knows an earlier one finds what a first check finds, after a change of %s', async ([, file, change, found]) => {
  const { cabinet, store, edit } = copied('tests/cabinets/marked');
  const first = await checked(cabinet, store);
  expect(first.worked).toBe(first.asked);
  edit(file, change);
  const second = await checked(cabinet, store);
  const alone = await checkCabinet(cabinet, PRIVACY, DAY);
  expect(alone.problems.map(({ kind }) => kind)).toEqual(found === undefined ? [] : [found]);
  expect(second.problems).toStrictEqual(alone.problems);
  expect(second.records).toStrictEqual(alone.records);
}); // prettier-ignore

test('a second check of the demo works out only what is never kept, and one after an edit little more', async () => {
  const { cabinet, store, edit } = copied('content');
  const first = await checked(cabinet, store);
  const second = await checked(cabinet, store);
  expect(second.asked).toBe(first.asked);
  expect(second.worked).toBeLessThan(first.asked / 20);
  edit('pieces/aldfrith-sceat/piece.md', (text) => `${text}\nSeen again.\n`);
  const third = await checked(cabinet, store);
  expect(third.worked - second.worked).toBeGreaterThan(0);
  expect(third.worked - second.worked).toBeLessThan(8);
  expect(third.records).toStrictEqual((await checkCabinet(cabinet, PRIVACY, DAY)).records);
});

test('another program asks everything anew, and what is kept has nothing of a piece that was made private', async () => {
  const { cabinet, store, edit } = copied('tests/cabinets/marked');
  const first = await checked(cabinet, store);
  expect((await checked(cabinet, store, 'another program')).worked).toBe(first.asked);
  const words = 'Quincunx of Erewhon';
  edit('pieces/old-medal/piece.md', (text) => text.replace(/title: .*/, `title: ${words}`));
  await checked(cabinet, store);
  expect(readFileSync(join(store, 'answers'), 'latin1')).toContain(words);
  edit('pieces/old-medal/piece.md', (text) => text.replace(/^---\n/, '---\npublish: no\n'));
  await checked(cabinet, store);
  expect(readFileSync(join(store, 'answers'), 'latin1')).not.toContain(words);
  rmSync(store, { recursive: true });
});
