import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';

/** One temporary folder for a whole run, so that the hundreds which tests make in it are gone when the run ends. */
export default function temporaryFolder(): () => void {
  const folder = mkdtempSync(join(tmpdir(), 'underglass-tests-'));
  for (const name of ['TMPDIR', 'TEMP', 'TMP']) process.env[name] = folder;
  return () => rmSync(folder, { recursive: true, force: true, maxRetries: 3 });
}
