import { describe, expect, test } from 'vitest';
import { forwardPages, hostFiles } from '../../src/publish/host-files.ts';
import type { Hosted } from '../../src/publish/host-files.ts';
import { lacksIn } from '../../src/privacy/page-policy.ts';

const SITE: Hosted = {
  base: '/coins/',
  address: 'https://example.org/coins/',
  stoodAt: [
    'https://example.org/coins/old/',
    'https://old.example.org/',
    'https://example.org/coins/',
    'not an address',
  ],
  leads: new Map([
    ['', ''],
    ['pieces/penny/', 'pieces/penny/'],
    ['pieces/first/', 'pieces/penny/'],
    ['pieces/groat-1/', 'pieces/groat/'],
    ['pieces/gone/', null],
  ]),
  unlisted: new Set(['pieces/groat/']),
};
const text = (name: string, site = SITE): string => hostFiles(site).find(({ file }) => file === name)?.text ?? '';

describe('the files that hosts read', () => {
  test('say of pictures and scripts, whose names change with them, that they may be kept for good', () => {
    for (const path of ['_astro', 'photographs'])
      expect(text('_headers')).toMatch(
        new RegExp(`^/coins/${path}/\\*\\n  Cache-Control: public, max-age=31536000, immutable$`, 'm'),
      );
  });

  // Fetch (nosniff), Referrer Policy, CSP Level 3 (frame-ancestors), Permissions Policy and HTML §7.1.3: what each of them is called there.
  test('tell every browser what it may not do with a page', () => {
    expect(text('_headers')).toMatch(/^\/coins\/\*\n/);
    for (const header of [
      'X-Content-Type-Options: nosniff',
      'Referrer-Policy: no-referrer',
      "Content-Security-Policy: frame-ancestors 'none'",
      'Permissions-Policy: camera=(), geolocation=(), microphone=()',
      'Cross-Origin-Opener-Policy: same-origin',
    ])
      expect(text('_headers').split('\n\n')[0]?.split('/coins/_astro/')[0]).toContain(`\n  ${header}\n`);
  });

  test('ask one host to take the files as they are', () => {
    expect(hostFiles(SITE).find(({ file }) => file === '.nojekyll')).toEqual({ file: '.nojekyll', text: '' });
  });

  // IIIF Image API 3.0 §7.1 and Presentation API 3.0 §6: documents are to be readable from other sites.
  test('let everybody read data and pictures', () => {
    for (const path of ['data', 'photographs'])
      expect(text('_headers')).toMatch(
        new RegExp(`^/coins/${path}/\\*\\n(?:  .*\\n)*?  Access-Control-Allow-Origin: \\*$`, 'm'),
      );
  });

  test('are of headers whose names and values a server can send as they are (RFC 9110, §5)', () => {
    const headers = text('_headers')
      .split('\n')
      .filter((line) => line.startsWith('  '));
    expect(headers.length).toBeGreaterThan(5);
    for (const line of headers)
      expect(
        () =>
          new Headers([
            line
              .trim()
              .split(/:\s*(.*)/s)
              .slice(0, 2) as [string, string],
          ]),
      ).not.toThrow();
  });

  test('lead on from old addresses, and name none that is unlisted or withdrawn', () => {
    const first = '/coins/pieces/first/ /coins/pieces/penny/ 301\n';
    expect(text('_redirects', { ...SITE, stoodAt: [] })).toBe(first);
    // Files of data at a place below this one follow the pages; a place that is now a folder of the site leads nowhere.
    expect(text('_redirects')).toBe(`${first}/coins/old/* /coins/:splat 301\n`);
    expect(text('_redirects', { ...SITE, stoodAt: ['https://example.org/coins/pieces/'] })).toBe(first);
  });
});

describe('pages for where the site stood before', () => {
  const { inside, outside } = forwardPages(SITE);

  test('lie in the site where the old place is below the new one', () => {
    expect(inside.map(({ file }) => file)).toEqual([
      'old/index.html',
      'old/pieces/penny/index.html',
      'old/pieces/first/index.html',
      'old/pieces/groat-1/index.html',
      'old/pieces/gone/index.html',
    ]);
    expect(inside[2]?.text).toContain('0; url=/coins/pieces/penny/');
  });

  test('are to be put elsewhere by hand otherwise, and lead on by the whole address', () => {
    expect([...outside.keys()]).toEqual(['https://old.example.org/']);
    const pages = outside.get('https://old.example.org/') ?? [];
    expect(pages.find(({ file }) => file === 'pieces/first/index.html')?.text).toContain(
      'url=https://example.org/coins/pieces/penny/',
    );
    expect(pages.find(({ file }) => file === 'pieces/gone/index.html')?.text).toContain('withdrawn by the keeper');
  });

  test('keep the policy of every page', () => {
    for (const page of inside) expect(lacksIn(page.text)).toBeNull();
  });

  test('are none for a site that has stood in one place', () => {
    const still = forwardPages({ ...SITE, stoodAt: ['https://example.org/coins'] });
    expect([still.inside.length, still.outside.size]).toEqual([0, 0]);
  });
});
