import { getCollection } from 'astro:content';
import type { Catalogue } from '../catalogue/catalogue.ts';
import { linkRecords } from '../catalogue/link.ts';
import { readManifest } from '../photographs/cache/manifest.ts';
import type { PhotographManifest } from '../photographs/cache/manifest.ts';
import { publicPieces } from '../publish/public-piece.ts';
import type { PublicPiece } from '../publish/public-piece.ts';

/** What every page asks: the lists of the cabinet, and its pieces as the public may see them. */
export type Cabinet = {
  /** The lists (rulers, mints, works …); its own `pieces` are not for pages, which is why they are left out. */
  readonly lists: Omit<Catalogue, 'pieces'>;
  /** Every piece with a page, in the order of inventory numbers. */
  readonly pieces: readonly PublicPiece[];
  /** Those that stand in lists, counts, the feed and the search. */
  readonly listed: readonly PublicPiece[];
  /** The pictures made of them. */
  readonly photographs: PhotographManifest;
};

let loading: Promise<Cabinet> | null = null;

/** The cabinet, loaded once for a build; while following edits, anew for every page. */
export function loadCabinet(): Promise<Cabinet> {
  if (import.meta.env.DEV) return load();
  loading ??= load();
  return loading;
}

async function load(): Promise<Cabinet> {
  const [cabinet, pieces, rulers, mints, denominations, eras, sets, exhibits, works] = await Promise.all([
    getCollection('cabinet'), getCollection('pieces'), getCollection('rulers'), getCollection('mints'),
    getCollection('denominations'), getCollection('eras'), getCollection('sets'), getCollection('exhibits'),
    getCollection('works'),
  ]); // prettier-ignore
  const filed = <T>(entries: readonly { data: T }[]): readonly T[] => entries.map(({ data }) => data);
  const { pieces: linked, ...lists } = linkRecords({
    cabinet: cabinet[0]?.data ?? null,
    pieces: filed(pieces),
    rulers: filed(rulers),
    mints: filed(mints),
    denominations: filed(denominations),
    eras: filed(eras),
    sets: filed(sets),
    exhibits: filed(exhibits),
    works: filed(works),
  });
  const published = publicPieces({ ...lists, pieces: linked });
  return {
    lists,
    pieces: published,
    listed: published.filter((piece) => piece.listed),
    photographs: await readManifest(),
  };
}
