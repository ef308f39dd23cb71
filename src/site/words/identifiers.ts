/** Other people's lists, and where an entry of theirs is read. A list not named here is shown without a link. */
const LISTS: Readonly<Record<string, { readonly name: string; readonly at: (id: string) => string }>> = {
  wikidata: { name: 'Wikidata', at: (id) => `https://www.wikidata.org/wiki/${id}` },
  nomisma: { name: 'Nomisma', at: (id) => `http://nomisma.org/id/${id}` },
  viaf: { name: 'VIAF', at: (id) => `https://viaf.org/viaf/${id}` },
  geonames: { name: 'GeoNames', at: (id) => `https://www.geonames.org/${id}` },
  pleiades: { name: 'Pleiades', at: (id) => `https://pleiades.stoa.org/places/${id}` },
};

export const identifierWords = {
  title: 'Elsewhere',
  lead: 'The same in other lists:',
  /** An entry's list and address; the address is null where it is not known. */
  entry: (list: string, id: string): { readonly name: string; readonly href: string | null } => ({
    name: `${LISTS[list]?.name ?? list} ${id}`,
    href: LISTS[list]?.at(id) ?? null,
  }),
} as const;
