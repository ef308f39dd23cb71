import { rename, rm } from 'node:fs/promises';
import { relative, resolve } from 'node:path';
import process from 'node:process';
import type { Problem } from '../../catalogue/problem.ts';
import { formatProblem } from '../../catalogue/problem.ts';
import type { Outcome } from '../../core/outcome.ts';
import { good, refuse } from '../../core/outcome.ts';
import { linkPhotographs } from '../../photographs/link-photographs.ts';
import { makePhotographs } from '../../photographs/make-photographs.ts';
import { inspectBuilt } from '../../publish/inspect-built.ts';
import { cacheFolder } from './cache-folder.ts';
import { checkWhole } from './check-whole.ts';
import type { MeantCabinet } from './command-line.ts';
import { progressLine } from './progress-line.ts';
import { refuseFolder } from './refuse-folder.ts';

export type BuildWish = {
  readonly cabinet: MeantCabinet;
  /** The folder that is emptied and filled. */
  readonly out: string;
  /** Where the site will stand; null for what the cabinet says. */
  readonly address: string | null;
};

/** What was built: the folder, the path the site expects to stand under, and a sentence about it. */
export type Built = { readonly out: string; readonly base: string; readonly says: string };

/** Checks a cabinet, makes its pictures and pages, and inspects every byte of what was made. */
export async function buildSite({ cabinet, out, address }: BuildWish): Promise<Outcome<Built>> {
  const started = performance.now();
  const into = resolve(out);
  const refusal = await refuseFolder(into, cabinet.at);
  if (refusal !== null) return refuse(refusal);

  const { records, problems } = await checkWhole(cabinet.at);
  if (problems.length > 0)
    return refuse(
      `${inFull(problems, cabinet.shown)}\n\nNothing was built: mend the ${counted(problems.length, 'problem')} above first.`,
    );

  const where = addressOf(address ?? records.cabinet?.fields.address ?? null);
  if (!where.ok) return where;
  const photographs = cacheFolder('photographs', cabinet.at);
  const run = await makePhotographs(records.pieces, cabinet.at, photographs, progressLine('Photographs'));

  // The site grows beside its place and is put there only when it has been inspected: what was there before stays till then.
  const unfinished = `${into}.unfinished`;
  await rm(unfinished, { recursive: true, force: true });
  Object.assign(process.env, {
    CABINET: cabinet.at,
    PHOTOGRAPHS: photographs,
    OUT: unfinished,
    STORE: cacheFolder('store', cabinet.at, into),
    SITE: where.value.origin,
    BASE: where.value.base,
    // Astro takes a variable of this name for its own; a shell or a test runner may have set it.
    BASE_URL: where.value.base,
    HAS_ADDRESS: where.value.isPublic ? 'yes' : 'no',
    ASTRO_TELEMETRY_DISABLED: '1',
  });
  const { build } = await import('astro');
  await build({ logLevel: 'error' });
  await linkPhotographs(photographs, unfinished);

  const found = await inspectBuilt(unfinished, records, cabinet.at);
  if (found.length > 0) {
    await rm(unfinished, { recursive: true, force: true });
    const shown = relative(process.cwd(), into) || '.';
    return refuse(
      `${inFull(found, shown)}\n\nNothing was published, and ${shown} is as it was: mend the ${counted(found.length, 'leak')} above first.`,
    );
  }
  await rm(into, { recursive: true, force: true });
  await rename(unfinished, into);
  const seconds = ((performance.now() - started) / 1000).toFixed(1);
  return good({
    out: into,
    base: where.value.base,
    says: `${counted(records.pieces.filter(({ fields }) => fields.publish !== 'no').length, 'piece')} and ${counted(run.pictures, 'photograph')} (${run.made} made now) published to ${relative(process.cwd(), into) || '.'} in ${seconds} s; every byte inspected, nothing private in it.`,
  });
}

function inFull(problems: readonly Problem[], folder: string): string {
  return problems.map((found) => formatProblem(found, folder)).join('\n\n');
}

function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? '' : 's'}`;
}

/** An address in its two halves: `https://example.org` and `/coins/`. */
function addressOf(address: string | null): Outcome<{ origin: string; base: string; isPublic: boolean }> {
  if (address === null) return good({ origin: 'http://localhost:4321', base: '/', isPublic: false });
  if (!URL.canParse(address) || !/^https?:$/.test(new URL(address).protocol))
    return refuse(`An address begins with https://; this says "${address}". Write https://example.org/coins/.`);
  const { origin, pathname } = new URL(address);
  return good({ origin, base: pathname.endsWith('/') ? pathname : `${pathname}/`, isPublic: true });
}
