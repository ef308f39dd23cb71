import { describe, expect, test } from 'vitest';
import { rewritePage, rewriteStyle, rewriteRecords } from '../../../src/publish/offline-copy/make-offline-copy.ts';

const inFolder = (address: string): string => (address.startsWith('/') ? `..${address}` : address);
const whole = (body: string, head = ''): string => `<!DOCTYPE html><html lang="en"><head>${head}</head><body>${body}</body></html>`; // prettier-ignore

describe('a page that opens from a folder', () => {
  // Where HTML holds addresses: the HTML standard's index of attributes (href, src, srcset, action, poster, content).
  test.for([
    ['<a href="/pieces/">all</a>', '<a href="../pieces/">all</a>'],
    ['<a href="https://example.org/">elsewhere</a>', '<a href="https://example.org/">elsewhere</a>'],
    ['<a href="#legends">below</a>', '<a href="#legends">below</a>'],
    ['<form action="/pieces/"></form>', '<form action="../pieces/"></form>'],
    [
      '<img src="/a.webp" srcset="/a.webp 160w,  /b.webp 320w" alt="">',
      '<img src="../a.webp" srcset="../a.webp 160w, ../b.webp 320w" alt="">',
    ],
    ['<find-pieces data-records="/data/search.json"></find-pieces>', '<find-pieces data-records="../data/search.json"></find-pieces>'], // prettier-ignore
    ['<p data-note="1/2 penny">a half</p>', '<p data-note="1/2 penny">a half</p>'],
    ['<template><a href="/sets/">sets</a></template>', '<template><a href="../sets/">sets</a></template>'],
    [
      '<svg><a xlink:href="/mints/york/"><text>York</text></a></svg>',
      '<svg><a xlink:href="../mints/york/"><text>York</text></a></svg>',
    ],
    ['<p>Write to /pieces/ &amp; ask.</p>', '<p>Write to /pieces/ &amp; ask.</p>'],
  ])('%s', ([from = '', to = '']) => {
    expect(rewritePage(whole(from), inFolder)).toBe(whole(to));
  });

  test('runs its scripts in their turn, because a module is not loaded from a folder', () => {
    const said: string[] = [];
    const page = rewritePage(whole('', '<script type="module" crossorigin src="/a.js"></script>'), (address, use) => {
      said.push(`${use} ${address}`);
      return 'a.classic.js';
    });
    expect(page).toBe(whole('', '<script src="a.classic.js" defer=""></script>'));
    expect(said).toEqual(['script /a.js']);
  });

  test('goes on where a redirect led', () => {
    const from = '<meta http-equiv="refresh" content="0;url=/pieces/new/">';
    expect(rewritePage(whole('', from), inFolder)).toContain('content="0;url=../pieces/new/"');
    expect(rewritePage(whole('', '<meta name="description" content="/pieces/">'), inFolder)).toContain('content="/pieces/"'); // prettier-ignore
  });

  // Content Security Policy Level 3, §6.7.2.8: 'self' is an origin, and that of a file is its own in some browsers.
  test('has a policy that knows files, and loosens nothing else', () => {
    const policy = "default-src 'none'; script-src 'self'; style-src 'self' 'sha256-abc'; font-src 'self'; img-src 'self'"; // prettier-ignore
    const page = rewritePage(whole('', `<meta http-equiv="Content-Security-Policy" content="${policy}">`), inFolder);
    expect(/content="([^"]*)"/.exec(page)?.[1]).toBe(
      "default-src 'none'; script-src 'self' file:; style-src 'self' file: 'sha256-abc'; font-src 'self' file: data:; img-src 'self' file:",
    );
  });
});

describe('what scripts read', () => {
  test('has its addresses rewritten wherever they stand, and its other texts as they were', () => {
    const records = { id: 'a', to: '/coins/pieces/a/', faces: [{ src: '/coins/photographs/a.webp', width: 160 }], none: null, note: '/other/' }; // prettier-ignore
    expect(rewriteRecords(records, '/coins/', (address) => address.replace('/coins/', './'))).toEqual({
      id: 'a',
      to: './pieces/a/',
      faces: [{ src: './photographs/a.webp', width: 160 }],
      none: null,
      note: '/other/',
    });
  });
});

describe('a style sheet', () => {
  test('has its fonts within, in whatever quotation marks, and other addresses rewritten', async () => {
    const style = `@font-face{src:url("/f/a.woff2") format("woff2")}.b{background:url(/p/b.svg)}.c{mask:url('/p/c.svg')}`;
    const fontAt = (address: string) => Promise.resolve(address.endsWith('.woff2') ? 'QUJD' : null);
    expect(await rewriteStyle(style, inFolder, fontAt)).toBe(
      '@font-face{src:url(data:font/woff2;base64,QUJD) format("woff2")}.b{background:url("../p/b.svg")}.c{mask:url("../p/c.svg")}',
    );
  });
});
