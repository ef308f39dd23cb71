import { dirname } from 'node:path/posix';
import type { HallPlan } from './places.ts';
import { exhibitPage, fileMeant, placeInHall, wayTo } from './places.ts';
import type { Use } from './rewrite-page.ts';

/** What of a site can be reached from the exhibit, found while its files are gone through. */
export type Reach = {
  /** The next file to go through; undefined when there is none left. */
  readonly next: () => string | undefined;
  /** The most that is asked of a file so far. */
  readonly useOf: (file: string) => Use;
  /** What to write in a file for an address found in it; from then on what it leads to is reached as well. */
  readonly way: (from: string, address: string, use: Use) => string;
};

/** Begins at the exhibit. `there` holds every file of the site. */
export function reachFromExhibit(there: ReadonlySet<string>, plan: HallPlan): Reach {
  const uses = new Map<string, Use>();
  const waiting: string[] = [];
  // Out of these a script reads a file for any piece it is asked for.
  const folders = new Set<string>();
  const need = (file: string, use: Use): void => {
    // What was only linked may turn out to be read by a script too; then it is gone through again and made for both.
    if (uses.has(file) && (use === 'file' || uses.get(file) === use)) return;
    uses.set(file, use);
    waiting.push(file);
  };
  const needRecords = (): void => {
    for (const folder of folders)
      for (const piece of piecesAmong([...uses.keys()])) {
        const record = `${folder}/${piece}.json`;
        if (there.has(record)) need(record, 'read');
      }
  };
  need(exhibitPage(plan.exhibit), 'file');
  return {
    next: () => {
      if (waiting.length === 0) needRecords();
      return waiting.pop();
    },
    useOf: (file) => uses.get(file) ?? 'file',
    way: (from, address, use) => {
      const meant = fileMeant(address, from, plan);
      if (meant === null) return address;
      const isThere = there.has(meant.file);
      const folder = dirname(meant.file);
      const isFolder = !isThere && use === 'read' && [...there].some((file) => file.startsWith(`${folder}/`));
      if (isThere) need(meant.file, use);
      if (isFolder) folders.add(folder);
      if (!isThere && !isFolder) return address;
      const to = wayTo(placeInHall(isFolder ? folder : meant.file, plan), placeInHall(from, plan));
      return `${to}${isFolder ? '/' : ''}${meant.after}`;
    },
  };
}

/** The pieces whose own pages are among these files. */
function piecesAmong(files: readonly string[]): readonly string[] {
  return files.flatMap((file) => /^pieces\/([^/]+)\/index\.html$/.exec(file)?.[1] ?? []);
}
