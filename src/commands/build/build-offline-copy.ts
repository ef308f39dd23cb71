import { rm } from 'node:fs/promises';
import { resolve } from 'node:path';
import { nearestName } from '../../catalogue/nearest.ts';
import type { Records } from '../../catalogue/records.ts';
import type { Outcome } from '../../core/outcome.ts';
import { good, refuse } from '../../core/outcome.ts';
import { makeHallCopy } from '../../publish/offline-copy/make-offline-copy.ts';
import { FRONT } from '../../publish/offline-copy/places.ts';
import type { BuildRequest } from '../parts/build-site.ts';
import { counted, leaksIn, makeSite, shownFolder } from '../parts/make-site.ts';
import { aloneIn, putFolder, MARKS, refuseFolder } from '../parts/put-folder.ts';

export type OfflineCopyRequest = Omit<BuildRequest, 'out'> & {
  /** The id of the exhibit that is shown first; null for the whole catalogue. */
  readonly exhibit: string | null;
  /** Whether pieces that are on no list are in the lists of the copy. */
  readonly withUnlisted: boolean;
  /** Null for a folder named after the exhibit, or `whole-catalogue`. */
  readonly out: string | null;
};

/**
 * Makes the copy of a site that is carried to a hall on a stick, inspected first as the site and then as the copy.
 * Answers with a sentence.
 */
export async function buildOfflineCopy(request: OfflineCopyRequest): Promise<Outcome<string>> {
  const into = resolve(request.out ?? (request.exhibit === null ? 'whole-catalogue' : `hall-${request.exhibit}`));
  return aloneIn(into, () => buildInto(request, into));
}

async function buildInto(
  { exhibit, cabinet, address, withUnlisted }: OfflineCopyRequest,
  into: string,
): Promise<Outcome<string>> {
  const started = performance.now();
  const refusal = await refuseFolder(into, cabinet.at, MARKS.hall);
  if (refusal !== null) return refuse(refusal);

  const made = await makeSite({ cabinet, address, withUnlisted }, into, (records) =>
    exhibit === null ? null : noExhibit(records, exhibit),
  );
  if (!made.ok) return made;
  const { grown, folder, records, base, inspected, address: web } = made.value;
  const copied = `${grown}.hall`;
  await rm(copied, { recursive: true, force: true });
  const copy = await makeHallCopy(
    grown,
    copied,
    { base, exhibit },
    {
      title: records.exhibits.find(({ id }) => id === exhibit)?.fields.title ?? records.cabinet?.fields.title ?? '',
      cabinet: records.cabinet?.fields.title ?? '',
      address: web === null || exhibit === null ? web : `${web}exhibits/${exhibit}/`,
      ...(exhibit === null ? { whole: withUnlisted ? 'with unlisted' : 'listed' } : {}),
    },
  );
  await rm(grown, { recursive: true, force: true });
  const leaks = await leaksIn(copied, into, records, folder);
  if (leaks !== null) return refuse(leaks);
  await putFolder(copied, into);
  const seconds = ((performance.now() - started) / 1000).toFixed(1);
  const megabytes = (copy.bytes / 1e6).toFixed(copy.bytes < 1e7 ? 1 : 0);
  return good(
    `${counted(copy.pages, 'page')}, ${megabytes} MB, put in ${shownFolder(into)} in ${seconds} s; ${inspected}.\nCopy the whole folder to a stick and open ${FRONT}: it needs no network and no server.`,
  );
}

/** A sentence when the cabinet has no such exhibit; null when it has. */
function noExhibit({ exhibits }: Records, exhibit: string): string | null {
  const ids = exhibits.map(({ id }) => id);
  if (ids.includes(exhibit)) return null;
  if (ids.length === 0)
    return `There is no exhibit "${exhibit}": this cabinet has none yet. Write exhibits/${exhibit}/exhibit.md first.`;
  const nearest = ids.length === 1 ? (ids[0] ?? null) : nearestName(exhibit, ids);
  return `There is no exhibit "${exhibit}". ${nearest === null ? `Write one of ${ids.join(', ')}.` : `Write --hall ${nearest}.`}`;
}
