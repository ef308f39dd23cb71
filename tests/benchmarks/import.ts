import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { fileURLToPath } from 'node:url';

/**
 * How long 12,000 rows take into a new cabinet, in seconds from the first word to the last file. Run it with
 * `node tests/benchmarks/import.ts`; it ends with 1 when they take more than a minute.
 */
const MOST_SECONDS = 60;
const ROWS = 12_000;

const folder = mkdtempSync(join(tmpdir(), 'import-bench-'));
const rulers = ['Edward I', 'Edw. I', 'Henry III', 'Henry II', 'Hadrian', 'Trajan', 'Charles II', 'Victoria'];
const mints = ['London', 'York', 'Canterbury', 'Durham', 'Rome'];
const rows = Array.from({ length: ROWS }, (_, at) =>
  [
    `C-${at}`,
    rulers[at % rulers.length],
    mints[at % mints.length],
    at % 97 === 0 ? 'about then?' : String(1200 + (at % 600)),
    (1 + (at % 300) / 100).toFixed(2),
    `${10 + (at % 500)}.50 GBP`,
    `Dealer ${at % 40} of the long row`,
    `Chest ${at % 9}, drawer ${at % 30}, hole ${at % 60}`,
    at % 5 === 0 ? `Bought in the rain on day ${at}` : '',
  ].join(','),
);
writeFileSync(
  join(folder, 'coins.csv'),
  `No.,Ruler,Mint,Year,Weight (g),Paid,Bought from,"Box, hole",Own remark\n${rows.join('\n')}\n`,
);
cpSync('tests/cabinets/empty', join(folder, 'cabinet'), { recursive: true });
const command = fileURLToPath(new URL('../../src/commands/import.ts', import.meta.url));
const from = performance.now();
const { stdout, status } = spawnSync(
  process.execPath,
  [command, join(folder, 'coins.csv'), '--cabinet', join(folder, 'cabinet'), '--write', '--yes'],
  { encoding: 'utf8' },
);
const seconds = (performance.now() - from) / 1000;
rmSync(folder, { recursive: true });
process.stdout.write(
  `${stdout.split('\n').find((line) => line.includes(' rows = ')) ?? ''} in ${seconds.toFixed(1)} s\n`,
);
process.exitCode = status === 0 && seconds <= MOST_SECONDS ? 0 : 1;
