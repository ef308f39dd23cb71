import { execFile } from 'node:child_process';
import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { promisify } from 'node:util';

const run = promisify(execFile);

/** Builds a cabinet into a new folder, as `npm run build` would, and answers with that folder. */
export async function buildInto({ cabinet, address }: { cabinet: string; address?: string }): Promise<string> {
  const out = join(await mkdtemp(join(tmpdir(), 'underglass-')), 'site');
  const words = [
    'src/commands/build.ts',
    '--cabinet',
    cabinet,
    '--out',
    out,
    ...(address === undefined ? [] : ['--address', address]),
  ];
  await run(process.execPath, words, { env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' } });
  return out;
}
