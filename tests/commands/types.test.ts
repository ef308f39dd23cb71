import { cpSync, mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { expect, test } from 'vitest';
import { runHere } from './run-here.ts';
import type { Ran } from './run-here.ts';

const cabinet = join(mkdtempSync(join(tmpdir(), 'types-')), 'cabinet');
cpSync('tests/cabinets/marked', cabinet, { recursive: true });
const piece = (number: string, rest: string): string =>
  `---\nnumber: "${number}"\ntitle: A plain penny\nkind: coin\n${rest}\n---\n`;
const FILES = {
  'types/pence/series.yaml': `title: Plain pence
source: { work: plain-book }
shared: { denomination: penny, metal: silver }
levels: [class, variety]
characters:
  - { id: crown, label: The crown, states: [plain, jewelled, none] }
  - { id: weight, label: Weight, kind: weight, wear: 0.05 g }
`,
  'types/pence/types.csv': `id,broader,level,label,crown,weight,rarity
3,,class,Class 3,plain/jewelled,1.40-1.46 g,
3a,3,variety,Class 3a,plain,,american R-1
3b,3,variety,Class 3b,jewelled,,american R-8
`,
  'types/pence/concordance.csv': `type,relation,reference,sure
3a,equal,plain-book 10,
3b,equal,plain-book 11,
3b,equal,new-book 11,
3a,equal,new-book II 7,
3,equal,new-book London 40,
`,
  'works/new-book.yaml': 'title: A newer book\nyear: 2001\n',
  'pieces/cites-10/piece.md': piece('901', 'references: [plain-book 10]'),
  'pieces/cites-two/piece.md': piece('902', 'references: [plain-book 10, new-book 11]'),
  'pieces/of-copper/piece.md': piece('903', 'references: [plain-book 11]\nmetal: copper'),
  'pieces/cites-like/piece.md': piece('905', 'references: [cf. plain-book 11]'),
  'pieces/of-type/piece.md': piece('904', 'type: 3b'),
};
for (const [file, text] of Object.entries(FILES)) {
  mkdirSync(dirname(join(cabinet, file)), { recursive: true });
  writeFileSync(join(cabinet, file), text);
}
const run = (command: string, ...words: readonly string[]): Promise<Ran> =>
  runHere(command, ...words, '--cabinet', cabinet);

test('types lists the series, and writes a type only where one exact number says it and nothing contradicts', async () => {
  expect((await run('types')).stdout).toBe('pence: Plain pence, 3 types, 1 piece\n');
  const asked = await run('types', '--assign');
  expect(asked.stdout).toContain('cites-10: 3a, by plain-book 10');
  expect(asked.stdout).toContain('cites-two: one of 3a, 3b.');
  expect(asked.stdout).not.toContain('of-copper');
  expect(asked.stdout).toContain('cites-like: cf. plain-book 11 is near 3b, and no type follows from it.');
  expect(asked.stdout).toContain('No type was written.');
  const before = readFileSync(join(cabinet, 'pieces/cites-10/piece.md'), 'utf8');
  expect((await run('types', '--assign', '--yes')).stdout).toContain('Wrote type: into 1 piece.');
  expect(readFileSync(join(cabinet, 'pieces/cites-10/piece.md'), 'utf8')).toBe(
    before.replace('references: [plain-book 10]', 'references: [plain-book 10]\ntype: 3a'),
  );
  expect(readFileSync(join(cabinet, 'pieces/cites-two/piece.md'), 'utf8')).not.toContain('type:');
});

test('identify answers at once from words, refuses what it cannot read, and weighs rarity only when asked', async () => {
  const plain = await run('identify', 'pence', 'crown=plain');
  expect([plain.status, plain.stdout]).toEqual([0, expect.stringMatching(/^ *9\d\.\d % {2}Class 3a/)]);
  const open = (await run('identify', 'pence', 'crown=plain/jewelled')).stdout;
  expect(open).toContain(' 50.0 %  Class 3a');
  expect((await run('identify', 'pence', 'crown=none')).stdout).toContain(
    'No type in this list is known to show what you saw of crown.',
  );
  expect(open).toContain('Class 3a and Class 3b differ in crown.');
  expect((await run('identify', 'pence', 'crown=plain/jewelled', '--rarity')).stdout).toMatch(
    /^ *9\d\.\d % {2}Class 3a/,
  );
  expect((await run('identify', 'pence', 'crown=none', '--strict')).stdout).toContain(
    'It is probably not in this list',
  );
  for (const [words, says] of [
    [['pence', 'crown=square'], '"square" is no state of The crown. Write one of plain, jewelled, none.'],
    [['groats'], 'There is no series groats. Write one of pence.'],
  ] as const) {
    const refused = await run('identify', ...words);
    expect([refused.status, refused.stderr]).toEqual([1, expect.stringContaining(says)]);
  }
});

test('read concord gives the types of a number and their numbers elsewhere', async () => {
  const found = await run('read', 'concord', 'plain-book 11');
  expect([found.status, found.stdout]).toEqual([0, expect.stringContaining('plain-book 11 is Class 3b (pence/3b). Elsewhere: new-book 11.')]); // prettier-ignore
  expect((await run('read', 'concord', 'plain-book 10')).stdout).toContain('Elsewhere: new-book II 7.');
  expect((await run('read', 'concord', 'cf. plain-book 10')).stdout).toContain('so its type does not follow');
  expect((await run('read', 'concord', 'new-book 40')).stderr).toContain('With its heading it is new-book London 40.');
  expect((await run('read', 'concord', 'plain-book 99')).stderr).toContain(
    'No type in types/ has the number plain-book 99.',
  );
});
