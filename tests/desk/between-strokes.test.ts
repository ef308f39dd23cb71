import { cp, mkdir, mkdtemp, readFile, rename, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as later } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { newEntryId } from '../../src/catalogue/keep/journal.ts';
import { openCabinet } from '../../src/desk/cabinet-state.ts';

test('a cabinet that another command is writing is read before its stroke or after it, and not in the middle', async () => {
  const at = join(await mkdtemp(join(tmpdir(), 'between-')), 'cabinet');
  await cp('tests/cabinets/marked', at, { recursive: true });
  const state = await openCabinet(at);
  if (state === null) throw new Error('no cabinet');
  const entry = join(at, 'private/undo', newEntryId(Date.now(), 'npm run add'));
  await mkdir(`${entry}.unfinished`, { recursive: true });
  const ledger = join(at, 'private/ledger.csv');
  await writeFile(ledger, (await readFile(ledger, 'utf8')).replace(/^plain-penny/m, 'second-penny'));
  const reading = state.readAgain();
  await later(150);
  await cp(join(at, 'pieces/plain-penny'), join(at, 'pieces/second-penny'), { recursive: true });
  await rename(`${entry}.unfinished`, entry);
  await reading;
  expect(state.records().pieces.map(({ id }) => id)).toContain('second-penny');
  await state.close();
});
