import type { Catalogue } from '../catalogue/catalogue.ts';
import { handedOver } from '../catalogue/handed-over.ts';
import type { HandedOver } from '../catalogue/handed-over.ts';
import { linkRecords } from '../catalogue/link.ts';
import { readManifest } from '../photographs/cache/manifest.ts';
import type { PhotographManifest } from '../photographs/cache/manifest.ts';
import { publicPieces } from '../publish/public-piece.ts';
import type { PublicPiece } from '../publish/public-piece.ts';
import { onceFor } from './once-for.ts';

/** What every page asks: the lists of the cabinet, and its pieces as the public may see them. */
export type Cabinet = {
  /** The lists (rulers, mints, works …); its own `pieces` are not for pages, which is why they are left out. */
  readonly lists: Omit<Catalogue, 'pieces'>;
  /** Every piece with a page, in the order of inventory numbers. */
  readonly pieces: readonly PublicPiece[];
  /** Those that are in lists, counts, the feed and the search. */
  readonly listed: readonly PublicPiece[];
  /** The pictures made of them. */
  readonly photographs: PhotographManifest;
  /** When each page was last changed (`2026-11-29`), by its path in the site. */
  readonly changed: Readonly<Record<string, string>>;
};

/** The cabinet as the command handed it over, joined once for all pages; while following edits, once for each edit. */
export function loadCabinet(): Promise<Cabinet> {
  return join(handedOver());
}

/** A listed piece by its id; undefined where there is none. */
export function listedPiece({ listed }: Cabinet, id: string): PublicPiece | undefined {
  return byId(listed).get(id);
}

const byId = onceFor((listed: readonly PublicPiece[]) => new Map(listed.map((piece) => [piece.id, piece])));

const join = onceFor(async ({ records, photographs, addresses }: HandedOver): Promise<Cabinet> => {
  const { pieces: linked, ...lists } = linkRecords(records);
  const published = publicPieces({ ...lists, pieces: linked });
  return {
    lists,
    pieces: published,
    listed: published.filter((piece) => piece.listed),
    photographs: await readManifest(photographs),
    changed: addresses.changed,
  };
});
