import { beforeAll, describe, expect, test } from 'vitest';
import type { Cabinet } from '../../../../src/site/cabinet.ts';
import { feedOf } from '../../../../src/site/models/open-data/feed.ts';
import { sitemapOf } from '../../../../src/site/models/open-data/pages-of-site.ts';
import { ORIGIN, wholeCabinet } from '../../whole-cabinet.ts';
import { feedFaults, sitemapFaults } from '../../xml-rules.ts';

let demo: Cabinet;
beforeAll(async () => {
  demo = await wholeCabinet('content');
}, 60_000);

/** What is done to a text that keeps the rules; each breaks one of them. */
type Mutation = readonly [says: string, from: string | RegExp, to: string];

describe('the sitemap keeps its protocol', () => {
  test('as it is', () => {
    expect(sitemapFaults(sitemapOf(demo), `${ORIGIN}/`)).toEqual([]);
  });

  test.for<Mutation>([
    ['an element left open', '</url>', ''],
    ['another namespace', 'sitemap/0.9', 'sitemap/0.8'],
    ['another root', /urlset/g, 'urls'],
    ['an address of another host', 'https://example.org/pieces/', 'https://example.com/pieces/'],
    ['an address without its host', '<loc>https://example.org/', '<loc>/'],
    ['an address with a blank', '/pieces/</loc>', '/pie ces/</loc>'],
    ['an address twice', '<url><loc>https://example.org/rulers/</loc></url>', '<url><loc>https://example.org/mints/</loc></url>'],
    ['a day before the address', '<url><loc>', '<url><lastmod>2026-11-30</lastmod><loc>'],
    ['no address at all', /<url>.*<\/url>\n/g, ''],
    ['an ampersand as it is', '/pieces/</loc>', '/pieces/?a&b</loc>'],
  ])('%s is refused', ([, from, to]) => {
    const text = sitemapOf(demo);
    const changed = text.replace(from, to);
    expect(changed).not.toBe(text);
    expect(sitemapFaults(changed, `${ORIGIN}/`)).not.toEqual([]);
  });
}); // prettier-ignore

describe('the feed keeps RSS 2.0', () => {
  test('as it is', () => {
    expect(feedFaults(feedOf(demo))).toEqual([]);
  });

  test.for<Mutation>([
    ['an element left open', '</item>', ''],
    ['another version', 'version="2.0"', 'version="0.9"'],
    ['no title', /<channel><title>[^<]*<\/title>/, '<channel>'],
    ['a second link', '<channel>', '<channel><link>https://example.org/</link>'],
    ['a link without its host', /<item>(<title>[^<]*<\/title>)<link>[^<]*/, '<item>$1<link>/pieces/'],
    ['a guid that two have', /<guid isPermaLink="true">[^<]*/g, '<guid isPermaLink="true">https://example.org/pieces/one/'],
    ['a guid that is no address', /(<guid isPermaLink="true">)[^<]*/, '$1one'],
    ['an element of nobody’s', '<item>', '<item><grade>VF</grade>'],
    ['an item with two titles', '<item>', '<item><title>Again</title>'],
    ['no address of its own', 'rel="self"', 'rel="alternate"'],
    ['another namespace for atom:link', '2005/Atom', '2004/Atom'],
  ])('%s is refused', ([, from, to]) => {
    const text = feedOf(demo);
    const changed = text.replace(from, to);
    expect(changed).not.toBe(text);
    expect(feedFaults(changed)).not.toEqual([]);
  });
}); // prettier-ignore
