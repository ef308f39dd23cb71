import { readFile } from 'node:fs/promises';
import { parse } from 'parse5';
import type { DefaultTreeAdapterTypes } from 'parse5';
import sharp from 'sharp';
import { beforeAll, expect, test } from 'vitest';

type Node = DefaultTreeAdapterTypes.Node;
type Element = DefaultTreeAdapterTypes.Element;

let html = '';
let elements: readonly Element[] = [];
/** How many pieces its file names. */
let shown = 0;
beforeAll(async () => {
  shown = (await readFile('content/exhibits/struck-in-york/exhibit.md', 'utf8')).match(/^ +- piece: /gmu)?.length ?? 0;
  html = await readFile('dist/exhibits/struck-in-york/index.html', 'utf8');
  elements = elementsOf(parse(html));
});

function elementsOf(node: Node): readonly Element[] {
  const own = 'tagName' in node ? [node] : [];
  return 'childNodes' in node ? [...own, ...node.childNodes.flatMap(elementsOf)] : own;
}
const valueOf = (element: Element | undefined, name: string): string =>
  element?.attrs.find((one) => one.name === name)?.value ?? '';
const meta = (property: string): string =>
  valueOf(
    elements.find((one) => valueOf(one, 'property') === property),
    'content',
  );

test('an exhibit is shared by a picture of its own, 1200 by 630 pixels, that says what it shows', async () => {
  expect(meta('og:image')).toBe('https://example.org/exhibits/struck-in-york/picture.jpg');
  expect(await sharp('dist/exhibits/struck-in-york/picture.jpg').metadata()).toMatchObject({
    format: 'jpeg',
    width: 1200,
    height: 630,
  });
  expect(meta('og:image:alt')).toMatch(/^On a board, at one scale: Denarius of Septimius Severus.*;.*Edward VI/);
  expect(meta('og:description')).toMatch(/^Coins made at York/);
});

test('its contents lead to every case and every group, in the order of the page', () => {
  const contents = elements.find((one) => one.tagName === 'nav' && valueOf(one, 'id') === 'cases');
  const links = elementsOf(contents ?? parse('')).flatMap((one) => (one.tagName === 'a' ? [valueOf(one, 'href')] : []));
  expect(links).toEqual([
    '#case-1', '#case-1-1', '#case-1-2', '#case-1-3', '#case-1-4',
    '#case-2', '#case-2-1', '#case-2-2', '#case-2-3', '#case-2-4', '#closing',
  ]); // prettier-ignore
  const places = links.map((link) => html.indexOf(`id="${link.slice(1)}"`));
  expect(places).toEqual(places.toSorted((a, b) => a - b));
});

test('each of its pieces lies there with its label, its name and the way to its page', () => {
  const pieces = elements.filter((one) => one.tagName === 'a' && /^\/pieces\/[a-z0-9-]+\/$/.test(valueOf(one, 'href')));
  expect(new Set(pieces.map((one) => valueOf(one, 'href'))).size).toBe(shown);
  for (const text of ['B and a key, for Archbishop Booth and St\u00a0Peter', 'Penny of Edward\u00a0IV'])
    expect(html.includes(text), text).toBe(true);
});

test('it is linked data of a collection, with its pieces in order and the keeper who shows it', () => {
  // schema.org: Collection, hasPart, isPartOf, creditText.
  const script = /<script type="application\/ld\+json">(.*?)<\/script>/s.exec(html)?.[1] ?? '{}';
  const linked = JSON.parse(script) as { hasPart: readonly { '@id': string }[] };
  expect(linked).toMatchObject({
    '@context': ['https://schema.org', { dcterms: 'http://purl.org/dc/terms/' }],
    '@type': 'Collection',
    '@id': 'https://example.org/exhibits/struck-in-york/',
    name: 'York and its money',
    creditText: 'Hester Layerthorpe',
    collectionSize: shown,
    isPartOf: { '@type': 'Collection', '@id': 'https://example.org/' },
  });
  expect(linked.hasPart).toHaveLength(shown);
  expect(linked.hasPart[0]).toMatchObject({
    '@type': 'VisualArtwork',
    '@id': 'https://example.org/pieces/severus-denarius/',
  });
});

test('it ends with its key, its books, how it is cited and what can be printed', () => {
  const headings = ['abbreviations', 'books', 'further', 'thanks', 'cite', 'print'];
  const places = headings.map((id) => html.indexOf(`id="${id}"`));
  expect(places).not.toContain(-1);
  expect(places).toEqual(places.toSorted((a, b) => a - b));
  // As the list of addresses has the day of its last change, whichever that is.
  const cited =
    /Hester Layerthorpe, “York and its money”, in Foss &amp; Ouse Coin Circle: The York Cabinet, last changed \d{1,2} \w+ \d{4}, https:\/\/example\.org\/exhibits\/struck-in-york\//;
  expect(html.replace(/<[^>]*>/g, '')).toMatch(cited);
});
