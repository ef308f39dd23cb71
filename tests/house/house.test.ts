import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { wordsToReplace } from './words.ts';

const ROOT = resolve(import.meta.dirname, '../..');
const SOURCE = readdirSync(join(ROOT, 'src'), { recursive: true, encoding: 'utf8' })
  .map((file) => `src/${file.replaceAll('\\', '/')}`)
  .filter((file) => /\.(?:ts|astro|css|mjs)$/.test(file));
const textOf = (file: string): string => readFileSync(join(ROOT, file), 'utf8');

describe('plain words', () => {
  test.for(['README.md', 'content/README.md', 'DEVELOPERS.md', 'CHANGELOG.md'])('%s', (file) => {
    expect(wordsToReplace(textOf(file))).toEqual([]);
  });

  test('every file of src', () => {
    const wrong = SOURCE.flatMap((file) => wordsToReplace(textOf(file)).map((one) => `${file}:${one}`));
    expect(wrong).toEqual([]);
  });

  test.for([
    ['3 rows set aside', 1],
    ['Mend what is amiss', 2],
    ['It stands in two lists\nand is told apart', 2],
    ['Fix what is wrong, recommend an amendment, and stand indoors', 0],
  ] as const)('“%s” has %i of them', ([text, count]) => {
    expect(wordsToReplace(text)).toHaveLength(count);
  });
});

/** Regular expressions of more than 120 signs in a TypeScript text, or in the scripts of a page. */
function longPatterns(text: string): readonly string[] {
  const found: string[] = [];
  const look = (node: ts.Node): void => {
    if (ts.isRegularExpressionLiteral(node) && node.text.lastIndexOf('/') > 121) found.push(node.text);
    ts.forEachChild(node, look);
  };
  look(ts.createSourceFile('a.ts', text, ts.ScriptTarget.Latest));
  return found;
}

test('every file that DEVELOPERS.md names is there', () => {
  const there = execFileSync('git', ['ls-files', '-co', '--exclude-standard'], { cwd: ROOT, encoding: 'utf8' }).split(
    '\n',
  );
  const named = [
    ...textOf('DEVELOPERS.md').matchAll(/`((?:tests\/[\w./-]+)|(?:[\w./[\]-]+\.(?:ts|astro|css|mjs)))`/g),
  ].map(([, name = '']) => name);
  expect(named.length).toBeGreaterThan(100);
  const isThere = (name: string): boolean =>
    there.some((file) =>
      [name, `${name}.test.ts`].some((whole) => `/${file}`.endsWith(`/${whole}`) || file.startsWith(name)),
    );
  expect(named.filter((name) => !isThere(name))).toEqual([]);
});

test('every name that DEVELOPERS.md says is in a file is in it', () => {
  const code = execFileSync('git', ['ls-files', '-co', '--exclude-standard', 'src', 'tests', '*.ts'], { cwd: ROOT, encoding: 'utf8' }).split('\n'); // prettier-ignore
  const said = [...textOf('DEVELOPERS.md').matchAll(/`([A-Za-z_]+)` (?:in|of) `([\w./-]+\.ts)`/g)];
  expect(said.length).toBeGreaterThan(20);
  const wrong = said.filter(([, name = '', file = '']) => {
    const meant = code.filter((one) => `/${one}`.endsWith(`/${file}`));
    return !meant.some((one) => new RegExp(`\\b${name}\\b`).test(textOf(one)));
  });
  expect(wrong.map(([whole]) => whole)).toEqual([]);
});

describe('files that can be read in a sitting', () => {
  test('no file of src has more than 300 lines', () => {
    const lines = SOURCE.map((file) => [file, textOf(file).split('\n').length - 1] as const);
    expect(lines.filter(([, count]) => count > 300)).toEqual([]);
  });

  test('no pattern is longer than 120 signs: a longer one is built from lists of words', () => {
    const suspects = SOURCE.filter((file) => /\/.{121,}\//.test(textOf(file)));
    expect(suspects.flatMap((file) => longPatterns(textOf(file)).map((pattern) => `${file}: ${pattern}`))).toEqual([]);
  });

  test('a long pattern is found, and a long text is none', () => {
    const long = 'a'.repeat(121);
    expect(longPatterns(`const a = /${long}/u; const b = '/${long}/'; // /${long}/`)).toEqual([`/${long}/u`]);
  });
});
