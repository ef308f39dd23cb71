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

  test('paints the canvas it stands in', () => {
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
});
