import { describe, expect, test } from 'vitest';
import { linkRecords } from '../../src/catalogue/link.ts';
import { readCabinet } from '../../src/catalogue/read-cabinet.ts';
import { CONTEXT, jsonLd } from '../../src/publish/json-ld.ts';
import { publicPieces } from '../../src/publish/public-piece.ts';
import type { PublicPiece } from '../../src/publish/public-piece.ts';
import { changed, markedCabinet } from '../catalogue/small-cabinet.ts';

const FULL = `---
number: "0099"
title: A full piece
kind: coin
ruler: plain-king
issuer: A town
mint: plain-town
makers: [{ name: Davi, role: moneyer }]
denomination: penny
date: c. 1280
references: [plain-book 12]
metal: silver
weight: 1.38 g
diameter: 17 x 18 mm
axis: 6h
obverse: { legend: REX, design: A bust }
reverse: { design: A cross }
---
`;
const folder = changed(await markedCabinet(), {
  'pieces/full/piece.md': FULL,
  'pieces/bare/piece.md': '---\nnumber: "0100"\ntitle: A bare piece\nkind: coin\n---\n',
  'pieces/blank/piece.md': '---\nnumber: "0101"\ntitle: B\nkind: unknown\nruler: none\nmint: unknown\ndenomination: none\ndate: unknown\nmetal: unknown\n---\n', // prettier-ignore
});
const pieces = publicPieces(linkRecords(readCabinet(folder).records));
const piece = (id: string) => pieces.find((one) => one.id === id) ?? expect.fail(id);
const AT = {
  page: 'https://example.org/pieces/full/',
  site: 'https://example.org/',
  pictures: ['https://example.org/a.jpg'],
  ruler: (id: string) => `https://example.org/rulers/${id}/`,
  mint: (id: string) => `https://example.org/mints/${id}/`,
  type: (series: string, id: string) => `https://example.org/types/${series}/${id}/`,
  sameAs: (list: string, id: string) => (list === 'denominations' ? [`http://nomisma.org/id/${id}`] : []),
};
const COLLECTION = { title: 'Coins', language: 'de', licence: 'https://example.org/terms' };
const said = (one: PublicPiece, collection: Parameters<typeof jsonLd>[2] = COLLECTION) =>
  jsonLd(one, AT, collection) as Readonly<Record<string, unknown>>;
const TYPE = { series: 's', id: '3b', label: '3b', seriesTitle: 'S', sure: 'certain' } as unknown as PublicPiece['types'][number]; // prettier-ignore

// schema.org VisualArtwork; nomisma.org/ontology; UN/CEFACT Recommendation 20 (GRM gram, MMT millimetre); id.loc.gov/datatypes/edtf.
test('a piece as linked data says each of its facts once, under the term for it', () => {
  expect(said({ ...piece('full'), types: [TYPE] })).toEqual({
    '@context': CONTEXT,
    '@type': ['VisualArtwork', 'nmo:NumismaticObject'],
    '@id': AT.page,
    url: AT.page,
    identifier: '0099',
    name: 'A full piece',
    description: 'A bust. A cross',
    inLanguage: 'de',
    license: 'https://example.org/terms',
    artform: 'coin',
    artMedium: 'silver',
    temporalCoverage: '1280',
    'dcterms:date': { '@type': 'edtf:EDTF', '@value': '1280~' },
    locationCreated: { '@type': 'Place', '@id': 'https://example.org/mints/plain-town/', name: 'Plain Town' },
    creator: [{ '@type': 'Person', name: 'Davi', jobTitle: 'moneyer' }],
    weight: { '@type': 'QuantitativeValue', value: 1.38, unitCode: 'GRM' },
    width: { '@type': 'QuantitativeValue', value: 18, unitCode: 'MMT' },
    height: { '@type': 'QuantitativeValue', value: 17, unitCode: 'MMT' },
    citation: ['Writer 12'],
    image: AT.pictures,
    isPartOf: { '@type': 'Collection', '@id': AT.site, name: 'Coins' },
    'nmo:hasStatedAuthority': [{ '@id': 'https://example.org/rulers/plain-king/', name: 'Plain king' }],
    'nmo:hasAuthority': [{ '@id': 'https://example.org/rulers/plain-king/', name: 'Plain king' }],
    'nmo:hasIssuer': 'A town',
    'nmo:hasMint': { '@id': 'https://example.org/mints/plain-town/', name: 'Plain Town' },
    'nmo:hasDenomination': { name: 'penny', sameAs: ['http://nomisma.org/id/penny'] },
    'nmo:hasMaterial': 'silver',
    'nmo:hasTypeSeriesItem': [{ '@id': 'https://example.org/types/s/3b/' }],
    'nmo:hasAxis': 6,
    'nmo:hasWeight': { '@type': 'xsd:decimal', '@value': '1.38' },
    'nmo:hasObverse': { 'nmo:hasLegend': 'REX', description: 'A bust' },
    'nmo:hasReverse': { description: 'A cross' },
  });
  expect(CONTEXT[1]).toEqual({
    nmo: 'http://nomisma.org/ontology#',
    dcterms: 'http://purl.org/dc/terms/',
    edtf: 'http://id.loc.gov/datatypes/edtf/',
    skos: 'http://www.w3.org/2004/02/skos/core#',
    xsd: 'http://www.w3.org/2001/XMLSchema#',
    compared: null,
  });
});

describe('what is not known, not recorded or not there is not said', () => {
  test.for(['bare', 'blank'])('of a %s piece', (id) => {
    const facts = said(piece(id), { ...COLLECTION, licence: null });
    const rest = ['@context', '@type', '@id', 'url', 'identifier', 'name', 'inLanguage', 'image', 'isPartOf'];
    expect(Object.keys(facts).sort()).toEqual([...rest, ...(id === 'bare' ? ['artform'] : [])].sort());
  });
  test('a year of our era is also when it was made; a side without a legend or a design is none', () => {
    const dated = changed(folder, { 'pieces/full/piece.md': FULL.replace('c. 1280', '1281').replace('17 x 18 mm', '18 mm').replace('obverse: { legend: REX, design: A bust }\n', '') }); // prettier-ignore
    const [one] = publicPieces(linkRecords(readCabinet(dated).records)).filter(({ id }) => id === 'full');
    const facts = said(one ?? expect.fail('none'));
    expect(facts).toMatchObject({ dateCreated: '1281', description: 'A cross', 'nmo:hasDiameter': { '@value': '18' } });
    expect(facts).not.toHaveProperty('nmo:hasObverse');
  });
});

// The house rule: neither vocabulary has a word for "probably".
test.for([
  ['ruler', ['nmo:hasStatedAuthority', 'nmo:hasAuthority']],
  ['struck-for', ['nmo:hasAuthority']],
  ['issuer', ['nmo:hasIssuer']],
  ['mint', ['nmo:hasMint', 'locationCreated']],
  ['denomination', ['nmo:hasDenomination']],
  ['date', ['dcterms:date', 'temporalCoverage']],
  ['metal', ['artMedium', 'nmo:hasMaterial']],
  ['kind', ['artform']],
  ['makers', ['creator']],
  ['references', ['citation']],
] as const)('of what is not certain, the %s, nothing is stated: %j', ([fact, terms]) => {
  const sure = Object.keys(said(piece('full')));
  const doubtful = Object.keys(said({ ...piece('full'), sure: { [fact]: 'probable' } }));
  expect(sure.filter((term) => !doubtful.includes(term)).sort()).toEqual([...terms].sort());
});
test('a type in doubt, and the model of a counterfeit, are not its type; a counterfeit has no authority', () => {
  const probable = { ...TYPE, sure: 'probable' } as PublicPiece['types'][number];
  expect(said({ ...piece('full'), types: [probable] })).not.toHaveProperty('nmo:hasTypeSeriesItem');
  const fake = said({ ...piece('full'), kind: 'counterfeit', types: [TYPE] });
  for (const term of ['nmo:hasTypeSeriesItem', 'nmo:hasAuthority']) expect(fake).not.toHaveProperty(term);
  expect(fake).toHaveProperty('nmo:hasStatedAuthority');
});
