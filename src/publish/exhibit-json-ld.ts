import { CONTEXT } from './json-ld.ts';

/** What the linked record of an exhibit says; every address is absolute. */
export type LinkedExhibit = {
  readonly page: string;
  readonly title: string;
  readonly scope: string | null;
  /** Whose exhibit it is; null when it is shown without a name. */
  readonly keeper: string | null;
  readonly language: string;
  /** The address of the licence of the texts; null where none is stated, or in other words. */
  readonly licence: string | null;
  readonly picture: string | null;
  readonly pieces: readonly { readonly page: string; readonly title: string; readonly number: string }[];
  /** The books it rests on, as a list of books gives them. */
  readonly books: readonly string[];
  readonly collection: { readonly page: string; readonly title: string };
};

/**
 * An exhibit as linked data: a collection of pieces out of a larger one. It is no event, for it says no day and no place.
 * Source: schema.org Collection, CreativeWork (abstract, citation, creditText, hasPart, isPartOf).
 */
export function exhibitJsonLd(exhibit: LinkedExhibit): object {
  const { page, title, scope, keeper, language, licence, picture, pieces, books, collection } = exhibit;
  return {
    '@context': CONTEXT,
    '@type': 'Collection',
    '@id': page,
    url: page,
    name: title,
    ...(scope === null ? {} : { abstract: scope }),
    ...(keeper === null ? {} : { creditText: keeper }),
    inLanguage: language,
    ...(licence === null ? {} : { license: licence }),
    ...(picture === null ? {} : { image: picture }),
    collectionSize: pieces.length,
    hasPart: pieces.map((piece) => ({
      '@type': 'VisualArtwork',
      '@id': piece.page,
      name: piece.title,
      identifier: piece.number,
    })),
    ...(books.length === 0 ? {} : { citation: books }),
    isPartOf: { '@type': 'Collection', '@id': collection.page, name: collection.title },
  };
}
