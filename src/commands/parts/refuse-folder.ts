import { readdir } from 'node:fs/promises';
import { relative } from 'node:path';
import process from 'node:process';

/** What is in every folder that was built: a site, or a copy of one for a hall. */
export const MARKS = { site: ['index.html', 'data'], hall: ['open-me.html', 'catalogue'] } as const;

/** Why a folder may not be emptied and filled; null when it may: it is new, empty, or was built before and has the marks of it. */
export async function refuseFolder(
  into: string,
  cabinet: string,
  marks: readonly string[] = MARKS.site,
): Promise<string | null> {
  const holds = (inner: string): boolean => inner === into || !relative(into, inner).startsWith('..');
  if (holds(cabinet) || holds(process.cwd()))
    return `The site cannot be built over ${into}: the cabinet or the project is in it.`;
  if (!relative(cabinet, into).startsWith('..'))
    return `The site cannot be built inside the cabinet. Choose another folder than ${into}.`;
  const held = await readdir(into).catch((): string[] => []);
  if (held.length === 0 || marks.every((mark) => held.includes(mark))) return null;
  return `The folder ${into} holds files that no build put there, and building would remove them. Choose a new folder.`;
}
