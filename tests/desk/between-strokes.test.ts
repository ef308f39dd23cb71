import { cp, mkdir, mkdtemp, readFile, rename, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as later } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { checkCabinet } from '../../src/catalogue/check-cabinet.ts';
import { newEntryId } from '../../src/catalogue/keep/journal.ts';
import { openCabinet } from '../../src/desk/cabinet-state.ts';
import { PRIVACY } from '../../src/privacy/privacy.ts';

/** Who reads a cabinet: answers with how to read it, and its pieces then. */
const READERS: Readonly<Record<string, (at: string) => Promise<() => Promise<readonly string[]>>>> = {
  'the desk': async (at) => {
    const state = await openCabinet(at);
    if (state === null) throw new Error('no cabinet');
    return async () => {
      await state.readAgain();
      await state.close();
      return state.records().pieces.map(({ id }) => id);
    };
  },
  'check, and with it build': async (at) => {
    await Promise.resolve();
    return async () => (await checkCabinet(at, PRIVACY)).records.pieces.map(({ id }) => id);
  },
};

test.for(Object.entries(READERS))(
  'a cabinet that another command is writing is read by %s before its stroke or after it, and not in the middle',
  async ([, open]) => {
    const at = join(await mkdtemp(join(tmpdir(), 'between-')), 'cabinet');
    await cp('tests/cabinets/marked', at, { recursive: true });
    const read = await open(at);
    const entry = join(at, 'private/undo', newEntryId(Date.now(), 'npm run add'));
    await mkdir(`${entry}.unfinished`, { recursive: true });
    const ledger = join(at, 'private/ledger.csv');
    await writeFile(ledger, (await readFile(ledger, 'utf8')).replace(/^plain-penny/m, 'second-penny'));
    const reading = read();
    await later(150);
    await cp(join(at, 'pieces/plain-penny'), join(at, 'pieces/second-penny'), { recursive: true });
    await rename(`${entry}.unfinished`, entry);
    expect(await reading).toContain('second-penny');
  },
);
