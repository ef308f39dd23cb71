import type { Cabinet } from './cabinet.ts';
import { loadCabinet } from './cabinet.ts';
import { digestOf } from './digest.ts';
import { frameFacts } from './models/shared/head.ts';
import { onceFor } from './once-for.ts';

/** A path and what its page shows. */
export type KeyedPath<Params, Page> = {
  params: Params;
  props: {
    page: () => Promise<Page>;
    /** The key by which a build knows that the page shows the same as last time, and whether it `isTaken` from there. */
    isKept?: (isTaken: (key: string) => boolean) => Promise<boolean>;
  };
};

/**
 * The paths of pages, each with what its page shows. The key is a digest of that and of the frame round every page, so pages of
 * the same key are the same text, as long as the program is the same. While edits are followed there are no keys, and a page is
 * worked out when it is asked for.
 */
export function keyedPaths<Params, Page>(
  paramsOf: (cabinet: Cabinet) => readonly Params[],
  pageOf: (cabinet: Cabinet, params: Params) => Page | Promise<Page>,
): () => Promise<KeyedPath<Params, Page>[]> {
  return keyedBy(paramsOf, pageOf, (page) => page);
}

/** As `keyedPaths`, for pages that are many and large: the key is of what a page is made from, and the page is made when it is due. */
export function keyedBy<Params, From, Page>(
  paramsOf: (cabinet: Cabinet) => readonly Params[],
  fromOf: (cabinet: Cabinet, params: Params) => From | Promise<From>,
  pageOf: (from: From) => Page | Promise<Page>,
): () => Promise<KeyedPath<Params, Page>[]> {
  return async () => {
    const cabinet = await loadCabinet();
    return paramsOf(cabinet).map((params) => ({
      params,
      props: propsOf(cabinet, async () => fromOf(cabinet, params), pageOf),
    }));
  };
}

/** What a page is made from is held from its key until it is made: of thousands it would fill the memory. */
function propsOf<From, Page>(
  cabinet: Cabinet,
  gather: () => Promise<From>,
  pageOf: (from: From) => Page | Promise<Page>,
): KeyedPath<unknown, Page>['props'] {
  if (import.meta.env.DEV) return { page: async () => pageOf(await gather()) };
  let gathered: { readonly from: From } | null = null;
  return {
    page: async () => {
      const { from } = gathered ?? { from: await gather() };
      gathered = null;
      return pageOf(from);
    },
    isKept: async (isTaken) => {
      const from = await gather();
      const isAsBefore = isTaken(`${frameKey(cabinet)} ${digestOf(from)}`);
      gathered = isAsBefore ? null : { from };
      return isAsBefore;
    },
  };
}

const frameKey = onceFor((cabinet: Cabinet): string => digestOf(frameFacts(cabinet)));
