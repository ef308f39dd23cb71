import { expect, test } from 'vitest';
import { linkRecords } from '../../src/catalogue/link.ts';
import { readCabinet } from '../../src/catalogue/read-cabinet.ts';
import { linkedDenomination, linkedGraph, linkedHome, linkedMint, linkedRuler, linkedSeries, linkedSet, linkedType } from '../../src/publish/linked-lists.ts'; // prettier-ignore
import type { LinkedWhole } from '../../src/publish/linked-lists.ts';
import { CONTEXT } from '../../src/publish/json-ld.ts';
import { changed, markedCabinet } from '../catalogue/small-cabinet.ts';

// The terms are those of schema.org (Thing, Place, DefinedTerm, Collection, Dataset), nomisma.org/ontology and SKOS.
const names = 'identifiers: { nomisma: that }\n';
const { rulers, mints, denominations } = linkRecords(
  readCabinet(
    changed(await markedCabinet(), {
      'rulers/whole.yaml': `name: Whole king\nother-names: [Rex Totus]\nrealm: Plainland\ndynasty: Plain\n${names}`,
      'rulers/lone.yaml': 'name: Lone king\ndynasty: Plain\n',
      'rulers/bare.yaml': 'name: Bare king\n',
      'mints/whole.yaml': `name: Whole Town\narea: Plainshire\ncoordinates: "53.95, -1.08"\nnames: [{ name: Totum, to: 1300 }, { name: Totum }]\n${names}`,
      'mints/bare.yaml': 'name: Bare Town\n',
      'denominations/whole.yaml': `name: groat\nplural: groats\n${names}`,
    }),
  ).records,
);
const WHOLE: LinkedWhole = { page: 'https://example.org/', title: 'Coins', language: 'de', licence: 'https://example.org/terms' }; // prettier-ignore
const FREE: LinkedWhole = { ...WHOLE, licence: null };
const PART = { '@type': 'Collection', '@id': 'https://example.org/', name: 'Coins' };
const THAT = ['http://nomisma.org/id/that'];
const there = <T>(one: T | undefined): T => one ?? expect.fail('It is not there.');

test('a ruler is a thing with its names, its realm and dynasty', () => {
  expect(linkedRuler(there(rulers['whole']), 'r')).toEqual({
    '@context': CONTEXT, '@type': 'Thing', '@id': 'r', name: 'Whole king', alternateName: ['Rex Totus'], description: 'Plainland, Plain',
    sameAs: THAT, mainEntityOfPage: 'r',
  }); // prettier-ignore
  expect(linkedRuler(there(rulers['lone']), 'r')).toMatchObject({ description: 'Plain' });
  expect(Object.keys(linkedRuler(there(rulers['bare']), 'r')).sort()).toEqual(['@context', '@id', '@type', 'mainEntityOfPage', 'name']); // prettier-ignore
});

test('a mint is a place, where it stood and what it was called, each name once', () => {
  expect(linkedMint(there(mints['whole']), 'm')).toEqual({
    '@context': CONTEXT, '@type': ['Place', 'nmo:Mint'], '@id': 'm', name: 'Whole Town', alternateName: ['Totum'], sameAs: THAT,
    geo: { '@type': 'GeoCoordinates', latitude: 53.95, longitude: -1.08 }, containedInPlace: { '@type': 'Place', name: 'Plainshire' },
    mainEntityOfPage: 'm',
  }); // prettier-ignore
  expect(Object.keys(linkedMint(there(mints['bare']), 'm')).sort()).toEqual(['@context', '@id', '@type', 'mainEntityOfPage', 'name']); // prettier-ignore
});

test('a denomination is a term with its plural', () => {
  expect(linkedDenomination(there(denominations['whole']), 'd')).toEqual({
    '@context': CONTEXT, '@type': ['DefinedTerm', 'nmo:Denomination'], '@id': 'd', name: 'groat', alternateName: 'groats', sameAs: THAT,
  }); // prettier-ignore
});

test('a series of types has each under the broader one', () => {
  const types = new Map([['3', { broader: '', label: 'Class 3' }], ['3b', { broader: '3', label: 'Class 3b' }]]); // prettier-ignore
  const series = { fields: { title: 'Pence', note: 'A note.' }, types } as unknown as Parameters<
    typeof linkedSeries
  >[0];
  const at = { series: 's', type: (id: string) => `s/${id}` };
  const [head, first, second] = linkedSeries(series, at, WHOLE);
  expect(head).toEqual({
    '@context': CONTEXT, '@type': ['DefinedTermSet', 'nmo:TypeSeries'], '@id': 's', name: 'Pence', description: 'A note.', inLanguage: 'de',
    license: 'https://example.org/terms', isPartOf: PART,
  }); // prettier-ignore
  expect(linkedSeries(series, at, FREE)[0]).not.toHaveProperty('license');
  expect(first).not.toHaveProperty('skos:broader');
  expect(second).toEqual({
    '@context': CONTEXT, '@type': ['DefinedTerm', 'nmo:TypeSeriesItem', 'skos:Concept'], '@id': 's/3b', name: 'Class 3b', termCode: '3b',
    inDefinedTermSet: { '@id': 's' }, 'skos:prefLabel': 'Class 3b', 'dcterms:source': { '@id': 's' }, 'skos:broader': { '@id': 's/3' },
    mainEntityOfPage: 's/3b',
  }); // prettier-ignore
  // What has no label goes by its number.
  expect(linkedType({ types: new Map() }, '9', at)).toMatchObject({ name: '9', 'skos:prefLabel': '9' }); // prettier-ignore
});

test('a set is the pieces that are in it, with its rule and a picture', () => {
  const set = { page: 'g', title: 'A penny of each', rule: 'One of each.', picture: 'p.jpg', pieces: [{ page: 'a', title: 'A' }] }; // prettier-ignore
  expect(linkedSet(set, WHOLE)).toEqual({
    '@context': CONTEXT, '@type': 'Collection', '@id': 'g', url: 'g', name: 'A penny of each', description: 'One of each.', image: 'p.jpg',
    inLanguage: 'de', license: 'https://example.org/terms', collectionSize: 1, hasPart: [{ '@type': 'VisualArtwork', '@id': 'a', name: 'A' }],
    isPartOf: PART,
  }); // prettier-ignore
  const bare = linkedSet({ ...set, rule: null, picture: null }, FREE);
  for (const left of ['description', 'image', 'license']) expect(bare).not.toHaveProperty(left);
});

test('the catalogue as a whole says whose it is, how many are in it, and where its data can be had', () => {
  const data = { page: 'x', title: 'Data', description: 'All.', files: [{ address: 'x.csv', format: 'text/csv' }] };
  const said = { about: 'About it.', keeper: 'K.', count: 7, data };
  expect(linkedHome(WHOLE, said)).toEqual({
    '@context': CONTEXT, '@type': 'Collection', '@id': 'https://example.org/', url: 'https://example.org/', name: 'Coins',
    description: 'About it.', creditText: 'K.', inLanguage: 'de', license: 'https://example.org/terms', collectionSize: 7,
    subjectOf: {
      '@type': 'Dataset', '@id': 'x', url: 'x', name: 'Data', description: 'All.', license: 'https://example.org/terms',
      distribution: [{ '@type': 'DataDownload', contentUrl: 'x.csv', encodingFormat: 'text/csv' }],
    },
  }); // prettier-ignore
  const free = linkedHome(FREE, { ...said, about: null }) as { readonly subjectOf: object };
  for (const left of ['description', 'license']) expect(free).not.toHaveProperty(left);
  expect(free.subjectOf).not.toHaveProperty('license');
});

test('several records in one file have their words once', () => {
  expect(linkedGraph([{ '@context': CONTEXT, '@id': 'a' }, { '@context': CONTEXT, '@id': 'b' }])).toEqual({
    '@context': CONTEXT,
    '@graph': [{ '@id': 'a' }, { '@id': 'b' }],
  }); // prettier-ignore
});
