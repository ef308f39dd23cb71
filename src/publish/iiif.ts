import { formatDate } from '../core/dating/format-date.ts';
import { isBlank } from '../catalogue/schema/fields.ts';
import type { Certainty } from '../catalogue/schema/fields.ts';
import { licenceAddress } from './licences.ts';
import type { PublicPiece } from './public-piece.ts';

/** A picture of a piece as a manifest wants it; the address is absolute, lengths are pixels. */
export type IiifPicture = {
  readonly face: string;
  readonly address: string;
  /** The image service that gives it in tiles; null where there is none. */
  readonly service: string | null;
  readonly width: number;
  readonly height: number;
  /** Millimetres a pixel; null where the size of the piece is not recorded or it was not found in its photograph. */
  readonly scale: number | null;
  /** The smallest file of the same picture. */
  readonly thumbnail: { readonly address: string; readonly width: number; readonly height: number } | null;
  readonly alt: string;
  /** Whether those are the keeper's own words. */
  readonly hasOwnAlt: boolean;
  /** Who made it, and on what terms it may be used. */
  readonly by: string | null;
  readonly licence: string | null;
};

/** Absolute addresses: the manifest, the folder its parts are named under (ends with a slash), the piece's page and its linked record. */
export type IiifAddresses = {
  readonly manifest: string;
  readonly under: string;
  readonly page: string;
  readonly linked: string;
};

/**
 * A IIIF Presentation 3 manifest: one canvas a photographed face. Source: iiif.io/api/presentation/3.0.
 * `words` name the facts and are English; `language` is that of the cabinet's texts. The scale of a canvas is given by the
 * Physical Dimensions service (iiif.io/api/annex/services, version 1).
 */
export function iiifManifest(
  piece: PublicPiece,
  at: IiifAddresses,
  pictures: readonly IiifPicture[],
  language: string,
  words: {
    readonly number: string;
    readonly date: string;
    readonly metal: string;
    readonly weight: string;
    readonly by: string;
    readonly record: string;
  },
): object {
  const speak = speakIn(language);
  const { says } = speak;
  const label = (text: string): object => ({ en: [text] });
  const facts: readonly (readonly [string, string | null])[] = [
    [words.number, piece.number],
    [
      words.date,
      typeof piece.date === 'string' || piece.date == null ? null : unsure(formatDate(piece.date), piece.sure.date),
    ],
    [words.metal, piece.metal === null || isBlank(piece.metal) ? null : unsure(piece.metal, piece.sure.metal)],
    [words.weight, textOf(piece.weight)],
  ];
  return {
    '@context': 'http://iiif.io/api/presentation/3/context.json',
    id: at.manifest,
    type: 'Manifest',
    label: says(piece.title),
    metadata: facts.flatMap(([name, value]) =>
      value === null ? [] : [{ label: label(name), value: { none: [value] } }],
    ),
    ...rightsOf(pictures),
    homepage: [{ id: at.page, type: 'Text', label: says(piece.title), format: 'text/html' }],
    seeAlso: [{ id: at.linked, type: 'Dataset', label: label(words.record), format: 'application/ld+json' }],
    ...thumbnailOf(pictures[0]),
    items: pictures.map((picture) => canvasOf(picture, `${at.under}${picture.face}`, speak, label(words.by))),
  };
}

/** A fact with how sure it is, where it is not certain: `1280–88 (probable)`. */
function unsure(text: string, how: Certainty = 'certain'): string {
  return how === 'certain' ? text : `${text} (${how})`;
}

/** An exhibit as a manifest wants it: its cases, their groups, and the faces each group shows. */
export type IiifExhibit = {
  readonly title: string;
  readonly scope: string | null;
  readonly cases: readonly {
    readonly label: string;
    readonly groups: readonly {
      readonly title: string;
      /** `name` tells the canvas from every other of the exhibit, in an address. */
      readonly faces: readonly { readonly name: string; readonly title: string; readonly picture: IiifPicture }[];
    }[];
  }[];
};

/**
 * A IIIF Presentation 3 manifest of an exhibit: a canvas for each face shown that was photographed, in the order of the exhibit,
 * and ranges (§5.4) for its cases and their groups. A case or group without a picture has no range, for a range must not be empty.
 */
export function exhibitManifest(
  exhibit: IiifExhibit,
  at: { readonly manifest: string; readonly under: string; readonly page: string },
  language: string,
  words: { readonly by: string },
): object {
  const speak = speakIn(language);
  const { says, mixed } = speak;
  const idOf = (name: string): string => `${at.under}${name}`;
  const groups = exhibit.cases.map(({ groups: all }) => all.filter(({ faces }) => faces.length > 0));
  const faces = groups.flat().flatMap((group) => group.faces);
  const range = (id: string, label: object, items: readonly object[]): object => ({ id, type: 'Range', label, items });
  const structures = exhibit.cases.flatMap(({ label }, number) => {
    const id = idOf(`case-${number + 1}`);
    const within = (groups[number] ?? []).map((group, index) =>
      range(
        `${id}/group-${index + 1}`,
        says(group.title),
        group.faces.map(({ name }) => ({ id: idOf(name), type: 'Canvas' })),
      ),
    );
    return within.length === 0 ? [] : [range(id, mixed(label), within)];
  });
  return {
    '@context': 'http://iiif.io/api/presentation/3/context.json',
    id: at.manifest,
    type: 'Manifest',
    label: says(exhibit.title),
    ...(exhibit.scope === null ? {} : { summary: says(exhibit.scope) }),
    ...rightsOf(faces.map(({ picture }) => picture)),
    homepage: [{ id: at.page, type: 'Text', label: says(exhibit.title), format: 'text/html' }],
    ...thumbnailOf(faces[0]?.picture),
    items: faces.map(({ name, title, picture }) => ({
      ...canvasOf(picture, idOf(name), speak, { en: [words.by] }),
      label: mixed(title),
    })),
    structures,
  };
}

/** The language of a text: the keeper's words; or the keeper's among words of ours, which is no one language where they are not English. */
function speakIn(language: string): Readonly<Record<'says' | 'mixed', (text: string) => object>> {
  const both = /^en(?:-|$)/.test(language) ? language : 'none';
  return { says: (text) => ({ [language]: [text] }), mixed: (text) => ({ [both]: [text] }) };
}

function canvasOf(picture: IiifPicture, id: string, speak: ReturnType<typeof speakIn>, credit: object): object {
  const { address, service, width, height } = picture;
  const tiled = service === null ? {} : { service: [{ id: service, type: 'ImageService3', profile: 'level0' }] };
  const annotation = {
    id: `${id}/page/picture`,
    type: 'Annotation',
    motivation: 'painting',
    target: id,
    body: { id: address, type: 'Image', format: 'image/jpeg', width, height, ...tiled },
  };
  return {
    id,
    type: 'Canvas',
    label: { en: [picture.face] },
    summary: (picture.hasOwnAlt ? speak.says : speak.mixed)(picture.alt),
    width,
    height,
    ...(picture.by === null ? {} : { metadata: [{ label: credit, value: { none: [picture.by] } }] }),
    ...thumbnailOf(picture),
    ...(picture.scale === null ? {} : { service: [physicalScale(picture.scale)] }),
    items: [{ id: `${id}/page`, type: 'AnnotationPage', items: [annotation] }],
  };
}

/**
 * What an image service says of itself: a folder of files under `id`, so level 0, which gives a picture whole and in these tiles.
 * Source: IIIF Image API 3.0 (iiif.io/api/image/3.0), §5.
 */
export function imageInfo(
  id: string,
  tiled: {
    readonly width: number;
    readonly height: number;
    readonly side: number;
    readonly scales: readonly number[];
  },
): object {
  const { width, height, side, scales } = tiled;
  return {
    '@context': 'http://iiif.io/api/image/3/context.json',
    id,
    type: 'ImageService3',
    protocol: 'http://iiif.io/api/image',
    profile: 'level0',
    width,
    height,
    tiles: [{ width: side, scaleFactors: scales }],
  };
}

function thumbnailOf(picture: IiifPicture | undefined): { readonly thumbnail?: readonly object[] } {
  if (picture === undefined || picture.thumbnail === null) return {};
  const { address, width, height } = picture.thumbnail;
  return { thumbnail: [{ id: address, type: 'Image', format: 'image/webp', width, height }] };
}

function physicalScale(millimetres: number): object {
  return {
    '@context': 'http://iiif.io/api/annex/services/physdim/1/context.json',
    '@id': 'http://iiif.io/api/annex/services/physdim/1/context.json',
    '@type': 'PhysicalDimensions',
    profile: 'http://iiif.io/api/annex/services/physdim',
    physicalScale: Number(millimetres.toPrecision(4)),
    physicalUnits: 'mm',
  };
}

/** The address of the licence, when all pictures share one that has an address. */
function rightsOf(pictures: readonly IiifPicture[]): { readonly rights?: string } {
  const licences = new Set(pictures.map(({ licence }) => licence ?? ''));
  const [licence = ''] = licences;
  const rights = licences.size === 1 ? licenceAddress(licence) : null;
  return rights === null ? {} : { rights };
}

function textOf(value: { readonly text: string } | string | null | undefined): string | null {
  return typeof value === 'object' && value !== null ? value.text : null;
}
