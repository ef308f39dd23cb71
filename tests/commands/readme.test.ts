import { spawnSync } from 'node:child_process';
import { cp, mkdir, mkdtemp, readFile, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import process from 'node:process';
import { expect, test } from 'vitest';

/** A line of the README's examples that stands for lines left out. */
const LEFT_OUT = '…';

/** What is in the README after this line, as far as it is indented by four. */
function blockAfter(readme: string, line: string): string {
  const lines = readme.split('\n').slice(readme.split('\n').findIndex((one) => one.includes(line)) + 1);
  const from = lines.findIndex((one) => one.startsWith('    '));
  const to = lines.findIndex((one, at) => at > from && one !== '' && !one.startsWith('    '));
  return lines
    .slice(from, to)
    .map((one) => one.slice(4))
    .join('\n')
    .trim();
}

/** The words of a command as the README has it. */
function wordsOf(command: string): readonly string[] {
  return [...command.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, plain]) => quoted ?? plain ?? '');
}

test('the evening in ten steps comes out as the README prints it', async () => {
  const readme = await readFile('README.md', 'utf8');
  const home = await mkdtemp(join(tmpdir(), 'evening-'));
  const project = join(home, 'underglass');
  await mkdir(project);
  await mkdir(join(home, 'pictures'));
  for (const face of ['obverse', 'reverse'])
    await cp(`content/pieces/york-penny-3b/${face}.jpg`, join(home, 'pictures', `1-${face.slice(0, 3)}.jpg`));
  await writeFile(join(home, 'my-coins.csv'), `${blockAfter(readme, 'Say your list is this sheet')}\n`);
  const run = (command: string): string => {
    const [name = '', ...words] = wordsOf(command.replace(/^npm run ([a-z]+)(?: --)?/, '$1'));
    const { stdout, stderr } = spawnSync(process.execPath, [resolve(`src/commands/${name}.ts`), ...words], {
      cwd: project,
      encoding: 'utf8',
    });
    return `${stdout}${stderr}`.trim();
  };
  const evening = readme.slice(readme.indexOf('**2. Begin'), readme.indexOf('## One piece at a time'));
  const steps = evening.split(/\n(?=\*\*\d+\. )/);
  const told: string[] = [];
  for (const step of steps) {
    // In a step the command is the first line of its first block, and what it prints is the rest of it.
    const [block = '', other] = [...step.matchAll(/(?:^ {4}.*\n(?:\n(?= {4}))?)+/gm)].map(([indented]) =>
      indented.replace(/^ {4}/gm, '').trim(),
    );
    const [first = '', ...rest] = block.split('\n');
    if (step.startsWith('**4.')) {
      const file = join(home, 'my-cabinet/private/import/my-coins.mapping.yaml');
      const mapping = await readFile(file, 'utf8');
      await writeFile(file, mapping.replace(/read:\n(?: {2}.*\n)+/, `${block}\n`));
    }
    const isAgain = step.startsWith('**6.');
    const command = isAgain ? (told.at(-1) ?? '') : first;
    if (!command.startsWith('npm run')) continue;
    const output = run(command.replace('npm run photos --', 'npm run photos -- --yes'));
    const printed = isAgain ? block : rest.join('\n').trim();
    told.push(command);
    const parts = printed.split(`\n${LEFT_OUT}\n`);
    for (const part of parts)
      expect(output).toContain(part.replace(new RegExp(`^${LEFT_OUT}\n|\n${LEFT_OUT}$`, 'g'), ''));
    if (step.startsWith('**7.'))
      expect((await readFile(join(home, 'my-cabinet/pieces/2/piece.md'), 'utf8')).trim()).toBe(other);
  }
  expect(told.map((command) => command.split(' ')[2])).toEqual([
    'begin',
    'import',
    'import',
    'import',
    'photos',
    'check',
  ]);
});
