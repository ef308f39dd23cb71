import { describe, expect, test } from 'vitest';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { exhibitJsonLd } from '../../src/publish/exhibit-json-ld.ts';
import type { LinkedExhibit } from '../../src/publish/exhibit-json-ld.ts';
import { sameAs } from '../../src/publish/identifiers.ts';
import { CONTEXT } from '../../src/publish/json-ld.ts';
import { licenceAddress } from '../../src/publish/licences.ts';
import { COLUMNS, csvwMetadata, piecesCsv } from '../../src/publish/pieces-csv.ts';
import type { PublicFacts } from '../../src/publish/public-facts.ts';
import { piecesSchema } from '../../src/publish/pieces-schema.ts';
import { escape, rssFeed } from '../../src/publish/xml.ts';

// The addresses of deeds as creativecommons.org states them.
test.for([
  ['CC0', 'http://creativecommons.org/publicdomain/zero/1.0/'],
  ['cc0 1.0', 'http://creativecommons.org/publicdomain/zero/1.0/'],
  ['Public domain', 'http://creativecommons.org/publicdomain/mark/1.0/'],
  ['PDM 1.0', 'http://creativecommons.org/publicdomain/mark/1.0/'],
  [' CC BY 4.0 ', 'http://creativecommons.org/licenses/by/4.0/'],
  ['CC-BY-SA-4.0', 'http://creativecommons.org/licenses/by-sa/4.0/'],
  ['CC BY-NC 4.0', 'http://creativecommons.org/licenses/by-nc/4.0/'],
  ['CC BY-NC-SA 4.0', 'http://creativecommons.org/licenses/by-nc-sa/4.0/'],
  ['CC BY-ND 4.0', 'http://creativecommons.org/licenses/by-nd/4.0/'],
  ['CC BY-NC-ND 4.0', 'http://creativecommons.org/licenses/by-nc-nd/4.0/'],
  ['CC BY 3.0', null],
  ['All rights reserved', null],
] as const)('the licence “%s” is known by %s', ([licence, address]) => {
  expect(licenceAddress(licence)).toBe(address);
});

// The addresses of entities as each catalogue states them in its own documentation.
test('a name elsewhere is an address; a catalogue that is not known gives none', () => {
  const names = { wikidata: 'Q57798', nomisma: 'edward_i', viaf: '88933692', geonames: '2633352', pleiades: '89170', other: 'x' };
  expect(sameAs(names)).toEqual([
    'http://www.wikidata.org/entity/Q57798',
    'http://nomisma.org/id/edward_i',
    'http://viaf.org/viaf/88933692',
    'https://sws.geonames.org/2633352/',
    'https://pleiades.stoa.org/places/89170',
  ]);
  expect(sameAs({ nomisma: 'a b/c' })).toEqual(['http://nomisma.org/id/a%20b%2Fc']);
  expect(sameAs(undefined)).toEqual([]);
}); // prettier-ignore

describe('an exhibit as linked data', () => {
  const WHOLE: LinkedExhibit = {
    page: 'https://example.org/exhibits/york/',
    title: 'Struck in York',
    scope: 'Pennies.',
    keeper: 'A. Keeper',
    language: 'en',
    licence: 'http://creativecommons.org/publicdomain/zero/1.0/',
    picture: 'https://example.org/york.jpg',
    pieces: [{ page: 'https://example.org/pieces/penny/', title: 'A penny', number: '0123' }],
    books: ['A plain book (1990)'],
    collection: { page: 'https://example.org/', title: 'Coins' },
  };
  const BARE: LinkedExhibit = { ...WHOLE, scope: null, keeper: null, licence: null, picture: null, books: [] };

  // The properties are those of schema.org’s Collection and CreativeWork.
  test('says what it is of, whose it is and what is in it', () => {
    expect(exhibitJsonLd(WHOLE)).toEqual({
      '@context': CONTEXT,
      '@type': 'Collection',
      '@id': WHOLE.page,
      url: WHOLE.page,
      name: 'Struck in York',
      abstract: 'Pennies.',
      creditText: 'A. Keeper',
      inLanguage: 'en',
      license: WHOLE.licence,
      image: WHOLE.picture,
      collectionSize: 1,
      hasPart: [
        { '@type': 'VisualArtwork', '@id': 'https://example.org/pieces/penny/', name: 'A penny', identifier: '0123' },
      ],
      citation: ['A plain book (1990)'],
      isPartOf: { '@type': 'Collection', '@id': 'https://example.org/', name: 'Coins' },
    });
  });

  test('names no keeper where it is shown without a name, and leaves out what there is not', () => {
    const said = Object.keys(exhibitJsonLd(BARE));
    for (const left of ['abstract', 'creditText', 'license', 'image', 'citation']) expect(said).not.toContain(left);
    expect(said).toHaveLength(Object.keys(exhibitJsonLd(WHOLE)).length - 5);
  });
});

describe('what pieces.csv is', () => {
  const ABOUT = { title: 'Coins', description: 'All of them.', page: 'https://example.org/', language: 'de', licence: 'https://example.org/terms' };
  type Described = { readonly tableSchema: { readonly lang: string; readonly primaryKey: string; readonly columns: readonly Record<string, unknown>[] } };
  // W3C, Metadata Vocabulary for Tabular Data (2015), §5.
  test('is told of the table as a whole', () => {
    expect(csvwMetadata(ABOUT)).toMatchObject({
      '@context': ['http://www.w3.org/ns/csvw', { '@language': 'en' }],
      url: 'pieces.csv',
      'dc:title': 'Coins',
      'dc:description': 'All of them.',
      'dc:source': { '@id': 'https://example.org/' },
      'dc:license': { '@id': 'https://example.org/terms' },
      dialect: { header: true, delimiter: ',', encoding: 'utf-8' },
      tableSchema: { lang: 'de', primaryKey: 'id' },
    });
    expect(csvwMetadata({ ...ABOUT, licence: null })).not.toHaveProperty('dc:license');
  });
  test('and of each column, which five of them every piece has, and that one is an address', () => {
    const { columns } = (csvwMetadata(ABOUT) as Described).tableSchema;
    expect(columns.map(({ titles }) => titles)).toEqual(COLUMNS);
    const having = (name: string, value: unknown) => columns.filter((one) => one[name] === value).map(({ titles }) => titles);
    expect(having('required', true).sort()).toEqual(['address', 'id', 'kind', 'number', 'title']);
    expect(having('datatype', 'anyURI')).toEqual(['address']);
    expect(having('datatype', 'string')).toHaveLength(COLUMNS.length - 1);
    // Each says what it holds, and not its heading again.
    for (const { titles, 'dc:description': says } of columns) expect([titles, undefined]).not.toContain(says);
  });
  test('a fact that is none, in whatever way, is an empty cell', () => {
    const facts = { id: 'penny', number: null, title: undefined, kind: 'coin' } as unknown as PublicFacts;
    const [, row = ''] = piecesCsv([facts]).split(/\r?\n/);
    expect(row).not.toMatch(/null|undefined/);
    expect(row.startsWith('penny,,,')).toBe(true);
  });
}); // prettier-ignore

// XML 1.0, §2.2 and 2.4.
test('what XML does not know is left out, and what it would read is written for it', () => {
  expect(escape('a\u0000\u0008b\uFFFE<c> & "d"\t\n')).toBe('ab&lt;c&gt; &amp; &quot;d&quot;\t\n');
});
test('a feed names its licence, or none', () => {
  const feed = { title: 'T', address: 'a', own: 'o', says: 's', language: 'en' };
  expect(rssFeed({ ...feed, licence: 'CC0 & more' }, [])).toContain('<copyright>CC0 &amp; more</copyright>');
  expect(rssFeed({ ...feed, licence: null }, [])).not.toContain('copyright');
});

// JSON Schema 2020-12, read by another program (ajv).
test('the schema of pieces.json wants what every piece has', () => {
  const isValid = new Ajv2020({ strict: false, validateFormats: false }).compile(piecesSchema());
  const piece = { id: 'a', address: 'https://example.org/a/', number: '1', title: 'A', kind: 'coin', status: 'kept', eras: {} };
  expect(isValid([piece]), JSON.stringify(isValid.errors)).toBe(true);
  for (const name of Object.keys(piece)) expect(isValid([{ ...piece, [name]: undefined }].map((one) => JSON.parse(JSON.stringify(one)) as object)), name).toBe(false);
  expect(isValid([{ ...piece, secret: 'x' }])).toBe(false);
}); // prettier-ignore
