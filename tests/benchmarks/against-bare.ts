// Cabinets of growing size against a bare site of Astro with as many pages of the same weight, made in the same run: from nothing,
// and after one edit. Writes results.md. SIZES=100,1000,10000 chooses the sizes, ROUNDS=3 how often each is built.
import { appendFileSync, mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { cpus, release, tmpdir, totalmem } from 'node:os';
import { join, relative, resolve } from 'node:path';
import process from 'node:process';
import { writeBareSite, writePages } from './bare-site.ts';
import { writeLargeCabinet } from './large-cabinet.ts';
import { run } from './measured-run.ts';
import type { Run } from './measured-run.ts';

const SIZES = (process.env['SIZES'] ?? '100,1000').split(',').map(Number);
const ROUNDS = Number(process.env['ROUNDS'] ?? 3);

const middle = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[values.length >> 1] ?? NaN;

type Weight = {
  readonly files: number;
  readonly bytes: number;
  readonly largest: readonly string[];
  readonly page: number;
};

/** What a site weighs: its files, its heaviest pages, and a page of a piece in the middle. */
function weigh(site: string): Weight {
  const entries = readdirSync(site, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  const files = entries.map((entry) => {
    const path = join(entry.parentPath, entry.name);
    return { path: relative(site, path).split('\\').join('/'), bytes: statSync(path).size };
  });
  const pages = files.filter(({ path }) => path.endsWith('.html')).toSorted((a, b) => b.bytes - a.bytes);
  const pieces = pages.filter(({ path }) => /^pieces\/piece-\d+\//.test(path));
  return {
    files: files.length,
    bytes: files.reduce((sum, { bytes }) => sum + bytes, 0),
    largest: pages
      .slice(0, 3)
      .map(({ path, bytes }) => `${path.replace('index.html', '')} ${(bytes / 1000).toFixed(0)} kB`),
    page: middle(pieces.map(({ bytes }) => bytes)),
  };
}

const rows: string[] = [];
for (const size of SIZES) {
  // In one folder with the caches of the project, so that pages can be links.
  const at = mkdtempSync(join(tmpdir(), 'bench-size-'));
  const [cabinet, bare] = [join(at, 'cabinet'), join(at, 'bare')];
  writeLargeCabinet(cabinet, 'content', { pieces: size });
  const site = resolve('dist-bench');
  const build = (): Promise<Run> =>
    run(['src/commands/build.ts', '--cabinet', cabinet, '--out', site, '--address', 'https://example.org/many/'], '.');
  const taken: Record<'ours' | 'oursEdit' | 'bare' | 'bareEdit', Run[]> = {
    ours: [],
    oursEdit: [],
    bare: [],
    bareEdit: [],
  };
  let weight: Weight | null = null;
  for (let round = 0; round < ROUNDS; round += 1) {
    rmSync(site, { recursive: true, force: true });
    rmSync(bare, { recursive: true, force: true });
    // Nothing is left of an earlier build.
    for (const kept of ['program', 'read', 'last-site']) rmSync(join('.cache', kept), { recursive: true, force: true });
    taken.ours.push(await build());
    weight ??= weigh(site);
    appendFileSync(join(cabinet, 'pieces/piece-7/piece.md'), `\nSeen again, ${round}.\n`);
    const edited = await build();
    if (!/, \d+ pages as they were/.test(edited.said)) throw new Error('No page was taken from the last site.');
    taken.oursEdit.push(edited);
    writeBareSite(bare, size, weight.page);
    taken.bare.push(await run(['build.mjs'], bare));
    writePages(bare, size, weight.page, `round ${round}`);
    taken.bareEdit.push(await run(['build.mjs'], bare));
  }
  const told = (of: Run[], by: 'clock' | 'processor' | 'memory', places = 1): string =>
    middle(of.map((one) => one[by])).toFixed(places);
  const ratio = (of: Run[], to: Run[]): string =>
    (middle(of.map(({ processor }) => processor)) / middle(to.map(({ processor }) => processor))).toFixed(2);
  rows.push(
    `| ${size} | ${told(taken.ours, 'clock')} (${told(taken.bare, 'clock')}) | ${ratio(taken.ours, taken.bare)} | ${told(taken.oursEdit, 'clock')} (${told(taken.bareEdit, 'clock')}) | ${ratio(taken.oursEdit, taken.bareEdit)} | ${told(taken.ours, 'memory', 0)} | ${weight?.files ?? 0} | ${((weight?.bytes ?? 0) / 1e6).toFixed(0)} | ${weight?.largest.join('; ') ?? ''} |`,
  );
  process.stdout.write(`  ${rows.at(-1) ?? ''}\n`);
  for (const folder of [at, site]) rmSync(folder, { recursive: true, force: true });
}

const [processor] = cpus();
writeFileSync(
  'tests/benchmarks/results.md',
  `# Size, against a bare site

\`npm run bench -- --only against-bare\`; medians of ${ROUNDS} on ${processor?.model ?? 'an unknown processor'}, ${cpus().length} cores, ${(totalmem() / 2 ** 30).toFixed(0)} GB, ${process.platform} ${release()}, Node ${process.version}. Clock times are ours and, in brackets, those of the bare site: as many pages of the weight of ours, made by Astro alone with its own cache. From nothing is without anything that an earlier build kept, but for what Node compiled. Memory is the most that all processes of a build had at once. The ratios are of the time of the processor, of all processes of a build, for the clock also tells of what else the machine does.

| pieces | from nothing, s | ratio | one edit, s | ratio | memory, MB | files | MB | heaviest pages |
|---|---|---|---|---|---|---|---|---|
${rows.join('\n')}
`,
);
