/** The persistent addresses (IRIs) of entries in other catalogues, as each of them states it; `{}` is the entry's name there. */
const IRIS: Readonly<Record<string, string>> = {
  wikidata: 'http://www.wikidata.org/entity/{}',
  nomisma: 'http://nomisma.org/id/{}',
  viaf: 'http://viaf.org/viaf/{}',
  geonames: 'https://sws.geonames.org/{}/',
  pleiades: 'https://pleiades.stoa.org/places/{}',
};

/** What a ruler, mint or denomination is called elsewhere, as addresses; a catalogue that is not known here is left out. */
export function sameAs(identifiers: Readonly<Record<string, string>> | undefined): readonly string[] {
  return Object.entries(identifiers ?? {}).flatMap(([catalogue, id]) => {
    const iri = IRIS[catalogue];
    return iri === undefined ? [] : [iri.replace('{}', encodeURIComponent(id))];
  });
}
