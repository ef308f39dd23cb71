import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { fileURLToPath } from 'node:url';
import Papa from 'papaparse';

/**
 * How long a sheet of 12,000 rows and 60 columns takes into a new cabinet: its trial, its import and the check after it, each in
 * seconds of the processor and, in brackets, of the clock, with the memory it took at most. Its private columns tell what public
 * ones say, so that the import asks and tries again. Run it with `node tests/benchmarks/import.ts`; it ends with 1 when a step
 * takes more than 20 seconds of the processor or 1 GB.
 */
const MOST_SECONDS = 20;
const MOST_MB = 1000;
const [ROWS, COLUMNS] = [12_000, 60];

/** The same draw each time: Park and Miller, *Communications of the ACM* 31 (1988), p. 1195. */
let drawn = 1279;
function below(many: number): number {
  drawn = (drawn * 48_271) % 2_147_483_647;
  return drawn % many;
}
const one = (from: readonly string[]): string => from[below(from.length)] ?? '';

const LISTS: Readonly<Record<string, readonly string[]>> = {
  Ruler: ['Edward I', 'Edw. I', 'Henry III', 'Henry II', 'Hadrian', 'Trajan', 'Charles II', 'Victoria', 'Gallienus'],
  Mint: ['London', 'York', 'Canterbury', 'Durham', 'Rome', 'Lugdunum', 'Chester', 'Lincoln', 'Siscia', 'Trier'],
  Denomination: ['penny', 'denarius', 'groat', 'shilling', 'follis', 'sixpence', 'farthing', 'antoninianus'],
  Date: ['1279-81', 'c. 1300', 'AD 117', '1604', '1887', '260-268', '1588 or 1589', 'about then?', '1413-22'],
  Metal: ['silver', 'AR', 'gold', 'bronze', 'AE', 'billon'],
  Grade: ['VF', 'F', 'EF', 'gVF', 'Fair', 'VG', 'VF/F', 'F, cleaned'],
  Reference: ['North 1018', 'RIC II 123', 'Spink 1391', 'RIC V.1 55', 'BMC 34', 'North 1037/2'],
  'Obverse design': [
    'Crowned bust facing',
    'Laureate head right',
    'Radiate bust of the eagle of Marlow',
    'Ship under sail',
  ],
};
const WORDS =
  'the old box from a fair with ticket and wrapped in paper under lamp seen by friend who wrote letter about it then lost'.split(
    ' ',
  );
const SYLLABLES = 'ba den fil gor hu lam mi nor pel ra sti tu ver wen'.split(' ');
/** Every other word is one of some three thousand, as in notes that somebody wrote. */
const word = (): string => (below(2) === 0 ? one(WORDS) : Array.from({ length: 3 }, () => one(SYLLABLES)).join(''));
const words = (many: number): string => Array.from({ length: many }, word).join(' ');

/** A place that one row names. */
function placeOf(row: number): string {
  const letters = [row % 14, Math.floor(row / 14) % 14, Math.floor(row / 196) % 14]
    .map((at) => SYLLABLES[at] ?? '')
    .join('');
  return `${letters.charAt(0).toUpperCase()}${letters.slice(1)}`;
}

/** Columns that stay private, and what is in them; a few tell what a public column says. */
const PRIVATE: Readonly<Record<string, (row: number) => string>> = {
  Paid: () => `${10 + below(500)}.50 GBP`,
  'Bought from': (row) => (row % 400 === 0 ? 'The heirs of Marlow, Ely' : `Dealer ${row % 40} of the long row`),
  'Bought on': (row) => `${1 + (row % 28)}/${1 + (row % 12)}/20${10 + (row % 15)}`,
  'Box, hole': (row) => `Chest ${row % 9}, drawer ${row % 30}, hole ${row % 60}`,
  Note: () => words(6),
  'Found at': (row) => (row % 100 === 0 ? `${placeOf(row)} Bottom` : ''),
  'Old ticket': (row) => (row % 300 === 0 ? 'Ship under sail, bought with Harwell' : ''),
};

function rowOf(row: number): readonly string[] {
  const facts = [
    `C-${row}`,
    ...Object.values(LISTS).map(one),
    (1 + below(800) / 100).toFixed(2),
    (12 + below(200) / 10).toFixed(1),
    `${1 + below(12)}h`,
    row % 50 === 0 ? `Read by candle light near ${placeOf(row)}; ${words(9)}.` : '',
    ...Object.values(PRIVATE).map((cell) => cell(row)),
  ];
  const more = Array.from({ length: COLUMNS - facts.length }, (_, at) =>
    at % 3 === 0 ? '' : at % 3 === 1 ? words(2) : String(below(5000)),
  );
  return [...facts, ...more];
}

const HEADINGS = [
  'No.', ...Object.keys(LISTS), 'Weight (g)', 'Diameter (mm)', 'Axis', 'Description', ...Object.keys(PRIVATE),
]; // prettier-ignore
const more = Array.from({ length: COLUMNS - HEADINGS.length }, (_, at) => `Field ${at + 1}`);

const folder = mkdtempSync(join(tmpdir(), 'import-bench-'));
const cabinet = join(folder, 'cabinet');
const sheet = join(folder, 'coins.csv');
const rows = Array.from({ length: ROWS }, (_, row) => [...rowOf(row)]);
writeFileSync(sheet, `${Papa.unparse([[...HEADINGS, ...more], ...rows])}\n`);
cpSync('tests/cabinets/empty', cabinet, { recursive: true });

const cost = join(folder, 'cost.json');
const watch = join(folder, 'watch.cjs');
writeFileSync(
  watch,
  `if (process.argv[1]?.endsWith('.ts')) process.on('exit', () => {
    const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
    require('node:fs').writeFileSync(${JSON.stringify(cost)}, JSON.stringify([(userCPUTime + systemCPUTime) / 1e6, maxRSS / 1024]));
  });`,
);

/** Runs a command as npm does, tells what it took, and returns what it said. */
function run(name: string, args: readonly string[]): string {
  const from = performance.now();
  const { stdout, stderr, status } = spawnSync(
    process.execPath,
    [fileURLToPath(new URL('../../src/commands/run.mjs', import.meta.url)), ...args, '--cabinet', cabinet],
    { encoding: 'utf8', maxBuffer: 1 << 28, env: { ...process.env, NODE_OPTIONS: `--require ${watch}` } },
  );
  const clock = (performance.now() - from) / 1000;
  const [seconds = 0, mb = 0] = JSON.parse(readFileSync(cost, 'utf8')) as number[];
  process.stdout.write(`${name}: ${seconds.toFixed(1)} s (${clock.toFixed(1)} s), ${Math.round(mb)} MB\n`);
  if (status !== 0) process.stdout.write(`${stdout.slice(-2000)}\n${stderr}\n`);
  if (status !== 0 || seconds > MOST_SECONDS || mb > MOST_MB) process.exitCode = 1;
  return stdout;
}

run('trial', ['import', sheet]);
const mapping = join(cabinet, 'private/import/coins.mapping.yaml');
writeFileSync(mapping, readFileSync(mapping, 'utf8').replace(/^( *)Description:.*$/m, '$1Description: story'));
run('trial with a story', ['import', sheet]);
const written = run('write', ['import', sheet, '--write', '--yes']);
process.stdout.write(`${written.split('\n').find((line) => line.includes(' rows = ')) ?? ''}\n`);
run('check', ['check']);
if (process.argv.includes('--keep')) process.stdout.write(`${folder}\n`);
else rmSync(folder, { recursive: true });
