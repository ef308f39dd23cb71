import { normalize, Traverse } from '@iiif/parser';
import { beforeAll, describe, expect, test } from 'vitest';
import type { FacePictures } from '../../../../src/photographs/cache/manifest.ts';
import type { Cabinet } from '../../../../src/site/cabinet.ts';
import { exhibitManifestOf } from '../../../../src/site/models/open-data/linked.ts';
import { piecesShown, shownExhibit } from '../../../../src/site/models/exhibit/shown-exhibit.ts';
import { wholeCabinet } from '../../whole-cabinet.ts';

const face = (name: string): FacePictures => ({
  face: name,
  webp: [{ file: `${name}.320.webp`, width: 320, height: 320 }],
  jpeg: { file: `${name}.jpg`, width: 1000, height: 990 },
  span: { width: 0.88, height: 0.88 },
  placed: 'found',
  sure: 0.9,
  doubt: null,
  faults: [],
  seems: null,
  seen: { piece: { width: 1060, height: 1050 }, photograph: { width: 1600, height: 1200 } },
});

type Item = { readonly id: string; readonly type: string; readonly items?: readonly Item[] };
type Manifest = Item & { readonly items: readonly Item[]; readonly structures: readonly Item[] };

let demo: Cabinet;
let manifest: Manifest;
beforeAll(async () => {
  const bare = await wholeCabinet('content');
  demo = {
    ...bare,
    photographs: Object.fromEntries(bare.listed.map(({ id }) => [id, [face('obverse'), face('reverse')]])),
  };
  const [exhibit] = demo.lists.exhibits;
  manifest = exhibitManifestOf(demo, exhibit ?? expect.fail('the demo has an exhibit')) as Manifest;
}, 120_000);

const within = (item: Item): readonly Item[] => [item, ...(item.items ?? []).flatMap(within)];

/** What a reader of IIIF says of a manifest (`@iiif/parser`, from the registry): the things it finds in it, by kind. */
function foundIn(given: object): Readonly<Record<string, readonly { readonly id: string }[]>> {
  const found: Record<string, { readonly id: string }[]> = {};
  const keep = (kind: string) => (one: unknown) => {
    (found[kind] ??= []).push(one as { id: string });
    return one as never;
  };
  new Traverse({
    manifest: [keep('manifest')],
    canvas: [keep('canvas')],
    range: [keep('range')],
    annotation: [keep('annotation')],
  }).traverseManifest(given as never);
  return found;
}

// IIIF Presentation API 3.0 (iiif.io/api/presentation/3.0): §5.2 Manifest, §5.3 Canvas, §5.4 Range.
describe('the manifest of an exhibit', () => {
  test('has a canvas for each face the exhibit shows, in its order, and a reader finds them all', () => {
    const [exhibit] = demo.lists.exhibits;
    const shown = piecesShown(shownExhibit(demo, exhibit ?? expect.fail()));
    const faces = shown.flatMap((one) => one.faces);
    expect(manifest.items.length).toBe(faces.length);
    expect(faces.length).toBeGreaterThan(30);
    const found = foundIn(manifest);
    expect(found['canvas']?.length).toBe(faces.length);
    expect(found['annotation']?.length).toBe(faces.length);
  });

  test('has a range for every case, and in it one for every group, which hold each canvas once', () => {
    const [exhibit] = demo.lists.exhibits;
    const { cases } = shownExhibit(demo, exhibit ?? expect.fail());
    expect(manifest.structures.map(({ type }) => type)).toEqual(cases.map(() => 'Range'));
    expect(manifest.structures.map(({ items }) => items?.length)).toEqual(cases.map(({ groups }) => groups.length));
    const told = manifest.structures
      .flatMap(within)
      .filter(({ type }) => type === 'Canvas')
      .map(({ id }) => id);
    expect(told).toEqual(manifest.items.map(({ id }) => id));
  });

  test('gives every canvas, range and annotation an address of its own', () => {
    const ids = [...manifest.items, ...manifest.structures]
      .flatMap(within)
      .filter(({ type }) => type !== 'Image')
      .map(({ id }) => id);
    const own = ids.filter((id, at) => ids.indexOf(id) === at);
    // A canvas is named once where it stands and once in its range.
    expect(ids.length - own.length).toBe(manifest.items.length);
    expect(own.filter((id) => !/^https:\/\/example\.org\/data\/iiif\/exhibits\/[a-z0-9/-]+$/.test(id))).toEqual([]);
  });

  test('is taken apart by a reader of IIIF without anything left unknown', () => {
    const { entities } = normalize(structuredClone(manifest)) as unknown as {
      readonly entities: Readonly<Record<string, Readonly<Record<string, Item>>>>;
    };
    expect(Object.keys(entities['Canvas'] ?? {}).length).toBe(manifest.items.length);
    expect(
      Object.values(entities['Range'] ?? {}).filter(
        ({ type, items }) => type === 'Range' && (items ?? []).length === 0,
      ),
    ).toEqual([]);
  });

  // Presentation API 3.0 §4.1: a text that is of no one language is under `none`.
  test('says of each text in which language it is', () => {
    const german = (language: string): Cabinet => ({
      ...demo,
      lists: { ...demo.lists, cabinet: { ...demo.lists.cabinet, language } },
    });
    const [exhibit] = demo.lists.exhibits;
    const languagesIn = (cabinet: Cabinet): readonly string[] => {
      const said = JSON.stringify(exhibitManifestOf(cabinet, exhibit ?? expect.fail()));
      const all = [...said.matchAll(/"(\w+)":\{"([\w-]+)":\["/g)].map(
        ([, name, language]) => `${name ?? ''} ${language ?? ''}`,
      );
      return [...new Set(all)].sort();
    };
    // Titles, scope and groups are the keeper's; “Case 1: …”, “…, obverse” and what a picture shows have words of ours in them.
    expect(languagesIn(german('de'))).toEqual([
      'label de',
      'label en',
      'label none',
      'summary de',
      'summary none',
      'value none',
    ]);
    expect(languagesIn(german('en-GB'))).toEqual(['label en', 'label en-GB', 'summary en-GB', 'value none']);
  });

  test('is none where nothing was photographed', () => {
    const [exhibit] = demo.lists.exhibits;
    expect(exhibitManifestOf({ ...demo, photographs: {} }, exhibit ?? expect.fail())).toBeNull();
  });

  test('a canvas that is lost from it is missed', () => {
    const spoilt = { ...manifest, items: manifest.items.slice(1) };
    expect(foundIn(spoilt)['canvas']?.length).toBe(manifest.items.length - 1);
    const told = spoilt.structures
      .flatMap(within)
      .filter(({ type }) => type === 'Canvas')
      .map(({ id }) => id);
    expect(told).not.toEqual(spoilt.items.map(({ id }) => id));
  });
});
