import { cp, mkdtemp, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { buildInto } from './build-into.ts';
import { brokenLinks, builtFiles } from './site-links.ts';

const change = async (file: string, to: (text: string) => string): Promise<void> =>
  writeFile(file, to(await readFile(file, 'utf8')));

test(
  'after a renaming, a merger, a secret and a new place on the web, every address that was published has its file',
  {
    timeout: 300_000,
  },
  async () => {
    const cabinet = join(await mkdtemp(join(tmpdir(), 'years-')), 'cabinet');
    await cp('tests/cabinets/marked', cabinet, { recursive: true });
    const list = join(cabinet, 'addresses.txt');
    const before = await buildInto({ cabinet, keeps: true });
    const ever = (await readFile(list, 'utf8')).match(/^[a-z]+\/\S+/gm) ?? [];
    expect(ever).toContain('pieces/plain-penny/');
    for (const address of ever) expect(await builtFiles(before)).toContain(`${address}index.html`);

    await rename(join(cabinet, 'pieces/plain-penny'), join(cabinet, 'pieces/king-penny'));
    await rm(join(cabinet, 'pieces/old-medal'), { recursive: true });
    await rm(join(cabinet, 'exhibits/small-show'), { recursive: true });
    await change(join(cabinet, 'pieces/king-penny/piece.md'), (text) =>
      text.replace('formerly: penny-one', 'formerly: [penny-one, plain-penny, old-medal]'),
    );
    await change(join(cabinet, 'pieces/unlisted-groat/piece.md'), (text) =>
      text.replace('publish: unlisted', 'publish: no'),
    );
    await change(join(cabinet, 'private/ledger.csv'), (text) =>
      text.replaceAll('plain-penny', 'king-penny').replace(/^old-medal.*\n/m, ''),
    );
    await change(join(cabinet, 'cabinet.yaml'), (text) => text.replace('example.org/marked/', 'example.org/'));
    await change(list, (text) =>
      text.replace(/^(pieces\/unlisted-groat\/|exhibits\/small-show\/).*$/gm, '$1 withdrawn'),
    );

    const after = await buildInto({ cabinet, keeps: true });
    const files = await builtFiles(after);
    for (const address of ever) expect(files, address).toContain(`${address}index.html`);
    expect(await brokenLinks(after, '/', 'https://example.org')).toEqual([]);
    const page = (address: string): Promise<string> => readFile(join(after, `${address}index.html`), 'utf8');
    for (const old of ['penny-one', 'plain-penny', 'old-medal'])
      expect(await page(`pieces/${old}/`)).toContain('content="0; url=/pieces/king-penny/"');
    const withdrawn = await page('pieces/unlisted-groat/');
    expect(withdrawn).toMatch(/>Withdrawn<.h1>/);
    expect(withdrawn).toContain('<meta name="robots" content="noindex');
    expect(withdrawn).not.toMatch(/groat/i);
    for (const file of files.filter((one) => /\.(html|json|xml|txt|csv)$/.test(one)))
      expect(await readFile(join(after, file), 'utf8'), file).not.toContain('unlisted-groat');
    // What stood below the old path answers from there as well.
    for (const address of ever) expect(files, address).toContain(`marked/${address}index.html`);
    expect(await readFile(join(after, 'marked/pieces/plain-penny/index.html'), 'utf8')).toContain(
      '/pieces/king-penny/',
    );
    expect(await readFile(list, 'utf8')).toContain('at https://example.org/marked/\nat https://example.org/\n');
  },
);
