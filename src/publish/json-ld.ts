import { known } from '../catalogue/schema/fields.ts';
import { sizeSpan } from '../core/measures/parse-size.ts';
import { formatReference } from '../core/references/reference.ts';
import type { PublicPiece } from './public-piece.ts';

/** Addresses a linked record needs; all of them absolute. */
export type LinkedAddresses = { readonly page: string; readonly site: string; readonly pictures: readonly string[] };

/**
 * A piece as linked data in the words of schema.org, with the few terms that only numismatics has from Nomisma's ontology.
 * A member `compared` of the same file is for our own pages: a term that is null in the context says nothing in JSON-LD 1.1.
 * Sources: schema.org VisualArtwork, QuantitativeValue (unit codes of UN/CEFACT Recommendation 20); nomisma.org/ontology.
 */
export function jsonLd(piece: PublicPiece, at: LinkedAddresses, collection: string): object {
  const [date, weight, size] = [known(piece.date), known(piece.weight), known(piece.size)];
  const span = size === null ? null : sizeSpan(size);
  const names = (named: readonly { name: string }[] | string | null): readonly string[] =>
    named === null || typeof named === 'string' ? [] : named.map(({ name }) => name);
  return drop({
    '@context': ['https://schema.org', { nmo: 'http://nomisma.org/ontology#', compared: null }],
    '@type': 'VisualArtwork',
    '@id': at.page,
    url: at.page,
    identifier: piece.number,
    name: piece.title,
    artform: piece.kind,
    artMedium: piece.metal ?? undefined,
    temporalCoverage: date?.edtf,
    dateCreated: date?.edtf,
    locationCreated:
      piece.mint === null || typeof piece.mint === 'string' ? undefined : { '@type': 'Place', name: piece.mint.name },
    creator: piece.makers.map(({ name, role }) => ({ '@type': 'Person', name, jobTitle: role })),
    weight: weight === null ? undefined : quantity(weight.grams, 'GRM'),
    width: span === null ? undefined : quantity(span.width, 'MMT'),
    height: span === null ? undefined : quantity(span.height, 'MMT'),
    citation: piece.references.map((reference) => formatReference(reference, reference.cited)),
    image: at.pictures,
    isPartOf: { '@type': 'Collection', '@id': at.site, name: collection },
    'nmo:hasAuthority': names(piece.rulers),
    'nmo:hasDenomination':
      piece.denomination === null || typeof piece.denomination === 'string' ? undefined : piece.denomination.name,
    'nmo:hasAxis': piece.axis?.hours ?? undefined,
    'nmo:hasObverse': sideOf(piece.obverse),
    'nmo:hasReverse': sideOf(piece.reverse),
  });
}

function quantity(value: number, unitCode: string): object {
  return { '@type': 'QuantitativeValue', value, unitCode };
}

function sideOf(side: PublicPiece['obverse']): object | undefined {
  if (side === null || side === undefined) return undefined;
  return drop({ 'nmo:hasLegend': side.legend?.text, description: side.design });
}

function drop(facts: Readonly<Record<string, unknown>>): object {
  return Object.fromEntries(
    Object.entries(facts).filter(([, value]) => value !== undefined && !(Array.isArray(value) && value.length === 0)),
  );
}
