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
    await cp('content/pieces/york-penny-3b/obverse.jpg', join(cabinet, 'pieces/plain-penny/obverse.jpg'));
    const before = await buildInto({ cabinet, keeps: true });
    const ever = (await readFile(list, 'utf8')).match(/^[a-z]+\/\S+/gm) ?? [];
    expect(ever).toContain('pieces/plain-penny/');
    for (const address of ever) expect(await builtFiles(before)).toContain(`${address}index.html`);

    await rename(join(cabinet, 'pieces/plain-penny'), join(cabinet, 'pieces/king-penny'));
    await rename(join(cabinet, 'sets/plain-set.yaml'), join(cabinet, 'sets/king-set.yaml'));
    await change(join(cabinet, 'private/guide.csv'), (text) => text.replaceAll('plain-set', 'king-set'));
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
      text
        .replace(/^(pieces\/unlisted-groat\/|exhibits\/small-show\/).*$/gm, '$1 withdrawn')
        .replace(/^sets\/plain-set\/.*$/m, 'sets/plain-set/ now sets/king-set/'),
    );

    const after = await buildInto({ cabinet, keeps: true });
    const files = await builtFiles(after);
    for (const address of ever) expect(files, address).toContain(`${address}index.html`);
    expect(await brokenLinks(after, '/', 'https://example.org')).toEqual([]);
    const page = (address: string): Promise<string> => readFile(join(after, `${address}index.html`), 'utf8');
    for (const old of ['penny-one', 'plain-penny', 'old-medal'])
      expect(await page(`pieces/${old}/`)).toContain('content="0; url=/pieces/king-penny/"');
    // What lay below a page or was its data is there too: other people's viewers and tools hold these addresses.
    expect(await page('sets/plain-set/wanted/')).toContain('content="0; url=/sets/king-set/wanted/"');
    const dataOf = (file: string): Promise<string> => readFile(join(after, 'data', file), 'utf8');
    for (const file of ['pieces/ID.json', 'iiif/ID/manifest.json']) {
      expect(await builtFiles(before)).toContain(`data/${file.replace('ID', 'plain-penny')}`);
      for (const old of ['penny-one', 'plain-penny', 'old-medal'])
        expect(await dataOf(file.replace('ID', old)), old).toBe(await dataOf(file.replace('ID', 'king-penny')));
    }
    expect(await dataOf('sets/plain-set.json')).toBe(await dataOf('sets/king-set.json'));
    const withdrawn = await page('pieces/unlisted-groat/');
    expect(withdrawn).toMatch(/>Withdrawn<.h1>/);
    expect(withdrawn).toContain('<meta name="robots" content="noindex');
    expect(withdrawn).not.toMatch(/groat/i);
    for (const file of files.filter((one) => /\.(html|json|xml|txt|csv)$/.test(one)))
      expect(await readFile(join(after, file), 'utf8'), file).not.toContain('unlisted-groat');
    // What stood below the old path answers from there as well.
    for (const address of ever) expect(files, address).toContain(`marked/${address}index.html`);
    for (const list of ['pieces/', 'sets/', 'about/readings/', 'data/'])
      expect(await page(`marked/${list}`)).toContain(`content="0; url=/${list}"`);
    expect(await readFile(join(after, 'marked/pieces/plain-penny/index.html'), 'utf8')).toContain(
      '/pieces/king-penny/',
    );
    expect(await readFile(list, 'utf8')).toContain('at https://example.org/marked/\nat https://example.org/\n');
  },
);
