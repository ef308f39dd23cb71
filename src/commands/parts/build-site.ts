import { today } from '../../catalogue/check-cabinet.ts';
import { join, resolve } from 'node:path';
import { ADDRESSES, listAfter, wasInspected } from '../../catalogue/addresses.ts';
import type { CabinetFolder } from '../../catalogue/files.ts';
import { faultSentence } from '../../catalogue/keep/fault-sentence.ts';
import { readIfThere, writeWhole } from '../../catalogue/keep/flush.ts';
import { lockOf } from '../../catalogue/keep/journal.ts';
import { withLock } from '../../catalogue/keep/lock.ts';
import type { Records } from '../../catalogue/records.ts';
import type { Outcome } from '../../core/outcome.ts';
import { good, refuse } from '../../core/outcome.ts';
import type { MeantCabinet } from './command-line.ts';
import type { MadeSite } from './make-site.ts';
import { putText } from './grow-site.ts';
import { counted, makeSite, shownFolder } from './make-site.ts';
import { aloneIn, putFolder, refuseFolder } from './put-folder.ts';

export type BuildRequest = {
  readonly cabinet: MeantCabinet;
  /** The folder that is emptied and filled. */
  readonly out: string;
  /** Where the site will stand; null for what the cabinet says. */
  readonly address: string | null;
  /** Whether the site may be published from here: then its addresses are kept in the cabinet. */
  readonly isKept?: boolean;
  /** Refuses what was never built where its private folder is. */
  readonly onlyInspected?: boolean;
  /** A folder for the pages that lead on from where the site stood before; null for none. */
  readonly forward?: string | null;
};

/** What was built: the folder, the path the site expects to stand under, and a sentence about it. */
export type Built = {
  readonly out: string;
  readonly base: string;
  readonly says: string;
  /** Its place on the web; null when it has none. */
  readonly address: string | null;
  readonly exhibits: readonly string[];
};

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
  const made = await makeSite(request, into, (_, read) =>
    request.onlyInspected === true && !wasInspected(read) ? NOT_INSPECTED : null,
  );
  if (!made.ok) return made;
  const { grown, folder, records, photographs, base, inspected, taken, remember, address, outside } = made.value;
  await putFolder(grown, into);
  // The site is in its place. Without what is remembered of it the next build only takes longer.
  await remember().catch((error: unknown) => {
    if (faultSentence(error) === null) throw error;
  });
  const forwarded = await putForward(outside, request.forward ?? null, address);
  const kept = request.isKept === true && request.address === null ? await keepAddresses(records, folder) : null;
  const published = records.pieces.filter(({ fields }) => fields.publish !== 'no').length;
  const seconds = ((performance.now() - started) / 1000).toFixed(1);
  return good({
    out: into,
    base,
    address,
    exhibits: records.exhibits.map(({ id }) => id),
    says: `${counted(published, 'piece')} and ${counted(photographs.pictures, 'photograph')} (${photographs.made} made now)${taken === 0 ? '' : `, ${counted(taken, 'page')} as ${taken === 1 ? 'it was' : 'they were'},`} built in ${shownFolder(into)} in ${seconds} s; ${inspected}.${[kept, forwarded].map((said) => (said === null ? '' : `\n${said}`)).join('')}`,
  });
}

const NOT_INSPECTED = `These texts were not looked through beside private/, which is not here and must not be.
Where it is, on your own machine, run npm run build, and bring ${ADDRESSES} here with the rest of the cabinet.`;

/** Writes the pages that lead on from where the site stood before, by host and path; a sentence where there are any. */
async function putForward(
  outside: MadeSite['outside'],
  into: string | null,
  address: string | null,
): Promise<string | null> {
  if (outside.size === 0) return null;
  const places = [...outside.keys()].join(' and ');
  if (into === null)
    return `The site stood at ${places} before. For pages to leave there that lead on to ${address ?? 'here'}: npm run build -- --forward forward`;
  for (const [place, pages] of outside)
    for (const { file, text } of pages) {
      const { host, pathname } = new URL(place);
      await putText(join(resolve(into), host.replace(':', '-'), pathname, file), text);
    }
  return `Put what is in ${shownFolder(resolve(into))} in the place of what stands at ${places}: each page leads on to ${address ?? 'here'}.`;
}

/** Writes down every address of the site, under the cabinet's lock; a sentence where that could not be, or what was new. */
async function keepAddresses(records: Records, folder: CabinetFolder): Promise<string | null> {
  const standsAt = records.cabinet?.fields.address;
  // Without an address nothing can have been published.
  if (standsAt === undefined) return null;
  const list = listAfter(records, folder, today(), standsAt);
  const before = folder.files.find(({ file }) => file === ADDRESSES)?.text ?? null;
  if (list === before) return null;
  const lock = { folder: lockOf(folder.at), thing: `The cabinet ${shownFolder(folder.at)}` };
  const path = join(folder.at, ADDRESSES);
  const done = await withLock(lock, 'npm run build', async () => {
    if ((await readIfThere(path)) !== before)
      return `${ADDRESSES} was changed meanwhile and is as it was: build again.`;
    await writeWhole(path, list);
    return before === null
      ? `${ADDRESSES} in the cabinet now holds every address of the site: keep it, so that none is ever lost.`
      : null;
  }).catch((error: unknown) => refuse(faultSentence(error) ?? 'The disk refused.'));
  return done.ok ? done.value : `${ADDRESSES} could not be kept: ${done.problem}`;
}
