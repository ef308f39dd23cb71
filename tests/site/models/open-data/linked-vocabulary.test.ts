import { readFile } from 'node:fs/promises';
import jsonld from 'jsonld';
import type { Options } from 'jsonld';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Cabinet } from '../../../../src/site/cabinet.ts';
import { linkedWhole } from '../../../../src/site/models/open-data/linked-lists.ts';
import { pieceFile } from '../../../../src/site/models/open-data/piece-file.ts';
import { wholeCabinet } from '../../whole-cabinet.ts';

/** The types and properties of schema.org as its release 30.0 has them (25 March 2026; CC BY-SA 3.0), trimmed: see the file. */
type Vocabulary = {
  readonly parents: Readonly<Record<string, readonly string[]>>;
  readonly properties: Readonly<Record<string, { readonly of: readonly string[]; readonly is: readonly string[] }>>;
  readonly context: Readonly<Record<string, unknown>>;
};
type Node = { readonly '@id'?: string; readonly '@type'?: readonly string[]; readonly [property: string]: unknown };

/**
 * Terms of Nomisma's ontology (nomisma.org/ontology) that are used here, by where Nomisma itself or those who publish with it use
 * them; a copy of the ontology was not to be had.
 */
const NOMISMA = new Set([
  // Nomisma.org, How to Contribute Data, the model of physical coins: weights and diameters as xsd:decimal, axes as xsd:integer.
  'NumismaticObject', 'hasTypeSeriesItem', 'hasAxis', 'hasDiameter', 'hasWeight', 'hasObverse', 'hasReverse',
  // Nomisma.org, its own list of properties and their classes for asking.
  'hasAuthority', 'hasStatedAuthority', 'hasIssuer', 'hasMint', 'hasDenomination', 'hasMaterial', 'Mint', 'Denomination',
  // Coinage of the Roman Republic Online and its sisters, a type as Turtle: with skos:Concept, skos:prefLabel and dcterms:source.
  'TypeSeriesItem', 'hasLegend',
  // Nomisma.org, its own list of classes for asking about a concept; its data have some twenty concepts of this class.
  'TypeSeries',
]); // prettier-ignore

let vocabulary: Vocabulary;
let whole: object;
let demo: Cabinet;
beforeAll(async () => {
  vocabulary = JSON.parse(await readFile('tests/published/schema-org.json', 'utf8')) as Vocabulary;
  demo = await wholeCabinet('content');
  whole = linkedWhole(demo);
}, 120_000);

/** Expands linked data with contexts of this folder alone; the network is never asked. */
async function expanded(record: object, safe = true): Promise<readonly Node[]> {
  const documentLoader = (url: string) => {
    if (url !== 'https://schema.org') throw new Error(`${url} is not here`);
    const terms = { schema: 'http://schema.org/', ...vocabulary.context };
    return Promise.resolve({ contextUrl: undefined, documentUrl: url, document: { '@context': terms } });
  };
  // What no context knows is an error and not left out in silence.
  const options = { documentLoader, safe } as Options.Expand;
  return (await jsonld.expand(record, options)) as unknown as readonly Node[];
}

const SCHEMA = 'http://schema.org/';
const SKOS = 'http://www.w3.org/2004/02/skos/core#';
const OTHERS = [
  `${SKOS}broader`,
  `${SKOS}prefLabel`,
  'http://purl.org/dc/terms/date',
  'http://purl.org/dc/terms/source',
];
const nameIn = (iri: string, space: string): string | null => (iri.startsWith(space) ? iri.slice(space.length) : null);

/** A type with everything it is a kind of. */
function kindsOf(type: string): readonly string[] {
  return [type, ...(vocabulary.parents[type] ?? []).flatMap(kindsOf)];
}

/** What is wrong with a node and all within it: a term that is not there, or a property that its subject or value cannot have. */
function faultsOf(node: Node): readonly string[] {
  // A text or a number; whether it may stand where it does is asked by `fits`.
  if ('@value' in node) return [];
  const types = node['@type'] ?? [];
  const ours = types.flatMap((type) => nameIn(type, SCHEMA) ?? []);
  const kinds = new Set([...ours.flatMap(kindsOf), 'Thing']);
  const faults = types.flatMap((type) => {
    const [schema, nomisma] = [nameIn(type, SCHEMA), nameIn(type, 'http://nomisma.org/ontology#')];
    if (type === `${SKOS}Concept`) return [];
    const isKnown = schema !== null ? schema in vocabulary.parents : nomisma !== null && NOMISMA.has(nomisma);
    return isKnown ? [] : [`no type ${type}`];
  });
  for (const [property, values] of Object.entries(node)) {
    if (property.startsWith('@')) continue;
    const all = values as readonly Node[];
    faults.push(...all.flatMap(faultsOf));
    const nomisma = nameIn(property, 'http://nomisma.org/ontology#');
    if (nomisma !== null && !NOMISMA.has(nomisma)) faults.push(`no property ${property}`);
    const name = nameIn(property, SCHEMA);
    if (name === null) {
      if (nomisma === null && !OTHERS.includes(property)) faults.push(`no property ${property}`);
      continue;
    }
    const rule = vocabulary.properties[name];
    if (rule === undefined) faults.push(`no property ${name}`);
    // A node that says no type of ours (an authority of a coin) may be anything.
    else if (ours.length > 0 && !rule.of.some((kind) => kinds.has(kind))) faults.push(`${ours.join()} has no ${name}`);
    else faults.push(...all.filter((value) => !fits(value, rule.is)).map(() => `${name} is no such thing`));
  }
  return faults;
}

function fits(value: Node, wanted: readonly string[]): boolean {
  if ('@value' in value) {
    const isNumber = typeof value['@value'] === 'number';
    const plain = isNumber ? ['Number', 'Integer', 'Float'] : ['Text', 'URL', 'Date', 'DateTime', 'Time'];
    return wanted.some((kind) => plain.includes(kind));
  }
  const types = (value['@type'] ?? []).flatMap((type) => nameIn(type, SCHEMA) ?? []);
  if (types.length === 0) return wanted.some((kind) => !['Number', 'Integer', 'Boolean'].includes(kind));
  return types.flatMap(kindsOf).some((kind) => wanted.includes(kind));
}

const faultsIn = async (record: object): Promise<readonly string[]> => [
  ...new Set((await expanded(record)).flatMap(faultsOf)),
];

test('every record says only what schema.org and Nomisma have words for', { timeout: 60_000 }, async () => {
  expect(await faultsIn(whole)).toEqual([]);
});

test('the whole catalogue is there: pieces, rulers, mints, denominations, types, sets, exhibits, and itself', async () => {
  const nodes = await expanded(whole);
  const counted = (type: string): number => nodes.filter((node) => node['@type']?.includes(type) === true).length;
  expect(counted('http://nomisma.org/ontology#NumismaticObject')).toBe(demo.listed.length);
  expect(counted('http://nomisma.org/ontology#Mint')).toBe(Object.keys(demo.lists.mints).length);
  expect(counted('http://nomisma.org/ontology#Denomination')).toBe(Object.keys(demo.lists.denominations).length);
  expect(counted('http://nomisma.org/ontology#TypeSeriesItem')).toBeGreaterThan(5);
  expect(counted('http://schema.org/Collection')).toBe(1 + demo.lists.sets.length + demo.lists.exhibits.length);
  const ids = nodes.map((node) => node['@id']);
  expect(new Set(ids).size).toBe(ids.length);
});

test('what a record points to within the catalogue is a record of it', async () => {
  const nodes = await expanded(whole);
  const ids = new Set(nodes.map((node) => node['@id']));
  const pointed = [
    ...JSON.stringify(nodes).matchAll(/"@id":"(https:\/\/example\.org\/(?:rulers|mints|types|pieces|sets)\/[^"]*)"/g),
  ];
  expect(pointed.length).toBeGreaterThan(100);
  const lost = pointed.map(([, id]) => id ?? '').filter((id) => !ids.has(id));
  expect([...new Set(lost)].filter((id) => !id.endsWith('.jpg'))).toEqual([]);
});

test('the member for our own pages is no statement, and the rest of a piece’s file expands', async () => {
  const [piece] = demo.listed;
  const nodes = await expanded(pieceFile(piece ?? expect.fail(), demo), false);
  expect(JSON.stringify(nodes)).not.toContain('compared');
  expect(nodes.flatMap(faultsOf)).toEqual([]);
});

test('measures have the types that Nomisma asks for', async () => {
  const nodes = await expanded(whole);
  const penny = nodes.find((node) => node['@id'] === 'https://example.org/pieces/york-penny-3b/');
  const xsd = 'http://www.w3.org/2001/XMLSchema#';
  // The demo's penny weighs 1.38 g and is 18.6 mm across, as its file says.
  expect(penny?.['http://nomisma.org/ontology#hasWeight']).toEqual([{ '@type': `${xsd}decimal`, '@value': '1.38' }]);
  expect(penny?.['http://nomisma.org/ontology#hasDiameter']).toEqual([{ '@type': `${xsd}decimal`, '@value': '18.6' }]);
  const [axis] = (penny?.['http://nomisma.org/ontology#hasAxis'] ?? []) as readonly Node[];
  expect(Number.isInteger(axis?.['@value'])).toBe(true);
});

test('nothing of it is an offer', () => {
  expect(JSON.stringify(whole)).not.toMatch(/Offer|[pP]rice/);
});

/** A record spoilt in one place, and what is said of it. */
describe('what would be refused', () => {
  const first = () => ({
    ...((whole as { '@graph': readonly Node[] })['@graph'][1] ?? {}),
    '@context': (whole as Node)['@context'],
  });
  test.for([
    ['a property of our own', { colour: 'red' }, 'no property colour'],
    ['a type of our own', { '@type': 'Coin' }, 'no type http://schema.org/Coin'],
    ['a property of another thing', { latitude: 54 }, 'VisualArtwork has no latitude'],
    [
      'a measure as a place',
      { locationCreated: { '@type': 'QuantitativeValue', value: 1 } },
      'locationCreated is no such thing',
    ],
    ['a word Nomisma has not', { 'nmo:hasColour': 'red' }, 'no property http://nomisma.org/ontology#hasColour'],
  ] as const)('%s', async ([, change, says]) => {
    expect(await faultsIn({ ...first(), ...change })).toContain(says);
  });

  test('a word that no context knows', async () => {
    await expect(expanded({ '@context': 'https://example.org/other', a: 1 })).rejects.toThrow();
  });
});
