import type { PublicPiece } from './public-piece.ts';

/** A picture of a piece as a manifest wants it; the address is absolute. */
export type IiifPicture = {
  readonly face: string;
  readonly address: string;
  readonly width: number;
  readonly height: number;
  readonly alt: string;
};

/** A IIIF Presentation 3 manifest: one canvas a photographed face. Source: iiif.io/api/presentation/3.0. */
export function iiifManifest(
  piece: PublicPiece,
  at: { manifest: string; page: string },
  pictures: readonly IiifPicture[],
): object {
  return {
    '@context': 'http://iiif.io/api/presentation/3/context.json',
    id: at.manifest,
    type: 'Manifest',
    label: { en: [piece.title] },
    metadata: [
      ['Number', piece.number],
      ['Date', typeof piece.date === 'string' ? piece.date : piece.date?.text],
      ['Metal', piece.metal],
      ['Weight', typeof piece.weight === 'string' ? piece.weight : piece.weight?.text],
    ].flatMap(([label, value]) =>
      value === null || value === undefined ? [] : [{ label: { en: [label] }, value: { none: [value] } }],
    ),
    homepage: [{ id: at.page, type: 'Text', label: { en: [piece.title] }, format: 'text/html' }],
    items: pictures.map(({ face, address, width, height, alt }) => ({
      id: `${at.manifest}#canvas-${face}`.replace('#', '/'),
      type: 'Canvas',
      label: { en: [face] },
      width,
      height,
      items: [
        {
          id: `${at.manifest}/page-${face}`,
          type: 'AnnotationPage',
          items: [
            {
              id: `${at.manifest}/painting-${face}`,
              type: 'Annotation',
              motivation: 'painting',
              target: `${at.manifest}/canvas-${face}`,
              body: { id: address, type: 'Image', format: 'image/jpeg', width, height },
              label: { en: [alt] },
            },
          ],
        },
      ],
    })),
  };
}
