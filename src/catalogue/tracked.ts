import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import type { Problem } from './problem.ts';
import { problem } from './problem.ts';

const run = promisify(execFile);

/** The files of `private/` that git tracks: each would be published with the rest of a repository. Nothing where git is not. */
export async function checkTracked(at: string): Promise<readonly Problem[]> {
  try {
    const { stdout } = await run('git', ['-C', at, 'ls-files', '--', 'private']);
    return stdout
      .split('\n')
      .filter((file) => file !== '')
      .map((file) => problem('private-tracked', { file }, file));
  } catch {
    return [];
  }
}
