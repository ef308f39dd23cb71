import { handedOver } from '../../../catalogue/handed-over.ts';
import { loadCabinet } from '../../cabinet.ts';
import { inSite, urls } from '../../urls.ts';
import { notFoundWords } from '../../words/not-found.ts';
import type { PageHead } from '../shared/head.ts';

/** What stands at an address that was published once and is no page now. */
export type GonePage = {
  readonly head: PageHead;
  readonly says: string;
  readonly way: { readonly name: string; readonly href: string };
};

type GonePath = { params: { gone: string }; props: { page: GonePage } };

/** A path for every address that has moved or was let go: by the cabinet's list, or by what a piece was formerly. */
export async function goneAddresses(): Promise<GonePath[]> {
  const { moved, withdrawn } = handedOver().addresses;
  const unlisted = new Set((await loadCabinet()).pieces.flatMap(({ id, listed }) => (listed ? [] : [urls.piece(id)])));
  const path = (address: string, page: GonePage): GonePath => ({
    params: { gone: address.replace(/\/$/, '') },
    props: { page },
  });
  return [
    ...Object.entries(moved).map(([address, to]) => path(address, movedPage(inSite(to), unlisted.has(inSite(to))))),
    ...withdrawn.map((address) => path(address, withdrawnPage())),
  ];
}

function movedPage(to: string, unlisted: boolean): GonePage {
  const { moved: title, movedSays: says, follow } = notFoundWords;
  return { head: { title, here: to, movedTo: to, unlisted }, says, way: { name: follow, href: to } };
}

/** It does not say what it was: that may be private now. */
function withdrawnPage(): GonePage {
  const { withdrawn: title, withdrawnSays: says, find } = notFoundWords;
  return { head: { title, here: urls.home(), unlisted: true }, says, way: { name: find, href: urls.pieces() } };
}
