import { beforeAll, describe, expect, test } from 'vitest';
import type { Cabinet } from '../../../../src/site/cabinet.ts';
import { feedOf, newestPieces } from '../../../../src/site/models/open-data/feed.ts';
import { elements, readXml, texts } from '../../read-xml.ts';
import { wholeCabinet } from '../../whole-cabinet.ts';

let demo: Cabinet;
beforeAll(async () => {
  demo = await wholeCabinet('content');
});

// What a feed must have and may have: RSS 2.0 (rssboard.org/rss-specification) and the checks of the W3C feed validator.
describe('the feed', () => {
  test('is well-formed RSS 2.0 with one channel', () => {
    const rss = readXml(feedOf(demo)).documentElement;
    expect(rss?.tagName).toBe('rss');
    expect(rss?.getAttribute('version')).toBe('2.0');
    expect(rss?.getElementsByTagName('channel')).toHaveLength(1);
  });

  test('names its title, link and description, in the channel itself', () => {
    const [channel] = elements(readXml(feedOf(demo)), 'channel');
    const own = [...(channel?.childNodes ?? [])].map(({ nodeName }) => nodeName);
    expect(own).toEqual(expect.arrayContaining(['title', 'link', 'description']));
  });

  test('says the language of its texts and on what terms they may be used (RSS 2.0, optional elements of a channel)', () => {
    const cabinet = { ...demo.lists.cabinet, language: 'de', licence: { texts: 'CC BY 4.0 & mehr' } };
    const feed = readXml(feedOf({ ...demo, lists: { ...demo.lists, cabinet } }));
    expect(texts(feed, 'language')).toEqual(['de']);
    expect(texts(feed, 'copyright')).toEqual(['CC BY 4.0 & mehr']);
    expect(texts(readXml(feedOf(demo)), 'copyright')).toEqual([]);
  });

  test('says its own address (W3C: atom:link rel="self")', () => {
    const [self] = elements(readXml(feedOf(demo)), 'atom:link');
    expect(self?.getAttribute('href')).toBe('https://example.org/data/feed.xml');
    expect(self?.getAttribute('rel')).toBe('self');
    expect(self?.getAttribute('type')).toBe('application/rss+xml');
  });

  test('gives every entry a title, an absolute link, a text and a guid of its own', () => {
    const feed = readXml(feedOf(demo));
    const items = elements(feed, 'item');
    expect(items.length).toBeGreaterThan(10);
    for (const item of items)
      for (const name of ['title', 'link', 'description', 'guid']) {
        expect(texts(item, name)).toHaveLength(1);
        expect(texts(item, name)[0]).not.toBe('');
      }
    const guids = texts(feed, 'guid');
    expect(new Set(guids).size).toBe(guids.length);
    expect(guids.filter((guid) => !/^https:\/\/example\.org\/pieces\/[a-z0-9-]+\/$/.test(guid))).toEqual([]);
  });

  test('shows the newest first, listed pieces only, and says when none came by no day', () => {
    expect(newestPieces(demo, 3)).toEqual(demo.listed.slice(-3).reverse());
    expect(feedOf(demo)).not.toContain('<pubDate>');
  });

  test('keeps signs that XML uses, and drops letters it does not know', () => {
    const [first] = demo.listed;
    if (first === undefined) throw new Error('The demo has no piece.');
    const strange = { ...first, title: 'A <b> & "c" \u0001d', story: 'Ampersand & less < more.' };
    const feed = readXml(feedOf({ ...demo, listed: [strange] }));
    const [item] = elements(feed, 'item');
    expect(item === undefined ? [] : texts(item, 'title')).toEqual(['A <b> & "c" d']);
    expect(item === undefined ? [] : texts(item, 'description')).toEqual(['Ampersand & less < more.']);
  });
});
