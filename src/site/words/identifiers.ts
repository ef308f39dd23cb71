/** Other catalogues, and the address of an entry in each. A catalogue not named here is shown without a link. */
const LISTS: Readonly<Record<string, { readonly name: string; readonly at: (id: string) => string }>> = {
  wikidata: { name: 'Wikidata', at: (id) => `https://www.wikidata.org/wiki/${id}` },
  nomisma: { name: 'Nomisma', at: (id) => `http://nomisma.org/id/${id}` },
  viaf: { name: 'VIAF', at: (id) => `https://viaf.org/viaf/${id}` },
  geonames: { name: 'GeoNames', at: (id) => `https://www.geonames.org/${id}` },
  pleiades: { name: 'Pleiades', at: (id) => `https://pleiades.stoa.org/places/${id}` },
};

export const identifierWords = {
  title: 'In other catalogues',
  lead: 'Also in:',
  /** An entry's list and address; the address is null where it is not known. */
  entry: (list: string, id: string): { readonly name: string; readonly href: string | null } => ({
    name: `${LISTS[list]?.name ?? list} ${id}`,
    href: LISTS[list]?.at(id) ?? null,
  }),
} as const;
