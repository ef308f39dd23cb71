import { isMainThread, parentPort, Worker } from 'node:worker_threads';
import { ADDRESSES } from '../../catalogue/addresses.ts';
import type { CabinetFolder } from '../../catalogue/files.ts';
import type { HandedOver } from '../../catalogue/handed-over.ts';
import { handOver, takeBack } from '../../catalogue/handed-over.ts';
import { guardOf, useGuard } from '../../privacy/guard.ts';
import type { PrivateGuard } from '../../privacy/guard.ts';
import type { Clean, Inspection } from '../../privacy/inspect-built.ts';
import { inspectAgain } from '../../privacy/inspect-built.ts';
import type { Kept, LastSite } from './last-site.ts';
import { takenFrom } from './last-site.ts';
import { makePages } from './pages-program.ts';

/** What is made of a cabinet, where it grows, and the last site in the folder `into`. */
export type SiteWork = {
  readonly handed: HandedOver;
  readonly folder: CabinetFolder;
  /** The bundled pages, and the files of them that are in every site. */
  readonly bundled: string;
  readonly program: string;
  readonly grows: string;
  readonly into: string;
  readonly last: LastSite | null;
};

/** Half of it for another thread, which reads no text of the cabinet: its `folder` has the list of addresses alone. */
type HalfOfSite = SiteWork & { readonly guard: PrivateGuard };

/** What the second thread is asked, in this order. */
type Asked = { readonly make: HalfOfSite } | { readonly inspect: Clean | null };
type Told = { readonly told: unknown } | { readonly fault: Fault };
type Fault = Pick<NodeJS.ErrnoException, 'name' | 'message' | 'stack' | 'code' | 'path'>;

/** Half of the work on a site, done in a thread of its own beside the other half. */
export type SecondThread = {
  readonly make: (work: SiteWork) => Promise<Kept>;
  readonly inspect: (before: Clean | null) => Promise<Inspection>;
  readonly end: () => Promise<unknown>;
};

/** Shares are halves: the first is of the thread that began the other. */
export const HALVES = [
  { at: 0, of: 2 },
  { at: 1, of: 2 },
] as const;

/** Starts a thread that does every second page, and looks through every second file. A fault in it is thrown here as it is. */
export function secondThread(): SecondThread {
  const worker = new Worker(new URL(import.meta.url));
  const ask = <Answer>(asked: Asked): Promise<Answer> =>
    new Promise((answered, failed) => {
      worker.once('error', failed);
      worker.once('message', (said: Told) => {
        worker.off('error', failed);
        if ('told' in said) answered(said.told as Answer);
        else failed(Object.assign(new Error(said.fault.message), said.fault));
      });
      worker.postMessage(asked);
    });
  return {
    make: (work) => {
      const { at, files } = work.folder;
      const folder = { at, files: files.filter(({ file }) => file === ADDRESSES) };
      return ask({ make: { ...work, folder, guard: guardOf(work.folder, work.handed.records) } });
    },
    inspect: (before) => ask({ inspect: before }),
    end: () => worker.terminate(),
  };
}

if (!isMainThread && parentPort !== null) listen(parentPort);

function listen(port: NonNullable<typeof parentPort>): void {
  let work: SiteWork | undefined;
  port.on('message', (asked: Asked) => {
    if ('make' in asked) {
      work = asked.make;
      useGuard(work.folder, work.handed.records, asked.make.guard);
    }
    if (work === undefined) return;
    void answerTo(asked, work).then(
      (told) => {
        port.postMessage({ told } satisfies Told);
      },
      (fault: unknown) => {
        port.postMessage({ fault: faultOf(fault) } satisfies Told);
      },
    );
  });
}

async function makeHalf({ handed, bundled, grows, into, last }: SiteWork): Promise<Kept> {
  handOver({ ...handed, share: HALVES[1] });
  const kept: Kept = { taken: new Set(), keys: new Map() };
  await makePages(bundled, grows, takenFrom(last, into, grows, kept), HALVES[1]);
  takeBack();
  return kept;
}

async function answerTo(asked: Asked, work: SiteWork): Promise<Kept | Inspection> {
  if ('make' in asked) return makeHalf(work);
  const { handed, folder, grows, program } = work;
  return inspectAgain(grows, handed.records, folder, asked.inspect, program, HALVES[1]);
}

/** A fault as it can be sent: a copy of an error loses its code and its path. */
function faultOf(fault: unknown): Fault {
  const { name, message, stack, code, path } = (
    fault instanceof Error ? fault : new Error(String(fault))
  ) as NodeJS.ErrnoException;
  return {
    name,
    message,
    ...(stack !== undefined && { stack }),
    ...(code !== undefined && { code }),
    ...(path !== undefined && { path }),
  };
}
