import { execFile } from 'node:child_process';
import { mkdtemp, readFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { promisify } from 'node:util';

const run = promisify(execFile);

/**
 * Builds a cabinet into a new folder, as `npm run build` would, and answers with that folder. The address is said in full also
 * where it is the cabinet's own, so that no list of addresses is written into a cabinet of the tests; `keeps` writes it.
 */
export async function buildInto({
  cabinet,
  ...how
}: {
  cabinet: string;
  address?: string;
  keeps?: true;
}): Promise<string> {
  const out = join(await mkdtemp(join(tmpdir(), 'underglass-')), 'site');
  const own = /^address: *(\S+)/m.exec(await readFile(join(cabinet, 'cabinet.yaml'), 'utf8'))?.[1];
  const address = how.keeps === true ? undefined : (how.address ?? own);
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
