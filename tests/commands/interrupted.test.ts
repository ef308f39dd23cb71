import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import process from 'node:process';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { folderTexts } from '../catalogue/keep/folder-texts.ts';
import { leftBehind } from '../catalogue/keep/left-behind.ts';

/**
 * With `TRIES=full` each command is really killed at each point, and each fault of a disk happens at each. With `TRIES=kills` it
 * is killed once at each point, of a command with more than sixty once at the first of each sort of change and at thirty more;
 * `KILLS=12,4` names other numbers.
 */
const IS_FULL = process.env['TRIES'] === 'full';
const [MANY = 60, DRAWN = 30] = (process.env['KILLS'] ?? '').split(',').filter(Boolean).map(Number);

/** The points at which a command is really killed, of those whose sorts of change these are. */
function killsAt(kinds: readonly string[]): readonly number[] {
  const all = kinds.map((_, at) => at + 1);
  if (IS_FULL) return all;
  if (process.env['TRIES'] !== 'kills') return [];
  if (all.length <= MANY) return all;
  const firsts = all.filter((point) => kinds.indexOf(kinds[point - 1] ?? '') === point - 1);
  // Spread without a pattern, by the golden ratio.
  const drawn = Array.from({ length: DRAWN }, (_, at) => 1 + Math.floor(((at * 0.618034) % 1) * all.length));
  return [...new Set([...firsts, ...drawn])].sort((a, b) => a - b);
}
const PRELOAD = resolve('tests/catalogue/keep/stop-at.mjs');
const FAULTS = ['ENOSPC', 'EROFS', 'EACCES'] as const;
/** What a command says whose disk refuses. */
const SENTENCE = /^[^\n]*(room|written|changed|opened)[^\n]*\.\n?$/m;

const SHEET = 'No.,Mint,Weight (g),Paid\n71,Atown,1.38,£5.50\n72,Betown,1.40,£6.50\n';
const AGAIN = SHEET.replace('1.38', '1.39').replace('6.50', '6.75');
const MAPPING = `title: "Coin of {mint}"
always: { kind: coin }
columns: { No.: number, Mint: mint, Weight (g): weight in g, Paid: ledger cost }
`;
const TYPES = {
  'types/pence/series.yaml': `title: Plain pence
source: { work: plain-book }
shared: { denomination: penny, metal: silver }
levels: [class]
characters: [{ id: crown, label: The crown, states: [plain, jewelled] }]
`,
  'types/pence/types.csv': 'id,broader,level,label,crown\n3a,,class,Class 3a,plain\n3b,,class,Class 3b,jewelled\n',
  'types/pence/concordance.csv': 'type,relation,reference,sure\n3a,equal,plain-book 10,\n',
  'pieces/cites-10/piece.md':
    '---\nnumber: "901"\ntitle: A plain penny\nkind: coin\nreferences: [plain-book 10]\n---\n',
};

/**
 * What a keeper does one evening, in its order, in one cabinet: every command that writes into one. Each finds the cabinet as
 * the one before left it.
 */
type Step = {
  readonly words: readonly string[];
  /** The cabinet, of the two. */
  readonly of?: 'new' | 'marked';
  readonly prepare?: (folder: string) => Promise<void> | void;
  /** Each file is a stroke of its own. */
  readonly isEach?: boolean;
};
const put = (folder: string, files: Readonly<Record<string, string>>): void => {
  for (const [file, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, file)), { recursive: true });
    writeFileSync(join(folder, file), text);
  }
};
const STEPS: Readonly<Record<string, Step>> = {
  begin: { words: ['begin', '@', '--title', 'T', '--keeper', 'K'], of: 'new' },
  'add to a cabinet without a ledger': {
    words: ['add', '--title', 'A groat', '--cost', '7.70 GBP', '--mint', 'Elsewhere', '--new-mint'],
    of: 'new',
  },
  add: {
    words: ['add', '--title', 'Penny of Nobody', '--cost', '7.70 GBP', '--ruler', 'Nobody', '--realm', 'Plainland', '--reign', '1216/1272'],
  },
  'import, looked at': {
    words: ['import', '../coins.csv', '--mapping', '../coins.mapping.yaml'],
    prepare: (folder) => put(folder, { 'coins.csv': SHEET, 'coins.mapping.yaml': MAPPING }),
  },
  'import --write': { words: ['import', '../coins.csv', '--mapping', '../coins.mapping.yaml', '--write', '--yes'] },
  'import --write of a changed sheet': {
    words: ['import', '../coins.csv', '--write', '--yes'],
    prepare: (folder) => put(folder, { 'coins.csv': AGAIN }),
  },
  'import --undo': { words: ['import', '--undo'] },
  photos: {
    words: ['photos', '../phone', '--yes'],
    isEach: true,
    prepare: async (folder) => {
      mkdirSync(join(folder, 'phone'));
      for (const side of ['obv', 'rev'])
        await sharp({ create: { width: 60, height: 60, channels: 3, background: side === 'obv' ? '#543' : '#345' } })
          .jpeg()
          .toFile(join(folder, 'phone', `0001-${side}.jpg`));
    },
  },
  'photos --review': { words: ['photos', '--review'] },
  'photos --undo': { words: ['photos', '--undo'] },
  'undo --restore': { words: ['undo', '3', '--restore'] },
  'undo --redo': { words: ['undo', '3', '--redo'] },
  'types --assign': { words: ['types', '--assign', '--yes'], prepare: (folder) => put(join(folder, 'cabinet'), TYPES) },
  plan: { words: ['plan', '--budget', '600 GBP'] },
  inventory: { words: ['inventory'] },
  tickets: { words: ['tickets'] },
}; // prettier-ignore

const room = mkdtempSync(join(tmpdir(), 'interrupted-'));
cpSync('tests/cabinets/marked', join(room, 'marked', 'cabinet'), { recursive: true });

/** Runs a command beside its cabinet; `stop` says how its disk stops. */
function run(folder: string, { words: [command = '', ...words] }: Step, stop: Readonly<Record<string, string>>) {
  const cabinet = join(folder, 'cabinet');
  const all = words.map((word) => (word.startsWith('../') ? join(cabinet, word) : word === '@' ? cabinet : word));
  const named = command === 'begin' ? all : [...all, '--cabinet', cabinet];
  const file = resolve('src/commands', `${command}.ts`);
  const env = { ...process.env, STOP_IN: cabinet, ...stop };
  return spawnSync(process.execPath, ['--import', PRELOAD, file, ...named], { encoding: 'utf8', env });
}
const textsOf = (folder: string) => (existsSync(join(folder, 'cabinet')) ? folderTexts(join(folder, 'cabinet')) : {});

/** A copy of all a command finds, to be thrown away. */
async function inCopy(folder: string, look: (copy: string) => Promise<void>): Promise<void> {
  const copy = mkdtempSync(join(tmpdir(), 'copy-'));
  cpSync(folder, copy, { recursive: true });
  await look(copy);
  rmSync(copy, { recursive: true });
}

test.for(Object.entries(STEPS).map(([name, step], index) => ({ name, step, index })))(
  '$name, stopped at any point, leaves all or nothing, and tells of a disk that refuses in a sentence',
  { timeout: 1_800_000 },
  async ({ name, step, index }) => {
    const folder = join(room, step.of ?? 'marked');
    mkdirSync(folder, { recursive: true });
    await step.prepare?.(folder);
    const before = textsOf(folder);
    // What would be there at each point is copied while the command runs to its end.
    const start = mkdtempSync(join(tmpdir(), 'start-'));
    cpSync(folder, start, { recursive: true });
    const copies = mkdtempSync(join(tmpdir(), 'points-'));
    const whole = run(folder, step, { STOP_HOW: 'copies', STOP_INTO: copies, STOP_AT: '0' });
    expect([whole.status, whole.stderr]).toEqual([0, '']);
    const after = textsOf(folder);
    expect(after).not.toEqual(before);
    const points = readdirSync(copies).length;
    expect(points).toBeGreaterThan(5);
    const ends = new Set<string>();
    for (let point = 1; point <= points; point += 1)
      ends.add(await leftBehind(join(copies, String(point)), before, after, `${name} at ${point}`, step.isEach));
    expect(ends.has('before')).toBe(true);

    // That a copy is what a killed process leaves.
    const kinds = readFileSync(`${copies}.kinds`, 'utf8').trimEnd().split('\n');
    expect(kinds).toHaveLength(points);
    const kills = killsAt(kinds);
    for (const point of kills)
      await inCopy(start, async (copy) => {
        expect(run(copy, step, { STOP_HOW: 'kill', STOP_AT: String(point) }).signal).toBe('SIGKILL');
        await leftBehind(join(copy, 'cabinet'), before, after, `${name} killed at ${point}`, step.isEach);
      });
    if (kills.length > 0)
      process.stdout.write(`${name}: ${points} points of ${new Set(kinds).size} sorts, killed at ${kills.length}\n`);

    const faults = FAULTS.flatMap((how) => Array.from({ length: points }, (_, at) => ({ how, point: at + 1 })));
    // One of all otherwise: another fault at another point for each command.
    const sample = IS_FULL
      ? faults
      : [faults[(index * points + Math.floor(points / 3)) % faults.length] ?? expect.fail()];
    for (const { how, point } of sample)
      await inCopy(start, async (copy) => {
        const ended = run(copy, step, { STOP_HOW: how, STOP_AT: String(point) });
        const where = `${name}, ${how} at ${point}: ${ended.stdout}${ended.stderr}`;
        expect(ended.stderr, where).not.toMatch(/\n\s+at |This is a fault/);
        if (ended.status !== 0) expect(`${ended.stderr}${ended.stdout}`, where).toMatch(SENTENCE);
        const left = await leftBehind(join(copy, 'cabinet'), before, after, where, step.isEach);
        if (ended.status !== 0 && step.isEach !== true) expect(left, where).toBe('before');
        if (ended.status === 0) expect(textsOf(copy), where).toEqual(after);
      });
  },
);

/** Commands that only look into a cabinet, each with an answer that a disk which takes nothing leaves it. */
const LOOKING: readonly (readonly string[])[] = [
  ['check'], ['check', '--every'], ['read', 'date', 'AH 294'], ['read', 'weight', '21.3 grains'], ['types'], ['undo'], ['identify', 'pence', 'crown=plain'],
]; // prettier-ignore
const LOOKED = LOOKING.flatMap((words) => FAULTS.map((how) => [words.join(' '), how, words] as const));
// One fault for each in turn otherwise.
test.for(LOOKED.filter((_, at) => IS_FULL || at % (FAULTS.length + 1) === 0))(
  '%s writes nothing into a cabinet, and says the same on a disk that refuses with %s',
  ([, how, words]) => {
    const folder = mkdtempSync(join(tmpdir(), 'looking-'));
    cpSync('tests/cabinets/marked', join(folder, 'cabinet'), { recursive: true });
    put(join(folder, 'cabinet'), TYPES);
    const before = textsOf(folder);
    const well = run(folder, { words }, { STOP_HOW: how, STOP_AT: 'Infinity' });
    expect([well.status, well.stderr]).toEqual([0, '']);
    for (const at of [join(folder, 'cabinet'), resolve('.cache')]) {
      const ended = run(folder, { words }, { STOP_IN: at, STOP_HOW: how, STOP_AT: '1' });
      expect([ended.status, ended.stdout, ended.stderr]).toEqual([0, well.stdout, '']);
    }
    expect(textsOf(folder)).toEqual(before);
  },
);

/** What is stopped in tests of its own, and what a keeper does not need. */
const ELSEWHERE = ['build', 'start', 'dev', 'desk', 'test', 'bench'];
test('every command is stopped here or in a test of its own', () => {
  const here = [...Object.values(STEPS).map(({ words }) => words), ...LOOKING].map(([command = '']) => command);
  const files = readdirSync('src/commands').filter((name) => name.endsWith('.ts'));
  expect([...new Set([...here, ...ELSEWHERE])].sort()).toEqual(files.map((name) => name.slice(0, -3)).sort());
});
