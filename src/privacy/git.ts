import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import type { Problem } from '../catalogue/problem.ts';
import { problem } from '../catalogue/problem.ts';

const run = promisify(execFile);

/**
 * The files of `private/` that git tracks, or would take with the next `git add`: each would be published with the rest of a
 * repository. Nothing where git is not.
 */
export async function checkTracked(at: string): Promise<readonly Problem[]> {
  const [tracked, open] = await Promise.all([
    git(at, ['ls-files', '-z', 'private']),
    git(at, ['ls-files', '-z', '--others', '--exclude-standard', 'private']),
  ]);
  return [
    ...tracked.split('\0').filter(Boolean).map((file) => problem('private-tracked', { file }, file)),
    ...open.split('\0').filter(Boolean).slice(0, 1).map((file) => problem('private-not-ignored', { file }, file === 'private' ? 'private' : 'private/')),
  ]; // prettier-ignore
}

/** The folders of these pieces that git has: a repository shows what the site does not. */
export async function trackedPieces(at: string, ids: readonly string[]): Promise<readonly string[]> {
  if (ids.length === 0) return [];
  const tracked = (await git(at, ['ls-files', '-z', 'pieces'])).split('\0');
  const folders = new Set(tracked.map((file) => file.split('/')[1]));
  return ids.filter((id) => folders.has(id));
}

/** The newest commit of any branch that touched `private/`: whoever has the repository can read it there. Null when there is none. */
export async function commitWithPrivate(at: string): Promise<string | null> {
  const commit = await git(at, ['log', '--all', '--max-count=1', '--format=%h', '--', 'private']);
  return commit.trim() || null;
}

/** What git says in this folder; nothing where there is no git or no repository. */
async function git(at: string, words: readonly string[]): Promise<string> {
  try {
    return (await run('git', ['-C', at, ...words], { maxBuffer: 1 << 26 })).stdout;
  } catch {
    return '';
  }
}
