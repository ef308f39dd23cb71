import { expect, test } from 'vitest';
import { linkRecords } from '../../src/catalogue/link.ts';
import { readCabinet } from '../../src/catalogue/read-cabinet.ts';
import { exhibitManifest, iiifManifest, imageInfo } from '../../src/publish/iiif.ts';
import type { IiifPicture } from '../../src/publish/iiif.ts';
import { publicPieces } from '../../src/publish/public-piece.ts';
import { changed, markedCabinet } from '../catalogue/small-cabinet.ts';

const WORDS = {
  number: 'Number',
  date: 'Date',
  metal: 'Metal',
  weight: 'Weight',
  by: 'Photograph',
  record: 'Linked record',
};
const AT = {
  manifest: 'https://x.example/m.json',
  under: 'https://x.example/m/',
  page: 'https://x.example/p/',
  linked: 'https://x.example/p.jsonld',
};
const PICTURE: IiifPicture = {
  face: 'obverse',
  address: 'https://x.example/o.jpg',
  service: 'https://x.example/o',
  width: 1000,
  height: 990,
  scale: 0.0182345,
  thumbnail: { address: 'https://x.example/o.webp', width: 320, height: 317 },
  alt: 'Its face',
  hasOwnAlt: true,
  by: 'K',
  licence: 'CC0-1.0',
};
const PLAIN: IiifPicture = {
  ...PICTURE,
  face: 'reverse',
  service: null,
  scale: null,
  thumbnail: null,
  by: null,
  licence: null,
  hasOwnAlt: false,
};
const CC0 = 'http://creativecommons.org/publicdomain/zero/1.0/';

async function pieceOf(text: string) {
  const folder = changed(await markedCabinet(), {
    'pieces/x/piece.md': `---\nnumber: "0099"\ntitle: A piece\nkind: coin\n${text}---\n`,
  });
  return publicPieces(linkRecords(readCabinet(folder).records)).find(({ id }) => id === 'x') ?? expect.fail();
}
type Manifest = { readonly metadata: unknown; readonly items: readonly unknown[] };

// IIIF Presentation API 3.0 (iiif.io/api/presentation/3.0), §3 and §5; Physical Dimensions, version 1 (iiif.io/api/annex/services).
test('the manifest of a piece says what it is, whose pages tell more, and has a canvas for each picture', async () => {
  const piece = await pieceOf('date: 1280/1288\nmetal: silver\nweight: 1.38 g\nsure: { date: probable }\n');
  const annotation = (face: string, tiled: object) => [
    {
      id: `${AT.under}${face}/page`,
      type: 'AnnotationPage',
      items: [
        {
          id: `${AT.under}${face}/page/picture`,
          type: 'Annotation',
          motivation: 'painting',
          target: `${AT.under}${face}`,
          body: { id: PICTURE.address, type: 'Image', format: 'image/jpeg', width: 1000, height: 990, ...tiled },
        },
      ],
    },
  ];
  const thumbnail = [{ id: 'https://x.example/o.webp', type: 'Image', format: 'image/webp', width: 320, height: 317 }];
  expect(iiifManifest(piece, AT, [PICTURE, PLAIN], 'de', WORDS)).toEqual({
    '@context': 'http://iiif.io/api/presentation/3/context.json',
    id: AT.manifest,
    type: 'Manifest',
    label: { de: ['A piece'] },
    metadata: [
      { label: { en: ['Number'] }, value: { none: ['0099'] } },
      { label: { en: ['Date'] }, value: { none: [expect.stringMatching(/^1280.*1?2?88 \(probable\)$/)] } },
      { label: { en: ['Metal'] }, value: { none: ['silver'] } },
      { label: { en: ['Weight'] }, value: { none: ['1.38 g'] } },
    ],
    homepage: [{ id: AT.page, type: 'Text', label: { de: ['A piece'] }, format: 'text/html' }],
    seeAlso: [{ id: AT.linked, type: 'Dataset', label: { en: ['Linked record'] }, format: 'application/ld+json' }],
    thumbnail,
    items: [
      {
        id: `${AT.under}obverse`,
        type: 'Canvas',
        label: { en: ['obverse'] },
        summary: { de: ['Its face'] },
        width: 1000,
        height: 990,
        metadata: [{ label: { en: ['Photograph'] }, value: { none: ['K'] } }],
        thumbnail,
        service: [
          {
            '@context': 'http://iiif.io/api/annex/services/physdim/1/context.json',
            '@id': 'http://iiif.io/api/annex/services/physdim/1/context.json',
            '@type': 'PhysicalDimensions',
            profile: 'http://iiif.io/api/annex/services/physdim',
            physicalScale: 0.01823,
            physicalUnits: 'mm',
          },
        ],
        items: annotation('obverse', {
          service: [{ id: 'https://x.example/o', type: 'ImageService3', profile: 'level0' }],
        }),
      },
      {
        // Words of ours among the keeper's are of no one language.
        id: `${AT.under}reverse`,
        type: 'Canvas',
        label: { en: ['reverse'] },
        summary: { none: ['Its face'] },
        width: 1000,
        height: 990,
        items: annotation('reverse', {}),
      },
    ],
  });
});

test('what is not known is not told, and rights are told where all pictures share them', async () => {
  const bare = iiifManifest(await pieceOf('metal: unknown\ndate: unknown\n'), AT, [], 'en-GB', WORDS) as Manifest;
  expect(Object.keys(bare)).toEqual(['@context', 'id', 'type', 'label', 'metadata', 'homepage', 'seeAlso', 'items']);
  expect(bare.metadata).toEqual([{ label: { en: ['Number'] }, value: { none: ['0099'] } }]);
  const of = async (...pictures: readonly IiifPicture[]) =>
    iiifManifest(await pieceOf(''), AT, pictures, 'en', WORDS) as { readonly rights?: string };
  expect((await of(PICTURE, PICTURE)).rights).toBe(CC0);
  expect((await of(PICTURE, { ...PICTURE, licence: 'CC-BY-4.0' })).rights).toBeUndefined();
});

test('an exhibit has ranges for its cases and groups that show something', () => {
  const faces = [{ name: 'x/obverse', title: 'A piece, obverse', picture: PICTURE }];
  const cases = [
    {
      label: 'Case 1',
      groups: [
        { title: 'First', faces },
        { title: 'None', faces: [] },
      ],
    },
    { label: 'Case 2', groups: [{ title: 'None', faces: [] }] },
  ];
  const made = exhibitManifest({ title: 'Show', scope: 'What', cases }, AT, 'de', { by: 'Photograph' });
  expect(made).toMatchObject({
    '@context': 'http://iiif.io/api/presentation/3/context.json',
    id: AT.manifest,
    homepage: [{ id: AT.page, type: 'Text', label: { de: ['Show'] }, format: 'text/html' }],
    thumbnail: [{ id: PICTURE.thumbnail?.address }],
    label: { de: ['Show'] },
    summary: { de: ['What'] },
    rights: CC0,
    items: [{ id: `${AT.under}x/obverse`, label: { none: ['A piece, obverse'] } }],
    structures: [
      {
        id: `${AT.under}case-1`,
        type: 'Range',
        label: { none: ['Case 1'] },
        items: [
          {
            id: `${AT.under}case-1/group-1`,
            type: 'Range',
            label: { de: ['First'] },
            items: [{ id: `${AT.under}x/obverse`, type: 'Canvas' }],
          },
        ],
      },
    ],
  });
  expect((made as { readonly structures: readonly unknown[] }).structures).toHaveLength(1);
  expect(exhibitManifest({ title: 'Show', scope: null, cases: [] }, AT, 'en', { by: 'x' })).not.toHaveProperty(
    'summary',
  );
});

// IIIF Image API 3.0, §5.
test('a service says of itself how large it is and in which tiles it comes', () => {
  expect(imageInfo('https://x.example/o', { width: 1000, height: 990, side: 256, scales: [1, 2, 4] })).toEqual({
    '@context': 'http://iiif.io/api/image/3/context.json',
    id: 'https://x.example/o',
    type: 'ImageService3',
    protocol: 'http://iiif.io/api/image',
    profile: 'level0',
    width: 1000,
    height: 990,
    tiles: [{ width: 256, scaleFactors: [1, 2, 4] }],
  });
});
