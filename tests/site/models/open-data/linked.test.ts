import { beforeAll, describe, expect, test } from 'vitest';
import type { FacePictures } from '../../../../src/photographs/cache/manifest.ts';
import type { Cabinet } from '../../../../src/site/cabinet.ts';
import { linkedData, manifestOf, withManifest } from '../../../../src/site/models/open-data/linked.ts';
import { wholeCabinet } from '../../whole-cabinet.ts';

const PIECE = 'york-penny-3b';
const face = (name: string): FacePictures => ({
  face: name,
  webp: [{ file: `${name}.320.webp`, width: 320, height: 320 }],
  jpeg: { file: `${name}.1200.jpg`, width: 1200, height: 1190 },
  span: { width: 0.88, height: 0.88 },
  placed: 'found',
  sure: 0.9,
  doubt: null,
  faults: [],
  seems: null,
  seen: { piece: { width: 1060, height: 1050 }, photograph: { width: 1600, height: 1200 } },
});

let cabinet: Cabinet;
beforeAll(async () => {
  const demo = await wholeCabinet('content', { [PIECE]: [face('obverse'), face('reverse')] });
  const said = { alt: 'A crowned head.', by: 'A draughtsman', licence: 'CC0-1.0' };
  const pictures = ['obverse', 'reverse'].map((name) => ({ face: name, ...said }));
  cabinet = { ...demo, listed: demo.listed.map((one) => (one.id === PIECE ? { ...one, pictures } : one)) };
});
const piece = (id: string) => cabinet.listed.find((one) => one.id === id) ?? expect.fail(`no piece ${id}`);

type Canvas = {
  readonly id: string;
  readonly type: string;
  readonly width: number;
  readonly height: number;
  readonly items: readonly [
    {
      readonly id: string;
      readonly type: string;
      readonly items: readonly [
        {
          readonly id: string;
          readonly type: string;
          readonly motivation: string;
          readonly target: string;
          readonly body: { readonly id: string; readonly type: string; readonly format: string };
        },
      ];
    },
  ];
};
type Manifest = {
  readonly '@context': string;
  readonly id: string;
  readonly type: string;
  readonly label: unknown;
  readonly rights?: string;
  readonly items: readonly Canvas[];
};

// What follows is required by IIIF Presentation API 3.0, §§ 3–5 (iiif.io/api/presentation/3.0).
describe('a IIIF manifest', () => {
  const manifest = (): Manifest => manifestOf(cabinet, piece(PIECE)) as Manifest;

  test('names its context, type and label', () => {
    expect(manifest()).toMatchObject({
      '@context': 'http://iiif.io/api/presentation/3/context.json',
      type: 'Manifest',
      label: { en: [piece(PIECE).title] },
    });
  });

  test('stands at its own id', () => {
    expect(manifest().id).toBe(`https://example.org/data/iiif/${PIECE}/manifest.json`);
  });

  test('has a canvas for each photographed face, as large as the picture painted on it', () => {
    expect(manifest().items.map(({ type, width, height }) => [type, width, height])).toEqual([
      ['Canvas', 1200, 1190],
      ['Canvas', 1200, 1190],
    ]);
  });

  test('paints the canvas it is in', () => {
    for (const canvas of manifest().items) {
      const [page] = canvas.items;
      expect(page.type).toBe('AnnotationPage');
      expect(page.items[0]).toMatchObject({ type: 'Annotation', motivation: 'painting', target: canvas.id });
      expect(page.items[0].body).toMatchObject({ type: 'Image', format: 'image/jpeg' });
    }
  });

  test('gives everything an address of its own, without fragment or query', () => {
    const ids = [...JSON.stringify(manifest()).matchAll(/"id":"([^"]+)"/g)].map(([, id]) => id ?? '');
    expect(ids.filter((id) => !/^https:\/\/example\.org\/[a-z0-9./-]+$/.test(id))).toEqual([]);
    const own = ids.filter((id) => id.includes('/data/iiif/'));
    expect(new Set(own).size).toBe(own.length);
  });

  // IIIF, Physical Dimensions service: the scale is what a pixel measures. The piece fills 88 per cent of 1,200 pixels.
  test('says how many millimetres a pixel of the canvas is', () => {
    const size = piece(PIECE).size;
    if (size === null || typeof size === 'string') throw new Error('the piece has a diameter');
    const [first] = manifest().items as unknown as readonly [{ service: readonly [{ physicalScale: number }] }];
    const across = first.service[0].physicalScale * 1200 * 0.88;
    expect(Math.abs(across - 18.6)).toBeLessThan(0.3);
  });

  test('has no scale where the piece was not found in its photograph', () => {
    const whole = { ...face('obverse'), placed: 'whole' as const };
    const unsure = { ...cabinet, photographs: { [PIECE]: [whole] } };
    expect(JSON.stringify(manifestOf(unsure, piece(PIECE)))).not.toContain('physicalScale');
  });

  test('gives the licence by its address', () => {
    expect(manifest().rights).toBe('http://creativecommons.org/publicdomain/zero/1.0/');
  });

  test('is not made where there is nothing to show', () => {
    expect(withManifest(cabinet).map(({ id }) => id)).toEqual([PIECE]);
    expect(manifestOf(cabinet, piece('york-archbishop-penny'))).toBeNull();
  });
});

describe('linked data', () => {
  test('names the piece, its page, its pictures and the catalogue it is part of', () => {
    expect(linkedData(cabinet, piece(PIECE))).toMatchObject({
      '@id': `https://example.org/pieces/${PIECE}/`,
      identifier: piece(PIECE).number,
      image: [
        `https://example.org/photographs/${PIECE}/obverse.1200.jpg`,
        `https://example.org/photographs/${PIECE}/reverse.1200.jpg`,
      ],
      isPartOf: { '@id': 'https://example.org/' },
    });
  });

  // UN/CEFACT Recommendation 20: GRM gram, MMT millimetre.
  test('gives measures with the unit codes of UN/CEFACT', () => {
    expect(linkedData(cabinet, piece(PIECE))).toMatchObject({
      weight: { '@type': 'QuantitativeValue', unitCode: 'GRM' },
      width: { '@type': 'QuantitativeValue', unitCode: 'MMT' },
    });
  });

  type Linked = Readonly<Record<string, readonly { readonly '@id': string; readonly sameAs?: readonly string[] }[]>>;
  const authorities = (id: string, property: string): readonly string[] =>
    ((linkedData(cabinet, piece(id)) as Linked)[property] ?? []).map((ruler) => ruler['@id'].split('/').at(-2) ?? '');

  // Nomisma's ontology: the stated authority need not be the real authority behind the object. The rows are read from the pieces:
  // short cross pennies name Henry whoever reigned (common knowledge of the series), posthumous coins name the dead.
  test.for([
    ['short-cross-john-york', ['henry-ii'], ['john']],
    ['short-cross-richard-york', ['henry-ii'], ['richard-i']],
    ['henry-viii-posthumous-groat', ['henry-viii'], ['edward-vi']],
    ['york-penny-3b', ['edward-i'], ['edward-i']],
  ] as const)('%s states %s and was struck for %s', ([id, stated, actual]) => {
    expect(authorities(id, 'nmo:hasStatedAuthority')).toEqual(stated);
    expect(authorities(id, 'nmo:hasAuthority')).toEqual(actual);
  });

  test('names a ruler by address, with the same ruler in other catalogues', () => {
    const [ruler] = (linkedData(cabinet, piece(PIECE)) as Linked)['nmo:hasStatedAuthority'] ?? [];
    expect(ruler).toMatchObject({
      '@id': 'https://example.org/rulers/edward-i/',
      sameAs: ['http://www.wikidata.org/entity/Q57798'],
    });
  });

  test('states nothing that the keeper is not certain of', () => {
    const doubtful = { ...piece(PIECE), sure: { mint: 'probable', ruler: 'possible' } } as const;
    const linked = linkedData(cabinet, doubtful);
    expect(linked).not.toHaveProperty('nmo:hasMint');
    expect(linked).not.toHaveProperty('locationCreated');
    expect(linked).not.toHaveProperty('nmo:hasStatedAuthority');
  });

  test('says of a counterfeit whose name it bears, and not that he had it struck', () => {
    const linked = linkedData(cabinet, piece('edward-i-counterfeit'));
    expect(linked).toHaveProperty('nmo:hasStatedAuthority');
    expect(linked).not.toHaveProperty('nmo:hasAuthority');
  });

  test('is no offer, and says nothing of price', () => {
    for (const one of cabinet.listed) expect(JSON.stringify(linkedData(cabinet, one))).not.toMatch(/Offer|price/i);
  });
});
