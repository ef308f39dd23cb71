import type { Cabinet } from './cabinet.ts';
import { loadCabinet } from './cabinet.ts';
import { digestOf } from './digest.ts';
import { frameFacts } from './models/shared/head.ts';
import { onceFor } from './once-for.ts';

/** A path, what its page shows, and the key by which a build knows that it shows the same as last time. */
export type KeyedPath<Params, Page> = {
  params: Params;
  props: { page: () => Page | Promise<Page> };
  cacheKey?: string;
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
    const paths: KeyedPath<Params, Page>[] = [];
    for (const params of paramsOf(cabinet))
      if (import.meta.env.DEV)
        paths.push({ params, props: { page: async () => pageOf(await fromOf(cabinet, params)) } });
      else {
        const from = await fromOf(cabinet, params);
        paths.push({
          params,
          props: { page: () => pageOf(from) },
          cacheKey: `${frameKey(cabinet)} ${digestOf(from)}`,
        });
      }
    return paths;
  };
}

const frameKey = onceFor((cabinet: Cabinet): string => digestOf(frameFacts(cabinet)));
