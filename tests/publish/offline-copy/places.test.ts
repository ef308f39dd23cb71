import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { runInNewContext } from 'node:vm';
import { expect, test } from 'vitest';
import { classicScript, dataScript } from '../../../src/publish/offline-copy/classic-script.ts';
import { fileMeant, frontPage, placeInHall, wayTo } from '../../../src/publish/offline-copy/places.ts';

// WHATWG URL: how an address is read beside the page it is on.
test.for([
  ['/coins/pieces/penny/', { file: 'pieces/penny/index.html', after: '' }],
  ['/coins/', { file: 'index.html', after: '' }],
  ['../penny/?words=a#b', { file: 'pieces/penny/index.html', after: '?words=a#b' }],
  ['obverse.jpg', { file: 'pieces/groat/obverse.jpg', after: '' }],
  ['/coins/a%20b.csv', { file: 'a b.csv', after: '' }],
  ['', null],
  ['#place', null],
  ['/elsewhere/', null],
  ['https://example.org/coins/', null],
  ['//example.org/coins/x', null],
  ['https://[', null],
] as const)('on the page of a groat “%s” means %j', ([address, meant]) => {
  expect(fileMeant(address, 'pieces/groat/', { base: '/coins/', exhibit: null })).toEqual(meant);
});

test('the exhibit, or the first page, is what one opens; all else is in a folder beside it', () => {
  const [whole, show] = [
    { base: '/', exhibit: null },
    { base: '/', exhibit: 'show' },
  ];
  expect([frontPage(null), frontPage('show')]).toEqual(['index.html', 'exhibits/show/index.html']);
  expect([placeInHall('index.html', whole), placeInHall('index.html', show)]).toEqual(['open-me.html', 'catalogue/index.html']); // prettier-ignore
  expect(placeInHall('exhibits/show/index.html', show)).toBe('open-me.html');
});

test.for([
  ['catalogue/a/b.html', 'open-me.html', 'catalogue/a/b.html'],
  ['catalogue/a/b.html', 'catalogue/c/d.html', '../a/b.html'],
  ['catalogue/a b.html', 'catalogue/c.html', 'a%20b.html'],
] as const)('the way to %s from %s is %s', ([to, from, way]) => {
  expect(wayTo(to, from)).toBe(way);
});

test('a module and what it imports run as one script, and data are handed over as they are', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'classic-'));
  writeFileSync(join(folder, 'a.js'), 'export const said = "well";');
  writeFileSync(join(folder, 'b.js'), 'import { said } from "./a.js"; globalThis.heard = said;');
  const page: { heard?: string } = {};
  runInNewContext(await classicScript(join(folder, 'b.js')), { globalThis: page });
  const laid = { currentScript: { laid: null as unknown } };
  runInNewContext(dataScript('{"a":"x\u2028y\u2029z"}'), { document: laid });
  expect(JSON.stringify(laid.currentScript.laid)).toBe(JSON.stringify({ a: 'x\u2028y\u2029z' }));
  expect(dataScript('"\u2028\u2029"')).not.toMatch(/[\u2028\u2029]/);
  await expect(classicScript(join(folder, 'none.js'))).rejects.toThrow();
});
