import { isBlank, known } from '../catalogue/schema/fields.ts';
import { isCopy } from '../catalogue/types/inherit-facts.ts';
import { sizeSpan } from '../core/measures/parse-size.ts';
import { formatReference } from '../core/references/reference.ts';
import type { Named, PublicPiece } from './public-piece.ts';
import type { Dating } from '../core/dating/dating.ts';

/** Addresses a linked record needs, all of them absolute, and what it says of the cabinet. */
type LinkedAddresses = {
  readonly page: string;
  readonly site: string;
  readonly pictures: readonly string[];
  readonly ruler: (id: string) => string;
  readonly mint: (id: string) => string;
  readonly type: (series: string, id: string) => string;
  /** The same ruler, mint or denomination in other catalogues, by its id here. */
  readonly sameAs: (list: 'rulers' | 'mints' | 'denominations', id: string) => readonly string[];
};

/** The words of linked data here; `compared` is a member for our own pages, and no statement. */
export const CONTEXT = [
  'https://schema.org',
  {
    nmo: 'http://nomisma.org/ontology#',
    dcterms: 'http://purl.org/dc/terms/',
    edtf: 'http://id.loc.gov/datatypes/edtf/',
    skos: 'http://www.w3.org/2004/02/skos/core#',
    xsd: 'http://www.w3.org/2001/XMLSchema#',
    compared: null,
  },
] as const;

type LinkedCollection = {
  readonly title: string;
  /** The language of the keeper's texts. */
  readonly language: string;
  /** The address of the licence of the texts; null where none is stated, or in other words. */
  readonly licence: string | null;
};

/**
 * A piece as linked data in the words of schema.org, with the terms that only numismatics has from Nomisma's ontology. Stated
 * authority (the name on the piece), authority (for whom it was struck in fact), issuer and maker are four properties. What the
 * keeper is not certain of is not stated here: neither vocabulary can say "probably", and `pieces.json` does.
 * A member `compared` of the same file is for our own pages: a term that is null in the context says nothing in JSON-LD 1.1.
 * Sources: schema.org VisualArtwork, QuantitativeValue (unit codes of UN/CEFACT Recommendation 20); nomisma.org/ontology and
 * Nomisma's model of physical coins (nomisma.org/documentation/contribute).
 */
export function jsonLd(piece: PublicPiece, at: LinkedAddresses, collection: LinkedCollection): object {
  const [date, weight, size] = [known(piece.date), known(piece.weight), known(piece.size)];
  const span = size === null ? null : sizeSpan(size);
  const dates = date === null || !isCertain(piece, 'date') ? {} : datesForOthers(date);
  const mint = namedIn(isCertain(piece, 'mint') ? piece.mint : null)[0];
  const place = mint === undefined ? undefined : entity(at.mint(mint.id), mint.name, at.sameAs('mints', mint.id));
  const metal = isCertain(piece, 'metal') ? wordOf(piece.metal) : undefined;
  const hasDesign = (side: PublicPiece['obverse']): string[] => (side?.design === undefined ? [] : [side.design]);
  return drop({
    '@context': CONTEXT,
    '@type': ['VisualArtwork', 'nmo:NumismaticObject'],
    '@id': at.page,
    url: at.page,
    identifier: piece.number,
    name: piece.title,
    description: [...hasDesign(piece.obverse), ...hasDesign(piece.reverse)].join('. ') || undefined,
    inLanguage: collection.language,
    license: collection.licence ?? undefined,
    artform: piece.kind === 'unknown' || !isCertain(piece, 'kind') ? undefined : piece.kind,
    artMedium: metal,
    dateCreated: dates.dateCreated,
    temporalCoverage: dates.temporalCoverage,
    'dcterms:date': dates.edtf === undefined ? undefined : { '@type': 'edtf:EDTF', '@value': dates.edtf },
    locationCreated: place === undefined ? undefined : { '@type': 'Place', ...place },
    creator: (isCertain(piece, 'makers') ? piece.makers : []).map(({ name, role }) => ({
      '@type': 'Person',
      name,
      jobTitle: role,
    })),
    weight: weight === null ? undefined : quantity(weight.grams, 'GRM'),
    width: span === null ? undefined : quantity(span.width, 'MMT'),
    height: span === null ? undefined : quantity(span.height, 'MMT'),
    citation: (isCertain(piece, 'references') ? piece.references : []).map((reference) =>
      formatReference(reference, reference.cited),
    ),
    image: at.pictures,
    isPartOf: { '@type': 'Collection', '@id': at.site, name: collection.title },
    ...nomismaFacts(piece, at, { place, metal, span }),
  });
}

/** What only numismatics has words for: authorities, material and type, and Nomisma's own measures. */
function nomismaFacts(
  piece: PublicPiece,
  at: LinkedAddresses,
  {
    place,
    metal,
    span,
  }: {
    readonly place: object | undefined;
    readonly metal: string | undefined;
    readonly span: ReturnType<typeof sizeSpan> | null;
  },
): Readonly<Record<string, unknown>> {
  const weight = known(piece.weight);
  const stated = isCertain(piece, 'ruler') ? namedIn(piece.rulers) : [];
  const struckFor = isCertain(piece, 'struck-for') ? piece.struckFor : [];
  const rulers = (named: readonly Named[]): readonly object[] =>
    named.map(({ id, name }) => entity(at.ruler(id), name, at.sameAs('rulers', id)));
  const denomination = namedIn(isCertain(piece, 'denomination') ? piece.denomination : null)[0];
  return {
    'nmo:hasStatedAuthority': rulers(stated),
    'nmo:hasAuthority': rulers(struckFor.length > 0 ? struckFor : isActual(piece) ? stated : []),
    'nmo:hasIssuer': isCertain(piece, 'issuer') ? wordOf(piece.issuer) : undefined,
    'nmo:hasMint': place,
    'nmo:hasDenomination':
      denomination === undefined
        ? undefined
        : drop({ name: denomination.name, sameAs: at.sameAs('denominations', denomination.id) }),
    'nmo:hasMaterial': metal,
    // What imitates a type is no specimen of it.
    'nmo:hasTypeSeriesItem': (isCopy(piece) ? [] : piece.types)
      .filter(({ sure }) => sure === 'certain')
      .map(({ series, id }) => ({ '@id': at.type(series, id) })),
    'nmo:hasAxis': piece.axis?.hours ?? undefined,
    'nmo:hasWeight': weight === null ? undefined : decimal(weight.grams),
    'nmo:hasDiameter': span === null || span.width !== span.height ? undefined : decimal(span.width),
    'nmo:hasObverse': sideOf(piece.obverse),
    'nmo:hasReverse': sideOf(piece.reverse),
  };
}

/** Whether the name on a piece is also the name of whoever had it struck: not on copies and counterfeits, or where that is doubtful. */
function isActual(piece: PublicPiece): boolean {
  return !isCopy(piece) && isCertain(piece, 'struck-for');
}

function isCertain({ sure }: PublicPiece, statement: keyof PublicPiece['sure']): boolean {
  return (sure[statement] ?? 'certain') === 'certain';
}

function namedIn(held: readonly Named[] | Named | string | null): readonly Named[] {
  return held === null || typeof held === 'string' ? [] : 'id' in held ? [held] : held;
}

function wordOf(text: string | null): string | undefined {
  return text === null || isBlank(text) ? undefined : text;
}

function entity(address: string, name: string, others: readonly string[]): object {
  return drop({ '@id': address, name, sameAs: others });
}

function quantity(value: number, unitCode: string): object {
  return { '@type': 'QuantitativeValue', value, unitCode };
}

/** Nomisma wants weights in grams and diameters in millimetres as xsd:decimal; a JSON number would be a double. */
function decimal(value: number): object {
  return { '@type': 'xsd:decimal', '@value': String(value) };
}

function sideOf(side: PublicPiece['obverse']): object | undefined {
  if (side === null || side === undefined) return undefined;
  return drop({ 'nmo:hasLegend': side.legend?.text, description: side.design });
}

/** Facts without those that are not known. */
export function drop(facts: Readonly<Record<string, unknown>>): object {
  return Object.fromEntries(
    Object.entries(facts).filter(([, value]) => value !== undefined && !(Array.isArray(value) && value.length === 0)),
  );
}

/** What other people's formats may say of a date; each left out where its format cannot say it truly. */
type DatesForOthers = {
  /** schema.org `dateCreated`, an ISO 8601 date: a plain year of our era, nothing about it doubtful. */
  readonly dateCreated?: string;
  /** schema.org `temporalCoverage`, an ISO 8601 interval of years; `..` where an end is open, as its definition allows. */
  readonly temporalCoverage?: string;
  /** `dcterms:date` typed as EDTF: everything that was read, with what is about and what is doubtful. */
  readonly edtf?: string;
};

/** A year from 1 to 9999, or a month or day of it; no season, nothing about, doubtful or unspecified. */
const PLAIN = /^(?!0000)\d{4}(?:-(?:0[1-9]|1[0-2])(?:-\d{2})?)?$/;
/** The month and day behind a year. */
const DAYS = /(?<=\d{4})(?:-\d{2}){1,2}/g;

/**
 * A date of making in the formats of others. Years are astronomical and have four figures (`-0043` is 44 BC); a year beyond four
 * figures, and an end that is unknown rather than open, have no place in an ISO interval and are left to EDTF. Both formats count
 * days by the Gregorian calendar alone: of a day before the reform they are told the year.
 * Sources: schema.org dateCreated, temporalCoverage; ISO 8601-1:2019 §5.2.2; EDTF (Library of Congress, 2019) as a datatype,
 * id.loc.gov/datatypes/edtf.
 */
export function datesForOthers(date: Dating): DatesForOthers {
  const { earliest, latest, edtf } = date;
  const ends = [endOf(earliest), endOf(latest)];
  const [from, to] = ends;
  const isJulian = date.dayCalendar !== undefined && date.dayCalendar !== 'gregorian';
  const isWhole = from !== null && to !== null && !(from === '..' && to === '..');
  return {
    ...(PLAIN.test(edtf) ? { dateCreated: edtf.slice(0, 4) } : {}),
    ...(isWhole ? { temporalCoverage: from === to ? from : `${String(from)}/${String(to)}` } : {}),
    ...(edtf === '' ? {} : { edtf: isJulian ? edtf.replaceAll(DAYS, '') : edtf }),
  };
}

function endOf(year: Dating['earliest']): string | null {
  if (year === 'open') return '..';
  if (year === null || Math.abs(year) > 9999) return null;
  return `${year < 0 ? '-' : ''}${String(Math.abs(year)).padStart(4, '0')}`;
}
