import type { Denomination, Mint, Ruler } from '../catalogue/catalogue.ts';
import type { TypeSeries } from '../catalogue/types/series.ts';
import { sameAs } from './identifiers.ts';
import { CONTEXT, drop } from './json-ld.ts';

/** What every text of a catalogue shares: its language, the address of its licence, and the catalogue itself. */
export type LinkedWhole = {
  readonly page: string;
  readonly title: string;
  readonly language: string;
  readonly licence: string | null;
};

/**
 * A ruler: in whose name pieces stand. That may be a king, two kings or a town, which the list does not say, so it is no more
 * than a thing here. Source: schema.org Thing (alternateName, mainEntityOfPage, sameAs).
 */
export function linkedRuler({ fields }: Ruler, page: string): object {
  return drop({
    '@context': CONTEXT,
    '@type': 'Thing',
    '@id': page,
    name: fields.name,
    alternateName: fields['other-names'],
    description:
      [fields.realm, fields.dynasty, fields.role].filter((part) => part !== undefined).join(', ') || undefined,
    sameAs: sameAs(fields.identifiers),
    mainEntityOfPage: page,
  });
}

/** A mint. Source: schema.org Place (geo, containedInPlace); nomisma.org/ontology Mint. */
export function linkedMint({ fields }: Mint, page: string): object {
  const { coordinates, area } = fields;
  return drop({
    '@context': CONTEXT,
    '@type': ['Place', 'nmo:Mint'],
    '@id': page,
    name: fields.name,
    alternateName: [...new Set(fields.names.map(({ name }) => name))],
    sameAs: sameAs(fields.identifiers),
    geo:
      coordinates === undefined
        ? undefined
        : { '@type': 'GeoCoordinates', latitude: coordinates.north, longitude: coordinates.east },
    containedInPlace: area === undefined ? undefined : { '@type': 'Place', name: area },
    mainEntityOfPage: page,
  });
}

/** A denomination has no page; `address` names it. Source: schema.org DefinedTerm; nomisma.org/ontology Denomination. */
export function linkedDenomination({ fields }: Denomination, address: string): object {
  return drop({
    '@context': CONTEXT,
    '@type': ['DefinedTerm', 'nmo:Denomination'],
    '@id': address,
    name: fields.name,
    alternateName: fields.plural,
    sameAs: sameAs(fields.identifiers),
  });
}

/** A series and its types, each under the broader one. Source: schema.org DefinedTermSet, DefinedTerm; SKOS broader; nomisma.org/ontology. */
export function linkedSeries(
  { fields, types }: TypeSeries,
  at: { readonly series: string; readonly type: (id: string) => string },
  whole: LinkedWhole,
): readonly object[] {
  const series = drop({
    '@context': CONTEXT,
    '@type': ['DefinedTermSet', 'nmo:TypeSeries'],
    '@id': at.series,
    name: fields.title,
    description: fields.note,
    inLanguage: whole.language,
    license: whole.licence ?? undefined,
    isPartOf: partOf(whole),
  });
  return [series, ...[...types.keys()].map((id) => linkedType({ types }, id, at))];
}

/** One type of a series. */
export function linkedType(
  { types }: Pick<TypeSeries, 'types'>,
  id: string,
  at: { readonly series: string; readonly type: (id: string) => string },
): object {
  const type = types.get(id);
  const broader = type?.broader ?? '';
  return drop({
    '@context': CONTEXT,
    '@type': ['DefinedTerm', 'nmo:TypeSeriesItem', 'skos:Concept'],
    '@id': at.type(id),
    name: type?.label ?? id,
    termCode: id,
    inDefinedTermSet: { '@id': at.series },
    // As published series of types have it: a concept with a label, and the series as its source.
    'skos:prefLabel': type?.label ?? id,
    'dcterms:source': { '@id': at.series },
    'skos:broader': broader === '' ? undefined : { '@id': at.type(broader) },
    mainEntityOfPage: at.type(id),
  });
}

/** A set: pieces brought together by a rule. Only those are parts of it that fill a place for certain. */
export function linkedSet(
  set: {
    readonly page: string;
    readonly title: string;
    readonly rule: string | null;
    readonly picture: string | null;
    readonly pieces: readonly { readonly page: string; readonly title: string }[];
  },
  whole: LinkedWhole,
): object {
  return drop({
    '@context': CONTEXT,
    '@type': 'Collection',
    '@id': set.page,
    url: set.page,
    name: set.title,
    description: set.rule ?? undefined,
    image: set.picture ?? undefined,
    inLanguage: whole.language,
    license: whole.licence ?? undefined,
    collectionSize: set.pieces.length,
    hasPart: set.pieces.map(({ page, title }) => ({ '@type': 'VisualArtwork', '@id': page, name: title })),
    isPartOf: partOf(whole),
  });
}

/** The whole catalogue, and the files it can be had in. Source: schema.org Collection, Dataset, DataDownload. */
export function linkedHome(
  whole: LinkedWhole,
  said: {
    readonly about: string | null;
    readonly keeper: string;
    readonly count: number;
    readonly data: {
      readonly page: string;
      readonly title: string;
      readonly description: string;
      readonly files: readonly { readonly address: string; readonly format: string }[];
    };
  },
): object {
  const { data } = said;
  return drop({
    '@context': CONTEXT,
    '@type': 'Collection',
    '@id': whole.page,
    url: whole.page,
    name: whole.title,
    description: said.about ?? undefined,
    creditText: said.keeper,
    inLanguage: whole.language,
    license: whole.licence ?? undefined,
    collectionSize: said.count,
    subjectOf: drop({
      '@type': 'Dataset',
      '@id': data.page,
      url: data.page,
      name: data.title,
      description: data.description,
      license: whole.licence ?? undefined,
      distribution: data.files.map(({ address, format }) => ({
        '@type': 'DataDownload',
        contentUrl: address,
        encodingFormat: format,
      })),
    }),
  });
}

function partOf({ page, title }: LinkedWhole): object {
  return { '@type': 'Collection', '@id': page, name: title };
}

/** Several records as one file: their words stand once above them. */
export function linkedGraph(records: readonly object[]): object {
  const graph = records.map((record) =>
    Object.fromEntries(Object.entries(record).filter(([name]) => name !== '@context')),
  );
  return { '@context': CONTEXT, '@graph': graph };
}
