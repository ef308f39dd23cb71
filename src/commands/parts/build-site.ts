import { resolve } from 'node:path';
import type { Outcome } from '../../core/outcome.ts';
import { good, refuse } from '../../core/outcome.ts';
import type { MeantCabinet } from './command-line.ts';
import { counted, makeSite, shownFolder } from './make-site.ts';
import { aloneIn, putFolder } from './put-folder.ts';
import { refuseFolder } from './refuse-folder.ts';

export type BuildRequest = {
  readonly cabinet: MeantCabinet;
  /** The folder that is emptied and filled. */
  readonly out: string;
  /** Where the site will stand; null for what the cabinet says. */
  readonly address: string | null;
};

/** What was built: the folder, the path the site expects to stand under, and a sentence about it. */
export type Built = { readonly out: string; readonly base: string; readonly says: string };

/** Checks a cabinet, makes its pictures and pages, inspects every byte, and puts the site in its folder. */
export async function buildSite(request: BuildRequest): Promise<Outcome<Built>> {
  const into = resolve(request.out);
  return aloneIn(into, () => buildInto(request, into));
}

async function buildInto(request: BuildRequest, into: string): Promise<Outcome<Built>> {
  const started = performance.now();
  const refusal = await refuseFolder(into, request.cabinet.at);
  if (refusal !== null) return refuse(refusal);

  // The site is put in its place only when it has been inspected: what was there before stays till then.
  const made = await makeSite(request, into);
  if (!made.ok) return made;
  const { grown, records, photographs, base, inspected } = made.value;
  await putFolder(grown, into);
  const published = records.pieces.filter(({ fields }) => fields.publish !== 'no').length;
  const seconds = ((performance.now() - started) / 1000).toFixed(1);
  return good({
    out: into,
    base,
    says: `${counted(published, 'piece')} and ${counted(photographs.pictures, 'photograph')} (${photographs.made} made now) published to ${shownFolder(into)} in ${seconds} s; ${inspected}.`,
  });
}
