import { beforeAll, describe, expect, test } from 'vitest';
import type { Cabinet } from '../../../../src/site/cabinet.ts';
import { pagesOfSite, robotsText, sitemapOf } from '../../../../src/site/models/open-data/pages-of-site.ts';
import { elements, readXml, texts } from '../../read-xml.ts';
import { wholeCabinet } from '../../whole-cabinet.ts';

let demo: Cabinet;
let marked: Cabinet;
beforeAll(async () => {
  demo = await wholeCabinet('content');
  marked = await wholeCabinet('tests/cabinets/marked');
});

// The protocol: sitemaps.org/protocol.html, version 0.9.
describe('the sitemap', () => {
  test('is a well-formed urlset in the namespace of the protocol', () => {
    const urlset = readXml(sitemapOf(demo)).documentElement;
    expect(urlset?.localName).toBe('urlset');
    expect(urlset?.namespaceURI).toBe('http://www.sitemaps.org/schemas/sitemap/0.9');
  });

  test('holds nothing but url elements, each with its loc', () => {
    const sitemap = readXml(sitemapOf(demo));
    const urls = elements(sitemap, 'url');
    expect(urls.map((url) => [...url.childNodes].map(({ nodeName }) => nodeName))).toEqual(urls.map(() => ['loc']));
  });

  test('stays within 50,000 addresses of at most 2,048 letters', () => {
    const locs = texts(readXml(sitemapOf(demo)), 'loc');
    expect(locs.length).toBeLessThanOrEqual(50_000);
    expect(Math.max(...locs.map(({ length }) => length))).toBeLessThan(2048);
  });

  test('names each address once, in full, on the one host', () => {
    const locs = texts(readXml(sitemapOf(demo)), 'loc');
    expect(new Set(locs).size).toBe(locs.length);
    expect(locs.filter((loc) => !loc.startsWith('https://example.org/'))).toEqual([]);
  });

  test('names every listed piece, and neither an unlisted nor a hidden one', () => {
    expect(pagesOfSite(marked)).toEqual(expect.arrayContaining(['/pieces/plain-penny/', '/pieces/old-medal/']));
    expect(pagesOfSite(marked).join(' ')).not.toMatch(/unlisted-groat|hidden-noble/);
  });

  test('is not named, and nothing may be read, where the keeper wants no search engine', () => {
    const lists = { ...demo.lists, cabinet: { ...demo.lists.cabinet, robots: 'none' as const } };
    expect(robotsText({ ...demo, lists })).toBe('User-agent: *\nDisallow: /\n');
  });

  // A sitemap speaks for what lies below its own folder: that of robots.txt is the root.
  test('is named by robots.txt at the root', () => {
    expect(robotsText(demo)).toContain('Sitemap: https://example.org/sitemap.xml\n');
  });
});
