import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parse } from 'parse5';
import type { DefaultTreeAdapterMap } from 'parse5';
import { beforeAll, describe, expect, test } from 'vitest';
import { lettersOf, pageParts } from '../../src/privacy/letters.ts';
import { buildInto } from './build-into.ts';
import { builtFiles } from './site-links.ts';

/** A value of every private field of tests/cabinets/marked, and of the piece that is not published. */
const MARKS = [
  '431.17', '532.19', '633.21', 'MARK-', 'bank box', 'SE 603 523', '4317.17', '5327.19', '6337.21',
  'hidden-noble', 'HIDDEN-0003', 'Noble that must not be seen', 'hidden-tag', 'HIDDENLEGEND', 'Hidden design', 'A hidden story',
]; // prettier-ignore

describe('a cabinet with a mark in every private field', () => {
  let built = '';
  let files: readonly (readonly [file: string, bytes: Buffer])[] = [];

  beforeAll(async () => {
    built = await buildInto({ cabinet: 'tests/cabinets/marked' });
    files = await Promise.all(
      (await builtFiles(built)).map(async (file) => [file, await readFile(join(built, file))] as const),
    );
  });

  test.for(MARKS)('%s is in no byte of the site', (mark) => {
    expect(files.filter(([file, bytes]) => file.includes(mark) || bytes.includes(mark)).map(([file]) => file)).toEqual(
      [],
    );
  });

  test('the figures of a rule are no number together', () => {
    const pages = files
      .filter(([, bytes]) => bytes.includes('>110<'))
      .map(([, bytes]) => lettersOf(pageParts(bytes.toString()).seen));
    expect(pages.length).toBeGreaterThan(0);
    for (const page of pages) expect(page).not.toMatch(/\b100 110\b/);
  });

  test('an unlisted piece has its page and stands nowhere else', () => {
    const naming = files.filter(([file, bytes]) => file.includes('unlisted-groat') || bytes.includes('unlisted-groat'));
    const elsewhere = naming.map(([file]) => file).filter((file) => !file.includes('unlisted-groat'));
    expect(naming.map(([file]) => file)).toContain('pieces/unlisted-groat/index.html');
    expect(elsewhere).toEqual([]);
  });

  test('an unlisted piece asks search engines to leave it alone', () => {
    const page = files.find(([file]) => file === 'pieces/unlisted-groat/index.html')?.[1].toString() ?? '';
    expect(page).toMatch(/<meta name="robots" content="noindex/);
  });

  test('an unlisted piece is in no count', () => {
    const set = files.find(([file]) => file === 'data/sets/plain-set.json')?.[1].toString() ?? '{}';
    expect(JSON.parse(set)).toMatchObject({ of: 2, filled: { low: 1, high: 1 } });
    const pieces = files.find(([file]) => file === 'data/pieces.json')?.[1].toString() ?? '[]';
    expect((JSON.parse(pieces) as { id: string }[]).map(({ id }) => id)).toEqual(['plain-penny', 'old-medal']);
  });

  test('without the hidden piece and the unlisted one the site is the same, byte for byte, but for the pages of the latter', async () => {
    const without = join(await mkdtemp(join(tmpdir(), 'without-')), 'cabinet');
    await cp('tests/cabinets/marked', without, { recursive: true });
    await rm(join(without, 'pieces/hidden-noble'), { recursive: true });
    await rm(join(without, 'pieces/unlisted-groat'), { recursive: true });
    const ledger = join(without, 'private/ledger.csv');
    await writeFile(ledger, (await readFile(ledger, 'utf8')).replace(/^hidden-noble.*\n/m, ''));
    const other = await buildInto({ cabinet: without });
    const names = await builtFiles(other);
    expect(files.map(([file]) => file).filter((file) => !names.includes(file))).toEqual(
      files.map(([file]) => file).filter((file) => file.includes('unlisted-groat')),
    );
    for (const [file, bytes] of files)
      if (names.includes(file)) expect(bytes.equals(await readFile(join(other, file))), file).toBe(true);
  });

  test('what a sheet held of markup and script is read as text and runs nowhere', () => {
    const pages = files
      .filter(([file]) => file.endsWith('.html'))
      .map(([file, bytes]) => [file, bytes.toString()] as const);
    expect(pages.some(([, html]) => html.includes('&lt;img src=x onerror=alert(1)&gt;'))).toBe(true);
    for (const [file, html] of pages)
      for (const element of elementsOf(parse(html))) {
        const where = `${file}: <${element.tagName}>`;
        expect(
          element.attrs.filter(({ name, value }) => /^on/i.test(name) || /javascript:/i.test(value)),
          where,
        ).toEqual([]);
        const isData = element.attrs.some(({ name, value }) => name === 'type' && value === 'application/ld+json');
        const text = element.childNodes.map((node) => ('value' in node ? node.value : '')).join('');
        if (element.tagName === 'script' && isData) expect(() => JSON.parse(text) as unknown, where).not.toThrow();
        else if (element.tagName === 'script') expect(text, where).not.toContain('alert(');
      }
  });

  test('an old id is alive as a redirect', () => {
    const page = files.find(([file]) => file === 'pieces/penny-one/index.html')?.[1].toString() ?? '';
    expect(page).toContain('/marked/pieces/plain-penny/');
    const file = files.find(([name]) => name === 'data/pieces/penny-one.json')?.[1].toString() ?? '{}';
    expect(JSON.parse(file)).toMatchObject({ compared: { id: 'plain-penny' } });
  });
});

type Node = DefaultTreeAdapterMap['node'];

/** Every element of a page. */
function elementsOf(node: Node): readonly DefaultTreeAdapterMap['element'][] {
  const inner = 'childNodes' in node ? node.childNodes.flatMap(elementsOf) : [];
  return 'tagName' in node ? [node, ...inner] : inner;
}
