import { dirname } from 'node:path/posix';
import type { HallPlan } from './places.ts';
import { frontPage, fileMeant, placeInHall, wayTo } from './places.ts';
import type { Use } from './rewrite-page.ts';

/** What of a site can be reached from the page that a copy begins with, found while its files are gone through. */
export type Reach = {
  /** The next file to go through; undefined when there is none left. */
  readonly next: () => string | undefined;
  /** The most that is asked of a file so far. */
  readonly useOf: (file: string) => Use;
  /** What to write in a file for an address found in it; from then on what it leads to is reached as well. */
  readonly way: (from: string, address: string, use: Use) => string;
};

/** Beside the file of what can be found lies a folder of this name, with a file for each piece that can be laid side by side. */
const COMPARED = 'pieces';

/** Begins at the page that the copy begins with. `there` holds every file of the site. */
export function reachFromFront(there: ReadonlySet<string>, plan: HallPlan): Reach {
  const uses = new Map<string, Use>();
  const waiting: string[] = [];
  const need = (file: string, use: Use): void => {
    // What was only linked may turn out to be read by a script too; then it is gone through again and made for both.
    if (uses.has(file) && (use === 'file' || uses.get(file) === use)) return;
    uses.set(file, use);
    waiting.push(file);
  };
  const needCompared = (): void => {
    const files = [...uses.keys()];
    const folders = new Set(files.filter((file) => uses.get(file) === 'read').map(dirname));
    for (const folder of folders)
      for (const piece of piecesAmong(files)) {
        const compared = `${folder}/${COMPARED}/${piece}.json`;
        if (there.has(compared)) need(compared, 'read');
      }
  };
  need(frontPage(plan.exhibit), 'file');
  return {
    next: () => {
      if (waiting.length === 0) needCompared();
      return waiting.pop();
    },
    useOf: (file) => uses.get(file) ?? 'file',
    way: (from, address, use) => {
      const meant = fileMeant(address, from, plan);
      if (meant === null || !there.has(meant.file)) return address;
      need(meant.file, use);
      return wayTo(placeInHall(meant.file, plan), placeInHall(from, plan)) + meant.after;
    },
  };
}

/** The pieces whose own pages are among these files. */
function piecesAmong(files: readonly string[]): readonly string[] {
  return files.flatMap((file) => /^pieces\/([^/]+)\/index\.html$/.exec(file)?.[1] ?? []);
}
