import { readFile } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';
import { Worker } from 'node:worker_threads';
import type { AstroIntegration } from 'astro';
import { readFolder } from '../../catalogue/files.ts';
import type { CabinetFolder } from '../../catalogue/files.ts';
import { handedOver, handOver } from '../../catalogue/handed-over.ts';
import type { Problem } from '../../catalogue/problem.ts';
import { cabinetReader } from '../../catalogue/read-cabinet.ts';

type ViteServer = Parameters<NonNullable<AstroIntegration['hooks']['astro:server:setup']>>[0]['server'];

/** Milliseconds without an edit after which the whole cabinet is checked again, beside the pages. */
const CHECKED_AFTER = 700;

/**
 * Follows edits of a cabinet: reads the file that changed, gives the pages the new records and has browsers show them. A file that
 * cannot be read leaves the last good state on show. Everything else that is wrong is found a moment later, in a thread of its own,
 * and told to `tell`.
 */
export function followCabinet(folder: CabinetFolder, tell: (problems: readonly Problem[]) => void): AstroIntegration {
  const read = cabinetReader();
  read(folder);
  let last = folder;
  let checking: ReturnType<typeof setTimeout> | undefined;
  const changed = async (paths: readonly string[], server: ViteServer): Promise<void> => {
    const now = await readAgain(last, paths);
    const isSame =
      now.files.length === last.files.length && now.files.every((held, place) => held === last.files[place]);
    if (isSame) return;
    last = now;
    const { records, problems } = read(last);
    if (problems.length > 0) {
      tell(problems);
      return;
    }
    handOver({ ...handedOver(), records });
    showAnew(server);
    clearTimeout(checking);
    checking = setTimeout(() => void checkBeside(folder.at).then(tell), CHECKED_AFTER);
  };
  return {
    name: 'follow-cabinet',
    hooks: {
      'astro:server:setup': ({ server }) => {
        let waiting: string[] = [];
        let turn = Promise.resolve();
        const wait = (path: string): void => {
          waiting.push(path);
          // Editors write a file in several steps; what comes in one breath is one edit.
          setTimeout(() => {
            const paths = waiting;
            waiting = [];
            if (paths.length > 0) turn = turn.then(() => changed(paths, server));
          }, 30);
        };
        // What was edited between the first reading and the watch is told of by nobody: the whole folder is read once more.
        server.watcher.once('ready', () => {
          wait(folder.at);
        });
        server.watcher.add(folder.at);
        server.watcher.on('all', (_, path) => {
          if (!relative(folder.at, path).startsWith('..')) wait(path);
        });
      },
    },
  };
}

/** The folder with the changed files read anew; every other file is the same object as before. */
async function readAgain(before: CabinetFolder, paths: readonly string[]): Promise<CabinetFolder> {
  const changed = new Set(paths.map((path) => relative(before.at, path).split(sep).join('/')));
  const isKnown = (file: string): boolean => before.files.some((held) => held.file === file);
  const texts = new Map<string, string>();
  for (const file of changed) {
    const text = isKnown(file) ? await readFile(join(before.at, file), 'utf8').catch(() => null) : null;
    // A file that came or went: the whole folder is read, and what is as it was is kept.
    if (text === null) return withKnown(before, await readFolder(before.at));
    texts.set(file, text);
  }
  const files = before.files.map((held) => {
    const text = texts.get(held.file);
    return text === undefined || held.text === null ? held : { file: held.file, text };
  });
  return { at: before.at, files };
}

function withKnown(before: CabinetFolder, now: CabinetFolder | null): CabinetFolder {
  const known = new Map(before.files.map((held) => [held.file, held]));
  const files = (now?.files ?? []).map((held) => {
    const one = known.get(held.file);
    return one !== undefined && one.text === held.text ? one : held;
  });
  return { at: before.at, files };
}

/** Has every page made anew that a browser asks for, and has browsers ask. */
function showAnew(server: ViteServer): void {
  // Astro keeps the paths of a page until it hears that contents changed.
  for (const environment of Object.values(server.environments)) environment.hot.send('astro:content-changed', {});
  server.environments.client.hot.send({ type: 'full-reload', path: '*' });
}

function checkBeside(at: string): Promise<readonly Problem[]> {
  return new Promise((settle) => {
    const worker = new Worker(new URL('./check-beside.ts', import.meta.url), { workerData: at });
    worker.once('message', settle);
    worker.once('error', () => settle([]));
  });
}
