import { isBlank } from '../catalogue/schema/fields.ts';
import type { PublicPiece } from './public-piece.ts';

/** A picture of a piece as a manifest wants it; the address is absolute, lengths are pixels. */
export type IiifPicture = {
  readonly face: string;
  readonly address: string;
  readonly width: number;
  readonly height: number;
  readonly alt: string;
  /** Who made it, and on what terms it may be used. */
  readonly by: string | null;
  readonly licence: string | null;
};

/** Absolute addresses: the manifest, the folder its parts are named under (ends with a slash), and the piece's page. */
export type IiifAddresses = { readonly manifest: string; readonly under: string; readonly page: string };

/** Licences whose address the standard accepts. Source: creativecommons.org and rightsstatements.org, as IIIF asks. */
const RIGHTS: readonly (readonly [RegExp, string])[] = [
  [/^CC0(-1\.0)?$/i, 'http://creativecommons.org/publicdomain/zero/1.0/'],
  [/^CC[ -]BY[ -]4\.0$/i, 'http://creativecommons.org/licenses/by/4.0/'],
  [/^CC[ -]BY-SA[ -]4\.0$/i, 'http://creativecommons.org/licenses/by-sa/4.0/'],
  [/^CC[ -]BY-NC[ -]4\.0$/i, 'http://creativecommons.org/licenses/by-nc/4.0/'],
  [/^CC[ -]BY-NC-SA[ -]4\.0$/i, 'http://creativecommons.org/licenses/by-nc-sa/4.0/'],
];

/**
 * A IIIF Presentation 3 manifest: one canvas a photographed face. Source: iiif.io/api/presentation/3.0.
 * `words` name the facts; `language` is that of the cabinet's texts.
 */
export function iiifManifest(
  piece: PublicPiece,
  at: IiifAddresses,
  pictures: readonly IiifPicture[],
  language: string,
  words: { readonly number: string; readonly date: string; readonly metal: string; readonly weight: string },
): object {
  const says = (text: string): object => ({ [language]: [text] });
  const facts: readonly (readonly [string, string | null])[] = [
    [words.number, piece.number],
    [words.date, textOf(piece.date)],
    [words.metal, piece.metal],
    [words.weight, textOf(piece.weight)],
  ];
  return {
    '@context': 'http://iiif.io/api/presentation/3/context.json',
    id: at.manifest,
    type: 'Manifest',
    label: says(piece.title),
    metadata: facts.flatMap(([label, value]) =>
      value === null ? [] : [{ label: says(label), value: { none: [value] } }],
    ),
    ...rightsOf(pictures),
    homepage: [{ id: at.page, type: 'Text', label: says(piece.title), format: 'text/html' }],
    items: pictures.map((picture) => canvasOf(picture, `${at.under}${picture.face}`, says)),
  };
}

function canvasOf(picture: IiifPicture, id: string, says: (text: string) => object): object {
  const { address, width, height } = picture;
  const annotation = {
    id: `${id}/page/picture`,
    type: 'Annotation',
    motivation: 'painting',
    target: id,
    body: { id: address, type: 'Image', format: 'image/jpeg', width, height },
  };
  return {
    id,
    type: 'Canvas',
    label: says(picture.face),
    summary: says(picture.alt),
    width,
    height,
    ...(picture.by === null ? {} : { metadata: [{ label: says(picture.face), value: { none: [picture.by] } }] }),
    items: [{ id: `${id}/page`, type: 'AnnotationPage', items: [annotation] }],
  };
}

/** The address of the licence, when all pictures share one that has an address. */
function rightsOf(pictures: readonly IiifPicture[]): { readonly rights?: string } {
  const licences = new Set(pictures.map(({ licence }) => licence ?? ''));
  const [licence] = licences;
  const known = RIGHTS.find(([written]) => licences.size === 1 && written.test(licence ?? ''));
  return known === undefined ? {} : { rights: known[1] };
}

function textOf(value: { readonly text: string } | string | null | undefined): string | null {
  return value === null || value === undefined || isBlank(value) || typeof value === 'string' ? null : value.text;
}
