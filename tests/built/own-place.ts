import { cp, mkdir, symlink } from 'node:fs/promises';
import { join, resolve } from 'node:path';

/** A copy of the program in a new folder, with caches of its own, so that nothing it keeps is shared with this one. */
export async function copyProgram(to: string): Promise<string> {
  await mkdir(to, { recursive: true });
  for (const part of ['src', 'public', 'package.json', 'package-lock.json', 'astro.config.mjs', 'tsconfig.json'])
    await cp(part, join(to, part), { recursive: true });
  await symlink(resolve('node_modules'), join(to, 'node_modules'), 'junction');
  return to;
}
